package padwright.desk.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import padwright.desk.solid.Body.Kind;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.pattern.PartResult;
import padwright.shape.TautPath;

class SolidBodiesTest {
  private static final List<PartResult> PARTS =
      Stream.concat(SolidParts.demo().stream(), SolidParts.unusual().stream()).toList();

  private static Body body(PartResult part, Kind kind) {
    return Solid.of(part).bodies().stream().filter(b -> b.kind() == kind).findFirst().orElseThrow();
  }

  @TestFactory
  Stream<DynamicTest> everyBodyIsClosedAndHasAsManyHandlesAsHoles() {
    List<DynamicTest> tests = new ArrayList<>();
    for (PartResult part : PARTS) {
      for (Body b : Solid.of(part).bodies()) {
        tests.add(DynamicTest.dynamicTest(part.asked().name() + ": " + b.name(), () -> closed(b)));
      }
    }
    return tests.stream();
  }

  /** Every edge once each way; points less edges plus faces is 2 less 2 for each hole (Euler). */
  private static void closed(Body b) {
    assertThat(b.closed()).isTrue();
    Map<Long, Integer> uses = new HashMap<>();
    Set<Integer> points = new HashSet<>();
    int[] t = b.triangles();
    for (int h = 0; h < t.length; h++) {
      int next = t[h % 3 == 2 ? h - 2 : h + 1];
      uses.merge(((long) t[h] << 32) | next, 1, Integer::sum);
      points.add(t[h]);
    }
    assertThat(uses.values()).containsOnly(1);
    assertThat(uses.keySet()).allMatch(k -> uses.containsKey((k << 32) | (k >>> 32)));
    int euler = points.size() - uses.size() / 2 + t.length / 3;
    assertThat(euler).isLessThanOrEqualTo(2);
    assertThat(euler % 2).isZero();
    assertThat(b.volume()).isPositive();
  }

  /** Chords within 0.05 of a quarter circle take no more than that times its length off. */
  private static double chords(double radius) {
    return 0.05 * Math.PI / 2 * radius * 2 * (600 + 60);
  }

  /** 600 x 60 board, 12 thick, its back arris rounded to 1.5. */
  @Test
  void aBoardsVolumeIsItsSizesLessWhatTheArrisTakes() {
    double r = 1.5;
    // Along each side the arris takes a square less a quarter circle, drawn in a little at corners.
    double taken = (1 - Math.PI / 4) * r * r * 2 * (600 + 60);
    double volume = body(SolidParts.demo("desk-rest"), Kind.BOARD).volume();
    double exact = 600 * 60 * 12 - taken;
    assertThat(volume).isBetween(exact - chords(r), exact);
  }

  /** Of foam 12 high over 600 x 60 a quarter round of 6 takes (1 - pi / 4) r2 along each side. */
  @Test
  void aRoundedEdgeTakesItsClosedFormOffTheFoam() {
    Body foam =
        Solid.of(SolidParts.demo("desk-rest")).bodies().stream()
            .filter(b -> b.name().equals("foam layer 2"))
            .findFirst()
            .orElseThrow();
    // Slices by height: (600 - 2e)(60 - 2e) with e = r - sqrt(r2 - u2), u from 0 to r:
    // the mean of e is r (1 - pi / 4), of e2 it is r2 (5 / 3 - pi / 2).
    double r = 6;
    double first = r * (1 - Math.PI / 4);
    double second = r * r * (5.0 / 3 - Math.PI / 2);
    double rounded = r * (600 * 60 - 2 * first * 660 + 4 * second);
    double exact = 600 * 60 * 6 + rounded;
    assertThat(foam.volume()).isBetween(exact - chords(r), exact);
  }

  /** pi r2 h less two holes of 20 in the board of 18. */
  @Test
  void aRoundBoardIsACylinderWithItsHoles() {
    double volume = body(SolidParts.demo("stool-top"), Kind.BOARD).volume();
    assertThat(volume / (Math.PI * 18 * (160 * 160 - 2 * 10 * 10))).isCloseTo(1, within(0.002));
  }

  @Test
  void aHoleIsThroughBoardAndFoamAndCovering() {
    PartResult part = SolidParts.demo("booth-back");
    for (Kind kind : List.of(Kind.BOARD, Kind.FOAM, Kind.COVERING)) {
      // The middle of a cut-out of 150 x 130 at 220, -60.
      assertThat(covers(body(part, kind), new Vec2(220, -60))).as(kind + "").isFalse();
      assertThat(covers(body(part, kind), new Vec2(220 - 140, -60))).isTrue();
    }
    double left = body(part, Kind.FOAM).volume() / 20;
    // The arc of some 780 is drawn with chords within 0.15 of it.
    assertThat(part.shape().outline().area() - left)
        .isBetween(150.0 * 130, 150.0 * 130 + 0.15 * 800);
  }

  private static boolean covers(Body b, Vec2 p) {
    int[] t = b.triangles();
    for (int i = 0; i < t.length; i += 3) {
      List<Vec2> flat = List.of(at(b, t[i]), at(b, t[i + 1]), at(b, t[i + 2]));
      if (Math.abs(Polygons.signedArea(flat)) > 1e-9
          && Polygons.contains(Polygons.anticlockwise(flat), p)) {
        return true;
      }
    }
    return false;
  }

  private static Vec2 at(Body b, int point) {
    return new Vec2(b.points()[3 * point], b.points()[3 * point + 1]);
  }

  /** The notch of the bench pad, 520 x 460, moved to the middle of the outline's box. */
  @Test
  void anLHasNothingInItsHollow() {
    PartResult part = SolidParts.demo("corner-bench");
    for (Body b : Solid.of(part).bodies()) {
      int[] t = b.triangles();
      for (int i = 0; i < t.length; i += 3) {
        Vec2 middle = at(b, t[i]).plus(at(b, t[i + 1])).plus(at(b, t[i + 2])).times(1.0 / 3);
        boolean inNotch = middle.x() > 380 - 450 + 3 && middle.y() > 360 - 410 + 3;
        assertThat(inNotch).as(b.name() + " at " + middle).isFalse();
      }
    }
    assertThat(body(part, Kind.FOAM).volume())
        .isCloseTo(40.0 * (900 * 820 - 520 * 460), within(1.0));
  }

  /**
   * Each side's outermost line stands where the taut path is furthest out, half a covering more.
   */
  @Test
  void theCoveringLiesWhereTheTautPathSays() {
    for (PartResult part : PARTS) {
      TautPath taut = part.shape().section().taut();
      double t = part.spec().coverThickness();
      double[] p = body(part, Kind.COVERING).points();
      double top = 0;
      double bottom = 0;
      for (int i = 2; i < p.length; i += 3) {
        top = Math.max(top, p[i]);
        bottom = Math.min(bottom, p[i]);
      }
      assertThat(top).isCloseTo(taut.neutral().start().y() + t / 2, within(1e-9));
      assertThat(bottom).isCloseTo(taut.neutral().end().y() - t / 2, within(1e-9));
    }
    PartResult rest = SolidParts.demo("desk-rest");
    double[] p = body(rest, Kind.COVERING).points();
    double half = 0;
    for (int i = 0; i < p.length; i += 3) {
      half = Math.max(half, p[i]);
    }
    // 600 long, 1 of covering on either side.
    assertThat(half).isCloseTo(301, within(1e-5));
  }

  /** The covering's volume is about its area times its thickness: 1 mm over the demo's rest. */
  @Test
  void theCoveringIsAsThickAsItIs() {
    PartResult rest = SolidParts.demo("desk-rest");
    double face = 600 * 60;
    double girth = 2 * (600 + 60);
    double turned = rest.cover().turnUnder().get(0);
    // Sides 36 high and the turn-under, mitred at four corners; the rounding saves (2 - pi / 2) r.
    double wall = 36 - (2 - Math.PI / 2) * 6;
    double area = face + girth * (wall + turned) - 4 * turned * turned;
    assertThat(body(rest, Kind.COVERING).volume()).isCloseTo(area, within(0.02 * area));
  }

  @Test
  void aBareSideHasNoCoveringBelowTheFaceAndAGluedOneNoneOnTheBack() {
    PartResult part = SolidParts.mixed();
    Body covering = body(part, Kind.COVERING);
    double bare = lowest(covering, new Vec2(-50, 200), 20);
    double glued = lowest(covering, new Vec2(-300, 0), 20);
    double turned = lowest(covering, new Vec2(300, -50), 20);
    assertThat(bare).isGreaterThan(50);
    assertThat(glued).isCloseTo(0, within(1e-6));
    assertThat(turned).isCloseTo(-part.spec().coverThickness(), within(1e-6));
  }

  /** The lowest place of any triangle that reaches within a distance of a place of the plan. */
  private static double lowest(Body b, Vec2 near, double within) {
    double low = Double.POSITIVE_INFINITY;
    int[] e = b.edges();
    for (int i = 0; i < e.length; i += 4) {
      Vec2 p = at(b, e[i]);
      Vec2 q = at(b, e[i + 1]);
      if (padwright.geometry.Segment.line(p, q).distanceTo(near) < within) {
        // Where it is nearest, along the edge.
        double length = Math.max(1e-9, p.distance(q));
        double f = padwright.geometry.Segment.line(p, q).nearest(near).distance(p) / length;
        double z = b.points()[3 * e[i] + 2] * (1 - f) + b.points()[3 * e[i + 1] + 2] * f;
        low = Math.min(low, z);
      }
    }
    return low;
  }

  @Test
  void bodiesAreCalledWhatAMakerCallsThem() {
    assertThat(Solid.of(SolidParts.demo("stool-top")).bodies())
        .extracting(Body::name)
        .startsWith("board", "foam layer 1", "foam layer 2", "wadding", "covering")
        .contains("dust cover");
    assertThat(Solid.of(SolidParts.demo("corner-bench")).bodies())
        .extracting(Body::name)
        .startsWith("board", "foam", "covering");
  }
}
