package padwright.export.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import padwright.design.Units;
import padwright.export.PageDrawing;
import padwright.export.PartHeader;
import padwright.export.PieceDrawing;
import padwright.material.Paper;
import padwright.pattern.PartResult;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternSet;

/**
 * Everything to print for one part, in the order it is used: the job sheet, for rectangular parts
 * the dimension sheet, then the full-size pattern of every piece.
 */
public final class PartPdf {
  /** ISO 216 A4 and ANSI/ASME Y14.1 A (Letter), mm: the bench sheets' own paper. */
  private static final double[] A4 = {210, 297};

  private static final double[] LETTER = {215.9, 279.4};

  private PartPdf() {}

  /**
   * Writes the file whole or not at all.
   *
   * @throws IOException where it cannot be written
   * @throws padwright.measure.InputRefused where the paper is too small
   */
  public static void write(
      PatternSet set, PartResult part, Paper paper, PrintCorrection correction, Path file)
      throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    write(set, part, paper, correction, LocalDate.now(ZoneId.systemDefault()), bytes);
    Path draft = file.resolveSibling("." + file.getFileName() + ".part");
    try {
      Files.write(draft, bytes.toByteArray());
      Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(draft);
    }
  }

  /**
   * The same to a stream; it is not closed.
   *
   * @param today the date to print where the job names none
   */
  public static void write(
      PatternSet set,
      PartResult part,
      Paper paper,
      PrintCorrection correction,
      LocalDate today,
      OutputStream out)
      throws IOException {
    JobHeader header = JobHeader.of(set.job(), part.asked(), today);
    double[] size = benchPaper(paper, set.job().units());
    Sheet bench = new Sheet(size[0], size[1], false, correction);
    try (PdfBook book = new PdfBook(header)) {
      new JobSheet(part, header, set.job().units()).addTo(book, bench);
      if (DimensionSheet.serves(part)) {
        new DimensionSheet(part, set.job().units()).addTo(book, bench);
      }
      for (PageDrawing d : drawings(set, part, header)) {
        TiledPdf.add(book, d, paper, correction);
      }
      book.save(out);
    }
  }

  private static List<PageDrawing> drawings(PatternSet set, PartResult part, JobHeader header) {
    PartHeader words =
        new PartHeader(
            set.job().title(),
            part.asked().name(),
            part.asked().id(),
            part.asked().quantity(),
            part.asked().mirrored(),
            header.date(),
            set.job().units());
    List<PageDrawing> list = new ArrayList<>();
    for (PatternPiece piece : part.pieces()) {
      list.addAll(PieceDrawing.forPages(words, piece));
    }
    return list;
  }

  /** The job sheet's paper: the patterns' own where it is A4 or Letter, else its small sister. */
  private static double[] benchPaper(Paper paper, Units units) {
    String id = paper.id().toLowerCase(Locale.ROOT);
    boolean letter =
        id.contains("letter")
            || id.contains("tabloid")
            || units == Units.INCH && !id.matches("a\\d");
    return (letter ? LETTER : A4).clone();
  }
}
