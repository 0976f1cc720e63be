package padwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import padwright.design.EdgeShape;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.FoamLayer;
import padwright.design.WrappedPad.Kind;
import padwright.design.WrappedPad.Neighbour;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.design.WrappedPad.Treatment;
import padwright.design.WrappedPad.WaddingLayer;

/** Pads that a maker might ask for, by seed. */
public final class RandomPads {
  private static final List<String> COVERINGS =
      List.of("knit-backed-vinyl", "woven-cotton", "woven-wool", "leather", "knit-fabric");

  private final Random random;

  public RandomPads(long seed) {
    random = new Random(seed);
  }

  private double pick(double from, double to) {
    return Math.round((from + random.nextDouble() * (to - from)) * 10) / 10.0;
  }

  private boolean once(int in) {
    return random.nextInt(in) == 0;
  }

  public Pads next() {
    Pads p = new Pads();
    p.outline = outline();
    p.kind = Kind.values()[random.nextInt(Kind.values().length)];
    p.front = WrappedPad.Side.values()[random.nextInt(4)];
    p.thickness = List.of(6.5, 9.0, 12.0, 15.0, 18.0).get(random.nextInt(5));
    p.backArris = once(3) ? Math.min(3, p.thickness / 4) : 0;
    p.foam = foam();
    double foamHeight = p.foam.stream().mapToDouble(FoamLayer::thickness).sum();
    p.edge =
        switch (random.nextInt(6)) {
          case 0 -> new EdgeShape.Round(pick(1, foamHeight));
          case 1 -> new EdgeShape.Bevel(pick(1, foamHeight));
          case 2 -> new EdgeShape.FullRound();
          default -> new EdgeShape.Square();
        };
    p.wadding =
        once(3)
            ? Optional.of(
                new WaddingLayer("polyester-150", OptionalDouble.of(pick(0.5, 6)), once(2)))
            : Optional.empty();
    p.covering = COVERINGS.get(random.nextInt(COVERINGS.size()));
    p.coverThickness = OptionalDouble.of(once(6) ? 0 : pick(0.3, 2));
    p.turnUnder = once(2) ? OptionalDouble.empty() : OptionalDouble.of(pick(15, 45));
    p.stretchAlong = once(5) ? 0.02 : 0;
    if (once(3)) {
      p.size = once(2) ? SizeMeaning.FINISHED : SizeMeaning.OPENING;
      Neighbour n = Neighbour.values()[random.nextInt(3)];
      p.sides = new Neighbour[] {n, n, n, n};
    }
    if (once(3) && p.outline instanceof OutlineShape.Rectangle r && r.radii().get(0) == 0) {
      p.treatments =
          List.of(
              List.of(Treatment.SINGLE_PLEAT, Treatment.DOUBLE_PLEAT, Treatment.MITRED_END)
                  .get(random.nextInt(3)));
    }
    if (once(15)) {
      lowAndWide(p);
    }
    return p;
  }

  /** A thin pad on a large round base in a cloth that gives: what can be eased. */
  private void lowAndWide(Pads p) {
    p.outline = new OutlineShape.Circle(pick(500, 1200));
    p.thickness = 6.5;
    p.backArris = 0;
    p.foam = List.of(Pads.layer(pick(4, 8), 0));
    p.edge = new EdgeShape.Square();
    p.wadding = Optional.empty();
    p.covering = "knit-fabric";
    p.turnUnder = OptionalDouble.of(pick(15, 25));
    p.treatments = List.of(Treatment.AUTO);
  }

  private OutlineShape outline() {
    double length = pick(120, 900);
    double width = once(3) ? pick(50, 90) : pick(120, 600);
    return switch (random.nextInt(6)) {
      case 0 -> new OutlineShape.Circle(pick(150, 600));
      case 1 -> new OutlineShape.Ellipse(length, length * pick(0.6, 1.2));
      case 2 -> new OutlineShape.Trapezoid(length, length * pick(0.7, 1.3), Math.max(140, width));
      case 3 -> Pads.rectangle(length, width, pick(1, Math.min(length, width) / 2.2));
      case 4 ->
          Pads.rectangle(
              length, width, 0, pick(0.2, Math.min(length, width) / 3), 0, pick(0.2, 20));
      default -> Pads.rectangle(length, width);
    };
  }

  private List<FoamLayer> foam() {
    List<FoamLayer> layers = new ArrayList<>();
    int n = 1 + random.nextInt(3);
    for (int i = 0; i < n; i++) {
      double overhang =
          switch (random.nextInt(5)) {
            case 0 -> pick(0, 12);
            case 1 -> -pick(0, 10);
            default -> 0;
          };
      layers.add(Pads.layer(pick(6, 40), overhang));
    }
    return layers;
  }
}
