package padwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padwright.geometry.Bounds;

/** Measures the printed picture of the check lines, as a maker would with a rule. */
class CheckLineTest {
  private static final int DPI = 300;
  private static final double MM = 25.4 / DPI;

  @Test
  void both_lines_measure_100_mm_on_a_raster_of_300_dpi() throws IOException {
    BufferedImage image = render(Samples.A4.width(), PrintCorrection.none(), 120, 120);
    Sheet sheet = new Sheet(210, 297, false, PrintCorrection.none());
    assertThat(across(image, sheet)).isCloseTo(100, within(0.1));
    assertThat(upright(image, sheet)).isCloseTo(100, within(0.1));
  }

  @Test
  void on_a_lying_page_too() throws IOException {
    BufferedImage image = render(Samples.A4.width(), PrintCorrection.none(), 250, 120);
    assertThat(image.getWidth()).isGreaterThan(image.getHeight());
    Sheet sheet = new Sheet(210, 297, true, PrintCorrection.none());
    assertThat(across(image, sheet)).isCloseTo(100, within(0.1));
    assertThat(upright(image, sheet)).isCloseTo(100, within(0.1));
  }

  @Test
  void a_printer_that_shrinks_gets_them_as_much_longer() throws IOException {
    PrintCorrection c = new PrintCorrection(98, 101);
    BufferedImage image = render(Samples.A4.width(), c, 120, 120);
    Sheet sheet = new Sheet(210, 297, false, c);
    // What the printer then makes of it: x 0.98 and x 1.01.
    assertThat(across(image, sheet) * 0.98).isCloseTo(100, within(0.1));
    assertThat(upright(image, sheet) * 1.01).isCloseTo(100, within(0.1));
  }

  @Test
  void another_renderer_agrees(@TempDir Path dir) throws Exception {
    String tool = Tools.need("pdftoppm");
    Path pdf = dir.resolve("t.pdf");
    Files.write(
        pdf, ReadBack.write(List.of(Samples.cover(120, 120)), Samples.A4, PrintCorrection.none()));
    Process p =
        new ProcessBuilder(tool, "-r", "" + DPI, "-png", "-gray", pdf.toString(), dir + "/t")
            .inheritIO()
            .start();
    assertThat(p.waitFor()).isZero();
    BufferedImage image = ImageIO.read(dir.resolve("t-1.png").toFile());
    Sheet sheet = new Sheet(210, 297, false, PrintCorrection.none());
    assertThat(across(image, sheet)).isCloseTo(100, within(0.1));
    assertThat(upright(image, sheet)).isCloseTo(100, within(0.1));
  }

  private static BufferedImage render(double width, PrintCorrection c, double w, double h)
      throws IOException {
    assertThat(width).isEqualTo(210);
    try (PDDocument d =
        Loader.loadPDF(ReadBack.write(List.of(Samples.cover(w, h)), Samples.A4, c))) {
      return new PDFRenderer(d).renderImageWithDPI(0, DPI, ImageType.GRAY);
    }
  }

  /** Between the end strokes of the line across, looked for just over it. */
  private static double across(BufferedImage image, Sheet sheet) {
    // The strip in the sheet's frame: a little over the line, as far as its strokes reach.
    return apart(image, box(image, sheet, -1.5, 14.9, 101.5, 15.6), true);
  }

  private static double upright(BufferedImage image, Sheet sheet) {
    double x = sheet.width() - 1.6;
    return apart(image, box(image, sheet, x + 0.3, -1, x + 1, 104), false);
  }

  /** A box of the sheet in pixels of the picture, from its top left; margins as the sheet has. */
  private static Bounds box(
      BufferedImage image, Sheet s, double x1, double y1, double x2, double y2) {
    boolean t = s.turned();
    double kx = t ? s.correction().scaleY() : s.correction().scaleX();
    double ky = t ? s.correction().scaleX() : s.correction().scaleY();
    double left = (image.getWidth() * MM - s.width() * kx) / 2;
    double low = (image.getHeight() * MM - s.height() * ky) / 2;
    double height = image.getHeight();
    return new Bounds(
        (left + x1 * kx) / MM,
        height - (low + y2 * ky) / MM,
        (left + x2 * kx) / MM,
        height - (low + y1 * ky) / MM);
  }

  /** The distance in mm between the first and the last dark stroke, centre to centre. */
  private static double apart(BufferedImage image, Bounds b, boolean alongX) {
    int from = (int) (alongX ? b.minX() : b.minY());
    int to = (int) (alongX ? b.maxX() : b.maxY());
    double[] dark = new double[to - from];
    for (int i = from; i < to; i++) {
      int lo = (int) (alongX ? b.minY() : b.minX());
      int hi = (int) (alongX ? b.maxY() : b.maxX());
      for (int j = lo; j < hi; j++) {
        int grey =
            (alongX ? image.getRaster().getSample(i, j, 0) : image.getRaster().getSample(j, i, 0));
        dark[i - from] += 255 - grey;
      }
    }
    return (peak(dark, false) - peak(dark, true)) * MM;
  }

  private static double peak(double[] dark, boolean first) {
    int n = dark.length;
    int at = first ? 0 : n - 1;
    int step = first ? 1 : -1;
    while (dark[at] == 0) {
      at += step;
    }
    double sum = 0;
    double moment = 0;
    while (at >= 0 && at < n && dark[at] > 0) {
      sum += dark[at];
      moment += dark[at] * at;
      at += step;
    }
    return moment / sum;
  }
}
