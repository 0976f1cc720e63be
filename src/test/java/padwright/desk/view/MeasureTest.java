package padwright.desk.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import padwright.design.Units;
import padwright.desk.view.Measure.Kind;
import padwright.desk.view.Measure.Measured;
import padwright.desk.view.Measure.Place;
import padwright.export.Drawing;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Lines;
import padwright.export.Drawing.Stroke;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

class MeasureTest {
  private static final double REACH = 3;

  /** A board of 100 x 60 with a staple along its lower edge and a hole. */
  private static final Measure BOARD =
      Measure.of(
          drawing(
              new Stroke(Path.polygon(v(0, 0), v(100, 0), v(100, 60), v(0, 60)), LineStyle.CUT),
              new Stroke(Path.line(v(27, 8), v(33, 8)), LineStyle.STAPLE_BODY),
              new Stroke(Path.circle(v(70, 40), 10), LineStyle.INNER_CUT),
              new Stroke(Path.line(v(40, 30), v(50, 30)), LineStyle.CUT, true),
              new Lines(new double[] {10, 20, 20, 30}, LineStyle.HATCH, false)));

  private static Vec2 v(double x, double y) {
    return new Vec2(x, y);
  }

  static Drawing drawing(Item... items) {
    return new Drawing("Board", new Bounds(-5, -5, 105, 65), List.of(items));
  }

  @Test
  void three_by_four_is_five() {
    // Euclid I.47: 30, 40 and 50.
    Measured m = Measure.between(v(10, 50), v(50, 20));
    assertThat(m.distance()).isCloseTo(50, within(1e-12));
    assertThat(m.across()).isEqualTo(40);
    assertThat(m.up()).isEqualTo(-30);
    assertThat(m.sentence(Units.MM)).isEqualTo("50.0 mm: 40.0 mm across, 30.0 mm up or down");
  }

  @Test
  void inches_are_said_as_on_a_rule() {
    // 76.2, 101.6 and 127 mm are 3, 4 and 5 inches of 25.4 mm.
    assertThat(Measure.between(v(0, 0), v(76.2, 101.6)).sentence(Units.INCH))
        .isEqualTo("5 in: 3 in across, 4 in up or down");
  }

  @Test
  void a_corner_is_meant_by_a_point_near_it() {
    assertThat(BOARD.snap(v(98.5, 1), REACH)).isEqualTo(new Place(v(100, 0), Kind.CORNER));
  }

  @Test
  void a_staple_is_its_middle() {
    assertThat(BOARD.snap(v(31, 9), REACH)).isEqualTo(new Place(v(30, 8), Kind.STAPLE));
  }

  @Test
  void the_middle_of_a_side_is_meant_near_it() {
    assertThat(BOARD.snap(v(49, 61), REACH)).isEqualTo(new Place(v(50, 60), Kind.MIDDLE));
  }

  @Test
  void a_hole_is_measured_from_its_centre() {
    Place p = BOARD.snap(v(71, 41), REACH);
    assertThat(p.kind()).isEqualTo(Kind.CENTRE);
    assertThat(p.at().distance(v(70, 40))).isLessThan(1e-9);
  }

  @Test
  void elsewhere_on_a_line_the_nearest_point_of_it_is_meant() {
    assertThat(BOARD.snap(v(20, 1.5), REACH)).isEqualTo(new Place(v(20, 0), Kind.ON_LINE));
    // On the circle, straight right of its centre: its own formula says (80, 40).
    Place p = BOARD.snap(v(81, 40), REACH);
    assertThat(p.kind()).isEqualTo(Kind.ON_LINE);
    assertThat(p.at().distance(v(80, 40))).isLessThan(1e-9);
  }

  @Test
  void a_place_with_a_name_goes_before_a_nearer_line() {
    assertThat(BOARD.snap(v(2.5, 0.1), REACH).kind()).isEqualTo(Kind.CORNER);
  }

  @Test
  void out_of_reach_the_point_itself_is_meant() {
    assertThat(BOARD.snap(v(50, 20), REACH)).isEqualTo(new Place(v(50, 20), Kind.FREE));
  }

  @Test
  void samples_of_a_legend_and_hatchings_are_no_places() {
    assertThat(BOARD.snap(v(40, 30), REACH).kind()).isEqualTo(Kind.FREE);
    assertThat(BOARD.snap(v(10, 20), 1).kind()).isEqualTo(Kind.FREE);
  }

  @Test
  void where_a_line_runs_on_into_an_arc_is_an_end_and_no_corner() {
    // A slot: two lines of 20 joined by half circles of radius 5 that run on from them.
    Path slot =
        new Path(
            List.of(
                Segment.line(v(0, 0), v(20, 0)),
                Segment.arc(v(20, 5), 5, -Math.PI / 2, Math.PI / 2),
                Segment.line(v(20, 10), v(0, 10)),
                Segment.arc(v(0, 5), 5, Math.PI / 2, 3 * Math.PI / 2)),
            true);
    Measure m = Measure.of(drawing(new Stroke(slot, LineStyle.INNER_CUT)));
    assertThat(m.snap(v(20, 0.5), 1).kind()).isEqualTo(Kind.END);
    assertThat(m.snap(v(25.2, 5), 1).kind()).isEqualTo(Kind.MIDDLE);
    assertThat(m.places()).noneMatch(p -> p.kind() == Kind.CORNER);
  }

  @Test
  void by_keys_alone_the_board_is_measured_from_corner_to_corner() {
    Measuring hand = new Measuring(BOARD, v(1, 59), REACH);
    assertThat(hand.sentence(Units.MM)).isEqualTo("Measure: set the first point (corner)");
    hand.set();
    hand.jump(true); // along the top row: the middle of the side
    assertThat(hand.meant().kind()).isEqualTo(Kind.MIDDLE);
    hand.jump(true);
    hand.set();
    assertThat(hand.measured().orElseThrow().distance()).isEqualTo(100);
    assertThat(hand.sentence(Units.MM)).isEqualTo("100.0 mm: 100.0 mm across, 0.0 mm up or down");
    hand.jump(false);
    hand.jump(false);
    assertThat(hand.meant().at()).isEqualTo(v(0, 60));
  }

  @Test
  void a_third_point_begins_anew() {
    Measuring hand = new Measuring(BOARD, v(0, 0), REACH);
    hand.set();
    hand.moveTo(v(100, 0), REACH);
    hand.set();
    hand.moveTo(v(100, 60), REACH);
    assertThat(hand.measured().orElseThrow().distance()).isEqualTo(100);
    hand.set();
    assertThat(hand.first().orElseThrow().at()).isEqualTo(v(100, 60));
    assertThat(hand.second()).isEmpty();
  }

  @Test
  void the_round_of_places_ends_where_it_began() {
    Measuring hand = new Measuring(BOARD, v(0, 60), REACH);
    Place start = hand.meant();
    for (int i = 0; i < BOARD.places().size(); i++) {
      hand.jump(true);
    }
    assertThat(hand.meant()).isEqualTo(start);
  }
}
