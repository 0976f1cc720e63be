package padwright.cover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import padwright.design.Finding;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Kind;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.Vec2;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;

/** How corners are chosen, cut and counted. */
class CornersTest {
  private static PartResult pad(OutlineShape outline, Treatment t, double foam, Kind kind) {
    Pads pads = new Pads();
    pads.outline = outline;
    pads.treatments = List.of(t);
    pads.foam = List.of(Pads.layer(foam, 0));
    pads.kind = kind;
    return pads.run();
  }

  private static CornerPlan first(PartResult part) {
    return part.cover().corners().get(0);
  }

  @Test
  void autoFollowsItsRule() {
    assertThat(first(pad(Pads.rectangle(600, 60), Treatment.AUTO, 24, Kind.PAD)).treatment())
        .isEqualTo(Treatment.MITRED_END);
    assertThat(first(pad(Pads.rectangle(400, 300), Treatment.AUTO, 24, Kind.SEAT)).treatment())
        .isEqualTo(Treatment.SINGLE_PLEAT);
    assertThat(first(pad(Pads.rectangle(400, 300), Treatment.AUTO, 60, Kind.SEAT)).treatment())
        .isEqualTo(Treatment.DOUBLE_PLEAT);
    assertThat(first(pad(Pads.rectangle(300, 280), Treatment.AUTO, 24, Kind.STOOL_TOP)).treatment())
        .isEqualTo(Treatment.DOUBLE_PLEAT);
    assertThat(first(pad(Pads.rectangle(400, 300, 40), Treatment.AUTO, 40, Kind.SEAT)).treatment())
        .isEqualTo(Treatment.PLEATS);
    for (CornerPlan c :
        pad(Pads.rectangle(400, 300), Treatment.AUTO, 24, Kind.SEAT).cover().corners()) {
      assertThat(c.reason()).isNotBlank();
    }
  }

  @Test
  void aLowPadOnALargeRoundingIsEasedOrNotched() {
    Pads pads = new Pads();
    pads.outline = new OutlineShape.Circle(900);
    pads.covering = "knit-fabric";
    pads.foam = List.of(Pads.layer(6, 0));
    pads.turnUnder = OptionalDouble.of(15);
    PartResult eased = pads.run();
    assertThat(first(eased).treatment()).isEqualTo(Treatment.EASED);
    // Ease at the trim line: (s - x) / (R + s) with s = 6 + 12 + pi/2 + 15, x = -15.
    double s = 18 + Math.PI / 2 + 15;
    assertThat(first(eased).easeNeeded()).isCloseTo((s + 15) / (450 + s), within(1e-9));
    assertThat(eased.wrap().proved()).isTrue();
    pads.outline = new OutlineShape.Circle(420);
    pads.turnUnder = OptionalDouble.of(30);
    PartResult notched = pads.run();
    assertThat(first(notched).treatment()).isEqualTo(Treatment.NOTCHES);
    assertThat(notched.wrap().proved()).as(notched.wrap().toString()).isTrue();
  }

  @Test
  void theFullnessAtASquareCornerIsTheTurnTimesTheWall() {
    // Gauss-Bonnet: beta h at the end of a vertical wall, beta = pi / 2; covering of no thickness.
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(400, 300);
    pads.coverThickness = OptionalDouble.of(0);
    CornerPlan c = first(pads.run());
    assertThat(c.fullnessAtBack()).isCloseTo(Math.PI / 2 * 36, within(1e-9));
    // On the turn-under x runs back in: beta (h + 2 w).
    assertThat(c.fullnessAtTrim()).isCloseTo(Math.PI / 2 * (36 + 2 * 20), within(1e-9));
  }

  @Test
  void aDoublePleatsTipIsCutSquareToTheDiagonalAtTheWallsLength() {
    // The tip's legs are c = 2 S - sqrt(2) H where the tip meets the cover's edge (0 <= c <= S).
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(400, 300);
    pads.treatments = List.of(Treatment.DOUBLE_PLEAT);
    pads.foam = List.of(Pads.layer(60, 0));
    pads.coverThickness = OptionalDouble.of(0);
    PartResult part = pads.run();
    double s = 72 + 20;
    double c = 2 * s - Math.sqrt(2) * 72;
    assertThat(c).isBetween(0.0, s);
    List<Vec2> trim = part.cover().trim().flattened(0.01);
    Vec2 corner = new Vec2(200 + s, -150 - s);
    double nearest = trim.stream().mapToDouble(p -> p.distance(corner)).min().orElseThrow();
    // Both ends of the tip cut lie c from the corner of the square, along its sides.
    assertThat(trim).anyMatch(p -> p.distance(corner.plus(new Vec2(-c, 0))) < 0.01);
    assertThat(trim).anyMatch(p -> p.distance(corner.plus(new Vec2(0, c))) < 0.01);
    assertThat(nearest).isCloseTo(c / Math.sqrt(2), within(c / Math.sqrt(2) * 0.5));
  }

  @Test
  void pleatsKeepWithinHalfAMillimetreOfTheRounding() {
    CornerPlan c = first(pad(Pads.rectangle(400, 300, 40), Treatment.PLEATS, 40, Kind.SEAT));
    double sagitta = 40 * (1 - Math.cos(Math.PI / 2 / (2 * c.pleats())));
    assertThat(sagitta).isLessThanOrEqualTo(0.5);
    double fewer = 40 * (1 - Math.cos(Math.PI / 2 / (2 * (c.pleats() - 1))));
    double depthWithFewer = c.fullnessAtTrim() / (2 * (c.pleats() - 1));
    assertThat(fewer > 0.5 || depthWithFewer > 10).isTrue();
    // n = ceil(excess / 2p) at the least.
    assertThat(c.pleats()).isGreaterThanOrEqualTo((int) Math.ceil(c.fullnessAtTrim() / 20));
  }

  @Test
  void whatCannotBeFoldedByNameIsAStopThatSaysSo() {
    PartResult eased = pad(Pads.rectangle(400, 300), Treatment.EASED, 24, Kind.SEAT);
    assertThat(eased.findings())
        .anyMatch(f -> f.rule().equals("corner-treatment") && f.level() == Finding.Level.STOP);
    PartResult single = pad(Pads.rectangle(400, 300, 30), Treatment.SINGLE_PLEAT, 24, Kind.SEAT);
    assertThat(single.findings()).anyMatch(f -> f.rule().equals("corner-treatment"));
  }

  @Test
  void theFrontsStripLiesOnTopSoThatPleatsOpenAwayFromIt() {
    for (WrappedPad.Side front : WrappedPad.Side.values()) {
      Pads pads = new Pads();
      pads.outline = Pads.rectangle(400, 300);
      pads.front = front;
      String name = front.name().toLowerCase(java.util.Locale.ROOT);
      for (CornerPlan c : pads.run().cover().corners()) {
        if (c.name().contains(name)) {
          assertThat(c.over()).isEqualTo(name);
        }
      }
    }
  }

  @Test
  void threeLayersLieInTheSinglePleatAndOneOnTheWallBesideIt() {
    CornerPlan c = first(pad(Pads.rectangle(400, 300), Treatment.SINGLE_PLEAT, 24, Kind.SEAT));
    assertThat(List.of(c.layersFirst(), c.layersSecond())).containsExactlyInAnyOrder(3, 1);
  }

  @Test
  void twoTurnUndersOverlapInTheSquareAtABackCorner() {
    PartResult part = pad(Pads.rectangle(400, 300), Treatment.SINGLE_PLEAT, 24, Kind.SEAT);
    LayerCounter layers =
        new LayerCounter(part.cover().trim().flattened(0.01), part.cover().skeleton());
    assertThat(layers.at(new Vec2(0, -140))).isEqualTo(1);
    assertThat(layers.at(new Vec2(0, 0))).isZero();
    // 16 in from both edges: beyond the flaps of 12, where only the two turn-unders lie.
    assertThat(layers.at(new Vec2(184, -134))).isEqualTo(2);
    // Under the front's strip beside the corner: strip, flap, and the other side's turn-under.
    assertThat(layers.at(new Vec2(192, -134))).isEqualTo(3);
  }
}
