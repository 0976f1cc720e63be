package padwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import padwright.jobfile.JobReader;
import padwright.material.Catalogue;
import padwright.material.CatalogueReader;
import padwright.material.Paper;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternSet;

/** The demo's parts, worked out and printed. */
class RealPartsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);
  private static PatternSet set;

  @BeforeAll
  static void workOut() {
    Catalogue catalogue = CatalogueReader.builtIn();
    set =
        new PatternEngine(catalogue)
            .run(new JobReader(catalogue).read(Path.of("demo/reading-nook.json")));
  }

  private static byte[] print(PartResult part, Paper paper) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PartPdf.write(set, part, paper, PrintCorrection.none(), DAY, out);
    return out.toByteArray();
  }

  @Test
  void every_job_sheet_is_one_tidy_page() throws IOException {
    for (PartResult part : set.parts()) {
      for (Paper paper : List.of(Samples.A4, Samples.LETTER)) {
        try (PDDocument d = Loader.loadPDF(print(part, paper))) {
          assertThat(ReadBack.words(d, 1)).contains("Jobsheet,");
          TextBoxes.assertTidy(d, 1, paper.width(), paper.height());
        }
      }
    }
  }

  @Test
  void every_dimension_sheet_is_tidy_and_only_rectangles_get_one() throws IOException {
    for (PartResult part : set.parts()) {
      try (PDDocument d = Loader.loadPDF(print(part, Samples.A4))) {
        boolean there = ReadBack.words(d, 2).contains("Sizesandcorners");
        assertThat(there).isEqualTo(DimensionSheet.serves(part));
        for (int page = 2; ReadBack.words(d, page).contains("Sizesandcorners"); page++) {
          TextBoxes.assertTidy(d, page, 210, 297);
        }
      }
    }
  }

  @Test
  void every_cut_line_comes_out_at_its_length_to_a_hundredth() throws IOException {
    for (PartResult part : set.parts()) {
      try (PDDocument d = Loader.loadPDF(print(part, Samples.ROLL))) {
        int tiles = d.getNumberOfPages() - part.pieces().size();
        for (int i = 0; i < part.pieces().size(); i++) {
          PatternPiece piece = part.pieces().get(i);
          assertThat(ReadBack.lines(d.getPage(tiles + i)))
              .as(part.asked().id() + " " + piece.id())
              .anyMatch(l -> Math.abs(l.length() - piece.cutLine().length()) < 0.01);
        }
      }
    }
  }

  @Test
  void the_same_part_gives_the_same_bytes() throws IOException {
    PartResult part = set.parts().get(0);
    assertThat(print(part, Samples.A4)).isEqualTo(print(part, Samples.A4));
  }
}
