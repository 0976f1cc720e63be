package padwright.export.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * A PDF document being written, page by page: actual size asked of the printer, one side of the
 * paper, one embedded font, a date and an id that come from the header alone, so that the same job
 * gives the same bytes.
 */
final class PdfBook implements AutoCloseable {
  /** What a page is given to draw with, in the sheet's frame. */
  @FunctionalInterface
  interface Page {
    void draw(PdfPainter painter) throws IOException;
  }

  private final PDDocument document = new PDDocument();
  private final JobHeader header;
  private final Typeface face;

  PdfBook(JobHeader header) throws IOException {
    this.header = header;
    face = new Typeface(document);
    document.setVersion(1.7f);
    document.setDocumentId((long) header.line().hashCode());
    document.getDocumentCatalog().setLanguage("en");
    PDViewerPreferences show = new PDViewerPreferences(new COSDictionary());
    show.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    show.setDuplex(PDViewerPreferences.DUPLEX.Simplex);
    show.setDisplayDocTitle(true);
    document.getDocumentCatalog().setViewerPreferences(show);
    PDDocumentInformation info = new PDDocumentInformation();
    info.setTitle(header.job() + ": " + header.part());
    info.setSubject("Full-size patterns, to be printed at actual size");
    info.setCreator("Padwright");
    info.setProducer("Padwright");
    Calendar date = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
    date.setTimeInMillis(header.day().atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
    info.setCreationDate(date);
    info.setModificationDate(date);
    document.setDocumentInformation(info);
  }

  JobHeader header() {
    return header;
  }

  Typeface face() {
    return face;
  }

  int pages() {
    return document.getNumberOfPages();
  }

  void page(Sheet sheet, Page page) throws IOException {
    PDRectangle size =
        new PDRectangle(
            (float) (sheet.paperWidth() * Sheet.POINTS),
            (float) (sheet.paperHeight() * Sheet.POINTS));
    PDPage p = new PDPage(size);
    if (sheet.turned()) {
      p.setRotation(90);
    }
    document.addPage(p);
    try (PDPageContentStream out = new PDPageContentStream(document, p)) {
      page.draw(new PdfPainter(out, face, sheet.frame()));
    }
  }

  void save(OutputStream out) throws IOException {
    document.save(out);
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
