package padwright.desk.view;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.geometry.Bounds;
import padwright.geometry.Polygons;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.pattern.PartResult;

/**
 * The section of a part as a form to fill in: members that can be pointed at, dimensions with a box
 * for each field, handles that are dragged. To scale, in points of the screen, y down, the origin
 * at the top left. Sizes are the engine's; where there is no result, what is asked for stands there
 * as plain rectangles.
 *
 * @param width as asked for, or the least that the form needs
 * @param scale points to a mm
 * @param caption the scale in words, and the cover per side
 * @param scaleBar a round number of mm, to scale
 * @param baseLine where the base's outline stands, over the whole height
 * @param worked made of a result
 */
public record SectionForm(
    double width,
    double height,
    double text,
    double scale,
    List<Member> members,
    List<Dimension> dimensions,
    List<Label> labels,
    List<Handle> handles,
    String caption,
    Label scaleBar,
    Line baseLine,
    boolean worked) {
  /** A click this near hits a line that is thinner, in points. */
  private static final double NEAR = 6;

  /** The covering takes less, so that a thin layer under it can still be hit. */
  private static final double NEAR_COVER = 3.5;

  public SectionForm {
    members = List.copyOf(members);
    dimensions = List.copyOf(dimensions);
    labels = List.copyOf(labels);
    handles = List.copyOf(handles);
  }

  /**
   * What the form may take up.
   *
   * @param text size of its letters
   * @param scale points to a mm to be kept, as while something is dragged; empty for what fits
   */
  public record Room(double width, double height, double text, Units units, OptionalDouble scale) {
    public Room(double width, double height, double text, Units units) {
      this(width, height, text, units, OptionalDouble.empty());
    }
  }

  /** What a member is: it sets its tone and hatching. */
  public enum Kind {
    BOARD,
    FOAM,
    WADDING,
    EDGE,
    COVER,
    STAPLES
  }

  /**
   * Something that can be pointed at.
   *
   * @param name of its group of fields, such as {@code foam[1]}
   * @param number of a foam layer, from 0; else 0
   * @param closed an area; else a line
   * @param thick of a line, points
   */
  public record Member(
      String name,
      String title,
      Kind kind,
      int number,
      List<Vec2> outline,
      boolean closed,
      double thick) {
    public Member {
      outline = List.copyOf(outline);
    }

    /** Distance of a point; 0 inside. */
    double distance(Vec2 p) {
      if (closed && Polygons.contains(outline, p)) {
        return 0;
      }
      double least = Double.POSITIVE_INFINITY;
      int n = closed ? outline.size() : outline.size() - 1;
      for (int i = 0; i < n; i++) {
        Segment s = Segment.line(outline.get(i), outline.get((i + 1) % outline.size()));
        least = Math.min(least, s.distanceTo(p));
      }
      return closed ? least : Math.max(0, least - thick / 2);
    }
  }

  /** A straight line. */
  public record Line(Vec2 from, Vec2 to) {}

  /**
   * A size between two places.
   *
   * @param place of its field
   * @param member its field belongs to
   * @param label what it is the size of, short
   * @param from one end of the measured length
   * @param witnesses lines from the dimension to what it measures and to its box
   * @param caption where the label is written; empty where a row or column says it
   * @param box where its field stands
   * @param reading what it says where it cannot be filled in; else empty
   */
  public record Dimension(
      String place,
      String member,
      String label,
      Vec2 from,
      Vec2 to,
      List<Line> witnesses,
      Optional<Bounds> caption,
      Bounds box,
      Optional<String> reading) {
    public Dimension {
      witnesses = List.copyOf(witnesses);
    }
  }

  /**
   * A name beside the drawing.
   *
   * @param member empty where it names none
   * @param leader to what it names
   */
  public record Label(String member, String words, Bounds box, Line leader) {}

  /**
   * What is taken hold of to change a size.
   *
   * @param along unit direction on the screen in which the size grows
   * @param scale points to a mm
   */
  public record Handle(String place, String member, Vec2 at, Vec2 along, double scale) {
    /**
     * The size after a drag, on whole steps; the size itself where it was not moved by half a step.
     *
     * @param from size before, mm
     * @param dx points to the right
     * @param dy points down
     * @param step of its field, mm
     */
    public double dragged(double from, double dx, double dy, double step) {
      double by = (dx * along.x() + dy * along.y()) / scale;
      return Math.abs(by) < step / 2 ? from : Math.round((from + by) / step) * step;
    }
  }

  /** The form of a part that was worked out. */
  public static SectionForm of(PartResult result, SectionCut cut, Room room) {
    return new SectionLayout(SectionBody.of(result, cut), result.asked(), cut, room).form();
  }

  /** The form of a part that is not worked out: what is asked for, as plain rectangles. */
  public static SectionForm asked(WrappedPad pad, Room room) {
    return new SectionLayout(SectionBody.asked(pad), pad, SectionCut.USUAL, room).form();
  }

  /**
   * The height below which a form does not shrink.
   *
   * @param text size of its letters
   */
  public static double leastHeight(WrappedPad pad, double text) {
    return SectionLayout.leastHeight(SectionBody.asked(pad), text);
  }

  /** The dimensions that are filled in, from the board upwards and then the back. */
  public List<Dimension> inOrder() {
    List<Dimension> rows = new java.util.ArrayList<>();
    List<Dimension> back = new java.util.ArrayList<>();
    double beside = dimension("base.thickness").map(d -> d.box().maxY()).orElse(height);
    for (Dimension d : dimensions) {
      if (d.reading().isEmpty()) {
        (d.box().minY() > beside ? back : rows).add(d);
      }
    }
    rows.sort(
        java.util.Comparator.comparingDouble((Dimension d) -> -d.box().minY())
            .thenComparingDouble(d -> d.box().minX()));
    rows.addAll(back);
    return rows;
  }

  /** The member at or near a point: thin ones before the layers they lie on. */
  public Optional<Member> hit(Vec2 p) {
    Optional<Member> exact =
        nearest(p, Kind.STAPLES, NEAR / 2)
            .or(() -> nearest(p, Kind.COVER, 0.5))
            .or(() -> nearest(p, Kind.EDGE, NEAR))
            .or(() -> nearest(p, Kind.COVER, NEAR_COVER));
    if (exact.isPresent()) {
      return exact;
    }
    Member best = null;
    double least = NEAR;
    for (Member m : members) {
      double d = m.distance(p);
      if (m.closed() && (d == 0 || d < least)) {
        least = d;
        best = m;
      }
    }
    return Optional.ofNullable(best);
  }

  private Optional<Member> nearest(Vec2 p, Kind kind, double within) {
    return members.stream().filter(m -> m.kind() == kind && m.distance(p) <= within).findFirst();
  }

  /** The handle near a point. */
  public Optional<Handle> handle(Vec2 p) {
    return handles.stream()
        .filter(h -> h.at().distance(p) <= NEAR + 1)
        .min(java.util.Comparator.comparingDouble(h -> h.at().distance(p)));
  }

  /** The dimension whose field stands at a place of the job file. */
  public Optional<Dimension> dimension(String place) {
    return dimensions.stream().filter(d -> d.place().equals(place)).findFirst();
  }
}
