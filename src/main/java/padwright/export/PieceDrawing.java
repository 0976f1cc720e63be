package padwright.export;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padwright.export.Drawing.LineStyle;
import padwright.export.NoteBlock.Sampled;
import padwright.export.PieceNotes.Hand;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternPiece.LineKind;
import padwright.pattern.PatternPiece.LineMark;
import padwright.pattern.PatternPiece.SideUp;

/**
 * The full-size drawing of one piece: every line of it in the style of its kind, the marks, and
 * labels that stay on the piece and off its lines, or stand beside it on a leader where the piece
 * is too small. A piece marked on its back is drawn mirrored left to right; words never are. mm.
 */
public final class PieceDrawing {
  private static final Map<LineKind, LineStyle> STYLES = new EnumMap<>(LineKind.class);
  private static final Map<LineKind, String> MEANINGS = new EnumMap<>(LineKind.class);

  static {
    kind(LineKind.FOLD, LineStyle.FOLD, "fold: the covering turns an edge of the pad, or a pleat");
    kind(LineKind.CREASE, LineStyle.CREASE, "crease of a corner's pleat");
    kind(LineKind.SEAM, LineStyle.SEAM, "seam line: sewn here to the gusset");
    kind(LineKind.RELIEF, LineStyle.RELIEF, "relief cut: no further than drawn");
    kind(LineKind.SLIT, LineStyle.SLIT, "slit: cut last, when stapled all round");
    kind(LineKind.TRIM, LineStyle.TRIM, "trim line: cut off after stapling");
    kind(LineKind.STAPLE, LineStyle.STAPLE, "staple line");
    kind(LineKind.BASE_OUTLINE, LineStyle.OUTLINE, "edge of the base");
    kind(LineKind.ZONE, LineStyle.ZONE, "zone for hook-and-loop or tape");
    kind(LineKind.CENTRE, LineStyle.CENTRE, "middle");
    kind(LineKind.FRONT, LineStyle.FRONT, "");
  }

  private static final int MOST_COLUMNS = 6;

  private PieceDrawing() {}

  private static void kind(LineKind kind, LineStyle style, String meaning) {
    STYLES.put(kind, style);
    MEANINGS.put(kind, meaning);
  }

  /** The piece as drawn; it serves both hands where they are alike. */
  public static Drawing of(PartHeader header, PatternPiece piece) {
    boolean alike = piece.mirrored() == 0 || MirrorImage.isOwn(piece);
    return compose(header, piece, alike ? null : Hand.AS_DRAWN, true, List.of());
  }

  /** The mirrored hand, where any are wanted and the piece is not its own mirror image. */
  public static Optional<Drawing> mirroredHand(PartHeader header, PatternPiece piece) {
    if (piece.mirrored() == 0 || MirrorImage.isOwn(piece)) {
      return Optional.empty();
    }
    return Optional.of(compose(header, piece, Hand.MIRRORED, true, List.of()));
  }

  /** Every hand the piece needs, without check lines: for pages that carry their own. */
  public static List<PageDrawing> forPages(PartHeader header, PatternPiece piece) {
    if (piece.mirrored() == 0 || MirrorImage.isOwn(piece)) {
      return List.of(joins -> compose(header, piece, null, false, joins));
    }
    PageDrawing mirrored = joins -> compose(header, piece, Hand.MIRRORED, false, joins);
    return piece.quantity() == 0
        ? List.of(mirrored)
        : List.of(joins -> compose(header, piece, Hand.AS_DRAWN, false, joins), mirrored);
  }

  private static Drawing compose(
      PartHeader header, PatternPiece piece, Hand hand, boolean checked, List<Path> joins) {
    boolean turned = (piece.side() == SideUp.BACK) != (hand == Hand.MIRRORED);
    PatternPiece shown = turned ? MirrorImage.of(piece) : piece;
    Sheet sheet = new Sheet(shown.cutLine(), shown.innerCuts());
    sheet.line(shown.cutLine(), LineStyle.CUT);
    shown.innerCuts().forEach(p -> sheet.line(p, LineStyle.INNER_CUT));
    for (LineMark l : shown.lines()) {
      if (l.kind() == LineKind.CENTRE) {
        sheet.middle(l.path());
      } else {
        sheet.line(l.path(), STYLES.get(l.kind()));
        sheet.room().add(l.path());
      }
    }
    PieceMarks marks = new PieceMarks(sheet, shown, header.units());
    marks.bodies();
    joins.forEach(sheet::keepOff);
    marks.words();
    label(sheet, new PieceNotes(header, shown).lines(hand), shown);
    grain(sheet, shown);
    if (checked) {
      checkLines(sheet);
    }
    legend(sheet, shown);
    String title = header.partName() + ": " + piece.name();
    String handed =
        hand == null ? "" : hand == Hand.MIRRORED ? ", mirrored hand" : ", hand as drawn";
    String seen = turned ? " Drawn mirrored left to right." : "";
    return sheet.finished(title + handed, "Full-size pattern, 1:1, in mm." + seen);
  }

  /** The name and notes: in as few columns as fit, upright or along the piece; else beside it. */
  private static void label(Sheet sheet, List<String> notes, PatternPiece piece) {
    Bounds b = sheet.room().bounds();
    Vec2 wish = b.centre();
    double[] angles = b.height() > b.width() ? new double[] {0, Math.PI / 2} : new double[] {0};
    int before = 0;
    for (int columns = 1; columns <= MOST_COLUMNS; columns++) {
      int rows = (notes.size() + columns - 1) / columns;
      if (rows == before) {
        continue;
      }
      before = rows;
      NoteBlock block = NoteBlock.of(piece.name(), notes, columns);
      for (double angle : angles) {
        if (sheet.put(block, angle, wish)) {
          return;
        }
      }
    }
    NoteBlock name = NoteBlock.of(piece.name(), List.of(), 1);
    for (double angle : angles) {
      if (sheet.put(name, angle, wish)) {
        sheet.beside(NoteBlock.of("", notes, 1), 0, true);
        return;
      }
    }
    sheet.beside(NoteBlock.of(piece.name(), notes, 1), 0, true);
  }

  private static void grain(Sheet sheet, PatternPiece piece) {
    if (piece.grain().isEmpty()) {
      return;
    }
    double way = piece.grain().get().angle();
    double angle = PieceMarks.upright(way);
    boolean headAtStart = Math.cos(way - angle) < 0;
    String word = PieceNotes.grainWord(piece.kind()) + (piece.nap() ? ", nap this way" : "");
    for (double length : GrainArrow.LENGTHS) {
      GrainArrow arrow = new GrainArrow(length, word, piece.nap(), headAtStart);
      if (sheet.put(arrow, angle, sheet.room().bounds().centre())) {
        return;
      }
    }
    sheet.beside(
        new GrainArrow(GrainArrow.LENGTHS[2], word, piece.nap(), headAtStart), angle, false);
  }

  private static void checkLines(Sheet sheet) {
    Bounds b = sheet.room().bounds();
    Vec2 wish = new Vec2(b.centre().x() - b.width() / 4, b.centre().y() - b.height() / 4);
    for (double angle : new double[] {0, Math.PI / 2}) {
      if (!sheet.put(new CheckLine(), angle, wish)) {
        sheet.beside(new CheckLine(), angle, false);
      }
    }
  }

  /** A cover's corners look unfinished to a maker used to cutting them at the bench. */
  private static String cutLine(PatternPiece piece) {
    return piece.kind() == PatternPiece.Kind.COVER
        ? "cut line: all of it is cut before folding"
        : "cut line";
  }

  /** What the lines mean, for the kinds this piece has. */
  private static void legend(Sheet sheet, PatternPiece piece) {
    List<Sampled> entries = new ArrayList<>();
    MEANINGS.forEach(
        (kind, meaning) -> {
          if (!meaning.isEmpty() && piece.lines().stream().anyMatch(l -> l.kind() == kind)) {
            boolean numbered = kind == LineKind.STAPLE && !piece.staples().isEmpty();
            String order = numbered ? "; drive in the order of the numbers" : "";
            entries.add(new Sampled(STYLES.get(kind), meaning + order));
          }
        });
    if (entries.isEmpty()) {
      return;
    }
    entries.add(0, new Sampled(LineStyle.CUT, cutLine(piece)));
    Bounds b = sheet.room().bounds();
    Vec2 wish = new Vec2(b.centre().x() + b.width() / 4, b.centre().y());
    for (int columns = 1; columns <= 3; columns++) {
      NoteBlock block = NoteBlock.set("", entries, columns);
      if (sheet.put(block, 0, wish)) {
        return;
      }
    }
    sheet.beside(NoteBlock.set("", entries, 1), 0, false);
  }
}
