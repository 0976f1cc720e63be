package padwright.desk.view;

import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternPiece.SideUp;

/** Where a place of a piece lies in its drawing: a piece marked on its back is drawn mirrored. */
public final class PiecePlace {
  private PiecePlace() {}

  public static Vec2 drawn(PatternPiece piece, Vec2 place) {
    return piece.side() == SideUp.BACK ? new Vec2(-place.x(), place.y()) : place;
  }

  public static Path drawn(PatternPiece piece, Path path) {
    return piece.side() == SideUp.BACK ? path.mirrored() : path;
  }
}
