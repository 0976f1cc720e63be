package padwright.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternPiece.Kind;
import padwright.pattern.PatternPiece.LineKind;
import padwright.pattern.PatternPiece.LineMark;
import padwright.pattern.PatternPiece.SideUp;
import padwright.pattern.PatternPiece.StapleMark;

/** The pieces of the forearm rest, written out by hand. */
final class SamplePieces {
  private SamplePieces() {}

  static List<PatternPiece> pieces() {
    List<PatternPiece> list = new ArrayList<>();
    List<StapleMark> staples = new ArrayList<>();
    for (int i = 0; i < 23; i++) {
      staples.add(new StapleMark(2 * i + 1, new Vec2(-275 + i * 25, -22), 0, 1));
      staples.add(new StapleMark(2 * i + 2, new Vec2(-275 + i * 25, 22), 0, 1));
    }
    list.add(
        piece(
            "base",
            Kind.BASE,
            "Base",
            "Birch plywood",
            12,
            600.3,
            60.3,
            List.of(),
            staples,
            SideUp.BACK));
    list.add(
        piece(
            "foam-1",
            Kind.FOAM,
            "Foam 1",
            "Firm seat foam",
            12,
            600,
            60,
            List.of(),
            List.of(),
            SideUp.EITHER));
    list.add(
        piece(
            "foam-2",
            Kind.FOAM,
            "Foam 2",
            "Firm seat foam",
            12,
            606,
            66,
            List.of(),
            List.of(),
            SideUp.EITHER));
    list.add(
        new PatternPiece(
            "cover",
            Kind.COVER,
            "Cover",
            2,
            0,
            "Knit-backed vinyl",
            1,
            cut(745.1416, 205.1416, 38),
            List.of(),
            coverLines(),
            List.of(),
            List.of(),
            Optional.of(new Vec2(1, 0)),
            false,
            SideUp.BACK,
            745.1416,
            205.1416));
    list.add(
        piece(
            "dust",
            Kind.DUST_COVER,
            "Dust cover",
            "Black cloth",
            0.3,
            612,
            72,
            List.of(),
            List.of(),
            SideUp.EITHER));
    return list;
  }

  private static List<LineMark> coverLines() {
    List<LineMark> lines = new ArrayList<>();
    lines.add(new LineMark(LineKind.TRIM, cut(715.1416, 175.1416, 33)));
    lines.add(new LineMark(LineKind.FOLD, Samples.rectangle(675, 135)));
    lines.add(new LineMark(LineKind.FOLD, Samples.rectangle(600, 60)));
    for (int sx : new int[] {-1, 1}) {
      for (int sy : new int[] {-1, 1}) {
        Vec2 corner = new Vec2(sx * 300, sy * 30);
        lines.add(
            new LineMark(
                LineKind.CREASE, Path.line(corner, corner.plus(new Vec2(sx * 37, sy * 37)))));
        Vec2 in = corner.plus(new Vec2(sx * 10, sy * 47));
        lines.add(
            new LineMark(LineKind.RELIEF, Path.line(in, corner.plus(new Vec2(sx * 10, sy * 72)))));
      }
    }
    return lines;
  }

  private static Path cut(double w, double h, double c) {
    double x = w / 2;
    double y = h / 2;
    return Path.polygon(
        new Vec2(-x + c, -y),
        new Vec2(x - c, -y),
        new Vec2(x, -y + c),
        new Vec2(x, y - c),
        new Vec2(x - c, y),
        new Vec2(-x + c, y),
        new Vec2(-x, y - c),
        new Vec2(-x, -y + c));
  }

  private static PatternPiece piece(
      String id,
      Kind kind,
      String name,
      String material,
      double thickness,
      double w,
      double h,
      List<LineMark> lines,
      List<StapleMark> staples,
      SideUp side) {
    return new PatternPiece(
        id,
        kind,
        name,
        2,
        0,
        material,
        thickness,
        Samples.rectangle(w, h),
        List.of(),
        lines,
        staples,
        List.of(),
        Optional.empty(),
        false,
        side,
        w,
        h);
  }
}
