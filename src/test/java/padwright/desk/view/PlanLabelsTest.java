package padwright.desk.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import padwright.design.Finding;
import padwright.design.Finding.Level;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.desk.edit.PartEdit;
import padwright.desk.edit.PartEdit.Step;
import padwright.desk.edit.PlanItem;
import padwright.desk.edit.Shipped;
import padwright.desk.view.PlanLabels.Label;
import padwright.desk.view.PlanLabels.Letters;
import padwright.geometry.Bounds;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/** Where the words of a plan stand, and what findings it shows. */
class PlanLabelsTest {
  /** Every letter 6.5 points wide on lines of 15: a usual sans of 12 points. */
  private static final Letters LETTERS = new Letters(15, words -> 6.5 * words.length());

  private static final double WIDE = 530;
  private static final double HIGH = 200;

  private final PartEdit edit = new PartEdit(Shipped.READER, Units.MM);

  private static List<Label> labels(PlanModel plan, double wide, double high) {
    Viewport view = PlanLabels.fit(plan, wide, high, LETTERS);
    return PlanLabels.of(plan, view, LETTERS, "", List.of());
  }

  private static List<String> first(List<Label> labels) {
    return labels.stream().map(l -> l.lines().get(0)).toList();
  }

  @Test
  void everySideOfTheDemosPlansSaysItsNameAndLength() {
    List<Label> seat = labels(new PlanModel(Shipped.demo("window-seat"), Units.MM), WIDE, HIGH);
    // Sides 2 and 4 run 140 across and 380 back: 404.97.
    assertThat(first(seat))
        .contains("side 1: 1180", "side 2: 405", "side 3: 900", "side 4: 405", "1", "2", "3", "4");
    assertThat(seat)
        .filteredOn(l -> l.of().equals("side 2"))
        .singleElement()
        .satisfies(l -> assertThat(l.lines()).endsWith("turn-under 35"));
    assertThat(first(labels(new PlanModel(Shipped.demo("corner-bench"), Units.MM), WIDE, HIGH)))
        .contains("side 1: 900", "side 3: 520", "side 4: 460", "side 6: 820");
    assertThat(first(labels(new PlanModel(Shipped.demo("booth-back"), Units.MM), WIDE, HIGH)))
        // Bulge 0.15 over 760: radius 380 x (1 + 0.15^2) / 0.3 = 1295.17; 4 atan 0.15 of it long.
        .contains("side 3: 771.3, R 1295.2", "cut-out 1");
  }

  @Test
  void roundOutlinesSayTheirSizeOnce() {
    assertThat(first(labels(new PlanModel(Shipped.demo("stool-top"), Units.MM), WIDE, HIGH)))
        .contains("diameter 320")
        .noneMatch(w -> w.contains("R "));
    WrappedPad oval =
        edit.with(
            Shipped.demo("stool-top"),
            Step.put("base.outline", Map.of("ellipse", Map.of("length", 400, "width", 300))));
    assertThat(first(labels(new PlanModel(oval, Units.MM), WIDE, HIGH))).contains("400 by 300");
  }

  @Test
  void aRoundedCornerSaysItsRadius() {
    WrappedPad rounded =
        edit.with(Shipped.demo("wall-panel"), Step.mm("base.outline.rectangle.radius", 60));
    assertThat(first(labels(new PlanModel(rounded, Units.MM), WIDE, 300)))
        .contains("front: 480", "right: 280", "R 60");
  }

  /** 1180 mm are 46.457 in: 46 15/32 to the nearest 32nd. */
  @Test
  void anInchJobsPlanHasFractionsOfAnInch() {
    assertThat(first(labels(new PlanModel(Shipped.demo("window-seat"), Units.INCH), WIDE, HIGH)))
        .contains("side 1: 46 15/32 in");
  }

  @Test
  void cornersThatDifferSayHow() {
    WrappedPad each =
        edit.with(
            Shipped.demo("window-seat"),
            Step.put(
                "corners.each", List.of("single pleat", "double pleat", "auto", "single pleat")),
            Step.remove("corners.treatment"));
    assertThat(first(labels(new PlanModel(each, Units.MM), 900, 500)))
        .contains("1: single pleat", "2: double pleat", "3: auto", "4: single pleat");
    WrappedPad chair =
        edit.with(
            Shipped.demo("reading-chair"),
            Step.put(
                "corners.each", List.of("single pleat", "double pleat", "auto", "single pleat")),
            Step.remove("corners.treatment"));
    assertThat(first(labels(new PlanModel(chair, Units.MM), 900, 500)))
        .contains("single pleat", "double pleat", "auto");
  }

  /** The check follows every line in steps of half a point; the labels ask boxes and slabs. */
  @Test
  void noWordsOverlapEachOtherTheOutlineOrTheEdgeOfTheView() {
    for (WrappedPad pad : Shipped.all()) {
      PlanModel plan = new PlanModel(pad, Units.MM);
      for (double[] size : new double[][] {{WIDE, HIGH}, {300, 150}, {900, 600}}) {
        Viewport view = PlanLabels.fit(plan, size[0], size[1], LETTERS);
        List<Label> labels = PlanLabels.of(plan, view, LETTERS, "", List.of());
        for (int i = 0; i < labels.size(); i++) {
          Bounds box = labels.get(i).box();
          String what = pad.id() + " " + labels.get(i);
          for (int j = 0; j < i; j++) {
            assertThat(box.overlaps(labels.get(j).box())).as(what).isFalse();
          }
          assertThat(box.minX() >= 0 && box.maxX() <= size[0]).as(what).isTrue();
          assertThat(box.minY() >= 0 && box.maxY() <= size[1]).as(what).isTrue();
          for (PlanModel.Leg leg : plan.legs()) {
            for (Segment s : leg.way()) {
              int steps = 1 + (int) (2 * s.length() * view.scale());
              for (int k = 0; k <= steps; k++) {
                Vec2 on = view.toScreen(s.pointAt((double) k / steps));
                assertThat(box.grown(-0.5).contains(on)).as(what).isFalse();
              }
            }
          }
        }
      }
    }
  }

  @Test
  void whereThereIsNoRoomNothingIsSaid() {
    PlanModel plan = new PlanModel(Shipped.demo("corner-bench"), Units.MM);
    assertThat(labels(plan, 60, 40)).isEmpty();
    Viewport view = PlanLabels.fit(plan, WIDE, HIGH, LETTERS);
    List<Bounds> all = List.of(new Bounds(0, 0, WIDE, HIGH));
    assertThat(PlanLabels.of(plan, view, LETTERS, "", all)).isEmpty();
  }

  @Test
  void whatIsChosenIsPlacedFirst() {
    PlanModel plan = new PlanModel(Shipped.demo("window-seat"), Units.MM);
    Viewport view = PlanLabels.fit(plan, WIDE, HIGH, LETTERS);
    List<Label> labels = PlanLabels.of(plan, view, LETTERS, "side 2", List.of());
    assertThat(labels.stream().map(Label::of).filter(o -> o.startsWith("side")))
        .startsWith("side 2", "side 1");
  }

  private static Finding said(String sentence) {
    return Finding.plain("run-open", Level.NOTE, sentence, "made up", "None");
  }

  private static List<String> named(String sentence, String part) {
    return PlanFindings.named(said(sentence), PlanItem.of(Shipped.demo(part))).stream()
        .map(PlanItem::words)
        .toList();
  }

  @Test
  void aFindingIsShownAtWhatItNames() {
    assertThat(named("Side 2, side 4: the turn-under is 35.0.", "window-seat"))
        .containsExactly("Side 2", "Side 4");
    assertThat(named("Point 4 is hollow: side 12 is beside it.", "corner-bench"))
        .containsExactly("Point 4");
    assertThat(named("Front to right: the edge changes.", "reading-chair"))
        .containsExactly("Front", "Right");
    // A corner is no side, and these are no names.
    assertThat(named("Front left: 5 pleats, level with the back, 3 left.", "reading-chair"))
        .isEmpty();
    assertThat(named("Nothing is left of the back", "reading-chair")).isEmpty();
    assertThat(named("Cut-out 1 is 150 by 130.", "booth-back")).containsExactly("Cut-out 1");
  }

  /** The bench's side 3 runs from (900, 360) to (380, 360); the cut-out lies at 220, -60. */
  @Test
  void whatIsNamedHasAPlace() {
    PlanModel plan = new PlanModel(Shipped.demo("corner-bench"), Units.MM);
    assertThat(PlanFindings.place(new PlanItem.Side(2, "side 3"), plan))
        .contains(new Vec2(640, 360));
    assertThat(PlanFindings.place(new PlanItem.Point(3), plan)).contains(new Vec2(380, 360));
    assertThat(PlanFindings.place(new PlanItem.Outline(), plan)).isEmpty();
    PlanModel back = new PlanModel(Shipped.demo("booth-back"), Units.MM);
    Vec2 cut =
        PlanFindings.place(new PlanItem.Member("fittings.cutOuts[0]", "Cut-out 1"), back)
            .orElseThrow();
    // From the middle of 760 across and 420 + 57 back.
    assertThat(cut.distance(new Vec2(380 + 220, 238.5 - 60))).isLessThan(1e-6);
    PlanModel stool = new PlanModel(Shipped.demo("stool-top"), Units.MM);
    assertThat(PlanFindings.place(new PlanItem.Member("base.holes[1]", "Hole 2"), stool))
        .contains(new Vec2(-45, 0));
    assertThat(PlanFindings.place(new PlanItem.Member("base.holes[9]", "Hole 10"), stool))
        .isEmpty();
  }
}
