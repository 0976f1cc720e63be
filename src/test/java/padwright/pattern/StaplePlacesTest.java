package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import padwright.design.Finding;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.Hole;
import padwright.design.WrappedPad.Treatment;
import padwright.fastening.StaplePlan;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;

/** That the staples of a plan can all be driven: on the board, and none into another. */
class StaplePlacesTest {
  static List<OutlineShape> outlines() {
    return List.of(
        Pads.rectangle(600, 60),
        Pads.rectangle(60, 500),
        Pads.rectangle(75, 500),
        Pads.rectangle(40, 40),
        Pads.rectangle(70, 70),
        Pads.rectangle(400, 300),
        Pads.rectangle(400, 250, 0, 5, 30, 100),
        Pads.rectangle(400, 60, 30),
        new OutlineShape.Trapezoid(400, 120, 60),
        new OutlineShape.Trapezoid(400, 120, 150),
        new OutlineShape.Trapezoid(1000, 300, 100),
        new OutlineShape.Trapezoid(120, 400, 300),
        new OutlineShape.Circle(40),
        new OutlineShape.Circle(60),
        new OutlineShape.Circle(320),
        new OutlineShape.Ellipse(600, 100),
        new OutlineShape.Ellipse(100, 600));
  }

  private static PartResult run(OutlineShape outline, double spacing) {
    Pads pads = new Pads();
    pads.outline = outline;
    pads.spacing = OptionalDouble.of(spacing);
    return pads.run();
  }

  @ParameterizedTest
  @MethodSource("outlines")
  void noTwoCrownsMeet(OutlineShape outline) {
    for (double spacing : new double[] {5, 20, 25, 40}) {
      assertThat(meeting(run(outline, spacing))).as("spacing %s", spacing).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("outlines")
  void everyStapleIsOnTheBoard(OutlineShape outline) {
    PartResult part = run(outline, 25);
    assertThat(part.staples().positions()).hasSizeGreaterThanOrEqualTo(4);
    assertThat(offTheBoard(part)).isEmpty();
  }

  @Test
  void aStapleThatMakesWayForAHoleStaysOnTheBoardAndOffTheOthers() {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(400, 300);
    List<Hole> holes = new ArrayList<>();
    for (double x : new double[] {-100, -50, 0, 50, 100}) {
      holes.add(new Hole(x, -138, 25));
    }
    holes.add(new Hole(190, 140, 25));
    pads.holes = holes;
    PartResult part = pads.run();
    assertThat(offTheBoard(part)).isEmpty();
    assertThat(meeting(part)).isEmpty();

    pads.outline = new OutlineShape.Circle(60);
    pads.holes = List.of(new Hole(0, -18, 10), new Hole(18, 0, 10));
    part = pads.run();
    double least = part.spec().edgeDistance() - 0.05;
    for (StaplePlan.Position p : part.staples().positions()) {
      assertThat(30 - p.at().length()).as(p.toString()).isGreaterThan(least);
    }
    assertThat(meeting(part)).isEmpty();
  }

  @Test
  void aSpacingUnderTheCrownIsSaidAndNotUsed() {
    PartResult part = run(Pads.rectangle(400, 300), 5);
    assertThat(part.findings())
        .anySatisfy(
            f -> {
              assertThat(f.rule()).isEqualTo("staple-spacing");
              assertThat(f.level()).isEqualTo(Finding.Level.CAUTION);
            });
    assertThat(part.staples().positions()).hasSizeLessThan(1400 / 13);
  }

  @Test
  void onARoundedBackArrisTheCoveringIsStillCountedAndItIsACaution() {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(400, 300);
    pads.edgeDistance = OptionalDouble.of(4);
    PartResult sharp = pads.run();
    pads.backArris = 6;
    PartResult rounded = pads.run();
    assertThat(rounded.figures().staples().corner().layers())
        .isGreaterThanOrEqualTo(sharp.figures().staples().corner().layers());
    assertThat(rounded.findings()).anyMatch(f -> f.rule().equals("staple-on-arris"));
    assertThat(sharp.findings()).noneMatch(f -> f.rule().equals("staple-on-arris"));
  }

  @Test
  void aFoldsStapleIsNotAskedToHoldASideOfNoLength() {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(400, 300);
    pads.treatments = List.of(Treatment.DOUBLE_PLEAT);
    pads.pull = OptionalDouble.of(0.5);
    List<Finding> pulls =
        pads.run().findings().stream().filter(f -> f.rule().equals("staple-pull")).toList();
    assertThat(pulls).hasSize(4).allMatch(f -> f.limit().orElse(0) > 0);
  }

  @Test
  void inPressedFibreBoardNoCrownComesNearerToACornerThanThreeQuartersOfAnInch() {
    for (Treatment treatment :
        List.of(Treatment.SINGLE_PLEAT, Treatment.DOUBLE_PLEAT, Treatment.MITRED_END)) {
      for (double edge : new double[] {8, 10, 15}) {
        Pads pads = new Pads();
        pads.outline = Pads.rectangle(400, 300);
        pads.board = "mdf";
        pads.treatments = List.of(treatment);
        pads.edgeDistance = OptionalDouble.of(edge);
        PartResult part = pads.run();
        double half = part.spec().staple().crown() / 2;
        for (StaplePlan.Position p : part.staples().positions()) {
          for (int i = -20; i <= 20; i++) {
            Vec2 q = p.at().along(Vec2.polar(p.angle()), half * i / 20);
            double far = new Vec2(200 - Math.abs(q.x()), 150 - Math.abs(q.y())).length();
            // Trade page on MDF: no staple within 3/4 in of a corner.
            assertThat(far).as("%s %s %s", treatment, edge, p).isGreaterThan(19.05 - 1e-6);
          }
        }
        assertThat(meeting(part)).isEmpty();
      }
    }
  }

  /** Staples whose middle is outside the base. */
  private static List<StaplePlan.Position> offTheBoard(PartResult part) {
    List<Vec2> outline = part.shape().outline().flattened(0.001);
    return part.staples().positions().stream()
        .filter(p -> !Polygons.contains(outline, p.at()))
        .toList();
  }

  /** Pairs of staples whose crowns, as points along their lengths, come within half a mm. */
  private static List<String> meeting(PartResult part) {
    double crown = part.spec().staple().crown();
    List<StaplePlan.Position> all = part.staples().positions();
    List<String> pairs = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (all.get(i).at().distance(all.get(j).at()) < crown + 1
            && nearest(all.get(i), all.get(j), crown) < 0.5) {
          pairs.add(all.get(j) + " and " + all.get(i));
        }
      }
    }
    return pairs;
  }

  private static double nearest(StaplePlan.Position a, StaplePlan.Position b, double crown) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = -40; i <= 40; i++) {
      Vec2 p = a.at().along(Vec2.polar(a.angle()), crown * i / 80);
      for (int j = -40; j <= 40; j++) {
        Vec2 q = b.at().along(Vec2.polar(b.angle()), crown * j / 80);
        least = Math.min(least, p.distance(q));
      }
    }
    return least;
  }
}
