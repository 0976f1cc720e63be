package padwright.cli;

import java.nio.file.Path;
import padwright.design.Job;
import padwright.jobfile.JobReader;
import padwright.material.Catalogue;
import padwright.measure.InputRefused;
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
    return new Input(job.toString(), new JobReader(rows).read(job), rows);
  }

  /** A job, the file it was read from and the catalogue its names are from. */
  record Input(String file, Job job, Catalogue catalogue) {
    /** Takes one part after another, so that no more than one is held. */
    @FunctionalInterface
    interface Taker<E extends Exception> {
      void take(PartResult result) throws E;
    }

    /** Works out every part, in the job's order; a refusal names the part it came from. */
    <E extends Exception> void eachPart(Taker<E> taker) throws E {
      PatternEngine engine = new PatternEngine(catalogue);
      for (int i = 0; i < job.parts().size(); i++) {
        PartResult result;
        try {
          result = engine.run(job.parts().get(i));
        } catch (InputRefused r) {
          throw r.file().isEmpty()
              ? new InputRefused(file, 0, place(i, r.path()), r.problem(), r.remedy())
              : r;
        }
        taker.take(result);
      }
    }

    private String place(int part, String within) {
      String id = job.parts().get(part).id();
      return "$.parts[" + part + "] (" + id + ")" + (within.isEmpty() ? "" : ", " + within);
    }
  }
}
