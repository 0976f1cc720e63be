package padwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import padwright.design.OutlineShape;
import padwright.shape.Outlines;

/** Offsets against the JTS Topology Suite's buffer, an independent implementation. */
class OffsetTest {
  private static final GeometryFactory JTS = new GeometryFactory();

  private static Polygon jts(Path path) {
    List<Coordinate> ring = new ArrayList<>();
    for (Vec2 p : path.flattened(2e-5)) {
      ring.add(new Coordinate(p.x(), p.y()));
    }
    ring.add(ring.get(0));
    return JTS.createPolygon(ring.toArray(Coordinate[]::new));
  }

  private static Geometry buffer(Path path, double distance) {
    BufferParameters mitred =
        new BufferParameters(400, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 100);
    mitred.setSimplifyFactor(0);
    return BufferOp.bufferOp(jts(path), distance, mitred);
  }

  private static void agrees(Path path, double distance) {
    Path ours = Offset.by(path, distance).orElseThrow();
    Geometry theirs = buffer(path, distance).getBoundary();
    IndexedFacetDistance toTheirs = new IndexedFacetDistance(theirs);
    for (Vec2 p : ours.flattened(0.5)) {
      double apart = toTheirs.distance(JTS.createPoint(new Coordinate(p.x(), p.y())));
      assertThat(apart).as("%s by %s at %s", path, distance, p).isLessThan(0.01);
    }
    IndexedFacetDistance toOurs = new IndexedFacetDistance(jts(ours).getBoundary());
    Coordinate[] all = theirs.getCoordinates();
    for (int i = 0; i < all.length; i += Math.max(1, all.length / 200)) {
      double apart = toOurs.distance(JTS.createPoint(all[i]));
      assertThat(apart).as("%s by %s at %s", path, distance, all[i]).isLessThan(0.01);
    }
  }

  @Test
  void roundedRectanglesAgreeWithJtsToAHundredth() {
    Random random = new Random(20261125);
    for (int i = 0; i < 25; i++) {
      double length = 100 + random.nextInt(900);
      double width = 100 + random.nextInt(500);
      double r = random.nextInt(45);
      Path path =
          Outlines.of(new OutlineShape.Rectangle(length, width, List.of(r, r / 2, 0.0, r))).path();
      agrees(path, random.nextDouble() * 80);
      agrees(path, -random.nextDouble() * 45);
    }
  }

  @Test
  void trapezoidsAndCirclesAgreeWithJtsToAHundredth() {
    Random random = new Random(7);
    for (int i = 0; i < 15; i++) {
      Path trapezoid =
          Outlines.of(
                  new OutlineShape.Trapezoid(
                      300 + random.nextInt(200), 250 + random.nextInt(200), 300))
              .path();
      agrees(trapezoid, random.nextDouble() * 80);
      agrees(trapezoid, -random.nextDouble() * 80);
      Path circle = Outlines.of(new OutlineShape.Circle(200 + random.nextInt(300))).path();
      agrees(circle, random.nextDouble() * 80);
      agrees(circle, -random.nextDouble() * 80);
    }
  }

  @Test
  void ellipsesAgreeWithJtsToAHundredthAlsoWhereTheirTightEndsVanish() {
    for (double[] axes : new double[][] {{450, 300}, {600, 200}, {380, 360}}) {
      Path ellipse = Outlines.of(new OutlineShape.Ellipse(axes[0], axes[1])).path();
      for (double distance : new double[] {60, 5, -5, -20}) {
        agrees(ellipse, distance);
      }
    }
    // Half axes 300 and 100: least radius of curvature b^2 / a = 33.3, so 50 in makes points.
    agrees(Outlines.of(new OutlineShape.Ellipse(600, 200)).path(), -50);
  }

  @Test
  void outThenInComesBackToTheOutline() {
    Random random = new Random(3);
    for (int i = 0; i < 200; i++) {
      Path path =
          Outlines.of(
                  new OutlineShape.Rectangle(
                      200 + random.nextInt(300), 150, List.of(0.0, 30.0, 10.0, 0.0)))
              .path();
      double d = 1 + random.nextDouble() * 60;
      Path back = Offset.by(Offset.by(path, d).orElseThrow(), -d).orElseThrow();
      assertThat(back.segments()).hasSameSizeAs(path.segments());
      for (int k = 0; k < path.segments().size(); k++) {
        assertThat(back.segments().get(k).start().distance(path.segments().get(k).start()))
            .isCloseTo(0, within(1e-9));
      }
    }
  }

  @Test
  void nothingIsLeftOfARectangleMovedInByHalfItsWidth() {
    Path path =
        Outlines.of(new OutlineShape.Rectangle(600, 60, List.of(0.0, 0.0, 0.0, 0.0))).path();
    assertThat(Offset.by(path, -30.001)).isEmpty();
    assertThat(Offset.by(path, -29.9)).isPresent();
  }
}
