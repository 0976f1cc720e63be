package padwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import padwright.design.Assumption;
import padwright.design.Job;
import padwright.design.Units;
import padwright.drawing.DrawnOutline;
import padwright.jobfile.JobWriter;
import padwright.jobfile.ReadyPart;
import padwright.jobfile.StartNumbers;
import padwright.jobfile.StartOutline;
import padwright.jobfile.Starter;
import padwright.output.FiguresText;
import padwright.output.JobLengths;
import padwright.output.Sentences;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Starts a job file from a ready-made part. */
@Command(
    name = "new",
    description = "Start a job from a ready-made part; without a name, list them.",
    sortOptions = false,
    footer = {
      "",
      "On a terminal it asks for the numbers you do not give; Enter takes the one in brackets.",
      "Every value that was taken from the ready-made part is printed.",
      "",
      "Example:",
      "  padwright new forearm-rest --out desk.json",
      "  padwright new round-stool-top --length 320 --board \"3/4 in\" --out stool.json",
      "  padwright new wall-panel --outline panel.svg --out panel.json"
    })
final class NewCommand implements Callable<Integer> {
  private final Streams streams;

  @Parameters(paramLabel = "PATTERN", arity = "0..1", description = "Such as forearm-rest.")
  private String pattern;

  @Mixin private StartOptions numbers = new StartOptions();

  @Option(
      names = "--outline",
      paramLabel = "DRAWING",
      description = "An SVG or DXF file: its outline is the board, loops inside it are cut-outs.")
  private Path outline;

  @Mixin private DrawingOptions drawing = new DrawingOptions();

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "The job file to write; printed if left out.")
  private Path file;

  @Option(
      names = "--replace",
      description = "Write over another job file; it is kept as FILE.previous.")
  private boolean replace;

  @Mixin private CatalogueOption catalogue = new CatalogueOption();

  @Option(names = "--json", description = "Print JSON: the job and what was taken.")
  private boolean json;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  private boolean help;

  NewCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() throws IOException {
    Starter starter = new Starter(catalogue.load());
    if (pattern == null) {
      streams.deliver(json ? listJson(starter.parts()) : list(starter.parts()));
      return ExitStatus.FINE;
    }
    ReadyPart ready = starter.part(pattern);
    StartNumbers given = numbers.read();
    Units units = numbers.units();
    Optional<DrawnOutline> drawn = Optional.ofNullable(outline).map(drawing::read);
    if (numbers.asks(streams.terminal())) {
      given = new StartQuestions(streams, starter, ready, units, drawn.isPresent()).ask(given);
    }
    Optional<StartOutline> start = drawn.map(drawing::start);
    Job job = starter.start(pattern, given, units, start);
    List<Assumption> taken = starter.taken(pattern, given, units, start);
    String text = JobWriter.write(job);
    if (file != null) {
      JobOut.save(file, text, replace);
    }
    drawn.ifPresent(d -> streams.err().print(OutlineWords.report(outline, d)));
    deliver(job, text, taken);
    return ExitStatus.FINE;
  }

  private void deliver(Job job, String text, List<Assumption> taken) throws IOException {
    if (json) {
      streams.deliver(resultJson(text, taken));
      return;
    }
    StringBuilder said = new StringBuilder();
    String name = job.parts().get(0).name();
    said.append(name).append(file == null ? "" : ", written to " + file).append('\n');
    said.append("\n  Taken because it was not given\n")
        .append(FiguresText.table(taken, new JobLengths(job.units())));
    if (file == null) {
      // The job alone on standard output, so that it can be sent into a file.
      streams.err().print(said);
      streams.deliver(text);
    } else {
      said.append("\nNext: padwright check ").append(file).append('\n');
      streams.deliver(said);
    }
  }

  private CharSequence resultJson(String job, List<Assumption> taken) throws IOException {
    StringBuilder text = new StringBuilder();
    try (JsonOut out = new JsonOut(text)) {
      out.object(null).text("pattern", pattern);
      if (file == null) {
        out.nothing("file");
      } else {
        out.text("file", file.toString());
      }
      out.document("job", job);
      out.array("taken");
      for (Assumption a : taken) {
        FiguresJson.assumption(out, a);
      }
      out.end().end();
    }
    return text;
  }

  private static CharSequence list(List<ReadyPart> parts) {
    StringBuilder text = new StringBuilder("Ready-made parts to start from\n");
    int width = parts.stream().mapToInt(p -> p.id().length()).max().orElse(0) + 2;
    for (ReadyPart p : parts) {
      text.append(Sentences.block("  ", p.id(), width, p.about()));
    }
    return text.append("\nStart with: padwright new ").append(parts.get(0).id()).append('\n');
  }

  private static CharSequence listJson(List<ReadyPart> parts) throws IOException {
    StringBuilder text = new StringBuilder();
    try (JsonOut out = new JsonOut(text)) {
      out.object(null).array("patterns");
      for (ReadyPart p : parts) {
        out.object(null).text("id", p.id()).text("name", p.name()).text("about", p.about());
        for (String size : List.of("length", "width")) {
          Optional<String> about = size.equals("length") ? p.length() : p.width();
          if (about.isPresent()) {
            out.text(size, about.get());
          } else {
            out.nothing(size);
          }
        }
        out.end();
      }
      out.end().end();
    }
    return text;
  }
}
