package padwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import padwright.design.Job;
import padwright.design.OutlineShape;
import padwright.design.PaddedPart;
import padwright.design.WrappedPad;
import padwright.jobfile.JobReader;
import padwright.jobfile.JobWriter;
import padwright.material.CatalogueReader;

/**
 * Writes the job that the speed of the commands is measured with: the demo's forearm rest a
 * thousand times, 500 to 799 long, each under an id of its own.
 */
public final class ThousandParts {
  private static final int PARTS = 1000;

  private ThousandParts() {}

  /** Arguments: the file to write. Run from the top of the repository. */
  public static void main(String[] args) throws IOException {
    Job demo = new JobReader(CatalogueReader.builtIn()).read(Path.of("demo", "reading-nook.json"));
    WrappedPad rest = (WrappedPad) demo.parts().get(0);
    List<PaddedPart> parts = new ArrayList<>();
    for (int i = 0; i < PARTS; i++) {
      parts.add(sized(rest, "rest-" + i, 500 + i % 300));
    }
    Job job = new Job("A thousand rests", demo.client(), demo.date(), demo.units(), parts);
    Files.writeString(Path.of(args[0]), JobWriter.write(job));
  }

  private static WrappedPad sized(WrappedPad rest, String id, double length) {
    WrappedPad.Base b = rest.base();
    OutlineShape outline = new OutlineShape.Rectangle(length, 60, List.of(0.0, 0.0, 0.0, 0.0));
    WrappedPad.Base base =
        new WrappedPad.Base(
            outline,
            b.size(),
            b.sides(),
            b.clearance(),
            b.board(),
            b.thickness(),
            b.measured(),
            b.backArris(),
            b.holes());
    return new WrappedPad(
        id,
        rest.name(),
        rest.kind(),
        rest.quantity(),
        rest.mirrored(),
        rest.front(),
        base,
        rest.foam(),
        rest.wadding(),
        rest.edge(),
        rest.cover(),
        rest.corners(),
        rest.staples(),
        rest.host(),
        rest.dustCover());
  }
}
