package padwright.cover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.OutlineShape;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;

/** What is sewn together must be of one length (common practice, no source). */
class GussetTest {
  private static final long SEED = 20261126;

  /** What two seams sewn together may differ by, mm: a stitch (own choice). */
  private static final double STITCH = 2;

  /** An L whose hollow corner is opened or closed by {@code lean}, the inner sides' slant. */
  private static OutlineShape hollow(double lean) {
    List<OutlineShape.Point> points = new ArrayList<>();
    for (Vec2 p :
        List.of(
            new Vec2(0, 0),
            new Vec2(900, 0),
            new Vec2(900, 400),
            new Vec2(400, 400 + lean),
            new Vec2(400 + lean, 900),
            new Vec2(0, 900))) {
      points.add(new OutlineShape.Point(p, new OutlineShape.Leg.Straight()));
    }
    return new OutlineShape.FreePath(points);
  }

  @Test
  void theSeamsOfAGussetAreAsLongAsThoseOfTheCover() {
    Random random = new Random(SEED);
    for (int i = 0; i < 60; i++) {
      Pads pads = new Pads();
      pads.outline = hollow(-60 + 120 * random.nextDouble());
      double foam = 20 + 40 * random.nextDouble();
      pads.foam = List.of(Pads.layer(foam, 0));
      pads.covering = "woven-wool";
      if (i % 3 == 1) {
        pads.edge = new EdgeShape.Round(foam * random.nextDouble() / 2);
      }
      PartResult part = new PatternEngine(Pads.CATALOGUE).run(pads.pad());
      CoverPlan cover = part.cover();
      assertThat(cover.gussets()).as("part %d", i).hasSize(1);
      Gusset g = cover.gussets().get(0);
      double easing =
          (g.seamsOnCover().stream().mapToDouble(GussetTest::length).sum() - length(g.seam())) / 2;
      String which = "seed " + SEED + ", part " + i;
      boolean square = i % 3 != 1;
      if (square) {
        assertThat(easing).as(which).isCloseTo(0, within(STITCH));
      }
      assertThat(g.easing()).as(which).isCloseTo(easing, within(1e-9));
      List<Vec2> cut = g.cut().flattened(0.01);
      for (Segment s : g.seam().segments()) {
        assertThat(Polygons.contains(cut, s.pointAt(0.5))).as(which + ": seam inside").isTrue();
        assertThat(Polygons.contains(cut, s.pointAt(0.02))).as(which + ": seam inside").isTrue();
      }
      // Over a shaped edge they may differ, and then it is said.
      assertThat(part.findings())
          .as(which)
          .filteredOn(f -> f.rule().equals("corner-gusset"))
          .allMatch(f -> f.remedy().contains("ease the ") == (Math.abs(easing) >= 2));
      assertThat(length(g.seamsOnCover().get(0)))
          .as("part %d: one section on both sides", i)
          .isCloseTo(length(g.seamsOnCover().get(1)), within(1e-6));
    }
  }

  private static double length(Path path) {
    return path.segments().stream().mapToDouble(s -> s.length()).sum();
  }
}
