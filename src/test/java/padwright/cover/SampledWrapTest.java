package padwright.cover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import padwright.cover.SampledCovers.Kind;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.Vec2;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;

/**
 * The wrap proof against a second wrap that shares no arithmetic with it. Tolerances are those of
 * the sampling: a point every 2 mm along and 1 mm down, the turn-under every 0.5 mm, raw edges
 * every 0.25 mm.
 */
class SampledWrapTest {
  private static final int PER_KIND = 8;

  /** Bare area that sampling tells from none, mm2: fifteen points of 2 x 1 mm. */
  private static final double SEEN = 30;

  /** The slope of a cut times half the distance of two lines. */
  private static final double TURN_UNDER = 0.3;

  private static WrapReport proof(PartResult part, List<Vec2> cut) {
    return proof(part, cut, part.cover().gussets());
  }

  private static WrapReport proof(PartResult part, List<Vec2> cut, List<Gusset> gussets) {
    return WrapProof.check(
        cut, part.cover().skeleton(), gussets, part.cover().clips(), part.shape().ends(), 0);
  }

  private static SampledWrap second(PartResult part, List<Vec2> cut) {
    return second(part, cut, part.cover().gussets());
  }

  private static SampledWrap second(PartResult part, List<Vec2> cut, List<Gusset> gussets) {
    return new SampledWrap(
        cut,
        part.cover().skeleton(),
        part.spec(),
        part.shape().ends(),
        part.cover().corners(),
        gussets,
        part.cover().clips());
  }

  private static void agree(SoftAssertions all, String what, WrapReport proof, SampledWrap second) {
    String both = what + ": " + proof + " / " + words(second);
    boolean bare = proof.bareArea() > 0;
    if (bare && proof.bareArea() > SEEN || second.bareArea > SEEN) {
      all.assertThat(second.bareArea > WrapProof.BARE).as("bare " + both).isEqualTo(bare);
      // Where a wall is bare there is no turn-under to speak of.
      return;
    }
    all.assertThat(second.bareArea).as("none bare " + both).isLessThanOrEqualTo(SEEN);
    all.assertThat(second.leastTurnUnder)
        .as("turn-under " + both)
        .isCloseTo(proof.leastTurnUnder(), within(TURN_UNDER));
    all.assertThat(second.worstShort)
        .as("short " + both)
        .isCloseTo(proof.worstShort(), within(TURN_UNDER));
    // A glued end is a raw edge at the foot of the wall on purpose: how near its fold is not held.
    boolean held = !what.startsWith(Kind.GLUED.name());
    if (held && (Double.isFinite(proof.leastHiding()) || Double.isFinite(second.leastHiding))) {
      all.assertThat(second.leastHiding)
          .as("hiding " + both)
          .isCloseTo(proof.leastHiding(), within(0.5));
    }
  }

  /** Whether the corners came out as the kind says; what the engine refuses it makes otherwise. */
  private static boolean isOf(Kind kind, PartResult part) {
    Treatment wanted =
        switch (kind) {
          case SINGLE_PLEAT -> Treatment.SINGLE_PLEAT;
          case DOUBLE_PLEAT -> Treatment.DOUBLE_PLEAT;
          case MITRED_END -> Treatment.MITRED_END;
          case EASED -> Treatment.EASED;
          case PLEATED -> Treatment.PLEATS;
          case NOTCHED -> Treatment.NOTCHES;
          case GUSSET -> Treatment.GUSSET;
          case HOLLOW_CURVE -> Treatment.CLIPS;
          default -> null;
        };
    return wanted == null || part.cover().corners().stream().anyMatch(c -> c.treatment() == wanted);
  }

  private static String words(SampledWrap w) {
    return "bare "
        + w.bareArea
        + " turn-under "
        + w.leastTurnUnder
        + " short "
        + w.worstShort
        + " hiding "
        + w.leastHiding
        + " folds "
        + w.foldError;
  }

  @Test
  void bothWrapsAgreeOnEveryKindOfCover() {
    SampledCovers covers = new SampledCovers(20261125);
    Map<Kind, Integer> proved = new EnumMap<>(Kind.class);
    SoftAssertions all = new SoftAssertions();
    for (Kind kind : Kind.values()) {
      for (int i = 0; i < PER_KIND; i++) {
        PartResult part = covers.next(kind).run();
        List<Vec2> cut = SpoiltCover.trim(part);
        WrapReport proof = proof(part, cut);
        SampledWrap second = second(part, cut);
        all.assertThat(isOf(kind, part)).as(kind + " is one").isTrue();
        String what = kind + " " + i + " " + part.asked().base().outline();
        agree(all, what, proof, second);
        all.assertThat(second.foldError).as("printed folds " + what).isLessThan(0.1);
        proved.merge(kind, proof.proved() ? 1 : 0, Integer::sum);
      }
    }
    System.out.println("Proved of " + PER_KIND + " covers a kind: " + proved);
    all.assertAll();
  }

  @Test
  void bothMissATurnUnderOnABlankTenLess() {
    SampledCovers covers = new SampledCovers(7);
    SoftAssertions all = new SoftAssertions();
    for (Kind kind : Kind.values()) {
      PartResult part = covers.next(kind).run();
      List<Vec2> cut = SpoiltCover.less(part, 5);
      WrapReport proof = proof(part, cut);
      SampledWrap second = second(part, cut);
      boolean missed = proof.worstShort() > WrapProof.SHORTFALL;
      all.assertThat(missed).as(kind + " " + proof).isTrue();
      all.assertThat(second.worstShort > WrapProof.SHORTFALL)
          .as(kind + " " + words(second) + proof)
          .isTrue();
    }
    all.assertAll();
  }

  @Test
  void bothSeeACutFivePastTheFold() {
    SampledCovers covers = new SampledCovers(8);
    for (Kind kind : List.of(Kind.SINGLE_PLEAT, Kind.DOUBLE_PLEAT, Kind.MITRED_END)) {
      for (int fold = 0; fold < 4; fold++) {
        PartResult part = covers.next(kind).run();
        List<Vec2> cut = SpoiltCover.cutPastTheFold(part, fold, 5);
        double bare = proof(part, cut).bareArea();
        // Twenty up the wall or as much of it as there is, five wide.
        assertThat(bare).as(kind.name()).isGreaterThan(80);
        assertThat(second(part, cut).bareArea).as(kind.name()).isCloseTo(bare, within(SEEN));
      }
    }
  }

  @Test
  void bothSeeAReliefStopOfSeven() {
    SampledCovers covers = new SampledCovers(9);
    for (Kind kind : List.of(Kind.SINGLE_PLEAT, Kind.MITRED_END, Kind.LAYERS)) {
      Pads pads = covers.next(kind);
      pads.treatments = List.of(Treatment.SINGLE_PLEAT);
      pads.reliefStop = OptionalDouble.of(7);
      PartResult part = pads.run();
      List<Vec2> cut = SpoiltCover.trim(part);
      assertThat(proof(part, cut).leastHiding()).as(kind.name()).isCloseTo(7, within(0.1));
      assertThat(second(part, cut).leastHiding).as(kind.name()).isCloseTo(7, within(0.1));
    }
  }

  @Test
  void bothSeeANotchThatGoesUpTheWall() {
    SampledCovers covers = new SampledCovers(10);
    for (Kind kind : List.of(Kind.EASED, Kind.NOTCHED, Kind.HOLLOW_CURVE)) {
      PartResult part = covers.next(kind).run();
      List<SampledOutline.Piece> pieces = new SampledOutline(part.cover().skeleton()).pieces;
      int round = 0;
      while (pieces.get(round).straight()) {
        round++;
      }
      List<Vec2> cut = SpoiltCover.notchTooDeep(part, round, 11, 38);
      assertThat(proof(part, cut).bareArea()).as(kind.name()).isGreaterThan(WrapProof.BARE);
      assertThat(second(part, cut).bareArea).as(kind.name()).isGreaterThan(WrapProof.BARE);
    }
  }

  @Test
  void bothSeeThatTheGussetOfAThinnerPadIsTooShort() {
    Pads pads = new SampledCovers(11).next(Kind.GUSSET);
    pads.foam = List.of(Pads.layer(45, 0));
    PartResult part = pads.run();
    pads.foam = List.of(Pads.layer(5, 0));
    List<Gusset> small = pads.run().cover().gussets();
    List<Vec2> cut = SpoiltCover.trim(part);
    assertThat(part.wrap().proved()).isTrue();
    assertThat(proof(part, cut, small).bareArea()).isGreaterThan(SEEN);
    assertThat(second(part, cut, small).bareArea).isGreaterThan(SEEN);
  }
}
