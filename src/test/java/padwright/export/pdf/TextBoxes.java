package padwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import padwright.geometry.Bounds;

/** Where the words of a page stand, read back from it. */
final class TextBoxes {
  private TextBoxes() {}

  /** No level text lies over another or outside the printable page. */
  static void assertTidy(PDDocument d, int page, double width, double height) throws IOException {
    List<Bounds> words = words(d, page);
    assertThat(words).isNotEmpty();
    Bounds printable =
        new Bounds(Sheet.MARGIN, Sheet.MARGIN, width - Sheet.MARGIN, height - Sheet.MARGIN)
            .grown(0.01);
    for (int i = 0; i < words.size(); i++) {
      Bounds b = words.get(i);
      assertThat(printable.union(b)).isEqualTo(printable);
      for (int j = i + 1; j < words.size(); j++) {
        Bounds o = words.get(j).grown(-0.05);
        assertThat(b.overlaps(o)).as("%s and %s on page %d", b, o, page).isFalse();
      }
    }
  }

  /**
   * A box a shown string, from baseline to the top of its capitals, mm from the page's top left.
   * The stripper joins what stands on one line: a gap wider than a letter is high begins a new box.
   */
  static List<Bounds> words(PDDocument d, int page) throws IOException {
    List<Bounds> boxes = new ArrayList<>();
    PDFTextStripper s =
        new PDFTextStripper() {
          @Override
          protected void writeString(String text, List<TextPosition> at) {
            Bounds box = null;
            for (TextPosition t : at) {
              double mm = 25.4 / 72;
              if (t.getDir() != 0) {
                return;
              }
              double size = t.getFontSizeInPt() * mm;
              double x = t.getXDirAdj() * mm;
              double y = t.getYDirAdj() * mm;
              Bounds b = new Bounds(x, y - 0.7 * size, x + t.getWidthDirAdj() * mm, y);
              if (box != null && (x - box.maxX() > size || box.minX() - b.maxX() > size)) {
                boxes.add(box);
                box = null;
              }
              box = box == null ? b : box.union(b);
            }
            boxes.add(box);
          }
        };
    s.setStartPage(page);
    s.setEndPage(page);
    s.getText(d);
    return boxes;
  }
}
