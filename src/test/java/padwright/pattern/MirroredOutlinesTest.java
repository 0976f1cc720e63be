package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;

/** A free outline mirrored left to right gives the mirrored cover, however it is folded. */
class MirroredOutlinesTest {
  @Test
  void aMirroredOutlineHasACoverOfTheSameSizeAndProof() {
    RandomOutlines outlines = new RandomOutlines(7);
    for (int i = 0; i < 200; i++) {
      Pads pads = outlines.next();
      PartResult part = pads.run();
      pads.outline = mirrored((FreePath) pads.outline);
      PartResult mirror = pads.run();
      String what = "outline " + i + ": " + pads.outline;

      assertThat(mirror.cover().overlaps()).as(what).isEqualTo(part.cover().overlaps());
      assertThat(mirror.wrap().proved()).as(what).isEqualTo(part.wrap().proved());
      assertThat(mirror.cover().corners()).as(what).hasSameSizeAs(part.cover().corners());
      assertThat(mirror.cover().gussets()).as(what).hasSameSizeAs(part.cover().gussets());
      double area = part.cover().trim().area();
      assertThat(mirror.cover().trim().area()).as(what).isCloseTo(area, within(1e-6 * area));
      Bounds a = part.cover().trim().bounds();
      Bounds b = mirror.cover().trim().bounds();
      assertThat(b.width()).as(what).isCloseTo(a.width(), within(1e-6));
      assertThat(b.height()).as(what).isCloseTo(a.height(), within(1e-6));
    }
  }

  private static Vec2 flipped(Vec2 p) {
    return new Vec2(-p.x(), p.y());
  }

  private static FreePath mirrored(FreePath path) {
    List<Point> points =
        path.points().stream().map(p -> new Point(flipped(p.at()), mirrored(p.leg()))).toList();
    return new FreePath(points);
  }

  private static Leg mirrored(Leg leg) {
    if (leg instanceof Leg.Arc a) {
      return new Leg.Arc(-a.bulge());
    }
    return leg instanceof Leg.Cubic c
        ? new Leg.Cubic(flipped(c.first()), flipped(c.second()))
        : leg;
  }
}
