package padwright.desk.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked by hand: what would meet is set evenly about the mean of where it belongs. */
class SpreadTest {
  @Test
  void whatHasRoomStaysWhereItBelongs() {
    assertThat(Spread.along(List.of(10.0, 40.0, 70.0), 20, 0, 100)).containsExactly(10, 40, 70);
  }

  @Test
  void twoAtOnePlaceStandHalfAPitchEitherSide() {
    assertThat(Spread.along(List.of(50.0, 50.0), 20, 0, 100)).containsExactly(40, 60);
  }

  @Test
  void whatIsWantedInTheWrongOrderKeepsTheOrderGiven() {
    assertThat(Spread.along(List.of(60.0, 40.0), 10, 0, 100)).containsExactly(45, 55);
  }

  @Test
  void nothingStandsBelowTheLeastOrAboveTheGreatest() {
    assertThat(Spread.along(List.of(-30.0, -20.0), 10, 0, 100)).containsExactly(0, 10);
    assertThat(Spread.along(List.of(95.0, 99.0), 10, 0, 100)).containsExactly(90, 100);
  }

  @Test
  void withTooLittleRoomThePitchIsKept() {
    assertThat(Spread.along(List.of(5.0, 5.0, 5.0), 10, 0, 15)).containsExactly(0, 10, 20);
  }
}
