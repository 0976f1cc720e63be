package padwright.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import padwright.output.Sentences;

/** Reports a fault of the program: one sentence for the maker, the details in a file. */
final class Faults {
  private Faults() {}

  static int report(Throwable fault, PrintStream err) {
    StringWriter details = new StringWriter();
    PrintWriter writer = new PrintWriter(details);
    writer.println("Padwright " + Version.text());
    writer.println("Java " + System.getProperty("java.version"));
    fault.printStackTrace(writer);
    writer.flush();
    String sentence =
        "A fault in the program, not in your job: "
            + Sentences.closed(String.valueOf(first(fault)))
            + " ";
    try {
      Path file = Files.createTempFile("padwright-fault-", ".txt");
      Files.writeString(file, details.toString());
      err.println(sentence + "The details are in " + file + ".");
    } catch (IOException | SecurityException e) {
      err.println(sentence + "The details follow.");
      err.print(details);
    }
    err.flush();
    return ExitStatus.FAULT;
  }

  private static String first(Throwable fault) {
    if (fault instanceof OutOfMemoryError) {
      return "it ran out of memory";
    }
    String message = fault.getMessage();
    return message == null || message.isBlank()
        ? fault.getClass().getSimpleName()
        : message.lines().findFirst().orElse("");
  }
}
