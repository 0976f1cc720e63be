package padwright.desk.screen;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntConsumer;
import javafx.geometry.Insets;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.text.TextAlignment;
import padwright.design.Units;
import padwright.desk.model.Bench;
import padwright.desk.model.Desk;
import padwright.desk.view.SectionForm;
import padwright.desk.view.SectionForm.Kind;
import padwright.desk.view.SectionForm.Line;
import padwright.desk.view.StapleGauge;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;

/** The staple gauge of the part on the bench: follows every change of leg, covering and board. */
public final class StapleGaugePane extends Region {
  /** Usual size of letters, points. */
  static final double TEXT = 12;

  private final Seen seen = new Seen();
  private final Desk desk;
  private final Canvas canvas = new Canvas();
  private OptionalInt position = OptionalInt.empty();
  private String part = "";
  private IntConsumer onStep = number -> {};
  private boolean dark;
  private double text = TEXT;

  /** A gauge that shows the worst staple until another is chosen. */
  public StapleGaugePane(Desk desk) {
    this.desk = desk;
    getChildren().add(canvas);
    setPadding(Insets.EMPTY);
    setMinSize(240, 180);
    setPrefSize(420, 260);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setFocusTraversable(true);
    focusedProperty().addListener((o, was, is) -> paint());
    setAccessibleHelp("Left and Right go from staple to staple, Home to the worst");
    setOnMousePressed(e -> requestFocus());
    setOnKeyPressed(this::key);
    desk.onChange(
        () -> {
          if (seen.changed(desk.bench(), desk.now())) {
            paint();
          }
        });
  }

  /** Told the number of the staple that is gone to, counted from 1; 0 for the worst. */
  void onStep(IntConsumer action) {
    onStep = action;
  }

  private void key(KeyEvent e) {
    switch (e.getCode()) {
      case RIGHT, KP_RIGHT -> step(1);
      case LEFT, KP_LEFT -> step(-1);
      case HOME -> choose(0);
      default -> {
        return;
      }
    }
    e.consume();
  }

  private void step(int by) {
    int count = desk.bench().result().map(r -> r.staples().positions().size()).orElse(0);
    if (count > 0) {
      // From the worst, the first step goes to the first staple or to the last.
      int at = position.orElse(by > 0 ? -1 : count);
      choose(Math.floorMod(at + by, count) + 1);
    }
  }

  private void choose(int number) {
    setPosition(number == 0 ? OptionalInt.empty() : OptionalInt.of(number - 1));
    onStep.accept(number);
  }

  public void setDark(boolean dark) {
    this.dark = dark;
    paint();
  }

  public void setTextSize(double points) {
    text = points;
    paint();
  }

  /** The staple shown, counted from 0 in driving order; empty for the worst. */
  public void setPosition(OptionalInt position) {
    this.position = position;
    paint();
  }

  @Override
  protected void layoutChildren() {
    paint();
  }

  private void paint() {
    if (getWidth() <= 0 || getHeight() <= 0) {
      return;
    }
    canvas.setWidth(getWidth());
    canvas.setHeight(getHeight());
    FormColours colours = FormColours.of(dark);
    FormBrush brush = new FormBrush(canvas.getGraphicsContext2D(), colours, text);
    brush.clear(getWidth(), getHeight());
    Bench bench = desk.bench();
    if (!part.equals(desk.pad().id())) {
      part = desk.pad().id();
      position = OptionalInt.empty();
    }
    if (bench.result().isEmpty()) {
      String none = "The staple is shown once the part is worked out";
      brush.words(
          none,
          new Bounds(6, 0, getWidth() - 6, getHeight()),
          TextAlignment.CENTER,
          false,
          colours.ink());
      setAccessibleText(none);
      return;
    }
    int count = bench.result().get().staples().positions().size();
    OptionalInt at =
        position.isPresent() && position.getAsInt() < count ? position : OptionalInt.empty();
    Units units = desk.job().units();
    StapleGauge gauge =
        StapleGauge.of(
            bench.result().get(), at, new SectionForm.Room(getWidth(), getHeight(), text, units));
    paint(brush, colours, gauge, at.isEmpty(), bench.stale());
  }

  private void paint(
      FormBrush brush, FormColours colours, StapleGauge gauge, boolean worst, boolean stale) {
    for (StapleGauge.Band b : gauge.bands()) {
      Bounds box = b.box();
      brush.area(
          b.kind(),
          0,
          List.of(
              new Vec2(box.minX(), box.minY()),
              new Vec2(box.maxX(), box.minY()),
              new Vec2(box.maxX(), box.maxY()),
              new Vec2(box.minX(), box.maxY())),
          false);
      if (b.kind() == Kind.COVER) {
        brush.line(
            new Line(new Vec2(box.minX(), box.minY()), new Vec2(box.maxX(), box.minY())),
            false,
            colours.paper(),
            1);
      }
    }
    brush.line(gauge.nominal(), false, colours.ink(), 1.6);
    brush.line(gauge.least(), true, colours.ink(), 1.4);
    brush.area(Kind.STAPLES, 0, gauge.wire(), false);
    for (StapleGauge.Bar b : gauge.bars()) {
      brush.bar(b.from(), b.to(), false);
      boolean left = b.box().maxX() < gauge.width() / 2;
      Vec2 near = new Vec2(left ? b.box().maxX() : b.box().minX(), b.box().centre().y());
      brush.line(new Line(near, b.from().midpoint(b.to())), false);
      brush.words(
          b.label(),
          b.box(),
          left ? TextAlignment.RIGHT : TextAlignment.LEFT,
          false,
          colours.ink());
    }
    foot(brush, colours, gauge, worst, stale);
  }

  private void foot(
      FormBrush brush, FormColours colours, StapleGauge gauge, boolean worst, boolean stale) {
    double h = getHeight();
    double w = getWidth();
    double line = text * 1.3;
    String which =
        gauge.staple() == 0
            ? ""
            : (worst ? "worst staple, no. " : "staple no. ")
                + gauge.staple()
                + (stale ? " (last good)" : "");
    brush.words(
        which,
        new Bounds(6, h - 4 * line - 4, w - 6, h - 3 * line - 4),
        TextAlignment.LEFT,
        false,
        colours.faint());
    List<String> lines = brush.broken(gauge.words(), w - 12);
    for (int i = 0; i < 2; i++) {
      String words = i < lines.size() ? lines.get(i) : "";
      Bounds box = new Bounds(6, h - (3 - i) * line - 4, w - 6, h - (2 - i) * line - 4);
      brush.words(words, box, TextAlignment.LEFT, false, colours.ink());
    }
    String verdict = gauge.sign().mark() + "  " + gauge.verdict();
    brush.words(
        verdict,
        new Bounds(6, h - line - 4, w - 6, h - 4),
        TextAlignment.LEFT,
        true,
        switch (gauge.sign()) {
          case PASSES -> colours.passes();
          case CAUTION -> colours.caution();
          case STOP -> colours.stop();
        });
    if (isFocused()) {
      brush.outline(
          List.of(new Vec2(1, 1), new Vec2(w - 1, 1), new Vec2(w - 1, h - 1), new Vec2(1, h - 1)),
          true,
          2.2);
    }
    setAccessibleText("Staple gauge, " + which + ": " + gauge.words() + ". " + gauge.verdict());
  }
}
