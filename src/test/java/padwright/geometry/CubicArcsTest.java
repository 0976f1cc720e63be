package padwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.CubicCurve2D;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.distance.DistanceOp;

/** Arcs for cubic curves, against the curve as the JDK flattens it and distances by JTS. */
class CubicArcsTest {
  private static final long SEED = 20261128;
  private static final int CURVES = 400;
  private static final GeometryFactory JTS = new GeometryFactory();

  /** What the JDK's chords leave its curve by, and ours our arcs, mm. */
  private static final double FLAT = 1e-4;

  private static Geometry jdk(Vec2 a, Vec2 b, Vec2 c, Vec2 d) {
    CubicCurve2D curve =
        new CubicCurve2D.Double(a.x(), a.y(), b.x(), b.y(), c.x(), c.y(), d.x(), d.y());
    List<Coordinate> points = new ArrayList<>();
    double[] at = new double[6];
    for (PathIterator i = new FlatteningPathIterator(curve.getPathIterator(null), FLAT, 14);
        !i.isDone();
        i.next()) {
      i.currentSegment(at);
      points.add(new Coordinate(at[0], at[1]));
    }
    return JTS.createLineString(points.toArray(Coordinate[]::new));
  }

  private static Geometry arcs(List<Segment> chain) {
    List<Coordinate> points = new ArrayList<>();
    for (Vec2 p : new Path(chain, false).flattened(FLAT)) {
      points.add(new Coordinate(p.x(), p.y()));
    }
    return JTS.createLineString(points.toArray(Coordinate[]::new));
  }

  /** The furthest that points of one lie from the other. */
  private static double away(Geometry from, Geometry to) {
    double worst = 0;
    Coordinate[] points = from.getCoordinates();
    int step = Math.max(1, points.length / 400);
    for (int i = 0; i < points.length; i += step) {
      worst = Math.max(worst, DistanceOp.distance(JTS.createPoint(points[i]), to));
    }
    return worst;
  }

  @Test
  void theChainKeepsWithinItsErrorOfTheCurveAndTheCurveOfIt() {
    Random random = new Random(SEED);
    for (int k = 0; k < CURVES; k++) {
      Vec2[] p = new Vec2[4];
      double size = Math.pow(10, 1 + 2 * random.nextDouble());
      for (int i = 0; i < 4; i++) {
        p[i] = new Vec2(random.nextDouble() * size, random.nextDouble() * size);
      }
      List<Segment> chain = CubicArcs.of(p[0], p[1], p[2], p[3]);
      Geometry curve = jdk(p[0], p[1], p[2], p[3]);
      Geometry ours = arcs(chain);
      String what = k + ": " + List.of(p);

      assertThat(away(curve, ours)).as(what).isLessThan(CubicArcs.CHORD_ERROR + 2 * FLAT);
      assertThat(away(ours, curve)).as(what).isLessThan(CubicArcs.CHORD_ERROR + 2 * FLAT);
      for (int i = 0; i + 1 < chain.size(); i++) {
        assertThat(chain.get(i).end()).as(what).isEqualTo(chain.get(i + 1).start());
      }
      assertThat(chain.get(0).start().distance(p[0])).isLessThan(1e-9);
      assertThat(chain.get(chain.size() - 1).end().distance(p[3])).isLessThan(1e-9);
    }
  }

  /**
   * A quarter circle as four-thirds of tan(pi/8) has it, known to be out by 0.027 % of its radius.
   */
  @Test
  void aQuarterCirclesCurveIsNearTheCircle() {
    double k = 4.0 / 3 * Math.tan(Math.PI / 8);
    List<Segment> chain =
        CubicArcs.of(
            new Vec2(100, 0), new Vec2(100, 100 * k), new Vec2(100 * k, 100), new Vec2(0, 100));

    for (Vec2 p : new Path(chain, false).flattened(FLAT)) {
      assertThat(p.length()).isCloseTo(100, within(0.0275 + CubicArcs.CHORD_ERROR));
    }
    assertThat(chain.size()).isLessThan(12);
  }

  @Test
  void aStraightOneIsLines() {
    List<Segment> chain =
        CubicArcs.of(new Vec2(0, 0), new Vec2(30, 10), new Vec2(60, 20), new Vec2(90, 30));
    assertThat(chain).isNotEmpty().noneMatch(Segment::isArc);
  }
}
