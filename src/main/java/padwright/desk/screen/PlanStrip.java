package padwright.desk.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import padwright.design.Finding.Level;
import padwright.desk.edit.FindingPlaces;
import padwright.desk.edit.PartField;
import padwright.desk.edit.PlanFields;
import padwright.desk.edit.PlanItem;
import padwright.desk.edit.Remedy;
import padwright.desk.model.Desk;
import padwright.desk.model.FindingRow;
import padwright.desk.model.PlanDesk;
import padwright.desk.view.PlanFindings;

/** The fields of what is chosen on the plan, and what there is to say of it. */
final class PlanStrip extends VBox implements FieldEditor.Host {
  private static final double CHOICE = 205;
  private static final double SHORT_CHOICE = 104;
  private static final double LENGTH = 92;
  private static final double MARK = 13;

  private final Desk desk;
  private final PlanDesk plan;
  private final Consumer<Remedy> take;
  private final Consumer<Node> reveal;
  private final FlowPane fields = new FlowPane(10, 4);
  private final VBox notes = new VBox(3);
  private final Map<String, FieldEditor> editors = new LinkedHashMap<>();
  private PlanItem shown;
  private double larger = 1;

  PlanStrip(Desk desk, PlanDesk plan, Consumer<Remedy> take, Consumer<Node> reveal) {
    super(4);
    this.desk = desk;
    this.plan = plan;
    this.take = take;
    this.reveal = reveal;
    getStyleClass().add("section-foot");
    getChildren().addAll(notes, fields);
  }

  void setTextSize(double times) {
    larger = times;
    editors.values().forEach(this::widen);
  }

  private void widen(FieldEditor e) {
    double wide =
        switch (e.field().kind()) {
          // How a side runs is said in a word.
          case CHOICE -> e.field().place().equals(PlanFields.WAY) ? SHORT_CHOICE : CHOICE;
          case WORDS -> CHOICE;
          case LENGTH, PERCENT, COUNT, NUMBER, FLAG -> LENGTH;
        };
    e.markWidth(larger * MARK);
    e.setPrefWidth(e.control() instanceof CheckBox ? USE_COMPUTED_SIZE : larger * wide);
  }

  /** Shows what is chosen as it is now. */
  void show() {
    PlanItem item = plan.chosen();
    List<PartField> own = plan.source().fields();
    if (!item.equals(shown) || !alike(own)) {
      lay(item, own);
    }
    shown = item;
    List<FindingRow> rows = rows();
    for (PartField f : own) {
      editors.get(f.place()).update(f, rows.stream().filter(r -> about(r, f)).toList());
    }
    notes(rows);
    editors.values().stream()
        .filter(e -> e.control().isFocused())
        .findFirst()
        .ifPresent(this::focused);
  }

  private boolean alike(List<PartField> own) {
    return own.stream().map(PartField::place).toList().equals(List.copyOf(editors.keySet()))
        && own.stream().allMatch(f -> editors.get(f.place()).field().kind() == f.kind());
  }

  private void lay(PlanItem item, List<PartField> own) {
    Map<String, FieldEditor> before = item.equals(shown) ? new LinkedHashMap<>(editors) : Map.of();
    String focused =
        before.values().stream()
            .filter(e -> e.control().isFocused())
            .map(e -> e.field().place())
            .findFirst()
            .orElse("");
    editors.clear();
    List<HBox> cells = new ArrayList<>();
    for (PartField f : own) {
      FieldEditor old = before.get(f.place());
      FieldEditor e =
          old != null
              ? old
              : new FieldEditor(plan.source(), f, item.words() + ", " + f.label(), this);
      e.control().setId("plan-" + f.place());
      widen(e);
      editors.put(f.place(), e);
      cells.add(cell(f, e));
    }
    fields.getChildren().setAll(cells);
    if (editors.containsKey(focused)) {
      editors.get(focused).control().requestFocus();
    }
  }

  private static HBox cell(PartField f, FieldEditor e) {
    HBox cell = new HBox(4, e);
    cell.setAlignment(Pos.CENTER_LEFT);
    if (!(e.control() instanceof CheckBox)) {
      Label label = new Label(f.label());
      label.getStyleClass().add("form-label");
      label.setLabelFor(e.control());
      cell.getChildren().add(0, label);
    }
    return cell;
  }

  /** Findings that name what is chosen, or are about its fields. */
  private List<FindingRow> rows() {
    List<PlanItem> items = plan.items();
    return desk.bench().findings().stream()
        .filter(
            r ->
                PlanFindings.named(r.finding(), items).contains(plan.chosen())
                    || plan.chosen() instanceof PlanItem.Member m
                        && FindingPlaces.member(r.place()).equals(m.member()))
        .toList();
  }

  /** Whether a finding about what is chosen is about this field of it. */
  private static boolean about(FindingRow row, PartField field) {
    String name = field.place().substring(field.place().lastIndexOf('.') + 1);
    String rule = row.finding().rule();
    return switch (name) {
      case "turnUnder" -> rule.contains("turn-under");
      case "passage" -> rule.contains("passage") || rule.equals("run-section-smooth");
      case "open" -> rule.equals("run-open");
      case "edge" -> rule.startsWith("run-section") && !rule.equals("run-section-smooth");
      default -> row.place().equals(field.place());
    };
  }

  private void notes(List<FindingRow> rows) {
    notes.getChildren().clear();
    desk.bench()
        .refusal()
        .ifPresent(r -> add(NoteLine.refused("Not worked out: " + FieldEditor.said(r))));
    for (FieldEditor e : editors.values()) {
      if (e.refusal().isPresent()) {
        add(NoteLine.refused(e.field().label() + ": " + e.sentence()));
      }
    }
    for (FindingRow r : rows) {
      if (r.finding().level() != Level.NOTE || r.remedy().isPresent()) {
        add(NoteLine.of(r, take));
      }
    }
  }

  private void add(NoteLine line) {
    notes.getChildren().add(line);
  }

  /** Moves the focus to the first field. */
  void focus() {
    editors.values().stream().findFirst().ifPresent(e -> e.control().requestFocus());
  }

  /** A field that is gone to is brought into sight. */
  @Override
  public void focused(FieldEditor editor) {
    reveal.accept(editor);
  }

  @Override
  public void refused(FieldEditor editor) {
    notes(rows());
    focused(editor);
  }
}
