package padwright.desk.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import padwright.desk.view.PagePreview.State;
import padwright.export.pdf.PrintCorrection;
import padwright.material.Catalogue;
import padwright.material.CatalogueReader;
import padwright.material.Paper;
import padwright.measure.InputRefused;

class PagePreviewTest {
  private static final Catalogue CATALOGUE = CatalogueReader.builtIn();
  private static final Paper A4 = CATALOGUE.paper("a4").orElseThrow();
  private static final Paper A3 = CATALOGUE.paper("a3").orElseThrow();

  /** Work that waits until it is told to go on, as a slow machine would have it. */
  private final Deque<Runnable> work = new ArrayDeque<>();

  private final List<String> asked = new ArrayList<>();
  private int told;

  private PagePreview preview(PagePreview.Source source) {
    return new PagePreview(List.of(A4, A3), source, work::add, Runnable::run, () -> told++);
  }

  /** Three blank pages of the paper, by another library's own hand. */
  private byte[] three(Paper paper, PrintCorrection c) throws IOException {
    asked.add(paper.id() + " " + c.measuredX() + " " + c.measuredY());
    try (PDDocument d = new PDDocument();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      double points = 72 / 25.4;
      for (int i = 0; i < 3; i++) {
        d.addPage(
            new PDPage(
                new PDRectangle(
                    (float) (paper.width() * points), (float) (paper.height() * points))));
      }
      d.save(out);
      return out.toByteArray();
    }
  }

  private void work() {
    while (!work.isEmpty()) {
      work.remove().run();
    }
  }

  @Test
  void nothing_is_made_before_a_page_is_looked_at() {
    PagePreview p = preview(this::three);
    assertThat(work).isEmpty();
    p.show(1);
    assertThat(asked).isEmpty();
    assertThat(p.state().busy()).isTrue();
    work();
    assertThat(asked).hasSize(1);
    assertThat(p.state().busy()).isFalse();
    assertThat(p.state().sentence()).isEqualTo("Page 1 of 3");
    // A4, ISO 216: 210 x 297 mm, at 150 dots an inch.
    Picture page = p.state().picture().orElseThrow();
    assertThat((double) page.width() / page.height()).isBetween(0.706, 0.708);
    assertThat(page.width()).isBetween(1239, 1241);
  }

  @Test
  void pages_are_turned_without_making_the_file_again() {
    PagePreview p = preview(this::three);
    p.show(1);
    work();
    p.previous();
    assertThat(work).isEmpty();
    p.next();
    work();
    p.next();
    work();
    p.next();
    assertThat(work).isEmpty();
    assertThat(p.state().sentence()).isEqualTo("Page 3 of 3");
    assertThat(asked).hasSize(1);
  }

  @Test
  void the_newest_wish_wins() {
    PagePreview p = preview(this::three);
    p.show(1);
    p.choose(A3);
    p.show(2);
    work();
    // A3, ISO 216: 297 x 420 mm. The wishes before it were never made.
    assertThat(asked).containsExactly("a3 100.0 100.0");
    assertThat(p.state().page()).isEqualTo(2);
    assertThat(p.state().picture().orElseThrow().width()).isBetween(1753, 1755);
  }

  @Test
  void a_correction_is_taken_as_typed_and_an_impossible_one_is_refused_in_words() {
    PagePreview p = preview(this::three);
    assertThat(p.measured("99.5 mm", "")).isEmpty();
    work();
    assertThat(asked).containsExactly("a4 99.5 100.0");
    assertThat(p.measured("50", "")).contains("outside 85 to 115");
    assertThat(p.measured("about 100", "")).contains("is not a length");
    assertThat(p.correction().measuredX()).isEqualTo(99.5);
    assertThat(work).isEmpty();
    assertThat(p.measured("99.5", "100")).isEmpty();
    assertThat(work).as("nothing has changed").isEmpty();
  }

  @Test
  void what_cannot_be_made_is_said_and_the_last_page_stays() {
    PagePreview p =
        preview(
            (paper, c) -> {
              if (paper.equals(A3)) {
                throw new InputRefused("", 0, "", "The paper is too small", "Take another");
              }
              return three(paper, c);
            });
    p.show(2);
    work();
    p.choose(A3);
    work();
    State s = p.state();
    assertThat(s.problem()).isEqualTo("The paper is too small. Take another");
    assertThat(s.picture()).isPresent();
    assertThat(s.busy()).isFalse();
    assertThat(s.page()).isEqualTo(2);
    p.choose(A4);
    work();
    assertThat(p.state().problem()).isEmpty();
  }

  @Test
  void a_fault_is_said_and_not_lost() {
    PagePreview p =
        preview(
            (paper, c) -> {
              throw new IllegalStateException("no font");
            });
    p.show(1);
    work();
    assertThat(p.state().problem()).isEqualTo("The pages could not be made: no font");
    assertThat(told).isEqualTo(2);
  }

  @Test
  void a_page_of_a_long_roll_does_not_fill_the_memory() {
    PagePreview p =
        preview(
            (paper, c) -> {
              try (PDDocument d = new PDDocument();
                  ByteArrayOutputStream out = new ByteArrayOutputStream()) {
                d.addPage(new PDPage(new PDRectangle(2592, 14_400)));
                d.save(out);
                return out.toByteArray();
              }
            });
    p.show(1);
    work();
    Picture page = p.state().picture().orElseThrow();
    assertThat((long) page.width() * page.height()).isBetween(7_000_000L, 8_100_000L);
    p.close();
    work();
    assertThat(p.state().picture()).isPresent();
  }
}
