package padwright.jobfile;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;

/**
 * Saves a text so that the file is at every moment either the old one or the new one, whole, even
 * when the machine stops: the text is written beside it, forced to the disk and then put in its
 * place in one step. What was there before is kept beside it as {@code NAME.previous}.
 */
public final class JobSaver {
  /** What is added to the name of the version before. */
  public static final String PREVIOUS = ".previous";

  private static final int MOST_TRIES = 100;

  private JobSaver() {}

  /**
   * Saves {@code text} as UTF-8. Saving what the file holds already changes nothing, so that the
   * version before stays a different one.
   *
   * @throws IOException when it cannot be written; the file is then as it was
   */
  public static void save(Path file, String text) throws IOException {
    // Through a link to the file behind it, or the link itself would be replaced.
    Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
    if (Files.isDirectory(target)) {
      throw new FileAlreadyExistsException(file.toString(), null, "a folder has this name");
    }
    Path folder = target.getParent();
    if (!Files.isDirectory(folder)) {
      throw new NoSuchFileException(folder.toString(), null, "there is no such folder");
    }
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (Files.exists(target)) {
      byte[] before = Files.readAllBytes(target);
      if (Arrays.equals(before, bytes)) {
        return;
      }
      replace(target.resolveSibling(target.getFileName() + PREVIOUS), before);
    }
    replace(target, bytes);
  }

  private static void replace(Path target, byte[] bytes) throws IOException {
    Path part = writeBeside(target, bytes);
    try {
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(part);
    }
    forceFolder(target.getParent());
  }

  private static Path writeBeside(Path target, byte[] bytes) throws IOException {
    for (int i = 0; ; i++) {
      Path part = target.resolveSibling(target.getFileName() + "." + i + ".part");
      try (FileChannel channel =
          FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
        write(channel, bytes, part);
        return part;
      } catch (FileAlreadyExistsException e) {
        // Left by a run that was cut off, or another one is saving now: take the next name.
        if (i == MOST_TRIES) {
          throw e;
        }
      }
    }
  }

  private static void write(FileChannel channel, byte[] bytes, Path part) throws IOException {
    try {
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
      channel.force(true);
    } catch (IOException e) {
      Files.deleteIfExists(part);
      throw e;
    }
  }

  /**
   * Makes the new name itself last; some systems do not let a folder be opened, and need it not.
   */
  private static void forceFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      return;
    }
  }
}
