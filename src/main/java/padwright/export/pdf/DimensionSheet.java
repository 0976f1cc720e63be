package padwright.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import padwright.design.OutlineShape;
import padwright.design.Units;
import padwright.geometry.Affine;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;
import padwright.pattern.Figures;
import padwright.pattern.PartResult;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternPiece.Kind;

/**
 * For rectangular parts: every piece drawn small with its sizes, and the different corners of cover
 * and base at full size, so that a plain rectangle need not be taped together. One sheet where it
 * fits, more where the corners are large.
 */
public final class DimensionSheet {
  private static final double GAP = 5;
  private static final double TITLE = 19;
  private static final double TALLEST_VIEW = 38;

  /** A cover this much longer than wide is drawn over the whole sheet. */
  private static final double WIDE = 2;

  /** How far a corner template reaches over the face, inside the base's edge, mm. */
  private static final double ON_THE_FACE = 12;

  /** How much of the base's corner is shown, mm. */
  private static final double BASE_CORNER = 70;

  /** Panels this much nearer than they should be are not; arithmetic only, mm. */
  private static final double TOUCH = 1e-6;

  private final PartResult part;
  private final Units units;

  /**
   * @param units what is printed first
   */
  public DimensionSheet(PartResult part, Units units) {
    this.part = part;
    this.units = units;
  }

  /** Whether a part is one that this sheet serves. */
  public static boolean serves(PartResult part) {
    return part.asked().base().outline() instanceof OutlineShape.Rectangle;
  }

  /** How generously views are drawn; the first that needs the fewest pages is taken. */
  private enum Style {
    ROOMY(2, 40),
    CLOSE(3, 32);

    private final int columns;
    private final double tallestCover;

    Style(int columns, double tallestCover) {
      this.columns = columns;
      this.tallestCover = tallestCover;
    }
  }

  /** Where a panel goes. */
  private record Placed(Panel panel, int page, Vec2 at) {
    Bounds box() {
      return new Bounds(at.x(), at.y(), at.x() + panel.width(), at.y() + panel.height());
    }
  }

  /** Adds it to a document on sheets of the given kind, read upright. */
  void addTo(PdfBook book, Sheet sheet) throws IOException {
    Bounds w = sheet.window();
    List<String> missing = new ArrayList<>();
    List<Placed> placed = List.of();
    for (Style style : Style.values()) {
      missing.clear();
      List<Placed> tried = place(panels(book.face(), w, style, missing), legend(book.face()), w);
      if (placed.isEmpty() || pages(tried) < pages(placed)) {
        placed = tried;
      }
    }
    draw(book, sheet, placed, missing);
  }

  private static int pages(List<Placed> placed) {
    return placed.get(placed.size() - 1).page + 1;
  }

  private static void draw(PdfBook book, Sheet sheet, List<Placed> placed, List<String> missing)
      throws IOException {
    Bounds w = sheet.window();
    int pages = pages(placed);
    int enough = book.pages() + pages;
    for (int i = 0; i < pages; i++) {
      int page = i;
      book.page(
          sheet,
          p -> {
            Furniture.draw(
                p, sheet, book.header(), "", book.header().part() + ": sizes and corners", 0);
            String of = pages > 1 ? " " + (page + 1) + " of " + pages : "";
            p.text(0, w.maxY() - 6, 7, true, p.face().fitted(book.header().part(), 7, w.width()));
            String says =
                "Sizes and corners"
                    + of
                    + ". Small views are not to scale: go by the numbers. Where straight sides are drawn"
                    + " by measure, pages 1 to "
                    + enough
                    + " of this file are enough: the tiles after them need not be printed. "
                    + String.join(" ", missing);
            double y = w.maxY() - 7;
            for (String line : Wrap.lines(p.face(), says, 3.2, w.width())) {
              y -= 4.4;
              p.text(0, y, 3.2, false, line);
            }
            for (Placed x : placed) {
              if (x.page == page) {
                x.panel.draw(p.within(Affine.moved(x.at.x(), x.at.y())));
              }
            }
          });
    }
  }

  private List<Panel> panels(Typeface face, Bounds w, Style style, List<String> missing) {
    List<Panel> list = new ArrayList<>();
    double narrow = (w.width() - (style.columns - 1) * GAP) / style.columns;
    double half = (w.width() - GAP) / 2;
    for (PatternPiece piece : part.pieces()) {
      if (piece.kind() != Kind.COVER) {
        list.add(new DimensionedView(face, piece, units, narrow, TALLEST_VIEW));
      }
    }
    for (PatternPiece piece : part.pieces()) {
      if (piece.kind() == Kind.COVER) {
        boolean wide = piece.length() > WIDE * piece.width();
        list.add(
            new DimensionedView(face, piece, units, wide ? w.width() : half, style.tallestCover));
      }
    }
    for (Kind kind : new Kind[] {Kind.COVER, Kind.BASE}) {
      for (PatternPiece piece : part.pieces()) {
        if (piece.kind() == kind) {
          list.addAll(corners(face, piece, w, missing));
        }
      }
    }
    return list;
  }

  private List<CornerTemplate> corners(
      Typeface face, PatternPiece piece, Bounds w, List<String> missing) {
    PieceLines lines = PieceLines.of(piece);
    boolean base = piece.kind() == Kind.BASE;
    Figures.Box b = part.figures().base();
    double x = base ? BASE_CORNER : (piece.length() - b.length()) / 2 + ON_THE_FACE;
    double y = base ? BASE_CORNER : (piece.width() - b.width()) / 2 + ON_THE_FACE;
    List<CornerTemplate> list = CornerTemplate.of(face, lines, x, y, base);
    boolean fits =
        list.stream().allMatch(t -> t.width() <= w.width() && t.height() <= w.height() - TITLE);
    if (!fits) {
      missing.add(
          "The corners of the " + piece.name() + " are larger than this sheet: see its tiles.");
      return List.of();
    }
    return list;
  }

  private LineLegend legend(Typeface face) {
    return new LineLegend(
        face,
        part.pieces().stream()
            .filter(p -> p.kind() == Kind.COVER || p.kind() == Kind.BASE)
            .map(PieceLines::of)
            .toList());
  }

  /** The panels in rows, and the legend where they leave room for it: at the end last of all. */
  private static List<Placed> place(List<Panel> panels, LineLegend legend, Bounds w) {
    List<Placed> placed = new ArrayList<>(place(panels, w));
    for (int page = pages(placed) - 1; page >= 0; page--) {
      Optional<Vec2> free = free(placed, legend, page, w);
      if (free.isPresent()) {
        placed.add(0, new Placed(legend, page, free.get()));
        return placed;
      }
    }
    List<Panel> all = new ArrayList<>(panels);
    all.add(legend);
    return place(all, w);
  }

  /** A place under or right of another panel, from the top down, that keeps off all of them. */
  private static Optional<Vec2> free(List<Placed> placed, Panel p, int page, Bounds w) {
    List<Bounds> taken =
        placed.stream().filter(x -> x.page == page).map(x -> x.box().grown(GAP - TOUCH)).toList();
    List<Double> lefts = new ArrayList<>(List.of(w.minX()));
    List<Double> tops = new ArrayList<>(List.of(w.maxY() - TITLE));
    taken.forEach(t -> lefts.add(t.maxX() + TOUCH));
    placed.stream().filter(x -> x.page == page).forEach(x -> lefts.add(x.at.x()));
    taken.forEach(t -> tops.add(t.minY() - TOUCH));
    tops.sort(Comparator.reverseOrder());
    lefts.sort(Comparator.naturalOrder());
    for (double top : tops) {
      for (double left : lefts) {
        Bounds b = new Bounds(left, top - p.height(), left + p.width(), top);
        boolean inside = b.minY() >= w.minY() && b.maxX() <= w.maxX();
        if (inside && taken.stream().noneMatch(b::overlaps)) {
          return Optional.of(new Vec2(b.minX(), b.minY()));
        }
      }
    }
    return Optional.empty();
  }

  /** Row by row, as many panels side by side as there is room for. */
  private static List<Placed> place(List<Panel> panels, Bounds w) {
    List<Placed> placed = new ArrayList<>();
    int page = 0;
    double top = w.maxY() - TITLE;
    double x = w.minX();
    double row = 0;
    for (Panel p : panels) {
      if (x > w.minX() && x + p.width() > w.maxX() + 1e-6) {
        top -= row + GAP;
        x = w.minX();
        row = 0;
      }
      if (top - p.height() < w.minY() && top < w.maxY() - TITLE) {
        page++;
        top = w.maxY() - TITLE;
        x = w.minX();
        row = 0;
      }
      placed.add(new Placed(p, page, new Vec2(x, top - p.height())));
      x += p.width() + GAP;
      row = Math.max(row, p.height());
    }
    return placed;
  }
}
