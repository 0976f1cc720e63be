package padwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import padwright.design.EdgeShape;
import padwright.design.FreeOutline;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.geometry.Crossings;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/** Pads on free outlines by seed: convex, hollow, with arcs and cubic curves. */
public final class RandomOutlines {
  private final Random random;
  private final RandomPads pads;

  public RandomOutlines(long seed) {
    random = new Random(seed);
    pads = new RandomPads(seed + 1);
  }

  private double pick(double from, double to) {
    return Math.round((from + random.nextDouble() * (to - from)) * 10) / 10.0;
  }

  /** A pad that a job file could hold: its outline does not cross itself. */
  public Pads next() {
    Pads p = pads.next();
    p.treatments = List.of(padwright.design.WrappedPad.Treatment.AUTO);
    p.host = padwright.design.WrappedPad.Host.none();
    p.turnUnder = random.nextInt(3) == 0 ? OptionalDouble.empty() : OptionalDouble.of(pick(15, 30));
    if (random.nextInt(2) == 0) {
      p.wadding = Optional.empty();
      p.foam = List.of(Pads.layer(pick(6, 40), 0));
      p.edge = random.nextInt(4) == 0 ? new EdgeShape.Round(pick(1, 6)) : new EdgeShape.Square();
    }
    do {
      p.outline = outline();
    } while (!sound(p.outline));
    return p;
  }

  private static boolean sound(OutlineShape shape) {
    Path path = FreeOutline.of((FreePath) shape).path();
    return path.area() > 100 * 100 && Crossings.first(path).isEmpty();
  }

  private OutlineShape outline() {
    return switch (random.nextInt(6)) {
      case 0 -> ell();
      case 1 -> bay();
      case 2 -> star(0);
      case 3 -> star(0.35);
      case 4 -> curved();
      default -> polygon();
    };
  }

  private static Point straight(double x, double y) {
    return new Point(new Vec2(x, y), new Leg.Straight());
  }

  private static Point arc(double x, double y, double bulge) {
    return new Point(new Vec2(x, y), bulge == 0 ? new Leg.Straight() : new Leg.Arc(bulge));
  }

  /** An L, its inner corner sharp or rounded. */
  private OutlineShape ell() {
    double l = pick(500, 1200);
    double w = pick(400, 1000);
    double a = pick(200, l - 150);
    double b = pick(200, w - 150);
    List<Point> points = new ArrayList<>();
    points.add(straight(0, 0));
    points.add(straight(l, 0));
    points.add(straight(l, b));
    double r = random.nextInt(3) == 0 ? pick(10, 120) : 0;
    if (r > 0 && r < l - a - 20 && r < w - b - 20) {
      points.add(arc(a + r, b, -Math.tan(Math.PI / 8)));
      points.add(straight(a, b + r));
    } else {
      points.add(straight(a, b));
    }
    points.add(straight(a, w));
    points.add(straight(0, w));
    return new FreePath(points);
  }

  /** A window seat between splayed walls, its front straight or bowed. */
  private OutlineShape bay() {
    double front = pick(700, 1500);
    double in = pick(-150, 250);
    double depth = pick(250, 600);
    double back = front - 2 * in;
    double bow = random.nextInt(2) == 0 ? 0 : pick(-2, 3) / 10;
    return new FreePath(
        List.of(
            arc(0, 0, bow),
            straight(front, 0),
            straight(front - in, depth),
            straight(front - in - back, depth)));
  }

  private OutlineShape star(double bend) {
    int n = 4 + random.nextInt(6);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double r = pick(200, 600);
      Vec2 at = Vec2.polar(2 * Math.PI * (i + 0.4 * random.nextDouble()) / n).times(r);
      double bulge = bend == 0 ? 0 : pick(-bend, bend);
      points.add(arc(at.x(), at.y(), bulge));
    }
    return new FreePath(points);
  }

  /** A round shape of cubic curves. */
  private OutlineShape curved() {
    double a = pick(150, 500);
    double b = pick(150, 400);
    double k = pick(3, 7) / 10;
    List<Point> points = new ArrayList<>();
    Vec2[] at = {new Vec2(0, -b), new Vec2(a, 0), new Vec2(0, b), new Vec2(-a, 0)};
    for (int i = 0; i < 4; i++) {
      Vec2 from = at[i];
      Vec2 to = at[(i + 1) % 4];
      points.add(new Point(from, new Leg.Cubic(from.along(to, k), to.along(from, k))));
    }
    return new FreePath(points);
  }

  private OutlineShape polygon() {
    int n = 3 + random.nextInt(6);
    double r = pick(250, 600);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Vec2 at = Vec2.polar(2 * Math.PI * i / n + 0.2).times(r);
      points.add(straight(at.x(), at.y()));
    }
    return new FreePath(points);
  }
}
