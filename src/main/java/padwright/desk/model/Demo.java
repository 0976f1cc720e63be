package padwright.desk.model;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import padwright.design.Job;
import padwright.jobfile.JobReader;

/** The demo job that comes with the program, to look at before there is one of the maker's own. */
public final class Demo {
  private static final String RESOURCE = "/padwright/demo/reading-nook.json";

  private Demo() {}

  public static Job job(JobReader reader) {
    try (InputStream in = Demo.class.getResourceAsStream(RESOURCE)) {
      return reader.read(
          "reading-nook.json", new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
