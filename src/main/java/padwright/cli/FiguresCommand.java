package padwright.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicBoolean;
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
    StringBuilder text = new StringBuilder();
    boolean stopped = json ? asJson(in, text) : asTables(in, text);
    streams.deliver(text);
    return stopped ? ExitStatus.STOPPED : ExitStatus.FINE;
  }

  private static boolean asJson(JobOptions.Input in, StringBuilder text) throws IOException {
    AtomicBoolean stopped = new AtomicBoolean();
    try (FiguresJson out = new FiguresJson(text)) {
      in.eachPart(
          result -> {
            out.part(result);
            stopped.compareAndSet(false, result.stopped());
          });
    }
    return stopped.get();
  }

  private static boolean asTables(JobOptions.Input in, StringBuilder text) {
    AtomicBoolean stopped = new AtomicBoolean();
    FiguresText out = new FiguresText(text, in.job());
    in.eachPart(
        result -> {
          out.part(result);
          stopped.compareAndSet(false, result.stopped());
        });
    return stopped.get();
  }
}
