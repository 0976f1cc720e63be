package padwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import padwright.design.Job;
import padwright.design.PaddedPart;
import padwright.design.WrappedPad;
import padwright.jobfile.JobReader;
import padwright.jobfile.JobWriter;
import padwright.measure.InputRefused;
import padwright.output.PartPlace;
import padwright.pattern.FitResult;
import padwright.pattern.FitWish;
import padwright.pattern.HeightFit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Finds foam for a finished height. */
@Command(
    name = "fit",
    description = "Find foam sheets, and the base, for a finished height.",
    sortOptions = false,
    footer = {
      "",
      "Takes the part as the start: its board, covering, wadding, edge and foams. Answers come",
      "nearest first; one with a stop finding is none, and is listed with its reason. The exit",
      "status is 1 where no answer is left. Numbers without a unit are in the job's units.",
      "",
      "Example:",
      "  padwright fit desk.json --height 40",
      "  padwright fit seat.json --height \"2 in\" --length 420 --width 390 --size opening",
      "  padwright fit desk.json --height 40 --answer 2 --save desk-40.json"
    })
final class FitCommand implements Callable<Integer> {
  private final Streams streams;

  @Mixin private JobOptions input = new JobOptions();

  @Mixin private FitOptions wanted = new FitOptions();

  @Option(
      names = "--save",
      paramLabel = "FILE",
      description = "Write the job with this part changed to an answer.")
  private Path file;

  @Option(
      names = "--answer",
      paramLabel = "K",
      description = "Which answer to save; the first if left out.")
  private Integer answer;

  @Option(
      names = "--replace",
      description = "Write over another job file; it is kept as FILE.previous.")
  private boolean replace;

  @Option(names = "--json", description = "Print JSON instead of a table: mm, full precision.")
  private boolean json;

  FitCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() throws Exception {
    if (answer != null && file == null) {
      throw new InputRefused(
          "", 0, "", "--answer names an answer to save", "Add --save with the file to write");
    }
    JobOptions.Input in = input.read();
    int part = wanted.part(in.job());
    FitResult result = found(in, part, wanted.wish(in.job().units()));
    boolean saves = file != null && !result.answers().isEmpty();
    if (saves) {
      save(in, part, result);
    }
    String written = saves ? file.toString() : "";
    streams.deliver(
        json
            ? FitJson.of(result, written, saves ? number() : 0)
            : FitText.of(result, in.job().units(), written, saves ? number() : 0));
    return result.answers().isEmpty() ? ExitStatus.STOPPED : ExitStatus.FINE;
  }

  private int number() {
    return answer == null ? 1 : answer;
  }

  private FitResult found(JobOptions.Input in, int part, FitWish wish) {
    WrappedPad pad = (WrappedPad) in.job().parts().get(part);
    try {
      if (wanted.resizes()) {
        checkSize(in, part, HeightFit.sized(pad, wish));
      }
      return new HeightFit(in.catalogue()).find(pad, wish);
    } catch (InputRefused r) {
      throw r.file().isEmpty() && r.path().startsWith("parts[")
          ? PartPlace.found(r, in.file(), part, pad.id())
          : r;
    }
  }

  /** A new size has to obey every rule that a written one does, such as holes on the base. */
  private static void checkSize(JobOptions.Input in, int part, WrappedPad sized) {
    try {
      String text = JobWriter.write(with(in.job(), part, sized));
      new JobReader(in.catalogue()).read("", text);
    } catch (InputRefused r) {
      throw new InputRefused("", 0, "with this size, " + r.path(), r.problem(), r.remedy());
    }
  }

  private void save(JobOptions.Input in, int part, FitResult result) throws IOException {
    int most = result.answers().size();
    if (number() < 1 || number() > most) {
      throw new InputRefused(
          "",
          0,
          "",
          "--answer: there is no answer " + number(),
          most == 1 ? "There is only answer 1" : "Give 1 to " + most);
    }
    Job changed = with(in.job(), part, result.answers().get(number() - 1).pad());
    String text = JobWriter.write(changed);
    // Read before it is written, so that what is saved can be read again.
    new JobReader(in.catalogue()).read(file.toString(), text);
    JobOut.save(file, text, replace);
  }

  private static Job with(Job job, int part, PaddedPart changed) {
    List<PaddedPart> parts = new ArrayList<>(job.parts());
    parts.set(part, changed);
    return new Job(job.title(), job.client(), job.date(), job.units(), parts);
  }
}
