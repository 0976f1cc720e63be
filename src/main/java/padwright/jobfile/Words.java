package padwright.jobfile;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import padwright.design.Fittings.Through;
import padwright.design.Fittings.ZoneKind;
import padwright.design.WrappedPad.Finish;
import padwright.design.WrappedPad.Fixing;
import padwright.design.WrappedPad.Kind;
import padwright.design.WrappedPad.Neighbour;
import padwright.design.WrappedPad.Open;
import padwright.design.WrappedPad.Side;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.design.WrappedPad.Treatment;
import padwright.json.Node;

/** The trade words of a job file for the values of one choice, both ways. */
final class Words<E extends Enum<E>> {
  static final Words<Kind> KIND = new Words<>(Kind.class, ' ');
  static final Words<Side> SIDE = new Words<>(Side.class, ' ');
  static final Words<SizeMeaning> SIZE = new Words<>(SizeMeaning.class, ' ');
  static final Words<Neighbour> NEIGHBOUR = new Words<>(Neighbour.class, '-');
  static final Words<Treatment> TREATMENT = new Words<>(Treatment.class, ' ');
  static final Words<Fixing> FIXING = new Words<>(Fixing.class, ' ');
  static final Words<Open> OPEN = new Words<>(Open.class, ' ');
  static final Words<Through> THROUGH = new Words<>(Through.class, ' ');
  static final Words<ZoneKind> ZONE = new Words<>(ZoneKind.class, '-');
  static final Words<Finish> FINISH = new Words<>(Finish.class, ' ');

  private final Map<String, E> values = new LinkedHashMap<>();
  private final Map<E, String> words;

  private Words(Class<E> type, char between) {
    words = new EnumMap<>(type);
    for (E value : type.getEnumConstants()) {
      String word = value.name().toLowerCase(Locale.ROOT).replace('_', between);
      values.put(word, value);
      words.put(value, word);
    }
  }

  /** The value the text of {@code node} names; else refused with the nearest words. */
  E read(Node node) {
    return values.get(node.oneOf(values.keySet()));
  }

  String word(E value) {
    return words.get(value);
  }

  /** Every word, in the order of the values. */
  Set<String> all() {
    return values.keySet();
  }

  /** Every word as one text, such as {@code "free", "butting", "keep-clear"}. */
  String listed() {
    return '"' + String.join("\", \"", values.keySet()) + '"';
  }

  @Override
  public String toString() {
    return Arrays.toString(values.keySet().toArray());
  }
}
