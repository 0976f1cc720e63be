package padwright.desk.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import padwright.design.Finding.Level;
import padwright.desk.edit.FieldGroup;
import padwright.desk.edit.FindingPlaces;
import padwright.desk.edit.PartEdit.Step;
import padwright.desk.edit.PartField;
import padwright.desk.edit.PartListFields;
import padwright.desk.model.Desk;
import padwright.desk.model.FindingRow;
import padwright.desk.model.PartSource;
import padwright.measure.InputRefused;

/**
 * Below the section: a button for each group of fields of the part, the fields of the chosen one
 * that have no place in the drawing, what can be done with it, and what is to be said of it.
 */
final class MemberStrip extends VBox implements FieldEditor.Host {
  private static final double FIELD = 150;
  private static final double SHORT = 74;

  private final Desk desk;
  private final Consumer<String> choose;
  private final FlowPane tabs = new FlowPane(3, 3);
  private final FlowPane fields = new FlowPane(10, 4);
  private final FlowPane actions = new FlowPane(4, 4);
  private final VBox notes = new VBox(3);
  private final MenuButton add = new MenuButton("Add");
  private final Map<String, ToggleButton> buttons = new LinkedHashMap<>();
  private final Map<String, FieldEditor> editors = new LinkedHashMap<>();
  private String shown = "";
  private Optional<InputRefused> refusal = Optional.empty();

  /**
   * @param choose called with a member when it is chosen
   */
  MemberStrip(Desk desk, Consumer<String> choose) {
    this.desk = desk;
    this.choose = choose;
    setSpacing(5);
    getStyleClass().add("member-strip");
    add.setAccessibleText("Add to the part");
    add.setId("add-to-part");
    getChildren().addAll(tabs, notes, fields, actions);
  }

  /**
   * Shows a member.
   *
   * @param inDrawing places whose fields stand in the drawing
   */
  void show(String member, List<FieldGroup> groups, Set<String> inDrawing) {
    tabs(member, groups);
    Optional<FieldGroup> group = groups.stream().filter(g -> g.member().equals(member)).findFirst();
    List<PartField> own =
        group.map(FieldGroup::fields).orElse(List.of()).stream()
            .filter(f -> !inDrawing.contains(f.place()))
            .toList();
    if (!shown.equals(member)) {
      refusal = Optional.empty();
    }
    fields(member, group.map(FieldGroup::title).orElse(""), own);
    for (PartField f : own) {
      editors.get(f.place()).update(f, rowsAt(f.place()));
    }
    notes(member);
    actions(group);
    shown = member;
  }

  private void tabs(String member, List<FieldGroup> groups) {
    List<String> names = groups.stream().map(g -> g.member() + "|" + g.title()).toList();
    if (!List.copyOf(buttons.keySet()).equals(names)) {
      String focused =
          buttons.entrySet().stream()
              .filter(e -> e.getValue().isFocused())
              .map(Map.Entry::getKey)
              .findFirst()
              .orElse("");
      buttons.clear();
      for (FieldGroup g : groups) {
        ToggleButton b = new ToggleButton(g.title());
        b.getStyleClass().add("member-tab");
        b.setId("tab-" + g.member());
        b.setAccessibleText("Fields of: " + g.title());
        b.setOnAction(e -> choose.accept(g.member()));
        buttons.put(g.member() + "|" + g.title(), b);
      }
      tabs.getChildren().setAll(buttons.values());
      tabs.getChildren().add(add);
      if (buttons.containsKey(focused)) {
        buttons.get(focused).requestFocus();
      }
    }
    for (FieldGroup g : groups) {
      ToggleButton b = buttons.get(g.member() + "|" + g.title());
      b.setSelected(g.member().equals(member));
      Optional<Level> worst = worst(g.member());
      b.setText(worst.map(l -> FieldEditor.sign(l) + " ").orElse("") + g.title());
      b.setAccessibleText(
          "Fields of: " + g.title() + worst.map(l -> ", " + FieldEditor.word(l)).orElse(""));
    }
    additions();
  }

  private Optional<Level> worst(String member) {
    return desk.bench().findings().stream()
        .filter(r -> FindingPlaces.member(r.place()).equals(member))
        .map(r -> r.finding().level())
        .filter(l -> l != Level.NOTE)
        .min(java.util.Comparator.naturalOrder());
  }

  private void additions() {
    List<MenuItem> items = new ArrayList<>();
    int layers = desk.pad().foam().size();
    MenuItem foam = new MenuItem("Foam layer on top");
    foam.setOnAction(e -> layerAbove(layers - 1));
    items.add(foam);
    for (PartListFields.Kinds k : PartListFields.kinds(desk.pad())) {
      MenuItem item = new MenuItem(k.title());
      item.setOnAction(
          e -> {
            int at = desk.edit().entries(desk.pad(), k.place());
            String label = "add: " + k.title();
            done(
                desk.change(p -> desk.edit().inserted(p, k.place(), at, k.fresh()), label, ""),
                k.place() + "[" + at + "]");
          });
      items.add(item);
    }
    if (items.size() != add.getItems().size() || !add.isShowing()) {
      add.getItems().setAll(items);
    }
  }

  /** Another layer like one that is there, on top of it. */
  private void layerAbove(int layer) {
    Object same = desk.edit().asked(desk.pad(), "foam[" + layer + "]").orElseThrow();
    done(
        desk.change(p -> desk.edit().inserted(p, "foam", layer + 1, same), "add a foam layer", ""),
        "foam[" + (layer + 1) + "]");
  }

  private void done(Optional<InputRefused> answer, String member) {
    refusal = answer;
    if (answer.isEmpty()) {
      choose.accept(member);
    } else {
      notes(shown);
    }
  }

  private void fields(String member, String title, List<PartField> own) {
    List<String> wanted = own.stream().map(PartField::place).toList();
    boolean sameKinds =
        own.stream()
            .allMatch(
                f ->
                    editors.containsKey(f.place())
                        && editors.get(f.place()).field().kind() == f.kind());
    if (shown.equals(member) && sameKinds && List.copyOf(editors.keySet()).equals(wanted)) {
      return;
    }
    Map<String, FieldEditor> before = new LinkedHashMap<>(editors);
    String focused =
        before.entrySet().stream()
            .filter(e -> e.getValue().control().isFocused())
            .map(Map.Entry::getKey)
            .findFirst()
            .orElse("");
    editors.clear();
    List<HBox> cells = new ArrayList<>();
    for (PartField f : own) {
      FieldEditor old = before.get(f.place());
      FieldEditor e =
          old != null && old.field().kind() == f.kind()
              ? old
              : new FieldEditor(new PartSource(desk), f, title + ", " + f.label(), this);
      boolean wide = f.kind() == PartField.Kind.CHOICE || f.kind() == PartField.Kind.WORDS;
      e.setPrefWidth(e.control() instanceof CheckBox ? USE_COMPUTED_SIZE : wide ? FIELD : SHORT);
      editors.put(f.place(), e);
      HBox cell = new HBox(4);
      cell.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
      if (!(e.control() instanceof CheckBox)) {
        Label label = new Label(f.label());
        label.getStyleClass().add("form-label");
        label.setLabelFor(e.control());
        cell.getChildren().add(label);
      }
      cell.getChildren().add(e);
      cells.add(cell);
    }
    fields.getChildren().setAll(cells);
    if (editors.containsKey(focused)) {
      editors.get(focused).control().requestFocus();
    }
  }

  private List<FindingRow> rowsAt(String place) {
    return desk.bench().findings().stream().filter(r -> r.place().equals(place)).toList();
  }

  private void notes(String member) {
    notes.getChildren().clear();
    desk.bench()
        .refusal()
        .ifPresent(
            r ->
                notes
                    .getChildren()
                    .add(NoteLine.refused("Not worked out: " + FieldEditor.said(r))));
    refusal.ifPresent(r -> notes.getChildren().add(NoteLine.refused(FieldEditor.said(r))));
    for (FieldEditor e : editors.values()) {
      if (e.refusal().isPresent()) {
        notes.getChildren().add(NoteLine.refused(e.field().label() + ": " + e.sentence()));
      }
    }
    for (FindingRow r : desk.bench().findings()) {
      if (FindingPlaces.member(r.place()).equals(member)
          && (r.finding().level() != Level.NOTE || r.remedy().isPresent())) {
        notes.getChildren().add(NoteLine.of(r, remedy -> done(desk.take(remedy), shown)));
      }
    }
  }

  private void actions(Optional<FieldGroup> group) {
    FieldGroup.Entry entry = group.flatMap(FieldGroup::list).orElse(null);
    String key = entry == null ? "" : entry.list() + entry.number() + "/" + count(entry);
    if (Objects.equals(actions.getUserData(), key)) {
      return;
    }
    actions.setUserData(key);
    actions.getChildren().clear();
    if (entry == null) {
      return;
    }
    int n = entry.number();
    int count = count(entry);
    boolean foam = entry.list().equals("foam");
    if (foam) {
      action("Add a layer above", true, () -> layerAbove(n));
    }
    action(foam ? "Move up" : "Later in the list", n + 1 < count, () -> move(entry, n + 1));
    action(foam ? "Move down" : "Earlier in the list", n > 0, () -> move(entry, n - 1));
    action("Remove", count > entry.least(), () -> remove(entry));
  }

  private int count(FieldGroup.Entry entry) {
    return desk.edit().entries(desk.pad(), entry.list());
  }

  private void action(String words, boolean can, Runnable does) {
    Button b = new Button(words);
    b.getStyleClass().add("form-action");
    b.setId("action-" + words.toLowerCase(java.util.Locale.ROOT).replace(' ', '-'));
    b.setDisable(!can);
    b.setOnAction(e -> does.run());
    actions.getChildren().add(b);
  }

  private void move(FieldGroup.Entry entry, int to) {
    done(
        desk.change(
            p -> desk.edit().moved(p, entry.list(), entry.number(), to), "move a layer", ""),
        entry.list() + "[" + to + "]");
  }

  private void remove(FieldGroup.Entry entry) {
    String place = entry.list() + "[" + entry.number() + "]";
    int left = count(entry) - 1;
    String next = left > 0 ? entry.list() + "[" + Math.min(entry.number(), left - 1) + "]" : "part";
    done(desk.change(p -> desk.edit().with(p, Step.remove(place)), "remove " + place, ""), next);
  }

  /** Moves the focus to a field; false where it is not shown. */
  boolean focus(String place) {
    FieldEditor e = editors.get(place);
    if (e != null) {
      e.control().requestFocus();
    }
    return e != null;
  }

  @Override
  public void focused(FieldEditor editor) {
    // The member is chosen already: its fields are what is shown.
  }

  @Override
  public void refused(FieldEditor editor) {
    notes(shown);
  }
}
