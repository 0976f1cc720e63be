package padwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** How far in two strips along an outline meet, from figures worked by hand and from JTS. */
class MeetingDepthTest {
  private static final double FAR = 1000;

  private static Path polygon(double... xy) {
    List<Segment> sides = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      int j = (i + 2) % xy.length;
      sides.add(Segment.line(new Vec2(xy[i], xy[i + 1]), new Vec2(xy[j], xy[j + 1])));
    }
    return new Path(sides, true);
  }

  @Test
  void theStripsOfARectangleMeetInItsMiddle() {
    Path rectangle = polygon(0, 0, 400, 0, 400, 60, 0, 60);

    assertThat(MeetingDepth.upTo(rectangle, FAR)).isCloseTo(30, within(1e-5));
    assertThat(MeetingDepth.upTo(rectangle, 20)).isEqualTo(20);
  }

  /**
   * The strips on either side of a chamfer meet as those at a corner do, not half its length in.
   */
  @Test
  void aCutOffCornerIsNoNarrowPlace() {
    Path chamfered = polygon(0, 0, 400, 0, 400, 290, 390, 300, 0, 300);

    assertThat(MeetingDepth.upTo(chamfered, FAR)).isCloseTo(150, within(1e-5));
  }

  /** Inradius of a triangle: twice the area by the circumference. */
  @Test
  void theStripsOfATriangleMeetInItsIncircle() {
    // Sides 300, 400 and 500: 2 x 60000 / 1200.
    assertThat(MeetingDepth.upTo(polygon(0, 0, 400, 0, 0, 300), FAR)).isCloseTo(100, within(1e-4));
    // A thin one, whose long sides meet at under 30 degrees: legs hypot(200, 20), base 40.
    double inradius = 2 * 4000 / (40 + 2 * Math.hypot(200, 20));
    assertThat(MeetingDepth.upTo(polygon(0, 0, 200, -20, 200, 20), FAR))
        .isCloseTo(inradius, within(1e-4));
  }

  @Test
  void theStripOfACircleMeetsItselfInItsCentre() {
    Path circle =
        new Path(
            List.of(
                new Segment(new Vec2(50, 0), new Vec2(-50, 0), 1),
                new Segment(new Vec2(-50, 0), new Vec2(50, 0), 1)),
            true);

    assertThat(MeetingDepth.upTo(circle, FAR)).isCloseTo(50, within(1e-4));
  }

  @Test
  void aNarrowArmCounts() {
    Path l = polygon(0, 0, 400, 0, 400, 30, 200, 30, 200, 200, 0, 200);

    assertThat(MeetingDepth.upTo(l, FAR)).isCloseTo(15, within(1e-5));
  }

  /** An acute corner beside a hollow one is a corner, and its sides face no others. */
  @Test
  void anAcuteCornerOfAHollowOutlineIsNoNarrowPlace() {
    Path path = polygon(0, 0, 400, 0, 400, 100, 200, 100, 200, 300, 140, 300);

    assertThat(MeetingDepth.upTo(path, 25)).isEqualTo(25);
  }

  /**
   * A notch of 90 degrees whose tip stands 50 over the opposite side: the moved sides of the notch
   * meet sqrt(2) t below the tip, the moved side t over itself: t = 50 / (1 + sqrt(2)).
   */
  @Test
  void aNotchThatPointsAtASideMeetsItsStrip() {
    Path notched = polygon(0, 0, 400, 0, 400, 200, 350, 200, 200, 50, 50, 200, 0, 200);

    assertThat(MeetingDepth.upTo(notched, FAR)).isCloseTo(50 / (1 + Math.sqrt(2)), within(1e-4));
  }

  /** JTS's largest inscribed circle, of polygons in which no two sides are nearly parallel. */
  @Test
  void withoutFacingSidesItIsTheLargestCircleThatFits() {
    Random random = new Random(4711);
    for (int k = 0; k < 100; k++) {
      double[] xy = new double[10];
      for (int i = 0; i < 5; i++) {
        double a = 2 * Math.PI * (i + 0.02 * random.nextDouble()) / 5;
        xy[2 * i] = 200 * Math.cos(a);
        xy[2 * i + 1] = 200 * Math.sin(a);
      }
      Coordinate[] ring = new Coordinate[6];
      for (int i = 0; i < 6; i++) {
        ring[i] = new Coordinate(xy[2 * i % 10], xy[(2 * i + 1) % 10]);
      }
      double expected =
          new MaximumInscribedCircle(new GeometryFactory().createPolygon(ring), 0.001)
              .getRadiusLine()
              .getLength();
      assertThat(MeetingDepth.upTo(polygon(xy), FAR)).isCloseTo(expected, within(0.01));
    }
  }
}
