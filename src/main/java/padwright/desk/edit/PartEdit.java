package padwright.desk.edit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.jobfile.JobReader;
import padwright.jobfile.PartTree;
import padwright.measure.InputRefused;
import padwright.measure.LengthUnit;

/**
 * Changes one part at places of its job file. Each change is read back whole by the reader of job
 * files; where that refuses, nothing is changed and its sentence says why. Has no state that
 * changes.
 */
public final class PartEdit {
  private final JobReader reader;
  private final Units units;

  private volatile Written written;

  public PartEdit(JobReader reader, Units units) {
    this.reader = reader;
    this.units = units;
  }

  /**
   * One thing to change.
   *
   * @param place such as {@code base.thickness}
   * @param value a text, a number, a boolean, a map or a list as in a job file; empty takes the
   *     field out, so that its default is taken
   */
  public record Step(String place, Optional<Object> value) {
    /** A length in mm, exactly. */
    public static Step mm(String place, double mm) {
      return new Step(
          place, Optional.of(new BigDecimal(Double.toString(mm)).toPlainString() + " mm"));
    }

    public static Step put(String place, Object value) {
      return new Step(place, Optional.of(value));
    }

    public static Step remove(String place) {
      return new Step(place, Optional.empty());
    }
  }

  /** A length as the value of a field, exactly. */
  public static String mm(double mm) {
    return new BigDecimal(Double.toString(mm)).toPlainString() + " mm";
  }

  /** A length in mm as it would be typed into a field. */
  public static String shown(double mm, boolean metric) {
    return FieldWords.of(mm, metric ? Units.MM : Units.INCH);
  }

  /** The same in other units; itself where they are its own. */
  public PartEdit in(Units other) {
    return other == units ? this : new PartEdit(reader, other);
  }

  /** The unit of a number typed without one. */
  public LengthUnit plain() {
    return units == Units.MM ? LengthUnit.MM : LengthUnit.INCH;
  }

  /**
   * The part with all steps done, in their order.
   *
   * @throws InputRefused whose path is the place that is wrong
   */
  public WrappedPad with(WrappedPad pad, List<Step> steps) {
    Map<String, Object> tree = PartTree.of(pad, units);
    for (Step step : steps) {
      Place place = new Place(step.place());
      if (step.value().isPresent()) {
        place.put(tree, step.value().get());
      } else {
        place.remove(tree);
      }
    }
    return PartTree.read(tree, units, reader);
  }

  public WrappedPad with(WrappedPad pad, Step... steps) {
    return with(pad, List.of(steps));
  }

  /**
   * The part with what was typed into a field.
   *
   * @param typed empty takes the field out where it may be left out
   * @throws InputRefused with the field's place
   */
  public WrappedPad typed(WrappedPad pad, PartField field, String typed) {
    String text = typed.strip();
    if (text.equals(shown(pad, field))) {
      // What is shown may be rounded; to leave a field as it is changes nothing.
      return pad;
    }
    try {
      if (field.place().equals("base.outline") && text.equals("path")) {
        // Its runs and corners take the names that sides and points have then.
        return new OutlineEdit(this, pad).byPoints();
      }
      return with(pad, new FieldWords(pad, field, units).steps(text));
    } catch (InputRefused r) {
      throw r.path().isEmpty()
          ? new InputRefused("", 0, field.place(), r.problem(), r.remedy())
          : r;
    }
  }

  /** What a field holds, as it could be typed; empty where it is left out. */
  public String shown(WrappedPad pad, PartField field) {
    return new FieldWords(pad, field, units).shown(new Place(field.place()).get(read(pad)));
  }

  /** The part as it is written, only to be looked at: many fields are asked of one part. */
  private Map<String, Object> read(WrappedPad pad) {
    Written now = written;
    if (now == null || now.pad() != pad) {
      now = new Written(pad, PartTree.of(pad, units));
      written = now;
    }
    return now.tree();
  }

  private record Written(WrappedPad pad, Map<String, Object> tree) {}

  /** What is written at a place, as a tree of the job file. */
  public Optional<Object> asked(WrappedPad pad, String place) {
    return new Place(place).get(PartTree.of(pad, units));
  }

  /** How many entries a list has; 0 where there is none. */
  public int entries(WrappedPad pad, String place) {
    return asked(pad, place).map(v -> v instanceof List<?> l ? l.size() : 0).orElse(0);
  }

  /** With an entry of a list moved to another place in it. */
  public WrappedPad moved(WrappedPad pad, String list, int from, int to) {
    List<Object> entries = new ArrayList<>((List<?>) asked(pad, list).orElseThrow());
    entries.add(to, entries.remove(from));
    return with(pad, Step.put(list, entries));
  }

  /** With an entry put into a list before another. */
  public WrappedPad inserted(WrappedPad pad, String list, int at, Object entry) {
    List<Object> entries = new ArrayList<>();
    asked(pad, list).ifPresent(l -> entries.addAll((List<?>) l));
    entries.add(at, entry);
    return with(pad, Step.put(list, entries));
  }
}
