package padwright.drawing;

import padwright.geometry.Vec2;

/** The commands of an SVG path (SVG 1.1, 8.3), given to a pen. */
final class PathData {
  private final NumberScanner in;
  private final Pen pen;
  private final Budget budget;

  /** The control point that S and T mirror; the current point where there is none. */
  private Vec2 control = Vec2.ZERO;

  PathData(NumberScanner in, Pen pen, Budget budget) {
    this.in = in;
    this.pen = pen;
    this.budget = budget;
  }

  void draw() {
    char before = 0;
    while (!in.done()) {
      budget.time();
      char command = in.take();
      if ("MmLlHhVvCcSsQqTtAaZz".indexOf(command) < 0) {
        throw in.refuse("there is an unknown command '" + printable(command) + "'");
      }
      if (before == 0 && command != 'M' && command != 'm') {
        throw in.refuse("the path does not start with M");
      }
      if (command == 'Z' || command == 'z') {
        pen.close();
        control = pen.at();
        before = command;
        continue;
      }
      do {
        one(command, before);
        before = command;
        // More pairs after a move are lines.
        command = command == 'M' ? 'L' : command == 'm' ? 'l' : command;
      } while (in.numberFollows());
    }
  }

  private static String printable(char c) {
    return c > ' ' && c < 127 ? String.valueOf(c) : "?";
  }

  private void one(char command, char before) {
    boolean relative = Character.isLowerCase(command);
    Vec2 from = relative ? pen.at() : Vec2.ZERO;
    switch (Character.toUpperCase(command)) {
      case 'M' -> pen.move(pair(from));
      case 'L' -> pen.line(pair(from));
      case 'H' -> pen.line(new Vec2(in.number() + from.x(), pen.at().y()));
      case 'V' -> pen.line(new Vec2(pen.at().x(), in.number() + from.y()));
      case 'C' -> cubic(pair(from), from);
      case 'S' -> cubic(mirrored("CcSs", before), from);
      case 'Q' -> quadratic(pair(from), from);
      case 'T' -> quadratic(mirrored("QqTt", before), from);
      default -> arc(from);
    }
    if ("CcSsQqTt".indexOf(command) < 0) {
      control = pen.at();
    }
  }

  private Vec2 pair(Vec2 from) {
    double x = in.number();
    return new Vec2(x + from.x(), in.number() + from.y());
  }

  private Vec2 mirrored(String kinds, char before) {
    return kinds.indexOf(before) >= 0 ? pen.at().times(2).minus(control) : pen.at();
  }

  private void cubic(Vec2 first, Vec2 from) {
    Vec2 second = pair(from);
    pen.cubic(first, second, pair(from));
    control = second;
  }

  private void quadratic(Vec2 middle, Vec2 from) {
    pen.quadratic(middle, pair(from));
    control = middle;
  }

  private void arc(Vec2 from) {
    double rx = Math.abs(in.number());
    double ry = Math.abs(in.number());
    double turned = Math.toRadians(in.number() % 360);
    boolean large = in.flag();
    boolean sweep = in.flag();
    Vec2 to = pair(from);
    if (to.equals(pen.at())) {
      return;
    }
    if (rx == 0 || ry == 0) {
      pen.line(to);
      return;
    }
    pen.arc(arc(pen.at(), to, rx, ry, turned, large, sweep), to);
  }

  /** From end points to centre, SVG 1.1 appendix F.6.5, radii made large enough by F.6.6. */
  static EllipticArc arc(
      Vec2 start, Vec2 end, double rx, double ry, double turned, boolean large, boolean sweep) {
    Vec2 half = start.minus(end).times(0.5).rotated(-turned);
    double x = half.x() / rx;
    double y = half.y() / ry;
    double needed = x * x + y * y;
    double grow = needed > 1 ? Math.sqrt(needed) : 1;
    double a = rx * grow;
    double b = ry * grow;
    x = half.x() / a;
    y = half.y() / b;
    // In the frame where the ellipse is a unit circle, the centre lies off the middle of the chord.
    double chord = x * x + y * y;
    double off = Math.sqrt(Math.max(0, (1 - chord) / chord)) * (large == sweep ? -1 : 1);
    Vec2 c = new Vec2(off * y, -off * x);
    double from = Math.atan2(y - c.y(), x - c.x());
    double to = Math.atan2(-y - c.y(), -x - c.x());
    double turn = to - from;
    if (sweep && turn < 0) {
      turn += 2 * Math.PI;
    } else if (!sweep && turn > 0) {
      turn -= 2 * Math.PI;
    }
    Vec2 centre = new Vec2(c.x() * a, c.y() * b).rotated(turned).plus(start.midpoint(end));
    Vec2 u = Vec2.polar(turned).times(a);
    Vec2 v = Vec2.polar(turned).left().times(b);
    return new EllipticArc(centre, u, v, from, turn);
  }
}
