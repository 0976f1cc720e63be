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
    for (String declaration : values.getOrDefault("style", "").split(";", -1)) {
      String[] parts = declaration.split(":", 2);
      if (parts.length == 2 && parts[0].strip().equals(name)) {
        return Optional.of(parts[1].strip());
      }
    }
    return text(name).map(String::strip);
  }

  /** The transform attribute; a transform or a size in a style is refused, not passed over. */
  Affine transform() {
    String style = values.getOrDefault("style", "");
    if (style.matches(
            "(?s)(.*;)?\\s*(transform|translate|rotate|scale|d|x|y|cx|cy|r|rx|ry|width|height)\\s*:.*")
        || values.containsKey("transform-origin")) {
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
