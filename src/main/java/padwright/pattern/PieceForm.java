package padwright.pattern;

import java.util.List;
import java.util.Optional;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece.Kind;
import padwright.pattern.PatternPiece.LineMark;
import padwright.pattern.PatternPiece.PointMark;
import padwright.pattern.PatternPiece.SideUp;
import padwright.pattern.PatternPiece.StapleMark;

/** Makes the pieces of one part: all are cut as often, and in the same hands. */
record PieceForm(int quantity, int mirrored) {
  /** A piece with centre marks and lines, and nothing else that has a way to lie. */
  PatternPiece plain(
      String id,
      Kind kind,
      String name,
      String material,
      double thickness,
      Path cut,
      List<LineMark> lines,
      SideUp side) {
    return piece(
        id,
        kind,
        name,
        material,
        thickness,
        cut,
        List.of(),
        lines,
        List.of(),
        PieceEdges.centreMarks(cut),
        Optional.empty(),
        false,
        side);
  }

  PatternPiece piece(
      String id,
      Kind kind,
      String name,
      String material,
      double thickness,
      Path cut,
      List<Path> inner,
      List<LineMark> lines,
      List<StapleMark> staples,
      List<PointMark> points,
      Optional<Vec2> grain,
      boolean nap,
      SideUp side) {
    Bounds b = cut.bounds();
    return new PatternPiece(
        id,
        kind,
        name,
        quantity,
        mirrored,
        material,
        thickness,
        cut,
        inner,
        lines,
        staples,
        points,
        grain,
        nap,
        side,
        b.width(),
        b.height());
  }
}
