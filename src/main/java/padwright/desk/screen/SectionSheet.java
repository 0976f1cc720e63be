package padwright.desk.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.scene.Cursor;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Label;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import padwright.desk.edit.FindingPlaces;
import padwright.desk.edit.PartField;
import padwright.desk.model.Desk;
import padwright.desk.model.FindingRow;
import padwright.desk.model.PartSource;
import padwright.desk.view.SectionForm;
import padwright.desk.view.SectionForm.Dimension;
import padwright.desk.view.SectionForm.Handle;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;
import padwright.measure.InputRefused;

/** The drawn section with its fields on it; clicks and drags in it. */
final class SectionSheet extends Pane implements FieldEditor.Host {
  private static final double CALLOUT = 230;

  private final Desk desk;
  private final Consumer<String> choose;
  private final Runnable arrange;
  private final Canvas canvas = new Canvas();
  private final Label callout = new Label();
  private final Map<String, FieldEditor> editors = new LinkedHashMap<>();
  private SectionForm form;
  private FormColours colours = FormColours.of(false);
  private String selected = "";
  private String pointed = "";
  private Drag drag;

  private record Drag(Handle handle, PartField field, double from, double x, double y) {}

  /**
   * @param choose called with a member when it is chosen
   * @param arrange called when a drag has ended
   */
  SectionSheet(Desk desk, Consumer<String> choose, Runnable arrange) {
    this.desk = desk;
    this.choose = choose;
    this.arrange = arrange;
    callout.getStyleClass().add("form-callout");
    callout.setWrapText(true);
    callout.setMaxWidth(CALLOUT);
    callout.setVisible(false);
    callout.setMouseTransparent(true);
    callout.setId("refusal");
    canvas.setOnMousePressed(this::pressed);
    canvas.setOnMouseDragged(this::dragged);
    canvas.setOnMouseReleased(e -> released());
    canvas.setOnMouseMoved(this::moved);
    canvas.setOnMouseExited(e -> point(""));
    canvas.setAccessibleText("Section of the part; its fields follow");
    getChildren().addAll(canvas, callout);
    setId("section-sheet");
  }

  SectionForm form() {
    return form;
  }

  FormColours colours() {
    return colours;
  }

  void setColours(FormColours colours) {
    this.colours = colours;
  }

  boolean dragging() {
    return drag != null;
  }

  /** Places whose fields stand in the drawing. */
  Set<String> places() {
    return editors.keySet();
  }

  List<Node> inOrder() {
    List<Node> all = new ArrayList<>();
    editors.values().forEach(e -> all.add(e.control()));
    return all;
  }

  boolean focus(String place) {
    FieldEditor e = editors.get(place);
    if (e != null) {
      e.control().requestFocus();
    }
    return e != null;
  }

  void show(SectionForm form, Map<String, PartField> fields, String selected) {
    this.form = form;
    this.selected = selected;
    setPrefSize(form.width(), form.height());
    setMinSize(form.width(), form.height());
    canvas.setWidth(form.width());
    canvas.setHeight(form.height());
    editors(fields);
    List<FindingRow> findings = desk.bench().findings();
    for (FieldEditor e : editors.values()) {
      String place = e.field().place();
      e.update(fields.get(place), findings.stream().filter(r -> r.place().equals(place)).toList());
      Bounds b = form.dimension(place).orElseThrow().box();
      e.markWidth(form.text() * 1.4);
      e.resizeRelocate(b.minX(), b.minY(), b.width(), b.height());
      e.setStyle("-fx-font-size: " + form.text() + "px;");
    }
    paint();
    callOut();
  }

  /** Sizes and places are the form's; the usual layout would undo them. */
  @Override
  protected void layoutChildren() {
    for (FieldEditor e : editors.values()) {
      form.dimension(e.field().place())
          .map(Dimension::box)
          .ifPresent(b -> e.resizeRelocate(b.minX(), b.minY(), b.width(), b.height()));
    }
    if (callout.isVisible()) {
      callOut();
    }
  }

  private void editors(Map<String, PartField> fields) {
    List<Dimension> wanted = new ArrayList<>();
    for (Dimension d : form.inOrder()) {
      if (fields.containsKey(d.place())) {
        wanted.add(d);
      }
    }
    List<String> places = wanted.stream().map(Dimension::place).distinct().toList();
    if (List.copyOf(editors.keySet()).equals(places)) {
      return;
    }
    Optional<String> focused =
        editors.entrySet().stream()
            .filter(e -> e.getValue().control().isFocused())
            .map(Map.Entry::getKey)
            .findFirst();
    Map<String, FieldEditor> before = new LinkedHashMap<>(editors);
    editors.clear();
    for (Dimension d : wanted) {
      if (!editors.containsKey(d.place())) {
        FieldEditor old = before.get(d.place());
        String title = d.label() + ", " + fields.get(d.place()).label();
        editors.put(
            d.place(),
            old != null
                ? old
                : new FieldEditor(new PartSource(desk), fields.get(d.place()), title, this));
      }
    }
    List<Node> children = new ArrayList<>();
    children.add(canvas);
    children.addAll(editors.values());
    children.add(callout);
    getChildren().setAll(children);
    focused.map(editors::get).ifPresent(e -> e.control().requestFocus());
  }

  private void paint() {
    if (form != null) {
      SectionPainter.paint(canvas, form, colours, selected, pointed);
    }
  }

  /** The sentence of a refused field, beside it. */
  private void callOut() {
    FieldEditor refused =
        editors.values().stream().filter(e -> e.refusal().isPresent()).findFirst().orElse(null);
    callout.setVisible(refused != null);
    if (refused == null) {
      return;
    }
    callout.setText("\u2715 " + refused.sentence());
    double w = Math.min(CALLOUT, form.width() - 12);
    double h = callout.prefHeight(w);
    Bounds b = form.dimension(refused.field().place()).orElseThrow().box();
    double x = Math.max(6, Math.min(b.minX(), form.width() - w - 6));
    double y = b.maxY() + 3;
    callout.resizeRelocate(x, y + h > form.height() ? b.minY() - h - 3 : y, w, h);
    callout.toFront();
  }

  @Override
  public void focused(FieldEditor editor) {
    choose.accept(FindingPlaces.member(editor.field().place()));
  }

  @Override
  public void refused(FieldEditor editor) {
    callOut();
  }

  private void point(String at) {
    if (!at.equals(pointed)) {
      pointed = at;
      paint();
    }
  }

  private void moved(MouseEvent e) {
    Vec2 p = new Vec2(e.getX(), e.getY());
    Optional<Handle> handle = form.handle(p);
    Optional<String> member = form.hit(p).map(SectionForm.Member::name);
    boolean across = handle.isPresent() && Math.abs(handle.get().along().x()) > 0.5;
    canvas.setCursor(
        handle.isPresent()
            ? across ? Cursor.H_RESIZE : Cursor.V_RESIZE
            : member.isPresent() ? Cursor.HAND : Cursor.DEFAULT);
    point(handle.map(Handle::place).or(() -> member).orElse(""));
  }

  private void pressed(MouseEvent e) {
    Vec2 p = new Vec2(e.getX(), e.getY());
    Optional<Handle> handle = form.handle(p);
    if (handle.isPresent()) {
      PartField field = desk.field(handle.get().place()).orElse(null);
      double from = field == null ? 0 : desk.value(field).orElse(0.0);
      choose.accept(FindingPlaces.member(handle.get().place()));
      if (field != null) {
        drag = new Drag(handle.get(), field, from, e.getX(), e.getY());
      }
    } else {
      form.hit(p).ifPresent(m -> choose.accept(m.name()));
    }
  }

  private void dragged(MouseEvent e) {
    if (drag == null) {
      return;
    }
    double value =
        drag.handle()
            .dragged(
                drag.from(),
                e.getX() - drag.x(),
                e.getY() - drag.y(),
                drag.field().step(desk.job().units()));
    Optional<InputRefused> answer = desk.set(drag.field(), value, "drag " + drag.field().place());
    FieldEditor editor = editors.get(drag.field().place());
    if (editor != null) {
      editor.take(answer);
    }
  }

  private void released() {
    if (drag != null) {
      FieldEditor editor = editors.get(drag.field().place());
      drag = null;
      desk.settle();
      // What was dragged too far was never done: nothing is left to put right.
      if (editor != null) {
        editor.take(Optional.empty());
      }
      arrange.run();
    }
  }
}
