package padwright.desk.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import padwright.desk.view.Painting.Ink;
import padwright.desk.view.Painting.Shown;
import padwright.desk.view.Painting.Tone;
import padwright.desk.view.Painting.Word;
import padwright.export.Drawing;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.Fill;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Lines;
import padwright.export.Drawing.Stroke;
import padwright.export.Drawing.Text;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

class PaintingTest {
  private static final Bounds SHEET = new Bounds(0, 0, 400, 300);

  private static List<Shown> shown(Viewport view, Item... items) {
    return Painting.of(new Drawing("t", SHEET, List.of(items)), view.scale()).in(view);
  }

  private static Viewport at(double scale) {
    return Viewport.fit(SHEET, 400 * scale, 300 * scale, 0);
  }

  private static Stroke stroke(LineStyle style, double x) {
    return new Stroke(Path.line(new Vec2(x, 10), new Vec2(x + 50, 10)), style);
  }

  private static Text text(double height) {
    return new Text(new Vec2(100, 100), height, 0, Anchor.START, false, "Cover");
  }

  @Test
  void lines_of_one_style_are_one_stroke_and_the_order_stays() {
    List<Shown> s =
        shown(
            at(1),
            stroke(LineStyle.CUT, 10),
            stroke(LineStyle.CUT, 80),
            new Fill(Path.circle(new Vec2(200, 100), 5), 0.5),
            stroke(LineStyle.FOLD, 10));
    assertThat(s).hasSize(3);
    assertThat(((Ink) s.get(0)).runs()).hasSize(2);
    assertThat(((Tone) s.get(1)).grey()).isEqualTo(0.5);
    assertThat(((Ink) s.get(2)).pen().style()).isEqualTo(LineStyle.FOLD);
  }

  @Test
  void what_lies_outside_the_view_is_left_out() {
    // The left 100 mm of the sheet alone: x 0 to 100.
    Viewport left = new Viewport(4, 0, 1200, 400, 1200);
    List<Shown> s =
        shown(
            left,
            stroke(LineStyle.CUT, 10),
            stroke(LineStyle.CUT, 101),
            new Fill(Path.circle(new Vec2(300, 100), 5), 0),
            new Text(new Vec2(300, 100), 5, 0, Anchor.START, false, "far"));
    assertThat(s).hasSize(1);
    assertThat(((Ink) s.get(0)).runs()).hasSize(1);
  }

  @Test
  void a_line_just_beyond_the_edge_is_painted_where_its_width_reaches_in() {
    // FRONT is 4.8 points wide at this scale: at x 100.3, 1.8 points out, its edge is in the view.
    Viewport left = new Viewport(6, 0, 1800, 600, 1800);
    Stroke upright =
        new Stroke(Path.line(new Vec2(100.3, 10), new Vec2(100.3, 50)), LineStyle.FRONT);
    assertThat(shown(left, upright)).hasSize(1);
  }

  @Test
  void words_too_small_to_read_are_left_out_and_come_back_when_zoomed() {
    // 3.5 mm letters are 5 points high at 10 / 7 points a mm.
    assertThat(shown(at(1.42), text(3.5))).isEmpty();
    assertThat(shown(at(1.43), text(3.5))).hasOnlyElementsOfType(Word.class).hasSize(1);
    assertThat(shown(at(1), text(6))).hasSize(1);
  }

  @Test
  void a_legend_without_its_words_is_left_out_too() {
    Item sample = new Stroke(Path.line(Vec2.ZERO, new Vec2(20, 0)), LineStyle.FOLD, true);
    Item leader = stroke(LineStyle.LEADER, 10);
    assertThat(shown(at(1), sample, leader)).isEmpty();
    assertThat(shown(at(2), sample, leader)).hasSize(2);
  }

  @Test
  void an_arc_is_within_a_tenth_of_a_point_of_its_chords_at_every_scale() {
    for (double scale : new double[] {0.05, 0.7, 1, 3.9, 79}) {
      Viewport v = new Viewport(scale, 0, 0, 1e5, 1e5);
      Painting p =
          Painting.of(
              new Drawing(
                  "t",
                  SHEET,
                  List.of(new Stroke(Path.circle(new Vec2(160, -160), 160), LineStyle.CUT))),
              scale);
      assertThat(p.suits(scale)).isTrue();
      Run run = ((Ink) p.in(v).get(0)).runs().get(0);
      for (int i = 0; i < run.count(); i++) {
        int j = (i + 1) % run.count();
        Vec2 middle =
            new Vec2((run.x(i) + run.x(j)) / 2, (run.y(i) + run.y(j)) / 2)
                .minus(new Vec2(160, -160));
        assertThat((160 - middle.length()) * scale).isBetween(-1e-9, 0.1);
      }
    }
  }

  @Test
  void chords_do_not_suit_a_much_larger_scale() {
    Painting p = Painting.of(new Drawing("t", SHEET, List.of(text(5))), 1.5);
    assertThat(p.suits(1.9)).isTrue();
    assertThat(p.suits(2.1)).isFalse();
    assertThat(p.suits(0.1)).isFalse();
  }

  @Test
  void no_line_is_under_a_point_or_thick_as_a_felt_pen() {
    for (LineStyle style : LineStyle.values()) {
      for (double scale : new double[] {0.02, 0.5, 1, 3.78, 10, 80}) {
        Pen pen = Pen.of(style, scale);
        assertThat(pen.width()).isBetween(1.0, 5.0);
        assertThat(pen.strength()).isBetween(0.3, 1.0);
        double[] d = pen.dashes();
        for (int i = 1; i < d.length; i += 2) {
          assertThat(d[i]).as("gap of " + style).isGreaterThanOrEqualTo(2);
        }
      }
    }
  }

  @Test
  void dashed_styles_of_a_piece_stay_apart_at_every_scale() {
    List<LineStyle> dashed = new ArrayList<>();
    for (LineStyle s : LineStyle.values()) {
      if (s.dashes().length > 0) {
        dashed.add(s);
      }
    }
    for (double scale : new double[] {0.1, 1, 6, 80}) {
      for (LineStyle a : dashed) {
        for (LineStyle b : dashed) {
          if (a != b) {
            assertThat(apart(Pen.of(a, scale), Pen.of(b, scale))).as(a + " " + b).isTrue();
          }
        }
      }
    }
  }

  /** Another number of dashes, or one dash or gap longer by a third at least. */
  private static boolean apart(Pen a, Pen b) {
    double[] d = a.dashes();
    double[] e = b.dashes();
    if (d.length != e.length) {
      return true;
    }
    for (int i = 0; i < d.length; i++) {
      if (Math.max(d[i], e[i]) / Math.min(d[i], e[i]) > 1.33) {
        return true;
      }
    }
    return false;
  }

  @Test
  void a_pen_in_between_is_as_on_paper() {
    // FOLD is 0.2 wide with dashes of 4 and 2 mm; five points a mm.
    Pen pen = Pen.of(LineStyle.FOLD, 5);
    assertThat(pen.width()).isCloseTo(1, within(1e-12));
    assertThat(pen.dashes()).containsExactly(20, 10);
  }

  @Test
  void a_hatching_of_thousands_of_lines_is_one_stroke() {
    double[] ends = new double[4 * 5000];
    for (int i = 0; i < 5000; i++) {
      ends[4 * i] = i % 400;
      ends[4 * i + 1] = 10;
      ends[4 * i + 2] = i % 400 + 5;
      ends[4 * i + 3] = 20;
    }
    List<Shown> s = shown(at(1), new Lines(ends, LineStyle.HATCH, false));
    assertThat(s).hasSize(1);
    assertThat(((Ink) s.get(0)).runs()).hasSize(5000);
    assertThat(((Ink) s.get(0)).pen().strength()).isLessThan(1);
  }
}
