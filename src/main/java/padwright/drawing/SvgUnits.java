package padwright.drawing;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import padwright.geometry.Affine;
import padwright.measure.LengthUnit;
import padwright.measure.Sentence;

/**
 * What one user unit of an SVG file is: from its width, height, viewBox and preserveAspectRatio, or
 * by CSS (CSS Values 3, 5.2: 96 px to the inch) where they name no unit of length.
 *
 * @param map from user units to mm, y up
 * @param words how it was found
 */
record SvgUnits(Affine map, String words) {
  private static final double INCH = 25.4;
  private static final double PIXEL = INCH / 96;

  /** mm of one. */
  private static final Map<String, Double> UNITS =
      Map.of(
          "mm", 1.0, "cm", 10.0, "q", 0.25, "in", INCH, "pt", INCH / 72, "pc", INCH / 6, "px",
          PIXEL, "", PIXEL);

  /** A width or height in mm. */
  private record Size(double mm, boolean named) {}

  /** The root's units. */
  static SvgUnits of(SvgAttributes root, Optional<LengthUnit> plain) {
    Optional<Size> width = size(root, "width");
    Optional<Size> height = size(root, "height");
    Optional<double[]> box = box(root);
    boolean named = width.filter(Size::named).isPresent() || height.filter(Size::named).isPresent();
    if (!named && plain.isPresent()) {
      double mm = plain.get().millimetres().doubleValue();
      return new SvgUnits(
          flipped(mm, mm, box), Sentence.of("1 unit is 1 %s, as you say", plain.get().mark()));
    }
    if (box.isEmpty()) {
      return new SvgUnits(
          flipped(PIXEL, PIXEL, box), "1 unit is 1/96 in (CSS pixels: the file has no viewBox)");
    }
    double w = box.get()[2];
    double h = box.get()[3];
    double x = width.map(s -> s.mm() / w).orElse(height.map(s -> s.mm() / h).orElse(PIXEL));
    double y = height.map(s -> s.mm() / h).orElse(x);
    String ratio = root.text("preserveAspectRatio").orElse("");
    if (!ratio.startsWith("none")) {
      x = ratio.endsWith("slice") ? Math.max(x, y) : Math.min(x, y);
      y = x;
    }
    String by =
        named
            ? "by the file's width, height and viewBox"
            : "CSS pixels, 96 to the inch: the file names no unit";
    String words =
        x == y
            ? Sentence.of("1 unit is %s mm (%s)", shown(x), by)
            : Sentence.of("1 unit is %s mm across and %s mm up (%s)", shown(x), shown(y), by);
    return new SvgUnits(flipped(x, y, box), words);
  }

  private static String shown(double mm) {
    String text = Sentence.decimal(mm, 6);
    return text.replaceFirst("\\.?0+$", "");
  }

  private static Affine flipped(double x, double y, Optional<double[]> box) {
    Affine scale = Affine.scale(x, -y);
    return box.map(b -> scale.after(Affine.moved(-b[0], -b[1]))).orElse(scale);
  }

  private static Optional<double[]> box(SvgAttributes root) {
    Optional<String> text = root.text("viewBox");
    if (text.isEmpty()) {
      return Optional.empty();
    }
    NumberScanner in = root.scanner("viewBox");
    double[] box = {in.number(), in.number(), in.number(), in.number()};
    if (!in.done() || box[2] <= 0 || box[3] <= 0) {
      throw in.refuse("there should be x, y, width and height over 0");
    }
    return Optional.of(box);
  }

  private static Optional<Size> size(SvgAttributes root, String name) {
    if (root.text(name)
        .filter(t -> !t.strip().endsWith("%") && !t.strip().equals("auto"))
        .isEmpty()) {
      return Optional.empty();
    }
    NumberScanner in = root.scanner(name);
    double number = in.number();
    String unit = in.rest();
    double mm = number * factor(in, unit);
    if (!(mm > 0)) {
      throw in.refuse("the size is not over 0");
    }
    return Optional.of(new Size(mm, !unit.isEmpty() && !unit.equalsIgnoreCase("px")));
  }

  private static double factor(NumberScanner in, String unit) {
    Double factor = UNITS.get(unit.toLowerCase(Locale.ROOT));
    if (factor == null) {
      throw in.refuse("the unit is none of mm, cm, in, pt, pc and px");
    }
    return factor;
  }

  /** A length of a shape in user units, which CSS makes pixels. */
  static OptionalDouble length(SvgAttributes element, String name) {
    if (element.text(name).filter(t -> !t.strip().equals("auto")).isEmpty()) {
      return OptionalDouble.empty();
    }
    NumberScanner in = element.scanner(name);
    double number = in.number();
    return OptionalDouble.of(number * factor(in, in.rest()) / PIXEL);
  }
}
