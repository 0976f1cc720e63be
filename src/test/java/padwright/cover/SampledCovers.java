package padwright.cover;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import padwright.design.EdgeShape;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.design.WrappedPad.Open;
import padwright.design.WrappedPad.Run;
import padwright.design.WrappedPad.Treatment;
import padwright.design.WrappedPad.WaddingLayer;
import padwright.geometry.Vec2;
import padwright.pattern.Pads;

/** Pads of every kind that the second wrap covers, by seed. */
final class SampledCovers {
  /** What makes a pad a case of its own for wrapping. */
  enum Kind {
    SINGLE_PLEAT,
    DOUBLE_PLEAT,
    MITRED_END,
    EASED,
    PLEATED,
    NOTCHED,
    SHAPED_EDGE,
    LAYERS,
    TRAPEZOID,
    SHARP_POLYGON,
    GUSSET,
    HOLLOW_CURVE,
    TURN_UNDER_OF_ITS_OWN,
    BARE,
    GLUED
  }

  private final Random random;

  SampledCovers(long seed) {
    random = new Random(seed);
  }

  double pick(double from, double to) {
    return Math.round((from + random.nextDouble() * (to - from)) * 10) / 10.0;
  }

  boolean once(int in) {
    return random.nextInt(in) == 0;
  }

  private Treatment pleat() {
    return once(2) ? Treatment.SINGLE_PLEAT : Treatment.DOUBLE_PLEAT;
  }

  Pads next(Kind kind) {
    Pads p = new Pads();
    p.outline = Pads.rectangle(pick(180, 420), pick(140, 300));
    p.foam = List.of(Pads.layer(pick(10, 45), 0));
    p.coverThickness = OptionalDouble.of(once(5) ? 0 : pick(0.3, 2));
    p.turnUnder = OptionalDouble.of(pick(18, 32));
    p.backArris = once(3) ? pick(1, 3) : 0;
    p.treatments = List.of(pleat());
    p.reliefStop = once(2) ? OptionalDouble.empty() : OptionalDouble.of(pick(8, 14));
    switch (kind) {
      case SINGLE_PLEAT -> p.treatments = List.of(Treatment.SINGLE_PLEAT);
      case DOUBLE_PLEAT -> p.treatments = List.of(Treatment.DOUBLE_PLEAT);
      case MITRED_END -> {
        p.outline = Pads.rectangle(pick(250, 500), pick(58, 75));
        p.treatments = List.of(once(2) ? Treatment.AUTO : Treatment.MITRED_END);
      }
      case EASED -> low(p, Treatment.EASED, 15);
      case NOTCHED -> low(p, Treatment.NOTCHES, 25);
      case PLEATED -> {
        p.outline =
            once(2)
                ? new OutlineShape.Circle(pick(180, 360))
                : Pads.rectangle(pick(200, 400), pick(160, 300), pick(8, 70));
        p.treatments = List.of(Treatment.PLEATS);
      }
      case SHAPED_EDGE -> {
        double foam = p.foam.get(0).thickness();
        p.edge =
            switch (random.nextInt(3)) {
              case 0 -> new EdgeShape.Round(pick(2, foam));
              case 1 -> new EdgeShape.Bevel(pick(2, foam * 0.9));
              default -> new EdgeShape.FullRound();
            };
        if (once(3)) {
          p.wadding =
              Optional.of(
                  new WaddingLayer("polyester-150", OptionalDouble.of(pick(1, 5)), once(2)));
        }
      }
      case LAYERS -> {
        double back = once(2) ? -pick(1, 8) : pick(1, 8);
        p.foam = List.of(Pads.layer(pick(8, 25), 0), Pads.layer(pick(8, 25), back));
      }
      case TRAPEZOID ->
          p.outline = new OutlineShape.Trapezoid(pick(260, 400), pick(220, 440), pick(180, 280));
      case SHARP_POLYGON -> p.outline = polygon();
      case GUSSET -> p.outline = ell();
      case HOLLOW_CURVE -> p.outline = waisted();
      case TURN_UNDER_OF_ITS_OWN -> p.runs = List.of(run(OptionalDouble.of(pick(18, 45)), null));
      case BARE -> p.runs = List.of(run(OptionalDouble.empty(), Open.BARE));
      case GLUED -> p.runs = List.of(run(OptionalDouble.empty(), Open.GLUED));
    }
    if (p.outline instanceof OutlineShape.FreePath) {
      p.treatments = List.of(Treatment.AUTO);
    }
    return p;
  }

  /** A thin pad on a large rounding in a cloth that gives. */
  private void low(Pads p, Treatment treatment, double turnUnder) {
    p.covering = "knit-fabric";
    p.thickness = 6.5;
    p.backArris = 0;
    p.foam = List.of(Pads.layer(pick(4, 8), 0));
    p.turnUnder = OptionalDouble.of(turnUnder + pick(0, 4));
    p.treatments = List.of(treatment);
    double radius = treatment == Treatment.EASED ? pick(430, 500) : pick(180, 250);
    p.outline =
        once(2)
            ? new OutlineShape.Circle(2 * radius)
            : Pads.rectangle(2 * radius + pick(20, 90), 2 * radius + pick(10, 60), radius);
  }

  private Run run(OptionalDouble turnUnder, Open open) {
    return new Run(
        List.of(List.of("front", "right", "back", "left").get(random.nextInt(4))),
        Optional.empty(),
        turnUnder,
        OptionalDouble.empty(),
        Optional.ofNullable(open));
  }

  private static Point straight(double x, double y) {
    return new Point(new Vec2(x, y), new Leg.Straight());
  }

  /** Three to six corners round a circle, some sharper than square, some blunter. */
  private OutlineShape polygon() {
    int n = 3 + random.nextInt(4);
    double r = pick(180, 260);
    return new OutlineShape.FreePath(
        java.util.stream.IntStream.range(0, n)
            .mapToObj(i -> 2 * Math.PI * (i + pick(0, 0.25)) / n)
            .map(a -> straight(r * Math.cos(a), r * Math.sin(a)))
            .toList());
  }

  /** An L; its inner corner square or splayed. */
  private OutlineShape ell() {
    double l = pick(450, 600);
    double w = pick(400, 560);
    double a = pick(180, l - 200);
    double b = pick(170, w - 190);
    double splay = once(2) ? 0 : pick(-30, 40);
    return new OutlineShape.FreePath(
        List.of(
            straight(0, 0),
            straight(l, 0),
            straight(l, b),
            straight(a, b),
            straight(a - splay, w),
            straight(0, w)));
  }

  /** A window seat whose front is hollowed by an arc. */
  private OutlineShape waisted() {
    double l = pick(500, 700);
    return new OutlineShape.FreePath(
        List.of(
            new Point(new Vec2(0, 0), new Leg.Arc(-pick(10, 22) / 100)),
            straight(l, 0),
            straight(l, 300),
            straight(0, 300)));
  }
}
