package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import padwright.design.WrappedPad.Neighbour;
import padwright.geometry.Vec2;
import padwright.jobfile.JobReader;
import padwright.material.Catalogue;
import padwright.material.CatalogueReader;
import padwright.pattern.PatternPiece.Kind;

/** What is said of pieces and gaps is what a maker would call them, with numbers that add up. */
class BenchWordsTest {
  private static PatternSet demo() {
    Catalogue catalogue = CatalogueReader.builtIn();
    return new PatternEngine(catalogue)
        .run(new JobReader(catalogue).read(Path.of("demo", "reading-nook.json")));
  }

  private static PatternPiece piece(PartResult r, Kind kind) {
    return r.piece(kind).orElseThrow();
  }

  @Test
  void packingThatCoversMostOfTheBaseIsAPanel() {
    List<PartResult> parts = demo().parts();
    // 566 x 26 is a strip in the hand; 266 round, 373 x 326 and 541 x 341 are not.
    assertThat(piece(parts.get(0), Kind.PACKING).name()).isEqualTo("Packing strip");
    for (PartResult wide : parts.subList(1, 4)) {
      assertThat(piece(wide, Kind.PACKING).name()).isEqualTo("Packing panel");
      assertThat(String.join(" ", wide.mounting().steps())).doesNotContain("packing strip");
    }
  }

  /** Face grain along the longer way: common practice, no source. Pressed fibre has none. */
  @Test
  void aBaseOfPlywoodShowsItsGrainAndOneOfPressedFibreHasNone() {
    List<PartResult> parts = demo().parts();
    for (PartResult plywood : parts.subList(0, 3)) {
      assertThat(piece(plywood, Kind.BASE).grain()).contains(new Vec2(1, 0));
    }
    assertThat(piece(parts.get(3), Kind.BASE).grain()).isEmpty();
  }

  /** 3/16 in = 4.7625 a side (E. A. Johnson 1919, ch. IV), of which 3 x 0.6 or 0.6 is covering. */
  @Test
  void theDryFitsNumbersAddUpInItsSentence() {
    String said =
        demo().parts().get(2).findings().stream()
            .filter(f -> f.rule().equals("opening-dry-fit"))
            .findFirst()
            .orElseThrow()
            .message();
    assertThat(said)
        .contains("4.8 front, back (3 layers of 0.6 covering and 3.0 clear)")
        .contains("4.8 right, left (1 layer of 0.6 covering and 4.2 clear)");
  }

  @Test
  void aFreeSideIsSaidToCarryOneLayerAndNoClearance() {
    Neighbour clear = Neighbour.KEEP_CLEAR;
    DryFit fit =
        new DryFit(
            List.of(clear, Neighbour.BUTTING, clear, Neighbour.FREE),
            List.of(3, 2, 3, 2),
            0.5,
            List.of(1.5, 1.5, 1.5, 1.5),
            OptionalDouble.of(2));
    // 1.5 + 3 x 0.5 + 2 = 5; 1.5 + 2 x 0.5 = 2.5; 1.5 + 0.5 = 2.
    assertThat(fit.gaps(List.of(5.0, 2.5, 5.0, 2.0)))
        .isEqualTo(
            "5.0 front, back (1.5 padding, 3 layers of 0.5 covering and 2.0 clear);"
                + " 2.5 right (1.5 padding, 2 layers of 0.5 covering);"
                + " 2.0 left (1.5 padding, 1 layer of 0.5 covering)");
    assertThat(fit.clearances()).isEqualTo("2.0 mm front, back");
  }
}
