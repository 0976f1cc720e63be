package padwright.cli;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicBoolean;
import padwright.design.Finding;
import padwright.design.Job;
import padwright.design.PaddedPart;
import padwright.export.pdf.PrintCorrection;
import padwright.material.Catalogue;
import padwright.material.Paper;
import padwright.measure.InputRefused;
import padwright.measure.LengthUnit;
import padwright.output.FiguresText;
import padwright.output.JobLengths;
import padwright.output.OutputFolder;
import padwright.output.PartFiles;
import padwright.output.PiecesFile;
import padwright.output.Plural;
import padwright.output.Sentences;
import padwright.output.Table;
import padwright.pattern.PartResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes full-size patterns and the job sheet. */
@Command(
    name = "draft",
    description = "Write full-size patterns and the job sheet of every part into a folder.",
    sortOptions = false,
    footer = {
      "",
      "Print the PDF at actual size and measure both check lines. Where they are not 100 mm,",
      "draft again with what they measured. Where a part of the job has a stop, nothing is",
      "written, unless you draw it --anyway.",
      "",
      "Example:",
      "  padwright draft desk.json --out desk-patterns",
      "  padwright draft desk.json --out desk-patterns --paper letter --measured-x 99.5mm --replace"
    })
final class DraftCommand implements Callable<Integer> {
  private final Streams streams;

  @Mixin private JobOptions input = new JobOptions();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      required = true,
      description = "The folder to write; made if it is not there.")
  private Path folder;

  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      description = "A paper of the catalogue, such as a4, letter, a0. a4 if left out.")
  private String paper = "a4";

  @Option(names = "--svg-only", description = "SVG files only: no PDF, no pieces.json.")
  private boolean svgOnly;

  @Option(
      names = "--measured-x",
      paramLabel = "L",
      description = "What the check line across the paper measured in an earlier print.")
  private String measuredX;

  @Option(
      names = "--measured-y",
      paramLabel = "L",
      description = "What the check line along the paper measured.")
  private String measuredY;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "The date to print, like 2026-03-07; the job's or today's if left out.")
  private String date;

  @Option(names = "--anyway", description = "Draw parts that must not be built, too.")
  private boolean anyway;

  @Option(names = "--replace", description = "Put the new files in place of what is there.")
  private boolean replace;

  @Option(names = "--progress", description = "Say how far it has come, also into a file.")
  private boolean progress;

  DraftCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() throws Exception {
    JobOptions.Input in = input.read();
    Paper sheet = paper(in.catalogue());
    PrintCorrection correction =
        new PrintCorrection(
            measured("--measured-x", measuredX), measured("--measured-y", measuredY));
    Job job = in.job();
    PartFiles files = new PartFiles(job, day(job), sheet, correction, !svgOnly);
    List<Drawn> drawn = new ArrayList<>();
    try (OutputFolder out = OutputFolder.begin(folder)) {
      boolean stopped = draw(in, files, out, drawn);
      if (stopped && !anyway) {
        sayStopped(drawn, new JobLengths(job.units()));
        return ExitStatus.STOPPED;
      }
      OutputFolder.Outcome outcome = out.commit(replace);
      streams.deliver(summary(drawn, outcome));
      return stopped ? ExitStatus.STOPPED : ExitStatus.FINE;
    }
  }

  /** A part whose files are written, on its way to the job's own file. */
  private record Worked(PartResult result, int files) {}

  /** What is kept of a part once its files are written. */
  private record Drawn(String id, String name, int files, List<Finding> findings) {
    static Drawn of(Worked worked) {
      PaddedPart part = worked.result().asked();
      return new Drawn(part.id(), part.name(), worked.files(), worked.result().findings());
    }

    long count(Finding.Level level) {
      return findings.stream().filter(f -> f.level() == level).count();
    }
  }

  /** Part by part, so that a job of a thousand parts fits into a small machine. */
  private boolean draw(JobOptions.Input in, PartFiles files, OutputFolder out, List<Drawn> drawn)
      throws Exception {
    Progress said = new Progress(streams, in.job().parts().size(), progress);
    AtomicBoolean stopped = new AtomicBoolean();
    try (PiecesFile pieces = svgOnly ? null : new PiecesFile(out, in.job())) {
      in.eachPart(
          result -> {
            if (result.stopped()) {
              stopped.set(true);
            }
            // After a stop the rest is only checked, so that the maker hears of all at once.
            boolean wanted = anyway || !stopped.get();
            return new Worked(result, wanted ? files.write(out, result) : 0);
          },
          worked -> {
            if (pieces != null) {
              pieces.add(worked.result());
            }
            drawn.add(Drawn.of(worked));
            said.done(drawn.size());
          });
    }
    said.end();
    return stopped.get();
  }

  private void sayStopped(List<Drawn> drawn, JobLengths lengths) {
    StringBuilder text = new StringBuilder();
    int parts = 0;
    for (Drawn d : drawn) {
      List<Finding> stops =
          d.findings().stream().filter(f -> f.level() == Finding.Level.STOP).toList();
      if (!stops.isEmpty()) {
        parts++;
        text.append(d.name()).append(" (").append(d.id()).append(")\n");
        text.append(FiguresText.findings(stops, lengths));
      }
    }
    text.append("Nothing was written: ").append(Plural.of(parts, "part"));
    text.append(" must not be built like this. Change the job, or add --anyway.\n");
    streams.err().print(text);
    streams.err().flush();
  }

  private CharSequence summary(List<Drawn> drawn, OutputFolder.Outcome outcome) {
    Table t = new Table("  ", "llrl");
    for (Drawn d : drawn) {
      t.row(d.id(), d.name(), Plural.of(d.files(), "file"), counts(d));
    }
    StringBuilder s = new StringBuilder("Patterns in ").append(folder).append('\n').append(t);
    if (outcome.unchanged() > 0) {
      s.append(Plural.of(outcome.unchanged(), "file")).append(" there already, unchanged.\n");
    }
    if (!outcome.others().isEmpty()) {
      s.append("Left alone, not of this job: ").append(String.join(", ", outcome.others()));
      s.append(".\n");
    }
    if (!svgOnly) {
      s.append("Print the PDF at actual size, then measure both 100 mm lines before you cut.\n");
    }
    return s;
  }

  private static String counts(Drawn d) {
    List<String> said = new ArrayList<>();
    for (Finding.Level level : Finding.Level.values()) {
      long n = d.count(level);
      if (n > 0) {
        said.add(Plural.of((int) n, Sentences.level(level)));
      }
    }
    return String.join(", ", said);
  }

  private Paper paper(Catalogue catalogue) {
    return catalogue
        .paper(paper)
        .orElseThrow(
            () ->
                new InputRefused(
                    "",
                    0,
                    "",
                    "--paper: there is no paper \"" + paper + "\"",
                    "The nearest are "
                        + String.join(", ", catalogue.nearest(Catalogue.Kind.PAPER, paper))));
  }

  private static double measured(String option, String text) {
    OptionalDouble given = StartOptions.length(option, text, LengthUnit.MM);
    return given.orElse(PrintCorrection.CHECK_LENGTH);
  }

  /** The date on the patterns: what was asked for, what the job says, today. */
  private LocalDate day(Job job) {
    if (date != null) {
      try {
        return LocalDate.parse(date);
      } catch (DateTimeException e) {
        throw new InputRefused(
            "", 0, "", "--date: \"" + date + "\" is not a date", "Write it like 2026-03-07");
      }
    }
    return job.date().map(LocalDate::parse).orElseGet(() -> LocalDate.now(ZoneId.systemDefault()));
  }
}
