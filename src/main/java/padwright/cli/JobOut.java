package padwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import padwright.jobfile.JobSaver;
import padwright.measure.InputRefused;

/** Writes a job file whole, and never over another one unless that is asked for. */
final class JobOut {
  private JobOut() {}

  /**
   * @param replace whether another job may be written over; it is kept as {@code NAME.previous}
   * @throws InputRefused where there is another job and it may not
   */
  static void save(Path file, String text, boolean replace) throws IOException {
    if (Files.isDirectory(file)) {
      throw new FileAlreadyExistsException(file.toString(), null, "a folder has this name");
    }
    boolean other =
        Files.exists(file) && !Files.readString(file, StandardCharsets.UTF_8).equals(text);
    if (other && !replace) {
      throw new InputRefused(
          file.toString(),
          0,
          "",
          "there is another job in this file",
          "Choose another name, or add --replace; the old one is kept as "
              + file.getFileName()
              + JobSaver.PREVIOUS);
    }
    JobSaver.save(file, text);
  }
}
