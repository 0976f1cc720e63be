package padwright.jobfile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.Circle;
import padwright.design.OutlineShape.Ellipse;
import padwright.design.OutlineShape.Rectangle;
import padwright.design.OutlineShape.Trapezoid;
import padwright.design.WrappedPad.Base;
import padwright.design.WrappedPad.Hole;
import padwright.design.WrappedPad.Neighbour;
import padwright.design.WrappedPad.Side;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.geometry.Vec2;
import padwright.json.Node;
import padwright.material.Board;

/** Reads the base: its outline, what the size means, the board and its holes. */
final class BaseReader {
  private final Rows rows;
  private final Lengths lengths;

  BaseReader(Rows rows, Lengths lengths) {
    this.rows = rows;
    this.lengths = lengths;
  }

  Base base(Node node) {
    node.requireObject(
        "outline",
        "size",
        "sides",
        "clearance",
        "board",
        "thickness",
        "measured",
        "backArris",
        "holes");
    OutlineShape outline = outline(node.require("outline"));
    SizeMeaning size = node.get("size").map(Words.SIZE::read).orElse(SizeMeaning.BOARD);
    List<Neighbour> sides = sides(node.get("sides"), size, outline);
    double thickness = thickness(node);
    return new Base(
        outline,
        size,
        sides,
        clearance(node, sides, outline),
        node.require("board").string(),
        thickness,
        measured(node.get("measured"), thickness),
        lengths.optional(node, "backArris", 0, thickness).orElse(0),
        holes(node, "holes", outline, lengths));
  }

  OutlineShape outline(Node node) {
    String shape = Fields.single(node, "rectangle", "trapezoid", "circle", "ellipse", "path");
    Node given = node.require(shape);
    return switch (shape) {
      case "rectangle" -> rectangle(given);
      case "trapezoid" -> {
        given.requireObject("front", "back", "depth");
        yield new Trapezoid(side(given, "front"), side(given, "back"), side(given, "depth"));
      }
      case "circle" -> {
        given.requireObject("diameter");
        yield new Circle(side(given, "diameter"));
      }
      case "path" -> new PathReader(lengths).path(given);
      default -> {
        given.requireObject("length", "width");
        yield new Ellipse(side(given, "length"), side(given, "width"));
      }
    };
  }

  private double side(Node node, String field) {
    return lengths.mm(node.require(field), Limits.LEAST_OUTLINE, Limits.LARGEST);
  }

  private Rectangle rectangle(Node node) {
    node.requireObject("length", "width", "radius", "radii");
    Fields.notBoth(node, "radius", "radii");
    double length = side(node, "length");
    double width = side(node, "width");
    double half = Math.min(length, width) / 2;
    Optional<Node> radii = node.get("radii");
    if (radii.isEmpty()) {
      double radius = node.get("radius").map(n -> radius(n, half)).orElse(0.0);
      return new Rectangle(length, width, Collections.nCopies(4, radius));
    }
    // One large radius is allowed beside small ones, as long as two on a side do not overlap.
    List<Double> four =
        radii.get().array(4, 4).stream().map(n -> radius(n, Math.min(length, width))).toList();
    for (int i = 0; i < 4; i++) {
      double both = four.get(i) + four.get((i + 1) % 4);
      double along = i % 2 == 0 ? length : width;
      if (both > along + Limits.ROUNDING) {
        throw radii
            .get()
            .refuse(
                "two neighbouring radii add up to "
                    + lengths.shown(both)
                    + " on a side of "
                    + lengths.shown(along),
                "Give radii that fit on the side (front left, front right, back right, back left)");
      }
    }
    return new Rectangle(length, width, four);
  }

  private double radius(Node node, double most) {
    double radius = lengths.mm(node, 0, Limits.LARGEST);
    if (radius > 0 && radius < Limits.LEAST_RADIUS) {
      throw node.refuse(
          node.shown() + " is too small a radius to make", "Write 0 for a sharp corner");
    }
    if (radius > most + Limits.ROUNDING) {
      throw node.refuse(
          node.shown() + " is too large a radius for this rectangle",
          "Give at most " + lengths.shown(most));
    }
    return radius;
  }

  private static List<Neighbour> sides(
      Optional<Node> node, SizeMeaning size, OutlineShape outline) {
    Neighbour usual = size == SizeMeaning.OPENING ? Neighbour.KEEP_CLEAR : Neighbour.FREE;
    if (node.isEmpty()) {
      return Collections.nCopies(4, usual);
    }
    node.get().requireObject(Words.SIDE.all());
    List<Neighbour> sides = new ArrayList<>();
    for (Side side : Side.values()) {
      Optional<Node> given = node.get().get(Words.SIDE.word(side));
      sides.add(given.map(Words.NEIGHBOUR::read).orElse(usual));
    }
    if (Outlines.round(outline) && new HashSet<>(sides).size() > 1) {
      throw node.get()
          .refuse(
              "a round outline has one side all round, and these differ: " + node.get().excerpt(),
              "Give front, right, back and left the same of " + Words.NEIGHBOUR.listed());
    }
    return sides;
  }

  private OptionalDouble clearance(Node node, List<Neighbour> sides, OutlineShape outline) {
    OptionalDouble clearance =
        lengths.optional(node, "clearance", 0, Outlines.shorterSide(outline) / 4);
    if (clearance.isPresent() && !sides.contains(Neighbour.KEEP_CLEAR)) {
      Node given = node.require("clearance");
      throw given.refuse(
          given.shown() + " is given as clearance, but no side is kept clear",
          "Leave it out, or make a side \"keep-clear\"");
    }
    return clearance;
  }

  private double thickness(Node base) {
    Board board = rows.board(base.require("board"));
    Node node = base.require("thickness");
    double thickness = lengths.mm(node, Limits.LEAST_BOARD, Limits.MOST_BOARD);
    if (board.lowerLimit(thickness) <= 0) {
      throw node.refuse(
          node.shown() + " is thinner than the tolerance of " + board.name(),
          "Give a thickness this board is sold in");
    }
    return thickness;
  }

  private OptionalDouble measured(Optional<Node> node, double thickness) {
    if (node.isEmpty()) {
      return OptionalDouble.empty();
    }
    double measured = lengths.mm(node.get(), Limits.LEAST_BOARD / 2, 2 * Limits.MOST_BOARD);
    double apart = Math.max(Limits.MEASURED_LEAST, Limits.MEASURED_SHARE * thickness);
    if (Math.abs(measured - thickness) > apart + Limits.ROUNDING) {
      throw node.get()
          .refuse(
              node.get().shown()
                  + " is too far from the nominal thickness of "
                  + lengths.shown(thickness),
              "Measure again, or give the nominal thickness of the board you have");
    }
    return OptionalDouble.of(measured);
  }

  /** Holes in the base, or screw positions: round places that must lie on it. */
  static List<Hole> holes(Node node, String field, OutlineShape outline, Lengths lengths) {
    double reach = Math.max(Outlines.length(outline), Outlines.width(outline)) / 2;
    Predicate<Vec2> inside = Outlines.inside(outline);
    List<Hole> holes = new ArrayList<>();
    for (Node hole : Fields.list(node, field, Limits.MOST_HOLES)) {
      hole.requireObject("x", "y", "diameter");
      double x = lengths.mm(hole.require("x"), -reach, reach);
      double y = lengths.mm(hole.require("y"), -reach, reach);
      if (!inside.test(new Vec2(x, y))) {
        throw hole.refuse(
            hole.require("x").shown()
                + ", "
                + hole.require("y").shown()
                + ": its middle lies outside the outline",
            "Measure x and y from the middle of the outline, x to the right and y to the back");
      }
      holes.add(
          new Hole(
              x,
              y,
              lengths.mm(
                  hole.require("diameter"), Limits.LEAST_HOLE, Outlines.shorterSide(outline))));
    }
    return holes;
  }
}
