package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import padwright.design.Finding;
import padwright.design.Finding.Level;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad;
import padwright.fastening.StaplePlan;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece.Kind;

/** Holes for the air: a rule of our own, drawn from one published example. */
class VentTest {
  private static FittedPads seat(double length, double width) {
    FittedPads p = new FittedPads();
    p.pads.outline = Pads.rectangle(length, width);
    p.pads.foam = List.of(Pads.layer(50, 0));
    p.pads.covering = "leather";
    p.pads.kind = WrappedPad.Kind.SEAT;
    return p;
  }

  private static List<Vec2> places(Finding f) {
    List<Vec2> places = new ArrayList<>();
    for (MatchResult m :
        Pattern.compile("\\((-?\\d+), (-?\\d+)\\)").matcher(f.remedy()).results().toList()) {
      places.add(new Vec2(Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2))));
    }
    return places;
  }

  private static Finding missing(FittedPads p) {
    List<Finding> found = FittedPads.of(p.run(), "vent-missing");
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  /**
   * Woodworker's Journal 32-6 (2008) p. 63: a drop-in seat in leather has air holes 1 in across,
   * about 5 in (127) from each corner. On 450 x 420: 225 - 127 = 98 and 210 - 127 = 83.
   */
  @Test
  void aLeatherSeatIsAskedForTheHolesOfThePublishedOne() {
    Finding f = missing(seat(450, 420));
    assertThat(f.level()).isEqualTo(Level.CAUTION);
    assertThat(f.source()).contains("our own rule").contains("Woodworker's Journal 32-6 (2008)");
    assertThat(f.remedy()).contains("4 holes of 25.4");
    assertThat(places(f))
        .containsExactlyInAnyOrder(
            new Vec2(-98, -83), new Vec2(-98, 83), new Vec2(98, -83), new Vec2(98, 83));
  }

  /** 1200 - 254 = 946 takes four gaps of 236.5; 400 - 254 = 146 two rows. */
  @Test
  void aLongPadHasThemNoFurtherApartThanThePitch() {
    assertThat(places(missing(seat(1200, 400)))).hasSize(10);
    // 300 wide leaves 46 between two rows: one row, in the middle.
    assertThat(places(missing(seat(1200, 300)))).hasSize(5).allMatch(v -> v.y() == 0);
  }

  @Test
  void clothThatBreathesThinFoamAPanelAndABoardWithHolesAreNotAsked() {
    FittedPads cloth = seat(450, 420);
    cloth.pads.covering = "woven-cotton";
    FittedPads thin = seat(450, 420);
    thin.pads.foam = List.of(Pads.layer(25, 0));
    FittedPads panel = seat(450, 420);
    panel.pads.kind = WrappedPad.Kind.PANEL;
    FittedPads holed = seat(450, 420);
    holed.pads.holes = List.of(new WrappedPad.Hole(0, 0, 25));
    for (FittedPads p :
        List.of(
            cloth,
            thin,
            panel,
            holed,
            seat(450, 420).vent(0, 0, 25),
            seat(450, 420).whole(Pads.rectangle(60, 60), 0, 0))) {
      assertThat(FittedPads.of(p.run(), "vent-missing")).isEmpty();
    }
    FittedPads rest = seat(450, 420);
    rest.pads.kind = WrappedPad.Kind.PAD;
    assertThat(missing(rest).level()).isEqualTo(Level.NOTE);
  }

  @Test
  void theHolesMoveOutOfTheWayAndOfStaples() {
    for (OutlineShape outline :
        List.of(
            Pads.rectangle(450, 420),
            new OutlineShape.Circle(380),
            new OutlineShape.Trapezoid(480, 400, 420),
            new OutlineShape.Ellipse(500, 300),
            Pads.rectangle(400, 90))) {
      FittedPads p = seat(450, 420).insert(98, 83).insert(0, 0).insert(-98, -75);
      p.pads.outline = outline;
      PartResult part = p.run();
      List<Vec2> places = places(FittedPads.of(part, "vent-missing").get(0));
      assertThat(places).as(outline.toString()).isNotEmpty();
      for (Vec2 v : places) {
        // Half a mm for the rounding of what is printed.
        for (StaplePlan.Position q : part.staples().positions()) {
          assertThat(q.at().distance(v)).isGreaterThan(12.7 + 12.7 / 2 + 3 - 0.8);
        }
        for (Vec2 nut : List.of(new Vec2(98, 83), Vec2.ZERO, new Vec2(-98, -75))) {
          assertThat(nut.distance(v)).isGreaterThan(11 + 12.7 + 10 - 0.8);
        }
      }
    }
  }

  @Test
  void ventsAreInTheBaseAndThePackingAndNotInTheDustCover() {
    PartResult part = seat(450, 420).vent(98, 83, 25).run();
    PatternPiece base = part.piece(Kind.BASE).orElseThrow();
    assertThat(base.innerCuts()).hasSize(1);
    assertThat(base.innerCuts().get(0).area()).isCloseTo(Math.PI * 12.5 * 12.5, within(1e-9));
    assertThat(base.points()).anyMatch(m -> m.label().equals("vent") && m.diameter() == 25);
    assertThat(part.piece(Kind.PACKING).orElseThrow().innerCuts()).hasSize(1);
    assertThat(part.piece(Kind.DUST_COVER).orElseThrow().innerCuts()).isEmpty();
    assertThat(part.piece(Kind.FOAM).orElseThrow().innerCuts()).isEmpty();
    assertThat(FittedPads.of(part, "vent-dust-cover")).hasSize(1);
  }
}
