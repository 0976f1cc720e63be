package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.PadShape;
import padwright.shape.TautPath;

/**
 * Lays the covering of a wrapped pad out flat: the base outline moved out by the developed side,
 * with the corners cut so that they fold.
 *
 * <p>On straight runs that is exact, since a bent strip is developable; at a corner or rounding the
 * surplus is the turn times (s - x(s)), by the Gauss-Bonnet theorem.
 */
public final class CoverDeveloper {
  private final PadShape shape;
  private final TautPath path;
  private final List<CornerSite> sites;
  private final List<CornerChoice> choices;
  private final Skeleton skeleton;
  private final double reliefStop;
  private final CornerChooser chooser;

  /**
   * @param treatments one for all corners or one per corner from front left anticlockwise
   * @param ease part of its length the covering can be eased by
   * @param reliefStop how far relief cuts stop short of the fold that hides them
   */
  public CoverDeveloper(
      PadShape shape,
      WrappedPad.Kind kind,
      WrappedPad.Side front,
      List<Treatment> treatments,
      double ease,
      double reliefStop,
      OptionalDouble pleatDepth) {
    this.shape = shape;
    this.path = shape.section().taut();
    this.reliefStop = reliefStop;
    sites = CornerSite.of(shape.outline(), shape.sideNames());
    double length = shape.length();
    double width = shape.width();
    chooser =
        new CornerChooser(
            kind, front, Math.min(length, width), length != width, path, ease, pleatDepth);
    String ends = length > width ? "left right" : length < width ? "front back" : "";
    choices = new ArrayList<>();
    for (int i = 0; i < sites.size(); i++) {
      Treatment asked =
          treatments.size() == 1
              ? treatments.get(0)
              : treatments.get(Math.floorMod(order(sites.get(i)), treatments.size()));
      choices.add(chooser.choose(sites.get(i), asked, ends));
    }
    skeleton =
        new SkeletonBuilder(shape.outline(), shape.sideNames(), sites, choices, front).build();
  }

  private static int order(CornerSite site) {
    return switch (site.name()) {
      case "front right" -> 1;
      case "back right" -> 2;
      case "back left" -> 3;
      default -> 0;
    };
  }

  /** The base outline as the covering takes it, with its folds. */
  public Skeleton skeleton() {
    return skeleton;
  }

  /** What was asked for at a corner and could not be had, one sentence each. */
  public List<String> refusals() {
    List<String> list = new ArrayList<>();
    for (int i = 0; i < sites.size(); i++) {
      if (!choices.get(i).refused().isEmpty()) {
        list.add(sites.get(i).name() + ": " + choices.get(i).refused());
      }
    }
    return list;
  }

  /** The whole plan, its cut line the grip beyond its trim line. */
  public CoverPlan plan(double grip) {
    double d = path.developed();
    int n = shape.outline().segments().size();
    List<Double> perSide = new ArrayList<>();
    List<Double> turnUnder = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      perSide.add(d);
      turnUnder.add(-path.neutral().end().x());
    }
    List<CornerPlan> corners = new ArrayList<>();
    for (int i = 0; i < sites.size(); i++) {
      corners.add(corner(i));
    }
    return new CoverPlan(line(d), line(d + grip), perSide, turnUnder, corners, skeleton);
  }

  /** The closed line at path length {@code edge} beyond the outline, with its relief cuts. */
  public Path line(double edge) {
    List<Segment> segments = shape.outline().segments();
    int n = segments.size();
    List<List<Vec2>> joints = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      joints.add(joint(i, edge));
    }
    List<Segment> out = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Segment s = segments.get(i);
      List<Vec2> from = joints.get((i + n - 1) % n);
      List<Vec2> to = joints.get(i);
      if (s.isArc()) {
        int site = siteOf(i);
        if (choices.get(site).notches() == 0) {
          double facing = s.directionAt(0).right().angle();
          out.add(Segment.arc(s.centre(), s.radius() + edge, facing, facing + s.sweep()));
        } else if (sites.get(site).first() == i) {
          out.addAll(notched(site, edge));
        }
      } else {
        add(out, from.get(from.size() - 1), to.get(0));
      }
      for (int k = 0; k + 1 < to.size(); k++) {
        add(out, to.get(k), to.get(k + 1));
      }
    }
    return new Path(out, true);
  }

  private static void add(List<Segment> out, Vec2 a, Vec2 b) {
    if (a.distance(b) > 1e-9) {
      out.add(Segment.line(a, b));
    }
  }

  /** The points of the cut line between segment i and the next. */
  private List<Vec2> joint(int i, double edge) {
    Segment s = shape.outline().segments().get(i);
    for (int k = 0; k < sites.size(); k++) {
      CornerSite site = sites.get(k);
      if (site.sharp() && site.first() == i) {
        Segment next = shape.outline().segments().get((i + 1) % shape.outline().segments().size());
        CornerFrame f = CornerFrame.of(s.end(), s.directionAt(1), next.directionAt(0));
        return CornerCut.line(f, choices.get(k).fold(), path, reliefStop, edge);
      }
    }
    return List.of(s.end().along(s.directionAt(1).right(), edge));
  }

  private int siteOf(int segment) {
    int n = shape.outline().segments().size();
    for (int k = 0; k < sites.size(); k++) {
      CornerSite site = sites.get(k);
      if (!site.sharp() && Math.floorMod(segment - site.first(), n) < site.arcs()) {
        return k;
      }
    }
    throw new IllegalStateException("arc " + segment + " belongs to no corner");
  }

  /** The whole rounding of a corner with its V-notches. */
  private List<Segment> notched(int site, double edge) {
    CornerSite s = sites.get(site);
    List<Segment> arcs = new ArrayList<>();
    int n = shape.outline().segments().size();
    for (int k = 0; k < s.arcs(); k++) {
      arcs.add(shape.outline().segments().get((s.first() + k) % n));
    }
    double tip = path.backStart() + CornerCut.JOINED;
    double d = path.developed();
    // All that the notches take at the trim line: what lies on the back.
    double atTrim = chooser.fullness(s, d) - chooser.fullness(s, path.backStart());
    double mouth = Math.max(0, atTrim) * (edge - tip) / (d - tip);
    return new NotchedArcs(arcs, choices.get(site).notches(), tip, mouth).line(edge);
  }

  private CornerPlan corner(int i) {
    CornerSite site = sites.get(i);
    CornerChoice choice = choices.get(i);
    int layers = 1;
    int first = 1;
    int second = 1;
    if (site.sharp()) {
      first = choice.fold() == Fold.SINGLE_SECOND_OVER ? 1 : 3;
      second = choice.fold() == Fold.SINGLE_FIRST_OVER ? 1 : 3;
    } else if (choice.pleats() > 0) {
      double spread = path.surplus(path.backStart());
      double facet = site.leastRadius() + Math.max(0, path.out(path.backStart()));
      int over = (int) Math.ceil(spread / (2 * facet) - 1e-9);
      layers = 1 + 2 * Math.min(choice.pleats(), Math.max(1, over));
      first = layers;
      second = layers;
    }
    boolean relief = choice.fold().single() && site.sharp();
    String over = !relief ? "" : choice.fold().firstOver() ? site.before() : site.after();
    double ease =
        choice.pleats() > 0 || site.sharp() ? 0 : chooser.easeNeeded(site, choice.notches() > 0);
    return new CornerPlan(
        site.name(),
        choice.treatment(),
        choice.reason(),
        site.apex(),
        site.turn(),
        site.leastRadius(),
        over,
        relief ? reliefStop : 0,
        folds(i),
        choice.pleats() + choice.notches(),
        choice.pleatDepth(),
        chooser.fullness(site, path.backStart()),
        chooser.fullness(site, path.developed()),
        ease,
        first,
        second,
        site.sharp() ? FlapStrain.of(frame(i), path) : 0);
  }

  private CornerFrame frame(int site) {
    List<Segment> segments = shape.outline().segments();
    int i = sites.get(site).first();
    return CornerFrame.of(
        segments.get(i).end(),
        segments.get(i).directionAt(1),
        segments.get((i + 1) % segments.size()).directionAt(0));
  }

  /** The fold lines of one corner on the flat, in the order they are folded. */
  private List<CornerPlan.Fold> folds(int site) {
    List<CornerPlan.Fold> folds = new ArrayList<>();
    for (int i = 0; i < skeleton.elements().size(); i++) {
      if (skeleton.elements().get(i) instanceof Skeleton.Side side
          && side.corner() == site
          && side.after() != Fold.NONE) {
        folds.addAll(
            CornerFolds.of(
                skeleton.frame(i),
                side.after(),
                path,
                sites.get(site).sharp() ? reliefStop : Double.POSITIVE_INFINITY));
      }
    }
    return folds;
  }
}
