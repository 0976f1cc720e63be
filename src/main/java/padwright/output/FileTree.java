package padwright.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Files in a folder and everything below it. */
final class FileTree {
  private FileTree() {}

  /** Every file that is not hidden or in a hidden folder, as paths from {@code root}, sorted. */
  static List<Path> visibleFiles(Path root) throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      return all.filter(p -> !Files.isDirectory(p))
          .map(root::relativize)
          .filter(p -> !hidden(p))
          .sorted()
          .toList();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private static boolean hidden(Path relative) {
    for (Path name : relative) {
      if (name.toString().startsWith(".")) {
        return true;
      }
    }
    return false;
  }

  /** Deletes a folder with all that is in it; what cannot be deleted stays. */
  static void deleteQuietly(Path root) {
    try (Stream<Path> all = Files.walk(root)) {
      for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(p);
      }
    } catch (IOException | UncheckedIOException e) {
      // Either it is gone, which is what was wanted, or nothing more can be done about it.
      return;
    }
  }
}
