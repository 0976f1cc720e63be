package padwright.jobfile;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleSupplier;
import padwright.design.EdgeShape;
import padwright.design.Fittings;
import padwright.design.Fittings.CutOut;
import padwright.design.Fittings.ThreadedInsert;
import padwright.design.Fittings.Through;
import padwright.design.Fittings.Zone;
import padwright.design.Fittings.ZoneKind;
import padwright.design.Job;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.design.PaddedPart;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Finish;
import padwright.design.WrappedPad.Fixing;
import padwright.design.WrappedPad.Hole;
import padwright.design.WrappedPad.Neighbour;
import padwright.design.WrappedPad.Open;
import padwright.design.WrappedPad.Run;
import padwright.design.WrappedPad.Side;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.Vec2;

/** Makes jobs that a job file can say, with every field in use now and then. */
final class RandomJobs {
  /** What a rectangle's corner may have. */
  private static final Treatment[] CONVEX =
      EnumSet.complementOf(EnumSet.of(Treatment.GUSSET, Treatment.CLIPS)).toArray(Treatment[]::new);

  private final Random random;

  RandomJobs(long seed) {
    random = new Random(seed);
  }

  Job job() {
    List<PaddedPart> parts = new ArrayList<>();
    for (int i = random.nextInt(3); i >= 0; i--) {
      parts.add(part("part-" + i));
    }
    return new Job(
        "Nook \"" + (char) ('a' + random.nextInt(26)) + "\" \\ \u00e9",
        maybe() ? Optional.of("Library") : Optional.empty(),
        maybe() ? Optional.of("2026-03-07") : Optional.empty(),
        maybe() ? Units.MM : Units.INCH,
        parts);
  }

  private WrappedPad part(String id) {
    OutlineShape outline = outline();
    double across = Outlines.shorterSide(outline);
    boolean round = Outlines.round(outline);
    double thickness = length(4, 30);
    SizeMeaning size = pick(SizeMeaning.values());
    List<Neighbour> sides = new ArrayList<>();
    Neighbour one = pick(Neighbour.values());
    for (int i = 0; i < 4; i++) {
      sides.add(round ? one : pick(Neighbour.values()));
    }
    List<WrappedPad.FoamLayer> foam = new ArrayList<>();
    for (int i = random.nextInt(3); i >= 0; i--) {
      foam.add(
          new WrappedPad.FoamLayer(
              pick(Materials.FOAMS.toArray(String[]::new)),
              length(10, 60),
              optional(() -> length(-across / 2.5, 20))));
    }
    return new WrappedPad(
        id,
        "Name of " + id,
        pick(WrappedPad.Kind.values()),
        1 + random.nextInt(20),
        random.nextInt(3),
        pick(Side.values()),
        new WrappedPad.Base(
            outline,
            size,
            sides,
            sides.contains(Neighbour.KEEP_CLEAR)
                ? optional(() -> length(0, across / 4))
                : OptionalDouble.empty(),
            pick(Materials.BOARDS.toArray(String[]::new)),
            thickness,
            optional(() -> Math.min(thickness * 1.1, thickness + length(0, 0.9))),
            maybe() ? 0 : length(0, 4),
            maybe() ? List.of() : holes()),
        foam,
        maybe()
            ? Optional.empty()
            : Optional.of(
                new WrappedPad.WaddingLayer(
                    "polyester-150", optional(() -> length(0.5, 8)), maybe())),
        edge(),
        new WrappedPad.Cover(
            pick(Materials.COVERINGS.toArray(String[]::new)),
            optional(() -> maybe() ? 0 : length(0, 2)),
            optional(() -> length(10, 40)),
            optional(() -> maybe() ? 0 : length(0, 30)),
            maybe() ? 0 : random.nextDouble() * 0.3,
            maybe() ? 0 : 0.03,
            maybe()),
        corners(round, Outlines.corners(outline)),
        new WrappedPad.Staples(
            maybe() ? Optional.empty() : Optional.of("fine"),
            optional(() -> length(4, 16)),
            optional(() -> length(10, 60)),
            optional(() -> length(1, across / 2)),
            optional(() -> random.nextDouble() * 5)),
        host(),
        maybe()
            ? new WrappedPad.DustCover(maybe(), OptionalDouble.empty(), OptionalDouble.empty())
            : new WrappedPad.DustCover(true, OptionalDouble.of(length(0, 6)), optional(() -> 12)),
        round || maybe() ? List.of() : runs(Outlines.sides(outline)),
        maybe() ? Fittings.none() : fittings());
  }

  private List<Run> runs(List<String> sides) {
    boolean open = maybe();
    Run first =
        new Run(
            sides.subList(0, 2),
            maybe() ? Optional.of(edge()) : Optional.empty(),
            open ? OptionalDouble.empty() : OptionalDouble.of(length(5, 40)),
            optional(() -> length(-9, 12)),
            open ? Optional.of(pick(Open.values())) : Optional.empty());
    Run second =
        new Run(
            List.of(sides.get(2)),
            Optional.of(edge()),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            optional(() -> length(10, 90)));
    return maybe() ? List.of(first) : List.of(first, second);
  }

  private Fittings fittings() {
    return new Fittings(
        List.of(
            new CutOut(
                new OutlineShape.Rectangle(length(2, 9), length(2, 9), List.of(0.0, 1.0, 0.5, 1.0)),
                -8,
                length(-2, 2),
                pick(Through.values())),
            new CutOut(path(3), 8, 0, Through.TURNED)),
        maybe() ? List.of() : List.of(new Hole(length(-15, 15), -9, length(1, 9))),
        maybe() ? List.of() : List.of(new ThreadedInsert(length(-9, 9), 5, 3, length(4, 12))),
        maybe()
            ? List.of()
            : List.of(new Zone(pick(ZoneKind.values()), 0, length(-9, 9), length(1, 9), 4)));
  }

  /** A star of sides of all kinds round a point away from the origin. */
  private OutlineShape.FreePath path(double radius) {
    int n = 4 + random.nextInt(5);
    Vec2 middle = new Vec2(length(-50, 50), length(-50, 50));
    boolean clockwise = maybe();
    List<Vec2> at = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      double turn = 2 * Math.PI * (k + 0.3 * random.nextDouble()) / n;
      Vec2 p = middle.along(Vec2.polar(clockwise ? -turn : turn), radius * length(1, 1.2));
      at.add(new Vec2(maybe() ? p.x() : Math.rint(p.x() * 100) / 100 + 0.0, p.y()));
    }
    List<Point> points = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      Vec2 chord = at.get((k + 1) % n).minus(at.get(k));
      Leg leg =
          switch (random.nextInt(3)) {
            case 0 -> new Leg.Straight();
            case 1 -> new Leg.Arc((0.01 + random.nextDouble() * 0.14) * (maybe() ? 1 : -1));
            default ->
                new Leg.Cubic(
                    at.get(k).along(chord, 0.3).along(chord.left(), 0.1 * random.nextDouble()),
                    at.get(k).along(chord, 0.7).along(chord.left(), 0.1 * random.nextDouble()));
          };
      points.add(new Point(at.get(k), leg));
    }
    return new OutlineShape.FreePath(points);
  }

  private OutlineShape outline() {
    double a = length(60, 900);
    double b = length(60, 900);
    double least = Math.min(a, b);
    return switch (random.nextInt(6)) {
      case 0 -> new OutlineShape.Circle(a);
      case 4 -> path(60 + least / 10);
      case 1 -> new OutlineShape.Ellipse(a, b);
      case 2 -> new OutlineShape.Trapezoid(a, length(60, 900), b);
      case 3 ->
          new OutlineShape.Rectangle(
              a, b, Collections.nCopies(4, maybe() ? 0 : length(1, least / 2)));
      default -> new OutlineShape.Rectangle(a, b, List.of(0.0, length(1, least / 2), 0.0, 1.0));
    };
  }

  private EdgeShape edge() {
    return switch (random.nextInt(4)) {
      case 0 -> new EdgeShape.Square();
      case 1 -> new EdgeShape.FullRound();
      case 2 -> new EdgeShape.Round(length(0.2, 10));
      default -> new EdgeShape.Bevel(length(0.2, 10));
    };
  }

  private WrappedPad.Corners corners(boolean round, int corners) {
    List<Treatment> treatments = new ArrayList<>();
    for (int i = round || maybe() ? 1 : corners; i > 0; i--) {
      treatments.add(
          round
              ? pick(new Treatment[] {Treatment.AUTO, Treatment.EASED, Treatment.PLEATS})
              : pick(corners == 4 ? CONVEX : Treatment.values()));
    }
    return new WrappedPad.Corners(
        treatments, optional(() -> length(6, 14)), optional(() -> length(2, 9)));
  }

  private WrappedPad.Host host() {
    Fixing fixing = pick(Fixing.values());
    boolean screws = fixing == Fixing.SCREWS;
    return new WrappedPad.Host(
        fixing,
        screws ? OptionalDouble.of(length(10, 40)) : optional(() -> length(10, 40)),
        pick(Finish.values()),
        screws && maybe() ? Optional.of("no-8") : Optional.empty(),
        screws ? optional(() -> length(10, 60)) : OptionalDouble.empty(),
        screws ? holes() : List.of());
  }

  private List<Hole> holes() {
    return List.of(new Hole(length(-15, 15), length(-15, 15), length(1, 20)), new Hole(0, -10, 3));
  }

  /** Sometimes on a mark of a mm rule, sometimes on one of an inch rule, sometimes any double. */
  private double length(double least, double most) {
    double any = least + random.nextDouble() * (most - least);
    double marked =
        switch (random.nextInt(4)) {
          case 0 -> Math.rint(any);
          case 1 -> Math.rint(any * 10) / 10;
          case 2 ->
              new BigDecimal("0.396875")
                  .multiply(new BigDecimal(Math.rint(any / 0.396875)))
                  .doubleValue();
          default -> any;
        };
    // Adding zero turns a negative zero, which a file cannot tell apart, into a plain one.
    return marked >= least && marked <= most ? marked + 0.0 : any;
  }

  private OptionalDouble optional(DoubleSupplier value) {
    return maybe() ? OptionalDouble.empty() : OptionalDouble.of(value.getAsDouble());
  }

  private boolean maybe() {
    return random.nextBoolean();
  }

  private <T> T pick(T[] values) {
    return values[random.nextInt(values.length)];
  }
}
