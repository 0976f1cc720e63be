package padwright.geometry.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;

/** What is done to a surface is done to its flat. */
class FlatteningSymmetryTest {
  /** A crowned patch with no symmetry of its own. */
  private static final TriangleMesh PATCH =
      Meshes.grid(
          30,
          24,
          (u, v) ->
              new Vec3(
                  300 * u + 40 * v * v - 150,
                  220 * v - 30 * u * v - 110,
                  60 * Math.sin(2.5 * u) * Math.cos(1.5 * v - 0.3)));

  private static TriangleMesh mapped(TriangleMesh mesh, UnaryOperator<Vec3> map, boolean turned) {
    List<Vec3> vertices = new ArrayList<>();
    List<int[]> triangles = new ArrayList<>();
    for (int v = 0; v < mesh.vertexCount(); v++) {
      vertices.add(map.apply(mesh.vertex(v)));
    }
    for (int t = 0; t < mesh.triangleCount(); t++) {
      int[] c = mesh.triangle(t);
      triangles.add(turned ? new int[] {c[0], c[2], c[1]} : c);
    }
    return TriangleMesh.of(vertices, triangles);
  }

  private static void agrees(TriangleMesh mesh, UnaryOperator<Vec2> map, double tolerance) {
    Flattening plain = Flattener.flatten(PATCH);
    Flattening changed = Flattener.flatten(mesh);
    for (int v = 0; v < PATCH.vertexCount(); v++) {
      assertThat(changed.point(v).distance(map.apply(plain.point(v)))).isLessThan(tolerance);
    }
    for (int t = 0; t < PATCH.triangleCount(); t++) {
      assertThat(changed.strain().of(t)).isCloseTo(plain.strain().of(t), within(1e-9));
    }
  }

  @Test
  void aLargerSurfaceHasALargerFlatAndTheSameStrain() {
    agrees(mapped(PATCH, p -> p.times(3.7), false), p -> p.times(3.7), 1e-6);
    agrees(mapped(PATCH, p -> p.times(1e-3), false), p -> p.times(1e-3), 1e-9);
  }

  @Test
  void aMirroredSurfaceHasAMirroredFlat() {
    // Other triangles come first in the order of elimination, so only the least is the same.
    agreesAtRest(mapped(PATCH, p -> new Vec3(-p.x(), p.y(), p.z()), true), -1);
  }

  @Test
  void aDishHasTheFlatOfTheDome() {
    agrees(mapped(PATCH, p -> new Vec3(p.x(), p.y(), -p.z()), false), p -> p, 1e-8);
  }

  @Test
  void aSurfaceTurnedAndMovedInThePlanHasItsFlatTurnedAndMoved() {
    Vec2 by = new Vec2(130, -70);
    TriangleMesh turned =
        mapped(
            PATCH,
            p -> {
              Vec2 q = new Vec2(p.x(), p.y()).rotated(0.7).plus(by);
              return new Vec3(q.x(), q.y(), p.z() + 55);
            },
            false);
    Flattening plain = Flattener.flatten(PATCH);
    Flattening flat = Flattener.flatten(turned);
    for (int v = 0; v < PATCH.vertexCount(); v++) {
      Vec2 expected = plain.point(v).rotated(0.7).plus(by);
      assertThat(flat.point(v).distance(expected)).isLessThan(0.001);
    }
    assertThat(flat.strain().mean()).isCloseTo(plain.strain().mean(), within(1e-6));
  }

  private static void agreesAtRest(TriangleMesh mesh, int mirror) {
    Flattening plain = Flattener.flatten(PATCH);
    Flattening changed = Flattener.flatten(mesh);
    for (int v = 0; v < PATCH.vertexCount(); v++) {
      Vec2 p = plain.point(v);
      assertThat(changed.point(v).distance(new Vec2(mirror * p.x(), p.y()))).isLessThan(0.001);
    }
    assertThat(changed.strain().mean()).isCloseTo(plain.strain().mean(), within(1e-6));
    assertThat(changed.strain().worst()).isCloseTo(plain.strain().worst(), within(1e-5));
  }

  @Test
  void theOrderOfTheTrianglesDoesNotMatter() {
    List<Integer> order = new ArrayList<>();
    for (int t = 0; t < PATCH.triangleCount(); t++) {
      order.add(t);
    }
    Collections.shuffle(order, new Random(20261125));
    List<Vec3> vertices = new ArrayList<>();
    for (int v = 0; v < PATCH.vertexCount(); v++) {
      vertices.add(PATCH.vertex(v));
    }
    List<int[]> triangles = new ArrayList<>();
    for (int t : order) {
      int[] c = PATCH.triangle(t);
      triangles.add(new int[] {c[1], c[2], c[0]});
    }
    agreesAtRest(TriangleMesh.of(vertices, triangles), 1);
  }

  @Test
  void theSameSurfaceGivesTheSameFlatToTheLastDigit() {
    Flattening a = Flattener.flatten(PATCH);
    Flattening b = Flattener.flatten(PATCH);
    assertThat(a.outline()).isEqualTo(b.outline());
  }
}
