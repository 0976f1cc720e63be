package padwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Chords of known arcs; radii, areas and errors are the closed forms of the circle. */
class ChordArcsTest {
  /** A board of 300 with a half round end of radius 100, drawn in so many chords. */
  private static Path halfRound(int chords) {
    List<Vec2> points = new ArrayList<>(List.of(new Vec2(0, 0)));
    for (int k = 0; k <= chords; k++) {
      points.add(new Vec2(300, 100).along(Vec2.polar(-Math.PI / 2 + k * Math.PI / chords), 100));
    }
    points.add(new Vec2(0, 200));
    return Path.polygon(points);
  }

  private static ChordArcs read(Path path) {
    return ChordArcs.of(path, (a, b) -> true);
  }

  /** Each chord leaves its arc by r (1 - cos(turn / 2)). */
  @ParameterizedTest
  @ValueSource(ints = {18, 20, 36, 64, 180})
  void aHalfRoundEndIsOneArcAgain(int chords) {
    ChordArcs read = read(halfRound(chords));

    assertThat(read.path().segments()).hasSize(4);
    Segment arc = read.path().segments().stream().filter(Segment::isArc).findFirst().orElseThrow();
    assertThat(arc.radius()).isCloseTo(100, within(1e-6));
    assertThat(arc.sweep()).isCloseTo(Math.PI, within(1e-6));
    assertThat(read.error()).isCloseTo(100 * (1 - Math.cos(Math.PI / chords / 2)), within(1e-6));
    assertThat(read.path().area()).isCloseTo(60_000 + Math.PI * 5_000, within(1e-3));
    assertThat(read.chords()).isEqualTo(chords);
    assertThat(read.arcs()).isEqualTo(1);
  }

  /** 17 chords turn by 10.6 degrees each: those are corners. */
  @Test
  void sidesThatTurnByMoreThanTenDegreesStaySides() {
    Path path = halfRound(17);
    assertThat(read(path).path()).isSameAs(path);
  }

  /** On a circle of 2 m a chord of 8 degrees leaves it by 4.9 mm: a splayed seat's own sides. */
  @ParameterizedTest
  @CsvSource({"8, 0", "4, 0", "3, 4"})
  void longSidesOfALargeCircleStaySides(double degrees, int chords) {
    List<Vec2> points = new ArrayList<>();
    for (int k = 0; k <= 4; k++) {
      points.add(Vec2.polar(Math.toRadians(90 - k * degrees)).times(2000));
    }
    points.add(new Vec2(0, -500));
    java.util.Collections.reverse(points);
    assertThat(read(Path.polygon(points)).chords()).isEqualTo(chords);
  }

  /** r (1 - cos 1.5 degrees) = 0.69 mm at 2 m. */
  @Test
  void aRoundOutlineIsArcsAllRound() {
    List<Vec2> points = new ArrayList<>();
    for (int k = 0; k < 90; k++) {
      points.add(Vec2.polar(k * Math.PI / 45).times(150));
    }
    ChordArcs read = read(Path.polygon(points));

    assertThat(read.path().segments()).hasSizeBetween(2, 3).allMatch(Segment::isArc);
    assertThat(read.path().area()).isCloseTo(Math.PI * 150 * 150, within(1e-3));
    assertThat(read.path().start().distance(read.path().end())).isZero();
  }

  /** A bay: the arc bows in, its bulge is negative, and what is left of the board is less. */
  @Test
  void aHollowIsReadAsWell() {
    List<Vec2> points =
        new ArrayList<>(List.of(new Vec2(0, 0), new Vec2(400, 0), new Vec2(400, 200)));
    for (int k = 0; k <= 20; k++) {
      points.add(new Vec2(200, 260).along(Vec2.polar(Math.toRadians(-40 - 5 * k)), 100));
    }
    points.add(new Vec2(0, 200));
    ChordArcs read = read(Path.polygon(points));

    Segment arc = read.path().segments().stream().filter(Segment::isArc).findFirst().orElseThrow();
    assertThat(arc.sweep()).isCloseTo(Math.toRadians(-100), within(1e-6));
    assertThat(arc.radius()).isCloseTo(100, within(1e-6));
    assertThat(read.arcs()).isEqualTo(1);
  }

  /** Two radii in a row, without a kink between them, are two arcs. */
  @Test
  void anArcEndsWhereTheRadiusChanges() {
    List<Vec2> points = new ArrayList<>(List.of(new Vec2(-300, 0), new Vec2(0, 0)));
    for (int k = 1; k <= 9; k++) {
      points.add(new Vec2(0, 100).along(Vec2.polar(Math.toRadians(-90 + 5 * k)), 100));
    }
    Vec2 centre = new Vec2(0, 100).along(Vec2.polar(Math.toRadians(-45)), -200);
    for (int k = 1; k <= 9; k++) {
      points.add(centre.along(Vec2.polar(Math.toRadians(-45 + 5 * k)), 300));
    }
    points.add(new Vec2(-300, points.get(points.size() - 1).y()));
    ChordArcs read = read(Path.polygon(points));

    assertThat(read.path().segments())
        .filteredOn(Segment::isArc)
        .extracting(s -> Math.rint(s.radius()))
        .containsExactly(100.0, 300.0);
  }

  /** A third neighbour that is said to be of another kind parts the arc. */
  @Test
  void whatIsNotAlikeIsNeverJoined() {
    ChordArcs read = ChordArcs.of(halfRound(20), (a, b) -> a != 10);

    assertThat(read.arcs()).isEqualTo(2);
    assertThat(read.runs()).extracting(ChordArcs.Run::count).containsExactly(1, 10, 10, 1, 1);
  }

  /** Points rounded to a tenth: 5.6 mm chords of a circle of 160 whose turns go both ways. */
  @Test
  void pointsRoundedToATenthMakeFewArcsThatKeepTheirCircle() {
    List<Vec2> points = new ArrayList<>();
    for (int k = 0; k < 180; k++) {
      Vec2 p = Vec2.polar(k * Math.PI / 90).times(160);
      points.add(new Vec2(Math.rint(p.x() * 10) / 10, Math.rint(p.y() * 10) / 10));
    }
    ChordArcs read = read(Path.polygon(points));

    assertThat(read.chords()).isEqualTo(180);
    assertThat(read.arcs()).isLessThan(12);
    for (Vec2 p : read.path().flattened(0.01)) {
      assertThat(p.length()).isCloseTo(160, within(0.25));
    }
  }
}
