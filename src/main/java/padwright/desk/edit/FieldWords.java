package padwright.desk.edit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import padwright.design.EdgeShape;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Side;
import padwright.design.WrappedPad.Treatment;
import padwright.desk.edit.PartEdit.Step;
import padwright.jobfile.PartTree;
import padwright.measure.InputRefused;
import padwright.measure.LengthText;
import padwright.measure.LengthUnit;
import padwright.measure.Printable;
import padwright.measure.Rounding;

/** What is typed into a field as steps of a change, and what a field holds as text. */
final class FieldWords {
  private static final double USUAL_EDGE = 6;
  private static final int FINEST_PARTS = 64;
  private static final double SAME = 1e-6;

  /** A table top: what is screwed to until the maker says otherwise, mm; own choice. */
  private static final double USUAL_HOST = 18;

  /** Choices named in a refusal. */
  private static final int SAID = 8;

  private static final int LONGEST_SAID = 40;

  private static final Map<String, String> WHOLE =
      Map.of("wadding.wadding", "wadding", "host.fixing", "host");

  private final WrappedPad pad;
  private final PartField field;
  private final Units units;

  FieldWords(WrappedPad pad, PartField field, Units units) {
    this.pad = pad;
    this.field = field;
    this.units = units;
  }

  private LengthUnit plain() {
    return units == Units.MM ? LengthUnit.MM : LengthUnit.INCH;
  }

  /**
   * @throws InputRefused without a place where it cannot be read
   */
  List<Step> steps(String text) {
    String place = field.place();
    if (text.isEmpty() && field.optional()) {
      if (place.equals("corners.treatment")) {
        return List.of(Step.remove("corners.each"), Step.remove(place));
      }
      // Some fields must be there for the rest of their member to be.
      return List.of(Step.remove(WHOLE.getOrDefault(place, place)));
    }
    return switch (field.kind()) {
      case LENGTH -> List.of(Step.mm(place, TypedLength.parse(text, plain())));
      case PERCENT -> {
        String digits = text.endsWith("%") ? text.substring(0, text.length() - 1) : text;
        yield List.of(Step.put(place, number(digits).movePointLeft(2)));
      }
      case COUNT -> List.of(Step.put(place, count(text)));
      case NUMBER -> List.of(Step.put(place, number(text)));
      case FLAG -> List.of(Step.put(place, flag(text)));
      case WORDS -> List.of(Step.put(place, text));
      case CHOICE -> chosen(place, text);
    };
  }

  /** Most choices are words of the job file; some stand for an object, or for nothing. */
  private List<Step> chosen(String place, String word) {
    if (field.choices().stream().noneMatch(c -> c.value().equals(word))) {
      throw new InputRefused(
          "",
          0,
          "",
          quoted(word) + " cannot be chosen here",
          "Choose one of "
              + String.join(
                  ", ",
                  field.choices().stream().limit(SAID).map(PartField.Choice::value).toList()));
    }
    if (place.endsWith("outline")) {
      return List.of(Step.put(place, OutlineChange.to(word, pad, place, units)));
    } else if (place.endsWith("edge")) {
      return List.of(Step.put(place, edge(word)));
    } else if (place.equals("wadding.wadding") && word.equals(PartFields.NONE)) {
      return List.of(Step.remove("wadding"));
    } else if (place.equals(PartFields.DUST_COVER)) {
      return List.of(Step.put(place, word.equals("yes")));
    } else if (place.equals("corners.treatment")) {
      return corners(place, word);
    } else if (place.equals("host.fixing")) {
      return fixing(place, word);
    } else if (place.startsWith("base.sides.")) {
      return sides(place, word);
    }
    return List.of(Step.put(place, word));
  }

  /** All corners alike, or a list of them, one as the other to begin with. */
  private List<Step> corners(String place, String word) {
    if (word.equals(PartFields.EACH)) {
      List<Treatment> now = pad.corners().treatments();
      String first = now.get(0).name().toLowerCase(Locale.ROOT).replace('_', ' ');
      List<Object> each = new ArrayList<>(Collections.nCopies(PartFields.cornerCount(pad), first));
      return List.of(Step.put("corners.each", each), Step.remove(place));
    }
    return List.of(Step.remove("corners.each"), Step.put(place, word));
  }

  /** What only screws have goes with them, and what they cannot be without comes with them. */
  private List<Step> fixing(String place, String word) {
    if (word.equals(PartFields.NONE)) {
      return List.of(Step.put("host", Map.of("fixing", word)));
    }
    List<Step> steps = new ArrayList<>(List.of(Step.put(place, word)));
    if (!word.equals("screws")) {
      for (String own : List.of("screw", "screwLength", "positions")) {
        steps.add(Step.remove("host." + own));
      }
    } else if (pad.host().thickness().isEmpty()) {
      steps.add(Step.mm("host.thickness", USUAL_HOST));
    }
    return steps;
  }

  private Object edge(String word) {
    double size = USUAL_EDGE;
    if (pad.edge() instanceof EdgeShape.Round r) {
      size = r.radius();
    } else if (pad.edge() instanceof EdgeShape.Bevel b) {
      size = b.size();
    }
    return word.equals("round") || word.equals("bevel") ? Map.of(word, PartEdit.mm(size)) : word;
  }

  /** The job file names all four, or none. */
  private List<Step> sides(String place, String word) {
    List<Step> steps = new ArrayList<>();
    for (Side side : Side.values()) {
      String own = "base.sides." + side.name().toLowerCase(Locale.ROOT);
      steps.add(Step.put(own, own.equals(place) ? word : neighbour(side)));
    }
    return steps;
  }

  private String neighbour(Side side) {
    String name = pad.base().sides().get(side.ordinal()).name();
    return name.toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static BigDecimal number(String text) {
    // No exponents: nobody types them, and what they stand for may not fit into a machine.
    if (!text.strip().matches("-?(\\d{1,12}(\\.\\d{0,12})?|\\.\\d{1,12})")) {
      throw new InputRefused("", 0, "", quoted(text) + " is not a number", "Write it like 2.5");
    }
    return new BigDecimal(text.strip());
  }

  private static Boolean flag(String text) {
    if (List.of("true", "yes").contains(text)) {
      return true;
    } else if (List.of("false", "no").contains(text)) {
      return false;
    }
    throw new InputRefused("", 0, "", quoted(text) + " is neither yes nor no", "Write yes or no");
  }

  private static String quoted(String text) {
    return '"' + Printable.shortened(text, LONGEST_SAID) + '"';
  }

  private static Integer count(String text) {
    try {
      return Integer.valueOf(text);
    } catch (NumberFormatException e) {
      throw new InputRefused("", 0, "", quoted(text) + " is not a whole number", "Write it like 4");
    }
  }

  String shown(Optional<Object> asked) {
    if (field.place().equals(PartFields.DUST_COVER)) {
      return pad.dustCover().wanted() ? "yes" : "no";
    }
    if (field.place().equals("wadding.wadding") && asked.isEmpty()) {
      return PartFields.NONE;
    }
    if (field.place().startsWith("base.sides.")) {
      // Where none is written all four have the same.
      String side = field.place().substring("base.sides.".length());
      return neighbour(Side.valueOf(side.toUpperCase(Locale.ROOT)));
    }
    if (field.place().endsWith("].covering") && asked.isEmpty()) {
      return "turned";
    }
    if (field.place().equals("host.finish") && asked.isEmpty()) {
      return "bare";
    }
    if (field.place().equals("corners.treatment") && pad.corners().treatments().size() > 1) {
      return PartFields.EACH;
    }
    if (field.place().equals("corners.treatment") && asked.isEmpty()) {
      Object whole = PartTree.of(pad, units).get("corners");
      return whole instanceof String word ? word : "";
    }
    if (field.place().equals("edge") && asked.isEmpty()) {
      return "square";
    }
    if (asked.isEmpty()) {
      return "";
    }
    Object value = asked.get();
    if (value instanceof Map<?, ?> m && field.kind() == PartField.Kind.CHOICE) {
      return m.keySet().iterator().next().toString();
    }
    return switch (field.kind()) {
      case LENGTH -> length(value);
      case PERCENT -> ((BigDecimal) value).movePointRight(2).stripTrailingZeros().toPlainString();
      default -> value.toString();
    };
  }

  private String length(Object value) {
    double mm = TypedLength.parse(value.toString(), plain());
    return of(mm, units);
  }

  /** A length as a maker would type it: mm as they are, inches as a fraction where they are one. */
  static String of(double mm, Units units) {
    if (units == Units.INCH) {
      String fraction = LengthText.inches(mm, FINEST_PARTS, Rounding.NEAREST);
      if (Math.abs(TypedLength.parse(fraction, LengthUnit.INCH) - mm) < SAME) {
        return fraction;
      }
    }
    double unit = units == Units.MM ? 1 : LengthUnit.INCH.millimetres().doubleValue();
    return BigDecimal.valueOf(mm / unit)
            .setScale(units == Units.MM ? 3 : 5, java.math.RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString()
        + (units == Units.MM ? "" : " in");
  }
}
