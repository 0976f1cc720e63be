package padwright.desk.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import padwright.design.EdgeShape;
import padwright.design.PadSpec;
import padwright.design.WrappedPad;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.pattern.Figures;
import padwright.pattern.PartResult;
import padwright.shape.Section;

/**
 * What a section form draws, in mm and section coordinates (x outwards from the base outline, y up
 * from the back of the board): the engine's section, or what is asked for as plain rectangles where
 * there is no result.
 *
 * @param pieces from the board upwards
 * @param covering its middle line, from inside the pad over the edge to the end of the turn-under
 * @param corner where the foam's top edge would be if it were square
 * @param lowest height at which the edge's shape may end: the top of the board
 * @param leg of the staple drawn; 0 for none
 * @param penetration how far its point goes into the board
 * @param worked made of a result
 */
record SectionBody(
    List<Piece> pieces,
    List<Vec2> covering,
    double coverThickness,
    String coverName,
    EdgeShape edge,
    Vec2 corner,
    double lowest,
    double turnUnder,
    double edgeDistance,
    double leg,
    double penetration,
    double wire,
    double backArris,
    double top,
    double finishedHeight,
    OptionalDouble perSide,
    boolean worked) {
  private static final double CHORD = 0.02;
  private static final double NO_RESULT_TURN_UNDER = 25;
  private static final double NO_RESULT_WADDING = 3;
  private static final double NO_RESULT_INSIDE = 30;

  SectionBody {
    pieces = List.copyOf(pieces);
    covering = List.copyOf(covering);
  }

  /**
   * A layer.
   *
   * @param member name of its group of fields
   * @param bottom of its thickness as it is measured, in the middle of the pad
   */
  record Piece(
      String member,
      Section.LayerKind kind,
      String title,
      List<Vec2> outline,
      double bottom,
      double top,
      double overhang) {
    Piece {
      outline = List.copyOf(outline);
    }

    /** Where its edge reaches out furthest: the middle of that stretch. */
    Vec2 outermost() {
      Bounds b = Bounds.of(outline);
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (Vec2 p : outline) {
        if (p.x() > b.maxX() - CHORD) {
          low = Math.min(low, p.y());
          high = Math.max(high, p.y());
        }
      }
      return new Vec2(b.maxX(), (low + high) / 2);
    }
  }

  static SectionBody of(PartResult result, SectionCut cut) {
    Section section = cut.of(result);
    PadSpec spec = result.spec();
    List<Piece> pieces = new ArrayList<>();
    double z = 0;
    int foam = 0;
    Vec2 corner = new Vec2(0, section.boardThickness());
    double least = 0;
    for (Section.Layer l : section.layers()) {
      double top = l.kind() == Section.LayerKind.WADDING ? section.top() : z + l.thickness();
      String member =
          switch (l.kind()) {
            case BOARD -> "base";
            case FOAM -> "foam[" + foam++ + "]";
            case WADDING -> "wadding";
          };
      String title =
          switch (l.kind()) {
            case BOARD -> "board: " + l.name();
            case FOAM -> "foam " + foam + ": " + l.name();
            case WADDING -> "wadding: " + l.name();
          };
      List<Vec2> outline = l.shape().flattened(CHORD);
      least = Math.min(least, l.shape().bounds().minX());
      pieces.add(new Piece(member, l.kind(), title, outline, z, top, l.overhang()));
      z = top;
      if (l.kind() == Section.LayerKind.FOAM) {
        // At the edge: a layer laid over a crown lies higher in its middle.
        corner = new Vec2(l.overhang(), l.shape().bounds().minY() + l.thickness());
      }
    }
    Path neutral = section.taut().neutral();
    List<Segment> line = new ArrayList<>();
    line.add(Segment.line(new Vec2(least, neutral.start().y()), neutral.start()));
    line.addAll(neutral.segments());
    Figures.StapleFigures staples = result.figures().staples();
    return new SectionBody(
        pieces,
        new Path(line, false).flattened(CHORD),
        spec.coverThickness(),
        spec.covering().name(),
        section.edge(),
        corner,
        section.boardThickness(),
        -neutral.end().x(),
        spec.edgeDistance(),
        staples.leg(),
        staples.single().penetration(),
        spec.staple().wireWidth(),
        spec.backArris(),
        section.top(),
        result.figures().finished().height(),
        OptionalDouble.of(section.taut().developed()),
        true);
  }

  /** What is asked for as plain rectangles. */
  static SectionBody asked(WrappedPad pad) {
    double turnUnder = pad.cover().turnUnder().orElse(NO_RESULT_TURN_UNDER);
    double inside =
        -Math.max(turnUnder, pad.foam().stream().mapToDouble(f -> f.thickness()).sum())
            - NO_RESULT_INSIDE;
    List<Piece> pieces = new ArrayList<>();
    double z = pad.base().thickness();
    double out = 0;
    pieces.add(
        piece("base", Section.LayerKind.BOARD, "board: " + pad.base().board(), inside, 0, z, 0));
    for (int i = 0; i < pad.foam().size(); i++) {
      WrappedPad.FoamLayer f = pad.foam().get(i);
      double overhang = f.overhang().orElse(0);
      out = Math.max(out, overhang);
      pieces.add(
          piece(
              "foam[" + i + "]",
              Section.LayerKind.FOAM,
              "foam " + (i + 1) + ": " + f.foam(),
              inside,
              z,
              z + f.thickness(),
              overhang));
      z += f.thickness();
    }
    Vec2 corner =
        new Vec2(
            pad.foam().isEmpty() ? 0 : pad.foam().get(pad.foam().size() - 1).overhang().orElse(0),
            z);
    Optional<WrappedPad.WaddingLayer> w = pad.wadding();
    if (w.isPresent()) {
      double top = z + w.get().thickness().orElse(NO_RESULT_WADDING);
      String title = "wadding: " + w.get().wadding();
      pieces.add(piece("wadding", Section.LayerKind.WADDING, title, inside, z, top, corner.x()));
      z = top;
    }
    double t = pad.cover().thickness().orElse(1);
    List<Vec2> covering =
        List.of(
            new Vec2(inside, z + t / 2),
            new Vec2(out + t / 2, z + t / 2),
            new Vec2(out + t / 2, -t / 2),
            new Vec2(-turnUnder, -t / 2));
    double leg = pad.staples().leg().orElse(0);
    return new SectionBody(
        pieces,
        covering,
        t,
        pad.cover().covering(),
        pad.edge(),
        corner,
        pad.base().thickness(),
        turnUnder,
        pad.staples().edgeDistance().orElse(10),
        leg,
        leg - t,
        1,
        pad.base().backArris(),
        z,
        z + t,
        OptionalDouble.empty(),
        false);
  }

  private static Piece piece(
      String member,
      Section.LayerKind kind,
      String title,
      double inside,
      double bottom,
      double top,
      double overhang) {
    List<Vec2> outline =
        List.of(
            new Vec2(inside, bottom),
            new Vec2(overhang, bottom),
            new Vec2(overhang, top),
            new Vec2(inside, top));
    return new Piece(member, kind, title, outline, bottom, top, overhang);
  }

  /** The size of a shaped edge, mm; 0 where it is square. */
  double edgeSize() {
    if (edge instanceof EdgeShape.Round r) {
      return r.radius();
    } else if (edge instanceof EdgeShape.Bevel b) {
      return b.size();
    }
    return edge instanceof EdgeShape.FullRound ? (corner.y() - lowest) / 2 : 0;
  }

  /** The foam's top edge as a line. */
  List<Vec2> edgeLine() {
    double r = edgeSize();
    if (r == 0 || !worked) {
      return List.of(corner.plus(new Vec2(-1.5, 0)), corner, corner.plus(new Vec2(0, -1.5)));
    }
    List<Vec2> cut = cutEdge(r);
    if (cut.size() > 1) {
      return cut;
    }
    Vec2 in = corner.plus(new Vec2(-r, 0));
    if (edge instanceof EdgeShape.Bevel) {
      return List.of(in, corner.plus(new Vec2(0, -r)));
    }
    double end = edge instanceof EdgeShape.FullRound ? -Math.PI / 2 : 0;
    Segment arc = Segment.arc(in.plus(new Vec2(0, -r)), r, Math.PI / 2, end);
    return new Path(List.of(arc), false).flattened(CHORD);
  }

  /** The shaped edge as it is cut into the layers, which need not reach as far as it does. */
  private List<Vec2> cutEdge(double r) {
    double low = corner.y() - (edge instanceof EdgeShape.FullRound ? 2 * r : r);
    List<Vec2> points = new ArrayList<>();
    for (Piece p : pieces) {
      // A layer laid over a crown bends: its edge is not what is cut.
      if (p.kind() == Section.LayerKind.FOAM && p.top() <= corner.y() + CHORD) {
        p.outline().stream()
            .filter(v -> v.y() > low - CHORD && v.x() > corner.x() - r - CHORD)
            .forEach(points::add);
      }
    }
    points.sort(Comparator.comparingDouble((Vec2 v) -> -v.y()).thenComparingDouble(Vec2::x));
    return points;
  }

  /** All that is drawn to the right of {@code from}. */
  Bounds bounds(double from) {
    double half = coverThickness / 2;
    Bounds b = Bounds.of(covering).grown(half);
    for (Piece p : pieces) {
      b = b.union(Bounds.of(p.outline()));
    }
    if (leg > 0) {
      b = b.with(new Vec2(0, penetration - leg)).with(new Vec2(0, penetration));
    }
    b = b.union(Bounds.of(edgeLine()));
    return new Bounds(Math.max(from, b.minX()), b.minY(), b.maxX(), b.maxY());
  }

  /** How far inside at least must be seen: the whole turn-under, the staple, the edge's shape. */
  double needed() {
    double deep = edgeSize() - corner.x();
    for (Piece p : pieces) {
      deep = Math.max(deep, -p.overhang());
    }
    return -Math.max(Math.max(turnUnder, edgeDistance), deep) * 1.12 - 4;
  }
}
