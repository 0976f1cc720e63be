package padwright.cover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import padwright.cover.LaidCover.Wall;
import padwright.cover.StrainField.Area;
import padwright.cover.StrainField.Kind;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;

/** Where the covering has to give, held to ratios of radii worked by hand and to the result. */
class StrainFieldTest {
  /** Chords of the cover's lines, and a strain's change over them. */
  private static final double NEAR = 1e-3;

  private static List<Vec2> trim(PartResult part) {
    return part.cover().trim().flattened(0.01);
  }

  private static LaidCover laid(PartResult part) {
    return new LaidCover(trim(part), part.cover().skeleton());
  }

  private static StrainField field(PartResult part) {
    return new StrainField(
        trim(part),
        part.cover(),
        laid(part),
        part.shape().ends(),
        part.spec().covering().ease(),
        Math.min(part.spec().covering().stretchAlong(), part.spec().covering().stretchAcross()));
  }

  /** A disc of radius 450, board 6.5, foam 8: a wall of 14.5, no thickness of covering. */
  private static Pads disc() {
    Pads p = new Pads();
    p.outline = new OutlineShape.Circle(900);
    p.thickness = 6.5;
    p.foam = List.of(Pads.layer(8, 0));
    p.covering = "knit-fabric";
    p.coverThickness = java.util.OptionalDouble.of(0);
    p.turnUnder = java.util.OptionalDouble.of(18);
    p.treatments = List.of(Treatment.EASED);
    return p;
  }

  private static Pads hollow(double thickness) {
    Pads p = new Pads();
    p.outline =
        new OutlineShape.FreePath(
            List.of(
                new Point(new Vec2(0, 0), new Leg.Arc(-0.2)),
                new Point(new Vec2(600, 0), new Leg.Straight()),
                new Point(new Vec2(600, 300), new Leg.Straight()),
                new Point(new Vec2(0, 300), new Leg.Straight())));
    p.foam = List.of(Pads.layer(thickness, 0));
    p.covering = "knit-fabric";
    p.coverThickness = java.util.OptionalDouble.of(0);
    return p;
  }

  private static List<Area> at(List<Area> areas, Vec2 p) {
    return areas.stream().filter(a -> Polygons.contains(a.polygon(), p)).toList();
  }

  /**
   * On the back, b in from the edge of a disc of radius R under a wall of H, lies covering whose
   * flat radius is R + H + b and which has room at R - b: it is eased by (H + 2 b) / (R + H + b).
   */
  @Test
  void aTurnUnderIsEasedByTheRatioOfItsRadii() {
    StrainField field = field(disc().run());
    Random random = new Random(20261126);
    int inside = 0;
    for (int i = 0; i < 300; i++) {
      double b = 0.1 + 17.8 * random.nextDouble();
      double eased = (14.5 + 2 * b) / (450 + 14.5 + b);
      Vec2 p = Vec2.polar(random.nextDouble() * 7).times(450 - b);
      List<Area> there = at(field.back(), p);
      assertThat(there).as("%s in, eased %s", b, eased).hasSize(1);
      assertThat(there.get(0).kind()).isEqualTo(Kind.EASED);
      assertThat(eased).isBetween(there.get(0).least() - NEAR / 5, there.get(0).most() + NEAR / 5);
      inside += there.get(0).most() - there.get(0).least() < 0.021 ? 1 : 0;
    }
    assertThat(inside).as("steps no wider than 2 per cent below 10").isEqualTo(300);
  }

  /** At depth s down a wall at R the flat radius is R + s: eased by s / (R + s). */
  @Test
  void aWallIsEasedMoreTheFurtherDown() {
    PartResult part = disc().run();
    StrainField field = field(part);
    Wall rim = laid(part).walls().get(0);
    List<Area> areas = field.on(rim);
    for (double s = 2.5; s < 14.5; s += 0.25) {
      double eased = s / (450 + s);
      List<Area> there = at(areas, new Vec2(0.3 * rim.length(), -s));
      assertThat(there).as("at depth " + s).hasSize(1);
      assertThat(eased).isBetween(there.get(0).least() - NEAR / 5, there.get(0).most() + NEAR / 5);
    }
    // 1 / 451 is under half a per cent, and left white.
    assertThat(at(areas, new Vec2(0.3 * rim.length(), -1))).isEmpty();
    assertThat(field.of(rim).eased()).isCloseTo(14.5 / 464.5, within(1e-9));
    // At the trim line 18 in: 50.5 / 482.5 = 10.47 %, and so says the corner's finding.
    assertThat(field.of(rim).easedUnder()).isCloseTo(50.5 / 482.5, within(1e-4));
    assertThat(field.of(rim).atTrim()).isTrue();
    assertThat(part.cover().corners().get(0).easeNeeded()).isCloseTo(50.5 / 482.5, within(1e-9));
    assertThat(part.wrap().worstEase()).isCloseTo(field.of(rim).eased(), within(1e-9));
  }

  /**
   * Half the chord is 300 and the bulge 0.2, so r = 300 (1 + 0.04) / 0.4 = 780. Under a wall of 12
   * + 15 = 27 the flat radius is 753: stretched by 780 / 753 - 1 = 3.59 %. The clips begin 6 past
   * the arris, where 786 / 747 - 1 = 5.22 %.
   */
  @Test
  void aHollowIsStretchedByTheRatioOfItsRadiiAsFarAsItsClips() {
    PartResult part = hollow(15).run();
    StrainField field = field(part);
    Wall front =
        laid(part).walls().stream()
            .filter(w -> w.name().equals("side 1"))
            .findFirst()
            .orElseThrow();
    assertThat(field.of(front).stretched()).isCloseTo(786.0 / 747 - 1, within(1e-6));
    assertThat(part.cover().corners().stream().mapToDouble(CornerPlan::stretchNeeded).max())
        .hasValueCloseTo(field.of(front).stretched(), within(1e-6));
    assertThat(part.wrap().worstStretch()).isCloseTo(780.0 / 753 - 1, within(1e-6));
    assertThat(field.of(front).eased()).isZero();
    for (double s = 5; s < 27; s += 0.5) {
      double stretched = 780 / (780 - s) - 1;
      List<Area> there = at(field.on(front), new Vec2(0.4 * front.length(), -s));
      assertThat(there).as("at depth " + s).hasSize(1);
      assertThat(there.get(0).kind()).isEqualTo(Kind.STRETCHED);
      assertThat(there.get(0).over()).isFalse();
      assertThat(stretched)
          .isBetween(there.get(0).least() - NEAR / 5, there.get(0).most() + NEAR / 5);
    }
    // The deepest point of the hollow is 600 x 0.2 / 2 = 60 above its chord.
    Vec2 middle = part.shape().outline().bounds().centre();
    double edge = part.shape().outline().bounds().minY() + 60;
    assertThat(at(field.back(), new Vec2(middle.x(), edge + 5))).hasSize(1);
    assertThat(at(field.back(), new Vec2(middle.x(), edge + 7))).as("opened by clips").isEmpty();
  }

  /**
   * A woven wool gives 2 % along its warp, so that a step begins where the hollow reaches it: s =
   * 780 / 51.
   */
  @Test
  void whereItIsMoreThanTheCoveringTakesAStepBegins() {
    Pads p = hollow(15);
    p.covering = "woven-wool";
    PartResult part = p.run();
    double takes = part.spec().covering().stretchAlong();
    assertThat(takes).as("row of the catalogue").isEqualTo(0.02);
    Wall front =
        laid(part).walls().stream()
            .filter(w -> w.name().equals("side 1"))
            .findFirst()
            .orElseThrow();
    List<Area> areas = field(part).on(front);
    for (double s = 8; s < 27; s += 0.1) {
      List<Area> there = at(areas, new Vec2(0.4 * front.length(), -s));
      if (Math.abs(s - 780.0 / 51) > 0.05) {
        boolean over = s > 780.0 / 51;
        assertThat(there).as("at depth " + s).hasSize(1).allMatch(a -> a.over() == over);
      }
    }
  }

  /** What the map shades is what the result says, on rounded corners of every size. */
  @Test
  void theGreatestShadedStrainIsTheReportedOne() {
    SampledCovers covers = new SampledCovers(20261127);
    int seen = 0;
    for (SampledCovers.Kind kind :
        List.of(
            SampledCovers.Kind.EASED,
            SampledCovers.Kind.HOLLOW_CURVE,
            SampledCovers.Kind.NOTCHED,
            SampledCovers.Kind.SHAPED_EDGE,
            SampledCovers.Kind.LAYERS)) {
      for (int i = 0; i < 8; i++) {
        PartResult part = covers.next(kind).run();
        if (part.cover().overlaps()) {
          continue;
        }
        StrainField field = field(part);
        List<Area> walls = new ArrayList<>();
        laid(part).walls().forEach(w -> walls.addAll(field.on(w)));
        double eased = most(walls, Kind.EASED);
        double stretched = most(walls, Kind.STRETCHED);
        if (eased > 0) {
          assertThat(eased).as(kind + " " + i).isCloseTo(part.wrap().worstEase(), within(1e-6));
          seen++;
        }
        if (stretched > 0) {
          assertThat(stretched).isCloseTo(part.wrap().worstStretch(), within(1e-6));
          seen++;
        }
        double under = Math.max(eased, most(field.back(), Kind.EASED));
        double needed =
            part.cover().corners().stream().mapToDouble(CornerPlan::easeNeeded).max().orElse(0);
        if (kind == SampledCovers.Kind.EASED && needed > 0) {
          assertThat(under).isCloseTo(needed, within(1e-4));
          seen++;
        }
        double flaps = most(walls, Kind.FLAP);
        double reported = part.wrap().worstFlapStrain();
        if (reported > 0.005) {
          assertThat(flaps).as(kind + " " + i).isCloseTo(reported, within(1e-9));
          seen++;
        }
      }
    }
    assertThat(seen).isGreaterThan(30);
  }

  private static double most(List<Area> areas, Kind kind) {
    Stream<Area> own = areas.stream().filter(a -> a.kind() == kind);
    return own.mapToDouble(Area::most).max().orElse(0);
  }

  @Test
  void aPlainSquareHasNoStrain() {
    Pads p = new Pads();
    p.outline = Pads.rectangle(400, 300);
    p.coverThickness = java.util.OptionalDouble.of(0);
    PartResult part = p.run();
    StrainField field = field(part);
    assertThat(field.back()).isEmpty();
    assertThat(laid(part).walls()).allMatch(w -> field.on(w).isEmpty());
  }
}
