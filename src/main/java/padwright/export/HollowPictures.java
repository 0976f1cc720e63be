package padwright.export;

import java.util.List;
import padwright.cover.CornerPlan;
import padwright.cover.Gusset;
import padwright.design.Units;
import padwright.export.Drawing.LineStyle;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;
import padwright.pattern.PartResult;

/** How a hollow corner is made: slit, the gusset sewn in, its crease on the arris. */
final class HollowPictures {
  private static final double VIEW = Math.toRadians(40);
  private static final double TOP = 0.97;
  private static final double WALL = 0.9;
  private static final double LET_IN = 0.75;

  /** Where a side's name stands on its wall, parts of what is drawn: clear of seam and edges. */
  private static final double NAME_OUT = 0.66;

  private static final double NAME_UP = 0.64;

  /** Half the room between two halves of a gusset, mm. */
  private static final double APART = 4;

  private final CornerSolid c;
  private final Gusset gusset;
  private final PartResult result;

  private HollowPictures(PartResult result, CornerPlan plan, Gusset gusset) {
    this.c = CornerSolid.of(result, plan);
    this.gusset = gusset;
    this.result = result;
  }

  /** Null where the board has a curve there, whose gusset is that of the corner it stands for. */
  static HollowPictures of(PartResult result, CornerPlan plan) {
    boolean corner =
        result.shape().outline().segments().stream()
            .anyMatch(s -> s.end().distance(plan.apex()) < 0.01);
    Gusset gusset =
        result.cover().gussets().stream()
            .filter(g -> g.corner().equals(plan.name()))
            .findFirst()
            .orElse(null);
    return corner && gusset != null ? new HollowPictures(result, plan, gusset) : null;
  }

  List<Scene> scenes() {
    return List.of(slit(), piece(), sewn());
  }

  List<String> sentences(Units units) {
    double opens = c.plan().opening();
    String open =
        " It opens to "
            + (units == Units.MM
                ? PieceNotes.plain(Math.round(opens))
                : PieceNotes.thickness(opens, units))
            + " at the back.";
    String sew = " Lay its edges on the slit's, outside to outside; sew from the tip out.";
    return List.of(
        "The cover, flat, seen from its face: slit it from the cut line to the tip of the seam lines,"
            + " no further.",
        gusset.halved()
            ? "The gusset's halves, their tips up: sew them together from the tip down to the end of"
                + " their middle seam."
                + open
                + sew
            : "The gusset, its tip up." + open + sew,
        gusset.halved()
            ? "On the pad: the tip at the top of the corner, the middle seam on the arris. Turn the"
                + " halves under apart."
            : "On the pad: the tip at the top of the corner, the crease on the arris. Snip the gusset"
                + " up its middle and turn its halves under apart.");
  }

  private Scene slit() {
    double edge = c.perSide() + result.spec().grip();
    FlatCorner flat = new FlatCorner(c, edge);
    Scene s = flat.scene(result.cover(), result.shape().outline());
    flat.lines(s, LineStyle.RELIEF, gusset.slit());
    for (Path seam : gusset.seamsOnCover()) {
      flat.lines(s, LineStyle.SEAM, seam);
    }
    return s;
  }

  /** The gusset by itself, as its pattern shows it. */
  private Scene piece() {
    Scene s = Scene.flat(Vec2.ZERO, new Vec2(0, -1));
    for (Gusset.Piece piece : gusset.pieces()) {
      double aside = gusset.halved() ? aside(piece) : 0;
      s.sheet(LET_IN, placed(piece.cut(), aside));
      s.line(LineStyle.SEAM, placed(piece.seam(), aside));
      s.line(gusset.halved() ? LineStyle.SEAM : LineStyle.FOLD, placed(piece.arris(), aside));
      piece.opening().ifPresent(p -> s.line(LineStyle.RELIEF, placed(p, aside)));
    }
    return s;
  }

  /** How far a half is drawn from the middle, so that the two do not lie over one another. */
  private double aside(Gusset.Piece piece) {
    boolean left = piece == gusset.pieces().get(0);
    double over =
        piece.cut().flattened(0.5).stream().mapToDouble(p -> left ? p.x() : -p.x()).max().orElse(0);
    return (left ? -1 : 1) * (over + APART);
  }

  private static List<Vec3> placed(Path path, double aside) {
    return path.flattened(0.5).stream().map(p -> new Vec3(p.x() + aside, p.y(), 0)).toList();
  }

  /** From outside and above: both walls with what was let in between them. */
  private Scene sewn() {
    Scene s = new Scene(c.apex(), c.towards(), false, VIEW);
    double h = c.height();
    double reach = c.reach();
    Vec2 corner = c.apex();
    Vec2 first = corner.along(c.alongFirst(), reach);
    Vec2 second = corner.along(c.alongSecond(), reach);
    Vec2 inFirst = first.along(c.outFirst(), -0.6 * reach);
    Vec2 inSecond = second.along(c.outSecond(), -0.6 * reach);
    Vec2 inside = corner.along(c.towards(), -0.9 * reach);
    s.sheet(
        TOP,
        List.of(
            at(first, h),
            at(corner, h),
            at(second, h),
            at(inSecond, h),
            at(inside, h),
            at(inFirst, h)));
    s.sheet(WALL, List.of(at(first, h), at(corner, h), at(corner, 0), at(first, 0)));
    s.sheet(WALL, List.of(at(second, h), at(corner, h), at(corner, 0), at(second, 0)));
    double wide =
        Math.min(0.8 * reach, gusset.half().stream().mapToDouble(Vec2::x).max().orElse(0));
    for (boolean one : new boolean[] {true, false}) {
      Vec2 foot = corner.along(one ? c.alongFirst() : c.alongSecond(), wide);
      s.face(LET_IN, List.of(at(corner, h), at(corner, 0), at(foot, 0)));
      s.line(LineStyle.SEAM, List.of(at(corner, h), at(foot, 0)));
    }
    s.line(LineStyle.FOLD, List.of(at(corner, h), at(corner, 0)));
    s.name(at(corner.along(c.alongFirst(), NAME_OUT * reach), NAME_UP * h), c.first());
    s.name(at(corner.along(c.alongSecond(), NAME_OUT * reach), NAME_UP * h), c.second());
    return s;
  }

  private static Vec3 at(Vec2 p, double z) {
    return new Vec3(p.x(), p.y(), z);
  }
}
