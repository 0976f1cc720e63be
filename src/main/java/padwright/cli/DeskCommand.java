package padwright.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import padwright.desk.model.Settings;
import padwright.desk.screen.DeskStart;
import padwright.measure.InputRefused;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Opens the workbench. */
@Command(
    name = "desk",
    description = "Open the workbench: change a part in its section and see what follows.",
    sortOptions = false,
    footer = {
      "",
      "Without a job the demo's parts are there to look at. What the workbench remembers, and a",
      "copy of what is not saved, is kept in a folder of its own; --settings names another.",
      "",
      "Example:",
      "  padwright desk",
      "  padwright desk desk.json"
    })
final class DeskCommand implements Callable<Integer> {
  @Parameters(paramLabel = "JOB", arity = "0..1", description = "The job file, JSON.")
  private Path job;

  @Mixin private CatalogueOption catalogue = new CatalogueOption();

  @Option(
      names = "--settings",
      paramLabel = "DIR",
      description = "The folder for what the workbench remembers.")
  private Path settings;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  private boolean help;

  @Override
  public Integer call() throws InterruptedException {
    Path folder = settings == null ? Settings.usualFolder() : settings;
    try {
      DeskStart.run(catalogue.load(), Optional.ofNullable(job), new Settings(folder));
    } catch (UnsupportedOperationException | NoClassDefFoundError e) {
      throw new InputRefused(
          "",
          0,
          "",
          "desk: there is no screen to open a window on (" + e.getMessage() + ")",
          "Start it where there is one, or use the other commands");
    }
    return ExitStatus.FINE;
  }
}
