package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import padwright.design.Finding;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Hole;
import padwright.fastening.StaplePlan;
import padwright.fastening.Withdrawal;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/** Staple depths, holding and setting out. */
class StapleFiguresTest {
  /**
   * How far within an outline's arc its chords run, mm: they measure a distance that much short.
   */
  private static final double CHORD_ERROR = 0.001;

  private static PartResult leg(double leg, double board, OptionalDouble measured) {
    Pads pads = new Pads();
    pads.thickness = board;
    pads.leg = OptionalDouble.of(leg);
    pads.measured = measured;
    return pads.run();
  }

  private static Finding finding(PartResult part, String rule) {
    return part.findings().stream().filter(f -> f.rule().equals(rule)).findFirst().orElseThrow();
  }

  @Test
  void legEightInTwelveBirchLeavesFourAndAHalf() {
    // Birch plywood 12 has the lower limit 11.5 (maker's data sheet); 8 - 1.0 = 7.0, 11.5 - 7.0.
    Figures.StapleDepth single = leg(8, 12, OptionalDouble.empty()).figures().staples().single();
    assertThat(single.penetration()).isCloseTo(7.0, within(1e-9));
    assertThat(single.margin()).isCloseTo(4.5, within(1e-9));
  }

  @Test
  void legTwelveInTwelveBirchIsACautionAndMeasuringHelps() {
    PartResult part = leg(12, 12, OptionalDouble.empty());
    assertThat(part.figures().staples().single().margin()).isCloseTo(0.5, within(1e-9));
    assertThat(finding(part, "staple-margin").level()).isEqualTo(Finding.Level.CAUTION);
    PartResult measured = leg(12, 12, OptionalDouble.of(12.0));
    assertThat(measured.figures().staples().single().margin()).isCloseTo(1.0, within(1e-9));
  }

  @Test
  void legTwelveInNineIsAStopThatListsEveryLeg() {
    PartResult part = leg(12, 9, OptionalDouble.empty());
    Finding stop = finding(part, "staple-breakthrough");
    assertThat(stop.level()).isEqualTo(Finding.Level.STOP);
    long legs = Pads.CATALOGUE.staples().stream().mapToLong(s -> s.legs().size()).sum();
    assertThat(part.staples().legs()).hasSize((int) legs);
    for (StaplePlan.LegVerdict v : part.staples().legs()) {
      assertThat(v.verdict()).isNotBlank();
      assertThat(stop.message()).contains(v.staple());
    }
  }

  @Test
  void whereNoLegPassesThatIsSaidWithWhatToDo() {
    Pads pads = new Pads();
    pads.thickness = 4;
    PartResult part = pads.run();
    Finding none =
        part.findings().stream()
            .filter(f -> f.rule().startsWith("staple-none"))
            .findFirst()
            .orElseThrow();
    assertThat(none.remedy()).contains("thicker board").contains("glue");
    assertThat(part.figures().staples().suggestedLeg()).isEmpty();
  }

  @Test
  void withdrawalFollowsTheWoodHandbook() {
    // FPL-GTR-282 (2021) Eq. 8-1 p. 8-2, worked: G 0.48, D 3.33, L 38 mm -> 1,093.2 N.
    assertThat(Withdrawal.nail(0.48, 3.33, 38)).isCloseTo(1093.2, within(0.05));
    // Allowable, metric, as printed in an engineering table: G 0.5, 3.1 x 70 mm -> 365 N; ultimate
    // is about six times allowable there (1380 of 7850, in inch units).
    assertThat(Withdrawal.nail(0.5, 3.1, 70) * 1380 / 7850).isCloseTo(365, within(1.0));
  }

  @Test
  void theWiresEquivalentDiameterIsTheRootOfItsSides() {
    // EN 1995-1-1, 8.4 (through a summary): d = sqrt(a b); 0.9 x 0.7 -> 0.794 mm.
    assertThat(Withdrawal.equivalentDiameter(0.9, 0.7)).isCloseTo(0.794, within(0.0005));
    // Structural penetration 14 d = 11.1 mm for that wire: covering staples cannot meet it.
    assertThat(14 * Withdrawal.equivalentDiameter(0.9, 0.7)).isCloseTo(11.1, within(0.05));
  }

  @Test
  void aPullThatStaplesCannotHoldIsACaution() {
    Pads pads = new Pads();
    pads.pull = OptionalDouble.of(0.5);
    assertThat(finding(pads.run(), "staple-pull").level()).isEqualTo(Finding.Level.NOTE);
    pads.pull = OptionalDouble.of(50);
    assertThat(finding(pads.run(), "staple-pull").level()).isEqualTo(Finding.Level.CAUTION);
  }

  @Test
  void staplesStandAtTheirEdgeDistanceInGapsNoWiderThanTheSpacing() {
    for (OutlineShape outline :
        List.of(
            Pads.rectangle(600, 60),
            Pads.rectangle(400, 300),
            Pads.rectangle(400, 300, 40),
            new OutlineShape.Trapezoid(420, 380, 360),
            new OutlineShape.Circle(350),
            new OutlineShape.Ellipse(450, 320))) {
      Pads pads = new Pads();
      pads.outline = outline;
      PartResult part = pads.run();
      assertThat(part.staples().largestGap())
          .as(outline.toString())
          .isLessThanOrEqualTo(part.spec().spacing() + 1e-9);
      double e = part.spec().edgeDistance();
      for (StaplePlan.Position p : part.staples().positions()) {
        double edge = distanceToEdge(part, p.at());
        assertThat(edge).as(outline + " " + p).isGreaterThanOrEqualTo(e - CHORD_ERROR);
        assertThat(edge).as(outline + " " + p).isLessThanOrEqualTo(e * 1.5);
        assertThat(p.layers()).isGreaterThanOrEqualTo(1);
      }
      Set<Vec2> places = new HashSet<>();
      part.staples().positions().forEach(p -> places.add(p.at()));
      assertThat(places).hasSameSizeAs(part.staples().positions());
    }
  }

  private static double distanceToEdge(PartResult part, Vec2 p) {
    List<Vec2> points = part.shape().outline().flattened(CHORD_ERROR);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < points.size(); i++) {
      Vec2 a = points.get(i);
      Vec2 d = points.get((i + 1) % points.size()).minus(a);
      double t = Math.max(0, Math.min(1, p.minus(a).dot(d) / d.dot(d)));
      least = Math.min(least, a.along(d, t).distance(p));
    }
    return least;
  }

  /** Three quarters of a circle on a chord of 300, its staples in order by their angle. */
  @Test
  void theGapsOfABowOfOverAQuarterTurnAreThoseBetweenNeighbours() {
    Pads pads = new Pads();
    pads.outline = Pads.free(new double[] {0, 0}, new double[] {300, 0, Math.tan(3 * Math.PI / 8)});
    PartResult part = pads.run();

    Segment bow = part.shape().outline().segments().get(1);
    double widest = 0;
    for (String side : List.of("side 1", "side 2")) {
      List<Vec2> row =
          part.staples().positions().stream()
              .filter(p -> p.side().equals(side))
              .map(StaplePlan.Position::at)
              .sorted(
                  Comparator.comparingDouble(
                      p -> side.equals("side 1") ? p.x() : p.minus(bow.centre()).right().angle()))
              .toList();
      assertThat(row).hasSizeGreaterThan(8);
      for (int k = 0; k + 1 < row.size(); k++) {
        widest = Math.max(widest, row.get(k).distance(row.get(k + 1)));
      }
    }
    assertThat(part.staples().largestGap()).isCloseTo(widest, within(1e-9));
  }

  @Test
  void staplesKeepClearOfHoles() {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(400, 300);
    pads.holes = List.of(new Hole(0, -135, 12), new Hole(185, 20, 8));
    PartResult part = pads.run();
    for (StaplePlan.Position p : part.staples().positions()) {
      for (Hole h : pads.holes) {
        assertThat(p.at().distance(new Vec2(h.x(), h.y())))
            .isGreaterThan(h.diameter() / 2 + part.spec().staple().crown() / 2);
      }
    }
  }

  @Test
  void aSeatIsDrivenFrontBackSidesCornersLast() {
    // Front centre, rear centre, sides, outwards, corners last: Woodworker's Journal 32-6 p. 63.
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(420, 400);
    pads.kind = WrappedPad.Kind.SEAT;
    List<StaplePlan.Position> order = pads.run().staples().positions();
    assertThat(order.subList(0, 4).stream().map(StaplePlan.Position::side).toList())
        .containsExactly("front", "back", "left", "right");
    assertThat(order.get(0).at().x()).isCloseTo(0, within(1e-9));
    int firstCorner = 0;
    while (!order.get(firstCorner).corner()) {
      firstCorner++;
    }
    assertThat(order.subList(firstCorner, order.size())).allMatch(StaplePlan.Position::corner);
  }

  @Test
  void aRestIsDrivenLongSideByLongSideAndARoundPartByTheClock() {
    List<StaplePlan.Position> rest = new Pads().run().staples().positions();
    assertThat(rest.stream().map(StaplePlan.Position::side).distinct().limit(4).toList())
        .containsExactly("front", "back", "left", "right");
    Pads stool = new Pads();
    stool.outline = new OutlineShape.Circle(350);
    List<StaplePlan.Position> clock = stool.run().staples().positions();
    // 12, 6, 3 and 9 o'clock: common practice, no source.
    assertThat(clock.get(0).at().y()).isGreaterThan(150);
    assertThat(clock.get(1).at().y()).isLessThan(-150);
    assertThat(Math.abs(clock.get(2).at().x())).isGreaterThan(150);
    assertThat(clock.get(3).at().x()).isCloseTo(-clock.get(2).at().x(), within(1e-6));
  }

  @Test
  void frontRightIsDrivenAsTheFront() {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(420, 400);
    pads.kind = WrappedPad.Kind.SEAT;
    pads.front = WrappedPad.Side.RIGHT;
    assertThat(pads.run().staples().positions().get(0).side()).isEqualTo("right");
  }
}
