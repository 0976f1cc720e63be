package padwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import padwright.design.Job;
import padwright.jobfile.JobReader;
import padwright.material.Catalogue;
import padwright.measure.InputRefused;
import padwright.output.InOrder;
import padwright.output.PartPlace;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every command that works on a job takes. */
final class JobOptions {
  @Parameters(paramLabel = "JOB", description = "The job file, JSON.")
  private Path job;

  @Mixin private CatalogueOption catalogue = new CatalogueOption();

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  private boolean help;

  Input read() {
    Catalogue rows = catalogue.load();
    return new Input(job, new JobReader(rows).read(job), rows);
  }

  /** A job, the file it was read from and the catalogue its names are from. */
  record Input(Path file, Job job, Catalogue catalogue) {
    /**
     * Works out every part, and {@code work} on it, several side by side; hands the results over in
     * the job's order. A refusal names the place in the file that the part stands at.
     */
    <T> void eachPart(InOrder.Work<PartResult, T> work, InOrder.Taker<T> taker) throws Exception {
      PatternEngine engine = new PatternEngine(catalogue);
      List<Integer> numbers = IntStream.range(0, job.parts().size()).boxed().toList();
      InOrder.each(numbers, i -> work.on(run(engine, i)), taker);
    }

    private PartResult run(PatternEngine engine, int part) {
      try {
        return engine.run(job.parts().get(part));
      } catch (InputRefused r) {
        throw r.file().isEmpty() ? PartPlace.found(r, file, part, job.parts().get(part).id()) : r;
      }
    }
  }
}
