package padwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import padwright.design.Fittings.ZoneKind;
import padwright.pattern.FittedPads;
import padwright.pattern.Pads;

/** Where cut-outs and fittings come in the order of work. */
class FittingStepsTest {
  private static int at(List<String> steps, String words) {
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).contains(words)) {
        return i;
      }
    }
    return -1;
  }

  @Test
  void holesComeBeforeTheFoamAndSlitsWhenTheCoverIsFastAllRound() {
    List<String> steps =
        OrderOfWork.steps(
            new FittedPads()
                .cut(Pads.rectangle(150, 90), 0, 0)
                .insert(150, 0)
                .vent(-150, 0, 25)
                .zone(ZoneKind.TAPE, 0, 120, 200, 25)
                .run());
    int glue = at(steps, "Glue the foam");
    assertThat(at(steps, "Cut the cut-outs")).isBetween(1, glue);
    assertThat(at(steps, "T-nuts")).isBetween(1, glue);
    assertThat(at(steps, "vents")).isBetween(1, glue);
    int slit = at(steps, "slit the covering");
    assertThat(slit).isGreaterThan(at(steps, "Corners"));
    assertThat(slit).isLessThan(at(steps, "Dust cover"));
    assertThat(at(steps, "Clean the zones")).isEqualTo(steps.size() - 1);
  }

  @Test
  void aPartWithoutThemHasNoStepForThem() {
    assertThat(OrderOfWork.steps(new FittedPads().run()))
        .noneMatch(s -> s.matches("(?i).*(cut-out|vent|T-nut|zone).*"));
    List<String> whole =
        OrderOfWork.steps(new FittedPads().whole(Pads.rectangle(80, 80), 0, 0).run());
    assertThat(at(whole, "Cut the cut-outs")).isPositive();
    assertThat(at(whole, "slit the covering")).isNegative();
  }
}
