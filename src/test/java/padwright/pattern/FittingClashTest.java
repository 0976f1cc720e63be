package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import padwright.design.EdgeShape;
import padwright.design.Finding;
import padwright.design.Finding.Level;
import padwright.design.Fittings.ZoneKind;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.Finish;
import padwright.design.WrappedPad.Fixing;
import padwright.design.WrappedPad.Hole;
import padwright.design.WrappedPad.Host;

/** Two things in one place are found, and a part moved away is not. */
class FittingClashTest {
  private record Case(
      String rule,
      Level level,
      double value,
      Consumer<FittedPads> clash,
      Consumer<FittedPads> ok) {}

  private static Case of(
      String rule, Level level, double value, Consumer<FittedPads> clash, Consumer<FittedPads> ok) {
    return new Case(rule, level, value, clash, ok);
  }

  private static OutlineShape socket() {
    return Pads.rectangle(150, 90);
  }

  private static Host screwAt(double x, double y) {
    return new Host(
        Fixing.SCREWS,
        OptionalDouble.of(18),
        Finish.BARE,
        Optional.empty(),
        OptionalDouble.empty(),
        List.of(new Hole(x, y, 4.2)));
  }

  /**
   * The panel is 600 x 400, so that its edges lie at 300 and 200; the cut-out of 150 x 90 reaches
   * 75 and 45 from its middle, a flange of 22 11, a barrel of 8 4; the tongues lie 19.43 on the
   * back.
   */
  private static List<Case> cases() {
    return List.of(
        of(
            "cutout-outside",
            Level.STOP,
            -10,
            p -> p.cut(socket(), 235, 0),
            p -> p.cut(socket(), 0, 0)),
        of(
            "cutout-rim",
            Level.STOP,
            15,
            p -> p.cut(socket(), 210, 0),
            p -> p.cut(socket(), 150, 0)),
        // 12 of edge distance, 8 of board and half a crown of 12.7 take 26.35.
        of(
            "cutout-rim",
            Level.CAUTION,
            25,
            p -> p.cut(socket(), 200, 0),
            p -> p.cut(socket(), 198, 0)),
        of(
            "cutout-turn-unders",
            Level.CAUTION,
            30,
            p -> p.cut(socket(), 195, 0),
            p -> p.cut(socket(), 185, 0)),
        of(
            "cutout-edge-shape",
            Level.CAUTION,
            9,
            p -> {
              p.cut(socket(), 216, 0);
              p.pads.edge = new EdgeShape.Round(12);
            },
            p -> {
              p.cut(socket(), 210, 0);
              p.pads.edge = new EdgeShape.Round(12);
            }),
        of(
            "cutout-clash",
            Level.STOP,
            0,
            p -> p.cut(socket(), 0, 0).cut(socket(), 100, 0),
            p -> p.cut(socket(), -100, 0).cut(socket(), 100, 0)),
        of(
            "cutout-clash",
            Level.CAUTION,
            12,
            p -> {
              p.cut(socket(), 0, 0);
              p.pads.holes = List.of(new Hole(0, 62, 10));
            },
            p -> {
              p.cut(socket(), 0, 0);
              p.pads.holes = List.of(new Hole(0, 75, 10));
            }),
        of(
            "cutout-clash",
            Level.STOP,
            0,
            p -> {
              p.cut(socket(), 0, 0);
              p.pads.host = screwAt(74, 0);
            },
            p -> {
              p.cut(socket(), 0, 0);
              p.pads.host = screwAt(150, 0);
            }),
        of("vent-outside", Level.STOP, -5, p -> p.vent(290, 0, 30), p -> p.vent(200, 0, 30)),
        of("vent-covered", Level.CAUTION, 15, p -> p.vent(270, 0, 30), p -> p.vent(264, 0, 30)),
        of(
            "vent-clash",
            Level.CAUTION,
            8,
            p -> p.vent(0, 0, 20).vent(28, 0, 20),
            p -> p.vent(0, 0, 20).vent(31, 0, 20)),
        of(
            "vent-clash",
            Level.STOP,
            0,
            p -> p.vent(0, 0, 20).vent(15, 0, 20),
            p -> p.vent(0, 0, 20).vent(40, 0, 20)),
        of("insert-edge", Level.CAUTION, 4, p -> p.insert(285, 0), p -> p.insert(282, 0)),
        of("insert-edge", Level.STOP, -1, p -> p.insert(290, 0), p -> p.insert(250, 0)),
        of("insert-covered", Level.CAUTION, 16, p -> p.insert(280, 0), p -> p.insert(275, 0)),
        of(
            "insert-clash",
            Level.STOP,
            0,
            p -> p.insert(0, 0).insert(20, 0),
            p -> p.insert(0, 0).insert(60, 0)),
        of(
            "insert-clash",
            Level.CAUTION,
            6,
            p -> p.insert(0, 0).insert(28, 0),
            p -> p.insert(0, 0).insert(33, 0)),
        of(
            "insert-clash",
            Level.STOP,
            0,
            p -> {
              p.insert(0, 0);
              p.pads.host = screwAt(12, 0);
            },
            p -> {
              p.insert(0, 0);
              p.pads.host = screwAt(60, 0);
            }),
        of(
            "insert-clash",
            Level.STOP,
            0,
            p -> p.cut(socket(), 0, 0).insert(80, 0),
            p -> p.cut(socket(), 0, 0).insert(110, 0)),
        of("zone-outside", Level.STOP, -10, p -> tape(p, 0, 198), p -> tape(p, 0, 160)),
        of("zone-turn-under", Level.CAUTION, 15, p -> tape(p, 0, 173), p -> tape(p, 0, 168)),
        of(
            "zone-turn-under",
            Level.CAUTION,
            10,
            p -> tape(p.cut(socket(), 0, 0), 0, 67),
            p -> tape(p.cut(socket(), 0, 0), 0, 77)),
        of(
            "zone-overlap",
            Level.STOP,
            4,
            p -> tape(tape(p, 0, 0), 0, 20),
            p -> tape(tape(p, 0, 0), 0, 24)),
        of(
            "zone-over-hole",
            Level.CAUTION,
            0,
            p -> tape(p.insert(0, 0), 0, 10),
            p -> tape(p.insert(0, 0), 0, 60)),
        of(
            "zone-over-hole",
            Level.STOP,
            0,
            p -> tape(p.cut(socket(), 0, 0), 0, 50),
            p -> tape(p.cut(socket(), 0, 0), 0, 90)));
  }

  /** A zone of 200 x 24. */
  private static FittedPads tape(FittedPads p, double x, double y) {
    return p.zone(ZoneKind.TAPE, x, y, 200, 24);
  }

  @TestFactory
  Stream<DynamicTest> isFoundWhereItIsAndNotWhereItIsMoved() {
    return cases().stream()
        .map(c -> DynamicTest.dynamicTest(c.rule() + " " + c.level(), () -> holds(c)));
  }

  private static void holds(Case c) {
    FittedPads clash = new FittedPads();
    c.clash().accept(clash);
    List<Finding> found = FittedPads.of(clash.run(), c.rule());
    assertThat(found).hasSize(1);
    assertThat(found.get(0).level()).isEqualTo(c.level());
    assertThat(found.get(0).value().orElseThrow()).isCloseTo(c.value(), within(0.02));
    assertThat(found.get(0).remedy()).isNotBlank();
    assertThat(found.get(0).source()).isNotBlank();
    FittedPads moved = new FittedPads();
    c.ok().accept(moved);
    assertThat(FittedPads.of(moved.run(), c.rule())).isEmpty();
  }

  @Test
  void aPartWithoutFittingsHasNothingSaidOfThem() {
    assertThat(new FittedPads().run().findings())
        .noneMatch(f -> f.rule().matches("(cutout|vent|insert|zone)-.*|staple-gap"));
  }

  /** Birch plywood 12 may be 11.5 thin (maker's data sheet, as in the catalogue). */
  @Test
  void aBarrelMayBeAsLongAsTheBoardIsThickAtLeast() {
    Finding f = FittedPads.of(new FittedPads().insert(0, 0).run(), "insert-barrel").get(0);
    assertThat(f.limit().orElseThrow()).isCloseTo(11.5, within(1e-12));
    FittedPads measured = new FittedPads().insert(0, 0);
    measured.pads.measured = OptionalDouble.of(11.8);
    f = FittedPads.of(measured.run(), "insert-barrel").get(0);
    assertThat(f.limit().orElseThrow()).isCloseTo(11.8, within(1e-12));
  }

  /** Foam tape: 60 cm2 a kg, so that 2.4 kg take 144 cm2 (trade page, as in the constants). */
  @Test
  void tapeIsHeldAgainstTheWeightOfThePart() {
    assertThat(60 * 2.4).isCloseTo(144, within(1e-9));
    FittedPads small = tape(new FittedPads(), 0, 0);
    PartResult part = small.run();
    Finding f = FittedPads.of(part, "zone-tape-area").get(0);
    assertThat(f.value().orElseThrow()).isCloseTo(20 * 2.4, within(1e-9));
    assertThat(f.limit().orElseThrow()).isCloseTo(60 * part.figures().weight(), within(1e-9));
    // 600 x 400 x 12 of birch plywood at 660 to 710 kg/m3 alone is 1.9 kg and more: over 114 cm2.
    assertThat(f.limit().orElseThrow()).isGreaterThan(114);
    FittedPads large = new FittedPads().zone(ZoneKind.TAPE, 0, 0, 400, 60);
    assertThat(FittedPads.of(large.run(), "zone-tape-area")).isEmpty();
    FittedPads hooks = new FittedPads().zone(ZoneKind.HOOK_AND_LOOP, 0, 0, 200, 24);
    assertThat(FittedPads.of(hooks.run(), "zone-tape-area")).isEmpty();
  }

  @Test
  void zonesUnderADustCoverAreACaution() {
    FittedPads p = tape(new FittedPads(), 0, 0);
    assertThat(FittedPads.of(p.run(), "zone-dust-cover")).hasSize(1);
    p.dustCover = false;
    assertThat(FittedPads.of(p.run(), "zone-dust-cover")).isEmpty();
  }
}
