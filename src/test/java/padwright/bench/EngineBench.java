package padwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import padwright.design.EdgeShape;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Kind;
import padwright.design.WrappedPad.Run;
import padwright.geometry.Vec2;
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
  private final WrappedPad hundred = hundred();
  private final WrappedPad domed = domed();
  private final WrappedPad passage = passage();

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

  private static WrappedPad passage() {
    Run front =
        new Run(
            List.of("front"),
            Optional.of(new EdgeShape.Round(12)),
            OptionalDouble.empty(),
            OptionalDouble.of(8),
            Optional.empty(),
            OptionalDouble.of(80));
    Pads pads = Pads.seat(front);
    pads.outline = new OutlineShape.Rectangle(400, 300, List.of(30.0, 30.0, 30.0, 30.0));
    return pads.pad();
  }

  private static WrappedPad domed() {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(420, 360);
    pads.foam =
        List.of(
            Pads.layer(20, 0),
            new WrappedPad.FoamLayer("firm", 25, OptionalDouble.of(-70), true),
            Pads.layer(20, 0));
    return pads.pad();
  }

  /**
   * A scalloped seat: 25 times a line, an outward arc, a line and a hollow arc, each running
   * smoothly into the next. Each of the 25 turns by a 25th of a full turn, so that it closes.
   */
  private static WrappedPad hundred() {
    Pads pads = new Pads();
    pads.covering = "knit-fabric";
    List<OutlineShape.Point> points = new ArrayList<>();
    Vec2 at = Vec2.ZERO;
    double facing = 0;
    double hollow = Math.toRadians(10);
    double outward = hollow + 2 * Math.PI / 25;
    for (int k = 0; k < 25; k++) {
      for (double[] arc : new double[][] {{200, outward}, {250, -hollow}}) {
        points.add(new OutlineShape.Point(at, new OutlineShape.Leg.Straight()));
        at = at.along(Vec2.polar(facing), 20);
        points.add(new OutlineShape.Point(at, new OutlineShape.Leg.Arc(Math.tan(arc[1] / 4))));
        double chord = 2 * arc[0] * Math.sin(Math.abs(arc[1]) / 2);
        at = at.along(Vec2.polar(facing + arc[1] / 2), chord);
        facing += arc[1];
      }
    }
    pads.outline = new OutlineShape.FreePath(points);
    return pads.pad();
  }

  /** A seat with a crown of 25 under its top layer. */
  @Benchmark
  public PartResult domedSeat() {
    return engine.run(domed);
  }

  /** A rounded seat whose rounded, overhanging front passes into plain sides over 80. */
  @Benchmark
  public PartResult seatWithPassages() {
    return engine.run(passage);
  }

  /** An outline of 100 lines and arcs, hollow in 25 places. */
  @Benchmark
  public PartResult hundredLinesAndArcs() {
    return engine.run(hundred);
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
