package padwright.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import padwright.design.Job;
import padwright.export.CornerDiagram;
import padwright.export.Drawing;
import padwright.export.PartHeader;
import padwright.export.PartSections;
import padwright.export.PieceDrawing;
import padwright.export.SvgWriter;
import padwright.export.WrapMap;
import padwright.jobfile.JobReader;
import padwright.material.Catalogue;
import padwright.material.CatalogueReader;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;
import padwright.pattern.PatternPiece;

/** How long one part's SVG files take once it is worked out: all of {@code draft --svg-only}. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class DrawBench {
  /** Parts of the demo job: the 600 x 60 rest and the round stool top. */
  @Param({"desk-rest", "stool-top"})
  public String part;

  private PartResult result;
  private PartHeader header;
  private List<Drawing> drawings;

  @Setup
  public void workOut() {
    Catalogue catalogue = CatalogueReader.builtIn();
    Job job = new JobReader(catalogue).read(Path.of("demo", "reading-nook.json"));
    result =
        new PatternEngine(catalogue)
            .run(job.parts().stream().filter(p -> p.id().equals(part)).findFirst().orElseThrow());
    header =
        new PartHeader(
            job.title(),
            result.asked().name(),
            part,
            result.asked().quantity(),
            result.asked().mirrored(),
            "2026-03-14",
            job.units());
    drawings = compose();
  }

  /** Places every line and label of every piece, the section and the corners, not the map. */
  @Benchmark
  public List<Drawing> compose() {
    List<Drawing> list = new ArrayList<>();
    for (PatternPiece piece : result.pieces()) {
      list.add(PieceDrawing.of(header, piece));
      PieceDrawing.mirroredHand(header, piece).ifPresent(list::add);
    }
    list.add(PartSections.usual(header, result));
    CornerDiagram.all(header, result).forEach(d -> list.add(d.drawing()));
    return list;
  }

  /** Lays the cover back and draws where it lies. */
  @Benchmark
  public Drawing wrapMap() {
    return WrapMap.of(header, result);
  }

  /** Turns them into the text of the files. */
  @Benchmark
  public int write() {
    int letters = 0;
    for (Drawing d : drawings) {
      letters += SvgWriter.write(d).length();
    }
    return letters;
  }

  public static void main(String[] args) throws RunnerException {
    new Runner(new OptionsBuilder().include(DrawBench.class.getSimpleName()).build()).run();
  }
}
