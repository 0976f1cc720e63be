package padwright.desk.edit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import padwright.design.Job;
import padwright.design.PaddedPart;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.jobfile.JobReader;
import padwright.measure.InputRefused;

/** Changes of a job as a whole: its parts, their order, its heading. Each gives a new job. */
public final class JobEdit {
  /** Letters of an id that a job file takes. */
  private static final int LONGEST_ID = 60;

  private JobEdit() {}

  private static Job with(Job job, List<PaddedPart> parts) {
    return new Job(job.title(), job.client(), job.date(), job.units(), parts);
  }

  /** With one part replaced. */
  public static Job replaced(Job job, int at, WrappedPad part) {
    List<PaddedPart> parts = new ArrayList<>(job.parts());
    parts.set(at, part);
    return with(job, parts);
  }

  /** With a part put in before another; it is given an id that no other part has. */
  public static Job inserted(Job job, int at, WrappedPad part, JobReader reader) {
    List<PaddedPart> parts = new ArrayList<>(job.parts());
    parts.add(at, renamed(job, part, reader));
    return with(job, parts);
  }

  private static WrappedPad renamed(Job job, WrappedPad part, JobReader reader) {
    Set<String> taken = new HashSet<>();
    job.parts().forEach(p -> taken.add(p.id().toLowerCase(Locale.ROOT)));
    String stem = part.id().replaceFirst("-\\d+$", "");
    String id = part.id();
    for (int n = 2; taken.contains(id.toLowerCase(Locale.ROOT)); n++) {
      String number = "-" + n;
      id = stem.substring(0, Math.min(stem.length(), LONGEST_ID - number.length())) + number;
    }
    return id.equals(part.id())
        ? part
        : new PartEdit(reader, Units.MM).with(part, PartEdit.Step.put("id", id));
  }

  /** A second one of a part, after it. */
  public static Job duplicated(Job job, int at, JobReader reader) {
    return inserted(job, at + 1, (WrappedPad) job.parts().get(at), reader);
  }

  /**
   * Without a part.
   *
   * @throws InputRefused where it is the only one
   */
  public static Job removed(Job job, int at) {
    if (job.parts().size() == 1) {
      throw new InputRefused(
          "",
          0,
          "",
          "\"" + job.parts().get(0).name() + "\" is the last part of the job",
          "Add another part first, or start a new job");
    }
    List<PaddedPart> parts = new ArrayList<>(job.parts());
    parts.remove(at);
    return with(job, parts);
  }

  /** With a part moved to another place in the order. */
  public static Job moved(Job job, int from, int to) {
    List<PaddedPart> parts = new ArrayList<>(job.parts());
    parts.add(to, parts.remove(from));
    return with(job, parts);
  }

  /** The heading of a job. */
  public static Job headed(Job job, String title, String client, String date, Units units) {
    return new Job(title, given(client), given(date), units, job.parts());
  }

  private static Optional<String> given(String text) {
    return text.isBlank() ? Optional.empty() : Optional.of(text.strip());
  }
}
