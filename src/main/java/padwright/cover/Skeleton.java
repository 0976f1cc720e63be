package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * The base outline as the covering takes it: straight sides that are wrapped isometrically, and
 * rounded stretches over which it is eased, in order anticlockwise. A rounded corner that is
 * pleated is a chain of short sides, the flat facets that pleats make.
 */
public final class Skeleton {
  private final List<Element> elements;
  private final CornerFrame[] frames;

  public Skeleton(List<Element> elements) {
    this.elements = List.copyOf(elements);
    frames = new CornerFrame[elements.size()];
    for (int i = 0; i < frames.length; i++) {
      if (elements.get(i) instanceof Side a && a.after() != Fold.NONE) {
        Side b = (Side) next(i);
        frames[i] = CornerFrame.of(a.to(), a.along(), b.along());
      }
    }
  }

  public List<Element> elements() {
    return elements;
  }

  /** A stretch of the outline and the fold that follows it. */
  public sealed interface Element {
    String name();

    /** The fold between this element and the next. */
    Fold after();
  }

  /**
   * A straight side.
   *
   * @param facet part of a pleated rounding
   * @param corner index of the corner whose fold follows, -1 where none does
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
  }

  /**
   * A rounded stretch over which the covering is eased; angles of its outward normal.
   *
   * @param corner index of the corner it belongs to
   */
  public record Sweep(
      String name, Vec2 centre, double radius, double fromAngle, double toAngle, int corner)
      implements Element {
    @Override
    public Fold after() {
      return Fold.NONE;
    }

    double turn() {
      return toAngle - fromAngle;
    }
  }

  Element next(int i) {
    return elements.get((i + 1) % elements.size());
  }

  Element previous(int i) {
    return elements.get((i + elements.size() - 1) % elements.size());
  }

  /** The outline that these elements make, its sides meeting in their corners. */
  Path outline() {
    List<Segment> segments = new ArrayList<>();
    for (Element e : elements) {
      if (e instanceof Side side) {
        segments.add(Segment.line(side.from(), side.to()));
      } else if (e instanceof Sweep sweep) {
        segments.add(
            Segment.arc(sweep.centre(), sweep.radius(), sweep.fromAngle(), sweep.toAngle()));
      }
    }
    return new Path(segments, true);
  }

  /** The corner after element i; only where a fold follows it, and then both are sides. */
  CornerFrame frame(int i) {
    return frames[i];
  }
}
