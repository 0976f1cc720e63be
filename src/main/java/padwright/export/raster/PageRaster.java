package padwright.export.raster;

import java.awt.image.BufferedImage;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * The pages of a PDF as pictures on white. One page is painted at a time, whichever thread asks.
 */
public final class PageRaster implements AutoCloseable {
  private static final double MM_PER_POINT = 25.4 / 72;
  private static final double MM_PER_INCH = 25.4;

  /** The size of a page as read, mm. */
  public record Size(double width, double height) {}

  private final PDDocument document;

  /**
   * @throws IOException where it is no PDF
   */
  public PageRaster(byte[] pdf) throws IOException {
    document = Loader.loadPDF(pdf);
  }

  public synchronized int pages() {
    return document.getNumberOfPages();
  }

  /**
   * @param page from 0
   */
  public synchronized Size size(int page) {
    PDPage p = document.getPage(page);
    double w = p.getCropBox().getWidth() * MM_PER_POINT;
    double h = p.getCropBox().getHeight() * MM_PER_POINT;
    return p.getRotation() % 180 == 0 ? new Size(w, h) : new Size(h, w);
  }

  /**
   * @param page from 0
   * @param dpi dots an inch of paper
   * @throws IOException where the page cannot be painted
   */
  public synchronized Pixels render(int page, double dpi) throws IOException {
    BufferedImage image =
        new PDFRenderer(document).renderImageWithDPI(page, (float) dpi, ImageType.RGB);
    int w = image.getWidth();
    int h = image.getHeight();
    return new Pixels(w, h, image.getRGB(0, 0, w, h, null, 0, w));
  }

  /** The finest dots an inch, no more than {@code wanted}, at which a page has at most so many. */
  public double within(int page, double wanted, long mostDots) {
    Size s = size(page);
    double inches = s.width() * s.height() / (MM_PER_INCH * MM_PER_INCH);
    return Math.min(wanted, Math.sqrt(mostDots / inches));
  }

  @Override
  public synchronized void close() throws IOException {
    document.close();
  }
}
