package padwright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The sentences read as the platform's own formatter writes them. */
class SentenceTest {
  @Test
  void numbersRoundAsThePlatformsFormatterRounds() {
    Random random = new Random(5);
    for (int i = 0; i < 20_000; i++) {
      double v = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(8) - 2);
      if (i % 3 == 0) {
        v = Math.round(v * 100) / 100.0 + 0.005;
      }
      int digits = random.nextInt(4);
      assertThat(Sentence.decimal(v, digits))
          .as("%s to %d", v, digits)
          .isEqualTo(String.format(Locale.ROOT, "%." + digits + "f", v));
    }
  }

  @Test
  void valuesStandInTheirPlaces() {
    assertThat(Sentence.of("%s: %d of %.1f, 50 %%", "a", 3, 2.25)).isEqualTo("a: 3 of 2.3, 50 %");
    assertThat(Sentence.of("plain")).isEqualTo("plain");
  }

  @Test
  void whatIsNoFormatIsRefused() {
    assertThatThrownBy(() -> Sentence.of("%x", 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Sentence.of("%s")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Sentence.of("50 %")).isInstanceOf(IllegalArgumentException.class);
  }
}
