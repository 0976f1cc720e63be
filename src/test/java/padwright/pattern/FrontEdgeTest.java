package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.Side;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece.LineKind;

/** The edge marked FRONT is at the front of the piece, whatever else faces that way. */
class FrontEdgeTest {
  private static Pads notched(OutlineShape outline, Side front) {
    Pads pads = new Pads();
    pads.outline = outline;
    pads.front = front;
    pads.treatments = List.of(Treatment.NOTCHES);
    // So low that the wall eases in this covering, whatever it gives: only the back has fullness.
    pads.thickness = 6;
    pads.foam = List.of(Pads.layer(5, 0));
    pads.turnUnder = OptionalDouble.of(25);
    return pads;
  }

  @Test
  void onANotchedRoundCoverTheFrontIsItsFrontAndNoSideOfANotch() {
    for (OutlineShape outline :
        List.of(new OutlineShape.Circle(900), new OutlineShape.Ellipse(900, 760))) {
      for (Side front : Side.values()) {
        PartResult part = notched(outline, front).run();
        assertThat(part.cover().corners().get(0).treatment()).isEqualTo(Treatment.NOTCHES);
        PatternPiece cover = part.piece(PatternPiece.Kind.COVER).orElseThrow();
        Vec2 towards = Vec2.polar(Math.toRadians(-90 + 90 * front.ordinal()));
        double extent =
            cover.cutLine().flattened(0.001).stream()
                .mapToDouble(p -> p.dot(towards))
                .max()
                .orElse(0);
        List<Segment> edge =
            cover.lines().stream()
                .filter(l -> l.kind() == LineKind.FRONT)
                .findFirst()
                .orElseThrow()
                .path()
                .segments();
        double furthest =
            edge.stream().mapToDouble(s -> s.pointAt(0.5).dot(towards)).max().orElseThrow();
        assertThat(furthest).as("%s %s", outline, front).isCloseTo(extent, within(1.0));
        assertThat(edge).allMatch(Segment::isArc);
      }
    }
  }

  @Test
  void onALargeRoundedCornerTheShortStraightFrontIsMarkedAndNotALongerNotch() {
    PartResult part = notched(Pads.rectangle(700, 700, 345), Side.FRONT).run();
    assertThat(part.cover().corners().get(0).treatment()).isEqualTo(Treatment.NOTCHES);
    PatternPiece cover = part.piece(PatternPiece.Kind.COVER).orElseThrow();
    List<Segment> edge =
        cover.lines().stream()
            .filter(l -> l.kind() == LineKind.FRONT)
            .findFirst()
            .orElseThrow()
            .path()
            .segments();
    assertThat(edge).hasSize(1);
    // The base's straight front is 700 - 2 x 345 = 10 long and lies square to the front.
    assertThat(edge.get(0).length()).isCloseTo(10, within(0.01));
    assertThat(edge.get(0).pointAt(0.5).x()).isCloseTo(0, within(1e-6));
  }
}
