package padwright.desk.model;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import padwright.design.Job;
import padwright.design.PaddedPart;
import padwright.export.pdf.PartPdf;
import padwright.export.pdf.PrintCorrection;
import padwright.material.Catalogue;
import padwright.material.Paper;
import padwright.output.OutputFolder;
import padwright.output.PartFiles;
import padwright.output.PiecesFile;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;
import padwright.pattern.PatternSet;

/**
 * Writes the patterns of a whole job into a folder: the same files, whole or not at all, as the
 * command {@code draft} writes.
 */
public final class Drafting {
  private final Catalogue catalogue;
  private final Job job;
  private final Paper paper;
  private final PrintCorrection correction;

  public Drafting(Catalogue catalogue, Job job, Paper paper, PrintCorrection correction) {
    this.catalogue = catalogue;
    this.job = job;
    this.paper = paper;
    this.correction = correction;
  }

  /** The printed file of one part. */
  public static void page(
      Job job, PartResult result, Paper paper, PrintCorrection correction, OutputStream out)
      throws IOException {
    PartPdf.write(new PatternSet(job, List.of(result)), result, paper, correction, today(job), out);
  }

  private static LocalDate today(Job job) {
    return job.date().map(LocalDate::parse).orElseGet(() -> LocalDate.now(ZoneId.systemDefault()));
  }

  /**
   * How it went.
   *
   * @param stopped names of parts with a stop finding
   * @param written whether the files are in the folder
   */
  public record Outcome(boolean written, int files, List<String> stopped, List<String> others) {
    public Outcome {
      stopped = List.copyOf(stopped);
      others = List.copyOf(others);
    }
  }

  /**
   * Writes them.
   *
   * @param anyway also parts with a stop finding; else nothing is written where there is one
   * @param replace in the place of other patterns
   * @param progress called with the number of parts done
   * @param cancelled asked after each part; nothing is written then
   * @throws padwright.measure.InputRefused where a part cannot be made at all, or the folder holds
   *     other patterns and they are not to be replaced
   */
  public Outcome into(
      Path folder, boolean anyway, boolean replace, IntConsumer progress, BooleanSupplier cancelled)
      throws IOException {
    PartFiles files = new PartFiles(job, today(job), paper, correction, true);
    PatternEngine engine = new PatternEngine(catalogue);
    List<String> stopped = new ArrayList<>();
    int count = 0;
    int done = 0;
    try (OutputFolder out = OutputFolder.begin(folder)) {
      try (PiecesFile pieces = new PiecesFile(out, job)) {
        for (PaddedPart part : job.parts()) {
          PartResult result = engine.run(part);
          if (result.stopped()) {
            stopped.add(part.name());
          }
          if (anyway || stopped.isEmpty()) {
            count += files.write(out, result);
          }
          pieces.add(result);
          progress.accept(++done);
          if (cancelled.getAsBoolean()) {
            return new Outcome(false, 0, stopped, List.of());
          }
        }
      }
      if (!stopped.isEmpty() && !anyway) {
        return new Outcome(false, 0, stopped, List.of());
      }
      OutputFolder.Outcome outcome = out.commit(replace);
      return new Outcome(true, count + 1, stopped, outcome.others());
    }
  }
}
