package padwright.export;

import java.util.ArrayList;
import java.util.List;
import padwright.design.WrappedPad.Treatment;
import padwright.export.Drawing.LineStyle;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;

/** The pictures in space of a sharp corner while it is folded; the numbers are the plan's. */
final class SharpPictures {
  private static final double COVERED = 0.9;
  private static final double FLAP = 0.75;
  private static final double BARE = 1;
  private static final double OUTSIDE_VIEW = Math.toRadians(32);
  private static final double ASIDE = Math.toRadians(-28);

  /** How far apart the two folds of a double pleat are drawn at the foot, of the height. */
  private static final double MEETING = 0.035;

  private static final double BACK_VIEW = Math.toRadians(52);

  private final CornerSolid c;

  SharpPictures(CornerSolid corner) {
    this.c = corner;
  }

  List<Scene> scenes(List<StapleBar> staples) {
    return c.plan().treatment() == Treatment.DOUBLE_PLEAT
        ? List.of(ear(), opened(), finishedDouble(), back(staples))
        : List.of(underDown(), flapRound(), finishedSingle(), back(staples));
  }

  private Scene outside() {
    return new Scene(c.apex(), c.towards(), false, OUTSIDE_VIEW);
  }

  /** The top, covered, and both walls bare with the line between foam and board. */
  private Scene pad() {
    Scene s = outside();
    s.face(
        COVERED,
        List.of(c.wall(true, 0, 0), c.wall(true, c.reach(), 0), c.wall(false, c.reach(), 0)));
    for (boolean first : new boolean[] {true, false}) {
      wall(s, first, BARE);
      double board = c.height() - c.board();
      s.line(LineStyle.HATCH, List.of(c.wall(first, 0, board), c.wall(first, c.reach(), board)));
    }
    arris(s);
    return s;
  }

  private void wall(Scene s, boolean first, double grey) {
    double l = c.reach();
    double h = c.height();
    s.face(
        grey,
        List.of(
            c.wall(first, 0, 0), c.wall(first, l, 0), c.wall(first, l, h), c.wall(first, 0, h)));
    s.line(LineStyle.SOLID, List.of(c.wall(first, l, 0), c.wall(first, 0, 0)));
    s.line(LineStyle.SOLID, List.of(c.wall(first, l, h), c.wall(first, 0, h)));
  }

  private void arris(Scene s) {
    s.line(LineStyle.SOLID, List.of(c.wall(true, 0, 0), c.wall(true, 0, c.height())));
  }

  private void names(Scene s) {
    double u = c.reach() * 0.7;
    s.name(c.wall(true, u, c.height() / 2), c.first());
    s.name(c.wall(false, u, c.height() / 2), c.second());
  }

  /** How wide the flap is: to the relief cut, or all the surplus where there is none. */
  private double flap() {
    double most = c.height() * Math.tan(c.plan().turn() / 2);
    return c.plan().reliefStop() > 0 ? Math.min(c.plan().reliefStop(), most) : most;
  }

  /** Depth at which the crease reaches the flap's full width. */
  private double creaseEnd() {
    return flap() / Math.tan(c.plan().turn() / 2);
  }

  private boolean over() {
    return c.plan().over().isEmpty() || c.firstOver();
  }

  /** The under strip is down; its flap stands straight on past the arris. */
  private Scene underDown() {
    Scene s = pad();
    boolean over = over();
    double m = flap();
    double k = creaseEnd();
    double d = c.perSide();
    double l = c.reach();
    wall(s, !over, COVERED);
    Vec3 pouch = c.wall(!over, -m, k);
    s.sheet(
        FLAP,
        List.of(
            c.wall(!over, 0, 0),
            pouch,
            c.wall(!over, -m, c.height()),
            c.wall(!over, 0, c.height())));
    Vec3 run = c.standing(over, 0, d).minus(c.standing(over, 0, k));
    standingStrip(s, over, l, d);
    s.sheet(FLAP, List.of(c.wall(over, 0, 0), pouch, pouch.plus(run), c.standing(over, 0, d)));
    s.name(c.wall(!over, l * 0.7, c.height() / 2), c.under());
    s.name(c.standing(over, l * 0.7, d / 2), c.over());
    return s;
  }

  /** The flap lies round the arris on the other wall; the over strip's edge is folded under. */
  private Scene flapRound() {
    Scene s = pad();
    boolean over = over();
    double m = flap();
    double k = creaseEnd();
    double d = c.perSide();
    double l = c.reach();
    wall(s, !over, COVERED);
    s.sheet(
        FLAP,
        List.of(
            c.wall(over, 0, 0),
            c.wall(over, m, k),
            c.wall(over, m, c.height()),
            c.wall(over, 0, c.height())));
    standingStrip(s, over, l, d);
    s.line(
        LineStyle.CREASE,
        List.of(c.wall(over, 0, 0), c.standing(over, m, k), c.standing(over, m, d)));
    s.name(c.wall(!over, l * 0.7, c.height() / 2), c.under());
    s.name(c.standing(over, l * 0.75, d / 2), c.over());
    return s;
  }

  private Scene finishedSingle() {
    Scene s = covered();
    boolean over = over();
    double m = flap();
    s.line(
        LineStyle.CREASE,
        List.of(c.wall(over, 0, 0), c.wall(over, m, creaseEnd()), c.wall(over, m, c.height())));
    names(s);
    return s;
  }

  private Scene covered() {
    Scene s = outside();
    cover(s);
    return s;
  }

  private void cover(Scene s) {
    s.face(
        COVERED,
        List.of(c.wall(true, 0, 0), c.wall(true, c.reach(), 0), c.wall(false, c.reach(), 0)));
    wall(s, true, COVERED);
    wall(s, false, COVERED);
    arris(s);
  }

  /** Both strips are down; the surplus stands out at the arris, its tip cut square. */
  private Scene ear() {
    // From a little aside: straight on, the ear would be seen on edge.
    Scene s = new Scene(c.apex(), c.towards().rotated(ASIDE), false, OUTSIDE_VIEW);
    cover(s);
    double h = c.height();
    double half = c.plan().turn() / 2;
    Vec2 e = c.towards();
    s.sheet(
        FLAP,
        List.of(
            c.wall(true, 0, 0),
            c.wall(true, 0, h),
            out(e, h * Math.tan(half / 2), h),
            out(e, h * Math.sin(half), h * Math.cos(half))));
    names(s);
    return s;
  }

  private Vec3 out(Vec2 e, double x, double depth) {
    Vec2 p = c.apex().along(e, x);
    return new Vec3(p.x(), p.y(), c.height() - depth);
  }

  /** The diagonal lies down the arris, a half of the surplus creased on each wall. */
  private Scene opened() {
    Scene s = pad();
    double l = c.reach();
    double d = c.perSide();
    double h = c.height();
    double in = h * Math.tan(c.plan().turn() / 4);
    for (boolean first : new boolean[] {true, false}) {
      s.sheet(FLAP, List.of(c.wall(first, 0, 0), c.wall(first, in, h), c.wall(first, 0, h)));
    }
    for (boolean first : new boolean[] {true, false}) {
      standingStrip(s, first, l, d);
    }
    s.name(c.standing(true, l * 0.7, d / 2), c.first());
    s.name(c.standing(false, l * 0.7, d / 2), c.second());
    return s;
  }

  private Scene finishedDouble() {
    Scene s = covered();
    double h = c.height();
    double in = h * Math.tan(c.plan().turn() / 4);
    for (boolean first : new boolean[] {true, false}) {
      s.line(LineStyle.CREASE, List.of(c.wall(first, 0, 0), c.wall(first, in, h)));
      s.line(LineStyle.SOLID, List.of(c.wall(first, 0, 0), c.wall(first, MEETING * h, h)));
    }
    names(s);
    return s;
  }

  /** Turned over: the back with both turn-unders, the over strip's on top, and the staples. */
  private Scene back(List<StapleBar> staples) {
    Scene s = new Scene(c.apex(), c.towards(), true, BACK_VIEW);
    boolean over = over();
    double l = c.reach();
    double w = c.turnUnder();
    s.sheet(BARE, List.of(c.back(true, 0, 0), c.back(true, l, 0), c.back(false, l, 0)));
    wall(s, true, COVERED);
    wall(s, false, COVERED);
    arris(s);
    for (boolean first : new boolean[] {!over, over}) {
      s.face(
          COVERED,
          List.of(
              c.back(first, 0, 0), c.back(first, l, 0), c.back(first, l, w), c.back(first, 0, w)));
      s.line(
          LineStyle.SOLID,
          List.of(
              c.back(first, l, 0), c.back(first, 0, 0), c.back(first, 0, w), c.back(first, l, w)));
    }
    s.line(LineStyle.CREASE, List.of(c.back(!over, 0, w), c.back(!over, w, w)));
    for (StapleBar b : staples) {
      s.line(LineStyle.STAPLE_BODY, b.ends());
    }
    s.name(c.wall(true, l * 0.75, c.height() / 2), c.first());
    s.name(c.wall(false, l * 0.75, c.height() / 2), c.second());
    return s;
  }

  /** A staple near the corner. */
  record StapleBar(Vec2 at, double angle) {
    List<Vec3> ends() {
      Vec2 u = Vec2.polar(angle).times(PieceMarks.STAPLE / 2);
      Vec2 a = at.minus(u);
      Vec2 b = at.plus(u);
      return new ArrayList<>(List.of(new Vec3(a.x(), a.y(), 0), new Vec3(b.x(), b.y(), 0)));
    }
  }

  /** A strip not yet pulled down: it stands out from the top edge of its wall. */
  private void standingStrip(Scene s, boolean first, double l, double d) {
    s.face(
        COVERED,
        List.of(
            c.wall(first, 0, 0),
            c.wall(first, l, 0),
            c.standing(first, l, d),
            c.standing(first, 0, d)));
    s.line(
        LineStyle.SOLID,
        List.of(
            c.wall(first, l, 0),
            c.wall(first, 0, 0),
            c.standing(first, 0, d),
            c.standing(first, l, d)));
  }
}
