package padwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import padwright.export.Drawing;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.measure.InputRefused;

class TrueLengthTest {
  @Test
  void lengths_read_back_from_the_page_equal_the_drawings_to_a_hundredth() throws IOException {
    Random r = new Random(7);
    for (int i = 0; i < 40; i++) {
      double radius = 5 + 300 * r.nextDouble();
      double w = 20 + 900 * r.nextDouble();
      double h = 20 + 600 * r.nextDouble();
      Drawing d =
          Samples.of(
              "Lengths",
              new Stroke(Path.circle(new Vec2(3, 4), radius), LineStyle.CUT),
              new Stroke(Samples.rectangle(w, h), LineStyle.FOLD));
      try (PDDocument pdf = ReadBack.open(List.of(d), Samples.ROLL, PrintCorrection.none())) {
        List<Double> lengths =
            ReadBack.lines(pdf.getPage(0)).stream().map(ReadBack.Line::length).toList();
        assertThat(lengths).anyMatch(l -> Math.abs(l - 2 * Math.PI * radius) < 0.01);
        assertThat(lengths).anyMatch(l -> Math.abs(l - 2 * (w + h)) < 0.01);
      }
    }
  }

  @Test
  void an_arc_as_curves_stays_within_a_thousandth_of_its_circle() {
    Random r = new Random(11);
    for (int i = 0; i < 200; i++) {
      double radius = Math.pow(10, 4 * r.nextDouble());
      double sweep = (r.nextDouble() - 0.5) * 6.2;
      Vec2 centre = new Vec2(100 * r.nextDouble(), -50);
      Segment arc = Segment.arc(centre, radius, 1, 1 + sweep);
      for (Bezier b : Bezier.of(arc)) {
        for (double t = 0; t <= 1; t += 0.05) {
          double u = 1 - t;
          Vec2 p =
              b.from()
                  .times(u * u * u)
                  .plus(b.c1().times(3 * u * u * t))
                  .plus(b.c2().times(3 * u * t * t))
                  .plus(b.to().times(t * t * t));
          assertThat(p.distance(centre)).isCloseTo(radius, within(0.001));
        }
      }
    }
  }

  @Test
  void a_correction_stretches_each_axis_of_the_paper_by_itself() throws IOException {
    Drawing square = Samples.of("Square", new Stroke(Samples.rectangle(120, 120), LineStyle.CUT));
    try (PDDocument pdf =
        ReadBack.open(List.of(square), Samples.A4, new PrintCorrection(98, 101))) {
      ReadBack.Line cut =
          ReadBack.lines(pdf.getPage(0)).stream()
              .filter(l -> l.points().size() == 5 && l.length() > 400)
              .findFirst()
              .orElseThrow();
      // A printer that shrinks 100 to 98 must be given 100/98 of the length.
      assertThat(cut.bounds().width()).isCloseTo(120 / 0.98, within(0.001));
      assertThat(cut.bounds().height()).isCloseTo(120 / 1.01, within(0.001));
    }
  }

  @Test
  void a_page_that_is_read_lying_is_corrected_along_the_same_axes_of_the_paper()
      throws IOException {
    Drawing wide = Samples.of("Wide", new Stroke(Samples.rectangle(240, 120), LineStyle.CUT));
    try (PDDocument pdf = ReadBack.open(List.of(wide), Samples.A4, new PrintCorrection(98, 101))) {
      assertThat(pdf.getNumberOfPages()).isEqualTo(1);
      assertThat(pdf.getPage(0).getRotation()).isEqualTo(90);
      ReadBack.Line cut =
          ReadBack.lines(pdf.getPage(0)).stream()
              .filter(l -> l.points().size() == 5 && l.length() > 600)
              .findFirst()
              .orElseThrow();
      // Filed upright: the piece's length lies along the paper's long side.
      assertThat(cut.bounds().height()).isCloseTo(240 / 1.01, within(0.001));
      assertThat(cut.bounds().width()).isCloseTo(120 / 0.98, within(0.001));
    }
  }

  @Test
  void a_measure_that_no_printer_gives_is_refused_with_the_value() {
    assertThatThrownBy(() -> new PrintCorrection(71, 100))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("71.0")
        .hasMessageContaining("across the paper");
    assertThatThrownBy(() -> new PrintCorrection(100, Double.NaN))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("along the paper");
  }

  @Test
  void a_paper_too_small_for_the_check_lines_is_refused() {
    assertThatThrownBy(() -> new Sheet(105, 148, false, PrintCorrection.none()))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("105 x 148");
  }
}
