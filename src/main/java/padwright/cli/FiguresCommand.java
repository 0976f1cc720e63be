package padwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicBoolean;
import padwright.output.FiguresText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints the sizes, staples and findings of every part. */
@Command(
    name = "figures",
    description = "Print true sizes, staples, corners, findings and the defaults taken.",
    sortOptions = false,
    footer = {
      "",
      "The figures are printed even where a part must not be built; the exit status is then 1.",
      "",
      "Example:",
      "  padwright figures desk.json",
      "  padwright figures desk.json --json > desk-figures.json"
    })
final class FiguresCommand implements Callable<Integer> {
  private final Streams streams;

  @Mixin private JobOptions input = new JobOptions();

  @Option(names = "--json", description = "Print JSON instead of tables: mm, full precision.")
  private boolean json;

  FiguresCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() throws Exception {
    JobOptions.Input in = input.read();
    List<CharSequence> parts = new ArrayList<>();
    AtomicBoolean stopped = new AtomicBoolean();
    // Each part's own text, so that a job of a thousand does not keep a thousand pattern sets.
    in.eachPart(
        result -> {
          if (result.stopped()) {
            stopped.set(true);
          }
          return json ? FiguresJson.of(result) : FiguresText.of(result, in.job().units());
        },
        parts::add);
    streams.deliver(
        json
            ? FiguresJson.document(parts)
            : FiguresText.title(in.job()) + "\n" + String.join("", parts));
    return stopped.get() ? ExitStatus.STOPPED : ExitStatus.FINE;
  }
}
