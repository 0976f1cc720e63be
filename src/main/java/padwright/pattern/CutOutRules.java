package padwright.pattern;

import static padwright.design.Finding.Level.CAUTION;
import static padwright.design.Finding.Level.NOTE;
import static padwright.design.Finding.Level.STOP;
import static padwright.pattern.FindingRules.OWN;
import static padwright.pattern.FindingRules.capital;
import static padwright.pattern.FindingRules.text;

import java.util.ArrayList;
import java.util.List;
import padwright.design.Finding;
import padwright.design.PadSpec;
import padwright.fastening.FittingPlan;
import padwright.fastening.FittingPlan.Opening;
import padwright.fastening.FittingPlan.Round;
import padwright.fastening.TongueStaples;
import padwright.fastening.TurnedBack;
import padwright.fastening.TurnedThrough;
import padwright.fastening.TurnedThrough.Tongue;
import padwright.fastening.VentPlanner;
import padwright.geometry.Bounds;
import padwright.geometry.MovedIn;
import padwright.geometry.Path;
import padwright.geometry.PathGap;
import padwright.geometry.Segment;
import padwright.shape.PadShape;

/** What cut-outs give cause to say. */
final class CutOutRules {
  /** A strip that lines the walls laps over its own end by this, mm; own choice. */
  static final double LAP = 20;

  private static final double SAME = 1e-6;

  /** Parts of a wall's height in which bare places are summed. */
  private static final int PARTS = 400;

  private static final String GEOMETRY = "geometry of the cut-out";

  private final List<Finding> findings = new ArrayList<>();
  private final PadSpec spec;
  private final PadShape shape;

  CutOutRules(FittingRules.Scene scene) {
    spec = scene.spec();
    shape = scene.shape();
    List<Opening> cutOuts = scene.fittings().cutOuts();
    List<Round> rounds = new ArrayList<>(scene.holes());
    rounds.addAll(scene.fittings().vents());
    for (int i = 0; i < cutOuts.size(); i++) {
      Opening o = cutOuts.get(i);
      rim(o);
      for (Opening other : cutOuts.subList(0, i)) {
        double room = other.turnUnder() + o.turnUnder();
        clash(o, other.name(), PathGap.between(o.hole(), other.hole()), room);
      }
      for (Round r : rounds) {
        clash(o, r.name(), PathGap.between(o.hole(), r.hole()), o.turnUnder());
      }
      o.turned().ifPresentOrElse(t -> turned(o, t), () -> whole(o));
    }
  }

  List<Finding> findings() {
    return findings;
  }

  private void rim(Opening o) {
    double rim = PathGap.inside(o.hole(), shape.outline());
    if (rim <= 0) {
      findings.add(
          Finding.of(
              "cutout-outside",
              STOP,
              text("%s reaches %.1f beyond the base's edge.", capital(o.name()), -rim),
              rim,
              0,
              "mm",
              GEOMETRY,
              "Move it in, or draw it as part of the base's outline"));
      return;
    }
    double staples = spec.edgeDistance() + FittingPlan.CUT_CLEAR + spec.staple().crown() / 2;
    TurnedBack back = new TurnedBack(shape);
    double stapled = back.toStapled(o.hole());
    if (stapled < staples) {
      findings.add(
          Finding.of(
              "cutout-rim",
              stapled < spec.edgeDistance() + FittingPlan.CUT_CLEAR ? STOP : CAUTION,
              text(
                  "%s leaves %.1f of board to the base's edge; staples %.1f from the edge and %.1f"
                      + " clear of the cut-out take %.1f.",
                  capital(o.name()), stapled, spec.edgeDistance(), FittingPlan.CUT_CLEAR, staples),
              stapled,
              staples,
              "mm",
              OWN,
              text("Move it in by %.1f, or make it smaller", staples - stapled)));
    }
    if (rim < VentPlanner.APART && stapled >= staples) {
      thin(o, rim);
    }
    back.nearest(o.hole()).ifPresent(n -> turnUnders(o, n));
    edgeShape(o, rim);
  }

  /** Beside a side that is left open there are no staples, but there is a board that breaks. */
  private void thin(Opening o, double rim) {
    findings.add(
        Finding.of(
            "cutout-open-rim",
            CAUTION,
            text("%s leaves %.1f of board to the base's edge.", capital(o.name()), rim),
            rim,
            VentPlanner.APART,
            "mm",
            OWN,
            text("Move it in by %.1f, or make it smaller", VentPlanner.APART - rim)));
  }

  private void turnUnders(Opening o, TurnedBack.Near near) {
    double rim = near.away();
    double covered = near.turnUnder() + o.turnUnder();
    if (o.turned().isPresent() && rim < covered) {
      findings.add(
          Finding.of(
              "cutout-turn-unders",
              CAUTION,
              text(
                  "Round %s the tongues on the back (%.1f) and the base's turn-under (%.1f) lie over"
                      + " each other: the rim is %.1f.",
                  o.name(), o.turnUnder(), near.turnUnder(), rim),
              rim,
              covered,
              "mm",
              GEOMETRY,
              "Trim the two to butt, or move the cut-out in"));
    }
  }

  private void edgeShape(Opening o, double rim) {
    double flat = -shape.sections().startX();
    if (rim < flat) {
      findings.add(
          Finding.of(
              "cutout-edge-shape",
              CAUTION,
              text(
                  "%s comes %.1f from the base's edge, where the face is not flat yet (to %.1f in):"
                      + " the lengths of its tongues do not hold there.",
                  capital(o.name()), rim, flat),
              rim,
              flat,
              "mm",
              GEOMETRY,
              "Move it on to the flat of the face"));
    }
  }

  private void clash(Opening o, String other, double gap, double covered) {
    double least = Math.max(VentPlanner.APART, covered);
    if (gap < least) {
      findings.add(
          Finding.of(
              "cutout-clash",
              gap <= 0 ? STOP : CAUTION,
              gap <= 0
                  ? text("%s runs into %s.", capital(o.name()), other)
                  : text(
                      "%s leaves %.1f of board to %s; with what is turned on to the back it takes"
                          + " %.1f.",
                      capital(o.name()), gap, other, least),
              gap,
              least,
              "mm",
              OWN,
              "Move one of the two, or draw both as one cut-out"));
    }
  }

  private void whole(Opening o) {
    findings.add(
        Finding.plain(
            "cutout-whole",
            NOTE,
            text(
                "%s is in board and foam only: the covering over it is not slit and carries nothing.",
                capital(o.name())),
            FindingRules.PRACTICE,
            "Keep it from where a hand or a knee would push through"));
  }

  private void turned(Opening o, TurnedThrough turned) {
    Bounds b = o.hole().bounds();
    double t = spec.coverThickness();
    findings.add(
        Finding.of(
            "cutout-finished",
            NOTE,
            text(
                "%s is %.1f x %.1f in the board; the covering takes %.1f on every side, so %.1f x"
                    + " %.1f stays open. Foam and wadding are cut level with the board.",
                capital(o.name()), b.width(), b.height(), t, b.width() - 2 * t, b.height() - 2 * t),
            Math.min(b.width(), b.height()) - 2 * t,
            Math.min(b.width(), b.height()),
            "mm",
            "board's hole less a thickness of covering on each side",
            text(
                "For an opening of %.1f x %.1f cut the board %.1f larger both ways",
                b.width(), b.height(), 2 * t)));
    if (!turned.within()) {
      findings.add(
          Finding.plain(
              "cutout-slits",
              STOP,
              text(
                  "From no place in %s do straight slits reach all of its edge: the covering cannot"
                      + " be turned through in one star.",
                  o.name()),
              GEOMETRY,
              "Split it into simpler cut-outs, leave the covering whole, or set in a sewn facing"));
      return;
    }
    if (!turned.reaches()) {
      reach(o, turned);
      return;
    }
    bare(o);
    int glued = TongueStaples.glued(turned, spec);
    if (glued > 0) {
      findings.add(
          Finding.of(
              "cutout-glue",
              CAUTION,
              text(
                  "%s: %d of its %d tongues are too narrow on the back for a crown of %.1f.",
                  capital(o.name()), glued, turned.tongues().size(), spec.staple().crown()),
              glued,
              0,
              "",
              OWN,
              "Glue these tongues to board and foam, or make the cut-out larger"));
    }
  }

  private void reach(Opening o, TurnedThrough turned) {
    double shortBy = turned.needed() - turned.reach();
    double high = turned.needed();
    double times = turned.needed() / Math.max(turned.reach(), SAME);
    Bounds hole = o.hole().bounds();
    String larger =
        even(o)
            ? text("%.1f wider both ways", 2 * shortBy)
            : text(
                "%.2f times as large, %.0f x %.0f",
                times, Math.ceil(times * hole.width()), Math.ceil(times * hole.height()));
    findings.add(
        Finding.of(
            "cutout-reach",
            STOP,
            text(
                "The covering over %s cannot reach through: its shortest tongue is %.1f, down the wall"
                    + " it takes %.1f and on the back %.1f.",
                o.name(), turned.reach(), turned.wall(), turned.leastTurnUnder()),
            turned.reach(),
            turned.needed(),
            "mm",
            "length of the taut covering, and our own limit for the turn-under",
            text(
                "Make the cut-out "
                    + larger
                    + ", the foam %.1f thinner, leave the covering"
                    + " whole, or sew a facing %.0f long and %.0f high, and seam allowances, to the"
                    + " covering round the cut-out",
                shortBy,
                o.hole().length(),
                high)));
  }

  /** Whether a hole is a rectangle or round: its tongues grow with it by half of what it does. */
  private static boolean even(Opening o) {
    List<Segment> sides = o.hole().segments();
    Bounds b = o.hole().bounds();
    boolean upright =
        sides.size() == 4
            && sides.stream().noneMatch(Segment::isArc)
            && Math.abs(o.hole().area() - b.width() * b.height()) < SAME;
    return upright || sides.stream().allMatch(Segment::isArc);
  }

  /** What a tongue leaves bare of the wall under its own edge: it narrows as it goes down. */
  private static double bareBeside(Tongue t, double wall) {
    double width = t.to().distance(t.from());
    double bare = 0;
    for (int k = 0; k < PARTS; k++) {
      double depth = wall * (k + 0.5) / PARTS;
      double covered = depth < t.length() ? Math.max(0, t.width(depth)) : 0;
      bare += (width - covered) * wall / PARTS;
    }
    return bare;
  }

  /**
   * Between tongues the walls stay bare: what the wall has beyond the covering that hung over it,
   * the ring inside the edge as wide as the wall is high.
   */
  private void bare(Opening o) {
    double wall = shape.section().top();
    double left = MovedIn.loops(o.hole(), -wall).stream().mapToDouble(Path::area).sum();
    boolean curved = o.hole().segments().stream().anyMatch(Segment::isArc);
    double area =
        curved || o.turned().isEmpty()
            ? Math.max(0, o.hole().length() * wall - (o.hole().area() - left))
            : o.turned().get().tongues().stream().mapToDouble(t -> bareBeside(t, wall)).sum();
    findings.add(
        Finding.of(
            "cutout-bare",
            CAUTION,
            text(
                "Between the tongues of %s up to %.0f mm2 of its walls stay bare, nothing at the face"
                    + " and most at the back.",
                o.name(), area),
            area,
            0,
            "mm2",
            "area of the walls less the covering that hung over them",
            text(
                "Where that would be seen, first glue a strip of covering %.0f long and %.0f high"
                    + " round the walls, or let a plate or box stand in the cut-out",
                o.hole().length() + LAP, wall)));
  }
}
