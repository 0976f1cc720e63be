package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import padwright.geometry.Vec2;

/**
 * The outline that the covering goes round, as straight and round pieces, for the second wrap. The
 * solid at any level is this outline moved out by JTS; each place on it belongs to the piece that
 * it lies in front of.
 */
final class SampledOutline {
  /** Arcs become chords that leave them by this, mm. */
  private static final double CHORD = 0.004;

  /** A place as far out as its level within this lies in front of a piece, mm. */
  private static final double IN_FRONT = 0.03;

  private static final GeometryFactory JTS = new GeometryFactory();

  final List<Piece> pieces = new ArrayList<>();
  final Polygon polygon;

  /**
   * A piece of the outline.
   *
   * @param site the rounding it belongs to, -1 where straight
   * @param centre of an arc, null where straight
   * @param turn of an arc, negative where hollow
   */
  record Piece(
      String name,
      Vec2 from,
      Vec2 to,
      Vec2 centre,
      double radius,
      double turn,
      Fold fold,
      int site) {
    boolean straight() {
      return centre == null;
    }

    Vec2 along() {
      return to.minus(from).times(1 / to.distance(from));
    }

    double length() {
      return straight() ? from.distance(to) : radius * Math.abs(turn);
    }

    Vec2 atStart() {
      return straight() ? along() : tangent(from);
    }

    Vec2 atEnd() {
      return straight() ? along() : tangent(to);
    }

    private Vec2 tangent(Vec2 p) {
      Vec2 spoke = p.minus(centre).times(1 / radius);
      return turn > 0 ? spoke.left() : spoke.right();
    }

    /** Where the flat cover lies that comes to a place along the piece at a path length. */
    Vec2 flat(double t, double s) {
      if (straight()) {
        Vec2 u = along();
        return new Vec2(from.x() + u.x() * t + u.y() * s, from.y() + u.y() * t - u.x() * s);
      }
      Vec2 spoke = from.minus(centre).rotated(t / radius * Math.signum(turn));
      return centre.along(spoke, (radius + Math.signum(turn) * s) / radius);
    }

    /** How far along and how far out a place lies, seen from the piece. */
    double[] seen(Vec2 p) {
      if (straight()) {
        Vec2 v = p.minus(from);
        return new double[] {v.dot(along()), -along().cross(v)};
      }
      Vec2 a = from.minus(centre);
      Vec2 b = p.minus(centre);
      double middle = turn / 2;
      double off = Math.IEEEremainder(Math.atan2(a.cross(b), a.dot(b)) - middle, 2 * Math.PI);
      double into = (middle + off) * Math.signum(turn);
      return new double[] {into * radius, (b.length() - radius) * Math.signum(turn)};
    }

    /** Distance of a place in plan. */
    double distance(Vec2 p) {
      double[] at = seen(p);
      boolean beside = at[0] >= 0 && at[0] <= length();
      return beside ? Math.abs(at[1]) : Math.min(p.distance(from), p.distance(to));
    }
  }

  /** A place on the solid: in front of which piece, how far along it, how much length it is for. */
  record Place(int piece, double along, double length) {}

  SampledOutline(Skeleton folds) {
    List<Coordinate> ring = new ArrayList<>();
    for (Skeleton.Element e : folds.elements()) {
      Piece piece;
      if (e instanceof Skeleton.Sweep w) {
        Vec2 spoke = new Vec2(Math.cos(w.fromAngle()), Math.sin(w.fromAngle()));
        double turn = w.toAngle() - w.fromAngle();
        double away = turn > 0 ? w.radius() : -w.radius();
        Vec2 from = w.centre().along(spoke, away);
        Vec2 to = w.centre().along(spoke.rotated(turn), away);
        piece = new Piece(e.name(), from, to, w.centre(), w.radius(), turn, e.after(), w.site());
      } else {
        Skeleton.Side side = (Skeleton.Side) e;
        piece = new Piece(e.name(), side.from(), side.to(), null, 0, 0, e.after(), -1);
      }
      pieces.add(piece);
      double step = piece.straight() ? 1 : Math.sqrt(8 * CHORD * piece.radius) / piece.length();
      int parts = Math.max(1, (int) Math.ceil(1 / step));
      for (int k = 0; k < parts; k++) {
        Vec2 p = piece.flat(piece.length() * k / parts, 0);
        ring.add(new Coordinate(p.x(), p.y()));
      }
    }
    ring.add(ring.get(0));
    polygon = JTS.createPolygon(ring.toArray(Coordinate[]::new));
  }

  static Polygon polygon(List<Vec2> points) {
    Coordinate[] ring = new Coordinate[points.size() + 1];
    for (int i = 0; i < points.size(); i++) {
      ring[i] = new Coordinate(points.get(i).x(), points.get(i).y());
    }
    ring[points.size()] = ring[0];
    return JTS.createPolygon(ring);
  }

  /** The outline moved out, or in where negative, its corners mitred. */
  Geometry moved(double out) {
    if (out == 0) {
      return polygon;
    }
    BufferParameters mitred =
        new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 30);
    mitred.setSimplifyFactor(0);
    return BufferOp.bufferOp(polygon, out, mitred);
  }

  /** Places round the solid where it stands so far out. */
  List<Place> round(double out, double step) {
    List<Place> places = new ArrayList<>();
    Geometry contour = moved(out);
    for (int g = 0; g < contour.getNumGeometries(); g++) {
      if (contour.getGeometryN(g) instanceof Polygon part) {
        Coordinate[] c = part.getExteriorRing().getCoordinates();
        for (int i = 0; i + 1 < c.length; i++) {
          double length = c[i].distance(c[i + 1]);
          int n = Math.max(1, (int) Math.ceil(length / step));
          for (int k = 0; k < n; k++) {
            double f = (k + 0.5) / n;
            Vec2 p =
                new Vec2(c[i].x + (c[i + 1].x - c[i].x) * f, c[i].y + (c[i + 1].y - c[i].y) * f);
            Place at = inFrontOf(p, out, length / n);
            if (at != null) {
              places.add(at);
            }
          }
        }
      }
    }
    return places;
  }

  private Place inFrontOf(Vec2 p, double out, double length) {
    Place best = null;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < pieces.size(); i++) {
      double[] seen = pieces.get(i).seen(p);
      double past = Math.max(0, Math.max(-seen[0], seen[0] - pieces.get(i).length()));
      if (Math.abs(seen[1] - out) < IN_FRONT && past < least) {
        least = past;
        best = new Place(i, seen[0], length);
      }
    }
    return best;
  }

  Piece next(int i) {
    return pieces.get((i + 1) % pieces.size());
  }

  int before(int i) {
    return Math.floorMod(i - 1, pieces.size());
  }
}
