package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import padwright.cover.CornerPlan;
import padwright.design.Finding;
import padwright.geometry.Path;
import padwright.measure.InputRefused;

/** Ten thousand parts by seed: each is proved, or stopped by a finding that names why. */
class RandomPartsTest {
  private static final long SEED = 20261125;
  private static final int PARTS = 10_000;

  @Test
  void everyPartIsProvedOrAStopNamesWhyAndMostAreProved() {
    run(SEED, PARTS);
  }

  /** A long run over other seeds: {@code mvn -Psoak test}. */
  @Test
  @Tag("soak")
  void aHundredThousandMoreAreToo() {
    for (int k = 1; k <= 10; k++) {
      run(SEED + k, PARTS);
    }
  }

  private static void run(long seed, int parts) {
    RandomPads pads = new RandomPads(seed);
    Map<String, Integer> corners = new TreeMap<>();
    Map<String, Integer> stops = new TreeMap<>();
    int proved = 0;
    int refused = 0;
    for (int i = 0; i < parts; i++) {
      Pads p = pads.next();
      PartResult part;
      try {
        part = p.run();
      } catch (InputRefused r) {
        // A small opening under a thick pad has no room for the pleats: one in some ten thousand.
        assertThat(r.path()).isNotBlank();
        assertThat(r.remedy()).isNotBlank();
        refused++;
        continue;
      }
      if (part.wrap().proved()) {
        proved++;
      } else {
        assertThat(part.findings())
            .as("part %d: %s", i, part.wrap())
            .anyMatch(f -> f.level() == Finding.Level.STOP && f.rule().startsWith("wrap-"));
      }
      for (Finding f : part.findings()) {
        assertThat(f.message()).isNotBlank();
        assertThat(f.source()).isNotBlank();
        assertThat(f.remedy()).isNotBlank();
        if (f.level() == Finding.Level.STOP) {
          stops.merge(f.rule(), 1, Integer::sum);
        }
      }
      for (CornerPlan c : part.cover().corners()) {
        corners.merge(c.treatment().name(), 1, Integer::sum);
      }
      sound(part);
    }
    System.out.printf(
        java.util.Locale.ROOT,
        "random parts, seed %d: %d of %d proved, %d refused; corners %s; stops %s%n",
        seed,
        proved,
        parts,
        refused,
        corners,
        stops);
    assertThat(refused).isLessThanOrEqualTo(parts / 1000);
    assertThat(proved).isGreaterThanOrEqualTo(parts * 8 / 10);
  }

  /** What must hold of every result, proved or not. */
  private static void sound(PartResult part) {
    Figures f = part.figures();
    for (double v :
        new double[] {
          f.finished().length(),
          f.finished().width(),
          f.finished().height(),
          f.base().length(),
          f.base().width(),
          f.cover().length(),
          f.cover().width(),
          f.cover().area(),
          f.cover().cutLength(),
          f.cover().perSide(),
          f.weight()
        }) {
      assertThat(v).isFinite().isPositive();
    }
    assertThat(f.cover().cutLength()).isGreaterThanOrEqualTo(f.cover().length() - 1e-9);
    for (PatternPiece piece : part.pieces()) {
      Path cut = piece.cutLine();
      assertThat(cut.closed()).isTrue();
      assertThat(cut.signedArea()).as(piece.id()).isPositive();
      for (int k = 0; k < cut.segments().size(); k++) {
        var next = cut.segments().get((k + 1) % cut.segments().size());
        assertThat(cut.segments().get(k).end().distance(next.start()))
            .as("%s of %s, segment %d: %s", piece.id(), part.asked(), k, part.shape().outline())
            .isCloseTo(0, within(1e-6));
      }
    }
  }
}
