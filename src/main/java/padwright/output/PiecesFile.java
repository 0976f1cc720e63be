package padwright.output;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import padwright.design.Job;
import padwright.export.PiecesJson;
import padwright.pattern.PartResult;

/** The file of a job that has every piece as numbers, written part by part. */
public final class PiecesFile implements Closeable {
  private final Writer out;
  private final PiecesJson json;

  public PiecesFile(OutputFolder folder, Job job) throws IOException {
    out = new OutputStreamWriter(folder.open("pieces.json"), StandardCharsets.UTF_8);
    json = new PiecesJson(job, out);
  }

  public void add(PartResult part) throws IOException {
    json.add(part);
  }

  @Override
  public void close() throws IOException {
    try (out) {
      json.close();
    }
  }
}
