package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import padwright.cover.CornerPlan;
import padwright.design.Finding;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.Vec2;

/** A curve drawn as chords is treated as the same curve drawn as an arc. */
class ChordCurvesTest {
  private static final double[] END = {300, 0};
  private static final double[] BETWEEN = {5, 28};

  private static Pads pads(double[]... points) {
    Pads pads = new Pads();
    pads.outline = Pads.free(points);
    return pads;
  }

  private static Pads arc() {
    return pads(
        new double[] {0, 0},
        new double[] {300, 0, 1},
        new double[] {300, 200},
        new double[] {0, 200});
  }

  private static Pads chords(int n, boolean clockwise) {
    List<double[]> points = new ArrayList<>(List.of(new double[] {0, 0}, END));
    for (int k = 1; k < n; k++) {
      Vec2 p = new Vec2(300, 100).along(Vec2.polar(-Math.PI / 2 + k * Math.PI / n), 100);
      points.add(new double[] {Math.rint(p.x() * 1000) / 1000, Math.rint(p.y() * 1000) / 1000});
    }
    points.add(new double[] {300, 200});
    points.add(new double[] {0, 200});
    if (clockwise) {
      java.util.Collections.reverse(points);
    }
    return pads(points.toArray(double[][]::new));
  }

  @ParameterizedTest
  @ValueSource(ints = {20, 64, 180})
  void aHalfRoundEndGetsItsPleats(int n) {
    PartResult drawn = arc().run();
    PartResult read = chords(n, false).run();
    CornerPlan end = pleated(read);
    CornerPlan own = pleated(drawn);

    assertThat(end.pleats()).isEqualTo(own.pleats());
    assertThat(end.fullnessAtTrim()).isCloseTo(own.fullnessAtTrim(), within(0.01));
    // The surplus of a half circle about an upright wall: pi (s - x) by Gauss and Bonnet, with no
    // x on the wall; s from the face's edge to the trim line is wall and turn-under.
    assertThat(end.fullnessAtTrim()).isBetween(Math.PI * 65, Math.PI * 80);
    assertThat(read.cover().cut().area()).isCloseTo(drawn.cover().cut().area(), within(5.0));
    assertThat(read.wrap().failures()).isEmpty();
    assertThat(read.spec().assumptions())
        .anyMatch(
            a -> a.field().equals("base.outline") && a.value().equals(n + " sides are 1 arc"));
  }

  private static CornerPlan pleated(PartResult part) {
    return part.cover().corners().stream()
        .filter(c -> c.treatment() == Treatment.PLEATS)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theArcIsNamedByItsFirstAndLastSideWhicheverWayItWasDrawn() {
    PartResult there = chords(20, false).run();
    PartResult back = chords(20, true).run();

    assertThat(there.shape().sideNames())
        .containsExactly("side 1", "side 2 to 21", "side 22", "side 23");
    assertThat(there.cover().corners())
        .extracting(CornerPlan::name)
        .contains("point 1", "point 23");
    assertThat(back.shape().sideNames()).contains("side 2 to 21").hasSize(4);
    assertThat(back.cover().corners()).extracting(CornerPlan::name).contains("side 2 to 21");
    assertThat(back.cover().cut().area()).isCloseTo(there.cover().cut().area(), within(1e-6));
  }

  /** A run that has half of the chords parts them; its turn-under is where it was asked for. */
  @Test
  void aRunsSidesAreItsOwn() {
    Pads pads = chords(64, false);
    String[] sides =
        java.util.stream.IntStream.rangeClosed(2, 33)
            .mapToObj(k -> "side " + k)
            .toArray(String[]::new);
    pads.runs = List.of(Pads.turned(30, sides));
    PartResult part = pads.run();

    assertThat(part.shape().sideNames())
        .containsExactly("side 1", "side 2 to 33", "side 34 to 65", "side 66", "side 67");
    assertThat(part.shape().ends().of("side 2 to 33").turnUnder()).isEqualTo(30);
    assertThat(part.shape().ends().of("side 34 to 65").turnUnder()).isEqualTo(20);
  }

  /**
   * (r - x) / (r - s) - 1 of an annulus: a bay of radius 113.3 under a wall of 36 and its clips.
   */
  @Test
  void aHollowBayAsksForTheStretchOfItsArc() {
    List<double[]> points =
        new ArrayList<>(
            List.of(new double[] {0, 0}, new double[] {400, 0}, new double[] {400, 200}));
    double half = 2 * Math.atan(0.6);
    double r = 100 / Math.sin(half);
    for (int k = 0; k <= 44; k++) {
      double a = -Math.PI / 2 + half - k * 2 * half / 44;
      points.add(new double[] {200 + r * Math.cos(a), 200 + r * Math.cos(half) + r * Math.sin(a)});
    }
    points.add(new double[] {0, 200});
    Finding stretch =
        pads(points.toArray(double[][]::new)).run().findings().stream()
            .filter(f -> f.rule().equals("hollow-stretch"))
            .findFirst()
            .orElseThrow();

    assertThat(stretch.level()).isEqualTo(Finding.Level.STOP);
    // At the clips' tips, 6 past the arris: s = 24 + 12 + 6 and x = -6, bends aside.
    assertThat(stretch.value().orElseThrow())
        .isCloseTo(100 * ((r + 6) / (r - 42) - 1), within(6.0));
  }

  /** Two kinks of 2.8 degrees, 5 apart, turn 5.6; three of 2.5 turn 7.5: more than two corners. */
  @Test
  void slightKinksAreSummed() {
    PartResult two = kinked(2, 2.8).run();
    PartResult three = kinked(3, 2.5).run();
    PartResult far = kinked(2, 1.4).run();

    assertThat(kinks(two)).extracting(Finding::level).containsExactly(Finding.Level.CAUTION);
    assertThat(kinks(two).get(0).value().orElseThrow()).isCloseTo(5.6, within(1e-6));
    assertThat(kinks(three)).extracting(Finding::level).containsExactly(Finding.Level.STOP);
    assertThat(kinks(three).get(0).value().orElseThrow()).isCloseTo(7.5, within(1e-6));
    assertThat(kinks(far)).isEmpty();
  }

  private static List<Finding> kinks(PartResult part) {
    return part.findings().stream().filter(f -> f.rule().equals("outline-kinks")).toList();
  }

  /** At most two short sides: three points lie on some circle always, and are no curve. */
  private static Pads kinked(int kinks, double degrees) {
    List<double[]> points = new ArrayList<>();
    points.add(new double[] {0, 300});
    points.add(new double[] {0, 0});
    Vec2 at = new Vec2(200, 0);
    for (int k = 1; k <= kinks; k++) {
      points.add(new double[] {at.x(), at.y()});
      double length = k == kinks ? 200 : BETWEEN[k - 1];
      at = at.along(Vec2.polar(Math.toRadians(k * degrees)), length);
    }
    points.add(new double[] {at.x(), at.y()});
    points.add(new double[] {at.x(), 300});
    return pads(points.toArray(double[][]::new));
  }

  /** Point 6 lies within the arc that the chords are read as: no corner is there to be folded. */
  @Test
  void aTreatmentNamedAtAPointThatIsNoCornerIsStopped() {
    Pads pads = chords(64, false);
    List<Treatment> each = new ArrayList<>(java.util.Collections.nCopies(67, Treatment.AUTO));
    each.set(5, Treatment.SINGLE_PLEAT);
    pads.treatments = each;
    assertThat(pads.run().findings())
        .filteredOn(f -> f.rule().equals("corner-treatment"))
        .singleElement()
        .matches(f -> f.level() == Finding.Level.STOP)
        .matches(f -> f.message().contains("point 6"));

    each.set(5, Treatment.AUTO);
    pads.treatments = each;
    assertThat(pads.run().findings()).extracting(Finding::rule).doesNotContain("corner-treatment");
  }

  /** A rectangle of 300 with rounded corners drawn as chords is no wider than 300. */
  @Test
  void aHairOfWidthChangesNoDefault() {
    List<double[]> points = new ArrayList<>();
    double[][] centres = {{360, 40}, {360, 260}, {40, 260}, {40, 40}};
    for (int c = 0; c < 4; c++) {
      for (int k = 0; k <= 9; k++) {
        Vec2 p =
            new Vec2(centres[c][0], centres[c][1])
                .along(Vec2.polar(-Math.PI / 2 + (c + k / 9.0) * Math.PI / 2), 40);
        points.add(new double[] {Math.rint(p.x() * 1000) / 1000, Math.rint(p.y() * 1000) / 1000});
      }
    }
    Pads pads = pads(points.toArray(double[][]::new));
    pads.turnUnder = OptionalDouble.empty();
    Pads plain = new Pads();
    plain.outline = Pads.rectangle(400, 300, 40);
    plain.turnUnder = OptionalDouble.empty();

    assertThat(pads.run().spec().turnUnder()).isEqualTo(plain.run().spec().turnUnder());
  }
}
