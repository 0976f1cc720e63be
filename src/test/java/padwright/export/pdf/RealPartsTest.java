package padwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;
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

  /**
   * A piece no wider than this comes whole from the roll of 914, mm; margins and labels taken off.
   */
  private static final double ON_THE_ROLL = 800;

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

  /** Level and upright in the page as filed; each with a short stroke across either end. */
  @Test
  void every_page_has_a_check_line_of_100_mm_on_both_axes() throws IOException {
    for (PartResult part : set.parts()) {
      for (Paper paper : List.of(Samples.A4, Samples.A0, Samples.ROLL)) {
        try (PDDocument d = Loader.loadPDF(print(part, paper))) {
          for (int page = 1; page <= d.getNumberOfPages(); page++) {
            String where = part.asked().id() + " on " + paper.id() + ", page " + page;
            List<ReadBack.Line> lines = ReadBack.lines(d.getPage(page - 1));
            assertThat(checkLines(lines, true)).as(where + ", across").isEqualTo(1);
            assertThat(checkLines(lines, false)).as(where + ", along").isEqualTo(1);
            assertThat(ReadBack.words(d, page))
                .as(where)
                .contains("100mmacrossthepaper", "100mmalongthepaper");
          }
        }
      }
    }
  }

  private static long checkLines(List<ReadBack.Line> lines, boolean across) {
    return lines.stream()
        .filter(l -> l.points().size() == 2 && Math.abs(l.length() - 100) < 0.001)
        .filter(l -> (across ? l.bounds().height() : l.bounds().width()) < 0.001)
        .filter(l -> l.points().stream().allMatch(end -> crossed(lines, end, across)))
        .count();
  }

  /** Whether a stroke across the line has its middle at this end of it. */
  private static boolean crossed(List<ReadBack.Line> lines, Vec2 end, boolean across) {
    return lines.stream()
        .filter(l -> l.points().size() == 2 && l.length() < 4)
        .filter(l -> (across ? l.bounds().width() : l.bounds().height()) < 0.001)
        .anyMatch(l -> l.bounds().centre().distance(end) < 0.001);
  }

  /** The job sheet's text leaves the strips free that the lines stand in. */
  @Test
  void nothing_of_the_job_sheet_lies_on_its_check_lines() throws IOException {
    for (PartResult part : set.parts()) {
      for (Paper paper : List.of(Samples.A4, Samples.LETTER)) {
        try (PDDocument d = Loader.loadPDF(print(part, paper))) {
          List<ReadBack.Line> lines = ReadBack.lines(d.getPage(0));
          List<Bounds> strips =
              lines.stream()
                  .filter(l -> l.points().size() == 2 && Math.abs(l.length() - 100) < 0.001)
                  .map(l -> l.bounds().grown(1))
                  .toList();
          assertThat(strips).hasSize(2);
          for (Bounds word : TextBoxes.words(d, 1)) {
            Bounds b =
                new Bounds(
                    word.minX(),
                    paper.height() - word.maxY(),
                    word.maxX(),
                    paper.height() - word.minY());
            assertThat(strips).noneMatch(b::overlaps);
          }
          for (ReadBack.Line l : lines) {
            boolean theirs = l.length() < 4 || Math.abs(l.length() - 100) < 0.001;
            assertThat(theirs || strips.stream().noneMatch(l.bounds()::overlaps))
                .as("%s %s: line %s", part.asked().id(), paper.id(), l.bounds())
                .isTrue();
          }
        }
      }
    }
  }

  @Test
  void every_cut_line_comes_out_at_its_length_to_a_hundredth() throws IOException {
    int whole = 0;
    for (PartResult part : set.parts()) {
      try (PDDocument d = Loader.loadPDF(print(part, Samples.ROLL))) {
        List<ReadBack.Line> lines = new ArrayList<>();
        for (PDPage page : d.getPages()) {
          lines.addAll(ReadBack.lines(page));
        }
        for (PatternPiece piece : part.pieces()) {
          // One wider than the roll comes in strips, whose lines are cut off.
          if (Math.min(piece.length(), piece.width()) < ON_THE_ROLL) {
            whole++;
            assertThat(lines)
                .as(part.asked().id() + " " + piece.id())
                .anyMatch(l -> Math.abs(l.length() - piece.cutLine().length()) < 0.01);
          }
        }
      }
    }
    assertThat(whole).as("pieces that come whole").isGreaterThan(20);
  }

  @Test
  void the_same_part_gives_the_same_bytes() throws IOException {
    PartResult part = set.parts().get(0);
    assertThat(print(part, Samples.A4)).isEqualTo(print(part, Samples.A4));
  }
}
