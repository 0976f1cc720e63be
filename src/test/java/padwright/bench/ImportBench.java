package padwright.bench;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import padwright.drawing.DrawingReader;
import padwright.drawing.DrawnOutline;

/** How long it takes to read a drawn outline of 1000 vertices from the bytes of a file. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ImportBench {
  private static final int VERTICES = 1000;

  /** Straight sides, cubic curves, or separate lines that must be joined. */
  @Param({"svg-lines", "svg-curves", "dxf-lines"})
  public String drawing;

  private byte[] bytes;

  @Setup
  public void draw() {
    bytes =
        (drawing.startsWith("svg") ? svg(drawing.equals("svg-curves")) : dxf())
            .getBytes(StandardCharsets.US_ASCII);
  }

  /** A wavy round outline, about 500 across. */
  private static double[] vertex(int k) {
    double turn = 2 * Math.PI * k / VERTICES;
    double far = 240 + 6 * Math.sin(23 * turn);
    return new double[] {300 + far * Math.cos(turn), 300 + far * Math.sin(turn)};
  }

  private static String svg(boolean curves) {
    StringBuilder d = new StringBuilder();
    for (int k = 0; k < VERTICES; k++) {
      double[] a = vertex(k);
      double[] b = vertex(k + 1);
      if (k == 0) {
        d.append(String.format(Locale.ROOT, "M%.3f %.3f", a[0], a[1]));
      }
      double x = (a[0] + b[0]) / 2;
      double y = (a[1] + b[1]) / 2;
      d.append(
          curves
              ? String.format(Locale.ROOT, "C%.3f %.3f %.3f %.3f %.3f %.3f", x, y, x, y, b[0], b[1])
              : String.format(Locale.ROOT, "L%.3f %.3f", b[0], b[1]));
    }
    return "<svg xmlns='http://www.w3.org/2000/svg' width='600mm' viewBox='0 0 600 600'><path d='"
        + d
        + "Z'/></svg>";
  }

  private static String dxf() {
    StringBuilder text = new StringBuilder("0\nSECTION\n2\nENTITIES\n");
    for (int k = 0; k < VERTICES; k++) {
      double[] a = vertex(k);
      double[] b = vertex(k + 1);
      text.append(
          String.format(
              Locale.ROOT,
              "0\nLINE\n8\n0\n10\n%.6f\n20\n%.6f\n11\n%.6f\n21\n%.6f\n",
              a[0],
              a[1],
              b[0],
              b[1]));
    }
    return text.append("0\nENDSEC\n0\nEOF\n").toString();
  }

  @Benchmark
  public DrawnOutline read() {
    return DrawingReader.read(drawing, bytes, Optional.empty());
  }
}
