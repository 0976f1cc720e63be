package padwright.desk.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import padwright.design.OutlineShape.Leg;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Treatment;
import padwright.desk.edit.PartEdit.Step;
import padwright.geometry.Vec2;
import padwright.measure.InputRefused;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;

/** Points and legs changed in a part, and what counts on them going along. */
class OutlineEditTest {
  private final PartEdit edit = new PartEdit(Shipped.READER, Units.MM);
  private final WrappedPad bench = Shipped.demo("corner-bench");
  private final WrappedPad seat = Shipped.demo("window-seat");

  private OutlineEdit of(WrappedPad pad) {
    return new OutlineEdit(edit, pad);
  }

  private List<Vec2> points(WrappedPad pad) {
    return of(pad).path().points().stream().map(p -> p.at()).toList();
  }

  /** The bench's box is 900 x 820; with its right end 100 further its middle is 50 further. */
  @Test
  void whatIsOnTheBoardStaysWhereItIsWhenAPointMoves() {
    WrappedPad holed =
        edit.with(
            bench, Step.put("base.holes", List.of(Map.of("x", -300, "y", -200, "diameter", 12))));
    WrappedPad moved = of(of(holed).moved(1, new Vec2(1000, 0))).moved(2, new Vec2(1000, 360));
    assertThat(points(moved).subList(1, 3)).containsExactly(new Vec2(1000, 0), new Vec2(1000, 360));
    assertThat(moved.base().holes().get(0).x()).isEqualTo(-350);
    assertThat(moved.base().holes().get(0).y()).isEqualTo(-200);
    Vec2 before = OutlineEdit.middle(holed.base().outline());
    Vec2 after = OutlineEdit.middle(moved.base().outline());
    assertThat(before).isEqualTo(new Vec2(450, 410));
    assertThat(after).isEqualTo(new Vec2(500, 410));
  }

  @Test
  void anOutlineThatWouldCrossItselfIsRefusedInWords() {
    assertThatThrownBy(() -> of(bench).moved(1, new Vec2(200, 900)))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("cross or touch")
        .hasMessageContaining("base.outline.path");
    assertThatThrownBy(() -> of(bench).moved(1, new Vec2(0, 0))).isInstanceOf(InputRefused.class);
  }

  @Test
  void aRunsSidesAreCountedAnewWhenAPointComesOrGoes() {
    assertThat(seat.runs().get(0).sides()).containsExactly("side 2", "side 4");
    WrappedPad early = of(seat).split(0, 0.5);
    assertThat(early.runs().get(0).sides()).containsExactly("side 3", "side 5");
    WrappedPad within = of(seat).split(1, 0.5);
    assertThat(within.runs().get(0).sides()).containsExactly("side 2", "side 3", "side 5");
    assertThat(of(within).without(2)).isEqualTo(seat);
    assertThat(of(early).without(1)).isEqualTo(seat);
    // Side 2 goes with its point into side 1, which is in no run.
    assertThat(of(seat).without(1).runs().get(0).sides()).containsExactly("side 3");
    // The first point: side 4 goes on to what was the second.
    assertThat(of(seat).without(0).runs().get(0).sides()).containsExactly("side 1", "side 3");
  }

  @Test
  void cornersStayOnTheirPoints() {
    WrappedPad each =
        edit.with(
            seat,
            Step.put(
                "corners.each", List.of("single pleat", "double pleat", "auto", "single pleat")),
            Step.remove("corners.treatment"));
    WrappedPad more = of(each).split(1, 0.5);
    assertThat(more.corners().treatments())
        .containsExactly(
            Treatment.SINGLE_PLEAT,
            Treatment.DOUBLE_PLEAT,
            Treatment.AUTO,
            Treatment.AUTO,
            Treatment.SINGLE_PLEAT);
    assertThat(of(more).without(2)).isEqualTo(each);
    assertThat(of(each).without(0).corners().treatments())
        .containsExactly(Treatment.DOUBLE_PLEAT, Treatment.AUTO, Treatment.SINGLE_PLEAT);
  }

  @Test
  void aTriangleKeepsItsPoints() {
    WrappedPad three = of(seat).without(0);
    assertThatThrownBy(() -> of(three).without(0))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("enclose nothing");
  }

  /** Over a chord of 900 an arc of radius 900 rises by 900 - sqrt(900^2 - 450^2) = 120.577. */
  @Test
  void aLegTakesARadiusOrALength() {
    WrappedPad arc = of(bench).radius(0, 900);
    double bulge = ((Leg.Arc) of(arc).path().points().get(0).leg()).bulge();
    assertThat(bulge * 450).isCloseTo(120.577, within(0.001));
    assertThat(of(arc).straight(0)).isEqualTo(bench);
    // A leg that bows in keeps bowing in.
    WrappedPad in = of(bench).bent(0, new Vec2(450, 60), 1);
    WrappedPad wider = of(in).radius(0, 3000);
    assertThat(((Leg.Arc) of(wider).path().points().get(0).leg()).bulge()).isNegative();
    assertThatThrownBy(() -> of(bench).radius(0, 449))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("at least 450");
    WrappedPad longer = of(bench).length(0, 950);
    assertThat(points(longer).get(1)).isEqualTo(new Vec2(950, 0));
    assertThat(points(longer).get(0)).isEqualTo(new Vec2(0, 0));
  }

  @Test
  void sizesMustBecomePointsBeforePointsCanMove() {
    assertThatThrownBy(() -> of(Shipped.demo("desk-rest")).moved(0, Vec2.ZERO))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("draw it by its points");
  }

  /** Whatever has the size of its board comes out the same by its points: base, blank, findings. */
  @Test
  void aBoardByItsPointsIsMadeTheSame() {
    PatternEngine engine = new PatternEngine(Shipped.CATALOGUE);
    int turned = 0;
    for (WrappedPad shipped : Shipped.all()) {
      // Of a finished size the folds at a drawn corner count on every side, not on two.
      WrappedPad pad =
          edit.with(
              shipped,
              Step.remove("base.size"),
              Step.remove("base.sides"),
              Step.remove("base.clearance"));
      WrappedPad drawn = of(pad).byPoints();
      if (drawn.equals(pad)) {
        continue;
      }
      turned++;
      PartResult a = engine.run(pad);
      PartResult b = engine.run(drawn);
      double board = a.shape().outline().area();
      double blank = a.cover().cut().area();
      assertThat(b.shape().outline().area()).as(pad.id()).isCloseTo(board, within(1e-6 * board));
      assertThat(b.cover().cut().area()).as(pad.id()).isCloseTo(blank, within(1e-6 * blank));
      assertThat(rules(b)).as(pad.id()).isEqualTo(rules(a));
    }
    assertThat(turned).isGreaterThan(8);
  }

  private static List<String> rules(PartResult r) {
    return r.findings().stream().map(f -> f.rule() + f.level()).distinct().sorted().toList();
  }

  @Test
  void runsOfNamedSidesAreTheSameSidesByNumber() {
    WrappedPad pad = Shipped.demo("reading-chair");
    WrappedPad square =
        edit.with(
            pad,
            Step.put("base.outline", Map.of("rectangle", Map.of("length", 400, "width", 380))),
            Step.remove("base.sides"),
            Step.put("runs", List.of(Map.of("sides", List.of("front", "left"), "turnUnder", 25))));
    assertThat(of(square).byPoints().runs().get(0).sides()).containsExactly("side 1", "side 4");
    WrappedPad rounded = edit.with(square, Step.mm("base.outline.rectangle.radius", 40));
    // Front, corner, right, corner, back, corner, left, corner: the corners keep to the rest.
    assertThat(of(rounded).byPoints().runs().get(0).sides()).containsExactly("side 1", "side 7");
    PartField outline = PartFields.at(rounded, Shipped.CATALOGUE, "base.outline").orElseThrow();
    assertThat(edit.typed(rounded, outline, "path")).isEqualTo(of(rounded).byPoints());
  }
}
