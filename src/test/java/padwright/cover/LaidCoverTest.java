package padwright.cover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.Kind;
import padwright.design.WrappedPad.Run;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;

/** The sheets of a cover laid back on the pad, which the wrap map draws. */
class LaidCoverTest {
  private static final long SEED = 20261125;
  private static final int PER_KIND = 6;
  private static final int PLACES = 200;

  /** What chords of a rounding and arithmetic may decide, mm. */
  private static final double NEAR = 0.05;

  private static PartResult pad(OutlineShape outline, Treatment treatment, EdgeShape edge) {
    Pads pads = new Pads();
    pads.outline = outline;
    pads.kind = Kind.SEAT;
    pads.edge = edge;
    pads.treatments = List.of(treatment);
    return pads.run();
  }

  private static List<LaidCover.Sheet> back(PartResult part) {
    return new LaidCover(part.cover().trim().flattened(0.01), part.cover().skeleton()).back();
  }

  private static int layers(List<LaidCover.Sheet> sheets, Vec2 p) {
    return sheets.stream()
        .filter(s -> Polygons.contains(s.polygon(), p))
        .mapToInt(LaidCover.Sheet::layers)
        .sum();
  }

  /** The same places as worked out by hand for {@link LayerCounter}: flaps of 12, turn-under 20. */
  @Test
  void twoTurnUndersAndTheFlapsBetweenThemLieOverABackCorner() {
    List<LaidCover.Sheet> sheets =
        back(pad(Pads.rectangle(400, 300), Treatment.SINGLE_PLEAT, new EdgeShape.Square()));

    assertThat(layers(sheets, new Vec2(0, -140))).isEqualTo(1);
    assertThat(layers(sheets, new Vec2(0, 0))).isZero();
    assertThat(layers(sheets, new Vec2(184, -134))).isEqualTo(2);
    assertThat(layers(sheets, new Vec2(192, -134))).isEqualTo(3);
  }

  /** Pads of every kind, by seed, and some whose sides have sections of their own. */
  private static Map<String, Pads> pads() {
    SampledCovers covers = new SampledCovers(20261126);
    Map<String, Pads> all = new LinkedHashMap<>();
    for (SampledCovers.Kind kind : SampledCovers.Kind.values()) {
      for (int i = 0; i < PER_KIND; i++) {
        all.put(kind + " " + i, covers.next(kind));
      }
    }
    for (int i = 0; i < 2 * PER_KIND; i++) {
      Pads p = covers.next(SampledCovers.Kind.values()[i % 2]);
      Optional<EdgeShape> round =
          covers.once(2) ? Optional.of(new EdgeShape.Round(6)) : Optional.empty();
      OptionalDouble over =
          round.isEmpty() || covers.once(2)
              ? OptionalDouble.of(covers.pick(-4, 9))
              : OptionalDouble.empty();
      String side = List.of("front", "right", "back", "left").get(i % 4);
      p.runs =
          List.of(new Run(List.of(side), round, OptionalDouble.empty(), over, Optional.empty()));
      all.put("own section " + i, p);
    }
    Pads splayed = covers.next(SampledCovers.Kind.SINGLE_PLEAT);
    splayed.outline = new OutlineShape.Trapezoid(520, 330, 260);
    splayed.runs =
        List.of(
            new Run(
                List.of("left", "right"),
                Optional.empty(),
                OptionalDouble.of(48),
                OptionalDouble.empty(),
                Optional.empty()));
    all.put("splayed, deeper under at the slanting sides", splayed);
    return all;
  }

  /**
   * Two ways to the same number: sheets laid down, and a count of what lands on a place. Where they
   * differ the place must lie so near to the edge of a sheet that chords and rounding decide it.
   */
  @Test
  void sheetsLieWhereTheCounterFindsLayers() {
    Random random = new Random(SEED);
    SoftAssertions all = new SoftAssertions();
    int places = 0;
    Map<Integer, Integer> found = new TreeMap<>();
    for (Map.Entry<String, Pads> e : pads().entrySet()) {
      PartResult part = e.getValue().run();
      if (part.cover().overlaps()) {
        continue;
      }
      List<LaidCover.Sheet> sheets = back(part);
      LayerCounter counter =
          new LayerCounter(part.cover().trim().flattened(0.01), part.cover().skeleton());
      List<Vec2> outline = part.shape().outline().flattened(0.01);
      for (Vec2 p : places(random, part, outline)) {
        int counted = counter.at(p);
        int laid = layers(sheets, p);
        places++;
        found.merge(counted, 1, Integer::sum);
        if (laid != counted && toEdge(sheets, outline, p) > NEAR) {
          all.fail(e.getKey() + ": " + laid + " laid, " + counted + " counted at " + p);
        }
      }
    }
    System.out.println(places + " places, by layers counted " + found);
    all.assertAll();
    assertThat(places).isGreaterThan(10_000);
  }

  /** All over the back, and half of them near corners, where the layers are. */
  private static List<Vec2> places(Random random, PartResult part, List<Vec2> outline) {
    Bounds b = part.shape().outline().bounds();
    List<Segment> segments = part.cover().skeleton().outline().segments();
    List<Vec2> places = new ArrayList<>();
    while (places.size() < PLACES) {
      Vec2 p =
          new Vec2(
              b.minX() + random.nextDouble() * b.width(),
              b.minY() + random.nextDouble() * b.height());
      if (places.size() % 2 == 0) {
        Vec2 corner = segments.get(random.nextInt(segments.size())).start();
        p = corner.plus(Vec2.polar(random.nextDouble() * 7).times(random.nextDouble() * 45));
      }
      if (Polygons.contains(outline, p)) {
        places.add(p);
      }
    }
    return places;
  }

  private static double toEdge(List<LaidCover.Sheet> sheets, List<Vec2> outline, Vec2 p) {
    double least =
        Path.polygon(outline).segments().stream().mapToDouble(s -> s.distanceTo(p)).min().orElse(1);
    for (LaidCover.Sheet sheet : sheets) {
      for (Segment s : Path.polygon(sheet.polygon()).segments()) {
        least = Math.min(least, s.distanceTo(p));
      }
    }
    return least;
  }
}
