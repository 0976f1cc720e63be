package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.Crossings;
import padwright.geometry.EdgeBands;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.PathPlaces;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.EdgeEnds;
import padwright.shape.EdgeSections;
import padwright.shape.Outlines;
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
  /** Chords may leave the cut line by this where clips are looked for, mm. */
  private static final double CLIP_CHORD = 0.1;

  private final PadShape shape;
  private final EdgeSections sections;
  private final EdgeEnds ends;
  private final boolean convex;
  private final Path outline;
  private final List<String> names;
  private final List<CornerSite> sites;
  private final List<CornerChoice> choices;
  private final List<CornerRefusal> unplaced;
  private final Skeleton skeleton;
  private final double reliefStop;
  private final CornerChooser chooser;
  private final CutLine cutLine;

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
    this.sections = shape.sections();
    this.reliefStop = reliefStop;
    convex = Offset.convex(shape.outline());
    Outlines.Named named =
        convex
            ? new Outlines.Named(shape.outline(), shape.sideNames())
            : HollowCorners.sharpened(shape.outline(), shape.sideNames(), sections);
    outline = named.path();
    names = named.names();
    ends = shape.ends();
    // At the end of an uncovered side nothing is folded: the strip beside it just ends there.
    sites =
        CornerSite.of(outline, names, (a, b) -> ends.of(a).equals(ends.of(b))).stream()
            .filter(s -> !s.sharp() || s.over().stream().noneMatch(n -> ends.of(n).bare()))
            .toList();
    double length = shape.length();
    double width = shape.width();
    chooser =
        new CornerChooser(
            kind,
            front,
            Math.min(length, width),
            length != width,
            this::path,
            this::uneven,
            this::glued,
            ease,
            pleatDepth);
    String endSides = length > width ? "left right" : length < width ? "front back" : "";
    choices = new ArrayList<>();
    for (int i = 0; i < sites.size(); i++) {
      Treatment asked =
          treatments.size() == 1
              ? treatments.get(0)
              : treatments.get(Math.floorMod(sites.get(i).order(), treatments.size()));
      choices.add(
          bare(sites.get(i))
              ? new CornerChoice(
                  Treatment.EASED, Fold.NONE, 0, 0, 0, "the side is open", CornerRefusal.NONE)
              : chooser.choose(sites.get(i), asked, endSides));
    }
    unplaced = CornerRefusal.unplaced(treatments, sites, names);
    skeleton = new SkeletonBuilder(outline, names, sites, choices, front, sections).build();
    cutLine = new CutLine(named, sites, choices, chooser, sections, ends, reliefStop);
  }

  /** The section at a turning place: of two that meet in a sharp corner that with more to fold. */
  private TautPath path(CornerSite site) {
    TautPath own = sections.path(names.get(site.first()));
    if (!site.sharp()) {
      return own;
    }
    TautPath next = sections.path(names.get((site.first() + 1) % names.size()));
    return next.surplus(next.backStart()) > own.surplus(own.backStart()) ? next : own;
  }

  private boolean uneven(CornerSite site) {
    int next = (site.first() + 1) % names.size();
    return site.sharp() && sections.of(names.get(site.first())) != sections.of(names.get(next));
  }

  private boolean glued(CornerSite site) {
    EdgeEnds.EdgeEnd end = ends.of(names.get(site.first()));
    return !site.sharp() && !end.turned() && !end.bare();
  }

  /** Whether a rounding belongs to a side that is not covered. */
  private boolean bare(CornerSite site) {
    return !site.sharp() && ends.of(names.get(site.first())).bare();
  }

  /** The base outline as the covering takes it, with its folds. */
  public Skeleton skeleton() {
    return skeleton;
  }

  /** What was asked for at a corner and could not be had, one sentence each. */
  public List<CornerRefusal> refusals() {
    List<CornerRefusal> list = new ArrayList<>();
    for (int i = 0; i < sites.size(); i++) {
      if (choices.get(i).refused().any()) {
        list.add(choices.get(i).refused().at(sites.get(i).name()));
      }
    }
    list.addAll(unplaced);
    return list;
  }

  /** The whole plan, its cut line the grip beyond its trim line. */
  public CoverPlan plan(double grip) {
    int n = shape.outline().segments().size();
    List<Double> perSide = new ArrayList<>();
    List<Double> turnUnder = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      EdgeEnds.EdgeEnd end = ends.of(shape.sideNames().get(i));
      perSide.add(end.level(sections.path(shape.sideNames().get(i))));
      turnUnder.add(end.turnUnder());
    }
    List<CornerPlan> corners = new ArrayList<>();
    for (int i = 0; i < sites.size(); i++) {
      corners.add(corner(i, grip));
    }
    Path trim = line(0);
    Path cut = line(grip);
    boolean overlaps = overlaps(trim) || overlaps(cut);
    if (overlaps) {
      // Only the outside of the blank can be drawn; the finding says that it cannot be made so.
      trim = plain(0);
      cut = plain(grip);
    }
    List<Gusset> gussets = new ArrayList<>();
    List<Path> clips = new ArrayList<>();
    // In the order of the skeleton, which the proof goes by.
    for (int i = 0; i < skeleton.elements().size() && !overlaps; i++) {
      Skeleton.Element e = skeleton.elements().get(i);
      if (e.after() == Fold.GUSSET) {
        gussets.add(Gusset.of(sites.get(e.corner()).name(), skeleton.frame(i), grip));
      }
    }
    boolean clipped = choices.stream().anyMatch(c -> c.treatment() == Treatment.CLIPS);
    if (clipped && !overlaps) {
      EdgeBands inside = new EdgeBands(cut.flattened(CLIP_CHORD));
      PathPlaces walls = new PathPlaces(outline, CLIP_CHORD);
      for (int i = 0; i < sites.size(); i++) {
        if (choices.get(i).treatment() == Treatment.CLIPS) {
          clips(clips, i, path(sites.get(i)).developed() + grip, inside, walls);
        }
      }
    }
    return new CoverPlan(
        trim, cut, perSide, turnUnder, corners, skeleton, gussets, clips, overlaps);
  }

  /** Plain convex outlines have a line that cannot meet itself. */
  private boolean overlaps(Path line) {
    return (!convex || names.get(0).startsWith("side "))
        && (line.signedArea() < 0 || Crossings.first(line).isPresent());
  }

  /** The outline moved out, without any cut. */
  private Path plain(double grip) {
    double[] starts = new double[names.size()];
    double[] stops = new double[names.size()];
    for (int i = 0; i < starts.length; i++) {
      starts[i] = Math.max(0, cutLine.edge(i, true, grip));
      stops[i] = Math.max(0, cutLine.edge(i, false, grip));
    }
    return Offset.by(outline, starts, stops).orElse(outline);
  }

  /** The clips of a hollow curve: from past the arris to the cut line. */
  private void clips(List<Path> clips, int site, double edge, EdgeBands cut, PathPlaces walls) {
    CornerSite s = sites.get(site);
    int n = outline.segments().size();
    TautPath path = path(s);
    double arris = path.backStart();
    if (s.sharp()) {
      CornerFrame f = frame(site);
      double from = arris + HollowChooser.CLIP_TIP;
      clips.add(
          Path.line(f.flat(true, from * f.mitre(), from), f.flat(true, edge * f.mitre(), edge)));
      return;
    }
    for (int k = 0; k < s.arcs(); k++) {
      Segment arc = outline.segments().get((s.first() + k) % n);
      double tip = path.backStart() + HollowChooser.CLIP_TIP;
      double most = Math.min(edge, arc.radius() - HollowChooser.CLIP_TIP);
      int count =
          Math.max(1, (int) Math.round(choices.get(site).notches() * arc.sweep() / s.turn()));
      for (int j = 0; j < count && most > tip; j++) {
        Vec2 out = arc.directionAt((j + 0.5) / count).right();
        Vec2 at = arc.pointAt((j + 0.5) / count);
        Path clip = Path.line(at.along(out, tip), at.along(out, most));
        // A corner's cut or a narrow place may have taken this part of the turn-under away.
        boolean there =
            cut.contains(clip.start())
                && cut.contains(at.along(out, most - HollowChooser.CLIP_TIP));
        if (there && !walls.nearer(clip.start(), arris)) {
          clips.add(clip);
        }
      }
    }
  }

  /** The closed trim line, or the cut line the grip beyond it, with its relief cuts. */
  public Path line(double grip) {
    return cutLine.line(grip);
  }

  /** How the pleats, notches or clips of a curve stand along the base's edge. */
  private CornerPlan.Row row(int i, double grip) {
    CornerSite site = sites.get(i);
    CornerChoice choice = choices.get(i);
    int count = choice.pleats() + choice.notches();
    if (site.sharp() || count == 0) {
      return CornerPlan.Row.NONE;
    }
    double length = 0;
    for (int k = 0; k < site.arcs(); k++) {
      length += outline.segments().get((site.first() + k) % names.size()).length();
    }
    boolean clips = choice.treatment() == Treatment.CLIPS;
    boolean notches = choice.treatment() == Treatment.NOTCHES;
    return new CornerPlan.Row(
        length / count,
        notches ? cutLine.mouth(i, grip) : 0,
        clips ? HollowChooser.CLIP_TIP : notches ? CornerCut.JOINED : 0);
  }

  private CornerPlan corner(int i, double grip) {
    CornerSite site = sites.get(i);
    TautPath path = path(site);
    CornerChoice choice = choices.get(i);
    int layers = 1;
    int first = 1;
    int second = 1;
    if (choice.fold() == Fold.GUSSET) {
      // The gusset's seam allowances lie under the covering on both walls.
      first = 2;
      second = 2;
    } else if (site.sharp()) {
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
    String over = !relief ? "" : site.over().get(choice.fold().firstOver() ? 0 : 1);
    double ease =
        choice.pleats() > 0 || site.sharp() || site.hollow() || bare(site)
            ? 0
            : chooser.easeNeeded(site, choice.notches() > 0);
    double stretch = site.hollow() && choice.fold() == Fold.NONE ? chooser.stretchNeeded(site) : 0;
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
        chooser.fullness(site, chooser.end(site)),
        ease,
        first,
        second,
        site.sharp() && !site.hollow() ? FlapStrain.of(frame(i)) : 0,
        stretch,
        row(i, grip));
  }

  private CornerFrame frame(int site) {
    List<Segment> segments = outline.segments();
    int i = sites.get(site).first();
    int next = (i + 1) % segments.size();
    return CornerFrame.of(
        segments.get(i).end(),
        segments.get(i).directionAt(1),
        segments.get(next).directionAt(0),
        sections.path(names.get(i)),
        sections.path(names.get(next)));
  }

  /** The fold lines of one corner on the flat, in the order they are folded. */
  private List<CornerPlan.Fold> folds(int site) {
    List<CornerPlan.Fold> folds = new ArrayList<>();
    for (int i = 0; i < skeleton.elements().size(); i++) {
      Skeleton.Element e = skeleton.elements().get(i);
      if (e.corner() == site && e.after() != Fold.NONE && e.after() != Fold.GUSSET) {
        folds.addAll(
            CornerFolds.of(
                skeleton.frame(i),
                e.after(),
                sites.get(site).sharp() ? reliefStop : Double.POSITIVE_INFINITY));
      }
    }
    return folds;
  }
}
