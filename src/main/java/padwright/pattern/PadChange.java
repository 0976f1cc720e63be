package padwright.pattern;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.Circle;
import padwright.design.OutlineShape.Ellipse;
import padwright.design.OutlineShape.Rectangle;
import padwright.design.OutlineShape.Trapezoid;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Base;
import padwright.design.WrappedPad.FoamLayer;
import padwright.design.WrappedPad.Neighbour;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.design.WrappedPad.WaddingLayer;
import padwright.measure.InputRefused;

/** The same pad with another size or another make-up. All mm. */
final class PadChange {
  private PadChange() {}

  /**
   * With the length, width and meaning of a wish. A trapezoid's back keeps its proportion to the
   * front.
   *
   * @throws InputRefused where the outline has no such size
   */
  static WrappedPad sized(WrappedPad pad, FitWish wish) {
    Base b = pad.base();
    SizeMeaning size = wish.size().orElse(b.size());
    boolean same = size == b.size();
    List<Neighbour> sides = same ? b.sides() : Collections.nCopies(4, usual(size));
    return with(
        pad,
        new Base(
            outline(pad, wish),
            size,
            sides,
            same ? b.clearance() : OptionalDouble.empty(),
            b.board(),
            b.thickness(),
            b.measured(),
            b.backArris(),
            b.holes()),
        pad.foam(),
        pad.wadding());
  }

  /** What stands beside a side where nothing is said, as in a job file. */
  private static Neighbour usual(SizeMeaning size) {
    return size == SizeMeaning.OPENING ? Neighbour.KEEP_CLEAR : Neighbour.FREE;
  }

  private static OutlineShape outline(WrappedPad pad, FitWish wish) {
    OutlineShape shape = pad.base().outline();
    OptionalDouble length = wish.length();
    OptionalDouble width = wish.width();
    if (length.isEmpty() && width.isEmpty()) {
      return shape;
    }
    if (shape instanceof Rectangle r) {
      return new Rectangle(length.orElse(r.length()), width.orElse(r.width()), r.radii());
    } else if (shape instanceof Trapezoid t) {
      double front = length.orElse(t.front());
      return new Trapezoid(front, t.back() * (front / t.front()), width.orElse(t.depth()));
    } else if (shape instanceof Ellipse e) {
      return new Ellipse(length.orElse(e.length()), width.orElse(e.width()));
    } else if (shape instanceof Circle c) {
      if (width.isPresent()) {
        throw refused(
            pad, "a width is given, but the part is round", "Give its diameter as the length");
      }
      return new Circle(length.orElse(c.diameter()));
    }
    throw refused(
        pad,
        "a length or width is given, but the outline is drawn by its points",
        "Change the points in the job file, or give the height alone");
  }

  /** With another thickness of its board; a caliper's number belongs to the board it is from. */
  static WrappedPad with(
      WrappedPad pad, double board, List<FoamLayer> foam, Optional<WaddingLayer> wadding) {
    Base b = pad.base();
    boolean same = board == b.thickness();
    return with(
        pad,
        new Base(
            b.outline(),
            b.size(),
            b.sides(),
            b.clearance(),
            b.board(),
            board,
            same ? b.measured() : OptionalDouble.empty(),
            b.backArris(),
            b.holes()),
        foam,
        wadding);
  }

  private static WrappedPad with(
      WrappedPad pad, Base base, List<FoamLayer> foam, Optional<WaddingLayer> wadding) {
    return new WrappedPad(
        pad.id(),
        pad.name(),
        pad.kind(),
        pad.quantity(),
        pad.mirrored(),
        pad.front(),
        base,
        foam,
        wadding,
        pad.edge(),
        pad.cover(),
        pad.corners(),
        pad.staples(),
        pad.host(),
        pad.dustCover(),
        pad.runs(),
        pad.fittings());
  }

  private static InputRefused refused(WrappedPad pad, String problem, String remedy) {
    return new InputRefused("", 0, "parts[" + pad.id() + "].base.outline", problem, remedy);
  }
}
