package padwright.desk.solid;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import padwright.shape.PadShape;
import padwright.shape.Section;

/**
 * One layer along the whole edge: its bands, one for each that differs, and the outline that says
 * where each holds.
 */
record BandsOnRim(Rim rim, Chains chains) {
  static BandsOnRim of(PadShape shape, Function<Section, Band> band) {
    return of(shape, (section, k) -> section, band);
  }

  /**
   * The bands of a layer.
   *
   * @param key what tells bands apart, of a section and the number of a side
   * @param band of such a key
   */
  static <K> BandsOnRim of(
      PadShape shape, BiFunction<Section, Integer, K> key, Function<K, Band> band) {
    Map<K, Integer> numbers = new LinkedHashMap<>();
    List<Band> bands = new ArrayList<>();
    int n = shape.sideNames().size();
    int[][] at = new int[2][n];
    for (int k = 0; k < n; k++) {
      for (int end = 0; end < 2; end++) {
        Section section = shape.sections().at(shape.sideNames().get(k), end == 0);
        K own = key.apply(section, k);
        Integer number = numbers.get(own);
        if (number == null) {
          number = bands.size();
          numbers.put(own, number);
          bands.add(band.apply(own));
        }
        at[end][k] = number;
      }
    }
    return new BandsOnRim(new Rim(shape.outline(), at[0], at[1]), Chains.of(bands));
  }
}
