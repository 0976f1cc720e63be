package padwright.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padwright.json.LocatedJson;
import padwright.measure.InputRefused;

class ConstantsTest {
  /**
   * Published and trade figures in their own units: Johnson 1919 ch. IV (3/16 in); Teague 2010 (1/4
   * in); Joint Industry Foam Standards 10.2.1 (1/2, 1/4, 1/16 in); trade pages (3/4 in, 1/4 in).
   */
  @ParameterizedTest
  @CsvSource({
    "opening-clearance, 3, 16",
    "back-arris-radius, 1, 4",
    "foam-length-tolerance, 1, 2",
    "foam-width-tolerance, 1, 4",
    "foam-thickness-tolerance, 1, 16",
    "staple-corner-pressed-fibre, 3, 4",
    "staple-hold-good, 1, 4"
  })
  void inchFiguresAreTurnedIntoMillimetresExactly(String name, double top, double bottom) {
    assertThat(Constants.value(name)).isCloseTo(top / bottom * 25.4, within(1e-12));
    assertThat(Constants.row(name).unit()).isEqualTo("mm");
  }

  /** Wood Handbook Eq. 8-1 worked: G 0.48, D 3.33, L 38 mm -> 1,093.2 N. */
  @Test
  void theNailFormulaGivesItsWorkedFigure() {
    double p =
        Constants.value("nail-withdrawal-factor")
            * Math.pow(0.48, Constants.value("nail-withdrawal-exponent"))
            * 3.33
            * 38;
    assertThat(p).isCloseTo(1093.2, within(0.05));
  }

  /** ACT guideline: 35 lbf. */
  @Test
  void clothStrengthIsThirtyFivePounds() {
    assertThat(Constants.value("cloth-strength")).isCloseTo(35 * 4.4482216152605, within(0.05));
  }

  /** EN 1995-1-1 8.4 for a wire of 0.9 x 0.7: 14 d = 11.1 mm. */
  @Test
  void aStructuralStapleWouldGoInElevenMillimetres() {
    assertThat(Constants.value("staple-structural-diameters") * Math.sqrt(0.9 * 0.7))
        .isCloseTo(11.1, within(0.05));
  }

  @Test
  void anOwnLimitSaysThatItIsOurs() {
    assertThat(Constants.row("staple-margin-least").value()).isEqualTo(1.5);
    assertThat(Constants.row("staple-margin-least").origin().status()).isEqualTo(Status.OWN);
  }

  @Test
  void everyConstantSaysWhatItIs() {
    assertThat(Constants.all()).hasSizeGreaterThan(50);
    for (Constants.Row row : Constants.all()) {
      assertThat(row.about()).isNotBlank();
      assertThat(Constants.row(row.name())).isEqualTo(row);
    }
  }

  @Test
  void anUnknownNameIsAFaultInTheProgram() {
    assertThatThrownBy(() -> Constants.value("staple-magic"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("staple-magic");
  }

  @Test
  void aConstantGivenTwiceIsRefused() {
    String row =
        "{\"id\":\"a\",\"value\":1,\"unit\":\"mm\",\"about\":\"a\",\"source\":\"s\",\"status\":\"own\"}";
    String twice = "{\"constants\":[" + row + "," + row + "]}";
    assertThatThrownBy(() -> Constants.read(LocatedJson.parse("c", twice)))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("twice");
  }
}
