package padwright.desk.screen;

import java.nio.file.Path;
import java.util.Optional;

/** What is asked of the maker in a window of its own; a test answers in its place. */
interface Dialogs {
  /** What to do with work that is not saved. */
  enum Unsaved {
    SAVE,
    LEAVE,
    STAY
  }

  Unsaved unsaved(String name);

  Optional<Path> jobToOpen();

  Optional<Path> jobToSave(String suggested);

  Optional<Path> drawingToRead();

  Optional<Path> fileToWrite(String suggested, String ending);

  Optional<Path> folder(String title);

  /** Shows a folder in the system's own window for files. */
  void open(Path folder);

  /** Says something that must be read. */
  void say(String title, String text);

  /** Whether the maker wants it. */
  boolean confirm(String title, String text, String button);
}
