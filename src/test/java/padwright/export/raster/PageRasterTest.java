package padwright.export.raster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import padwright.design.Job;
import padwright.export.pdf.PartPdf;
import padwright.export.pdf.PrintCorrection;
import padwright.export.pdf.ReadBack;
import padwright.geometry.Bounds;
import padwright.jobfile.JobReader;
import padwright.material.Catalogue;
import padwright.material.CatalogueReader;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;
import padwright.pattern.PatternSet;

class PageRasterTest {
  private static final double DPI = 150;
  private static final double DOTS_PER_MM = DPI / 25.4;
  private static byte[] pdf;

  @BeforeAll
  static void draft() throws IOException {
    Catalogue catalogue = CatalogueReader.builtIn();
    Job job = new JobReader(catalogue).read(Path.of("demo", "reading-nook.json"));
    PartResult result = new PatternEngine(catalogue).run(job.parts().get(1));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PartPdf.write(
        new PatternSet(job, List.of(result)),
        result,
        catalogue.paper("a4").orElseThrow(),
        PrintCorrection.none(),
        LocalDate.of(2026, 3, 14),
        out);
    pdf = out.toByteArray();
  }

  @Test
  void a_page_has_the_size_of_its_paper() throws IOException {
    try (PageRaster r = new PageRaster(pdf);
        PDDocument d = Loader.loadPDF(pdf)) {
      assertThat(r.pages()).isEqualTo(d.getNumberOfPages());
      Pixels p = r.render(0, DPI);
      // A4, ISO 216.
      assertThat(p.width()).isCloseTo((int) (210 * DOTS_PER_MM), within(1));
      assertThat(p.height()).isCloseTo((int) (297 * DOTS_PER_MM), within(1));
      assertThat(p.argb()[0]).isEqualTo(0xFFFFFFFF);
      PageRaster.Size s = r.size(0);
      assertThat(s.width()).isCloseTo(210, within(0.01));
      assertThat(s.height()).isCloseTo(297, within(0.01));
    }
  }

  @Test
  void the_check_line_across_a_page_measures_100_mm() throws IOException {
    int measured = 0;
    try (PageRaster r = new PageRaster(pdf);
        PDDocument d = Loader.loadPDF(pdf)) {
      for (int i = 0; i < d.getNumberOfPages() && measured < 3; i++) {
        if (d.getPage(i).getRotation() != 0) {
          continue;
        }
        // Where another reader of the file finds a level line of 100 mm is where it is looked for.
        for (ReadBack.Line line : ReadBack.lines(d.getPage(i))) {
          Bounds b = line.bounds();
          if (b.height() < 0.01 && Math.abs(b.width() - 100) < 0.01 && line.window() == null) {
            assertThat(ticksApart(r.render(i, DPI), b)).isCloseTo(100, within(0.2));
            measured++;
          }
        }
      }
    }
    assertThat(measured).isGreaterThan(0);
  }

  /** Between the strokes at its ends, found by their darkness in a strip just over the line, mm. */
  private static double ticksApart(Pixels p, Bounds line) {
    return tick(p, line.maxX(), line.minY()) - tick(p, line.minX(), line.minY());
  }

  private static double tick(Pixels p, double x, double y) {
    double sum = 0;
    double moment = 0;
    int top = (int) (p.height() - (y + 1.2) * DOTS_PER_MM);
    int foot = (int) (p.height() - (y + 0.5) * DOTS_PER_MM);
    for (int row = top; row < foot; row++) {
      for (int c = (int) ((x - 1) * DOTS_PER_MM); c <= (x + 1) * DOTS_PER_MM; c++) {
        double dark = 255 - (p.argb()[row * p.width() + c] & 0xFF);
        sum += dark;
        moment += dark * (c + 0.5);
      }
    }
    assertThat(sum).as("a stroke at the end of the line").isGreaterThan(0);
    return moment / sum / DOTS_PER_MM;
  }

  @Test
  void a_page_turned_to_lie_is_shown_lying() throws IOException {
    try (PDDocument d = Loader.loadPDF(pdf);
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      d.getPage(0).setRotation(90);
      d.save(out);
      try (PageRaster r = new PageRaster(out.toByteArray())) {
        assertThat(r.size(0).width()).isCloseTo(297, within(0.01));
        assertThat(r.render(0, 30).width()).isGreaterThan(r.render(0, 30).height());
      }
    }
  }

  @Test
  void dots_are_kept_within_a_number() throws IOException {
    try (PageRaster r = new PageRaster(pdf)) {
      assertThat(r.within(0, DPI, Long.MAX_VALUE)).isEqualTo(DPI);
      Pixels p = r.render(0, r.within(0, DPI, 100_000));
      assertThat(p.argb().length).isBetween(97_000, 102_000);
    }
  }

  @Test
  void what_is_no_pdf_is_refused() {
    assertThatThrownBy(() -> new PageRaster("no pages".getBytes(StandardCharsets.UTF_8)))
        .isInstanceOf(IOException.class);
  }
}
