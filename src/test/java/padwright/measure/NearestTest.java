package padwright.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {
  // The textbook pair: kitten -> sitten -> sittin -> sitting, three edits (Levenshtein 1966).
  @Test
  void theDistanceIsLevenshteins() {
    assertThat(Nearest.distance("kitten", "sitting")).isEqualTo(3);
    assertThat(Nearest.distance("", "foam")).isEqualTo(4);
    assertThat(Nearest.distance("foam", "foam")).isZero();
  }

  @Test
  void theNearestNamesComeFirstWhateverTheirCase() {
    assertThat(Nearest.names("Thicknes", List.of("measured", "thickness", "holes"), 1))
        .containsExactly("thickness");
  }
}
