package padwright.desk.model;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padwright.design.Job;
import padwright.jobfile.JobSaver;
import padwright.jobfile.JobWriter;

/**
 * Keeps a copy of the job that is being edited, so that work is not lost when the program or the
 * machine stops. One file for each running workbench, named after its process; a file whose process
 * is gone holds what was not saved.
 */
final class Recovery {
  private static final Pattern NAME = Pattern.compile("unsaved-(\\d+)\\.json");

  private final Path folder;
  private final long process;

  Recovery(Path folder, long process) {
    this.folder = folder;
    this.process = process;
  }

  /**
   * Work that was not saved.
   *
   * @param copy the file that holds it
   * @param file where it was read from or saved to; empty where it never was
   * @param at when it was last changed
   */
  record Left(Path copy, Optional<Path> file, Instant at) {}

  private Path own() {
    return folder.resolve("unsaved-" + process + ".json");
  }

  private static Path note(Path copy) {
    return copy.resolveSibling(copy.getFileName() + ".where");
  }

  /** Keeps the job; the file it belongs to is kept beside it. */
  void keep(Job job, Optional<Path> file) throws IOException {
    Files.createDirectories(folder);
    JobSaver.save(note(own()), file.map(f -> f.toAbsolutePath().toString()).orElse("") + "\n");
    JobSaver.save(own(), JobWriter.write(job));
  }

  /** Nothing is unsaved any more. */
  void clear() {
    forget(own());
  }

  /** Takes a copy away, with what belongs to it. */
  static void forget(Path copy) {
    for (Path p : List.of(copy, note(copy))) {
      delete(p);
      delete(p.resolveSibling(p.getFileName() + JobSaver.PREVIOUS));
    }
  }

  private static void delete(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // It is offered once more at the next start: a nuisance, no loss.
      return;
    }
  }

  /** What other workbenches left behind, the latest first; those still running are left out. */
  List<Left> left() {
    List<Left> all = new ArrayList<>();
    if (!Files.isDirectory(folder)) {
      return all;
    }
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "unsaved-*.json")) {
      for (Path copy : files) {
        Matcher m = NAME.matcher(copy.getFileName().toString());
        if (m.matches()) {
          long owner = Long.parseLong(m.group(1));
          if (owner != process
              && ProcessHandle.of(owner).filter(ProcessHandle::isAlive).isEmpty()) {
            all.add(left(copy));
          }
        }
      }
    } catch (IOException e) {
      return all;
    }
    all.sort(Comparator.comparing(Left::at).reversed());
    return all;
  }

  private static Left left(Path copy) throws IOException {
    Optional<Path> file = Optional.empty();
    if (Files.exists(note(copy))) {
      String name = Files.readString(note(copy)).strip();
      file = name.isEmpty() ? Optional.empty() : Optional.of(Path.of(name));
    }
    return new Left(copy, file, Files.getLastModifiedTime(copy).toInstant());
  }
}
