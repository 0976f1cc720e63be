package padwright.export;

import java.util.ArrayList;
import java.util.List;
import padwright.design.Units;
import padwright.measure.LengthText;
import padwright.measure.LengthUnit;
import padwright.measure.Rounding;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternPiece.Kind;

/** The words of a piece's label, most needed first. */
final class PieceNotes {
  /** Covering and board thicknesses are told apart to a hundredth of a mm. */
  private static final int THICKNESS_DIGITS = 2;

  private static final int THICKNESS_PARTS = 32;

  private final PartHeader header;
  private final PatternPiece piece;

  PieceNotes(PartHeader header, PatternPiece piece) {
    this.header = header;
    this.piece = piece;
  }

  /**
   * The notes under the piece's name.
   *
   * @param hand whose sheet this is; null where both hands are cut alike
   */
  List<String> lines(Hand hand) {
    List<String> lines = new ArrayList<>();
    lines.add(header.partName());
    lines.add(count(hand));
    boolean known = piece.thickness() > 0;
    lines.add(known ? piece.material() + ", " + thickness() : piece.material());
    lines.add("cut size " + size());
    lines.add(sideUp());
    boolean board = piece.kind() == Kind.BASE || piece.kind() == Kind.PACKING;
    if (board && piece.grain().isEmpty()) {
      lines.add("grain does not matter: any way round");
    }
    String job = header.jobTitle();
    lines.add(job.isEmpty() ? header.date() : job + ", " + header.date());
    lines.removeIf(String::isBlank);
    return lines;
  }

  /** How many to cut from this sheet, and of which hand. */
  private String count(Hand hand) {
    int drawn = piece.quantity();
    int mirrored = piece.mirrored();
    if (mirrored == 0) {
      return "cut " + drawn;
    }
    if (hand == null) {
      return "cut "
          + (drawn + mirrored)
          + ": "
          + drawn
          + " as drawn + "
          + mirrored
          + " mirrored, both alike";
    }
    return hand == Hand.AS_DRAWN
        ? "hand: as drawn. Cut " + drawn + "; " + mirrored + " mirrored on their own sheet"
        : "hand: mirrored. Cut " + mirrored + "; " + drawn + " as drawn on their own sheet";
  }

  private String sideUp() {
    return switch (piece.side()) {
      case BACK ->
          switch (piece.kind()) {
            case COVER, GUSSET -> "this side up, on the back of the covering";
            case DUST_COVER -> "this side up, on the back of the cloth";
            case BASE, PACKING -> "seen from the back";
            case FOAM, WADDING -> "this side up, on the back";
          };
      case FACE -> "seen from the face";
      case EITHER -> "either side up";
    };
  }

  /** A base must go into its place, a cover must reach: neither is rounded the wrong way. */
  private String size() {
    Rounding way =
        switch (piece.kind()) {
          case BASE, PACKING -> Rounding.DOWN;
          case COVER, DUST_COVER, GUSSET -> Rounding.UP;
          case FOAM, WADDING -> Rounding.NEAREST;
        };
    LengthUnit unit = header.units() == Units.MM ? LengthUnit.MM : LengthUnit.INCH;
    String length = LengthText.in(unit, piece.length(), way);
    String bare = length.substring(0, length.length() - unit.mark().length() - 1);
    return bare + " x " + LengthText.in(unit, piece.width(), way);
  }

  private String thickness() {
    return thickness(piece.thickness(), header.units());
  }

  static String thickness(double mm, Units units) {
    if (units == Units.INCH) {
      return LengthText.inches(mm, THICKNESS_PARTS, Rounding.NEAREST) + " (" + plain(mm) + ")";
    }
    return plain(mm);
  }

  /** Without noughts that say nothing: 12 mm, 1.2 mm. */
  static String plain(double mm) {
    return plainNumber(mm) + " mm";
  }

  static String plainNumber(double value) {
    String s = LengthText.mmNumber(value, THICKNESS_DIGITS, Rounding.NEAREST);
    int end = s.length();
    while (s.charAt(end - 1) == '0') {
      end--;
    }
    return s.substring(0, s.charAt(end - 1) == '.' ? end - 1 : end);
  }

  /** What the grain arrow is called. */
  static String grainWord(Kind kind) {
    return switch (kind) {
      case COVER, DUST_COVER, WADDING, GUSSET -> "warp";
      case BASE, FOAM, PACKING -> "grain";
    };
  }

  /** Which hand a sheet is for. */
  enum Hand {
    AS_DRAWN,
    MIRRORED
  }
}
