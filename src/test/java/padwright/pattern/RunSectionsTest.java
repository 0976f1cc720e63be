package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padwright.cover.CornerPlan;
import padwright.design.EdgeShape;
import padwright.design.Finding;
import padwright.design.WrappedPad.Run;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.shape.TautPath;

/**
 * Sides with an edge shape or overhang of their own. The lengths are worked out by hand from the
 * section: board 12, foam 24, covering 1.0, whose neutral line runs 0.5 outside the hull.
 */
class RunSectionsTest {
  /** Down a square edge: wall 36, two quarter bends of radius 0.5, turn-under 20. */
  private static final double SQUARE = 36 + Math.PI / 2 + 20;

  /** A fold over a bend is drawn in eight chords, mm. */
  private static final double CHORDS = 0.1;

  private static Run edge(EdgeShape shape, String... sides) {
    return new Run(
        List.of(sides),
        Optional.of(shape),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty());
  }

  private static Run overhang(double mm, String... sides) {
    return Pads.run(Optional.empty(), OptionalDouble.of(mm), sides);
  }

  @Test
  void aRoundedFrontSavesItsPartOfTheDevelopedSideThereAlone() {
    PartResult part = Pads.seat(edge(new EdgeShape.Round(6), "front")).run();
    Bounds trim = part.cover().trim().bounds();

    // A quarter of a circle instead of two sides of its square: (2 - pi/2) 6 less.
    double front = SQUARE - (2 - Math.PI / 2) * 6;
    assertThat(-150 - trim.minY()).isCloseTo(front, within(1e-9));
    assertThat(trim.maxY() - 150).isCloseTo(SQUARE, within(1e-9));
    assertThat(trim.maxX() - 200).isCloseTo(SQUARE, within(1e-9));
    assertThat(part.cover().perSide().get(0)).isCloseTo(front, within(1e-9));
    assertThat(part.wrap().failures()).isEmpty();
    assertThat(part.findings()).extracting(Finding::rule).contains("run-section");
    assertThat(part.stopped()).isFalse();
  }

  @Test
  void anOverhangOfOneSideIsFollowedByFoamCoverAndFinishedSize() {
    PartResult part = Pads.seat(overhang(10, "back")).run();

    // Flat 10 on the top, 24 down the foam, then slanting to the board's back arris, 12 down and
    // 10 in; all bends together turn by half a circle.
    double back = 10 + 24 + Math.hypot(10, 12) + Math.PI / 2 + 20;
    assertThat(part.cover().trim().bounds().maxY() - 150).isCloseTo(back, within(1e-9));
    assertThat(part.shape().foam().get(0).bounds().maxY()).isCloseTo(160, within(1e-9));
    assertThat(part.shape().foam().get(0).bounds().maxX()).isCloseTo(200, within(1e-9));
    // 10 of foam and the covering's thickness on either side.
    assertThat(part.shape().finishedWidth()).isCloseTo(300 + 10 + 2, within(1e-9));
    assertThat(part.shape().finishedLength()).isCloseTo(400 + 2, within(1e-9));
    assertThat(part.wrap().failures()).isEmpty();
    assertThat(part.stopped()).isFalse();
  }

  @Test
  void sidesThatAllHaveTheSameSectionGiveTheSamePartAsThePartItself() {
    for (Treatment t : List.of(Treatment.SINGLE_PLEAT, Treatment.DOUBLE_PLEAT)) {
      Pads whole = Pads.seat();
      whole.treatments = List.of(t);
      whole.edge = new EdgeShape.Bevel(8);
      Pads runs = Pads.seat(edge(new EdgeShape.Bevel(8), "front", "right", "back", "left"));
      runs.treatments = List.of(t);
      PartResult a = whole.run();
      PartResult b = runs.run();
      assertThat(b.cover().cut().length()).isCloseTo(a.cover().cut().length(), within(1e-9));
      assertThat(b.cover().cut().signedArea())
          .isCloseTo(a.cover().cut().signedArea(), within(1e-6));
      assertThat(b.findings()).extracting(Finding::rule).doesNotContain("run-section");
    }
  }

  @Test
  void bothStripsAreFoldedAlongTheSameArris() {
    for (Run run :
        List.of(
            edge(new EdgeShape.Round(10), "front"),
            edge(new EdgeShape.Bevel(12), "front"),
            edge(new EdgeShape.FullRound(), "front"),
            overhang(8, "front"),
            overhang(-6, "front"))) {
      PartResult part = Pads.seat(run).run();
      CornerPlan corner =
          part.cover().corners().stream()
              .filter(c -> c.name().equals("front right"))
              .findFirst()
              .orElseThrow();
      List<Path> folds =
          corner.folds().stream()
              .filter(f -> f.sense() == CornerPlan.Sense.OUTWARD)
              .map(CornerPlan.Fold::line)
              .toList();
      // From the tip to half the board's height, seen from either side: one arris in space.
      double front = downTo(folds.get(0), halfBoard(part, "front"), 150, true);
      double right = downTo(folds.get(1), halfBoard(part, "right"), 200, false);
      assertThat(front).as("%s", run).isCloseTo(right, within(CHORDS));
    }
  }

  private static double halfBoard(PartResult part, String side) {
    return part.shape().sections().path(side).levelAt(6);
  }

  /** Length of a fold on the flat down to a path length of the side it belongs to. */
  private static double downTo(Path fold, double level, double half, boolean front) {
    double sum = 0;
    for (Segment s : fold.segments()) {
      double from = (front ? -s.start().y() : s.start().x()) - half;
      double to = (front ? -s.end().y() : s.end().x()) - half;
      if (to <= level + 1e-9) {
        sum += s.length();
      } else if (from < level) {
        sum += s.length() * (level - from) / (to - from);
      }
    }
    return sum;
  }

  @Test
  void whereThereIsNoCornerTheChangeIsAStop() {
    Pads pads = Pads.seat(edge(new EdgeShape.Round(6), "front"));
    pads.outline = Pads.rectangle(400, 300, 40);
    assertThat(pads.run().findings())
        .anyMatch(f -> f.level() == Finding.Level.STOP && f.rule().equals("run-section-smooth"));
  }

  @Test
  void aRoundedCornerTakesTheSectionOfItsTwoSides() {
    Pads pads = Pads.seat(edge(new EdgeShape.Round(6), "front", "right", "back", "left"));
    pads.outline = Pads.rectangle(400, 300, 40);
    PartResult part = pads.run();
    assertThat(part.stopped()).isFalse();
    double saved = (2 - Math.PI / 2) * 6;
    assertThat(part.cover().perSide()).allMatch(d -> Math.abs(d - SQUARE + saved) < 1e-9);
  }

  /** No crash, and each is proved or stopped by name; most are proved. */
  @Test
  void randomSectionsAreProvedOrStopped() {
    Random random = new Random(20261125);
    List<String> sides = List.of("front", "right", "back", "left");
    int proved = 0;
    List<String> unnamed = new ArrayList<>();
    int parts = 400;
    for (int i = 0; i < parts; i++) {
      List<Run> runs = new ArrayList<>();
      for (String side : sides) {
        double kind = random.nextDouble();
        if (kind < 0.35) {
          runs.add(edge(shape(random), side));
        } else if (kind < 0.7) {
          runs.add(overhang(Math.round(random.nextDouble() * 22 - 8), side));
        }
      }
      Pads pads = Pads.seat(runs.toArray(Run[]::new));
      pads.outline = Pads.rectangle(150 + random.nextInt(400), 120 + random.nextInt(300));
      pads.treatments =
          List.of(
              random.nextBoolean()
                  ? Treatment.AUTO
                  : random.nextBoolean() ? Treatment.DOUBLE_PLEAT : Treatment.SINGLE_PLEAT);
      PartResult part = pads.run();
      if (part.wrap().proved()) {
        proved++;
      } else if (!part.stopped()) {
        unnamed.add(runs.toString());
      }
      TautPath usual = part.shape().section().taut();
      assertThat(part.cover().perSide()).allMatch(d -> d > usual.backStart());
    }
    System.out.println("parts with runs of their own section: " + proved + " of " + parts);
    assertThat(unnamed).isEmpty();
    assertThat(proved).isGreaterThan(parts * 8 / 10);
  }

  private static EdgeShape shape(Random random) {
    return switch (random.nextInt(3)) {
      case 0 -> new EdgeShape.Round(2 + random.nextInt(14));
      case 1 -> new EdgeShape.Bevel(2 + random.nextInt(14));
      default -> new EdgeShape.FullRound();
    };
  }
}
