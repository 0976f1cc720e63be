package padwright.dome;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import padwright.geometry.Offset;
import padwright.geometry.OffsetCurve;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.geometry.mesh.MeshRefused;
import padwright.shape.Outlines;
import padwright.shape.PadShape;
import padwright.shape.TautPath;

/**
 * The face of a pad in space: every point of the outline is moved along its normal by x(s) at the
 * height z(s) of the taut path of its side; level in the middle. Corners are mitred, as the solid's
 * are; where two sides have sections of their own, both run on to the arris that they make in
 * space. mm.
 */
final class DomedTop {
  /** Slack in a place on a row, mm; arithmetic only. */
  static final double SAME = 1e-6;

  /** An offset outline keeps its distance within this, mm: its pieces are joined within 1e-5. */
  static final double JOINED = 1e-4;

  private final FaceSides sides;
  private final Path outline;
  private final FaceProfile[] profiles;
  private final boolean alike;

  /** A side along which the section changes; blank where there is none. */
  private final String passage;

  private final List<Level> levels;

  /** So far out of every side the face comes down to one height. */
  record Level(double height, double[] outs) {}

  private DomedTop(Path outline, FaceProfile[] profiles, String passage) {
    this.outline = outline;
    this.passage = passage;
    this.profiles = profiles;
    alike = Arrays.stream(profiles).allMatch(p -> p == profiles[0]);
    sides = new FaceSides(outline, alike);
    levels = alike ? even() : uneven();
  }

  /** A top with the same section all round. */
  static DomedTop of(Path outline, TautPath taut) {
    FaceProfile[] profiles = new FaceProfile[outline.segments().size()];
    Arrays.fill(profiles, FaceProfile.of(taut));
    return new DomedTop(outline, profiles, "");
  }

  static DomedTop of(PadShape shape) {
    if (shape.sections().special().isEmpty()) {
      return of(shape.outline(), shape.section().taut());
    }
    int n = shape.outline().segments().size();
    FaceProfile[] profiles = new FaceProfile[n];
    List<Double> heights = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      TautPath taut = shape.sections().path(shape.sideNames().get(i));
      profiles[i] = FaceProfile.of(taut).levelWith(heights);
      profiles[i].rows().forEach(row -> heights.add(row.height()));
      for (int k = 0; k < i; k++) {
        if (profiles[k].equals(profiles[i])) {
          profiles[i] = profiles[k];
        }
      }
    }
    String passage =
        shape.sideNames().stream()
            .filter(shape.sections().passages()::containsKey)
            .findFirst()
            .orElse("");
    return new DomedTop(shape.outline(), profiles, passage);
  }

  private List<Level> even() {
    List<Level> even = new ArrayList<>();
    for (FaceProfile.Row row : profiles[0].rows()) {
      double[] outs = new double[profiles.length];
      Arrays.fill(outs, row.out());
      even.add(new Level(row.height(), outs));
    }
    return even;
  }

  private List<Level> uneven() {
    List<Double> heights = new ArrayList<>();
    for (FaceProfile profile : profiles) {
      profile.rows().forEach(row -> heights.add(row.height()));
    }
    heights.sort(Comparator.reverseOrder());
    List<Level> uneven = new ArrayList<>();
    double last = Double.POSITIVE_INFINITY;
    for (double height : heights) {
      if (last - height <= FaceProfile.LEVEL) {
        continue;
      }
      last = height;
      double[] outs = Arrays.stream(profiles).mapToDouble(p -> p.out(height)).toArray();
      uneven.add(new Level(height, outs));
    }
    return uneven;
  }

  Path outline() {
    return outline;
  }

  FaceSides sides() {
    return sides;
  }

  /** The section of a side. */
  FaceProfile profile(int side) {
    return profiles[side];
  }

  /** Whether all sides have one section. */
  boolean alike() {
    return alike;
  }

  /** The rows where the slope changes, of the first side. */
  List<FaceProfile.Row> rows() {
    return profiles[0].rows();
  }

  /** Heights at which a slope changes, from the level middle to the edge of the face. */
  List<Level> levels() {
    return levels;
  }

  /**
   * Surplus on the face for each radian that the outline turns, s - x(s), where it has most: at a
   * corner between two sections that of the one with less. With a passage it is the most of any
   * side: a passage twists where the outline does not turn.
   */
  double surplus() {
    if (!passage.isEmpty()) {
      return Arrays.stream(profiles).mapToDouble(FaceProfile::surplus).max().orElseThrow();
    }
    double most = alike ? profiles[0].surplus() : 0;
    for (int i = 0; i < profiles.length && !alike; i++) {
      double least = Math.min(profiles[i].surplus(), profiles[sides.next(i)].surplus());
      boolean turns = Math.abs(sides.turnAfter(i)) > Outlines.CORNER;
      double own = sides.segment(i).isArc() ? profiles[i].surplus() : 0;
      most = Math.max(most, Math.max(own, turns ? least : 0));
    }
    return most;
  }

  /**
   * The edge of the face in plan.
   *
   * @throws MeshRefused where nothing is left of it, it comes in several loops, or those of sides
   *     that differ do not meet
   */
  Path edge() {
    Level lowest = levels.get(levels.size() - 1);
    return alike
        ? at(lowest).orElseThrow(() -> parted(0))
        : FaceRow.of(sides, lowest.outs()).orElseThrow(DomedTop::unjoined);
  }

  /**
   * The line of the face at a height; empty where nothing is left of a convex one.
   *
   * @throws MeshRefused where nothing is left of another, or it comes in several loops
   */
  Optional<Path> at(Level level) {
    double[] outs = level.outs();
    Optional<Path> joined = alike ? Optional.empty() : FaceRow.of(sides, outs);
    if (joined.isPresent()) {
      return joined;
    }
    if (sides.convex()) {
      return Offset.by(outline, outs);
    }
    double[] outwards = Arrays.stream(outs).map(d -> Math.max(0, d)).toArray();
    double[] inwards = Arrays.stream(outs).map(d -> Math.min(0, d)).toArray();
    if (Arrays.stream(inwards).allMatch(d -> d == 0)) {
      return Optional.of(one(outline, outwards));
    }
    if (Arrays.stream(outwards).allMatch(d -> d == 0)) {
      return Optional.of(one(outline, inwards));
    }
    Path larger = one(outline, outwards);
    double[] left = new double[larger.segments().size()];
    for (int i = 0; i < left.length; i++) {
      int side = sides.from(larger.segments().get(i), outwards, JOINED);
      left[i] = side < 0 ? 0 : inwards[side];
    }
    return Optional.of(one(larger, left));
  }

  private Path one(Path outline, double[] distances) {
    List<Path> loops = OffsetCurve.loops(outline, distances);
    if (loops.isEmpty() && !alike) {
      throw unjoined();
    }
    if (loops.size() != 1) {
      throw parted(loops.size());
    }
    return loops.get(0);
  }

  private static MeshRefused unjoined() {
    return new MeshRefused(
        "the faces of sides that differ do not join into one", "let their edges differ less");
  }

  private static MeshRefused parted(int pieces) {
    return pieces == 0
        ? new MeshRefused("nothing is left of the face inside its edge", "make the part wider")
        : new MeshRefused(
            "at a narrow place the dome comes apart into " + pieces, "make the part wider there");
  }

  /**
   * By how much a place is further out than a level anywhere; negative further in. Of a convex
   * outline every side counts, of any other the one whose place it is, and those beyond its corners
   * that have another section.
   */
  double excess(Vec2 p, double[] outs) {
    if (sides.convex()) {
      double most = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < outs.length; i++) {
        most = Math.max(most, sides.out(i, p) - outs[i]);
      }
      return most;
    }
    int owner = sides.owner(p);
    double most = sides.own(owner, p) - outs[owner];
    int before = sides.previous(owner);
    int after = sides.next(owner);
    if (crossesOver(before, owner)) {
      most = Math.max(most, sides.own(before, p) - outs[before]);
    }
    if (crossesOver(owner, after)) {
      most = Math.max(most, sides.own(after, p) - outs[after]);
    }
    return most;
  }

  /** Whether the arris between a side and the next may leave their bisector. */
  private boolean crossesOver(int side, int next) {
    return profiles[side] != profiles[next] && sides.turnAfter(side) > 0;
  }

  double height(double x, double y) {
    Vec2 p = new Vec2(x, y);
    if (sides.convex() && alike) {
      return profiles[0].height(sides.most(p));
    }
    double least = Double.POSITIVE_INFINITY;
    if (sides.convex()) {
      for (int i = 0; i < profiles.length; i++) {
        least = Math.min(least, profiles[i].height(sides.out(i, p)));
      }
      return least;
    }
    int owner = sides.owner(p);
    least = profiles[owner].height(sides.own(owner, p));
    int before = sides.previous(owner);
    int after = sides.next(owner);
    if (crossesOver(before, owner)) {
      least = Math.min(least, profiles[before].height(sides.own(before, p)));
    }
    if (crossesOver(owner, after)) {
      least = Math.min(least, profiles[after].height(sides.own(after, p)));
    }
    return least;
  }

  /**
   * Sides of unlike sections can be worked out where they meet at corners.
   *
   * @throws MeshRefused where one section passes into another, or changes elsewhere
   */
  void check() {
    if (!passage.isEmpty()) {
      throw new MeshRefused(
          "along " + passage + " the edge passes into another, and a dome there is not worked out",
          "give all sides one edge, or let the run end at a corner that points outwards");
    }
    for (int i = 0; i < profiles.length; i++) {
      if (profiles[i] != profiles[sides.next(i)] && sides.turnAfter(i) <= Outlines.CORNER) {
        Segment side = sides.segment(i);
        throw new MeshRefused(
            String.format(
                java.util.Locale.ROOT,
                "the edge changes at (%.0f, %.0f), which is no corner that points outwards",
                side.end().x(),
                side.end().y()),
            "let the run end at such a corner");
      }
    }
  }
}
