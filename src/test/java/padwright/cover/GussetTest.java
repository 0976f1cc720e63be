package padwright.cover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padwright.cover.SpaceHollow.Edge;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;

/**
 * What is sewn together must be of one length (common practice, no source). The lengths are those
 * of lines sampled in space by {@link SpaceHollow}, which knows the solid and nothing of the cover.
 */
class GussetTest {
  private static final long SEED = 20261126;

  /** What two seams sewn together may differ by, mm. */
  private static final double SEWN = 0.1;

  private static final double[] TURNS = {20, 45, 70, 90, 110, 135};

  private static double length(Path path) {
    return path.segments().stream().mapToDouble(Segment::length).sum();
  }

  private static List<Vec2> points(Path path) {
    List<Vec2> points = new ArrayList<>();
    points.add(path.start());
    path.segments().forEach(s -> points.add(s.end()));
    return points;
  }

  /** The seams of both halves, each from the tip down. */
  private static List<List<Vec2>> seams(Gusset g) {
    List<List<Vec2>> both = new ArrayList<>();
    if (g.halved()) {
      g.pieces().forEach(p -> both.add(points(p.seam())));
      return both;
    }
    List<Vec2> all = points(g.pieces().get(0).seam());
    int tip = all.indexOf(all.stream().reduce((a, b) -> a.y() >= b.y() ? a : b).orElseThrow());
    List<Vec2> left = new ArrayList<>(all.subList(0, tip + 1));
    java.util.Collections.reverse(left);
    both.add(left);
    both.add(all.subList(tip, all.size()));
    return both;
  }

  private static Vec2 along(List<Vec2> line, double length) {
    double left = length;
    int i = 0;
    while (i + 2 < line.size() && left > line.get(i).distance(line.get(i + 1))) {
      left -= line.get(i).distance(line.get(i + 1));
      i++;
    }
    return line.get(i).along(line.get(i + 1).minus(line.get(i)).unit(), left);
  }

  private static double length(List<Vec2> line) {
    double sum = 0;
    for (int i = 0; i + 1 < line.size(); i++) {
      sum += line.get(i).distance(line.get(i + 1));
    }
    return sum;
  }

  @Test
  void bothSeamsAreAsLongAsThoseOfTheCoverInSpaceOverEveryEdge() {
    for (Edge edge : Edge.values()) {
      for (double turn : TURNS) {
        SpaceHollow space = new SpaceHollow(edge, Math.toRadians(turn));
        PartResult part = space.pads().run();
        String what = edge + " " + turn;
        assertThat(part.wrap().proved()).as(what + part.wrap()).isTrue();
        Gusset g = part.cover().gussets().get(0);
        for (int side = 0; side < 2; side++) {
          double sewn = space.length(g.seamsOnCover().get(side), side == 0);
          assertThat(length(seams(g).get(side))).as(what).isCloseTo(sewn, within(SEWN));
        }
        assertThat(g.easing()).as(what).isCloseTo(0, within(SEWN));
      }
    }
  }

  @Test
  void eachRungIsAsLongAsOnTheWallAndTheArrisAsLongAsInSpace() {
    for (Edge edge : Edge.values()) {
      for (double turn : TURNS) {
        SpaceHollow space = new SpaceHollow(edge, Math.toRadians(turn));
        Gusset g = space.pads().run().cover().gussets().get(0);
        Path onCover = g.seamsOnCover().get(0);
        double tip = space.level(onCover.start());
        double end = space.level(onCover.end());
        for (double s = tip + 6; s < space.backStart(); s += 3) {
          String what = edge + " " + turn + " at " + s;
          double arris = space.arris(tip, s);
          double seam = length(onCover) * (s - tip) / (end - tip);
          double wide = space.rung(onCover, s);
          for (int side = 0; side < 2; side++) {
            Gusset.Piece piece = g.pieces().get(g.halved() ? side : 0);
            Vec2 foot = along(points(piece.arris()), arris);
            Vec2 to = along(seams(g).get(side), seam);
            // At the tip the gusset begins where the covering does, half a mm off the arris; one
            // piece may be a quarter short where the arris bends sharply.
            assertThat(foot.distance(to)).as(what).isCloseTo(wide, within(0.4));
          }
        }
        // It begins half a mm from the arris, so it may be as much shorter.
        double down = space.arris(tip, space.backStart()) + CornerCut.JOINED;
        assertThat(length(g.pieces().get(0).arris()))
            .as(edge + " " + turn)
            .isCloseTo(down, within(0.5));
      }
    }
  }

  /** Every wall is unrolled without strain, so a half by itself keeps its area and its angles. */
  @Test
  void halvesThatAreCutApartAreAsLargeAsOnTheWall() {
    int found = 0;
    for (Edge edge : Edge.values()) {
      for (double turn : TURNS) {
        SpaceHollow space = new SpaceHollow(edge, Math.toRadians(turn));
        Gusset g = space.pads().run().cover().gussets().get(0);
        if (!g.halved()) {
          continue;
        }
        found++;
        Path onCover = g.seamsOnCover().get(0);
        double tip = space.level(onCover.start());
        double down = space.backStart();
        double wanted = 0;
        for (int k = 0; k < 1000; k++) {
          wanted +=
              (down - tip) / 1000 * space.rung(onCover, tip + (down - tip) * (k + 0.5) / 1000);
        }
        List<Vec2> half = new ArrayList<>(seams(g).get(1));
        List<Vec2> arris = points(g.pieces().get(1).arris());
        for (int i = arris.size() - 1; i >= 0; i--) {
          half.add(arris.get(i));
        }
        List<Vec2> wall = Polygons.below(half, new Vec2(0, -1), down - tip);
        // Two chords and half a mm at the tip, over 3 mm.
        double area = Math.abs(Polygons.signedArea(wall));
        assertThat(area).as(edge + " " + turn).isCloseTo(wanted, within(2.0));
      }
    }
    assertThat(found).isGreaterThan(8);
  }

  /**
   * Over a square edge the gusset is a plain triangle below its tip, within what the tip is drawn
   * together.
   */
  @Test
  void overASquareEdgeItIsATriangle() {
    for (double turn : TURNS) {
      SpaceHollow space = new SpaceHollow(Edge.SQUARE, Math.toRadians(turn));
      Gusset g = space.pads().run().cover().gussets().get(0);
      double half = Math.toRadians(turn) / 2;
      double tip = 0.5 / Math.tan(half);
      // Sharp corners elsewhere leave less than the 20 asked for.
      double end = space.level(g.seamsOnCover().get(0).end());
      assertThat(end).isBetween(space.backStart(), space.backStart() + 20 + 1e-9);
      double foot = end * Math.tan(half) + Gusset.ALLOWANCE / Math.cos(half);
      List<Vec2> seam = points(g.pieces().get(0).seam());
      assertThat(g.halved()).isFalse();
      assertThat(Math.abs(Polygons.signedArea(seam)))
          .as("turn " + turn)
          .isCloseTo((end - tip) * (foot + 0.5), within(0.006 * end * foot));
      Vec2 last = seam.get(seam.size() - 1);
      Vec2 before = seam.get(seam.size() - 2);
      double slope = Math.atan2(last.x() - before.x(), before.y() - last.y());
      assertThat(slope).isCloseTo(Math.atan((foot - 0.5) / (end - tip)), within(0.02));
      assertThat(last.x()).isCloseTo(foot, within(0.1));
    }
  }

  @Test
  void whatTheGussetAsksOfTheMakerIsSaid() {
    Random random = new Random(SEED);
    for (int i = 0; i < 60; i++) {
      Edge edge = Edge.values()[random.nextInt(Edge.values().length)];
      SpaceHollow space = new SpaceHollow(edge, 0.5 + 1.5 * random.nextDouble());
      Pads pads = space.pads();
      pads.coverThickness = OptionalDouble.of(1.5 * random.nextDouble());
      PartResult part = pads.run();
      String what = "seed " + SEED + ", part " + i;
      assertThat(part.cover().gussets()).as(what).hasSize(1);
      Gusset g = part.cover().gussets().get(0);
      assertThat(g.easing()).as(what).isCloseTo(0, within(SEWN));
      for (Gusset.Piece piece : g.pieces()) {
        List<Vec2> cut = piece.cut().flattened(0.01);
        for (Path line : List.of(piece.seam(), piece.arris())) {
          for (Segment s : line.segments()) {
            assertThat(Polygons.contains(cut, s.pointAt(0.5))).as(what).isTrue();
            assertThat(Polygons.contains(cut, s.pointAt(0.02))).as(what).isTrue();
          }
        }
        assertThat(padwright.geometry.Crossings.first(piece.cut())).as(what).isEmpty();
      }
      assertThat(part.findings())
          .as(what)
          .filteredOn(f -> f.rule().equals("corner-gusset"))
          .hasSize(1)
          .allMatch(f -> f.remedy().contains("halves") == g.halved())
          .allMatch(f -> f.remedy().contains("aslant") == g.slant() >= 2);
      assertThat(part.pieces())
          .as(what)
          .filteredOn(p -> p.id().startsWith("gusset-1"))
          .hasSize(g.halved() ? 2 : 1);
    }
  }
}
