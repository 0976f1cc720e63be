package padwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.Units;
import padwright.export.Drawing.Fill;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.geometry.Path;
import padwright.pattern.PartResult;
import padwright.pattern.PatternPiece;
import padwright.shape.Stack;

/** Sections, corner diagrams and file names. */
class PictureTest {
  @Test
  void theSectionStatesEverySizeAndItsScale() {
    List<String> words = LabelPlacementTest.words(Sections.rest(new EdgeShape.Round(6), 3, 2));
    assertThat(words)
        .contains(
            "board 12 mm",
            "foam layer 1, 12 mm",
            "foam layer 2, 12 mm",
            "overhang 3 mm",
            "wadding, pressed 2 mm",
            "edge rounded to 6 mm",
            "turn-under 20.0 mm",
            "finished height 39.0 mm",
            "turn-under stands 1 mm off the back",
            "4.5 mm of board left under the point",
            "staple, leg 8 mm, 8 mm from the edge",
            "board: birch plywood",
            "covering: knit-backed vinyl, 1 mm")
        .anyMatch(w -> w.startsWith("scale 2 : 1"));
  }

  /**
   * Base 600 x 60, board 12, flush foam 24, square edges, covering 1.0, turn-under 20: 57.5708 a
   * side (Hf + tb + w + pi/2 tc), printed to a tenth.
   */
  @Test
  void theSectionStatesTheCoverPerSide() {
    assertThat(LabelPlacementTest.words(Sections.rest(new EdgeShape.Square(), 0, 0)))
        .anyMatch(w -> w.startsWith("cover, per side: 57.6 mm"));
  }

  /**
   * A band of even thickness has the area of its middle line's length times its thickness. Middle
   * line: 57.5708 and what lies inside the base's edge on the top, where the section is cut off.
   */
  @Test
  void theCoveringIsDrawnAtItsTrueThickness() {
    Drawing d = Sections.rest(new EdgeShape.Square(), 0, 0);
    double scale = 2;
    double inside =
        -Sections.section(
                Sections.spec(
                    12, List.of(new Stack.Layer(24, 0)), new EdgeShape.Square(), 0, 1.0, 20))
            .layers()
            .get(0)
            .shape()
            .bounds()
            .minX();
    double expected = (57.5708 + inside) * 1.0 * scale * scale;
    double most =
        d.items().stream()
            .filter(i -> i instanceof Fill f && f.grey() == 0)
            .mapToDouble(i -> ((Fill) i).path().area())
            .max()
            .orElseThrow();
    assertThat(most).isCloseTo(expected, within(0.01 * expected));
  }

  /** The leg as drawn: 8 long and its point 7 into the board, at twice full size. */
  @Test
  void theStapleIsDrawnToScale() {
    Drawing d = Sections.rest(new EdgeShape.Square(), 0, 0);
    assertThat(d.items())
        .anyMatch(
            i ->
                i instanceof Fill f
                    && f.grey() == 1
                    && Math.abs(f.path().bounds().height() - 16) < 1e-9
                    && Math.abs(f.path().bounds().maxY() - 14) < 1e-9
                    && Math.abs(f.path().bounds().centre().x() + 16) < 1e-9);
  }

  @Test
  void everyCornerHasFivePicturesEachWithASentence() {
    for (Map.Entry<String, PartResult> e : Results.ALL.entrySet()) {
      for (NamedDrawing named : CornerDiagram.all(Pieces.HEADER, e.getValue())) {
        Drawing d = named.drawing();
        List<String> words = LabelPlacementTest.words(d);
        assertThat(words).as(e.getKey()).contains("1", "2", "3", "4", "5");
        long frames =
            d.items().stream()
                .filter(i -> i instanceof Stroke s && s.style() == LineStyle.FRAME)
                .count();
        assertThat(frames).isEqualTo(5);
        assertThat(String.join(" ", words)).containsOnlyOnce("On the back");
      }
    }
  }

  @Test
  void nothingOfACornerDiagramLeavesItsSheet() {
    for (PartResult r : Results.ALL.values()) {
      for (NamedDrawing named : CornerDiagram.all(Pieces.HEADER, r)) {
        Drawing d = named.drawing();
        for (Item i : d.items()) {
          var b = SectionDrawing.bounds(i);
          assertThat(d.extent().contains(new padwright.geometry.Vec2(b.minX(), b.minY()))).isTrue();
          assertThat(d.extent().contains(new padwright.geometry.Vec2(b.maxX(), b.maxY()))).isTrue();
        }
      }
    }
  }

  @Test
  void aDiagramTellsTheNumbersOfItsOwnCorner() {
    String single = sentences("single");
    assertThat(single).contains("stops 12 mm short", "single pleat");
    assertThat(sentences("double")).contains("22.5 degrees");
    assertThat(sentences("rest")).contains("mitred end").contains("the right strip");
    int pleats = Results.ALL.get("stool").cover().corners().get(0).pleats();
    assertThat(sentences("stool")).contains(pleats + " pleats");
    assertThat(sentences("notches")).contains("V-notches");
  }

  private static String sentences(String part) {
    return String.join(
        " ",
        LabelPlacementTest.words(
            CornerDiagram.all(Pieces.HEADER, Results.ALL.get(part)).get(0).drawing()));
  }

  /** Corners that turn alike and are treated alike share a diagram: a trapezoid has two kinds. */
  @Test
  void cornersFoldedAlikeShareADiagram() {
    assertThat(CornerDiagram.all(Pieces.HEADER, Results.ALL.get("single"))).hasSize(1);
    assertThat(CornerDiagram.all(Pieces.HEADER, Results.ALL.get("trapezoid"))).hasSize(2);
  }

  /** The names become file names: they must not follow the wording of the title. */
  @Test
  void everyDiagramHasANameOfItsOwnThatSaysHowTheCornerIsFolded() {
    assertThat(names("single")).containsExactly("corner-single-pleat");
    assertThat(names("trapezoid")).containsExactly("corner-single-pleat", "corner-single-pleat-2");
    assertThat(names("rest")).containsExactly("corner-mitred-end");
    assertThat(names("double")).containsExactly("corner-double-pleat");
    assertThat(names("stool")).containsExactly("rim-pleats");
  }

  private static List<String> names(String part) {
    return CornerDiagram.all(Pieces.HEADER, Results.ALL.get(part)).stream()
        .map(NamedDrawing::name)
        .toList();
  }

  @Test
  void sentencesAreSetNoWiderThanTheirPicture() {
    for (String line :
        CornerDiagram.wrapped("Pull both strips down and staple them to within 50 mm", 40)) {
      assertThat(Lettering.width(line, Lettering.NOTE)).isLessThanOrEqualTo(40);
    }
  }

  @Test
  void hatchingStaysInsideItsShapeAndKeepsItsPitch() {
    double length =
        Hatching.of(Path.circle(padwright.geometry.Vec2.ZERO, 20), 0.7, 0.5).stream()
            .mapToDouble(i -> ((Stroke) i).path().length())
            .sum();
    // Lines half a mm apart cover the disc: their length times the pitch is its area, pi r squared.
    assertThat(length * 0.5).isCloseTo(Math.PI * 400, within(6.0));
  }

  @Test
  void fileNamesAreSafeAndGivenOnce() {
    PatternPiece cover = Pieces.cover(600, 60, 57, false);
    assertThat(PieceFiles.name("desk-rest", cover)).isEqualTo("desk-rest-cover.svg");
    PieceFiles files = new PieceFiles();
    Set<String> names = new TreeSet<>();
    for (String id :
        List.of("a/b", "a\\b", "..", "Caf\u00e9", "cafe", "CAFE", "", "con:1", "x".repeat(400))) {
      String name = files.unique(id, "cover", "svg");
      assertThat(name).matches("[a-z0-9][a-z0-9-]*\\.svg").hasSizeLessThan(200);
      assertThat(names.add(name.toLowerCase(Locale.ROOT))).as(name).isTrue();
    }
    assertThat(files.unique("caf\u00e9", "cover", "svg")).isEqualTo("cafe-cover-4.svg");
  }

  /** The font has the widths of Helvetica, whose metrics (Adobe's AFM files) PDFBox carries. */
  @Test
  void textIsMeasuredByTheFontsOwnWidths() throws IOException {
    PDType1Font helvetica = new PDType1Font(Standard14Fonts.FontName.HELVETICA);
    for (String text :
        List.of("0", "i", "W", "this side up, on the back of the covering", "\u00f8")) {
      assertThat(Lettering.width(text, 1000))
          .isCloseTo(helvetica.getStringWidth(text), within(0.5 * text.length()));
    }
  }

  @Test
  void inchJobsReadInches() {
    PartHeader inches = new PartHeader("", "Rest", "rest", 1, 0, "2026-03-14", Units.INCH);
    // 609.6 = 24 in, 60.325 = 2 3/8 in; 12 mm is nearest to 15/32 in (11.906 mm).
    PatternPiece p = Pieces.base(609.6, 60.325, 25);
    assertThat(LabelPlacementTest.words(PieceDrawing.of(inches, p)))
        .contains("cut size 24 x 2 3/8 in", "birch plywood, 15/32 in (12 mm)");
  }
}
