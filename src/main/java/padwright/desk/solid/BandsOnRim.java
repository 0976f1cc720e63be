package padwright.desk.solid;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import padwright.geometry.Segment;
import padwright.shape.PadShape;
import padwright.shape.Section;

/**
 * One layer along the whole edge: its bands, one for each that differs, and the outline that says
 * where each holds.
 */
record BandsOnRim(Rim rim, Chains chains) {
  /** Pieces that a passage is cut into. */
  private static final int PARTS = 8;

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
    List<Segment> pieces = new ArrayList<>();
    List<int[]> at = new ArrayList<>();
    for (int k = 0; k < shape.sideNames().size(); k++) {
      int[] ends = new int[2];
      for (int end = 0; end < 2; end++) {
        Section section = shape.sections().at(shape.sideNames().get(k), end == 0);
        K own = key.apply(section, k);
        Integer number = numbers.get(own);
        if (number == null) {
          number = bands.size();
          numbers.put(own, number);
          bands.add(band.apply(own));
        }
        ends[end] = number;
      }
      pieces.add(shape.outline().segments().get(k));
      at.add(ends);
    }
    Chains chains = Chains.of(bands);
    List<Rim.Piece> rim = new ArrayList<>();
    for (int k = 0; k < pieces.size(); k++) {
      int[] ends = at.get(k);
      // A passage is a twisted surface, which one row of walls would not follow.
      int parts = ends[0] == ends[1] ? 1 : PARTS;
      int from = ends[0];
      for (int j = 1; j <= parts; j++) {
        int to = j == parts ? ends[1] : chains.between(ends[0], ends[1], (double) j / parts);
        Segment whole = pieces.get(k);
        Segment piece =
            parts == 1
                ? whole
                : Segment.line(whole.pointAt((j - 1.0) / parts), whole.pointAt((double) j / parts));
        rim.add(new Rim.Piece(piece, from, to));
        from = to;
      }
    }
    return new BandsOnRim(new Rim(rim), chains);
  }
}
