package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.Finding;
import padwright.design.WrappedPad.Neighbour;
import padwright.design.WrappedPad.Run;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.design.WrappedPad.WaddingLayer;
import padwright.geometry.Bounds;
import padwright.measure.InputRefused;

/** What follows from a side's own edge in the other pieces, in the sizes and in refusals. */
class RunPiecesTest {
  private static Run run(Optional<EdgeShape> edge, double overhang, String... sides) {
    return Pads.run(edge, OptionalDouble.of(overhang), sides);
  }

  @Test
  void anEdgeThatTheFoamIsTooThinForIsRefusedAtItsRun() {
    assertThatThrownBy(() -> Pads.seat(run(Optional.of(new EdgeShape.Round(30)), 0, "front")).run())
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("30")
        .satisfies(e -> assertThat(((InputRefused) e).path()).endsWith("runs[0].edge.round"));
  }

  /** Foam 24 on a board of 12, wadding 4 over top and sides: 36 further down on every side. */
  @Test
  void waddingGoesAsFarOutAsEachSidesFoam() {
    Pads pads = Pads.seat(run(Optional.empty(), 10, "back"));
    pads.wadding = Optional.of(new WaddingLayer("polyester-100", OptionalDouble.of(4), true));
    Bounds b = pads.run().piece(PatternPiece.Kind.WADDING).orElseThrow().cutLine().bounds();

    assertThat(b.maxY()).isCloseTo(150 + 10 + 36, within(1e-9));
    assertThat(b.minY()).isCloseTo(-150 - 36, within(1e-9));
    assertThat(b.maxX()).isCloseTo(200 + 36, within(1e-9));
  }

  /** In an opening the front's base stands back by its own overhang, the other sides' do not. */
  @Test
  void theGapInAnOpeningIsThatOfEachSidesFoam() {
    Pads pads = Pads.seat(run(Optional.empty(), 6, "front"));
    pads.size = SizeMeaning.OPENING;
    pads.sides =
        new Neighbour[] {
          Neighbour.BUTTING, Neighbour.BUTTING, Neighbour.BUTTING, Neighbour.BUTTING
        };
    PartResult part = pads.run();

    List<Double> gap = part.shape().bareGap();
    assertThat(gap.get(0) - gap.get(2)).isCloseTo(6, within(1e-9));
    assertThat(part.findings())
        .extracting(Finding::message)
        .anyMatch(t -> t.contains("front (6.0 padding"))
        .noneMatch(t -> t.contains("back (6.0 padding"));
  }
}
