package padwright.desk.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;

class ViewportTest {
  private static final double EXACT = 1e-9;
  private static final Bounds PIECE = new Bounds(-300, -30, 300, 30);

  @Test
  void a_place_comes_back_from_the_screen_as_it_was() {
    long seed = 20260314;
    Random random = new Random(seed);
    for (int i = 0; i < 2000; i++) {
      double scale =
          Viewport.LEAST_SCALE
              * Math.pow(Viewport.MOST_SCALE / Viewport.LEAST_SCALE, random.nextDouble());
      Viewport v =
          new Viewport(
              scale, random.nextDouble() * 4000 - 2000, random.nextDouble() * 4000, 500, 350);
      Vec2 p = new Vec2(random.nextDouble() * 2000 - 1000, random.nextDouble() * 2000 - 1000);
      assertThat(v.toDrawing(v.toScreen(p)).distance(p)).as("seed " + seed).isLessThan(EXACT);
    }
  }

  @Test
  void fitted_a_drawing_lies_in_the_middle_with_its_margin() {
    // 600 mm into 620 - 2 x 10 points: a point a mm, so the ends are 10 points from the edges.
    Viewport v = Viewport.fit(PIECE, 620, 400, 10);
    assertThat(v.scale()).isCloseTo(1, within(EXACT));
    assertThat(v.toScreen(new Vec2(-300, 0)).x()).isCloseTo(10, within(EXACT));
    assertThat(v.toScreen(new Vec2(300, 0)).x()).isCloseTo(610, within(EXACT));
    assertThat(v.toScreen(new Vec2(0, 30)).y()).isCloseTo(170, within(EXACT));
  }

  @Test
  void up_in_the_drawing_is_up_on_the_screen() {
    Viewport v = Viewport.fit(PIECE, 620, 400, 10);
    assertThat(v.toScreen(new Vec2(0, 30)).y()).isLessThan(v.toScreen(new Vec2(0, -30)).y());
  }

  @Test
  void what_lies_under_the_pointer_stays_there_when_zoomed() {
    Vec2 pointer = new Vec2(123, 77);
    Viewport v = Viewport.fit(PIECE, 500, 350, 12);
    Vec2 under = v.toDrawing(pointer);
    for (double factor : new double[] {1.5, 3, 0.2, 1e9, 1e-9}) {
      v = v.zoomed(pointer, factor);
      assertThat(v.toDrawing(pointer).distance(under)).isLessThan(1e-6);
    }
  }

  @Test
  void zooming_ends_at_its_limits() {
    Viewport v = Viewport.fit(PIECE, 500, 350, 12);
    assertThat(v.zoomed(Vec2.ZERO, 1e9).scale()).isEqualTo(Viewport.MOST_SCALE);
    assertThat(v.zoomed(Vec2.ZERO, 1e-9).scale()).isEqualTo(Viewport.LEAST_SCALE);
  }

  @Test
  void a_drawing_cannot_be_lost_by_moving_it() {
    Viewport v = Viewport.fit(PIECE, 500, 350, 12);
    Viewport away = v.panned(1e6, -1e6).holding(PIECE, 20);
    // The left end is 20 points inside the right edge, the lower edge 20 below the top.
    assertThat(away.toScreen(new Vec2(-300, 0)).x()).isCloseTo(480, within(1e-6));
    assertThat(away.toScreen(new Vec2(0, -30)).y()).isCloseTo(20, within(1e-6));
    assertThat(v.holding(PIECE, 20)).isSameAs(v);
  }

  @Test
  void another_size_of_the_window_keeps_its_middle() {
    Viewport v = Viewport.fit(PIECE, 500, 350, 12).zoomed(new Vec2(50, 60), 3);
    Vec2 middle = v.visible().centre();
    assertThat(v.resized(1920, 1080).visible().centre().distance(middle)).isLessThan(EXACT);
  }

  @Test
  void a_place_out_of_view_is_brought_in_by_the_shortest_way() {
    // One point a mm, the origin in the upper left corner: x 700 lies 200 beyond the right edge.
    Viewport v = new Viewport(1, 0, 0, 500, 350);
    Viewport seen = v.revealing(Bounds.of(new Vec2(700, -100)), 40);
    assertThat(seen.scale()).isEqualTo(1);
    assertThat(seen.toScreen(new Vec2(700, -100))).isEqualTo(new Vec2(460, 100));
    assertThat(v.revealing(Bounds.of(new Vec2(100, -100)), 40)).isSameAs(v);
  }

  @Test
  void what_is_larger_than_the_view_is_made_smaller_to_be_seen_whole() {
    Viewport seen = new Viewport(10, 0, 0, 500, 350).revealing(PIECE, 40);
    Bounds visible = seen.visible();
    assertThat(visible.minX()).isLessThan(-300);
    assertThat(visible.maxX()).isGreaterThan(300);
  }

  @Test
  void a_view_of_no_scale_is_refused() {
    assertThatThrownBy(() -> new Viewport(0, 0, 0, 10, 10))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Viewport(Double.NaN, 0, 0, 10, 10))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_window_without_room_and_a_drawing_of_one_point_still_make_a_view() {
    Viewport v = Viewport.fit(Bounds.of(new Vec2(3, 4)), 0, 0, 12);
    assertThat(v.toDrawing(v.toScreen(new Vec2(3, 4))).distance(new Vec2(3, 4))).isLessThan(EXACT);
  }
}
