package padwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternPiece.LineKind;

class SvgLengthTest {
  /** What a written length may differ by: 0.01 mm, far below a pencil line. */
  private static final double TOLERANCE = 0.01;

  @Test
  void everyKindOfLineIsAsLongInTheFileAsInTheModel() {
    for (PatternPiece p : RandomPieces.some(300)) {
      SvgBack svg = new SvgBack(SvgWriter.write(PieceDrawing.of(Pieces.HEADER, p)));
      assertThat(svg.length("cut-line")).isCloseTo(p.cutLine().length(), within(TOLERANCE));
      assertThat(svg.length("inner-cuts"))
          .isCloseTo(p.innerCuts().stream().mapToDouble(Path::length).sum(), within(TOLERANCE));
      assertThat(svg.length("trim-line")).isCloseTo(model(p, LineKind.TRIM), within(TOLERANCE));
      assertThat(svg.length("fold-lines")).isCloseTo(model(p, LineKind.FOLD), within(TOLERANCE));
      assertThat(svg.length("creases")).isCloseTo(model(p, LineKind.CREASE), within(TOLERANCE));
      assertThat(svg.length("relief-cuts")).isCloseTo(model(p, LineKind.RELIEF), within(TOLERANCE));
      assertThat(svg.length("staple-line")).isCloseTo(model(p, LineKind.STAPLE), within(TOLERANCE));
      assertThat(svg.length("front-edge")).isCloseTo(model(p, LineKind.FRONT), within(TOLERANCE));
      assertThat(svg.length("staples"))
          .isCloseTo(6.0 * p.staples().size(), within(TOLERANCE * (1 + p.staples().size() / 50.0)));
    }
  }

  private static double model(PatternPiece p, LineKind kind) {
    return p.lines().stream()
        .filter(l -> l.kind() == kind)
        .mapToDouble(l -> l.path().length())
        .sum();
  }

  /** 100 mm on each axis, with ticks of 4 mm at the ends: 100 + 2 x 4, twice. */
  @Test
  void bothCheckLinesAreThereOnEveryPiece() {
    for (PatternPiece p : RandomPieces.some(60)) {
      SvgBack svg = new SvgBack(SvgWriter.write(PieceDrawing.of(Pieces.HEADER, p)));
      assertThat(svg.length("check-lines")).isCloseTo(216, within(TOLERANCE));
    }
  }

  /** An arc close to half a turn loses its middle when its ends are rounded; it is divided. */
  @Test
  void arcsOfAnySweepKeepTheirLength() {
    for (double sweep = 0.05; sweep < 2 * Math.PI - 0.02; sweep += 0.0137) {
      for (double r : new double[] {0.5, 37.123456, 750.3}) {
        Segment arc = Segment.arc(new Vec2(3.33333, -1.77777), r, 0.3, 0.3 + sweep);
        Path path = new Path(java.util.List.of(arc), false);
        Drawing d =
            new Drawing(
                "arc",
                path.bounds(),
                java.util.List.of(new Drawing.Stroke(path, Drawing.LineStyle.CUT)));
        assertThat(new SvgBack(SvgWriter.write(d)).length("cut-line"))
            .as("sweep %s radius %s", sweep, r)
            .isCloseTo(r * sweep, within(TOLERANCE));
      }
    }
  }

  @Test
  void theFileIsAtTrueScale() {
    SvgBack svg =
        new SvgBack(SvgWriter.write(PieceDrawing.of(Pieces.HEADER, Pieces.base(600, 60, 25))));
    String[] box = svg.root.get("viewBox").split(" ");
    assertThat(svg.root.get("width")).isEqualTo(box[2] + "mm");
    assertThat(svg.root.get("height")).isEqualTo(box[3] + "mm");
    assertThat(svg.root.get("version")).isEqualTo("1.1");
  }
}
