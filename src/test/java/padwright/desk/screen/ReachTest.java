package padwright.desk.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TabPane;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Without a mouse and without sight: what can be used has a name and is reached by Tab. */
@ExtendWith(ApplicationExtension.class)
class ReachTest {
  private static final int MOST_STEPS = 200;

  private OpenDesk open;

  @Start
  void start(Stage stage) {
    open = new OpenDesk(stage, OpenDesk.folder());
  }

  @AfterEach
  void stop() {
    open.stop();
  }

  private static void all(Node node, List<Node> into) {
    if (node.isVisible()) {
      into.add(node);
      if (node instanceof Parent p) {
        p.getChildrenUnmodifiable().forEach(c -> all(c, into));
      }
    }
  }

  private static boolean named(Node node) {
    String text = node.getAccessibleText();
    boolean words = node instanceof Labeled l && l.getText() != null && !l.getText().isBlank();
    return words || text != null && !text.isBlank();
  }

  @Test
  void whateverTakesTheFocusHasAName(FxRobot robot) throws Exception {
    open.worked();
    List<Node> nodes = new ArrayList<>();
    robot.interact(() -> all(open.window, nodes));
    assertThat(nodes.stream().filter(n -> n.isFocusTraversable() && !(n instanceof TabPane)))
        .hasSizeGreaterThan(20)
        .allSatisfy(n -> assertThat(named(n)).as(n.toString()).isTrue());
  }

  @Test
  void tabGoesThroughAllThatIsShownAndComesBack(FxRobot robot) throws Exception {
    open.worked();
    List<Node> nodes = new ArrayList<>();
    robot.interact(
        () -> {
          all(open.window, nodes);
          open.window.lookup("#parts").requestFocus();
        });
    Set<Node> reached = new LinkedHashSet<>();
    Node at = focused(robot);
    while (reached.size() < MOST_STEPS && reached.add(at)) {
      robot.push(KeyCode.TAB);
      at = focused(robot);
    }
    assertThat(reached).hasSizeLessThan(MOST_STEPS);
    assertThat(at).isSameAs(reached.iterator().next());
    List<Node> wanted =
        nodes.stream()
            .filter(n -> n instanceof Control && n.isFocusTraversable() && !n.isDisabled())
            .filter(n -> !(n instanceof ScrollPane))
            // Going through the section chooses its members, whose fields take the others' place.
            .filter(n -> n.getScene() != null)
            .toList();
    assertThat(reached).containsAll(wanted);
    assertThat(reached).contains(open.window.pieces().view());
  }

  private Node focused(FxRobot robot) {
    Node[] at = new Node[1];
    robot.interact(() -> at[0] = open.window.getScene().getFocusOwner());
    return at[0];
  }
}
