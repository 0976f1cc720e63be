package padwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is made ready for many questions answers each as a look at everything does. */
class PreparedTest {
  private static final long SEED = 20261126;

  /** A star of many corners, hollow between them, without crossings. */
  private static List<Vec2> star(Random random) {
    int n = 5 + random.nextInt(120);
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      points.add(Vec2.polar(2 * Math.PI * i / n).times(60 + 140 * random.nextDouble()));
    }
    return points;
  }

  private static Vec2 place(Random random) {
    return new Vec2(500 * random.nextDouble() - 250, 500 * random.nextDouble() - 250);
  }

  private static List<Vec2> box(Random random) {
    Vec2 at = place(random);
    Vec2 along = Vec2.polar(2 * Math.PI * random.nextDouble()).times(5 + 200 * random.nextDouble());
    Vec2 up = along.left().times(random.nextDouble());
    return List.of(at, at.plus(along), at.plus(along).plus(up), at.plus(up));
  }

  @Test
  void runsOfEdgesClipAsAllEdgesDo() {
    Random random = new Random(SEED);
    for (int i = 0; i < 3000; i++) {
      List<Vec2> star = star(random);
      List<Vec2> box = box(random);
      double all = Math.abs(Polygons.signedArea(Polygons.inside(star, box)));
      double runs = Math.abs(Polygons.signedArea(new EdgeRuns(star).inside(box)));
      assertThat(runs).as("seed %d, %d", SEED, i).isCloseTo(all, within(1e-7));
    }
  }

  @Test
  void runsOfEdgesMissNoneThatIsNearOrComesIn() {
    Random random = new Random(SEED);
    for (int i = 0; i < 2000; i++) {
      List<Vec2> star = star(random);
      EdgeRuns runs = new EdgeRuns(star);
      Vec2 at = place(random);
      double reach = 100 * random.nextDouble();
      int[] near = runs.near(at, reach);
      int[] over = runs.over(box(random));
      assertThat(near).isSorted();
      for (int edge = 0; edge < star.size(); edge++) {
        Segment s = Segment.line(runs.from(edge), runs.to(edge));
        if (s.distanceTo(at) <= reach) {
          assertThat(near).as("seed %d, %d", SEED, i).contains(edge);
        }
      }
      assertThat(over).isSorted();
    }
    for (int i = 0; i < 2000; i++) {
      List<Vec2> star = star(random);
      List<Vec2> box = box(random);
      EdgeRuns runs = new EdgeRuns(star);
      int[] over = runs.over(box);
      for (int edge = 0; edge < star.size(); edge++) {
        Vec2 middle = runs.from(edge).midpoint(runs.to(edge));
        if (Polygons.contains(box, middle)) {
          assertThat(over).as("seed %d, %d", SEED, i).contains(edge);
        }
      }
    }
  }

  @Test
  void runsOfBoxesFindWhatALookAtEachFinds() {
    Random random = new Random(SEED);
    for (int i = 0; i < 2000; i++) {
      List<Bounds> each = new ArrayList<>();
      int n = 1 + random.nextInt(60);
      for (int k = 0; k < n; k++) {
        each.add(Bounds.of(place(random)).grown(40 * random.nextDouble()));
      }
      Vec2 at = place(random);
      double reach = 60 * random.nextDouble();
      Bounds about = Bounds.of(at).grown(reach);
      int[] found = IntStream.range(0, n).filter(k -> each.get(k).overlaps(about)).toArray();
      assertThat(new Boxes(each).near(at, reach)).as("seed %d, %d", SEED, i).isEqualTo(found);
    }
  }

  @Test
  void aPreparedPathKnowsInsideAndNear() {
    Random random = new Random(SEED);
    Path path =
        Path.polygon(
            List.of(new Vec2(0, 0), new Vec2(200, 0), new Vec2(200, 80), new Vec2(90, 60)));
    Path round = Path.circle(new Vec2(10, -20), 150);
    for (Path p : List.of(path, round)) {
      PathPlaces places = new PathPlaces(p, 0.001);
      List<Vec2> chords = p.flattened(0.001);
      for (int i = 0; i < 3000; i++) {
        Vec2 at = place(random);
        double distance = 80 * random.nextDouble();
        assertThat(places.contains(at)).isEqualTo(Polygons.contains(chords, at));
        assertThat(places.nearer(at, distance))
            .isEqualTo(p.segments().stream().anyMatch(s -> s.distanceTo(at) < distance));
      }
    }
  }

  @Test
  void levelBandsSayInsideAsAllEdgesDo() {
    Random random = new Random(SEED);
    for (int i = 0; i < 300; i++) {
      List<Vec2> star = star(random);
      EdgeBands bands = new EdgeBands(star);
      boolean[] said = new boolean[40];
      boolean[] all = new boolean[40];
      for (int k = 0; k < said.length; k++) {
        Vec2 at = place(random);
        said[k] = bands.contains(at);
        all[k] = Polygons.contains(star, at);
      }
      assertThat(said).as(Arrays.toString(all)).isEqualTo(all);
    }
  }
}
