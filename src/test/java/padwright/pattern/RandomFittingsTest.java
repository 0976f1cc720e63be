package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import padwright.design.Fittings.ZoneKind;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece.Kind;
import padwright.pattern.PatternPiece.LineKind;

/** Fittings of any shape in any place, many of them impossible: found out, never a crash. */
class RandomFittingsTest {
  private static final long SEED = 20261125;
  private static final int PARTS = 300;
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private final Random random = new Random(SEED);

  private double between(double from, double to) {
    return from + (to - from) * random.nextDouble();
  }

  private OutlineShape hole() {
    double a = between(15, 220);
    double b = between(15, 220);
    return switch (random.nextInt(5)) {
      case 0 -> Pads.rectangle(a, b, between(0, Math.min(a, b) / 2));
      case 1 -> new OutlineShape.Circle(a);
      case 2 -> new OutlineShape.Ellipse(a, b);
      case 3 -> new OutlineShape.Trapezoid(a, between(a / 3, a), b);
      default -> free(a / 2);
    };
  }

  /** A star of straight lines and arcs about a middle; it never crosses itself. */
  private FreePath free(double size) {
    List<Point> points = new ArrayList<>();
    int n = 3 + random.nextInt(6);
    for (int k = 0; k < n; k++) {
      Vec2 at = Vec2.polar(2 * Math.PI * (k + between(0, 0.3)) / n).times(size * between(0.5, 1));
      Leg leg = random.nextInt(4) == 0 ? new Leg.Arc(between(0, 0.2)) : new Leg.Straight();
      points.add(new Point(at, leg));
    }
    return new FreePath(points);
  }

  private FittedPads part() {
    FittedPads p = new FittedPads();
    p.pads.outline =
        switch (random.nextInt(3)) {
          case 0 -> new OutlineShape.Circle(between(250, 600));
          case 1 -> new OutlineShape.Trapezoid(600, between(250, 600), between(250, 500));
          default -> Pads.rectangle(600, between(200, 500), between(0, 90));
        };
    p.pads.foam = List.of(Pads.layer(between(5, 60), 0));
    p.pads.coverThickness = java.util.OptionalDouble.of(between(0, 2));
    for (int k = random.nextInt(3); k >= 0; k--) {
      if (random.nextInt(4) == 0) {
        p.whole(hole(), between(-250, 250), between(-200, 200));
      } else {
        p.cut(hole(), between(-250, 250), between(-200, 200));
      }
    }
    for (int k = random.nextInt(3); k > 0; k--) {
      p.vent(between(-300, 300), between(-200, 200), between(5, 40));
      p.insert(between(-300, 300), between(-200, 200));
      ZoneKind kind = random.nextBoolean() ? ZoneKind.TAPE : ZoneKind.HOOK_AND_LOOP;
      p.zone(kind, between(-250, 250), between(-150, 150), between(20, 300), between(20, 60));
    }
    return p;
  }

  private static Geometry jts(List<Vec2> points, boolean ring) {
    List<Coordinate> list = new ArrayList<>();
    points.forEach(v -> list.add(new Coordinate(v.x(), v.y())));
    if (ring) {
      list.add(list.get(0));
    }
    Coordinate[] array = list.toArray(Coordinate[]::new);
    return ring ? GEOMETRY.createPolygon(array) : GEOMETRY.createLineString(array);
  }

  @Test
  void staplesKeepClearAndSlitsStayInTheirCutOuts() {
    int slit = 0;
    int stapled = 0;
    for (int k = 0; k < PARTS; k++) {
      PartResult part = part().run();
      String name = "part " + k;
      List<Path> holes = part.piece(Kind.BASE).orElseThrow().innerCuts();
      List<Geometry> cutOuts = new ArrayList<>();
      for (Path hole : holes.subList(0, part.asked().fittings().cutOuts().size())) {
        cutOuts.add(jts(hole.flattened(0.005), true));
      }
      for (var p : part.staples().positions()) {
        Vec2 half = Vec2.polar(p.angle()).times(part.spec().staple().crown() / 2);
        Geometry crown = jts(List.of(p.at().minus(half), p.at().plus(half)), false);
        boolean tongue = p.side().startsWith("cut-out");
        stapled += tongue ? 1 : 0;
        for (int c = 0; c < cutOuts.size(); c++) {
          boolean own = p.side().equals("cut-out " + (c + 1));
          // A tongue's own staple stands as far out as those of the base's edge, from its fold.
          double least = own ? part.spec().edgeDistance() - 0.6 : 8;
          assertThat(crown.distance(cutOuts.get(c))).as(name).isGreaterThan(least - 0.02);
        }
      }
      for (PatternPiece.LineMark l : part.piece(Kind.COVER).orElseThrow().lines()) {
        if (l.kind() == LineKind.SLIT) {
          slit++;
          Geometry line = jts(List.of(l.path().start(), l.path().end()), false);
          assertThat(cutOuts).as(name).anyMatch(c -> c.contains(line));
        }
      }
    }
    assertThat(slit).isGreaterThan(PARTS);
    assertThat(stapled).isGreaterThan(PARTS / 10);
  }
}
