package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece.StapleMark;

/** Staples on the flat cover: where they are once it is laid round the pad again. */
class CoverStaplesTest {
  private static Map<Integer, StapleMark> marks(PatternPiece piece) {
    return piece.staples().stream().collect(Collectors.toMap(StapleMark::number, s -> s));
  }

  /**
   * On a square edge a staple e from the base's edge goes through the cover the wall and e beyond
   * that edge, and two bends of covering 1 thick less: each is a quarter circle about an arris
   * instead of its corner, pi/4 for the neutral line of a thickness, 2 x (1 - pi/4) shorter than
   * square at most.
   */
  @Test
  void onAStraightSideTheyLieTheWallAndTheirEdgeDistanceBeyondTheBase() {
    PartResult part = Pads.seat().run();
    PatternPiece cover = part.piece(PatternPiece.Kind.COVER).orElseThrow();
    Map<Integer, StapleMark> flat = marks(cover);
    int seen = 0;
    int number = 0;
    for (var p : part.staples().positions()) {
      number++;
      if (!p.side().equals("front")) {
        continue;
      }
      seen++;
      StapleMark mark = flat.get(number);
      assertThat(mark.at().x()).isCloseTo(p.at().x(), within(1e-9));
      double edge = p.at().y() + 150;
      assertThat(-150 - mark.at().y()).isCloseTo(36 + edge, within(2.0));
      assertThat(mark.layers()).isEqualTo(p.layers());
    }
    assertThat(seen).isGreaterThan(8);
  }

  /**
   * The strips of a pleated rim are tangents of the circle: a mark wrapped round its own strip, as
   * far along it and as far in from its edge, comes to the base's staple.
   */
  @Test
  void onARoundOneEachComesToItsPlaceWhenItsStripIsWrapped() {
    Pads pads = new Pads();
    pads.outline = new padwright.design.OutlineShape.Circle(350);
    PartResult part = pads.run();
    Map<Integer, StapleMark> flat = marks(part.piece(PatternPiece.Kind.COVER).orElseThrow());
    int pleats = part.cover().corners().get(0).pleats();
    var path = part.shape().section().taut();
    double down = path.backStart() + path.out(path.backStart());

    // Those under a pleat hold two strips: they have no one place on the flat.
    assertThat(flat.size())
        .isBetween(part.staples().positions().size() / 2, part.staples().positions().size());
    int number = 0;
    for (var p : part.staples().positions()) {
      StapleMark mark = flat.get(++number);
      if (mark == null) {
        continue;
      }
      double nearest = Double.POSITIVE_INFINITY;
      for (int k = 0; k < pleats; k++) {
        Vec2 out = Vec2.polar(-Math.PI / 2 + (k + 0.5) * 2 * Math.PI / pleats);
        double s = mark.at().dot(out) - 175;
        double along = mark.at().dot(out.left());
        Vec2 wrapped = out.times(175 - (s - down)).along(out.left(), along);
        boolean strip = Math.abs(along) <= 175 * Math.tan(Math.PI / pleats) + 1e-6;
        nearest = strip ? Math.min(nearest, wrapped.distance(p.at())) : nearest;
      }
      assertThat(nearest).as("staple %d", number).isLessThan(1e-6);
    }
  }

  /** None lies beyond the slit of a hollow corner, where the other side's strip is. */
  @Test
  void besideAHollowCornerNoneLiesOnTheOtherStripOrTheGusset() {
    RandomOutlines outlines = new RandomOutlines(21);
    int corners = 0;
    for (int i = 0; i < 200; i++) {
      PartResult part = outlines.next().run();
      if (part.stopped()) {
        continue;
      }
      PatternPiece cover = part.piece(PatternPiece.Kind.COVER).orElseThrow();
      java.util.List<Vec2> cut = cover.cutLine().flattened(0.01);
      Map<Integer, StapleMark> onBase = marks(part.piece(PatternPiece.Kind.BASE).orElseThrow());
      for (StapleMark s : cover.staples()) {
        assertThat(Polygons.contains(cut, s.at())).isTrue();
        assertThat(onBase).containsKey(s.number());
      }
      for (var g : part.cover().gussets()) {
        corners++;
        Vec2 tip = g.slit().start();
        for (var seam : g.seamsOnCover()) {
          java.util.List<Vec2> wedge =
              Polygons.anticlockwise(java.util.List.of(tip, g.slit().end(), seam.end()));
          for (StapleMark s : cover.staples()) {
            boolean stretch = part.spec().stretchX() == 0 && part.spec().stretchY() == 0;
            assertThat(stretch && Polygons.contains(wedge, s.at())).as("outline %d", i).isFalse();
          }
        }
      }
    }
    assertThat(corners).isGreaterThan(10);
  }
}
