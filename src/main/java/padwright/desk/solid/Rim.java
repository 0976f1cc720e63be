package padwright.desk.solid;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;

/**
 * An outline as corners, and the rings about it: each edge moved out by what the section at its
 * ends says, neighbours brought together at the mitre. An edge that a move turns round drops out
 * and its neighbours meet, as the roundings of corners do further in; its corners then lie in one
 * place. Which point answers which stays the same in every ring.
 */
final class Rim {
  /** Lines nearer to parallel than this do not meet; they are joined halfway. */
  private static final double PARALLEL = 1e-6;

  /** The length of an edge that runs the other way by less than this is rounding, mm. */
  private static final double TINY = 1e-9;

  /** A raw end of a layer at a corner stands this far from the corner, mm: not to be seen. */
  private static final double BESIDE = 0.02;

  /** A ring that has nothing left is tried again so much further out, as a share. */
  private static final double LESS = 0.9;

  private final List<Vec2> corners = new ArrayList<>();
  private final List<Vec2> ways = new ArrayList<>();
  private final List<Integer> starts = new ArrayList<>();
  private final List<Integer> ends = new ArrayList<>();

  /**
   * A piece of the outline.
   *
   * @param start number of the band where it starts
   * @param end the same where it ends
   */
  record Piece(Segment segment, int start, int end) {}

  /** The rim of pieces that close anticlockwise. */
  Rim(List<Piece> pieces) {
    for (Piece piece : pieces) {
      Segment s = piece.segment();
      int chords = Band.chords(s);
      for (int k = 0; k < chords; k++) {
        Vec2 from = s.pointAt((double) k / chords);
        Vec2 to = s.pointAt((double) (k + 1) / chords);
        if (from.distance(to) > TINY) {
          corners.add(from);
          ways.add(to.minus(from).unit());
          starts.add(piece.start());
          ends.add(piece.end());
        }
      }
    }
  }

  /** The rim of an outline that has the same band all round. */
  static Rim plain(Path outline) {
    return new Rim(outline.segments().stream().map(s -> new Piece(s, 0, 0)).toList());
  }

  /** For each ring and each point of it, whether a line is drawn from it to the next. */
  boolean[][] arrises(Chains chains) {
    boolean[][] own = new boolean[chains.bands()][];
    for (int b = 0; b < own.length; b++) {
      own[b] = chains.arrises(b);
    }
    boolean[][] marked = new boolean[chains.size()][];
    for (int k = 0; k < marked.length; k++) {
      List<Boolean> ring = new ArrayList<>();
      for (int i = 0; i < corners.size(); i++) {
        for (int more = points(chains, i); more > 1; more--) {
          ring.add(false);
        }
        ring.add(own[starts.get(i)][k] && own[ends.get(i)][k]);
      }
      marked[k] = new boolean[ring.size()];
      for (int i = 0; i < marked[k].length; i++) {
        marked[k][i] = ring.get(i);
      }
    }
    return marked;
  }

  /** How many points a ring has at a corner: three where the bands beside it end apart. */
  private int points(Chains chains, int corner) {
    int before = ends.get((corner + corners.size() - 1) % corners.size());
    return chains.level(before, starts.get(corner)) ? 1 : 3;
  }

  /** A ring for every point of the chains; all have equally many points. */
  List<List<Vec3>> rings(Chains chains) {
    List<List<Vec3>> rings = new ArrayList<>();
    for (int k = 0; k < chains.size(); k++) {
      rings.add(ring(chains, k));
    }
    return rings;
  }

  private List<Vec3> ring(Chains chains, int k) {
    int n = corners.size();
    Vec2[] joints = joints(chains, k);
    List<Vec3> ring = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      int before = ends.get((i + n - 1) % n);
      int after = starts.get(i);
      double a = chains.at(before, k).y();
      double b = chains.at(after, k).y();
      Vec2 p = joints[i];
      if (points(chains, i) == 1) {
        ring.add(raised(p, a));
        continue;
      }
      // Where one of the two ends higher up, its raw end stands beside the upright of the corner,
      // and the other goes on by itself as far as it reaches.
      Vec2 upright = joints(chains, chains.lastLevel(before, after, k))[i];
      if (a > b) {
        ring.add(raised(upright.along(ways.get((i + n - 1) % n), -BESIDE), a));
        ring.add(raised(upright, b));
        ring.add(raised(p, b));
      } else {
        ring.add(raised(p, a));
        ring.add(raised(b > a ? upright : p, a));
        ring.add(raised(b > a ? upright.along(ways.get(i), BESIDE) : p, b));
      }
    }
    return ring;
  }

  private Vec2[] joints(Chains chains, int k) {
    Vec2[] joints = null;
    for (double share = 1; joints == null; share *= LESS) {
      joints = joints(chains, k, share < 0.01 ? 0 : share);
    }
    return joints;
  }

  private static Vec3 raised(Vec2 p, double z) {
    return new Vec3(p.x(), p.y(), z);
  }

  /** Where neighbouring edges meet; null where fewer than three are left. */
  private Vec2[] joints(Chains chains, int k, double share) {
    int n = corners.size();
    List<Integer> left = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      left.add(i);
    }
    while (left.size() >= 3) {
      int m = left.size();
      Vec2[] meet = new Vec2[m];
      for (int j = 0; j < m; j++) {
        meet[j] = joint(chains, k, share, left.get((j + m - 1) % m), left.get(j));
      }
      int worst = -1;
      double most = -TINY;
      for (int j = 0; j < m; j++) {
        double along = meet[(j + 1) % m].minus(meet[j]).dot(ways.get(left.get(j)));
        if (along < most) {
          most = along;
          worst = j;
        }
      }
      if (worst < 0) {
        return spread(left, meet);
      }
      left.remove(worst);
    }
    return share == 0 ? corners.toArray(Vec2[]::new) : null;
  }

  /** Gives each corner the joint of the edges that are left on either side of it. */
  private Vec2[] spread(List<Integer> left, Vec2[] meet) {
    int n = corners.size();
    int m = left.size();
    Vec2[] all = new Vec2[n];
    for (int j = 0; j < m; j++) {
      int edge = left.get(j);
      for (int i = edge; all[i] == null; i = (i + n - 1) % n) {
        all[i] = meet[j];
        if ((i + n - 1) % n == left.get((j + m - 1) % m)) {
          break;
        }
      }
    }
    return all;
  }

  private Vec2 joint(Chains chains, int k, double share, int before, int after) {
    int n = corners.size();
    Vec2 u = ways.get(before);
    Vec2 v = ways.get(after);
    Vec2 a = corners.get((before + 1) % n).along(u.right(), out(chains, k, ends, before) * share);
    Vec2 b = corners.get(after).along(v.right(), out(chains, k, starts, after) * share);
    double cross = u.cross(v);
    if (Math.abs(cross) < PARALLEL) {
      return a.midpoint(b);
    }
    return a.along(u, b.minus(a).cross(v) / cross);
  }

  private static double out(Chains chains, int k, List<Integer> bands, int edge) {
    return chains.at(bands.get(edge), k).x();
  }
}
