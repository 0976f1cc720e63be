package padwright.fastening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import padwright.design.Defaults;
import padwright.design.PadSpec;
import padwright.design.WrappedPad.Finish;
import padwright.design.WrappedPad.Fixing;
import padwright.design.WrappedPad.Hole;
import padwright.design.WrappedPad.Host;
import padwright.geometry.Bounds;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.material.Screw;
import padwright.material.Status;
import padwright.measure.Sentence;
import padwright.shape.PadShape;

/**
 * Works out how the finished part is held: the packing that fills the gap behind the turn-under,
 * and screws from behind through the host into the base.
 */
public final class MountingPlanner {
  /** Room between packing and turn-under, mm; own choice, so that it drops in. */
  public static final double PACKING_CLEAR = 2;

  /** A screw's point stops this far short of the foam, mm; as for staples. */
  public static final double LEAST_MARGIN = StapleDepths.LEAST_MARGIN;

  /** A part this wide or narrower is held by one row of screws, mm; own choice. */
  private static final double ONE_ROW = 120;

  /** Chords may leave the base's arcs by this where its length is taken, mm. */
  private static final double FLAT = 0.05;

  private final PadShape shape;
  private final PadSpec spec;
  private final Host host;

  public MountingPlanner(PadShape shape, PadSpec spec, Host host) {
    this.shape = shape;
    this.spec = spec;
    this.host = host;
  }

  /** The screw row asked for or the first of the catalogue; empty unless the part is screwed. */
  public Optional<Screw> screw(List<Screw> screws, Defaults defaults) {
    if (host.fixing() != Fixing.SCREWS) {
      return Optional.empty();
    }
    Optional<Screw> named =
        host.screw().flatMap(id -> screws.stream().filter(s -> s.id().equals(id)).findFirst());
    if (named.isEmpty()) {
      defaults.note("host.screw", screws.get(0).id(), "the first in the catalogue", Status.OWN);
    }
    return Optional.of(named.orElse(screws.get(0)));
  }

  /**
   * Where screws go: as given, else a row along the middle or two rows, clear of the turn-under.
   */
  public List<Hole> positions(Optional<Screw> screw, Defaults defaults) {
    if (screw.isEmpty() || !host.positions().isEmpty()) {
      return screw.isEmpty() ? List.of() : host.positions();
    }
    double x = acrossAt(0) * 0.3;
    double y = shape.width() * 0.25;
    double d = screw.get().shank();
    List<Hole> holes = new ArrayList<>();
    if (!Offset.convex(shape.outline())) {
      holes.addAll(SpreadPlaces.in(shape.outline(), shape.ends().deepest() + PACKING_CLEAR, d));
      defaults.note("host.positions", holes.size() + " screws", "set out apart", Status.OWN);
      return holes;
    }
    if (Math.min(shape.length(), shape.width()) <= ONE_ROW) {
      boolean alongX = shape.length() >= shape.width();
      double reach = alongX ? x : shape.width() * 0.3;
      holes.add(alongX ? new Hole(-reach, 0, d) : new Hole(0, -reach, d));
      holes.add(alongX ? new Hole(reach, 0, d) : new Hole(0, reach, d));
    } else {
      for (int sx = -1; sx <= 1; sx += 2) {
        for (int sy = -1; sy <= 1; sy += 2) {
          holes.add(new Hole(sx * acrossAt(sy * y) / 4, sy * y, d));
        }
      }
    }
    defaults.note("host.positions", holes.size() + " screws", "set out evenly", Status.OWN);
    return holes;
  }

  /** Length of the base from left to right at a height of its plan: a trapezoid narrows. */
  private double acrossAt(double y) {
    Bounds all = shape.outline().bounds();
    List<Vec2> band =
        Polygons.below(
            Polygons.below(shape.outline().flattened(FLAT), new Vec2(0, 1), y),
            new Vec2(0, -1),
            FLAT - y);
    return band.isEmpty()
        ? all.width()
        : band.stream().mapToDouble(Vec2::x).max().orElse(0)
            - band.stream().mapToDouble(Vec2::x).min().orElse(0);
  }

  /** How far a screw of a length goes into the base. */
  public double into(double length, double standOff) {
    return length - host.thickness().orElse(0) - standOff;
  }

  /** The longest screw that stays {@link #LEAST_MARGIN} short of the foam. */
  public OptionalDouble longest(Screw screw, double standOff) {
    return screw.lengths().stream()
        .mapToDouble(Double::doubleValue)
        .filter(
            l -> into(l, standOff) > 0 && spec.leastThickness() - into(l, standOff) >= LEAST_MARGIN)
        .max();
  }

  /**
   * @param standOff how far the turn-under stands proud of the back
   */
  public Mounting plan(Optional<Screw> screw, List<Hole> positions, double standOff) {
    Optional<Path> packing =
        standOff > 0
            ? Offset.by(shape.outline(), -(shape.ends().deepest() + PACKING_CLEAR))
            : Optional.empty();
    OptionalDouble length = OptionalDouble.empty();
    if (screw.isPresent()) {
      length = host.screwLength().isPresent() ? host.screwLength() : longest(screw.get(), standOff);
    }
    return new Mounting(
        packing, standOff, screw, length, positions, steps(packing, screw, length, standOff));
  }

  private List<String> steps(
      Optional<Path> packing, Optional<Screw> screw, OptionalDouble length, double standOff) {
    List<String> steps = new ArrayList<>();
    if (standOff > 0 && host.fixing() != Fixing.NONE) {
      steps.add(
          packing.isPresent()
              ? text(
                  "Glue a packing %s %.1f thick to the back, between the turn-unders, so that the"
                      + " middle bears too.",
                  Mounting.strip(packing.get()) ? "strip" : "panel", standOff)
              : text(
                  "The turn-unders leave no room for packing: the part bears on them, %.1f proud.",
                  standOff));
    }
    if (screw.isPresent() && length.isPresent()) {
      steps.add(
          text(
              "Screw from behind with %s x %.0f through %.1f of host; the point stays %.1f short of"
                  + " the foam. Bore pilot holes to a stop.",
              screw.get().name(),
              length.getAsDouble(),
              host.thickness().orElse(0),
              spec.leastThickness() - into(length.getAsDouble(), standOff)));
    }
    if (host.fixing() == Fixing.TAPE) {
      steps.add(
          host.finish() == Finish.WAXED || host.finish() == Finish.OILED
              ? "Clean wax or oil off the host where tape goes, or screw the part instead."
              : "Clean and dry the host, tape over the packing and the bare board, press for a"
                  + " minute.");
    }
    return steps;
  }

  private static String text(String format, Object... values) {
    return Sentence.of(format, values);
  }
}
