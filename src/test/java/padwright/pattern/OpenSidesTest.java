package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import padwright.cover.CornerPlan;
import padwright.design.Finding;
import padwright.design.WrappedPad.Open;
import padwright.design.WrappedPad.Treatment;

/** Sides left bare or glued, beside corners of any angle and on curves: buildable, so no stop. */
class OpenSidesTest {
  private static PartResult run(String sides, Open open, String covering, double[]... points) {
    Pads pads = new Pads();
    pads.outline = Pads.free(points);
    pads.covering = covering;
    pads.coverThickness = OptionalDouble.empty();
    pads.runs = List.of(Pads.open(open, sides.split(",")));
    return pads.run();
  }

  private static List<String> stops(PartResult part) {
    return part.findings().stream()
        .filter(f -> f.level() == Finding.Level.STOP)
        .map(Finding::rule)
        .toList();
  }

  /** A strip beside a bare wall ends square to its own side, so it covers all of its wall. */
  @ParameterizedTest
  @ValueSource(doubles = {-120, -40, -10, 0, 10, 40, 120})
  void aBareSideBesideSplayedWallsLeavesThoseCovered(double splay) {
    PartResult part =
        run(
            "side 3",
            Open.BARE,
            "knit-backed-vinyl",
            new double[][] {{0, 0}, {400, 0}, {400 + splay, 300}, {-splay, 300}});

    assertThat(part.wrap().failures()).isEmpty();
    assertThat(stops(part)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "BARE, 0.02",
    "BARE, 0.0875",
    "BARE, 0.3",
    "GLUED, 0.02",
    "GLUED, 0.0875",
    "GLUED, 0.3"
  })
  void aBowedSideMayBeOpen(Open open, double bulge) {
    for (String covering : List.of("knit-backed-vinyl", "woven-wool")) {
      PartResult part =
          run(
              "side 2",
              open,
              covering,
              new double[][] {{-200, -150}, {200, -150, bulge}, {200, 150}, {-200, 150}});

      assertThat(stops(part)).as(covering).isEmpty();
      assertThat(part.wrap().failures()).as(covering).isEmpty();
      // Where there is no turn-under there is nothing to notch.
      assertThat(part.cover().corners())
          .extracting(CornerPlan::treatment)
          .doesNotContain(Treatment.NOTCHES);
    }
  }

  @Test
  void aRoundedCornerOrAHalfRoundEndMayBeGlued() {
    for (String covering : List.of("knit-backed-vinyl", "woven-wool")) {
      for (double[][] points :
          new double[][][] {
            {{0, 0}, {360, 0, Math.tan(Math.PI / 8)}, {400, 40}, {400, 300}, {0, 300}},
            {{0, 0}, {300, 0, 1}, {300, 200}, {0, 200}}
          }) {
        PartResult part = run("side 2", Open.GLUED, covering, points);

        assertThat(part.wrap().failures()).as(covering).isEmpty();
        assertThat(stops(part)).as(covering).isEmpty();
      }
    }
  }

  /** The covering ends at the edge of the face: nothing is eased there. */
  @Test
  void aBareRoundingIsNotEased() {
    PartResult part =
        run(
            "side 2",
            Open.BARE,
            "knit-backed-vinyl",
            new double[][] {
              {0, 0}, {360, 0, Math.tan(Math.PI / 8)}, {400, 40}, {400, 300}, {0, 300}
            });

    assertThat(part.findings()).extracting(Finding::rule).doesNotContain("corner-eased");
  }

  /** What holds must pull against something: two sides that face each other, or more. */
  @ParameterizedTest
  @CsvSource({
    "'side 1,side 2,side 3', true",
    "'side 1,side 2', true",
    "'side 1,side 3', false",
    "side 1, false"
  })
  void sidesThatHoldMustNotAllFaceOneWay(String bare, boolean stopped) {
    PartResult part =
        run(
            bare,
            Open.BARE,
            "knit-backed-vinyl",
            new double[][] {{0, 0}, {400, 0}, {400, 200}, {0, 200}});

    assertThat(stops(part).contains("run-one-way")).isEqualTo(stopped);
  }

  /** Each arc of a rounding has the turn-under that it was given, whichever is drawn first. */
  @ParameterizedTest
  @ValueSource(strings = {"side 2", "side 3"})
  void arcsOfOneRoundingHaveTheirOwnTurnUnder(String side) {
    Pads pads = new Pads();
    double quarter = Math.tan(Math.PI / 8);
    pads.outline =
        Pads.free(
            new double[][] {
              {-200, -150}, {200, -150, quarter}, {350, 0, quarter}, {200, 150}, {-200, 150}
            });
    pads.covering = "woven-wool";
    pads.coverThickness = OptionalDouble.empty();
    pads.runs = List.of(Pads.turned(30, side));
    PartResult part = pads.run();

    assertThat(stops(part)).isEmpty();
    assertThat(part.wrap().failures()).isEmpty();
  }
}
