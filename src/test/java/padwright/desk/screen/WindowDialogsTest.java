package padwright.desk.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.DialogPane;
import javafx.scene.layout.Pane;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import padwright.desk.model.Settings;

/** What is asked in a dialog, and that closing one loses nothing. */
@ExtendWith(ApplicationExtension.class)
class WindowDialogsTest {
  private final List<String> opened = new ArrayList<>();
  private WindowDialogs dialogs;
  private Path folder;

  @Start
  void start(Stage stage) throws Exception {
    folder = Files.createTempDirectory("desk");
    stage.setScene(new Scene(new Pane(), 600, 400));
    stage.show();
    dialogs = new WindowDialogs(stage, new Look(new Settings(folder)), opened::add);
  }

  /** Asks, and presses the button of that name. */
  private <T> T answered(FxRobot robot, Supplier<T> ask, String button) throws Exception {
    CompletableFuture<T> answer = new CompletableFuture<>();
    Platform.runLater(() -> answer.complete(ask.get()));
    OpenDesk.until(() -> pane() != null);
    robot.interact(() -> button(pane(), button).fire());
    return answer.get(10, TimeUnit.SECONDS);
  }

  private static DialogPane pane() {
    return Window.getWindows().stream()
        .filter(w -> w.getScene() != null && w.getScene().getRoot() instanceof DialogPane)
        .map(w -> (DialogPane) w.getScene().getRoot())
        .findFirst()
        .orElse(null);
  }

  private static Button button(DialogPane pane, String words) {
    return pane.getButtonTypes().stream()
        .map(t -> (Button) pane.lookupButton(t))
        .filter(b -> b.getText().equals(words))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void unsavedWorkIsSavedLeftOrKept(FxRobot robot) throws Exception {
    Supplier<Dialogs.Unsaved> ask = () -> dialogs.unsaved("nook.json");
    assertThat(answered(robot, ask, "Save")).isEqualTo(Dialogs.Unsaved.SAVE);
    assertThat(answered(robot, ask, "Do not save")).isEqualTo(Dialogs.Unsaved.LEAVE);
    assertThat(answered(robot, ask, "Go back")).isEqualTo(Dialogs.Unsaved.STAY);
  }

  @Test
  void whatIsConfirmedSaysSoInItsButton(FxRobot robot) throws Exception {
    Supplier<Boolean> ask = () -> dialogs.confirm("Throw it away?", "It is lost.", "Throw it away");
    assertThat(answered(robot, ask, "Throw it away")).isTrue();
    assertThat(answered(robot, ask, "Go back")).isFalse();
    assertThat(
            answered(
                robot,
                () -> {
                  dialogs.say("That did not work", "No such folder.");
                  return true;
                },
                "OK"))
        .isTrue();
  }

  @Test
  void aFolderIsOpenedByItsAddress() {
    dialogs.open(folder);
    assertThat(opened).containsExactly(folder.toUri().toString());
  }
}
