package padwright.export.pdf;

import java.io.IOException;
import java.util.List;
import padwright.design.Units;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.LineStyle;
import padwright.geometry.Bounds;
import padwright.pattern.PartResult;

/**
 * The sheet that hangs on the bench: one page a part with the cutting list to tick, what to measure
 * first, sizes, staples, the steps in order and the cautions. Its text shrinks until it fits; only
 * where it would become too small to read does it run on to a second page.
 */
public final class JobSheet {
  /** From comfortable to the least that is read at arm's length in workshop light, mm. */
  private static final double[] SIZES = {3.5, 3.3, 3.1, 2.9, 2.7, 2.55};

  private static final double GUTTER = 7;

  /** Baseline of the part's name under the sheet's edge, of its next line, and of the job's; mm. */
  private static final double NAME_DOWN = 6;

  private static final double NAME_STEP = 8;
  private static final double JOB_STEP = 4.5;

  /** From the last line to the rule under it and from there to the cutting list, mm. */
  private static final double RULE = 2;

  private static final double UNDER_RULE = 3;
  private static final double NAME = 7.5;
  private static final double SMALL = 3.5;

  /** Kept free under and right of the text for the check lines, mm. */
  private static final double STRIP = 4.5;

  private final PartResult part;
  private final JobHeader header;
  private final Units units;
  private final CuttingList list;

  /**
   * @param units what is printed first
   */
  public JobSheet(PartResult part, JobHeader header, Units units) {
    this.part = part;
    this.header = header;
    this.units = units;
    list = new CuttingList(part.pieces(), units);
  }

  /** Text in place and the size it came out in. */
  private record Fit(double size, Flow.Laid text) {
    int pages() {
      return (text.columns() + 1) / 2;
    }
  }

  /** Adds it to a document on a sheet that is read upright. */
  void addTo(PdfBook book, Sheet sheet) throws IOException {
    Fit fit = fit(book.face(), sheet);
    for (int i = 0; i < fit.pages(); i++) {
      int page = i;
      book.page(
          sheet,
          p -> {
            title(p, sheet, page, fit.pages());
            if (page == 0) {
              list.draw(p, 0, sheet.height() - top(p.face(), sheet), width(sheet), fit.size);
            }
            fit.text.draw(p, 2 * page, 2 * page + 2);
            Furniture.inMargin(p, sheet);
          });
    }
  }

  /**
   * The whole text on one page; else without the reasons for defaults; else on as few as hold it.
   */
  private Fit fit(Typeface face, Sheet sheet) {
    List<Block> whole = JobSheetText.of(part, units, false);
    double least = SIZES[SIZES.length - 1];
    int fewest = new Fit(least, lay(face, sheet, whole, least)).pages();
    List<Block> brief = JobSheetText.of(part, units, true);
    boolean briefFits = new Fit(least, lay(face, sheet, brief, least)).pages() == 1;
    boolean shorten = fewest > 1 && briefFits;
    for (double size : SIZES) {
      Fit fit = new Fit(size, lay(face, sheet, shorten ? brief : whole, size));
      if (fit.pages() <= (shorten ? 1 : fewest)) {
        return fit;
      }
    }
    throw new IllegalStateException("the least size has the fewest pages");
  }

  private Flow.Laid lay(Typeface face, Sheet sheet, List<Block> blocks, double size) {
    double wide = (width(sheet) - GUTTER) / 2;
    double top = sheet.height() - top(face, sheet);
    double under = top - list.height(size) - 2.5;
    double right = wide + GUTTER;
    return new Flow(face, size)
        .lay(
            blocks,
            i ->
                new Bounds(
                    i % 2 == 0 ? 0 : right,
                    STRIP,
                    i % 2 == 0 ? wide : right + wide,
                    i < 2 ? under : top));
  }

  /** What the text may take. */
  private static double width(Sheet sheet) {
    return sheet.width() - STRIP;
  }

  private void title(PdfPainter p, Sheet sheet, int page, int pages) throws IOException {
    double y = sheet.height() - NAME_DOWN;
    List<String> names = names(p.face(), sheet);
    for (int i = 0; i < names.size(); i++) {
      p.text(0, y - i * NAME_STEP, NAME, true, names.get(i));
    }
    p.text(width(sheet), y, 5, Anchor.END, header.quantity());
    y -= (names.size() - 1) * NAME_STEP + 6;
    List<String> jobs = jobs(p.face(), sheet);
    for (int i = 0; i < jobs.size(); i++) {
      p.text(0, y - i * JOB_STEP, SMALL, false, jobs.get(i));
    }
    p.text(width(sheet), y, SMALL, Anchor.END, right(page, pages));
    y -= (jobs.size() - 1) * JOB_STEP + RULE;
    p.line(0, y, width(sheet), y, LineStyle.FRONT);
  }

  /** What the title takes of the sheet's height. */
  private double top(Typeface face, Sheet sheet) {
    return NAME_DOWN
        + (names(face, sheet).size() - 1) * NAME_STEP
        + 6
        + (jobs(face, sheet).size() - 1) * JOB_STEP
        + RULE
        + UNDER_RULE;
  }

  /** Names are told whole: a long one goes on in the next line. */
  private List<String> names(Typeface face, Sheet sheet) {
    // Bold strokes stand a little outside the letter.
    double room = (width(sheet) - face.width(header.quantity(), 5) - 6) * 0.98;
    return Wrap.lines(face, header.part(), NAME, room);
  }

  private List<String> jobs(Typeface face, Sheet sheet) {
    String where =
        header.client().isEmpty() ? header.job() : header.job() + " for " + header.client();
    double room = width(sheet) - face.width(right(9, 10), SMALL) - 4;
    return where.isBlank() ? List.of("") : Wrap.lines(face, where, SMALL, room);
  }

  private String right(int page, int pages) {
    return "Job sheet"
        + (pages > 1 ? " " + (page + 1) + " of " + pages : "")
        + ", "
        + header.date();
  }
}
