package padwright.export.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import padwright.export.Drawing;
import padwright.export.PageDrawing;
import padwright.geometry.Path;
import padwright.material.Paper;

/**
 * Full-size patterns on the paper that is there. A piece that fits on a sheet gets one page; a
 * larger one an index page and as few tiles as will do, which overlap by 10 mm. Every page carries
 * two 100 mm check lines and the piece's name. A roll is as long as the piece, and is cut into
 * pages where it passes what a PDF page may be. Page sizes are exact, and the file asks the printer
 * for actual size.
 */
public final class TiledPdf {
  private TiledPdf() {}

  /**
   * Writes all pieces into one document.
   *
   * @throws padwright.measure.InputRefused where the paper is too small to hold the check lines
   */
  public static void write(
      List<Drawing> pieces,
      Paper paper,
      PrintCorrection correction,
      JobHeader header,
      OutputStream out)
      throws IOException {
    try (PdfBook book = new PdfBook(header)) {
      for (Drawing piece : pieces) {
        add(book, piece, paper, correction);
      }
      book.save(out);
    }
  }

  static void add(PdfBook book, Drawing piece, Paper paper, PrintCorrection correction)
      throws IOException {
    add(book, joins -> piece, paper, correction);
  }

  static void add(PdfBook book, PageDrawing piece, Paper paper, PrintCorrection correction)
      throws IOException {
    Laid laid = Laid.out(piece, book.face(), paper, correction);
    if (laid.tiling.tiles().size() > 1) {
      new IndexPage(laid.drawing, laid.tiling, paper).addTo(book);
    }
    TilePage page = new TilePage(laid.drawing, laid.ink, laid.tiling, laid.joints);
    for (Tile tile : laid.tiling.tiles()) {
      page.addTo(book, tile);
    }
  }

  /** A piece laid out on sheets. */
  record Laid(Drawing drawing, Ink ink, Tiling tiling, List<Joint> joints) {
    /** Words are moved off the joins, once it is known where those lie, if that costs no sheet. */
    static Laid out(PageDrawing piece, Typeface face, Paper paper, PrintCorrection correction) {
      Drawing first = piece.clearOf(List.of());
      Ink ink = new Ink(first, face);
      Tiling tiling = Tiling.best(ink, paper, correction);
      List<Joint> joints = Joint.of(tiling, ink);
      if (joints.isEmpty()) {
        return new Laid(first, ink, tiling, joints);
      }
      List<Path> off = new ArrayList<>(joints.stream().map(Joint::line).toList());
      Laid laid = again(piece, face, tiling, off);
      if (laid == null) {
        // A word had moved on to a sheet that is not printed, since nothing else is on it.
        off.addAll(tiling.unprinted());
        laid = again(piece, face, tiling, off);
      }
      return laid == null ? new Laid(first, ink, tiling, joints) : laid;
    }

    private static Laid again(PageDrawing piece, Typeface face, Tiling tiling, List<Path> off) {
      Drawing clear = piece.clearOf(off);
      Ink ink = new Ink(clear, face);
      return tiling.again(ink).map(t -> new Laid(clear, ink, t, Joint.of(t, ink))).orElse(null);
    }
  }
}
