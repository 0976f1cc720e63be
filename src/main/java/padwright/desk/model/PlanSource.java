package padwright.desk.model;

import java.util.List;
import java.util.Optional;
import padwright.design.EdgeShape;
import padwright.design.WrappedPad;
import padwright.desk.edit.FieldSource;
import padwright.desk.edit.PartEdit;
import padwright.desk.edit.PartField;
import padwright.desk.edit.PlanFields;
import padwright.desk.edit.TypedLength;
import padwright.measure.InputRefused;

/** The fields of what is chosen on the plan. */
public final class PlanSource implements FieldSource {
  private final Desk desk;
  private final PlanDesk plan;

  PlanSource(Desk desk, PlanDesk plan) {
    this.desk = desk;
    this.plan = plan;
  }

  /** All of them, as they are now. */
  public List<PartField> fields() {
    return of(desk.pad()).fields();
  }

  private PlanFields of(WrappedPad pad) {
    return new PlanFields(desk.edit(), pad, plan.chosen());
  }

  /** A field that is left because something else was chosen is one of what is chosen no more. */
  private boolean has(PartField field) {
    return fields().stream().anyMatch(f -> f.place().equals(field.place()));
  }

  @Override
  public String typed(PartField field) {
    return has(field) ? of(desk.pad()).shown(field) : "";
  }

  /** What the rest of the part has where a side has nothing of its own. */
  @Override
  public String taken(PartField field) {
    if (!has(field)) {
      return "";
    } else if (!field.place().startsWith(PlanFields.SIDE)) {
      return of(desk.pad()).own(field).isPresent() || field.place().startsWith("leg.")
          ? ""
          : desk.taken(field);
    } else if (!typed(field).isEmpty()) {
      return "";
    }
    return switch (field.place().substring(PlanFields.SIDE.length())) {
      case "edge" -> edge();
      case "turnUnder" -> rest("cover.turnUnder");
      case "overhang" -> rest("foam[" + (desk.pad().foam().size() - 1) + "].overhang");
      case "open" -> "turned under";
      default -> "";
    };
  }

  private String edge() {
    EdgeShape edge = desk.pad().edge();
    if (edge instanceof EdgeShape.Round r) {
      return "round " + plan.plan().length(r.radius());
    } else if (edge instanceof EdgeShape.Bevel b) {
      return "bevel " + plan.plan().length(b.size());
    }
    return edge instanceof EdgeShape.FullRound ? "full round" : "square";
  }

  private String rest(String place) {
    PartField field = desk.field(place).orElseThrow();
    String typed = desk.typed(field);
    return typed.isEmpty() ? desk.taken(field) : typed;
  }

  @Override
  public Optional<InputRefused> type(PartField field, String typed) {
    if (!has(field)) {
      return Optional.empty();
    }
    String label = plan.chosen().words() + ", " + field.label();
    Optional<InputRefused> answer = desk.change(p -> of(p).typed(field, typed), label, "");
    plan.refresh();
    return answer;
  }

  @Override
  public Optional<InputRefused> nudge(PartField field, double steps) {
    if (!has(field)) {
      return Optional.empty();
    }
    Optional<Double> own = of(desk.pad()).own(field);
    if (own.isEmpty() && !field.place().startsWith(PlanFields.SIDE)) {
      return desk.nudge(field, steps);
    }
    Optional<Double> from = own.or(() -> value(field));
    if (from.isEmpty()) {
      return Optional.empty();
    }
    double next = Math.round(field.nudged(from.get(), steps, desk.job().units()) * 1e6) / 1e6;
    String label = plan.chosen().words() + ", " + field.label();
    Optional<InputRefused> answer =
        desk.change(
            p -> own.isPresent() ? of(p).set(field, next) : of(p).typed(field, PartEdit.mm(next)),
            label,
            label);
    plan.refresh();
    return answer;
  }

  /** The length that a side has of its own, or has with the rest of the part. */
  private Optional<Double> value(PartField field) {
    String text = typed(field).isEmpty() ? taken(field) : typed(field);
    try {
      return text.isEmpty()
          ? Optional.empty()
          : Optional.of(TypedLength.parse(text, desk.edit().plain()));
    } catch (InputRefused none) {
      return Optional.empty();
    }
  }

  @Override
  public void settle() {
    desk.settle();
  }

  @Override
  public void undo() {
    desk.undo();
    plan.refresh();
  }

  @Override
  public void redo() {
    desk.redo();
    plan.refresh();
  }
}
