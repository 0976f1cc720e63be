package padwright.jobfile;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.Circle;
import padwright.design.OutlineShape.Ellipse;
import padwright.design.OutlineShape.Rectangle;
import padwright.design.OutlineShape.Trapezoid;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Base;
import padwright.design.WrappedPad.Cover;
import padwright.design.WrappedPad.FoamLayer;

/** Puts a maker's numbers into a ready-made part. All mm. */
final class StartSizes {
  private StartSizes() {}

  static WrappedPad applied(WrappedPad pad, StartNumbers n) {
    Base b = pad.base();
    Base base =
        new Base(
            outline(b.outline(), n.length(), n.width()),
            b.size(),
            b.sides(),
            b.clearance(),
            b.board(),
            n.board().orElse(b.thickness()),
            // A caliper's number belongs to the board it was taken from.
            n.board().isPresent() ? OptionalDouble.empty() : b.measured(),
            b.backArris(),
            b.holes());
    Cover c = pad.cover();
    Cover cover =
        new Cover(
            c.covering(),
            n.covering().isPresent() ? n.covering() : c.thickness(),
            c.turnUnder(),
            c.grip(),
            c.stretchAlong(),
            c.stretchAcross(),
            c.warpAlongWidth());
    return new WrappedPad(
        pad.id(),
        pad.name(),
        pad.kind(),
        pad.quantity(),
        pad.mirrored(),
        pad.front(),
        base,
        n.foam().isPresent() ? foam(pad.foam(), n.foam().getAsDouble()) : pad.foam(),
        pad.wadding(),
        pad.edge(),
        cover,
        pad.corners(),
        pad.staples(),
        pad.host(),
        pad.dustCover(),
        pad.runs(),
        pad.fittings(),
        pad.restated());
  }

  /** Length and width replaced; a trapezoid's back keeps its proportion to the front. */
  static OutlineShape outline(OutlineShape shape, OptionalDouble length, OptionalDouble width) {
    if (shape instanceof Rectangle r) {
      return new Rectangle(length.orElse(r.length()), width.orElse(r.width()), r.radii());
    } else if (shape instanceof Trapezoid t) {
      double front = length.orElse(t.front());
      double back = length.isPresent() ? Math.rint(front * t.back() / t.front()) : t.back();
      return new Trapezoid(front, back, width.orElse(t.depth()));
    } else if (shape instanceof Ellipse e) {
      return new Ellipse(length.orElse(e.length()), width.orElse(e.width()));
    }
    if (shape instanceof OutlineShape.FreePath) {
      // Drawn by its points: a length or a width alone would distort it.
      return shape;
    }
    return new Circle(length.orElse(((Circle) shape).diameter()));
  }

  /**
   * The layers with their thicknesses replaced, in proportion: every layer but the last to a whole
   * mm, as foam is cut, and the last takes what is left.
   */
  static List<FoamLayer> foam(List<FoamLayer> layers, double total) {
    double before = layers.stream().mapToDouble(FoamLayer::thickness).sum();
    List<FoamLayer> after = new ArrayList<>();
    double left = total;
    for (int i = 0; i < layers.size(); i++) {
      FoamLayer layer = layers.get(i);
      boolean last = i == layers.size() - 1;
      double thickness = last ? left : Math.rint(total * layer.thickness() / before);
      left -= thickness;
      after.add(new FoamLayer(layer.foam(), thickness, layer.overhang()));
    }
    return after;
  }
}
