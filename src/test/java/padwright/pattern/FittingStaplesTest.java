package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import padwright.design.Finding;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.Hole;
import padwright.fastening.StaplePlan;
import padwright.geometry.Vec2;

/** Where staples go on a board that has other things in it; distances by the JTS library. */
class FittingStaplesTest {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /** Catalogue's first series: crown 12.7. */
  private static final double CROWN = 12.7;

  private static Geometry crown(StaplePlan.Position p) {
    Vec2 a = p.at().along(Vec2.polar(p.angle()), -CROWN / 2);
    Vec2 b = p.at().along(Vec2.polar(p.angle()), CROWN / 2);
    return GEOMETRY.createLineString(
        new Coordinate[] {new Coordinate(a.x(), a.y()), new Coordinate(b.x(), b.y())});
  }

  private static Geometry box(double x0, double y0, double x1, double y1) {
    return GEOMETRY.toGeometry(new org.locationtech.jts.geom.Envelope(x0, x1, y0, y1));
  }

  private static Geometry disc(double x, double y, double diameter) {
    return GEOMETRY.createPoint(new Coordinate(x, y)).buffer(diameter / 2, 64);
  }

  private static List<StaplePlan.Position> outer(PartResult part) {
    return part.staples().positions().stream()
        .filter(p -> !p.side().startsWith("cut-out"))
        .toList();
  }

  private static void clear(PartResult part, Geometry from, double least) {
    for (StaplePlan.Position p : outer(part)) {
      assertThat(crown(p).distance(from)).as(p.toString()).isGreaterThanOrEqualTo(least - 0.02);
    }
  }

  @Test
  void everyStapleKeepsClearOfCutOutsVentsAndBarrels() {
    FittedPads p =
        new FittedPads()
            .cut(Pads.rectangle(150, 90), 200, 120)
            .cut(new OutlineShape.Circle(100), -225, -120)
            .vent(-100, 180, 12)
            .vent(0, -186, 12)
            .insert(0, 184)
            .insert(-286, 40);
    PartResult part = p.run();
    assertThat(outer(part)).hasSizeGreaterThan(60);
    clear(part, box(125, 75, 275, 165), 8);
    clear(part, disc(-225, -120, 100), 8);
    clear(part, disc(-100, 180, 12), 3);
    clear(part, disc(0, -186, 12), 3);
    clear(part, disc(0, 184, 8), 3);
    clear(part, disc(-286, 40, 8), 3);
  }

  @Test
  void staplesMakeWayForACutOutNearTheEdgeAndStayOnTheirLine() {
    // 178 wide, so that its tongues reach; 18 from the right edge.
    PartResult part = new FittedPads().cut(Pads.rectangle(178, 178), 193, 0).run();
    clear(part, box(104, -89, 282, 89), 8);
    for (StaplePlan.Position p : outer(part)) {
      double in = Math.min(300 - Math.abs(p.at().x()), 200 - Math.abs(p.at().y()));
      assertThat(in).as(p.toString()).isGreaterThanOrEqualTo(12 - 0.02);
    }
    // None beside it, so that two neighbours stand further apart than it is wide.
    Finding gap = FittedPads.of(part, "staple-gap").get(0);
    assertThat(gap.value().orElseThrow()).isGreaterThan(178);
    PartResult moved = new FittedPads().cut(Pads.rectangle(178, 178), 150, 0).run();
    assertThat(FittedPads.of(moved, "staple-gap")).isEmpty();
  }

  /**
   * On the back a tongue of the cut-out of 150 x 90 is 12 from the edge 150 - 2 x 37.5708 = 74.86
   * wide on a long side and 14.86 at an end: a row and one staple.
   */
  @Test
  void tonguesAreStapledLastAndAsFarFromTheEdgeAsTheRest() {
    PartResult part = new FittedPads().cut(Pads.rectangle(150, 90), 40, -20).run();
    List<StaplePlan.Position> all = part.staples().positions();
    List<StaplePlan.Position> tongues = all.subList(outer(part).size(), all.size());
    assertThat(tongues).isNotEmpty().allMatch(p -> p.side().equals("cut-out 1"));
    Geometry hole = box(-35, -65, 115, 25);
    int ends = 0;
    for (StaplePlan.Position p : tongues) {
      assertThat(crown(p).distance(hole)).isCloseTo(12, within(1e-9));
      double x = p.at().x() - 40;
      double y = p.at().y() + 20;
      if (Math.abs(x) > 75) {
        ends++;
        assertThat(y).isCloseTo(0, within(1e-9));
      } else {
        assertThat(Math.abs(x) + CROWN / 2).isLessThan(74.86 / 2);
      }
    }
    assertThat(ends).isEqualTo(2);
    assertThat(tongues).hasSizeGreaterThanOrEqualTo(2 + 2 * 3);
  }

  @Test
  void aTonguesStapleMakesWayForAHole() {
    FittedPads p = new FittedPads().cut(Pads.rectangle(150, 90), 0, 0);
    int before = p.run().staples().positions().size();
    p.pads.holes = List.of(new Hole(87, 0, 8));
    PartResult part = p.run();
    assertThat(part.staples().positions()).hasSize(before - 1);
    for (StaplePlan.Position q : part.staples().positions()) {
      assertThat(crown(q).distance(disc(87, 0, 8))).isGreaterThanOrEqualTo(3 - 0.02);
    }
  }

  @Test
  void noTwoCrownsOfTonguesMeet() {
    PartResult part =
        new FittedPads()
            .cut(Pads.rectangle(120, 120), -100, 0)
            .cut(new OutlineShape.Trapezoid(180, 130, 110), 100, 0)
            .run();
    List<Geometry> crowns = new ArrayList<>();
    part.staples().positions().forEach(p -> crowns.add(crown(p)));
    for (int i = 0; i < crowns.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertThat(crowns.get(i).distance(crowns.get(j))).isGreaterThan(0.5);
      }
    }
  }

  @Test
  void staplesUnderAFlangeAreSaid() {
    Finding f = FittedPads.of(new FittedPads().insert(281, 10).run(), "insert-over-staples").get(0);
    assertThat(f.value().orElseThrow()).isGreaterThanOrEqualTo(1);
    assertThat(FittedPads.of(new FittedPads().insert(250, 10).run(), "insert-over-staples"))
        .isEmpty();
  }
}
