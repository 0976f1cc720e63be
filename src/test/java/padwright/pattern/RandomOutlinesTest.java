package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import padwright.cover.CornerPlan;
import padwright.design.Finding;
import padwright.geometry.Crossings;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.measure.InputRefused;

/** Ten thousand free outlines by seed: convex, hollow, with arcs. */
class RandomOutlinesTest {
  private static final long SEED = 20261125;
  private static final int OUTLINES = Integer.getInteger("outlines", 10_000);

  @Test
  void everyOutlineIsProvedOrAStopNamesWhyAndNoCutLineCrossesItself() {
    run(SEED);
  }

  /** A long run over other seeds: {@code mvn -Psoak test}. */
  @Test
  @Tag("soak")
  void fiftyThousandMoreAreToo() {
    for (int k = 1; k <= 5; k++) {
      run(SEED + k);
    }
  }

  private static void run(long seed) {
    RandomOutlines outlines = new RandomOutlines(seed);
    Map<String, Integer> corners = new TreeMap<>();
    Map<String, Integer> stops = new TreeMap<>();
    int proved = 0;
    int refused = 0;
    for (int i = 0; i < OUTLINES; i++) {
      Pads p = outlines.next();
      PartResult part;
      try {
        part = p.run();
      } catch (InputRefused e) {
        // Such as a size from which nothing is left of the board.
        assertThat(e.getMessage()).isNotBlank();
        refused++;
        continue;
      }
      for (Finding f : part.findings()) {
        if (f.level() == Finding.Level.STOP) {
          stops.merge(f.rule(), 1, Integer::sum);
        }
      }
      if (part.wrap().proved()) {
        proved++;
      } else {
        assertThat(part.findings())
            .as("outline %d: %s", i, part.wrap())
            .anyMatch(f -> f.level() == Finding.Level.STOP);
      }
      for (CornerPlan c : part.cover().corners()) {
        corners.merge(c.treatment().name(), 1, Integer::sum);
      }
      List<Vec2> base = part.shape().outline().flattened(0.01);
      for (var staple : part.staples().positions()) {
        assertThat(Polygons.contains(base, staple.at())).as("outline %d, a staple", i).isTrue();
      }
      for (PatternPiece piece : part.pieces()) {
        assertThat(piece.cutLine().signedArea()).as("outline %d: %s", i, piece.id()).isPositive();
        assertThat(Crossings.first(piece.cutLine()))
            .as("outline %d: %s of %s", i, piece.id(), part.asked().base().outline())
            .isEmpty();
      }
    }
    System.out.printf(
        Locale.ROOT,
        "free outlines, seed %d: %d of %d proved, %d refused; corners %s; stops %s%n",
        seed,
        proved,
        OUTLINES,
        refused,
        corners,
        stops);
    assertThat(proved).isGreaterThan((OUTLINES - refused) * 8 / 10);
  }
}
