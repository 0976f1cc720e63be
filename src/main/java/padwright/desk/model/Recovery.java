package padwright.desk.model;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
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
 * is gone, or began after the file was last changed, holds what was not saved: a machine that was
 * started anew gives the same numbers again.
 */
final class Recovery {
  private static final Pattern NAME = Pattern.compile("unsaved-(\\d{1,18})(?<aside>-\\d+)?\\.json");

  /** A file's time may be kept in whole seconds, and a process's start in ticks. */
  private static final Duration CLOCK = Duration.ofSeconds(2);

  private final Path folder;
  private final long process;

  Recovery(Path folder, long process) {
    this.folder = folder;
    this.process = process;
    putAside();
  }

  /** What an earlier process of the same number left must not be written over. */
  private void putAside() {
    try {
      if (Files.isRegularFile(own()) && !running(process, own())) {
        long at = Files.getLastModifiedTime(own()).toMillis();
        Path aside = folder.resolve("unsaved-" + process + "-" + at + ".json");
        if (Files.isRegularFile(note(own()))) {
          Files.move(note(own()), note(aside), StandardCopyOption.REPLACE_EXISTING);
        }
        Files.move(own(), aside, StandardCopyOption.REPLACE_EXISTING);
      }
    } catch (IOException e) {
      // Then it stays where it is until something is kept.
      return;
    }
  }

  /** Whether the process that wrote a copy still runs. */
  private static boolean running(long owner, Path copy) throws IOException {
    Optional<ProcessHandle> handle = ProcessHandle.of(owner).filter(ProcessHandle::isAlive);
    Optional<Instant> start = handle.flatMap(p -> p.info().startInstant());
    Instant changed = Files.getLastModifiedTime(copy).toInstant();
    return handle.isPresent() && start.map(s -> !s.isAfter(changed.plus(CLOCK))).orElse(true);
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
          boolean aside = m.group("aside") != null;
          add(all, copy, aside || owner != process && !running(owner, copy));
        }
      }
    } catch (IOException | DirectoryIteratorException e) {
      // What could be read up to there is better than nothing.
      all.removeIf(left -> !Files.exists(left.copy()));
    }
    all.sort(Comparator.comparing(Left::at).reversed());
    return all;
  }

  private static void add(List<Left> all, Path copy, boolean left) throws IOException {
    if (left && Files.isRegularFile(copy)) {
      all.add(new Left(copy, file(copy), Files.getLastModifiedTime(copy).toInstant()));
    }
  }

  /** Where it belongs; a note that cannot be read must not cost the work itself. */
  private static Optional<Path> file(Path copy) {
    try {
      String name = Files.readString(note(copy)).strip();
      return name.isEmpty() ? Optional.empty() : Optional.of(Path.of(name));
    } catch (IOException | InvalidPathException none) {
      return Optional.empty();
    }
  }
}
