package padwright.desk.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.Units;
import padwright.design.WrappedPad.FoamLayer;
import padwright.design.WrappedPad.WaddingLayer;
import padwright.desk.view.SectionForm.Dimension;
import padwright.desk.view.SectionForm.Handle;
import padwright.desk.view.SectionForm.Label;
import padwright.desk.view.SectionForm.Member;
import padwright.desk.view.SectionForm.Room;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;
import padwright.measure.InputRefused;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;
import padwright.pattern.RandomPads;

class SectionFormTest {
  private static final long SEED = 20_401;
  private static final double[][] SIZES = {{460, 330}, {700, 460}, {1500, 850}};

  private static SectionForm form(PartResult result) {
    return SectionForm.of(result, SectionCut.USUAL, new Room(700, 500, 12, Units.MM));
  }

  /** Board 12, foam 24 and 12, wadding 3 over the top, edge rounded 8, covering 1.2. */
  private static Pads full() {
    Pads p = new Pads();
    p.foam = List.of(Pads.layer(24, 2), Pads.layer(12, 5));
    p.edge = new EdgeShape.Round(8);
    p.wadding = Optional.of(new WaddingLayer("polyester-150", OptionalDouble.of(3), false));
    p.coverThickness = OptionalDouble.of(1.2);
    p.turnUnder = OptionalDouble.of(22);
    p.edgeDistance = OptionalDouble.of(9);
    p.leg = OptionalDouble.of(10);
    p.backArris = 2;
    return p;
  }

  private record Named(String name, Bounds box) {}

  private static List<Named> boxes(SectionForm form) {
    List<Named> all = new ArrayList<>();
    for (Dimension d : form.dimensions()) {
      all.add(new Named("field " + d.place(), d.box()));
      d.caption().ifPresent(c -> all.add(new Named("caption " + d.label(), c)));
    }
    for (Label l : form.labels()) {
      all.add(new Named("name " + l.words(), l.box()));
    }
    all.add(new Named("scale bar", form.scaleBar().box()));
    return all;
  }

  @Test
  void noTwoBoxesMeetWhateverThePart() {
    RandomPads random = new RandomPads(SEED);
    for (int n = 0; n < 200; n++) {
      Pads pads = random.next();
      while (n % 2 == 0 && pads.foam.size() < 5) {
        List<FoamLayer> more = new ArrayList<>(pads.foam);
        more.add(Pads.layer(6 + n % 9, n % 7 - 3));
        pads.foam = more;
      }
      for (double[] size : SIZES) {
        Room room = new Room(size[0], size[1], 12, n % 3 == 0 ? Units.INCH : Units.MM);
        SectionForm form;
        try {
          form = SectionForm.of(pads.run(), SectionCut.USUAL, room);
        } catch (InputRefused refused) {
          form = SectionForm.asked(pads.pad(), room);
        }
        String which = "seed " + SEED + ", part " + n + " at " + size[0];
        assertThat(form.width()).as(which).isEqualTo(size[0]);
        assertThat(form.height()).as(which).isEqualTo(size[1]);
        check(form, which);
      }
    }
  }

  private static void check(SectionForm form, String which) {
    List<Named> boxes = boxes(form);
    for (int i = 0; i < boxes.size(); i++) {
      Bounds b = boxes.get(i).box();
      assertThat(b.minX() >= 0 && b.minY() >= 0).as(which + boxes.get(i)).isTrue();
      assertThat(b.maxX() <= form.width() && b.maxY() <= form.height())
          .as(which + boxes.get(i))
          .isTrue();
      for (int k = 0; k < i; k++) {
        assertThat(b.overlaps(boxes.get(k).box()))
            .as(which + ": " + boxes.get(i) + " and " + boxes.get(k))
            .isFalse();
      }
      for (Member m : form.members()) {
        assertThat(Bounds.of(m.outline()).overlaps(b))
            .as(which + ": " + m.name() + " under " + boxes.get(i))
            .isFalse();
      }
    }
  }

  @Test
  void everyDimensionIsDrawnAsLongAsTheSizeItGives() {
    PartResult result = full().run();
    SectionForm form = form(result);
    lengthOf(form, "base.thickness", 12);
    lengthOf(form, "foam[0].thickness", 24);
    lengthOf(form, "foam[1].thickness", 12);
    lengthOf(form, "foam[0].overhang", 2);
    lengthOf(form, "foam[1].overhang", 5);
    lengthOf(form, "wadding.thickness", 3);
    lengthOf(form, "cover.thickness", 1.2);
    lengthOf(form, "edge.round", 8);
    lengthOf(form, "cover.turnUnder", 22);
    lengthOf(form, "staples.edgeDistance", 9);
    lengthOf(form, "staples.leg", 10);
    lengthOf(form, "base.backArris", 2);
    // 12 + 24 + 12 + 3 + 1.2
    lengthOf(form, "", 52.2);
    assertThat(form.dimension("").orElseThrow().reading()).contains("52.2 mm");
  }

  private static void lengthOf(SectionForm form, String place, double mm) {
    Dimension d = form.dimension(place).orElseThrow();
    assertThat(d.from().distance(d.to()) / form.scale()).as(place).isCloseTo(mm, within(1e-6));
  }

  @Test
  void theScaleSaidIsTheScaleDrawn() {
    SectionForm form = form(full().run());
    // Points of the screen are a ninety-sixth of an inch.
    double ratio = form.scale() * 25.4 / 96;
    assertThat(form.caption()).contains("scale " + trimmed(ratio) + " : 1");
    double bar = form.scaleBar().leader().from().distance(form.scaleBar().leader().to());
    assertThat(form.scaleBar().words()).isEqualTo(trimmed(bar / form.scale()) + " mm");
  }

  private static String trimmed(double value) {
    return new java.math.BigDecimal(value)
        .setScale(2, java.math.RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  @Test
  void theMiddleOfEachMemberIsThatMember() {
    SectionForm form = form(full().run());
    double left = Bounds.of(member(form, "base").outline()).minX() + 20;
    assertThat(hit(form, left, "base.thickness")).isEqualTo("base");
    assertThat(hit(form, left, "foam[0].thickness")).isEqualTo("foam[0]");
    assertThat(hit(form, left, "foam[1].thickness")).isEqualTo("foam[1]");
    assertThat(hit(form, left, "wadding.thickness")).isEqualTo("wadding");
    assertThat(hit(form, left, "cover.thickness")).isEqualTo("cover");
    List<Vec2> edge = member(form, "edge").outline();
    assertThat(form.hit(edge.get(edge.size() / 2)).orElseThrow().name()).isEqualTo("edge");
    Bounds staple = Bounds.of(member(form, "staples").outline());
    assertThat(form.hit(staple.centre()).orElseThrow().name()).isEqualTo("staples");
    assertThat(form.hit(new Vec2(2, 2))).isEmpty();
  }

  @Test
  void theCoveringIsHitThreePointsBesideIt() {
    SectionForm form = form(full().run());
    Vec2 end = member(form, "cover").outline().get(member(form, "cover").outline().size() - 1);
    Vec2 below = end.plus(new Vec2(5, member(form, "cover").thick() / 2 + 3));
    assertThat(form.hit(below).orElseThrow().name()).isEqualTo("cover");
  }

  private static Member member(SectionForm form, String name) {
    return form.members().stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
  }

  private static String hit(SectionForm form, double x, String place) {
    Dimension d = form.dimension(place).orElseThrow();
    return form.hit(new Vec2(x, d.from().midpoint(d.to()).y())).orElseThrow().name();
  }

  /** At 4 points to a mm: 8 points up are 2 mm more of what grows upwards. */
  @Test
  void aDragIsWorthItsLengthAlongTheHandleOnWholeSteps() {
    Handle up = new Handle("foam[0].thickness", "foam[0]", Vec2.ZERO, new Vec2(0, -1), 4);
    assertThat(up.dragged(12, 0, -8, 1)).isEqualTo(14);
    assertThat(up.dragged(12, 50, 0, 1)).isEqualTo(12);
    assertThat(up.dragged(12, 0, 9, 1)).isEqualTo(10);
    // 0.4 mm is under half a step: what was 12.7 stays so.
    assertThat(up.dragged(12.7, 0, -1.6, 1)).isEqualTo(12.7);
    // 1 mm more is 13.7, the nearest whole step 14.
    assertThat(up.dragged(12.7, 0, -4, 1)).isEqualTo(14);
    assertThat(up.dragged(1.0, 0, -1.2, 0.1)).isCloseTo(1.3, within(1e-9));
    Handle in = new Handle("cover.turnUnder", "cover", Vec2.ZERO, new Vec2(-1, 0), 4);
    assertThat(in.dragged(20, -20, 3, 1)).isEqualTo(25);
  }

  @Test
  void everyHandleStandsAtTheEndOfWhatItChanges() {
    SectionForm form = form(full().run());
    for (Handle h : form.handles()) {
      Dimension d = form.dimension(h.place()).orElseThrow();
      boolean level = Math.abs(h.along().x()) > 0.5;
      double at = level ? h.at().x() : h.at().y();
      double from = level ? d.from().x() : d.from().y();
      double to = level ? d.to().x() : d.to().y();
      double off = Math.min(Math.abs(at - from), Math.abs(at - to));
      assertThat(off).as(h.place()).isLessThan(1e-6);
    }
  }

  @Test
  void aPartThatCannotBeWorkedOutIsStillAForm() {
    Pads p = full();
    SectionForm form = SectionForm.asked(p.pad(), new Room(460, 330, 12, Units.MM));
    assertThat(form.worked()).isFalse();
    lengthOf(form, "foam[0].thickness", 24);
    lengthOf(form, "base.thickness", 12);
    lengthOf(form, "cover.turnUnder", 22);
    assertThat(form.caption()).contains("not worked out");
  }

  @Test
  void fieldsFollowFromTheBoardUpwardsAndThenTheBack() {
    List<String> order = form(full().run()).inOrder().stream().map(Dimension::place).toList();
    assertThat(order)
        .containsExactly(
            "base.thickness",
            "foam[0].thickness",
            "foam[0].overhang",
            "foam[1].thickness",
            "foam[1].overhang",
            "wadding.thickness",
            "cover.thickness",
            "edge.round",
            "cover.turnUnder",
            "staples.leg",
            "staples.edgeDistance",
            "base.backArris");
  }

  @Test
  void aSideWithItsOwnEdgeIsCutForItself() {
    Pads p =
        Pads.seat(Pads.run(Optional.of(new EdgeShape.Bevel(7)), OptionalDouble.of(4), "front"));
    PartResult result = p.run();
    List<SectionCut> cuts = SectionCut.all(result);
    assertThat(cuts).extracting(SectionCut::title).containsExactly("usual edge", "front");
    SectionForm form = SectionForm.of(result, cuts.get(1), new Room(700, 500, 12, Units.MM));
    lengthOf(form, "runs[0].edge.bevel", 7);
    lengthOf(form, "runs[0].overhang", 4);
    lengthOf(form, "cover.turnUnder", 20);
  }
}
