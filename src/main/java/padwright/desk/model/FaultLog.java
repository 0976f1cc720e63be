package padwright.desk.model;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;

/** Faults of the program, each with its trace, in a file that can be sent to whoever mends them. */
public final class FaultLog {
  /** Past this many bytes the log begins anew: it is for the latest faults. */
  private static final long LONGEST = 1_000_000;

  private final Path file;

  public FaultLog(Path folder) {
    file = folder.resolve("desk.log");
  }

  public Path file() {
    return file;
  }

  /** Adds one; where it cannot be written, it is said on standard error. */
  public synchronized void add(Throwable fault) {
    StringWriter trace = new StringWriter();
    fault.printStackTrace(new PrintWriter(trace, true));
    String entry = Instant.now() + "\n" + trace + "\n";
    try {
      Files.createDirectories(file.getParent());
      boolean anew = Files.exists(file) && Files.size(file) > LONGEST;
      Files.writeString(
          file,
          entry,
          StandardCharsets.UTF_8,
          StandardOpenOption.CREATE,
          anew ? StandardOpenOption.TRUNCATE_EXISTING : StandardOpenOption.APPEND);
    } catch (IOException e) {
      System.err.print(entry);
    }
  }
}
