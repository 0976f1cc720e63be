package padwright.desk.edit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import padwright.design.EdgeShape;
import padwright.design.Fittings.CutOut;
import padwright.design.Fittings.Through;
import padwright.design.Fittings.ZoneKind;
import padwright.design.OutlineShape.FreePath;
import padwright.design.WrappedPad;
import padwright.desk.edit.PartField.Kind;
import padwright.shape.Outlines;

/** The fields of what a part may have any number of: holes, runs, cut-outs and the like. */
public final class PartListFields {
  private static final String HOLES = "base.holes";
  private static final String SCREWS = "host.positions";
  private static final String RUNS = "runs";
  private static final String CUT_OUTS = "fittings.cutOuts";
  private static final String VENTS = "fittings.vents";
  private static final String INSERTS = "fittings.tNuts";
  private static final String ZONES = "fittings.zones";

  private final WrappedPad pad;

  PartListFields(WrappedPad pad) {
    this.pad = pad;
  }

  /**
   * A list that entries can be added to.
   *
   * @param place of the list
   * @param title of one entry
   * @param fresh what a new entry holds
   */
  public record Kinds(String place, String title, Object fresh) {}

  /** What can be added to a part, besides foam. */
  public static List<Kinds> kinds(WrappedPad pad) {
    List<Kinds> kinds = new ArrayList<>();
    kinds.add(new Kinds(RUNS, "Run of the edge", run(pad)));
    kinds.add(new Kinds(HOLES, "Hole in the base", round(12)));
    if (pad.host().fixing() == WrappedPad.Fixing.SCREWS) {
      kinds.add(new Kinds(SCREWS, "Screw place", round(3)));
    }
    Map<String, Object> cutOut = new LinkedHashMap<>();
    cutOut.put("outline", Map.of("rectangle", Map.of("length", "80 mm", "width", "60 mm")));
    cutOut.put("x", "0 mm");
    cutOut.put("y", "0 mm");
    cutOut.put("covering", "turned");
    kinds.add(new Kinds(CUT_OUTS, "Cut-out", cutOut));
    kinds.add(new Kinds(VENTS, "Vent", round(12)));
    Map<String, Object> insert = new LinkedHashMap<>();
    insert.put("x", "0 mm");
    insert.put("y", "0 mm");
    insert.put("barrel", "8 mm");
    insert.put("flange", "22 mm");
    kinds.add(new Kinds(INSERTS, "T-nut", insert));
    Map<String, Object> zone = new LinkedHashMap<>();
    zone.put("kind", "hook-and-loop");
    zone.put("x", "0 mm");
    zone.put("y", "0 mm");
    zone.put("length", "60 mm");
    zone.put("width", "25 mm");
    kinds.add(new Kinds(ZONES, "Zone on the back", zone));
    return kinds;
  }

  private static Map<String, Object> run(WrappedPad pad) {
    Map<String, Object> run = new LinkedHashMap<>();
    // Where every side is in a run already, the reader says so of the first.
    List<String> all = sides(pad);
    Set<String> taken = new HashSet<>();
    pad.runs().forEach(r -> taken.addAll(r.sides()));
    String free = all.stream().filter(s -> !taken.contains(s)).findFirst().orElse(all.get(0));
    run.put("sides", List.of(free));
    run.put("turnUnder", "20 mm");
    return run;
  }

  /** The names a run can give sides; of a round outline, which has none, the reader says so. */
  static List<String> sides(WrappedPad pad) {
    if (pad.base().outline() instanceof FreePath f) {
      return IntStream.rangeClosed(1, f.points().size()).mapToObj(k -> "side " + k).toList();
    }
    return Outlines.SIDES;
  }

  private static Map<String, Object> round(int diameter) {
    Map<String, Object> hole = new LinkedHashMap<>();
    hole.put("x", "0 mm");
    hole.put("y", "0 mm");
    hole.put("diameter", diameter + " mm");
    return hole;
  }

  List<FieldGroup> all() {
    List<FieldGroup> groups = new ArrayList<>();
    each(groups, RUNS, "Run", pad.runs().size(), this::run);
    each(groups, HOLES, "Hole", pad.base().holes().size(), i -> hole(HOLES, i));
    each(groups, SCREWS, "Screw place", pad.host().positions().size(), i -> hole(SCREWS, i));
    each(groups, CUT_OUTS, "Cut-out", pad.fittings().cutOuts().size(), this::cutOut);
    each(groups, VENTS, "Vent", pad.fittings().vents().size(), i -> hole(VENTS, i));
    each(groups, INSERTS, "T-nut", pad.fittings().inserts().size(), this::insert);
    each(groups, ZONES, "Zone", pad.fittings().zones().size(), this::zone);
    return groups;
  }

  private static void each(
      List<FieldGroup> groups,
      String list,
      String title,
      int count,
      IntFunction<List<PartField>> fields) {
    for (int i = 0; i < count; i++) {
      groups.add(
          new FieldGroup(
              list + "[" + i + "]",
              title + " " + (i + 1),
              fields.apply(i),
              Optional.of(new FieldGroup.Entry(list, i, 0))));
    }
  }

  private List<PartField> run(int i) {
    String place = RUNS + "[" + i + "].";
    WrappedPad.Run run = pad.runs().get(i);
    List<PartField> f = new ArrayList<>();
    for (int k = 0; k < run.sides().size(); k++) {
      f.add(new PartField(place + "sides[" + k + "]", "Side", Kind.WORDS, false, List.of(), 0));
    }
    f.addAll(settings(place, run.edge()));
    return f;
  }

  /** What a run can differ in; its edge's size has a field where it has an edge of its own. */
  static List<PartField> settings(String place, Optional<EdgeShape> edge) {
    List<PartField> f =
        new ArrayList<>(PartFields.edge(place, edge.orElse(new EdgeShape.Square()), true));
    f.add(PartField.length(place + "turnUnder", "Turn-under", true, 1));
    f.add(PartField.length(place + "overhang", "Foam beyond the base", true, 1));
    f.add(PartField.length(place + "passage", "Passes into the next over", true, 5));
    f.add(
        PartField.choice(
            place + "open", "Left open", true, PartFields.words(WrappedPad.Open.values(), ' ')));
    return f;
  }

  private static List<PartField> at(String place) {
    List<PartField> f = new ArrayList<>();
    f.add(PartField.length(place + "x", "To the right of the middle", false, 1));
    f.add(PartField.length(place + "y", "Behind the middle", false, 1));
    return f;
  }

  private static List<PartField> hole(String list, int i) {
    String place = list + "[" + i + "].";
    List<PartField> f = at(place);
    f.add(PartField.length(place + "diameter", "Diameter", false, 1));
    return f;
  }

  private List<PartField> cutOut(int i) {
    String place = CUT_OUTS + "[" + i + "].";
    CutOut cutOut = pad.fittings().cutOuts().get(i);
    List<PartField> f =
        new ArrayList<>(PartFields.outline(place + "outline", cutOut.shape(), false));
    f.addAll(at(place));
    f.add(
        PartField.choice(
            place + "covering", "Covering", false, PartFields.words(Through.values(), ' ')));
    return f;
  }

  private List<PartField> insert(int i) {
    String place = INSERTS + "[" + i + "].";
    List<PartField> f = at(place);
    f.add(PartField.length(place + "barrel", "Barrel", false, 1));
    f.add(PartField.length(place + "flange", "Flange", false, 1));
    return f;
  }

  private List<PartField> zone(int i) {
    String place = ZONES + "[" + i + "].";
    List<PartField> f = new ArrayList<>();
    f.add(
        PartField.choice(place + "kind", "Kind", false, PartFields.words(ZoneKind.values(), '-')));
    f.addAll(at(place));
    f.add(PartField.length(place + "length", "Length", false, 5));
    f.add(PartField.length(place + "width", "Width", false, 5));
    return f;
  }
}
