package padwright.desk.screen;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import padwright.desk.edit.FieldGroup;
import padwright.desk.edit.FindingPlaces;
import padwright.desk.edit.PartField;
import padwright.desk.model.Bench;
import padwright.desk.model.Desk;
import padwright.desk.view.SectionCut;
import padwright.desk.view.SectionForm;
import padwright.desk.view.SectionForm.Room;

/**
 * The section drawing as the form of a part: its dimensions are the fields, its members are clicked
 * to be chosen, its handles dragged. Below it stand the fields that are no dimensions, of every
 * group of the part.
 */
public final class SectionPane extends BorderPane {
  /** Usual size of letters, points. */
  static final double TEXT = 12;

  private static final double LARGEST = 1.3;
  private static final double WIDE = 620;
  private static final double HIGH = 460;
  private static final double STRIP_SHARE = 0.3;

  private final Desk desk;
  private final ReadOnlyStringWrapper selectedMember =
      new ReadOnlyStringWrapper(this, "selectedMember", "foam[0]");
  private final SectionSheet sheet;
  private final ScrollPane drawing;
  private final MemberStrip strip;
  private final ScrollPane below;
  private final ComboBox<SectionCut> cuts = new ComboBox<>();
  private final Seen seen = new Seen();
  private final FormStyle style = new FormStyle();
  private double text = TEXT;
  private boolean arranging;

  public SectionPane(Desk desk) {
    this.desk = desk;
    this.sheet = new SectionSheet(desk, this::select, this::arrange);
    this.strip = new MemberStrip(desk, this::select);
    this.drawing = new ScrollPane(sheet);
    drawing.setHbarPolicy(ScrollPane.ScrollBarPolicy.AS_NEEDED);
    drawing.setFocusTraversable(false);
    cuts.setId("section-cut");
    cuts.setAccessibleText("Which edge the section is across");
    cuts.setConverter(
        new javafx.util.StringConverter<>() {
          @Override
          public String toString(SectionCut c) {
            return c == null ? "" : "Section: " + c.title();
          }

          @Override
          public SectionCut fromString(String s) {
            return null;
          }
        });
    cuts.valueProperty()
        .addListener(
            (o, was, is) -> {
              if (!arranging) {
                arrange();
              }
            });
    VBox foot = new VBox(4, cuts, strip);
    foot.getStyleClass().add("section-foot");
    below = new ScrollPane(foot);
    below.setFitToWidth(true);
    below.setFocusTraversable(false);
    setCenter(drawing);
    setBottom(below);
    getStyleClass().add("section-pane");
    style.apply(this, FormColours.of(false), text);
    setMinSize(300, 240);
    desk.onChange(
        () -> {
          if (seen.changed(desk.bench(), desk.now())) {
            arrange();
          }
        });
    widthProperty().addListener(o -> arrange());
    heightProperty().addListener(o -> arrange());
    foot.heightProperty().addListener(o -> arrange());
    arrange();
  }

  /** Dark where the window is. */
  public void setDark(boolean dark) {
    sheet.setColours(FormColours.of(dark));
    style.apply(this, FormColours.of(dark), text);
    arrange();
  }

  /** Size of letters in points; 12 if it is not set. */
  public void setTextSize(double points) {
    text = points;
    style.apply(this, sheet.colours(), text);
    arrange();
  }

  /** Name of the group of fields that is chosen, such as {@code foam[1]}. */
  public ReadOnlyStringProperty selectedMemberProperty() {
    return selectedMember.getReadOnlyProperty();
  }

  public String getSelectedMember() {
    return selectedMember.get();
  }

  /** Chooses a member, as a click on it does. */
  public void select(String member) {
    if (!member.equals(selectedMember.get())) {
      selectedMember.set(member);
      arrange();
    }
  }

  /** Chooses the member that a field belongs to and moves the focus to the field. */
  public void focusField(String place) {
    select(FindingPlaces.member(place));
    if (!sheet.focus(place)) {
      strip.focus(place);
    }
  }

  /** The form that is shown. */
  public SectionForm form() {
    return sheet.form();
  }

  private void arrange() {
    if (arranging || getWidth() <= 0 || getHeight() <= 0) {
      return;
    }
    arranging = true;
    try {
      List<FieldGroup> groups = desk.fields();
      if (groups.stream().noneMatch(g -> g.member().equals(selectedMember.get()))) {
        selectedMember.set("part");
      }
      offerCuts();
      Map<String, PartField> fields = new LinkedHashMap<>();
      groups.forEach(g -> g.fields().forEach(f -> fields.put(f.place(), f)));
      Set<String> inDrawing = new HashSet<>(sheet.places());
      strip.show(selectedMember.get(), groups, inDrawing);
      // New lines have no letters, and so no height, before they are styled.
      below.getContent().applyCss();
      double wanted = ((VBox) below.getContent()).prefHeight(getWidth() - 16) + 4;
      double least = SectionForm.leastHeight(desk.pad(), TEXT);
      double most = Math.max(getHeight() * STRIP_SHARE, getHeight() - least - 4);
      double foot = Math.min(wanted, Math.max(most * 0.6, Math.min(most, getHeight() * 0.5)));
      below.setPrefHeight(foot);
      double high = getHeight() - foot - 3;
      double wide = getWidth() - 2;
      double size = text * Math.max(1, Math.min(LARGEST, Math.min(wide / WIDE, high / HIGH)));
      sheet.show(form(wide, high, size), fields, selectedMember.get());
      if (!inDrawing.equals(new HashSet<>(sheet.places()))) {
        strip.show(selectedMember.get(), groups, new HashSet<>(sheet.places()));
      }
    } finally {
      arranging = false;
    }
  }

  private SectionForm form(double wide, double high, double size) {
    Room room = new Room(wide, high, size, desk.job().units(), kept());
    SectionForm form = made(room);
    // A bar of the scroller takes room of its own.
    return form.height() > high + 0.5
        ? made(new Room(wide - 15, high, size, desk.job().units(), kept()))
        : form;
  }

  private OptionalDouble kept() {
    return sheet.dragging() ? OptionalDouble.of(sheet.form().scale()) : OptionalDouble.empty();
  }

  private SectionForm made(Room room) {
    Bench bench = desk.bench();
    boolean waiting = bench.result().isPresent() && bench.refusal().isEmpty();
    if (waiting && bench.asked().id().equals(desk.pad().id())) {
      SectionCut cut = Optional.ofNullable(cuts.getValue()).orElse(SectionCut.USUAL);
      return SectionForm.of(bench.result().get(), cut, room);
    }
    return SectionForm.asked(desk.pad(), room);
  }

  private void offerCuts() {
    List<SectionCut> all =
        desk.bench().result().map(SectionCut::all).orElse(List.of(SectionCut.USUAL));
    if (!cuts.getItems().equals(all)) {
      SectionCut now = cuts.getValue();
      cuts.setItems(FXCollections.observableArrayList(all));
      cuts.setValue(now != null && all.contains(now) ? now : SectionCut.USUAL);
    }
    boolean choice = all.size() > 1;
    cuts.setVisible(choice);
    cuts.setManaged(choice);
  }

  /** The controls in the order in which Tab goes through the drawing. */
  List<Node> fieldsInOrder() {
    return new ArrayList<>(sheet.inOrder());
  }
}
