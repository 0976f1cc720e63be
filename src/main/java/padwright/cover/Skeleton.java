package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.EdgeEnds;
import padwright.shape.TautPath;

/**
 * The base outline as the covering takes it: straight sides that are wrapped isometrically, and
 * rounded or hollow stretches over which it is eased or stretched, in order anticlockwise. A
 * rounded corner that is pleated is a chain of short sides, the flat facets that pleats make.
 */
public final class Skeleton {
  /** Of a plan that is only drawn. */
  static final Skeleton NONE =
      new Skeleton(
          List.of(),
          side -> {
            throw new IllegalStateException("no side, no section: " + side);
          });

  private final List<Element> elements;
  private final List<Segment> segments;
  private final TautPath[] paths;
  private final CornerFrame[] frames;
  private final Map<Element, Overrun> overruns;

  /**
   * @param sections the covering's way over the edge of each side, by its name
   */
  Skeleton(List<Element> elements, Function<String, TautPath> sections) {
    this(elements, elements.stream().map(e -> sections.apply(e.name())).toList());
  }

  /**
   * @param ways the covering's way over the edge of each element
   */
  Skeleton(List<Element> elements, List<TautPath> ways) {
    this(elements, ways, Map.of());
  }

  /**
   * @param overruns of the straight sides that run on over a pleated rounding
   */
  Skeleton(List<Element> elements, List<TautPath> ways, Map<Element, Overrun> overruns) {
    this.elements = List.copyOf(elements);
    this.overruns = Map.copyOf(overruns);
    this.segments = elements.stream().map(Element::segment).toList();
    paths = ways.toArray(TautPath[]::new);
    frames = new CornerFrame[elements.size()];
    for (int i = 0; i < frames.length; i++) {
      Element a = elements.get(i);
      if (a.after() != Fold.NONE) {
        frames[i] =
            CornerFrame.of(
                a.end(),
                a.directionAtEnd(),
                next(i).directionAtStart(),
                paths[i],
                paths[(i + 1) % paths.length]);
      }
    }
  }

  /** Element i as a piece of the outline. */
  Segment segment(int i) {
    return segments.get(i);
  }

  /** The flat top, where the covering begins to bend; empty where nothing of it is level. */
  Optional<Path> flatTop() {
    double[] starts = new double[paths.length];
    double[] ends = new double[paths.length];
    for (int i = 0; i < starts.length; i++) {
      starts[i] = paths[i].startX();
      ends[i] = paths[i].startX();
    }
    for (int i = 0; i < starts.length; i++) {
      int j = (i + 1) % starts.length;
      double here = paths[i].startX();
      double next = paths[j].startX();
      if (here != next && goesStraightOn(i)) {
        // Between the stretches of a passage the line goes on in one, as the surface does.
        ends[i] = (here + next) / 2;
        starts[j] = ends[i];
      }
    }
    return Offset.by(outline(), starts, ends);
  }

  /** Whether element i and the next are stretches of one straight side, with no fold between. */
  boolean goesStraightOn(int i) {
    Element a = elements.get(i);
    return a.after() == Fold.NONE
        && a instanceof Side side
        && next(i) instanceof Side other
        && Math.abs(side.along().cross(other.along())) < Offset.SMOOTH;
  }

  /** The covering's way over the edge along element i. */
  TautPath path(int i) {
    return paths[i];
  }

  public List<Element> elements() {
    return elements;
  }

  /** A stretch of the outline and the fold that follows it. */
  public sealed interface Element {
    String name();

    /** The fold between this element and the next. */
    Fold after();

    /** Index of the corner whose fold follows, -1 where none does. */
    int corner();

    Vec2 end();

    Vec2 directionAtStart();

    Vec2 directionAtEnd();

    /** The element as a piece of the outline. */
    Segment segment();
  }

  /**
   * A straight side.
   *
   * @param facet part of a pleated rounding
   */
  public record Side(String name, Vec2 from, Vec2 to, boolean facet, Fold after, int corner)
      implements Element {
    Vec2 along() {
      return to.minus(from).unit();
    }

    double length() {
      return from.distance(to);
    }

    Vec2 flat(double t, double s) {
      Vec2 along = along();
      return from.along(along, t).along(along.right(), s);
    }

    @Override
    public Vec2 end() {
      return to;
    }

    @Override
    public Vec2 directionAtStart() {
      return along();
    }

    @Override
    public Vec2 directionAtEnd() {
      return along();
    }

    @Override
    public Segment segment() {
      return Segment.line(from, to);
    }
  }

  /**
   * A rounded stretch over which the covering is eased, or a hollow one over which it is stretched;
   * angles of its outward normal, which fall where it is hollow.
   *
   * @param site index of the turning place it belongs to
   */
  public record Sweep(
      String name,
      Vec2 centre,
      double radius,
      double fromAngle,
      double toAngle,
      int site,
      Fold after,
      int corner)
      implements Element {
    /** A rounding that runs smoothly into what follows. */
    public Sweep(
        String name, Vec2 centre, double radius, double fromAngle, double toAngle, int site) {
      this(name, centre, radius, fromAngle, toAngle, site, Fold.NONE, -1);
    }

    /** Negative where hollow. */
    double turn() {
      return toAngle - fromAngle;
    }

    boolean hollow() {
      return toAngle < fromAngle;
    }

    /** The flat radius at path length s beyond the outline: a hollow's shrinks outwards. */
    double radiusAt(double s) {
      return hollow() ? radius - s : radius + s;
    }

    /** The flat point at an outward normal's angle and a path length beyond the outline. */
    Vec2 flat(double angle, double s) {
      return centre.along(Vec2.polar(angle), hollow() ? -radiusAt(s) : radiusAt(s));
    }

    /** How far beyond the outline a flat point lies. */
    double out(Vec2 p) {
      double away = p.distance(centre);
      return hollow() ? radius - away : away - radius;
    }

    /** The angle of the outward normal through a flat point. */
    double angle(Vec2 p) {
      return hollow() ? centre.minus(p).angle() : p.minus(centre).angle();
    }

    /** How far into the sweep an angle lies, 0 to 2 pi; over |turn| it lies outside. */
    double into(double angle) {
      double a = hollow() ? fromAngle - angle : angle - fromAngle;
      return a - 2 * Math.PI * Math.floor(a / (2 * Math.PI));
    }

    /** The angle so far into the sweep. */
    double at(double into) {
      return hollow() ? fromAngle - into : fromAngle + into;
    }

    @Override
    public Vec2 end() {
      return flat(toAngle, 0);
    }

    @Override
    public Vec2 directionAtStart() {
      return Vec2.polar(fromAngle).left();
    }

    @Override
    public Vec2 directionAtEnd() {
      return Vec2.polar(toAngle).left();
    }

    @Override
    public Segment segment() {
      return new Segment(flat(fromAngle, 0), flat(toAngle, 0), Math.tan(turn() / 4));
    }
  }

  /**
   * How far a straight side runs on over the pleated roundings beside it, as half a facet of each.
   *
   * @param before mm from its start that belong to the rounding before it
   * @param nameBefore of that rounding
   * @param after mm up to its end that belong to the rounding after it
   * @param nameAfter of that rounding
   */
  record Overrun(double before, String nameBefore, double after, String nameAfter) {
    static final Overrun NONE = new Overrun(0, "", 0, "");
  }

  /** A part of a straight side whose covering ends on the back as that of a side's name does. */
  record Stretch(String name, double from, double to) {}

  /** The parts of a straight side that are turned under, each as its own run of the outline is. */
  List<Stretch> stretches(int i, EdgeEnds ends) {
    Element e = elements.get(i);
    double length = e.segment().length();
    Overrun over = overruns.getOrDefault(e, Overrun.NONE);
    double from = ends.alike(e.name(), over.nameBefore()) ? 0 : over.before();
    double to = length - (ends.alike(e.name(), over.nameAfter()) ? 0 : over.after());
    List<Stretch> stretches = new ArrayList<>();
    stretches.add(new Stretch(e.name(), from, to));
    if (from > 0) {
      stretches.add(new Stretch(over.nameBefore(), 0, from));
    }
    if (to < length) {
      stretches.add(new Stretch(over.nameAfter(), to, length));
    }
    stretches.removeIf(s -> !ends.of(s.name()).turned());
    return stretches;
  }

  Element next(int i) {
    return elements.get((i + 1) % elements.size());
  }

  Element previous(int i) {
    return elements.get((i + elements.size() - 1) % elements.size());
  }

  /** The outline that these elements make, its sides meeting in their corners. */
  Path outline() {
    return new Path(segments, true);
  }

  /** The corner after element i; only where a fold follows it. */
  CornerFrame frame(int i) {
    return frames[i];
  }
}
