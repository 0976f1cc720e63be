package padwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padwright.design.Units;
import padwright.material.Paper;
import padwright.pattern.PartResult;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternPiece.Kind;

class BenchSheetsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

  private static PDDocument open(PartResult part, Paper paper) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PartPdf.write(SampleParts.set(part), part, paper, PrintCorrection.none(), DAY, out);
    return Loader.loadPDF(out.toByteArray());
  }

  @Test
  void the_job_sheet_comes_first_then_sizes_then_the_pieces_in_order() throws IOException {
    try (PDDocument d = open(SampleParts.rest(), Samples.A4)) {
      assertThat(ReadBack.words(d, 1)).contains("Jobsheet").contains("Orderofwork");
      assertThat(ReadBack.words(d, 2)).contains("Sizesandcorners");
      int at = 2;
      for (String piece : List.of("Base", "Foam1", "Foam2", "Cover", "Dustcover")) {
        at++;
        while (!ReadBack.words(d, at).contains("Forearmrest:" + piece)) {
          at++;
        }
      }
    }
  }

  @Test
  void the_cutting_list_rounds_the_base_down_and_the_cover_up() throws IOException {
    // Pieces of 600.3 x 60.3 and 745.1416 x 205.1416; 1/32 in is 0.79375 mm:
    // 600.3 mm = 756.28/32 in, 60.3 = 75.97/32, 745.1416 = 938.76/32, 205.1416 = 258.45/32.
    CuttingList list = new CuttingList(SamplePieces.pieces(), Units.MM);
    assertThat(list.rows().get(0)).contains("600 x 60", "23 5/8 x 2 11/32");
    assertThat(list.rows().get(3)).contains("745.5 x 205.5", "29 11/32 x 8 3/32");
  }

  @Test
  void a_job_in_inches_lists_inches_first() {
    CuttingList list = new CuttingList(SamplePieces.pieces(), Units.INCH);
    assertThat(list.rows().get(0).subList(2, 4)).containsExactly("23 5/8 x 2 11/32", "600 x 60");
    // The base's board of 12 mm is 15.1/32 in.
    assertThat(list.rows().get(0).get(4)).isEqualTo("15/32");
  }

  @Test
  void the_job_sheet_says_what_is_needed_at_the_bench() throws IOException {
    try (PDDocument d = open(SampleParts.rest(), Samples.A4)) {
      assertThat(ReadBack.words(d, 1))
          .contains("2off")
          .contains("2026-03-14")
          .contains("600x60")
          .contains("745.5x205.5")
          .contains("Board,planned12mm,atleast11.5mm")
          .contains("602x62x37highmm")
          .contains("leg8mm,50")
          .contains("4.5mmleftunderthepoint")
          .contains("mitredend")
          .contains("onelongsidefromitscentreoutwards,thentheother")
          .contains("cut3mmoutsidetheline")
          .contains("Screwfrombelow")
          .contains("neverahotwire")
          .contains("nosepressed")
          .contains("Localrulesandlicensedpracticegobeforethissheet");
    }
  }

  @Test
  void it_stays_on_one_page_with_many_assumptions_and_findings() throws IOException {
    for (Paper paper : List.of(Samples.A4, Samples.LETTER)) {
      try (PDDocument d = open(SampleParts.rest(16, 9), paper)) {
        assertThat(ReadBack.words(d, 1)).contains("Jobsheet,");
        assertThat(ReadBack.words(d, 2)).contains("Sizesandcorners");
      }
    }
  }

  @Test
  void it_runs_on_to_a_second_page_rather_than_losing_a_finding() throws IOException {
    try (PDDocument d = open(SampleParts.rest(20, 50), Samples.A4)) {
      String both = ReadBack.words(d, 1) + ReadBack.words(d, 2);
      assertThat(both).contains("Jobsheet1of2").contains("Jobsheet2of2").contains("Safety");
      assertThat(both.split("Leg12leaves0.5mm", -1)).hasSize(51);
    }
  }

  @Test
  void no_text_of_the_sheets_overlaps_or_leaves_the_printable_page() throws IOException {
    for (int many : new int[] {2, 9, 30}) {
      for (Paper paper : List.of(Samples.A4, Samples.LETTER)) {
        try (PDDocument d = open(SampleParts.rest(many, many), paper)) {
          for (int page = 1; page <= 2; page++) {
            TextBoxes.assertTidy(d, page, paper.width(), paper.height());
          }
        }
      }
    }
  }

  @Test
  void the_dimension_sheet_is_one_page_and_holds_the_corners_at_full_size() throws IOException {
    try (PDDocument d = open(SampleParts.rest(), Samples.A4)) {
      assertThat(ReadBack.words(d, 2))
          .contains("745.5mm2911/32in")
          .contains("205.5mm83/32in")
          .contains("trimline15,foldlines35.1,72.6")
          .contains("Cover,cornerfrontright")
          .contains("turnedover:frontleft")
          .contains("Linesofthecorners")
          .contains("creaseofapleat");
      assertThat(ReadBack.words(d, 3)).doesNotContain("Sizesandcorners");
      List<Double> lengths =
          ReadBack.lines(d.getPage(1)).stream().map(ReadBack.Line::length).toList();
      // The whole cut line is drawn and clipped: its full length shows the scale. Corners cut off
      // by 38: each takes two legs of 38 and gives its hypotenuse.
      double cut = 2 * (745.1416 + 205.1416) - 8 * 38 + 4 * 38 * Math.sqrt(2);
      assertThat(lengths).anyMatch(l -> Math.abs(l - cut) < 0.01);
    }
  }

  @Test
  void a_corner_that_differs_gets_a_template_of_its_own() throws IOException {
    try (PDDocument d = new PDDocument()) {
      Typeface face = new Typeface(d);
      PatternPiece cover =
          SamplePieces.pieces().stream()
              .filter(p -> p.kind() == Kind.COVER)
              .findFirst()
              .orElseThrow();
      assertThat(CornerTemplate.of(face, PieceLines.of(cover), 90, 90, false)).hasSize(1);
      List<PatternPiece.LineMark> fewer = new ArrayList<>(cover.lines());
      fewer.remove(fewer.size() - 1);
      PatternPiece odd = with(cover, fewer);
      assertThat(CornerTemplate.of(face, PieceLines.of(odd), 90, 90, false)).hasSize(2);
    }
  }

  private static PatternPiece with(PatternPiece p, List<PatternPiece.LineMark> lines) {
    return new PatternPiece(
        p.id(),
        p.kind(),
        p.name(),
        p.quantity(),
        p.mirrored(),
        p.material(),
        p.thickness(),
        p.cutLine(),
        p.innerCuts(),
        lines,
        p.staples(),
        p.points(),
        p.grain(),
        p.nap(),
        p.side(),
        p.length(),
        p.width());
  }

  @Test
  void the_file_is_whole_repeatable_and_leaves_nothing_beside_it(@TempDir Path dir)
      throws IOException {
    Path file = dir.resolve("desk-rest.pdf");
    PartResult part = SampleParts.rest();
    PartPdf.write(SampleParts.set(part), part, Samples.A4, PrintCorrection.none(), file);
    byte[] first = Files.readAllBytes(file);
    PartPdf.write(SampleParts.set(part), part, Samples.A4, PrintCorrection.none(), file);
    assertThat(Files.readAllBytes(file)).isEqualTo(first);
    try (var files = Files.list(dir)) {
      assertThat(files).containsExactly(file);
    }
  }
}
