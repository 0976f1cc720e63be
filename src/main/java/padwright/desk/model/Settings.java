package padwright.desk.model;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import padwright.jobfile.JobSaver;

/**
 * What the workbench remembers between two starts, in a folder of its own: jobs used last, light or
 * dark, size of text, paper. What cannot be read or written is as if it had not been: nothing of a
 * job is kept here.
 */
public final class Settings {
  /** How many jobs are remembered. */
  private static final int RECENT = 10;

  private static final String FILE = "desk.properties";
  private static final String JOB = "job.";

  private final Path folder;
  private final Properties values = new Properties();

  /** Settings in a folder, which is made when something is kept. */
  public Settings(Path folder) {
    this.folder = folder;
    try {
      values.load(new StringReader(Files.readString(folder.resolve(FILE))));
    } catch (IOException | IllegalArgumentException none) {
      values.clear();
    }
  }

  /** Where a program keeps such things on this system, for the one who uses it. */
  public static Path usualFolder() {
    String home = System.getProperty("user.home", ".");
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    if (system.contains("win")) {
      String data = System.getenv("APPDATA");
      return Path.of(data == null ? home : data, "Padwright");
    } else if (system.contains("mac")) {
      return Path.of(home, "Library", "Application Support", "Padwright");
    }
    String config = System.getenv("XDG_CONFIG_HOME");
    return config == null || config.isEmpty()
        ? Path.of(home, ".config", "padwright")
        : Path.of(config, "padwright");
  }

  public Path folder() {
    return folder;
  }

  public String get(String name, String otherwise) {
    return values.getProperty(name, otherwise);
  }

  public void put(String name, String value) {
    values.setProperty(name, value);
    keep();
  }

  /** Jobs used last, the latest first; those that are gone are left out. */
  public List<Path> recent() {
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < RECENT; i++) {
      String name = values.getProperty(JOB + i);
      try {
        if (name != null && Files.isRegularFile(Path.of(name))) {
          files.add(Path.of(name));
        }
      } catch (InvalidPathException other) {
        continue;
      }
    }
    return files;
  }

  void used(Path file) {
    Path own = file.toAbsolutePath().normalize();
    List<Path> files = new ArrayList<>(recent());
    files.remove(own);
    files.add(0, own);
    for (int i = 0; i < RECENT; i++) {
      if (i < files.size()) {
        values.setProperty(JOB + i, files.get(i).toString());
      } else {
        values.remove(JOB + i);
      }
    }
    keep();
  }

  private void keep() {
    try {
      Files.createDirectories(folder);
      StringWriter text = new StringWriter();
      values.store(text, null);
      JobSaver.save(folder.resolve(FILE), text.toString());
    } catch (IOException e) {
      // A folder that cannot be written costs the maker a choice, never any work.
      return;
    }
  }
}
