package padwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padwright.measure.InputRefused;
import padwright.measure.LengthUnit;

/**
 * DXF files written by ezdxf, a library that shares nothing with this program; {@code make-dxf.py}
 * beside them says how. Sizes and areas are closed forms worked by hand.
 */
class DxfReaderTest {
  @Test
  void linesAndArcsAreJoinedOverSmallGapsWhateverWayTheyRun() {
    DrawnOutline slot = Drawings.dxf("slot-r12.dxf");
    // A slot 200 between the centres, radius 30: 200 x 60 + pi 30^2, half a mm or so for the gap.
    assertThat(slot.length()).isCloseTo(260, within(0.06));
    assertThat(slot.width()).isCloseTo(60, within(0.06));
    assertThat(Drawings.area(slot)).isCloseTo(200 * 60 + Math.PI * 900, within(10.0));
    assertThat(slot.report().gaps()).hasSize(2);
    assertThat(slot.report().gaps()).allSatisfy(g -> assertThat(g).isCloseTo(0.05, within(1e-9)));
    assertThat(slot.openings()).hasSize(1);
    assertThat(slot.openings().get(0).length()).isEqualTo(24);
    assertThat(slot.openings().get(0).at().length()).isLessThan(0.05);
    assertThat(slot.report().lines())
        .contains(
            "DXF; 1 unit is taken as 1 mm: the file names no unit",
            "read: 2 LINE on layer CUT",
            "read: 2 ARC on layer CUT",
            "read: 1 CIRCLE on layer CUT",
            "left: 3 TEXT on layer NOTES",
            "left: 1 LINE on layer NOTES (open: an end meets no other)",
            "gap closed: 0.050 mm");
  }

  // 100 x 80 with a half circle of radius 40 at the right.
  // 12 x 8 in with a quarter of radius 6 sqrt 2 below: its segment is r^2 (a - sin a) / 2.
  // Sides 100, 40 to 70: 5500, and an arc of chord 40 and bulge 0.5, so radius 25: 279.5595.
  // 100 x 50 with two corners of radius 10 rounded off, each 100 (1 - pi / 4) less.
  @ParameterizedTest
  @CsvSource({
    "polyline-r12.dxf, 140, 80, 10513.2741",
    "inches-r2000.dxf, 304.8, 266.3261, 75192.0155",
    "below-r2010.dxf, 110, 70, 5779.5595",
    "corners-r2000.dxf, 100, 50, 4957.0796",
  })
  void polylinesHaveTheSizeAndAreaOfTheirClosedForm(
      String file, double length, double width, double area) {
    DrawnOutline drawn = Drawings.dxf(file);
    assertThat(drawn.length()).isCloseTo(length, within(1e-3));
    assertThat(drawn.width()).isCloseTo(width, within(1e-3));
    assertThat(Drawings.area(drawn)).isCloseTo(area, within(0.6));
    assertThat(drawn.report().left()).isEmpty();
  }

  @Test
  void anOutlineSeenFromBelowIsMirrored() {
    // In its own plane the low side (40) and the arc are at x = 100; seen from above, at the left.
    DrawnOutline drawn = Drawings.dxf("below-r2010.dxf");
    assertThat(Drawings.laid(drawn.outline()).bounds().minX()).isCloseTo(0, within(1e-3));
    assertThat(Drawings.chords(drawn)).anyMatch(p -> p.x() > 109.99 && p.y() > 69.99);
    assertThat(Drawings.chords(drawn)).noneMatch(p -> p.x() < 9 && p.y() > 41);
  }

  @Test
  void theUnitIsTheFilesOrTheMakersOrMm() {
    assertThat(Drawings.dxf("inches-r2000.dxf").report().scale())
        .contains("25.4 mm")
        .contains("$INSUNITS");
    DrawnOutline inches =
        DrawingReader.read("x", Drawings.file("polyline-r12.dxf"), Optional.of(LengthUnit.INCH));
    assertThat(inches.length()).isCloseTo(140 * 25.4, within(1e-3));
    assertThat(inches.report().scale()).contains("1 in, as you say");
    DrawnOutline named =
        DrawingReader.read("x", Drawings.file("inches-r2000.dxf"), Optional.of(LengthUnit.MM));
    assertThat(named.length()).isCloseTo(304.8, within(1e-3));
  }

  @Test
  void whatIsNoOutlineIsLeftAndNamed() {
    DrawnOutline drawn = Drawings.dxf("left-r2010.dxf");
    assertThat(drawn.length()).isEqualTo(300);
    assertThat(drawn.openings()).hasSize(1);
    assertThat(drawn.openings().get(0).length()).isEqualTo(80);
    assertThat(drawn.report().read())
        .extracting(DrawingReport.Count::words)
        .containsExactlyInAnyOrder("1 LWPOLYLINE on layer BOARD", "1 CIRCLE on layer 0");
    assertThat(drawn.report().left())
        .extracting(DrawingReport.Count::words)
        .containsExactlyInAnyOrder(
            "1 LWPOLYLINE on layer OFF (its layer is off)",
            "1 CIRCLE on layer FROZEN (its layer is off)",
            "1 LINE on layer 0 (in paper space)",
            "1 LINE on layer 0 (not flat)",
            "1 CIRCLE on layer 0 (not flat)",
            "1 SPLINE on layer 0",
            "1 ELLIPSE on layer 0",
            "1 INSERT on layer 0",
            "1 MTEXT on layer 0",
            "1 POINT on layer 0",
            "1 HATCH on layer 0",
            "1 LWPOLYLINE on layer 0 (outside the outline)",
            "1 CIRCLE on layer 0 (inside an opening)",
            "1 LWPOLYLINE on layer 0 (drawn twice)",
            "1 POLYLINE on layer 0 (not flat)");
  }

  private static DrawnOutline read(String content) {
    byte[] text = entities(content).getBytes(StandardCharsets.UTF_8);
    return DrawingReader.read("a.dxf", text, Optional.empty());
  }

  /** Group 50 = 0 and 51 = 360: a whole circle, as some write it. */
  @Test
  void anArcAllTheWayRoundIsACircle() {
    DrawnOutline drawn = read("0 ARC 10 0 20 0 40 100 50 0 51 360");
    assertThat(drawn.length()).isCloseTo(200, within(1e-3));
    assertThat(Drawings.area(drawn)).isCloseTo(Math.PI * 100 * 100, within(1.0));
  }

  /** Group 60 = 1 is an object that is not shown. */
  @Test
  void whatIsInvisibleIsLeft() {
    DrawnOutline drawn = read("0 CIRCLE 10 0 20 0 40 100 0 CIRCLE 60 1 10 0 20 0 40 20");
    assertThat(drawn.openings()).isEmpty();
    assertThat(drawn.report().left())
        .extracting(DrawingReport.Count::words)
        .containsExactly("1 CIRCLE (invisible)");
  }

  /** A rectangle of four lines and a stray one at its corner, which may stand first or last. */
  @Test
  void aStrayLineAtACornerDoesNotPartTheOutline() {
    String box =
        "0 LINE 10 0 20 0 11 300 21 0 0 LINE 10 300 20 0 11 300 21 200"
            + " 0 LINE 10 300 20 200 11 0 21 200 0 LINE 10 0 20 200 11 0 21 0";
    String stray = "0 LINE 10 0 20 0 11 -50 21 -50";
    for (String content : new String[] {box + " " + stray, stray + " " + box}) {
      DrawnOutline drawn = read(content);
      assertThat(drawn.length()).isEqualTo(300);
      assertThat(drawn.outline().points()).hasSize(4);
      assertThat(drawn.report().left())
          .extracting(DrawingReport.Count::words)
          .containsExactly("1 LINE (open: an end meets no other)");
    }
  }

  private static InputRefused refused(String text) {
    try {
      DrawingReader.read("a.dxf", text.getBytes(StandardCharsets.UTF_8), Optional.empty());
    } catch (InputRefused r) {
      assertThat(r.file()).isEqualTo("a.dxf");
      return r;
    }
    throw new AssertionError("it was read");
  }

  private static String entities(String content) {
    return "0\nSECTION\n2\nENTITIES\n" + content.replace(' ', '\n') + "\n0\nENDSEC\n0\nEOF\n";
  }

  @Test
  void anOpenOrCrossingOutlineIsRefusedWithWhatWasLeft() {
    assertThatThrownBy(() -> Drawings.dxf("open-r2000.dxf"))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("no closed outline was found")
        .hasMessageContaining("4 LINE on layer 0 (open: an end meets no other)")
        .hasMessageContaining("within 0.1 mm");
    assertThatThrownBy(() -> Drawings.dxf("bow-tie-r2000.dxf"))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("side 1 and side 3")
        .hasMessageContaining("50.0 mm right");
  }

  @Test
  void aFileThatIsCutOffIsRefusedWhereverItEnds() {
    String whole = new String(Drawings.file("slot-r12.dxf"), StandardCharsets.UTF_8);
    for (int end = 40; end < whole.lastIndexOf("EOF"); end += 97) {
      String part = whole.substring(0, end);
      assertThatThrownBy(
              () ->
                  DrawingReader.read("x", part.getBytes(StandardCharsets.UTF_8), Optional.empty()))
          .isInstanceOf(InputRefused.class);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
      0 LINE 8 0 10 1e308 20 0|8|not a number that can be drawn
      0 LINE 8 0 10 nan 20 0|8|not a number that can be drawn
      0 LINE 8 0 10 inf 20 0|8|not a number that can be drawn
      0 LINE 8 0 10 1,5 20 0|8|not a number that can be drawn
      0 LINE 8 0 x 5 20 0|9|not a group code
      0 LINE 8 0 99999 5 20 0|9|not a group code
      0 CIRCLE 8 0 10 0 20 0 40 0|5|no radius
      0 CIRCLE 8 0 10 0 20 0 40 -5|5|no radius
      0 ARC 8 0 10 0 20 0 40 5 50 30 51 30|5|no length
      0 POLYLINE 8 0 0 VERTEX 10 0 20 0|5|no SEQEND
      0 CIRCLE 8 0 10 0 20 0 40 6000|5|no length is over 10 m
      """)
  void numbersAndEntitiesThatCannotBeAreRefusedWithTheirLine(
      String content, int line, String problem) {
    InputRefused r = refused(entities(content));
    assertThat(r.problem()).contains(problem);
    assertThat(r.line()).isGreaterThanOrEqualTo(line);
  }

  @Test
  void binaryFilesAndOtherFilesAreRefused() {
    assertThat(refused("AutoCAD Binary DXF\r\n\u001a\u0000").problem()).contains("binary DXF");
    assertThat(refused("0\nSECTION\u0000").problem()).contains("no text");
    assertThat(refused("hello").problem()).contains("neither SVG nor DXF");
    assertThat(refused("").problem()).contains("neither SVG nor DXF");
    assertThat(refused("0\nSECTION\n2\nENTITIES\n0\nEOF\n").problem()).contains("has no end");
    String far = "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n20\n0\nENDSEC\n0\nEOF\n";
    assertThat(refused(far).problem()).contains("$INSUNITS 20");
  }

  @Test
  void tooManyEntitiesOrEndsInOnePlaceAreRefused() {
    String line = "0 LINE 8 0 10 0 20 0 11 %d 21 1 ";
    StringBuilder star = new StringBuilder();
    for (int i = 1; i < 60; i++) {
      star.append(String.format(Locale.ROOT, line, i));
    }
    assertThat(refused(entities(star.toString().strip())).problem()).contains("meet in one place");
    StringBuilder many = new StringBuilder();
    for (int i = 0; i <= DrawingLimits.MOST_ELEMENTS; i++) {
      many.append("0 POINT 8 0 ");
    }
    assertThat(refused(entities(many.toString().strip())).problem()).contains("20000 elements");
  }
}
