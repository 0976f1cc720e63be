package padwright.output;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A folder that is written whole or not at all. Files go into a hidden folder on the same disk
 * first; {@link #commit} puts them in their place, and where that fails everything is as it was. A
 * run that ends any other way, an interrupt included, leaves nothing behind.
 */
public final class OutputFolder implements Closeable {
  private static final String HIDDEN = ".padwright-";
  private static final int MOST_TRIES = 100;

  private final Path target;
  private final Path stage;
  private final Thread cleaner;
  private final Set<Path> folders = ConcurrentHashMap.newKeySet();

  private OutputFolder(Path target, Path stage) {
    this.target = target;
    this.stage = stage;
    // Also when the maker stops the run in the middle.
    this.cleaner = new Thread(() -> FileTree.deleteQuietly(stage), "padwright-clean-up");
    Runtime.getRuntime().addShutdownHook(cleaner);
  }

  /** What a commit did. */
  public record Outcome(int written, int unchanged, List<String> others) {}

  /**
   * Begins a folder.
   *
   * @throws IOException where there is something else of this name, or it may not be written
   */
  public static OutputFolder begin(Path folder) throws IOException {
    Path target = folder.toAbsolutePath().normalize();
    if (Files.exists(target, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(target)) {
      throw new FileAlreadyExistsException(folder.toString(), null, "a file has this name");
    }
    Path home = target;
    while (home != null && !Files.exists(home)) {
      home = home.getParent();
    }
    if (home == null || !Files.isDirectory(home)) {
      throw new FileSystemException(
          folder.toString(), null, home + " is a file, not a folder. Choose another name");
    }
    try {
      return new OutputFolder(target, hiddenIn(home));
    } catch (FileSystemException e) {
      // Says what the maker asked for; the hidden folder is nothing to them.
      String why =
          e instanceof AccessDeniedException ? "you may not write" : "no folder can be made";
      FileSystemException said =
          new FileSystemException(
              folder.toString(),
              null,
              why + " in " + home + ". Choose another folder or change its permissions");
      said.initCause(e);
      throw said;
    }
  }

  private static Path hiddenIn(Path home) throws IOException {
    for (int i = 0; ; i++) {
      Path stage = home.resolve(HIDDEN + ProcessHandle.current().pid() + "-" + i);
      try {
        // Not a temporary folder of the system: that would keep other people from reading it.
        return Files.createDirectory(stage);
      } catch (FileAlreadyExistsException e) {
        if (i == MOST_TRIES) {
          throw e;
        }
      }
    }
  }

  /** Writes a text; {@code name} may have folders in it. Several threads may write. */
  public void write(String name, String text) throws IOException {
    try {
      Files.writeString(place(name), text, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    } catch (FileSystemException e) {
      throw inTarget(e);
    }
  }

  /** Opens a new file. */
  public OutputStream open(String name) throws IOException {
    try {
      return new BufferedOutputStream(
          Files.newOutputStream(place(name), StandardOpenOption.CREATE_NEW));
    } catch (FileSystemException e) {
      throw inTarget(e);
    }
  }

  private Path place(String name) throws IOException {
    Path file = stage.resolve(name);
    // Asked once a folder: on some disks asking takes longer than writing.
    if (!folders.contains(file.getParent())) {
      Files.createDirectories(file.getParent());
      folders.add(file.getParent());
    }
    return file;
  }

  /**
   * Puts everything in its place. What is there already with the same contents stays as it is.
   *
   * @param replace put the new in place of what differs
   * @throws padwright.measure.InputRefused where something else is there and is not to be replaced
   * @throws IOException where it cannot be written; the folder is then as it was
   */
  public Outcome commit(boolean replace) throws IOException {
    try {
      return new Placement(stage, target).run(replace);
    } catch (FileSystemException e) {
      throw inTarget(e);
    }
  }

  /** The same fault with the file's place in the folder asked for, not in the hidden one. */
  private FileSystemException inTarget(FileSystemException e) {
    if (e.getFile() == null || !Path.of(e.getFile()).startsWith(stage)) {
      return e;
    }
    Path place = target.resolve(stage.relativize(Path.of(e.getFile())));
    String why = e.getReason() == null ? "it could not be written" : e.getReason();
    FileSystemException said =
        new FileSystemException(place.toString(), null, why + ". Choose another folder");
    said.initCause(e);
    return said;
  }

  @Override
  public void close() {
    FileTree.deleteQuietly(stage);
    try {
      Runtime.getRuntime().removeShutdownHook(cleaner);
    } catch (IllegalStateException e) {
      // The machine is stopping, and the hook is doing the same already.
      return;
    }
  }
}
