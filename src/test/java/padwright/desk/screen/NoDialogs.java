package padwright.desk.screen;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Answers in the place of a maker: what is set beforehand, and remembers what was said. */
final class NoDialogs implements Dialogs {
  Unsaved unsaved = Unsaved.LEAVE;
  Optional<Path> open = Optional.empty();
  Optional<Path> save = Optional.empty();
  Optional<Path> drawing = Optional.empty();
  Optional<Path> write = Optional.empty();
  Optional<Path> folder = Optional.empty();
  boolean confirms = true;
  final List<String> said = new ArrayList<>();

  @Override
  public Unsaved unsaved(String name) {
    said.add("unsaved: " + name);
    return unsaved;
  }

  @Override
  public Optional<Path> jobToOpen() {
    return open;
  }

  @Override
  public Optional<Path> jobToSave(String suggested) {
    return save;
  }

  @Override
  public Optional<Path> drawingToRead() {
    return drawing;
  }

  @Override
  public Optional<Path> fileToWrite(String suggested, String ending) {
    return write;
  }

  @Override
  public Optional<Path> folder(String title) {
    return folder;
  }

  @Override
  public void open(Path path) {
    said.add("open: " + path);
  }

  @Override
  public void say(String title, String text) {
    said.add(title + ": " + text);
  }

  @Override
  public boolean confirm(String title, String text, String button) {
    said.add(title + ": " + text);
    return confirms;
  }
}
