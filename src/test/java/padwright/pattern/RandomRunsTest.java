package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.Finding;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.design.WrappedPad.Open;
import padwright.design.WrappedPad.Run;
import padwright.geometry.Crossings;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.measure.InputRefused;

/** Free outlines by seed with runs of their own, and with curves that are drawn as chords. */
class RandomRunsTest {
  private static final long SEED = 20261128;
  private static final int OUTLINES = Integer.getInteger("runs", 600);

  private final Random random = new Random(SEED);

  private double pick(double from, double to) {
    return Math.round((from + random.nextDouble() * (to - from)) * 10) / 10.0;
  }

  private Run run(String... sides) {
    boolean open = random.nextInt(4) == 0;
    return new Run(
        List.of(sides),
        !open && random.nextInt(3) == 0
            ? Optional.of(new EdgeShape.Round(pick(2, 8)))
            : Optional.empty(),
        !open && random.nextInt(2) == 0 ? OptionalDouble.of(pick(16, 60)) : OptionalDouble.empty(),
        !open && random.nextInt(3) == 0 ? OptionalDouble.of(pick(-4, 8)) : OptionalDouble.empty(),
        open ? Optional.of(random.nextBoolean() ? Open.BARE : Open.GLUED) : Optional.empty(),
        OptionalDouble.empty());
  }

  /** Its arcs drawn as chords of 2 to 6 degrees, to a thousandth of a mm. */
  private FreePath chords(FreePath path) {
    List<Point> points = new ArrayList<>();
    int n = path.points().size();
    for (int k = 0; k < n; k++) {
      Point p = path.points().get(k);
      Vec2 to = path.points().get((k + 1) % n).at();
      if (!(p.leg() instanceof Leg.Arc a)) {
        points.add(p);
        continue;
      }
      Segment arc = new Segment(p.at(), to, a.bulge());
      int parts =
          (int) Math.ceil(Math.abs(Math.toDegrees(arc.sweep())) / (2 + 4 * random.nextDouble()));
      for (int j = 0; j < parts; j++) {
        Vec2 at = arc.pointAt((double) j / parts);
        points.add(
            new Point(
                new Vec2(Math.rint(at.x() * 1000) / 1000, Math.rint(at.y() * 1000) / 1000),
                new Leg.Straight()));
      }
    }
    return new FreePath(points);
  }

  @Test
  void everyOneIsProvedOrAStopNamesWhy() {
    RandomOutlines outlines = new RandomOutlines(SEED + 1);
    TreeMap<String, Integer> stops = new TreeMap<>();
    int proved = 0;
    int refused = 0;
    for (int i = 0; i < OUTLINES; i++) {
      Pads pads = outlines.next();
      if (random.nextBoolean()) {
        pads.outline = chords((FreePath) pads.outline);
      }
      int sides = ((FreePath) pads.outline).points().size();
      int first = 1 + random.nextInt(sides);
      pads.runs =
          random.nextBoolean()
              ? List.of(run("side " + first))
              : List.of(run("side " + first), run("side " + (first % sides + 1)));
      String what = "outline " + i + ": " + pads.outline + " " + pads.runs;
      PartResult part;
      try {
        part = pads.run();
      } catch (InputRefused e) {
        assertThat(e.getMessage()).isNotBlank();
        refused++;
        continue;
      } catch (RuntimeException e) {
        throw new AssertionError(what, e);
      }
      for (Finding f : part.findings()) {
        if (f.level() == Finding.Level.STOP) {
          stops.merge(f.rule(), 1, Integer::sum);
        }
      }
      proved += part.wrap().proved() ? 1 : 0;
      assertThat(part.wrap().proved() || part.stopped()).as(what).isTrue();
      for (PatternPiece piece : part.pieces()) {
        assertThat(piece.cutLine().signedArea()).as("%s %s", piece.id(), what).isPositive();
        assertThat(Crossings.first(piece.cutLine())).as("%s %s", piece.id(), what).isEmpty();
      }
    }
    System.out.printf(
        Locale.ROOT,
        "runs and chords, seed %d: %d of %d proved, %d refused; stops %s%n",
        SEED,
        proved,
        OUTLINES,
        refused,
        stops);
    assertThat(proved).isGreaterThan((OUTLINES - refused) / 2);
  }
}
