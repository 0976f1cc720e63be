package padwright.export.pdf;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/** Outside readers that may or may not be installed. */
final class Tools {
  private Tools() {}

  /** Where the tool is; the test is left out, with a message, where it is not. */
  static String need(String name) {
    Optional<Path> found =
        Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
            .map(dir -> Path.of(dir, name))
            .filter(Files::isExecutable)
            .findFirst();
    assumeTrue(found.isPresent(), name + " is not installed: its check is left out");
    return found.get().toString();
  }
}
