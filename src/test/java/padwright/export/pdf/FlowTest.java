package padwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import padwright.geometry.Bounds;

class FlowTest {
  @Test
  void wrapped_lines_fit_and_lose_no_letter() throws IOException {
    Random r = new Random(3);
    try (PDDocument d = new PDDocument()) {
      Typeface face = new Typeface(d);
      for (int i = 0; i < 300; i++) {
        StringBuilder s = new StringBuilder();
        int words = 1 + r.nextInt(30);
        for (int w = 0; w < words; w++) {
          s.append("abcW\u00e9".repeat(1 + r.nextInt(i % 10 == 0 ? 40 : 4))).append(' ');
        }
        double room = 12 + r.nextInt(80);
        List<String> lines = Wrap.lines(face, s.toString(), 3.5, room);
        assertThat(lines).allMatch(l -> face.width(l, 3.5) <= room);
        assertThat(String.join("", lines).replace(" ", ""))
            .isEqualTo(s.toString().replace(" ", ""));
      }
    }
  }

  @Test
  void a_long_name_is_cut_with_an_ellipsis_to_the_room_there_is() throws IOException {
    try (PDDocument d = new PDDocument()) {
      Typeface face = new Typeface(d);
      String s = face.fitted("A very long name of a very long part", 6, 40);
      assertThat(s).startsWith("A very").endsWith("\u2026");
      assertThat(face.width(s, 6)).isLessThanOrEqualTo(40);
    }
  }

  @Test
  void columns_fill_one_after_the_other_and_nothing_falls_below_their_foot() throws IOException {
    try (PDDocument d = new PDDocument()) {
      Typeface face = new Typeface(d);
      List<Block> blocks = new ArrayList<>();
      for (int i = 0; i < 60; i++) {
        blocks.add(
            i % 10 == 0 ? Block.heading("Section " + i) : Block.tick(i + ".", "do this now"));
      }
      Flow.Laid laid =
          new Flow(face, 3.5).lay(blocks, c -> new Bounds(c * 100, 20, c * 100 + 80, 120));
      // 60 lines at 1.32 x 3.5 mm and more make at least 277 mm: three columns of 100.
      assertThat(laid.columns()).isGreaterThanOrEqualTo(3);
      assertThat(laid.lowest()).isGreaterThanOrEqualTo(20);
    }
  }
}
