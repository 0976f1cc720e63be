package padwright.desk.screen;

import java.util.Optional;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.OverrunStyle;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import padwright.design.Finding;
import padwright.design.WrappedPad;
import padwright.desk.edit.OutlineChange;
import padwright.desk.model.Desk;
import padwright.desk.model.PartAnswer;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.pattern.PartResult;

/** One line of the parts list: outline of the base, name, how many, how it stands. */
final class PartCell extends ListCell<Integer> {
  private static final double WIDE = 54;
  private static final double HIGH = 40;
  private static final double EDGE = 4;

  private final Desk desk;
  private final Look look;
  private final Canvas canvas = new Canvas(WIDE, HIGH);
  private final Label name = new Label();
  private final Label many = new Label();
  private final Label level = new Label();
  private final HBox row;
  private final Seen seen = new Seen();

  PartCell(Desk desk, Look look) {
    this.desk = desk;
    this.look = look;
    name.setTextOverrun(OverrunStyle.ELLIPSIS);
    name.getStyleClass().add("part-name");
    name.setWrapText(true);
    // Two lines; what is longer ends in dots, and is told when the pointer rests on it.
    name.maxHeightProperty().bind(many.heightProperty().multiply(2.2));
    name.setMinWidth(0);
    many.setTextOverrun(OverrunStyle.ELLIPSIS);
    many.setMinWidth(0);
    VBox words = new VBox(name, many, level);
    words.setMinWidth(0);
    HBox.setHgrow(words, Priority.ALWAYS);
    row = new HBox(6, canvas, words);
    row.setMinWidth(0);
    // As wide as the list is, so that long names end in dots and nothing scrolls sideways.
    setPrefWidth(0);
  }

  static long count(PartResult result, Finding.Level level) {
    return result.findings().stream().filter(f -> f.level() == level).count();
  }

  static String many(long n, String noun) {
    return n + " " + noun + (n == 1 ? "" : "s");
  }

  @Override
  protected void updateItem(Integer number, boolean empty) {
    super.updateItem(number, empty);
    if (empty || number == null || number >= desk.job().parts().size()) {
      seen.forget();
      setGraphic(null);
      setText(null);
      return;
    }
    show(number);
  }

  /** Shows its part again if that, or what is known of it, is another. */
  void follow() {
    if (!isEmpty() && getItem() != null && getItem() < desk.job().parts().size()) {
      show(getItem());
    }
  }

  private void show(int number) {
    WrappedPad pad = (WrappedPad) desk.job().parts().get(number);
    Optional<PartAnswer> answer = desk.answer(number);
    Boolean dark = look.dark();
    if (!seen.changed(pad, answer.orElse(null), dark) && getGraphic() == row) {
      return;
    }
    Optional<PartResult> result = answer.flatMap(PartAnswer::result);
    name.setText(pad.name());
    many.setText(
        pad.quantity() + (pad.mirrored() > 0 ? " + " + pad.mirrored() + " mirrored" : " as drawn"));
    stand(answer, result);
    paint(pad, result);
    setGraphic(row);
    setTooltip(new Tooltip(pad.name()));
    setAccessibleText(pad.name() + ", " + PartsPane.words(pad, result));
  }

  private void stand(Optional<PartAnswer> answer, Optional<PartResult> result) {
    level.getStyleClass().removeAll("level-stop", "level-caution", "level-note", "faint");
    if (answer.isEmpty()) {
      level.setText("\u2026 being worked out");
      level.getStyleClass().add("faint");
    } else if (result.isEmpty()) {
      level.setText("\u25a0 cannot be made");
      level.getStyleClass().add("level-stop");
    } else if (count(result.get(), Finding.Level.STOP) > 0) {
      level.setText("\u25a0 " + many(count(result.get(), Finding.Level.STOP), "stop"));
      level.getStyleClass().add("level-stop");
    } else if (count(result.get(), Finding.Level.CAUTION) > 0) {
      level.setText("\u25b2 " + many(count(result.get(), Finding.Level.CAUTION), "caution"));
      level.getStyleClass().add("level-caution");
    } else {
      level.setText("\u2713 can be built");
      level.getStyleClass().add("faint");
    }
  }

  private void paint(WrappedPad pad, Optional<PartResult> result) {
    GraphicsContext g = canvas.getGraphicsContext2D();
    g.clearRect(0, 0, WIDE, HIGH);
    Path outline = result.map(r -> r.shape().outline()).orElseGet(() -> outline(pad));
    Bounds b = outline.bounds();
    double scale = Math.min((WIDE - 2 * EDGE) / b.width(), (HIGH - 2 * EDGE) / b.height());
    g.beginPath();
    boolean first = true;
    for (Vec2 p : outline.flattened(0.5 / scale)) {
      double x = WIDE / 2 + (p.x() - b.centre().x()) * scale;
      double y = HIGH / 2 - (p.y() - b.centre().y()) * scale;
      if (first) {
        g.moveTo(x, y);
      } else {
        g.lineTo(x, y);
      }
      first = false;
    }
    g.closePath();
    g.setFill(look.dark() ? Color.gray(0.35) : Color.gray(0.88));
    g.fill();
    g.setStroke(look.dark() ? Color.gray(0.9) : Color.gray(0.15));
    g.setLineWidth(1.2);
    g.stroke();
  }

  private static Path outline(WrappedPad pad) {
    return OutlineChange.path(pad.base().outline());
  }
}
