package padwright.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import padwright.drawing.Chain.Source;
import padwright.drawing.DrawingReport.Count;
import padwright.measure.Printable;

/** Counts elements by kind, layer and what became of them, while a file is read. */
final class Tally {
  private static final int LONGEST_NAME = 40;

  /** More different lines than this nobody reads; a hostile file could make thousands. */
  private static final int MOST_LINES = 100;

  private record Key(String kind, String layer, String why) {}

  private final Map<Key, Integer> read = new LinkedHashMap<>();
  private final Map<Key, Integer> left = new LinkedHashMap<>();

  void read(Source s) {
    add(read, s.kind(), s.layer(), "");
  }

  void left(Source s, String why) {
    add(left, s.kind(), s.layer(), why);
  }

  private static void add(Map<Key, Integer> map, String kind, String layer, String why) {
    Key key = new Key(shown(kind), shown(layer), why);
    if (map.size() >= MOST_LINES && !map.containsKey(key)) {
      key = new Key("other elements", "", "");
    }
    map.merge(key, 1, Integer::sum);
  }

  private static String shown(String name) {
    return Printable.shortened(name, LONGEST_NAME);
  }

  List<Count> read() {
    return counts(read);
  }

  List<Count> left() {
    return counts(left);
  }

  private static List<Count> counts(Map<Key, Integer> map) {
    List<Count> list = new ArrayList<>();
    map.forEach((k, n) -> list.add(new Count(n, k.kind(), k.layer(), k.why())));
    return list;
  }
}
