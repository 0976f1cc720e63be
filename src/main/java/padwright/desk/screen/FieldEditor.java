package padwright.desk.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.util.StringConverter;
import padwright.design.Finding.Level;
import padwright.desk.edit.FieldSource;
import padwright.desk.edit.PartField;
import padwright.desk.edit.PartField.Choice;
import padwright.desk.edit.PartField.Kind;
import padwright.desk.model.FindingRow;
import padwright.measure.InputRefused;

/**
 * The control of one field, and the mark beside it. What is refused stays as it was typed until it
 * is put right or taken back with Escape.
 */
final class FieldEditor extends HBox {
  /** Fields that always say what they hold, so that no empty choice is offered. */
  private static final Set<String> NEVER_EMPTY = Set.of("wadding.wadding", "dustCover", "edge");

  private static final double TEN = 10;

  private final FieldSource source;
  private final Host host;
  private final Control control;
  private final Button mark = new Button();
  private final String title;
  private PartField field;
  private boolean filling;
  private boolean typing;
  private Optional<InputRefused> refusal = Optional.empty();
  private List<FindingRow> rows = List.of();

  /** Who shows what an editor has to say. */
  interface Host {
    void focused(FieldEditor editor);

    void refused(FieldEditor editor);
  }

  /**
   * @param title what the field is, with the member it belongs to
   */
  FieldEditor(FieldSource source, PartField field, String title, Host host) {
    this.source = source;
    this.host = host;
    this.field = field;
    this.title = title;
    this.control =
        switch (field.kind()) {
          case CHOICE -> choice();
          case FLAG -> flag();
          case LENGTH, PERCENT, COUNT, NUMBER, WORDS -> text();
        };
    control.setId("field-" + field.place());
    control.getStyleClass().add("form-field");
    control.setMinWidth(0);
    control.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(control, Priority.ALWAYS);
    control
        .focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (is) {
                host.focused(this);
              } else {
                left();
              }
            });
    mark.getStyleClass().add("form-mark");
    mark.setFocusTraversable(false);
    mark.setMinWidth(0);
    mark.setVisible(false);
    mark.setOnAction(e -> control.requestFocus());
    setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(control, mark);
  }

  PartField field() {
    return field;
  }

  Control control() {
    return control;
  }

  Optional<InputRefused> refusal() {
    return refusal;
  }

  /** The room of the mark, so that fields of one column end alike. */
  void markWidth(double width) {
    mark.setPrefWidth(width);
    mark.setMinWidth(width);
    mark.setMaxWidth(width);
  }

  private TextField text() {
    TextField t = new TextField();
    t.textProperty()
        .addListener(
            (o, was, is) -> {
              if (!filling) {
                typing = true;
              }
            });
    t.setOnAction(e -> commit());
    t.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    t.addEventFilter(ScrollEvent.SCROLL, this::wheel);
    return t;
  }

  private ComboBox<Choice> choice() {
    ComboBox<Choice> box = new ComboBox<>();
    box.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(Choice c) {
            return c == null ? "" : c.label();
          }

          @Override
          public Choice fromString(String s) {
            return null;
          }
        });
    box.valueProperty()
        .addListener(
            (o, was, is) -> {
              if (!filling && is != null) {
                take(source.type(field, is.value()));
              }
            });
    return box;
  }

  private CheckBox flag() {
    CheckBox box = new CheckBox(field.label());
    box.setOnAction(
        e -> take(source.type(field, box.isSelected() ? "true" : field.optional() ? "" : "false")));
    return box;
  }

  private boolean nudges() {
    return field.step() > 0 && field.kind() != Kind.WORDS;
  }

  private void key(KeyEvent e) {
    switch (e.getCode()) {
      case UP -> nudge(e.isShiftDown() ? TEN : 1, e);
      case DOWN -> nudge(e.isShiftDown() ? -TEN : -1, e);
      case ESCAPE -> {
        if (typing || refusal.isPresent()) {
          typing = false;
          refusal = Optional.empty();
          fill();
          host.refused(this);
          e.consume();
        }
      }
      case Z -> {
        // While something is being typed it is the letters that are taken back.
        if (e.isShortcutDown() && !typing && refusal.isEmpty()) {
          if (e.isShiftDown()) {
            source.redo();
          } else {
            source.undo();
          }
          e.consume();
        }
      }
      default -> {}
    }
  }

  /** Only where the field has the focus: a wheel that scrolls past changes nothing. */
  private void wheel(ScrollEvent e) {
    // With Shift held a wheel scrolls sideways.
    double by = e.getDeltaY() != 0 ? e.getDeltaY() : e.getDeltaX();
    if (control.isFocused() && by != 0) {
      nudge(Math.signum(by) * (e.isShiftDown() ? TEN : 1), e);
    }
  }

  private void nudge(double steps, javafx.event.Event e) {
    if (!nudges()) {
      return;
    }
    e.consume();
    if (typing) {
      commit();
    }
    if (refusal.isEmpty()) {
      take(source.nudge(field, steps));
      if (control instanceof TextField t) {
        t.positionCaret(t.getText().length());
      }
    }
  }

  private void left() {
    commit();
    source.settle();
  }

  private void commit() {
    if (typing && control instanceof TextField t) {
      take(source.type(field, t.getText()));
    }
  }

  /** A drag of this field's handle was refused, or taken again. */
  void take(Optional<InputRefused> answer) {
    boolean news = refusal.isPresent() || answer.isPresent();
    refusal = answer;
    if (answer.isEmpty()) {
      typing = false;
      fill();
    }
    mark();
    if (news) {
      host.refused(this);
    }
  }

  /** Shows what the job holds now. */
  void update(PartField now, List<FindingRow> findings) {
    field = now;
    rows = findings;
    if (!typing && refusal.isEmpty()) {
      fill();
    }
    mark();
  }

  private void fill() {
    filling = true;
    String typed = source.typed(field);
    String taken = source.taken(field);
    if (control instanceof TextField t) {
      if (!t.getText().equals(typed)) {
        t.setText(typed);
      }
      t.setPromptText(taken);
    } else if (control instanceof CheckBox c) {
      c.setSelected(typed.equals("true"));
    } else if (control instanceof ComboBox<?>) {
      fillChoice(typed, taken);
    }
    filling = false;
  }

  @SuppressWarnings("unchecked") // made by choice()
  private void fillChoice(String typed, String taken) {
    ComboBox<Choice> box = (ComboBox<Choice>) control;
    List<Choice> all = new ArrayList<>();
    Choice usual = new Choice("", taken.isEmpty() ? "as usual" : "as usual: " + taken);
    if (field.optional() && !NEVER_EMPTY.contains(field.place())) {
      all.add(usual);
    }
    all.addAll(field.choices());
    if (!box.getItems().equals(all)) {
      box.getItems().setAll(all);
    }
    box.setValue(all.stream().filter(c -> c.value().equals(typed)).findFirst().orElse(null));
  }

  /** What there is to say of the field, gravest first; empty where there is nothing. */
  String sentence() {
    if (refusal.isPresent()) {
      return said(refusal.get());
    }
    return worst().map(r -> word(r.finding().level()) + ": " + r.sentence()).orElse("");
  }

  static String said(InputRefused r) {
    String problem = r.problem().strip();
    return (problem.endsWith(".") ? problem : problem + ".") + " " + r.remedy();
  }

  static String word(Level level) {
    return level.name().toLowerCase(java.util.Locale.ROOT);
  }

  /** A mark that is told apart by its form. */
  static String sign(Level level) {
    return switch (level) {
      case STOP -> "\u25a0";
      case CAUTION -> "\u25b2";
      case NOTE -> "\u2022";
    };
  }

  private Optional<FindingRow> worst() {
    return rows.stream()
        .filter(r -> r.finding().level() != Level.NOTE)
        .min(java.util.Comparator.comparing(r -> r.finding().level()));
  }

  private void mark() {
    String sentence = sentence();
    mark.setVisible(!sentence.isEmpty());
    mark.setText(
        refusal.isPresent() ? "\u2715" : worst().map(r -> sign(r.finding().level())).orElse(""));
    boolean stop =
        refusal.isPresent() || worst().filter(r -> r.finding().level() == Level.STOP).isPresent();
    getStyleClass().removeAll("form-stop", "form-caution");
    if (!sentence.isEmpty()) {
      getStyleClass().add(stop ? "form-stop" : "form-caution");
      mark.setTooltip(new Tooltip(sentence));
    }
    mark.setAccessibleText(sentence);
    control.setAccessibleText(title);
    String taken = source.taken(field);
    control.setAccessibleHelp(
        sentence.isEmpty() && !taken.isEmpty() ? "left empty, taken: " + taken : sentence);
  }
}
