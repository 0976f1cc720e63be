package padwright.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import padwright.material.Catalogue;
import padwright.measure.InputRefused;
import padwright.measure.Nearest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints the catalogue's rows. */
@Command(
    name = "catalogue",
    description = "Print boards, foams, waddings, coverings, staples, screws and papers.",
    sortOptions = false,
    footer = {
      "",
      "The first column is the name that a job file uses. The JSON can be given back with",
      "--catalogue: change what your caliper says and delete the rest.",
      "",
      "Example:",
      "  padwright catalogue staples",
      "  padwright catalogue coverings --json > mine.json"
    })
final class CatalogueCommand implements Callable<Integer> {
  private static final int NEAREST = 2;

  private final Streams streams;

  @Parameters(
      paramLabel = "SECTION",
      arity = "0..1",
      description =
          "boards, foams, waddings, coverings, staples, screws or papers; all if left out.")
  private String section;

  @Mixin private CatalogueOption catalogue = new CatalogueOption();

  @Option(names = "--json", description = "Print JSON in the form of a catalogue file.")
  private boolean json;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  private boolean help;

  CatalogueCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() throws IOException {
    List<Catalogue.Kind> kinds = kinds();
    Catalogue rows = catalogue.load();
    streams.deliver(json ? CatalogueJson.of(rows, kinds) : CatalogueText.of(rows, kinds));
    return ExitStatus.FINE;
  }

  private List<Catalogue.Kind> kinds() {
    if (section == null) {
      return List.of(Catalogue.Kind.values());
    }
    List<String> names = new ArrayList<>();
    for (Catalogue.Kind kind : Catalogue.Kind.values()) {
      if (kind.section().equals(section)) {
        return List.of(kind);
      }
      names.add(kind.section());
    }
    throw new InputRefused(
        "",
        0,
        "",
        "the catalogue has no section \"" + section + "\"",
        "The nearest are "
            + String.join(", ", Nearest.names(section, names, NEAREST))
            + "; all are "
            + Arrays.toString(names.toArray()).replaceAll("[\\[\\]]", ""));
  }
}
