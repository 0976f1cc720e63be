package padwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padwright.export.Drawing;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.export.Drawing.Text;
import padwright.geometry.Vec2;
import padwright.material.Paper;

class TiledPdfTest {
  private static final PrintCorrection NONE = PrintCorrection.none();

  @Test
  void a_piece_that_fits_gets_one_page_of_exactly_the_papers_size() throws IOException {
    // ISO 216: A4 is 210 x 297 mm; a point is 1/72 in, so 210 mm is 595.2756 points.
    try (PDDocument d = ReadBack.open(List.of(Samples.cover(150, 120)), Samples.A4, NONE)) {
      assertThat(d.getNumberOfPages()).isEqualTo(1);
      assertThat(d.getPage(0).getMediaBox().getWidth()).isCloseTo(595.2756f, within(0.0005f));
      assertThat(d.getPage(0).getMediaBox().getHeight()).isCloseTo(841.8898f, within(0.0005f));
    }
  }

  @Test
  void letter_and_tabloid_are_whole_inches_and_halves() throws IOException {
    // ANSI/ASME Y14.1: 8.5 x 11 in and 11 x 17 in.
    for (Paper paper : List.of(Samples.LETTER, Samples.TABLOID)) {
      try (PDDocument d = ReadBack.open(List.of(Samples.cover(100, 90)), paper, NONE)) {
        PDPage p = d.getPage(0);
        assertThat(p.getMediaBox().getWidth())
            .isCloseTo(paper == Samples.LETTER ? 612f : 792f, within(0.0005f));
        assertThat(p.getMediaBox().getHeight())
            .isCloseTo(paper == Samples.LETTER ? 792f : 1224f, within(0.0005f));
      }
    }
  }

  @Test
  void the_file_asks_for_actual_size_and_carries_title_and_font() throws IOException {
    try (PDDocument d = ReadBack.open(List.of(Samples.cover(700, 210)), Samples.A4, NONE)) {
      assertThat(d.getDocumentCatalog().getViewerPreferences().getPrintScaling()).isEqualTo("None");
      assertThat(d.getDocumentInformation().getTitle()).isEqualTo("Reading nook: Forearm rest");
      for (PDPage p : d.getPages()) {
        for (COSName n : p.getResources().getFontNames()) {
          PDFont f = p.getResources().getFont(n);
          assertThat(f.isEmbedded()).isTrue();
          assertThat(f.getName()).matches("[A-Z]{6}\\+LiberationSans");
        }
      }
    }
  }

  @Test
  void every_tile_says_which_it_is_and_what_it_belongs_to() throws IOException {
    try (PDDocument d = ReadBack.open(List.of(Samples.cover(700, 210)), Samples.A4, NONE)) {
      for (int page = 2; page <= d.getNumberOfPages(); page++) {
        assertThat(ReadBack.words(d, page))
            .contains("A" + (page - 1))
            .contains("Forearmrest:cover")
            .contains("100mmacrossthepaper")
            .contains("100mmalongthepaper");
      }
    }
  }

  @Test
  void the_index_gives_lengths_and_both_diagonals() throws IOException {
    Drawing plain = Samples.of("Panel", new Stroke(Samples.rectangle(600, 450), LineStyle.CUT));
    try (PDDocument d = ReadBack.open(List.of(plain), Samples.A4, NONE)) {
      // 600, 450, 750: the 3-4-5 triangle.
      assertThat(ReadBack.words(d, 1))
          .contains("PtoQ600mm(235/8in)")
          .contains("PtoS450mm(1723/32in)")
          .contains("diagonalPtoR750mm(2917/32in)")
          .contains("diagonalQtoS750mm");
    }
  }

  @Test
  void the_correction_is_stated_on_every_page() throws IOException {
    try (PDDocument d =
        ReadBack.open(
            List.of(Samples.cover(700, 210)), Samples.A4, new PrintCorrection(99, 100.5))) {
      for (int page = 1; page <= d.getNumberOfPages(); page++) {
        assertThat(ReadBack.words(d, page)).contains("acrossthepaperx1.0101,alongitx0.9950");
      }
    }
  }

  @Test
  void the_same_input_gives_the_same_bytes() throws IOException {
    List<Drawing> pieces = List.of(Samples.cover(700, 210), Samples.cover(100, 90));
    assertThat(ReadBack.write(pieces, Samples.A4, NONE))
        .isEqualTo(ReadBack.write(pieces, Samples.A4, NONE));
  }

  @Test
  void a_roll_is_as_long_as_the_piece_and_no_page_passes_14400_points() throws IOException {
    try (PDDocument d = ReadBack.open(List.of(Samples.cover(2000, 515)), Samples.ROLL, NONE)) {
      assertThat(d.getNumberOfPages()).isEqualTo(1);
      // 914 mm wide; 2000 of piece and less than 40 more of margins, furniture and ease.
      assertThat(d.getPage(0).getMediaBox().getWidth() / 72 * 25.4).isCloseTo(914, within(0.001));
      assertThat(d.getPage(0).getMediaBox().getHeight() / 72 * 25.4).isBetween(2020.0, 2040.0);
    }
    // ISO 32000-1 annex C: pages up to 14,400 units.
    try (PDDocument d = ReadBack.open(List.of(Samples.cover(7000, 515)), Samples.ROLL, NONE)) {
      assertThat(d.getNumberOfPages()).isEqualTo(3);
      for (PDPage p : d.getPages()) {
        assertThat(p.getMediaBox().getHeight()).isLessThanOrEqualTo(14_400f);
      }
    }
  }

  @Test
  void letters_the_font_lacks_come_out_as_boxes() throws IOException {
    Drawing odd =
        new Drawing(
            "Poign\u00e9e \u5ea7 \ud83e\ude91",
            Samples.cover(80, 80).extent(),
            List.of(
                new Text(
                    Vec2.ZERO, 5, 0, Anchor.START, true, "\u5ea7 \t\u0000\ud83e\ude91 \u00e9")));
    try (PDDocument d = ReadBack.open(List.of(odd), Samples.A4, NONE)) {
      assertThat(new PDFTextStripper().getText(d)).contains("Poign\u00e9e \u25a1 \u25a1");
    }
  }

  @Test
  void an_outside_reader_finds_no_fault(@TempDir Path dir) throws Exception {
    String qpdf = Tools.need("qpdf");
    Path file = dir.resolve("tiles.pdf");
    Files.write(
        file,
        ReadBack.write(
            List.of(Samples.cover(700, 210)), Samples.LETTER, new PrintCorrection(99, 101)));
    Process p =
        new ProcessBuilder(qpdf, "--check", file.toString()).redirectErrorStream(true).start();
    String said =
        new String(p.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
    assertThat(p.waitFor()).as(said).isZero();
    assertThat(said).contains("No syntax or stream encoding errors found");
  }

  @Test
  void a_title_with_odd_letters_is_kept_whole_in_the_properties() throws IOException {
    var out = new java.io.ByteArrayOutputStream();
    JobHeader h = new JobHeader("\u5ea7 & co", "", "Rest", "1 off", "no date");
    TiledPdf.write(List.of(Samples.cover(80, 80)), Samples.A4, NONE, h, out);
    try (PDDocument d = Loader.loadPDF(out.toByteArray())) {
      assertThat(d.getDocumentInformation().getTitle()).isEqualTo("\u5ea7 & co: Rest");
    }
  }
}
