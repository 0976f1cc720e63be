package padwright.bench;

import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Kind;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;

/** Design to pattern set with proof, one part. Sample mode, so that medians can be read. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class EngineBench {
  private final PatternEngine engine = new PatternEngine(Pads.CATALOGUE);
  private final WrappedPad rest = rest();
  private final WrappedPad stool = stool();

  private static WrappedPad rest() {
    Pads pads = new Pads();
    pads.kind = Kind.FOREARM_REST;
    pads.turnUnder = OptionalDouble.empty();
    return pads.pad();
  }

  private static WrappedPad stool() {
    Pads pads = new Pads();
    pads.kind = Kind.STOOL_TOP;
    pads.outline = new OutlineShape.Circle(320);
    pads.thickness = 18;
    pads.foam = List.of(Pads.layer(50, 0));
    pads.turnUnder = OptionalDouble.empty();
    return pads.pad();
  }

  /** The 600 x 60 forearm rest. */
  @Benchmark
  public PartResult rest600x60() {
    return engine.run(rest);
  }

  /** A round stool top of 320, 50 of foam, pleated. */
  @Benchmark
  public PartResult roundStoolTop() {
    return engine.run(stool);
  }
}
