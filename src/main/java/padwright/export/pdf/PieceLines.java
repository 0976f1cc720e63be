package padwright.export.pdf;

import java.util.ArrayList;
import java.util.List;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternPiece.LineKind;
import padwright.pattern.PatternPiece.SideUp;

/**
 * A piece's lines without any words, the way they are printed: mirrored where the piece is marked
 * on its back.
 *
 * @param staples their places and numbers, mirrored likewise
 * @param bounds of the cut line
 */
record PieceLines(
    PatternPiece piece,
    boolean mirrored,
    List<Stroke> strokes,
    List<Numbered> staples,
    Bounds bounds) {
  /** A staple's number and the middle of its crown. */
  record Numbered(int number, Vec2 at, double angle) {}

  /** Drawn length of a crown, mm: as on the pattern, so that close staples stay apart. */
  private static final double CROWN = 6;

  static PieceLines of(PatternPiece piece) {
    boolean m = piece.side() == SideUp.BACK;
    List<Stroke> strokes = new ArrayList<>();
    strokes.add(new Stroke(flip(piece.cutLine(), m), LineStyle.CUT));
    piece.innerCuts().forEach(c -> strokes.add(new Stroke(flip(c, m), LineStyle.INNER_CUT)));
    piece.lines().forEach(l -> strokes.add(new Stroke(flip(l.path(), m), style(l.kind()))));
    List<Numbered> staples = new ArrayList<>();
    for (PatternPiece.StapleMark s : piece.staples()) {
      Vec2 at = m ? new Vec2(-s.at().x(), s.at().y()) : s.at();
      double angle = m ? Math.PI - s.angle() : s.angle();
      Vec2 half = Vec2.polar(angle).times(CROWN / 2);
      strokes.add(new Stroke(Path.line(at.minus(half), at.plus(half)), LineStyle.STAPLE_BODY));
      staples.add(new Numbered(s.number(), at, angle));
    }
    for (PatternPiece.PointMark pm : piece.points()) {
      if (pm.diameter() > 0) {
        strokes.add(new Stroke(flip(Path.circle(pm.at(), pm.diameter() / 2), m), LineStyle.MARK));
      }
    }
    return new PieceLines(piece, m, strokes, staples, strokes.get(0).path().bounds());
  }

  private static Path flip(Path p, boolean mirrored) {
    return mirrored ? p.mirrored() : p;
  }

  private static LineStyle style(LineKind kind) {
    return switch (kind) {
      case TRIM -> LineStyle.TRIM;
      case FOLD -> LineStyle.FOLD;
      case SEAM -> LineStyle.SEAM;
      case CREASE -> LineStyle.CREASE;
      case STAPLE -> LineStyle.STAPLE;
      case RELIEF -> LineStyle.RELIEF;
      case SLIT -> LineStyle.SLIT;
      case ZONE -> LineStyle.ZONE;
      case CENTRE -> LineStyle.CENTRE;
      case BASE_OUTLINE -> LineStyle.OUTLINE;
      case FRONT -> LineStyle.FRONT;
    };
  }
}
