package padwright.jobfile;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.Circle;
import padwright.design.OutlineShape.Ellipse;
import padwright.design.OutlineShape.Rectangle;
import padwright.design.OutlineShape.Trapezoid;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Base;
import padwright.design.WrappedPad.Cover;
import padwright.design.WrappedPad.FoamLayer;
import padwright.measure.LengthUnit;

/** Puts a maker's numbers into a ready-made part. All mm. */
final class StartSizes {
  /** Finest fraction on a maker's rule. */
  private static final int FINEST = 64;

  /** The fraction that foam is cut to. */
  private static final int FOAM = 16;

  private StartSizes() {}

  static WrappedPad applied(WrappedPad pad, StartNumbers n, Units units) {
    Base b = pad.base();
    Base base =
        new Base(
            outline(b.outline(), n.length(), n.width(), units),
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
        n.foam().isPresent() ? foam(pad.foam(), n.foam().getAsDouble(), units) : pad.foam(),
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

  /**
   * Length and width replaced; a trapezoid's back keeps its proportion to the front, to a whole
   * mark of the rule.
   */
  static OutlineShape outline(
      OutlineShape shape, OptionalDouble length, OptionalDouble width, Units units) {
    if (shape instanceof Rectangle r) {
      return new Rectangle(length.orElse(r.length()), width.orElse(r.width()), r.radii());
    } else if (shape instanceof Trapezoid t) {
      double front = length.orElse(t.front());
      double back =
          length.isPresent() ? mark(front * t.back() / t.front(), units).doubleValue() : t.back();
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
   * mm or sixteenth of an inch, as foam is cut, and the last takes what is left.
   */
  static List<FoamLayer> foam(List<FoamLayer> layers, double total, Units units) {
    if (layers.size() == 1) {
      return List.of(new FoamLayer(layers.get(0).foam(), total, layers.get(0).overhang()));
    }
    double before = layers.stream().mapToDouble(FoamLayer::thickness).sum();
    List<FoamLayer> after = new ArrayList<>();
    // Decimal, so that what is left has no tail of digits that nobody wrote.
    BigDecimal left = BigDecimal.valueOf(total);
    for (int i = 0; i < layers.size(); i++) {
      FoamLayer layer = layers.get(i);
      boolean last = i == layers.size() - 1;
      BigDecimal thickness = last ? rest(left) : mark(total * layer.thickness() / before, units);
      left = left.subtract(thickness);
      after.add(
          new FoamLayer(layer.foam(), thickness.doubleValue(), layer.overhang(), layer.crown()));
    }
    return after;
  }

  /** The nearest whole mm, or sixteenth of an inch in mm. */
  private static BigDecimal mark(double mm, Units units) {
    BigDecimal step = units == Units.MM ? BigDecimal.ONE : inch(FOAM);
    return BigDecimal.valueOf(Math.rint(mm / step.doubleValue())).multiply(step);
  }

  /** On a mark of an inch rule as it is, else to a hundredth of a mm: foam is no finer. */
  private static BigDecimal rest(BigDecimal mm) {
    boolean onMark = mm.remainder(inch(FINEST)).signum() == 0;
    return onMark ? mm : mm.setScale(2, RoundingMode.HALF_EVEN);
  }

  private static BigDecimal inch(int parts) {
    return LengthUnit.INCH.millimetres().divide(BigDecimal.valueOf(parts)); // exact: a power of two
  }
}
