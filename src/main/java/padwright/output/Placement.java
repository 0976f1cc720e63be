package padwright.output;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import padwright.measure.InputRefused;

/** Moves staged files to their place, and back again when one of them cannot be moved. */
final class Placement {
  private static final int MOST_NAMED = 3;

  private final Path stage;
  private final Path target;

  /** How to take back what was done, the last step first. */
  private final Deque<Undo> done = new ArrayDeque<>();

  Placement(Path stage, Path target) {
    this.stage = stage;
    this.target = target;
  }

  @FunctionalInterface
  private interface Undo {
    void run() throws IOException;
  }

  OutputFolder.Outcome run(boolean replace) throws IOException {
    List<Path> staged = FileTree.visibleFiles(stage);
    if (!Files.exists(target)) {
      wholeFolder();
      return new OutputFolder.Outcome(staged.size(), 0, List.of());
    }
    Set<Path> there = new HashSet<>(FileTree.visibleFiles(target));
    List<Path> others = new ArrayList<>(new TreeSet<>(there));
    others.removeAll(new HashSet<>(staged));
    List<Path> differing = new ArrayList<>();
    List<Path> fresh = new ArrayList<>();
    for (Path file : staged) {
      Path place = target.resolve(file);
      if (Files.isDirectory(place)) {
        throw new FileAlreadyExistsException(place.toString(), null, "a folder has this name");
      } else if (!there.contains(file)) {
        fresh.add(file);
      } else if (Files.mismatch(stage.resolve(file), place) >= 0) {
        differing.add(file);
      }
    }
    if (!replace && !(differing.isEmpty() && others.isEmpty())) {
      throw refused(differing, others);
    }
    try {
      for (Path file : differing) {
        setAside(file);
      }
      for (Path file : differing) {
        place(file);
      }
      for (Path file : fresh) {
        place(file);
      }
    } catch (IOException | RuntimeException e) {
      takeBack(e);
      throw e;
    }
    int written = differing.size() + fresh.size();
    return new OutputFolder.Outcome(
        written, staged.size() - written, others.stream().map(Path::toString).toList());
  }

  /** A new folder is there at once, by its name alone. */
  private void wholeFolder() throws IOException {
    try {
      folder(target.getParent());
      Files.move(stage, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException | RuntimeException e) {
      takeBack(e);
      throw e;
    }
  }

  private InputRefused refused(List<Path> differing, List<Path> others) {
    List<Path> named = differing.isEmpty() ? others : differing;
    String names =
        String.join(", ", named.stream().limit(MOST_NAMED).map(Path::toString).toList())
            + (named.size() > MOST_NAMED ? " and " + (named.size() - MOST_NAMED) + " more" : "");
    String problem =
        differing.isEmpty()
            ? "the folder holds files that are not of this job: " + names
            : "the folder holds other patterns, which would be overwritten: " + names;
    return new InputRefused(
        target.toString(),
        0,
        "",
        problem,
        "Choose a new folder, or add --replace to put the new patterns in place of the old");
  }

  /** The old files wait in the stage until all is well, and go with it. */
  private void setAside(Path file) throws IOException {
    Path from = target.resolve(file);
    Path to = stage.resolve(".old").resolve(file);
    Files.createDirectories(to.getParent());
    Files.move(from, to);
    done.push(() -> Files.move(to, from));
  }

  private void place(Path file) throws IOException {
    Path to = target.resolve(file);
    folder(to.getParent());
    Files.move(stage.resolve(file), to);
    done.push(() -> Files.delete(to));
  }

  private void folder(Path folder) throws IOException {
    if (folder == null || Files.isDirectory(folder)) {
      return;
    }
    folder(folder.getParent());
    Files.createDirectory(folder);
    done.push(() -> Files.delete(folder));
  }

  private void takeBack(Exception cause) {
    while (!done.isEmpty()) {
      try {
        done.pop().run();
      } catch (IOException e) {
        cause.addSuppressed(e);
      }
    }
  }
}
