package padwright.desk.screen;

import java.util.concurrent.Executor;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.util.StringConverter;
import padwright.desk.view.PagePreview;
import padwright.desk.view.Picture;
import padwright.material.Paper;

/** The printed pages of a part, as they will come from the printer, one at a time. */
public final class PreviewPane extends BorderPane {
  private static final double GAP = 8;

  private final PagePreview preview;
  private final ComboBox<Paper> paper = new ComboBox<>();
  private final TextField across = new TextField();
  private final TextField along = new TextField();
  private final Label problem = new Label();
  private final Label place = new Label();
  private final Button previous = new Button("_Previous page");
  private final Button next = new Button("_Next page");
  private final ProgressIndicator busy = new ProgressIndicator();
  private final ImageView page = new ImageView();
  private final ScrollPane scroll = new ScrollPane();
  private final ToggleButton large = new ToggleButton("_Large");
  private Picture shown;
  private String mistyped = "";

  /**
   * @param make makes the preview, given what to run when it changes and the window's executor
   */
  public PreviewPane(Function<Hooks, PagePreview> make) {
    preview = make.apply(new Hooks(Platform::runLater, this::update));
    paper.getItems().setAll(preview.papers());
    paper.setConverter(names());
    paper.setValue(preview.paper());
    paper.setOnAction(e -> preview.choose(paper.getValue()));
    paper.setAccessibleText("Paper");
    correction(across, "Check line across the paper measures");
    correction(along, "Check line along the paper measures");
    previous.setOnAction(e -> preview.previous());
    next.setOnAction(e -> preview.next());
    large.setOnAction(e -> fit());
    large.setAccessibleText("Large: the page as wide as the room for it");
    busy.setPrefSize(18, 18);
    problem.setWrapText(true);
    problem.setId("preview-problem");
    place.setId("preview-place");
    across.setId("preview-across");
    next.setId("preview-next");
    problem.managedProperty().bind(problem.visibleProperty());
    setTop(head());
    setCenter(pages());
    setBottom(foot());
    // Before the field that is typed in, to which a page means nothing, takes the key.
    addEventFilter(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (e.getCode() == KeyCode.PAGE_DOWN) {
            preview.next();
            e.consume();
          } else if (e.getCode() == KeyCode.PAGE_UP) {
            preview.previous();
            e.consume();
          }
        });
    preview.show(1);
  }

  /**
   * What a preview needs of the window.
   *
   * @param window runs things on the window's thread
   * @param changed to be told of every change
   */
  public record Hooks(Executor window, Runnable changed) {}

  private FlowPane head() {
    FlowPane head =
        new FlowPane(
            GAP,
            GAP,
            labelled("P_aper", paper),
            labelled("100 mm line a_cross measures", across),
            labelled("100 mm line a_long measures", along),
            problem);
    head.setPadding(new Insets(GAP));
    return head;
  }

  private static HBox labelled(String words, Control field) {
    Label label = new Label(words);
    label.setMnemonicParsing(true);
    label.setLabelFor(field);
    HBox box = new HBox(GAP, label, field);
    box.setAlignment(Pos.CENTER_LEFT);
    return box;
  }

  private StackPane pages() {
    page.setPreserveRatio(true);
    scroll.setContent(new StackPane(page));
    scroll.setFitToWidth(true);
    scroll.setFitToHeight(true);
    scroll.setFocusTraversable(true);
    scroll.viewportBoundsProperty().addListener((of, was, is) -> fit());
    StackPane stack = new StackPane(scroll, busy);
    StackPane.setAlignment(busy, Pos.TOP_RIGHT);
    StackPane.setMargin(busy, new Insets(GAP));
    busy.setMaxSize(18, 18);
    return stack;
  }

  private HBox foot() {
    HBox foot = new HBox(GAP, previous, place, next, large);
    foot.setAlignment(Pos.CENTER);
    foot.setPadding(new Insets(GAP));
    return foot;
  }

  private void correction(TextField field, String name) {
    field.setPromptText("100 mm");
    field.setPrefColumnCount(8);
    field.setAccessibleText(name);
    field.setOnAction(e -> correct());
    field
        .focusedProperty()
        .addListener(
            (of, was, is) -> {
              if (!is) {
                correct();
              }
            });
  }

  private void correct() {
    mistyped = preview.measured(across.getText(), along.getText());
    update();
  }

  private static StringConverter<Paper> names() {
    return new StringConverter<>() {
      @Override
      public String toString(Paper p) {
        return p == null ? "" : p.name();
      }

      @Override
      public Paper fromString(String name) {
        throw new UnsupportedOperationException("papers are chosen, not typed");
      }
    };
  }

  private void update() {
    if (preview == null) {
      return;
    }
    PagePreview.State state = preview.state();
    problem.setText(mistyped.isEmpty() ? state.problem() : mistyped);
    problem.setVisible(!problem.getText().isEmpty());
    place.setText(state.sentence());
    busy.setVisible(state.busy());
    previous.setDisable(state.page() <= 1);
    next.setDisable(state.page() >= state.pages());
    page.setAccessibleText(state.sentence());
    state.picture().filter(p -> p != shown).ifPresent(this::paint);
  }

  private void paint(Picture picture) {
    shown = picture;
    WritableImage image = new WritableImage(picture.width(), picture.height());
    image
        .getPixelWriter()
        .setPixels(
            0,
            0,
            picture.width(),
            picture.height(),
            PixelFormat.getIntArgbInstance(),
            picture.argb(),
            0,
            picture.width());
    page.setImage(image);
    fit();
  }

  /** The whole page, or all its width where the maker wants it large. */
  private void fit() {
    if (shown == null) {
      return;
    }
    double w = scroll.getViewportBounds().getWidth();
    double h = scroll.getViewportBounds().getHeight();
    double whole = Math.min(w / shown.width(), h / shown.height());
    double scale = large.isSelected() ? w / shown.width() : whole;
    page.setFitWidth(Math.max(1, Math.floor(scale * shown.width())));
  }
}
