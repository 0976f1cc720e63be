package padwright.desk.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Run;
import padwright.desk.edit.PartEdit.Step;
import padwright.measure.InputRefused;
import padwright.measure.LengthUnit;

/**
 * What one side has of its own, whatever run it is in: a side that is in a run with others gets one
 * of its own when it is to differ from them, a run that differs in nothing goes, and one that comes
 * to differ in the same as another is joined with it.
 */
public final class RunEdit {
  private static final String RUNS = "runs";
  private static final String SIDES = "sides";

  private final PartEdit edit;
  private final WrappedPad pad;

  public RunEdit(PartEdit edit, WrappedPad pad) {
    this.edit = edit;
    this.pad = pad;
  }

  /** The names of sides that can differ; none of a round outline. */
  public static List<String> sides(WrappedPad pad) {
    return PartFields.cornerCount(pad) == 0 ? List.of() : PartListFields.sides(pad);
  }

  /** The run a side is in; empty where it is as the rest of the part. */
  public static Optional<Run> run(WrappedPad pad, String side) {
    return pad.runs().stream().filter(r -> r.sides().contains(side)).findFirst();
  }

  /**
   * The fields of a side. Their places are those of its run, or of the one that it would be given;
   * {@link PartEdit#shown} answers for them, {@link #typed} changes them.
   */
  public static List<PartField> fields(WrappedPad pad, String side) {
    Optional<Run> run = run(pad, side);
    int number = run.map(r -> pad.runs().indexOf(r)).orElse(pad.runs().size());
    return PartListFields.settings(RUNS + "[" + number + "].", run.flatMap(Run::edge));
  }

  /**
   * The part with what was typed into a field of a side.
   *
   * @param field one of {@link #fields}
   * @throws InputRefused as the reader of job files says it
   */
  public WrappedPad typed(String side, PartField field, String typed) {
    String text = typed.strip();
    if (text.equals(edit.shown(pad, field))) {
      return pad;
    }
    Units units = edit.plain() == LengthUnit.MM ? Units.MM : Units.INCH;
    try {
      return with(side, new FieldWords(pad, field, units).steps(text));
    } catch (InputRefused r) {
      throw r.path().isEmpty()
          ? new InputRefused("", 0, field.place(), r.problem(), r.remedy())
          : r;
    }
  }

  private WrappedPad with(String side, List<Step> steps) {
    List<Map<String, Object>> runs = runs(pad);
    Map<String, Object> own = alone(runs, side);
    for (Step step : steps) {
      Place place = new Place(step.place().substring(step.place().indexOf('.') + 1));
      if (step.value().isPresent()) {
        place.put(own, step.value().get());
      } else {
        place.remove(own);
      }
    }
    settle(own, steps);
    if (own.size() == 1) {
      runs.removeIf(r -> r == own);
    }
    return joined(edit.with(pad, step(runs)), side);
  }

  private static Step step(List<Map<String, Object>> runs) {
    return runs.isEmpty() ? Step.remove(RUNS) : Step.put(RUNS, new ArrayList<Object>(runs));
  }

  /** What cannot stand without, or beside, what has just been changed. */
  private static void settle(Map<String, Object> own, List<Step> steps) {
    if (!own.containsKey("edge") && !own.containsKey("overhang") && !about(steps, ".passage")) {
      own.remove("passage");
    }
    if (about(steps, ".open") && own.containsKey("open")) {
      own.remove("turnUnder");
    }
  }

  private static boolean about(List<Step> steps, String field) {
    return steps.stream().anyMatch(s -> s.place().endsWith(field));
  }

  private List<Map<String, Object>> runs(WrappedPad pad) {
    List<Map<String, Object>> runs = new ArrayList<>();
    for (Object run : edit.asked(pad, RUNS).map(l -> (List<?>) l).orElse(List.of())) {
      Map<String, Object> m = new LinkedHashMap<>();
      ((Map<?, ?>) run).forEach((k, v) -> m.put((String) k, v));
      m.put(SIDES, new ArrayList<Object>((List<?>) m.get(SIDES)));
      runs.add(m);
    }
    return runs;
  }

  private static List<Object> named(Map<String, Object> run) {
    return new ArrayList<>((List<?>) run.get(SIDES));
  }

  private static Map<String, Object> alone(List<Map<String, Object>> runs, String side) {
    for (int i = 0; i < runs.size(); i++) {
      Map<String, Object> run = runs.get(i);
      List<Object> sides = named(run);
      if (sides.remove(side)) {
        if (sides.isEmpty()) {
          return run;
        }
        run.put(SIDES, sides);
        Map<String, Object> own = new LinkedHashMap<>(run);
        own.put(SIDES, new ArrayList<Object>(List.of(side)));
        runs.add(i + 1, own);
        return own;
      }
    }
    Map<String, Object> own = new LinkedHashMap<>();
    own.put(SIDES, new ArrayList<Object>(List.of(side)));
    runs.add(own);
    return own;
  }

  /** With the run of a side joined to one that has the same of its own. */
  private WrappedPad joined(WrappedPad next, String side) {
    Optional<Run> own = run(next, side);
    for (int i = 0; own.isPresent() && i < next.runs().size(); i++) {
      Run other = next.runs().get(i);
      if (!other.equals(own.get()) && alike(other, own.get())) {
        List<Map<String, Object>> runs = runs(next);
        List<String> both = new ArrayList<>(other.sides());
        both.addAll(own.get().sides());
        both.sort(Comparator.comparingInt(sides(next)::indexOf));
        runs.get(i).put(SIDES, new ArrayList<Object>(both));
        runs.remove(next.runs().indexOf(own.get()));
        return edit.with(next, step(runs));
      }
    }
    return next;
  }

  private static boolean alike(Run a, Run b) {
    return new Run(b.sides(), a.edge(), a.turnUnder(), a.overhang(), a.open(), a.passage())
        .equals(b);
  }
}
