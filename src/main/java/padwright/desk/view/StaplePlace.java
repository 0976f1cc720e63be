package padwright.desk.view;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalInt;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternPiece.StapleMark;

/** Staples as they are drawn on a piece: which one lies at a place, and where one lies. */
public final class StaplePlace {
  private StaplePlace() {}

  /**
   * The number of the staple drawn nearest to a place of the drawing, counted from 1; empty where
   * none is within reach.
   *
   * @param reach mm of the drawing
   */
  public static OptionalInt at(PatternPiece piece, Vec2 place, double reach) {
    return piece.staples().stream()
        .filter(s -> PiecePlace.drawn(piece, s.at()).distance(place) <= reach)
        .min(Comparator.comparingDouble(s -> PiecePlace.drawn(piece, s.at()).distance(place)))
        .map(s -> OptionalInt.of(s.number()))
        .orElse(OptionalInt.empty());
  }

  /** Where a staple lies in the drawing; empty where the piece does not show it. */
  public static Optional<Vec2> of(PatternPiece piece, int number) {
    return piece.staples().stream()
        .filter(s -> s.number() == number)
        .map(StapleMark::at)
        .map(p -> PiecePlace.drawn(piece, p))
        .findFirst();
  }
}
