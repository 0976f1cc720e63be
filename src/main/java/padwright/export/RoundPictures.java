package padwright.export;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import padwright.design.WrappedPad.Treatment;
import padwright.export.Drawing.LineStyle;
import padwright.export.SharpPictures.StapleBar;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;

/** The pictures in space of a rounded corner, or of part of a round rim, while it is folded. */
final class RoundPictures {
  /** The widest part of a round rim that a picture shows, radians. */
  static final double WIDEST = Math.toRadians(100);

  private static final int CHORDS = 48;
  private static final double COVERED = 0.9;
  private static final double FLAP = 0.75;
  private static final double OUTSIDE_VIEW = Math.toRadians(32);
  private static final double BACK_VIEW = Math.toRadians(52);

  private final CornerSolid c;
  private final double turn;
  private final int pleats;

  RoundPictures(CornerSolid corner) {
    this.c = corner;
    this.turn = Math.min(corner.plan().turn(), WIDEST);
    this.pleats = (int) Math.round(corner.plan().pleats() * turn / corner.plan().turn());
  }

  List<Scene> scenes(List<StapleBar> staples) {
    return List.of(loose(), worked(), finished(), back(staples));
  }

  /** A point at a fraction of the rounding, moved out from the base outline, at a depth. */
  private Vec3 rim(double fraction, double out, double depth) {
    double r = c.plan().radius();
    Vec2 centre = c.apex().along(c.towards(), -r);
    Vec2 way = c.towards().rotated((fraction - 0.5) * turn);
    Vec2 p = centre.along(way, r + out);
    return new Vec3(p.x(), p.y(), c.height() - depth);
  }

  private Vec3 straight(boolean first, double depth, double in) {
    Vec3 end = rim(first ? 0 : 1, 0, depth);
    Vec2 along = first ? c.alongFirst() : c.alongSecond();
    Vec2 out = first ? c.outFirst() : c.outSecond();
    Vec2 p =
        new Vec2(end.x(), end.y()).along(along, rimOnly() ? 0 : c.reach() * 0.6).along(out, -in);
    return new Vec3(p.x(), p.y(), end.z());
  }

  private boolean rimOnly() {
    return c.plan().turn() > Math.PI;
  }

  private List<Vec3> edge(double out, double depth) {
    List<Vec3> points = new ArrayList<>();
    points.add(straight(true, depth, -out));
    for (int i = 0; i <= CHORDS; i++) {
      points.add(rim((double) i / CHORDS, out, depth));
    }
    points.add(straight(false, depth, -out));
    return points;
  }

  private static List<Vec3> band(List<Vec3> a, List<Vec3> b) {
    List<Vec3> ring = new ArrayList<>(a);
    List<Vec3> other = new ArrayList<>(b);
    Collections.reverse(other);
    ring.addAll(other);
    return ring;
  }

  private Scene pad(double grey) {
    Scene s = new Scene(c.apex(), c.towards(), false, OUTSIDE_VIEW);
    List<Vec3> top = edge(0, 0);
    List<Vec3> bottom = edge(0, c.height());
    s.face(COVERED, top);
    s.face(grey, band(top, bottom));
    s.line(LineStyle.SOLID, top);
    s.line(LineStyle.SOLID, bottom);
    return s;
  }

  private int waves() {
    return c.plan().treatment() == Treatment.PLEATS ? Math.max(1, pleats) : 7;
  }

  /** The sides are down; at the rounding the fullness stands out in waves. */
  private Scene loose() {
    Scene s = pad(COVERED);
    double flare = Math.max(0.35 * c.height(), 6);
    List<Vec3> hem = new ArrayList<>();
    for (int i = 0; i <= 4 * CHORDS; i++) {
      double f = (double) i / (4 * CHORDS);
      double swell = Math.min(1, 6 * Math.min(f, 1 - f));
      double wave = 0.5 * (1 - Math.cos(2 * Math.PI * waves() * f));
      hem.add(rim(f, swell * flare * (0.4 + 0.6 * wave), c.height()));
    }
    List<Vec3> top = new ArrayList<>();
    for (int i = 0; i <= CHORDS; i++) {
      top.add(rim((double) i / CHORDS, 0, 0));
    }
    s.face(COVERED, band(top, hem));
    s.line(LineStyle.SOLID, top);
    s.line(LineStyle.SOLID, hem);
    for (int j = 0; j < waves(); j++) {
      double f = (j + 0.5) / waves();
      s.line(
          LineStyle.HATCH, List.of(rim(f, 0, c.height() * 0.15), rim(f, flare * 0.9, c.height())));
    }
    return s;
  }

  /** Half of the rounding is worked, from its middle outwards. */
  private Scene worked() {
    Scene s = pad(COVERED);
    marks(s, 0.25, 0.75);
    for (double f : new double[] {0.12, 0.88}) {
      s.sheet(
          FLAP,
          List.of(
              rim(f - 0.05, 0, c.height()),
              rim(f, 0, c.height() * 0.3),
              rim(f + 0.05, 0, c.height()),
              rim(f, 0.3 * c.height(), c.height())));
    }
    return s;
  }

  private Scene finished() {
    Scene s = pad(COVERED);
    marks(s, 0, 1);
    return s;
  }

  /** Pleats as lines down the wall; eased covering shows nothing there. */
  private void marks(Scene s, double from, double to) {
    if (c.plan().treatment() != Treatment.PLEATS) {
      return;
    }
    for (int j = 0; j < pleats; j++) {
      double f = (j + 0.5) / pleats;
      if (f >= from && f <= to) {
        s.line(LineStyle.SOLID, List.of(rim(f, 0, 0.1 * c.height()), rim(f, 0, c.height())));
      }
    }
  }

  private Scene back(List<StapleBar> staples) {
    Scene s = new Scene(c.apex(), c.towards(), true, BACK_VIEW);
    double w = Math.min(c.turnUnder(), c.plan().radius());
    List<Vec3> rim = edge(0, c.height());
    List<Vec3> inner = edge(-w, c.height());
    s.face(1, rim);
    s.face(COVERED, band(edge(0, 0), rim));
    s.face(COVERED, band(rim, inner));
    s.line(LineStyle.SOLID, edge(0, 0));
    s.line(LineStyle.SOLID, rim);
    s.line(LineStyle.SOLID, inner);
    int n = c.plan().treatment() == Treatment.EASED ? 0 : pleats;
    for (int j = 0; j < n; j++) {
      double f = (j + 0.5) / n;
      s.line(LineStyle.SOLID, List.of(rim(f, -0.15 * w, c.height()), rim(f, -w, c.height())));
      if (c.plan().treatment() == Treatment.PLEATS) {
        s.line(LineStyle.SOLID, List.of(rim(f, 0, 0.1 * c.height()), rim(f, 0, c.height())));
      }
    }
    for (StapleBar b : staples) {
      s.line(LineStyle.STAPLE_BODY, b.ends());
    }
    return s;
  }
}
