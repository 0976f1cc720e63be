package padwright.cli;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import padwright.measure.InputRefused;
import padwright.output.Sentences;
import padwright.output.WriteFailure;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program as started from the command line. */
public final class Main {
  /** In the order they are used at the bench. */
  private static final List<String> COMMANDS =
      List.of("new", "outline", "fit", "check", "figures", "draft", "catalogue", "desk");

  private static final int WIDTH = 100;

  private Main() {}

  /** Runs one command and leaves with its {@link ExitStatus}. */
  public static void main(String[] args) {
    // UTF-8 whatever the machine's language: the text holds inch fractions and makers' names.
    PrintStream out = utf8(FileDescriptor.out);
    PrintStream err = utf8(FileDescriptor.err);
    int status = run(args, new Streams(out, err, System.in, atTerminal()));
    out.flush();
    err.flush();
    System.exit(status);
  }

  /** Whether a person sits there. From Java 22 there is a console even where nobody does. */
  private static boolean atTerminal() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      return true;
    }
  }

  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(stream, true, StandardCharsets.UTF_8);
  }

  private static PrintStream utf8(FileDescriptor descriptor) {
    return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
  }

  /** Runs one command away from a terminal; returns its {@link ExitStatus}. */
  public static int run(String[] args, PrintStream out, PrintStream err, InputStream in) {
    return run(args, new Streams(out, err, in, false));
  }

  static int run(String[] args, Streams streams) {
    try {
      CommandLine line = commandLine(args, streams);
      int status = line.execute(args);
      if (streams.out().checkError()) {
        return cannotWrite("standard output could not be written", streams);
      }
      return status;
    } catch (RuntimeException | Error fault) {
      return Faults.report(fault, streams.err());
    }
  }

  private static Object command(String name, Streams streams) {
    return switch (name) {
      case "new" -> new NewCommand(streams);
      case "outline" -> new OutlineCommand(streams);
      case "fit" -> new FitCommand(streams);
      case "check" -> new CheckCommand(streams);
      case "figures" -> new FiguresCommand(streams);
      case "draft" -> new DraftCommand(streams);
      case "catalogue" -> new CatalogueCommand(streams);
      case "desk" -> new DeskCommand();
      default -> throw new IllegalArgumentException(name);
    };
  }

  private static CommandLine commandLine(String[] args, Streams streams) {
    CommandLine line = new CommandLine(new Padwright());
    String asked = args.length > 0 ? args[0] : "";
    // Only the command that is called is made: each costs some of the starting time.
    List<String> made = COMMANDS.contains(asked) ? List.of(asked) : COMMANDS;
    for (String name : made) {
      line.addSubcommand(name, command(name, streams));
    }
    line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
    line.setUsageHelpWidth(WIDTH);
    line.setOut(writer(streams.out()));
    line.setErr(writer(streams.err()));
    line.setParameterExceptionHandler((e, a) -> usageRefused(e, streams));
    line.setExecutionExceptionHandler((e, c, r) -> failed(e, streams));
    return line;
  }

  private static int usageRefused(ParameterException e, Streams streams) {
    String problem = e.getMessage();
    streams.err().println("Refused: " + (problem.endsWith(".") ? problem : problem + "."));
    UnmatchedArgumentException.printSuggestions(e, writer(streams.err()));
    streams
        .err()
        .println("See \"" + e.getCommandLine().getCommandSpec().qualifiedName() + " --help\".");
    return ExitStatus.REFUSED;
  }

  private static int failed(Exception e, Streams streams) {
    if (e instanceof InputRefused refused) {
      streams.err().println("Refused: " + Sentences.closed(refused.getMessage()));
      return ExitStatus.REFUSED;
    }
    if (e instanceof IOException || e instanceof UncheckedIOException) {
      return cannotWrite(WriteFailure.sentence(e), streams);
    }
    return Faults.report(e, streams.err());
  }

  private static int cannotWrite(String sentence, Streams streams) {
    streams.err().println("Cannot write: " + Sentences.closed(sentence));
    return ExitStatus.CANNOT_WRITE;
  }
}
