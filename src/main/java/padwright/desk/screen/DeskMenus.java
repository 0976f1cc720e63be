package padwright.desk.screen;

import java.nio.file.Path;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCombination;
import padwright.desk.model.Demo;
import padwright.desk.model.Desk;
import padwright.desk.model.Settings;
import padwright.jobfile.ReadyPart;
import padwright.jobfile.StartNumbers;
import padwright.jobfile.Starter;

/** The menus: everything the window can do, by name and by key. */
final class DeskMenus extends MenuBar {
  private final Desk desk;
  private final DeskWindow window;
  private final Settings settings;
  private final MenuItem undo;
  private final MenuItem redo;
  private final Menu recent = new Menu("Open _recent");

  DeskMenus(Desk desk, DeskWindow window, Settings settings, Look look) {
    this.desk = desk;
    this.window = window;
    this.settings = settings;
    undo = item("_Undo", "Shortcut+Z", desk::undo);
    redo = item("_Redo", "Shortcut+Shift+Z", desk::redo);
    setId("menus");
    getMenus().addAll(job(), edit(), part(), view(look), help());
    recent.setOnShowing(e -> recent());
    recent();
    desk.onChange(this::refresh);
    refresh();
  }

  static MenuItem item(String text, String key, Runnable action) {
    MenuItem item = new MenuItem(text);
    if (!key.isEmpty()) {
      item.setAccelerator(KeyCombination.keyCombination(key));
    }
    item.setOnAction(e -> action.run());
    return item;
  }

  private Menu job() {
    Menu fresh = new Menu("_New job from");
    Starter starter = new Starter(desk.catalogue());
    for (ReadyPart ready : starter.parts()) {
      fresh
          .getItems()
          .add(
              item(
                  ready.name(),
                  "",
                  () ->
                      window
                          .actions()
                          .begin(
                              starter.start(ready.id(), StartNumbers.none(), desk.job().units()))));
    }
    Menu menu = new Menu("_Job");
    menu.getItems()
        .addAll(
            fresh,
            item("_Open\u2026", "Shortcut+O", () -> window.actions().open()),
            recent,
            item("Open the _demo", "", () -> window.actions().begin(Demo.job(desk.reader()))),
            item("_Read an outline from a drawing\u2026", "", () -> window.actions().readDrawing()),
            new SeparatorMenuItem(),
            item("_Save", "Shortcut+S", () -> window.actions().save()),
            item("Save _as\u2026", "Shortcut+Shift+S", () -> window.actions().saveAs()),
            item("_Heading and units\u2026", "", window::heading),
            new SeparatorMenuItem(),
            item("_Print preview and draft\u2026", "Shortcut+P", window::draft),
            item("Write this view as S_VG\u2026", "", () -> window.views().svg()),
            item("Write this view as PN_G\u2026", "", () -> window.views().png()),
            item("_Copy figures as a table", "Shortcut+Shift+C", window::copyFigures),
            new SeparatorMenuItem(),
            item("_Quit", "Shortcut+Q", window::quit));
    return menu;
  }

  private void recent() {
    recent.getItems().clear();
    for (Path file : settings.recent()) {
      MenuItem item =
          item(
              file.getFileName() + "  (" + file.getParent() + ")",
              "",
              () -> window.actions().open(file));
      item.setMnemonicParsing(false);
      recent.getItems().add(item);
    }
    if (recent.getItems().isEmpty()) {
      MenuItem none = new MenuItem("None yet");
      none.setDisable(true);
      recent.getItems().add(none);
    }
  }

  private Menu edit() {
    Menu menu = new Menu("_Edit");
    menu.getItems().addAll(undo, redo);
    return menu;
  }

  private Menu part() {
    Menu menu = new Menu("_Part");
    PartsPane parts = window.parts();
    menu.getItems()
        .addAll(
            item("_Duplicate", "Shortcut+D", parts::duplicate),
            item("_Mirror", "Shortcut+M", parts::mirror),
            item("Move _up", "Shortcut+Shift+Up", () -> parts.move(-1)),
            item("Move dow_n", "Shortcut+Shift+Down", () -> parts.move(1)),
            item("_Remove", "Shortcut+Delete", parts::remove),
            new SeparatorMenuItem(),
            item("N_ext part", "Shortcut+Page_Down", () -> window.stepPart(1)),
            item("Part _before", "Shortcut+Page_Up", () -> window.stepPart(-1)));
    return menu;
  }

  private Menu view(Look look) {
    CheckMenuItem dark = new CheckMenuItem("_Dark");
    dark.setSelected(look.dark());
    dark.setOnAction(e -> look.setDark(dark.isSelected()));
    Menu menu = new Menu("_View");
    menu.getItems()
        .addAll(
            dark,
            item("Text _larger", "Shortcut+Plus", () -> look.resize(1)),
            item("Text _smaller", "Shortcut+Minus", () -> look.resize(-1)),
            item("Text as _usual", "Shortcut+0", () -> look.resize(0)),
            new SeparatorMenuItem(),
            item("_Next drawing", "Shortcut+Right", () -> window.pieces().step(1)),
            item("Drawing _before", "Shortcut+Left", () -> window.pieces().step(-1)),
            new SeparatorMenuItem(),
            item("Go to _parts", "Shortcut+1", () -> window.go(1)),
            item("Go to the s_ection", "Shortcut+2", () -> window.go(2)),
            item("Go to p_ieces", "Shortcut+3", () -> window.go(3)),
            item("Go to the s_olid", "Shortcut+4", () -> window.go(4)),
            item("Go to _findings", "Shortcut+5", () -> window.go(5)),
            item("Go to fi_gures", "Shortcut+6", () -> window.go(6)),
            item("Go to the s_taple gauge", "Shortcut+7", () -> window.go(7)),
            item("Go to the p_lan", "Shortcut+8", () -> window.go(8)));
    return menu;
  }

  private Menu help() {
    Menu menu = new Menu("_Help");
    menu.getItems().add(item("_Keys", "F1", window::keys));
    return menu;
  }

  private void refresh() {
    undo.setDisable(desk.toUndo().isEmpty());
    undo.setText(desk.toUndo().map(l -> "_Undo: " + l).orElse("_Undo"));
    redo.setDisable(desk.toRedo().isEmpty());
    redo.setText(desk.toRedo().map(l -> "_Redo: " + l).orElse("_Redo"));
  }
}
