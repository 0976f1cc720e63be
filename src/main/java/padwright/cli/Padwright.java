package padwright.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program without a command: help and version. */
@Command(
    name = "padwright",
    versionProvider = Version.class,
    description = "Works out padded parts on a board: true sizes, checks and patterns to cut from.",
    synopsisSubcommandLabel = "COMMAND",
    commandListHeading = "%nCommands:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Example:",
      "  padwright new forearm-rest --out desk.json",
      "  padwright check desk.json",
      "  padwright draft desk.json --out desk-patterns",
      "",
      "Exit status: 0 fine, 1 a stop finding, 2 input or usage refused, 3 cannot write,",
      "4 a fault in the program."
    })
final class Padwright implements Runnable {
  @Spec private CommandSpec spec;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help; COMMAND --help shows a command's.")
  private boolean help;

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      description = "Show the version.")
  private boolean version;

  @Override
  public void run() {
    throw new ParameterException(
        new CommandLine(spec),
        "name a command: new, outline, fit, check, figures, draft, catalogue or desk");
  }
}
