package padwright.cli;

import java.nio.file.Path;
import padwright.material.Catalogue;
import padwright.material.CatalogueReader;
import picocli.CommandLine.Option;

/** The option that lays a maker's own catalogue over the one that comes with the program. */
final class CatalogueOption {
  @Option(
      names = "--catalogue",
      paramLabel = "FILE",
      description = "Your own catalogue rows, laid over those that come with the program.")
  private Path file;

  Catalogue load() {
    Catalogue builtIn = CatalogueReader.builtIn();
    return file == null ? builtIn : CatalogueReader.overlay(builtIn, file);
  }
}
