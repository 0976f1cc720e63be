package padwright.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import padwright.design.Finding;
import padwright.design.Job;
import padwright.output.FiguresText;
import padwright.output.JobLengths;
import padwright.output.Plural;
import padwright.output.Sentences;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints only the findings. */
@Command(
    name = "check",
    description = "Say what would go wrong, why, and what to do about it.",
    sortOptions = false,
    footer = {
      "",
      "A stop means: do not build this; the exit status is then 1.",
      "",
      "Example:",
      "  padwright check desk.json"
    })
final class CheckCommand implements Callable<Integer> {
  private final Streams streams;

  @Mixin private JobOptions input = new JobOptions();

  @Option(names = "--json", description = "Print JSON instead of sentences.")
  private boolean json;

  CheckCommand(Streams streams) {
    this.streams = streams;
  }

  /** What is kept of a part. */
  private record Checked(String id, String name, List<Finding> findings) {}

  @Override
  public Integer call() throws Exception {
    JobOptions.Input in = input.read();
    List<Checked> parts = new ArrayList<>();
    in.eachPart(r -> new Checked(r.asked().id(), r.asked().name(), r.findings()), parts::add);
    boolean stopped =
        parts.stream()
            .flatMap(p -> p.findings().stream())
            .anyMatch(f -> f.level() == Finding.Level.STOP);
    streams.deliver(json ? asJson(parts) : asText(in.job(), parts));
    return stopped ? ExitStatus.STOPPED : ExitStatus.FINE;
  }

  private static CharSequence asJson(List<Checked> parts) throws IOException {
    StringBuilder text = new StringBuilder();
    try (JsonOut out = new JsonOut(text)) {
      out.object(null).array("parts");
      for (Checked p : parts) {
        out.object(null).text("id", p.id()).text("name", p.name());
        FiguresJson.findings(out, p.findings());
        out.end();
      }
      out.end().end();
    }
    return text;
  }

  private static CharSequence asText(Job job, List<Checked> parts) {
    JobLengths lengths = new JobLengths(job.units());
    StringBuilder text = new StringBuilder(FiguresText.title(job)).append('\n');
    text.append(lengths.inches() ? "Plain lengths in the sentences are mm.\n\n" : "\n");
    Map<Finding.Level, Integer> count = new EnumMap<>(Finding.Level.class);
    for (Checked p : parts) {
      text.append(p.name()).append(" (").append(p.id()).append(")\n");
      text.append(FiguresText.findings(p.findings(), lengths));
      text.append('\n');
      p.findings().forEach(f -> count.merge(f.level(), 1, Integer::sum));
    }
    List<String> counts = new ArrayList<>();
    for (Finding.Level level : Finding.Level.values()) {
      counts.add(Plural.of(count.getOrDefault(level, 0), Sentences.level(level)));
    }
    text.append(String.join(", ", counts)).append(" in ").append(Plural.of(parts.size(), "part"));
    text.append(
        count.containsKey(Finding.Level.STOP) ? ". Do not build what has a stop.\n" : ".\n");
    return text;
  }
}
