package padwright.desk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import padwright.design.EdgeShape;
import padwright.design.WrappedPad;
import padwright.desk.view.SectionForm.Handle;
import padwright.geometry.Vec2;
import padwright.shape.Section.LayerKind;

/** What is taken hold of in a section to change a size, and which way the size grows. */
final class SectionHandles {
  private static final Vec2 UP = new Vec2(0, -1);
  private static final Vec2 OUT = new Vec2(1, 0);
  private static final Vec2 IN = new Vec2(-1, 0);

  /** How far inside the drawn section the handles of thickness stand, points. */
  private static final double INSIDE = 34;

  private SectionHandles() {}

  /**
   * @param left where the drawn section ends on the inside
   */
  static List<Handle> of(
      SectionBody body,
      WrappedPad pad,
      SectionCut cut,
      BiFunction<Double, Double, Vec2> at,
      double left,
      double scale) {
    List<Handle> handles = new ArrayList<>();
    for (SectionBody.Piece p : body.pieces()) {
      Vec2 top = new Vec2(left + INSIDE, at.apply(0.0, p.top()).y());
      handles.add(new Handle(p.member() + ".thickness", p.member(), top, UP, scale));
      if (p.kind() == LayerKind.FOAM) {
        Vec2 edge = at.apply(p.overhang(), p.outermost().y());
        String place = cut.place(pad, p.member() + ".overhang");
        handles.add(new Handle(place, p.member(), edge, OUT, scale));
      }
    }
    double z = -body.coverThickness() / 2;
    handles.add(
        new Handle(
            cut.place(pad, "cover.turnUnder"), "cover", at.apply(-body.turnUnder(), z), IN, scale));
    if (body.leg() > 0) {
      double x = -body.edgeDistance();
      handles.add(new Handle("staples.leg", "staples", at.apply(x, body.penetration()), UP, scale));
      Vec2 foot = at.apply(x, body.penetration() - body.leg());
      handles.add(new Handle("staples.edgeDistance", "staples", foot, IN, scale));
    }
    String shape =
        body.edge() instanceof EdgeShape.Round
            ? "edge.round"
            : body.edge() instanceof EdgeShape.Bevel ? "edge.bevel" : "";
    if (!shape.isEmpty()) {
      Vec2 in = body.corner().plus(new Vec2(-body.edgeSize(), 0));
      handles.add(new Handle(cut.place(pad, shape), "edge", at.apply(in.x(), in.y()), IN, scale));
    }
    if (body.backArris() > 0) {
      handles.add(
          new Handle("base.backArris", "base", at.apply(-body.backArris(), 0.0), IN, scale));
    }
    return handles;
  }
}
