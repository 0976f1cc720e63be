package padwright.jobfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The job file most tests start from: the example of the design, one field a line. */
final class JobText {
  private JobText() {}

  static String deskRest() {
    try (InputStream in = JobText.class.getResourceAsStream("desk-rest.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The same with one piece of it replaced, which must be there exactly once. */
  static String with(String before, String after) {
    String text = deskRest();
    int at = text.indexOf(before);
    assertThat(at).as(before).isNotNegative();
    assertThat(text.indexOf(before, at + 1)).as(before + " twice").isNegative();
    return text.substring(0, at) + after + text.substring(at + before.length());
  }
}
