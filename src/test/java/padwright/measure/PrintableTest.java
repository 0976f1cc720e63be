package padwright.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PrintableTest {
  @Test
  void controlCharactersAndOverlongTextsAreNotPassedOn() {
    assertThat(Printable.shortened("a\nb\u001b[31m\u202ec", 20)).isEqualTo("a?b?[31m?c");
    assertThat(Printable.shortened("x".repeat(100), 5)).isEqualTo("xxxxx...");
    assertThat(Printable.shortened("caf\u00e9", 4)).isEqualTo("caf\u00e9");
  }
}
