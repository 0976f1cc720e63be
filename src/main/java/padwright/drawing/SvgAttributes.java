package padwright.drawing;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamReader;
import padwright.geometry.Affine;
import padwright.measure.InputRefused;
import padwright.measure.Printable;

/** The attributes of one SVG element that have no namespace, and where it stands. */
final class SvgAttributes {
  private static final int SHOWN = 40;

  private final Map<String, String> values = new LinkedHashMap<>();
  private final int line;
  private final Budget budget;

  SvgAttributes(XMLStreamReader xml, Budget budget) {
    this.line = xml.getLocation().getLineNumber();
    this.budget = budget;
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      String space = xml.getAttributeNamespace(i);
      boolean label = xml.getAttributeLocalName(i).equals("label");
      if (space == null || space.isEmpty() || label) {
        values.put(xml.getAttributeLocalName(i), xml.getAttributeValue(i));
      }
    }
  }

  int line() {
    return line;
  }

  Optional<String> text(String name) {
    return Optional.ofNullable(values.get(name));
  }

  NumberScanner scanner(String name) {
    return new NumberScanner(values.get(name), name, line, budget);
  }

  /** Whether the element is hidden by an attribute or a style of its own. */
  boolean hidden() {
    return property("display").filter(v -> v.startsWith("none")).isPresent()
        || property("visibility")
            .filter(v -> v.startsWith("hidden") || v.startsWith("collapse"))
            .isPresent();
  }

  private Optional<String> property(String name) {
    Optional<String> styled = style().value(name);
    if (styled.isPresent()) {
      return styled;
    }
    return text(name).map(String::strip);
  }

  private SvgStyle style() {
    return new SvgStyle(values.getOrDefault("style", ""));
  }

  /**
   * Refuses a root that is moved or sized by anything but its width, height and viewBox.
   *
   * @param sized whether the user said what a unit is, so that a size by style does not matter
   */
  void checkRoot(boolean sized) {
    Optional<String> moves = style().moves();
    boolean size = moves.filter(m -> m.equals("width") || m.equals("height")).isPresent();
    if (moves.isPresent() && !(size && sized)) {
      throw refuse(
          "the whole drawing's " + moves.get() + " is given by a style, which is not read",
          "Save the drawing with its width and height as plain attributes"
              + (size ? ", or say what one unit is" : ""));
    }
    if (text("transform").filter(t -> !t.isBlank()).isPresent()) {
      throw refuse(
          "the whole drawing is moved by a transform of the svg element itself",
          "Put that transform on a group inside it");
    }
  }

  /** The transform attribute; a transform or a size in a style is refused, not passed over. */
  Affine transform() {
    if (style().moves().isPresent() || values.containsKey("transform-origin")) {
      throw refuse(
          "its size or place is given by a style, which is not read",
          "Save the drawing with transforms and sizes as plain attributes");
    }
    if (text("transform").isEmpty()) {
      return Affine.IDENTITY;
    }
    NumberScanner in = scanner("transform");
    Affine all = Affine.IDENTITY;
    while (!in.done()) {
      budget.time();
      all = all.after(TransformWord.read(in));
    }
    if (!all.finite()) {
      throw in.refuse("the numbers come to no finite map");
    }
    return all;
  }

  InputRefused refuse(String problem, String remedy) {
    return budget.refuse(line, problem, remedy);
  }

  /** A value cut short, for a refusal. */
  static String shown(String value) {
    return '"' + Printable.shortened(value, SHOWN) + '"';
  }
}
