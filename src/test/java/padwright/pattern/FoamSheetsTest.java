package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class FoamSheetsTest {
  private static final List<Double> SOLD = List.of(10.0, 12.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0);

  @Test
  void theNearestThreeSheetsAreNamedThinToThick() {
    // From 34 it is 4 to 30, 6 to 40 and 9 to 25.
    assertThat(new FoamSheets(SOLD, 34).near()).isEqualTo("25.0, 30.0, 40.0");
    assertThat(new FoamSheets(SOLD, 34).nearest()).isEqualTo(30);
  }

  @Test
  void pairsThatMakeTheThicknessAreNamedTheMostAlikeFirst() {
    // 35 = 15 + 20 = 10 + 25; no other two of these sheets make it within 1 mm.
    assertThat(new FoamSheets(SOLD, 35).remedy()).contains("15.0 + 20.0 or 10.0 + 25.0");
  }

  @Test
  void aThicknessThatNoPairMakesIsCut() {
    assertThat(new FoamSheets(List.of(10.0, 50.0), 33).remedy()).contains("no two sheets make it");
  }

  @Test
  void aSheetWithinAMillimetreServes() {
    assertThat(new FoamSheets(SOLD, 25.4).sold()).isTrue();
    assertThat(new FoamSheets(SOLD, 27).sold()).isFalse();
    assertThat(new FoamSheets(List.of(), 27).sold()).isTrue();
  }
}
