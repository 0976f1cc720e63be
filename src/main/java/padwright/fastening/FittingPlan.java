package padwright.fastening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.design.Fittings;
import padwright.design.Fittings.CutOut;
import padwright.design.Fittings.ThreadedInsert;
import padwright.design.Fittings.Through;
import padwright.design.Fittings.Zone;
import padwright.design.Fittings.ZoneKind;
import padwright.design.PadSpec;
import padwright.design.WrappedPad.Hole;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.shape.Outlines;
import padwright.shape.PadShape;

/**
 * The cut-outs of a part and what is let into or put on its board, as shapes in the frame of the
 * base seen from the face, each with the name it is told by, such as "cut-out 1". mm.
 *
 * <p>The size of a cut-out is that of the hole in the board. Foam and wadding are cut level with
 * it, so that the covering lies taut down one straight wall; what stays open is a covering's
 * thickness less on every side.
 */
public record FittingPlan(
    List<Opening> cutOuts, List<Round> vents, List<Round> inserts, List<Patch> zones) {
  /** Board left between a staple and the edge of a cut-out, mm; own choice, as from an arris. */
  public static final double CUT_CLEAR = 8;

  /** Turn-under left behind a staple on the back round a cut-out, mm; as round the base. */
  static final double BEHIND_STAPLE = 4;

  public FittingPlan {
    cutOuts = List.copyOf(cutOuts);
    vents = List.copyOf(vents);
    inserts = List.copyOf(inserts);
    zones = List.copyOf(zones);
  }

  /**
   * A cut-out.
   *
   * @param hole in the board, anticlockwise
   * @param turned how the covering goes through it; empty where it is left whole
   */
  public record Opening(String name, Path hole, Optional<TurnedThrough> turned) {
    /** What its tongues cover on the back beyond the hole; 0 where there are none. */
    public double turnUnder() {
      return turned.map(t -> Math.max(0, t.turnUnder())).orElse(0.0);
    }
  }

  /**
   * A round hole through the board.
   *
   * @param diameter of the hole
   * @param outer diameter of what lies on the board about it; that of the hole where nothing does
   */
  public record Round(String name, Vec2 at, double diameter, double outer) {
    public Path hole() {
      return Path.circle(at, diameter / 2);
    }

    public Path flange() {
      return Path.circle(at, outer / 2);
    }
  }

  /** A zone on the back. */
  public record Patch(String name, ZoneKind kind, Path area) {}

  /** Lays out what the maker asked for. */
  public static FittingPlan of(Fittings asked, PadShape shape, PadSpec spec) {
    List<Opening> cutOuts = new ArrayList<>();
    for (CutOut c : asked.cutOuts()) {
      cutOuts.add(opening("cut-out " + (cutOuts.size() + 1), c, shape, spec));
    }
    List<Round> inserts = new ArrayList<>();
    for (ThreadedInsert t : asked.inserts()) {
      String name = "T-nut " + (inserts.size() + 1);
      inserts.add(new Round(name, new Vec2(t.x(), t.y()), t.barrel(), t.flange()));
    }
    List<Patch> zones = new ArrayList<>();
    for (Zone z : asked.zones()) {
      zones.add(new Patch("zone " + (zones.size() + 1), z.kind(), rectangle(z)));
    }
    return new FittingPlan(cutOuts, rounds("vent ", asked.vents()), inserts, zones);
  }

  /** Round holes that a part has anyway, such as "hole 1". */
  public static List<Round> rounds(String name, List<Hole> holes) {
    List<Round> rounds = new ArrayList<>();
    for (Hole h : holes) {
      Vec2 at = new Vec2(h.x(), h.y());
      rounds.add(new Round(name + (rounds.size() + 1), at, h.diameter(), h.diameter()));
    }
    return rounds;
  }

  private static Opening opening(String name, CutOut c, PadShape shape, PadSpec spec) {
    Vec2 at = new Vec2(c.x(), c.y());
    Path hole = Outlines.of(c.shape()).path().translated(at);
    if (c.through() == Through.WHOLE) {
      return new Opening(name, hole, Optional.empty());
    }
    double wall = shape.section().top() + Math.PI / 2 * spec.coverThickness();
    double least = spec.edgeDistance() + BEHIND_STAPLE;
    double wished = Math.max(least, spec.turnUnder());
    return new Opening(
        name, hole, Optional.of(new SlitPlanner(c.shape(), hole, at).plan(wall, wished, least)));
  }

  private static Path rectangle(Zone z) {
    double x = z.length() / 2;
    double y = z.width() / 2;
    return Path.polygon(new Vec2(-x, -y), new Vec2(x, -y), new Vec2(x, y), new Vec2(-x, y))
        .translated(new Vec2(z.x(), z.y()));
  }

  public boolean isEmpty() {
    return cutOuts.isEmpty() && vents.isEmpty() && inserts.isEmpty() && zones.isEmpty();
  }

  /** What staples keep away from: the holes given, and all that goes through the board here. */
  public KeepClear keepClear(List<Hole> holes) {
    List<Hole> all = new ArrayList<>(holes);
    for (List<Round> rounds : List.of(vents, inserts)) {
      rounds.forEach(r -> all.add(new Hole(r.at().x(), r.at().y(), r.diameter())));
    }
    KeepClear clear = new KeepClear(all);
    for (Opening o : cutOuts) {
      clear = clear.and(o.hole(), CUT_CLEAR);
    }
    return clear;
  }
}
