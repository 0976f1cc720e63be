package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padwright.cover.LayerCounter;
import padwright.cover.WrapProof;
import padwright.cover.WrapReport;
import padwright.design.EdgeShape;
import padwright.design.Finding;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.Run;
import padwright.geometry.Intersections;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.Passage;
import padwright.shape.SectionBuilder;
import padwright.shape.Stack;

/**
 * A run of a rounded rectangle whose edge passes into the rest's along the straight sides beyond
 * its rounded corners. Lengths by hand: board 12, foam 24, covering 1.0 with its neutral line 0.5
 * outside the hull, turn-under 20; base 400 x 300, corners of 30.
 */
class PassageTest {
  /** Down a square edge: wall 36, two quarter bends of radius 0.5, turn-under 20. */
  private static final double SQUARE = 36 + Math.PI / 2 + 20;

  /** Over an overhang of 8: 8 on the top, 24 down, slanting 8 in and 12 down, half a circle. */
  private static final double OVER = 8 + 24 + Math.hypot(8, 12) + Math.PI / 2 + 20;

  private static Run run(Optional<EdgeShape> edge, OptionalDouble overhang, double passage) {
    return new Run(
        List.of("front"),
        edge,
        OptionalDouble.empty(),
        overhang,
        Optional.empty(),
        OptionalDouble.of(passage));
  }

  private static Pads seat(double radius, Run run) {
    Pads pads = Pads.seat(run);
    pads.outline = new OutlineShape.Rectangle(400, 300, List.of(radius, radius, radius, radius));
    return pads;
  }

  private static double right(Path path, double y) {
    double most = Double.NEGATIVE_INFINITY;
    Segment level = Segment.line(new Vec2(0, y), new Vec2(1000, y));
    for (Segment s : path.segments()) {
      for (Vec2 p : Intersections.between(s, level)) {
        most = Math.max(most, p.x());
      }
    }
    return most;
  }

  @Test
  void foamAndCoverGoStraightFromOneSectionToTheOther() {
    PartResult part = seat(30, run(Optional.empty(), OptionalDouble.of(8), 80)).run();
    Path foam = part.shape().foam().get(0);
    Path trim = part.cover().trim();
    // The passage lies on the right side from -120, where the corner ends, to -40.
    assertThat(right(foam, -119.99)).isCloseTo(208, within(0.01));
    assertThat(right(foam, -80)).isCloseTo(204, within(1e-9));
    assertThat(right(foam, -40)).isCloseTo(200, within(1e-9));
    assertThat(right(foam, 50)).isCloseTo(200, within(1e-9));
    assertThat(foam.bounds().minY()).isCloseTo(-158, within(1e-9));
    assertThat(right(trim, -119.99) - 200).isCloseTo(OVER, within(0.01));
    assertThat(right(trim, -80) - 200).isCloseTo((OVER + SQUARE) / 2, within(1e-9));
    assertThat(right(trim, -39) - 200).isCloseTo(SQUARE, within(1e-9));
    assertThat(part.wrap().failures()).isEmpty();
    assertThat(part.stopped()).isFalse();
    assertThat(part.findings()).extracting(Finding::rule).contains("run-passage");
  }

  @Test
  void aSideMayHaveAPassageAtEitherEnd() {
    Pads pads = seat(30, run(Optional.empty(), OptionalDouble.of(8), 60));
    Run back =
        new Run(
            List.of("back"),
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.of(4),
            Optional.empty(),
            OptionalDouble.of(40));
    pads.runs = List.of(pads.runs.get(0), back);
    PartResult part = pads.run();
    Path foam = part.shape().foam().get(0);
    // The right side runs from -120 to 120: 8 out falls to 0 by -60, and rises to 4 from 80 on.
    assertThat(right(foam, -90)).isCloseTo(204, within(1e-9));
    assertThat(right(foam, 0)).isCloseTo(200, within(1e-9));
    assertThat(right(foam, 100)).isCloseTo(202, within(1e-9));
    assertThat(part.shape().sideNames()).contains("right passage", "right", "right passage 2");
    assertThat(part.wrap().failures()).isEmpty();
  }

  @Test
  void aFreeOutlineHasPassagesTooAlsoWhereItRunsInAndOut() {
    // An L whose long front is drawn as two sides in one line; the first has the run.
    List<Vec2> at =
        List.of(
            new Vec2(0, 0),
            new Vec2(300, 0),
            new Vec2(800, 0),
            new Vec2(800, 500),
            new Vec2(400, 500),
            new Vec2(400, 300),
            new Vec2(0, 300));
    Pads pads = new Pads();
    pads.outline =
        new OutlineShape.FreePath(
            at.stream()
                .map(p -> new OutlineShape.Point(p, new OutlineShape.Leg.Straight()))
                .toList());
    pads.runs =
        List.of(
            new Run(
                List.of("side 1"),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(6),
                Optional.empty(),
                OptionalDouble.of(100)));
    PartResult part = pads.run();
    Path foam = part.shape().foam().get(0);
    double front = part.shape().outline().bounds().minY();
    double left = part.shape().outline().bounds().minX();
    assertThat(below(foam, left + 200)).isCloseTo(front - 6, within(1e-6));
    assertThat(below(foam, left + 350)).isCloseTo(front - 3, within(1e-6));
    assertThat(below(foam, left + 500)).isCloseTo(front, within(1e-6));
    assertThat(part.shape().sideNames()).contains("side 2 passage");
    assertThat(part.wrap().failures()).isEmpty();
    assertThat(part.findings()).extracting(Finding::rule).contains("run-passage");
  }

  private static double below(Path path, double x) {
    Segment level = Segment.line(new Vec2(x, 0), new Vec2(x, -1000));
    double least = Double.POSITIVE_INFINITY;
    for (Segment s : path.segments()) {
      for (Vec2 p : Intersections.between(s, level)) {
        least = Math.min(least, p.y());
      }
    }
    return least;
  }

  @Test
  void aThreadAlongAPassageIsStretchedByItsSlant() {
    // Without thickness: on the wall a place of one path length lies 8 out and 8 up from the other.
    Stack plain =
        new Stack(12, 0, List.of(new Stack.Layer(24, 0)), new EdgeShape.Square(), 0, false);
    Passage passage =
        new Passage(
            SectionBuilder.build(plain, List.of("foam"), "board", "", 0, 20),
            SectionBuilder.build(plain.withOverhang(8), List.of("foam"), "board", "", 0, 20),
            List.of(),
            60);
    double by = Math.hypot(8, 8);
    assertThat(passage.stretch()).isCloseTo(Math.hypot(60, by) / 60 - 1, within(1e-9));
    double wanted = passage.lengthFor(0.01);
    assertThat(Math.hypot(wanted, by) / wanted).isCloseTo(1.01, within(1e-9));
  }

  /**
   * The stretch against the covering as it is laid: a thread at one path length goes from stretch
   * to stretch through the place that it has in each one's own section. No way is shorter than the
   * straight one that the finding states, and the stretches' own is hardly longer.
   */
  @Test
  void theStretchesAThreadRunsThroughAreHardlyLongerThanTheStraightWay() {
    for (EdgeShape edge :
        List.of(new EdgeShape.Square(), new EdgeShape.Round(15), new EdgeShape.Bevel(10))) {
      PartResult part = seat(30, run(Optional.of(edge), OptionalDouble.of(8), 60)).run();
      for (Passage p : part.shape().sections().passages().values()) {
        double most = 0;
        int n = p.stations().size();
        double to = Math.min(p.start().taut().developed(), p.end().taut().developed());
        for (double s = 0; s <= to; s += 0.5) {
          double way = 0;
          Vec2 before = p.start().taut().at(s);
          double x = 0;
          for (int k = 0; k <= n; k++) {
            Vec2 at = k < n ? p.stations().get(k).at(s) : p.end().taut().at(s);
            double next = k < n ? p.length() * (k + 0.5) / n : p.length();
            way += Math.hypot(next - x, at.distance(before));
            before = at;
            x = next;
          }
          most = Math.max(most, way / p.length() - 1);
        }
        assertThat(n).isGreaterThan(2);
        assertThat(most).isBetween(0.97 * p.stretch(), 1.15 * p.stretch() + 1e-4);
      }
    }
  }

  @Test
  void halfWayBetweenTwoShapesTheEdgeStandsHalfWayBetweenThem() {
    Stack square =
        new Stack(12, 0, List.of(new Stack.Layer(24, 0)), new EdgeShape.Square(), 0, false);
    Stack bevelled = square.withEdge(new EdgeShape.Bevel(10));
    // A bevel half gone: 5 in at the top, 10 down, so a slant of sqrt(125) for 5 and 10.
    double expected = 36 + 20 - 10 - 5 + Math.hypot(5, 10);
    double half = SectionBuilder.taut(square.towards(bevelled, 0.5), 0, 20).developed();
    assertThat(half).isCloseTo(expected, within(1e-9));
    double whole = SectionBuilder.taut(square.towards(bevelled, 1), 0, 20).developed();
    assertThat(whole).isCloseTo(36 + 20 - 20 + Math.hypot(10, 10), within(1e-9));
  }

  @Test
  void whereNoLengthIsGivenOrNoRoomIsLeftItSaysSo() {
    Run without =
        new Run(
            List.of("front"),
            Optional.of(new EdgeShape.Round(6)),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty());
    assertThat(seat(30, without).run().findings())
        .filteredOn(f -> f.level() == Finding.Level.STOP)
        .extracting(Finding::rule)
        .containsOnly("run-section-smooth");
    // The side is 240 long.
    Run tooLong = run(Optional.of(new EdgeShape.Round(6)), OptionalDouble.empty(), 235);
    assertThat(seat(30, tooLong).run().findings())
        .filteredOn(f -> f.level() == Finding.Level.STOP)
        .extracting(Finding::rule)
        .containsOnly("run-passage-no-room");
    // At a sharp corner none is needed and none is laid.
    assertThat(seat(0, tooLong).run().findings())
        .extracting(Finding::rule)
        .contains("run-section")
        .doesNotContain("run-passage");
  }

  @Test
  void aCoverCutShortInThePassageAloneFailsTheProof() {
    PartResult part = seat(30, run(Optional.empty(), OptionalDouble.of(8), 80)).run();
    List<Vec2> cut = part.cover().trim().flattened(0.05);
    // In by 5 at one point of the trim line in the middle of the passage.
    int at = -1;
    for (int i = 0; i < cut.size(); i++) {
      Vec2 next = cut.get((i + 1) % cut.size());
      if (cut.get(i).y() < -80 && next.y() > -80 && next.x() > 200) {
        at = i + 1;
      }
    }
    List<Vec2> spoilt = new ArrayList<>(cut);
    spoilt.add(at, new Vec2(200 + (OVER + SQUARE) / 2 - 5, -80));
    assertThat(prove(part, cut).failures()).isEmpty();
    assertThat(prove(part, spoilt).failures()).singleElement().asString().contains("turn-under");
  }

  private static WrapReport prove(PartResult part, List<Vec2> cut) {
    return WrapProof.check(
        cut, part.cover().skeleton(), List.of(), List.of(), part.shape().ends(), 0);
  }

  @Test
  void randomPassagesAreProvedOrSayWhyNot() {
    Random random = new Random(20261126);
    int proved = 0;
    for (int k = 0; k < 200; k++) {
      EdgeShape shape =
          List.of(
                  new EdgeShape.Round(4 + random.nextDouble() * 16),
                  new EdgeShape.Bevel(4 + random.nextDouble() * 12),
                  new EdgeShape.FullRound(),
                  new EdgeShape.Square())
              .get(random.nextInt(4));
      Run run =
          run(
              Optional.of(shape),
              OptionalDouble.of(-4 + random.nextDouble() * 14),
              10 + random.nextDouble() * 120);
      PartResult part = seat(10 + random.nextDouble() * 100, run).run();
      assertThat(part.wrap().proved() || part.stopped()).as("%s %s", k, run).isTrue();
      proved += part.wrap().proved() ? 1 : 0;
      if (part.stopped()) {
        continue;
      }
      LayerCounter layers =
          new LayerCounter(part.cover().trim().flattened(0.05), part.cover().skeleton());
      for (Segment s : part.shape().outline().segments()) {
        if (!s.isArc()) {
          Vec2 inside = s.pointAt(0.5).along(s.directionAt(0.5).left(), 5);
          assertThat(layers.at(inside)).as("%s", s).isPositive();
        }
      }
    }
    assertThat(proved).isGreaterThan(150);
  }

  @Test
  void aMirroredPassageGivesTheMirroredCover() {
    Run front = run(Optional.of(new EdgeShape.Round(12)), OptionalDouble.of(6), 70);
    PartResult part = seat(25, front).run();
    for (double y = -140; y < 140; y += 7) {
      assertThat(left(part.cover().trim(), y))
          .isCloseTo(right(part.cover().trim(), y), within(1e-9));
    }
  }

  private static double left(Path path, double y) {
    double most = Double.NEGATIVE_INFINITY;
    Segment level = Segment.line(new Vec2(0, y), new Vec2(-1000, y));
    for (Segment s : path.segments()) {
      for (Vec2 p : Intersections.between(s, level)) {
        most = Math.max(most, -p.x());
      }
    }
    return most;
  }
}
