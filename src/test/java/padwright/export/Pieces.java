package padwright.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.design.Units;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternPiece.Kind;
import padwright.pattern.PatternPiece.LineKind;
import padwright.pattern.PatternPiece.LineMark;
import padwright.pattern.PatternPiece.PointKind;
import padwright.pattern.PatternPiece.PointMark;
import padwright.pattern.PatternPiece.SideUp;
import padwright.pattern.PatternPiece.StapleMark;

/** Pieces made by hand for the tests of drawings: sizes chosen here, no engine behind them. */
final class Pieces {
  static final PartHeader HEADER =
      new PartHeader(
          "Library reading nook", "Forearm rest", "desk-rest", 2, 0, "2026-03-14", Units.MM);

  private Pieces() {}

  static Path rectangle(double length, double width) {
    double x = length / 2;
    double y = width / 2;
    return Path.polygon(new Vec2(-x, -y), new Vec2(x, -y), new Vec2(x, y), new Vec2(-x, y));
  }

  /** A base with staples round it at a spacing, edge distance 8 (12 where wide), and two holes. */
  static PatternPiece base(double length, double width, double spacing) {
    double edge = Math.min(length, width) > 60 ? 12 : 8;
    List<StapleMark> staples = new ArrayList<>();
    for (int side = -1; side <= 1; side += 2) {
      for (double x = -length / 2 + 25; x <= length / 2 - 25 + 1e-9; x += spacing) {
        staples.add(
            new StapleMark(staples.size() + 1, new Vec2(x, side * (width / 2 - edge)), 0, 1));
      }
    }
    for (int side = -1; side <= 1; side += 2) {
      for (double y = -width / 2 + 20; y <= width / 2 - 20 + 1e-9; y += spacing) {
        staples.add(
            new StapleMark(
                staples.size() + 1, new Vec2(side * (length / 2 - edge), y), Math.PI / 2, 1));
      }
    }
    Path front = Path.line(new Vec2(-length / 2, -width / 2), new Vec2(length / 2, -width / 2));
    List<PointMark> points = new ArrayList<>(centres(length, width));
    if (length > 200) {
      points.add(new PointMark(PointKind.SCREW, new Vec2(-length / 4, 0), 4.2, "screw"));
      points.add(new PointMark(PointKind.SCREW, new Vec2(length / 4, 0), 4.2, "screw"));
    }
    return new PatternPiece(
        "base",
        Kind.BASE,
        "Base",
        2,
        0,
        "birch plywood",
        12,
        rectangle(length, width),
        List.of(),
        List.of(
            new LineMark(LineKind.STAPLE, rectangle(length - 2 * edge, width - 2 * edge)),
            new LineMark(LineKind.FRONT, front),
            new LineMark(
                LineKind.CENTRE, Path.line(new Vec2(-length / 2, 0), new Vec2(length / 2, 0))),
            new LineMark(
                LineKind.CENTRE, Path.line(new Vec2(0, -width / 2), new Vec2(0, width / 2)))),
        staples,
        points,
        Optional.of(new Vec2(1, 0)),
        false,
        SideUp.BACK,
        length,
        width);
  }

  private static List<PointMark> centres(double length, double width) {
    return List.of(
        new PointMark(PointKind.CENTRE_MARK, new Vec2(0, -width / 2), 0, ""),
        new PointMark(PointKind.CENTRE_MARK, new Vec2(length / 2, 0), 0, ""),
        new PointMark(PointKind.CENTRE_MARK, new Vec2(0, width / 2), 0, ""),
        new PointMark(PointKind.CENTRE_MARK, new Vec2(-length / 2, 0), 0, ""));
  }

  /**
   * A cover over a base: relief corners cut out, trim line inside the grip, folds at top and back.
   */
  static PatternPiece cover(double length, double width, double side, boolean nap) {
    double grip = 15;
    double stop = 12;
    List<LineMark> lines = new ArrayList<>();
    lines.add(new LineMark(LineKind.TRIM, plus(length, width, side, stop)));
    lines.add(new LineMark(LineKind.FOLD, rectangle(length, width)));
    lines.add(
        new LineMark(LineKind.FOLD, rectangle(length + 2 * side - 40, width + 2 * side - 40)));
    for (int sx = -1; sx <= 1; sx += 2) {
      for (int sy = -1; sy <= 1; sy += 2) {
        Vec2 corner = new Vec2(sx * length / 2, sy * width / 2);
        lines.add(
            new LineMark(
                LineKind.CREASE, Path.line(corner, corner.plus(new Vec2(sx * stop, sy * stop)))));
        Vec2 back = new Vec2(sx * (length / 2 + stop), sy * (width / 2 + side));
        lines.add(
            new LineMark(
                LineKind.RELIEF, Path.line(back, new Vec2(back.x(), sy * (width / 2 + 30)))));
      }
    }
    lines.add(
        new LineMark(
            LineKind.FRONT,
            Path.line(new Vec2(-length / 2, -width / 2), new Vec2(length / 2, -width / 2))));
    return new PatternPiece(
        "cover",
        Kind.COVER,
        "Cover",
        2,
        0,
        "knit-backed vinyl",
        1.0,
        plus(length, width, side + grip, stop),
        List.of(),
        lines,
        List.of(),
        centres(length + 2 * (side + grip), width + 2 * (side + grip)),
        Optional.of(new Vec2(0, 1)),
        nap,
        SideUp.BACK,
        length + 2 * (side + grip),
        width + 2 * (side + grip));
  }

  /** A rectangle with a strip of {@code side} on each side, the strips {@code stop} wider. */
  private static Path plus(double length, double width, double side, double stop) {
    double a = length / 2;
    double b = width / 2;
    double d = side;
    double m = stop;
    return Path.polygon(
        new Vec2(-a - m, -b - d),
        new Vec2(a + m, -b - d),
        new Vec2(a + m, -b - m),
        new Vec2(a + d, -b - m),
        new Vec2(a + d, b + m),
        new Vec2(a + m, b + m),
        new Vec2(a + m, b + d),
        new Vec2(-a - m, b + d),
        new Vec2(-a - m, b + m),
        new Vec2(-a - d, b + m),
        new Vec2(-a - d, -b - m),
        new Vec2(-a - m, -b - m));
  }

  /** A round base with staples on a circle and air holes. */
  static PatternPiece round(double diameter, int staples, boolean holes) {
    double r = diameter / 2;
    List<StapleMark> marks = new ArrayList<>();
    for (int i = 0; i < staples; i++) {
      double a = 2 * Math.PI * i / staples;
      marks.add(new StapleMark(i + 1, Vec2.polar(a).times(r - 12), a + Math.PI / 2, 2));
    }
    List<Path> inner =
        holes
            ? List.of(Path.circle(new Vec2(r / 2, 0), 12.5), Path.circle(new Vec2(-r / 2, 0), 12.5))
            : List.of();
    List<PointMark> points = new ArrayList<>();
    for (Path p : inner) {
      points.add(new PointMark(PointKind.HOLE, p.bounds().centre(), 25, "air hole"));
    }
    points.add(new PointMark(PointKind.CENTRE_MARK, new Vec2(0, -r), 0, ""));
    points.add(new PointMark(PointKind.CENTRE_MARK, new Vec2(r, 0), 0, ""));
    return new PatternPiece(
        "base",
        Kind.BASE,
        "Base",
        4,
        0,
        "birch plywood",
        12,
        Path.circle(Vec2.ZERO, r),
        inner,
        List.of(new LineMark(LineKind.STAPLE, Path.circle(Vec2.ZERO, r - 12))),
        marks,
        points,
        Optional.of(new Vec2(1, 0)),
        false,
        SideUp.BACK,
        diameter,
        diameter);
  }

  /** The same piece with other numbers to cut. */
  static PatternPiece hands(PatternPiece p, int drawn, int mirrored) {
    return new PatternPiece(
        p.id(),
        p.kind(),
        p.name(),
        drawn,
        mirrored,
        p.material(),
        p.thickness(),
        p.cutLine(),
        p.innerCuts(),
        p.lines(),
        p.staples(),
        p.points(),
        p.grain(),
        p.nap(),
        p.side(),
        p.length(),
        p.width());
  }
}
