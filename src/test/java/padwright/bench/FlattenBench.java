package padwright.bench;

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
import padwright.geometry.Vec2;
import padwright.geometry.mesh.Flattener;
import padwright.geometry.mesh.Flattening;
import padwright.geometry.mesh.HeightField;
import padwright.geometry.mesh.SurfaceMesher;
import padwright.geometry.mesh.TriangleMesh;

/** Meshing and flattening a surface of 20,000 triangles. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class FlattenBench {
  /** A cap of 30 degrees, a square saddle and a crowned rest ten times as long as wide. */
  @Param({"cap", "saddle", "rest"})
  public String surface;

  private List<Vec2> outline;
  private double edge;
  private HeightField height;
  private TriangleMesh mesh;

  @Setup
  public void lay() {
    switch (surface) {
      case "cap" -> {
        outline = circle(150, 210);
        edge = 2.86;
        height = (x, y) -> Math.sqrt(300 * 300 - x * x - y * y);
      }
      case "saddle" -> {
        outline = rectangle(400, 400);
        edge = 4.3;
        height = (x, y) -> (x * x - y * y) / 1600;
      }
      default -> {
        outline = rectangle(600, 60);
        edge = 2.04;
        height = (x, y) -> 8 * Math.cos(Math.PI * x / 600) * Math.cos(Math.PI * y / 60);
      }
    }
    mesh = meshing();
    if (Math.abs(mesh.triangleCount() - 20_000) > 600) {
      throw new IllegalStateException(surface + " has " + mesh.triangleCount() + " triangles");
    }
  }

  private static List<Vec2> circle(double radius, int corners) {
    List<Vec2> list = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      list.add(Vec2.polar(2 * Math.PI * i / corners).times(radius));
    }
    return list;
  }

  private static List<Vec2> rectangle(double length, double width) {
    return List.of(
        new Vec2(-length / 2, -width / 2),
        new Vec2(length / 2, -width / 2),
        new Vec2(length / 2, width / 2),
        new Vec2(-length / 2, width / 2));
  }

  /** Laying it flat. */
  @Benchmark
  public Flattening flatten() {
    return Flattener.flatten(mesh);
  }

  /** Making the mesh. */
  @Benchmark
  public TriangleMesh meshing() {
    return SurfaceMesher.mesh(outline, edge, height);
  }
}
