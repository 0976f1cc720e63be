package padwright.export;

import java.util.ArrayList;
import java.util.List;
import padwright.design.Units;
import padwright.export.Drawing.Fill;
import padwright.export.Drawing.LineStyle;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.measure.LengthText;
import padwright.measure.Rounding;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternPiece.PointMark;
import padwright.pattern.PatternPiece.StapleMark;

/** Marks on a piece that have their own place: staples, holes, centre marks, the front. */
final class PieceMarks {
  /** Drawn length of a staple: neighbours at 8 mm must not be read as one line. */
  static final double STAPLE = 6;

  private static final double TRIANGLE = 4;
  private static final double CROSSHAIR = 3;
  private static final double NOTE_WIDTH = 120;
  private static final double[] SHIFTS = {0, 0.8, 1.6, 2.6, 4};
  private static final double[] SLIDES = {0, -2.2, 2.2};
  private static final double[] STILL = {0};
  private static final double[] ALONG = {0.5, 0.42, 0.58, 0.33, 0.67, 0.25, 0.75, 0.15, 0.85};
  private static final double[] OFFSETS = {0, 2, 4, 7, 11, 16};

  private final Sheet sheet;
  private final PatternPiece piece;
  private final Units units;

  PieceMarks(Sheet sheet, PatternPiece piece, Units units) {
    this.sheet = sheet;
    this.piece = piece;
    this.units = units;
  }

  /** What keeps its place comes first: bars, crosshairs and triangles, all of them obstacles. */
  void bodies() {
    for (StapleMark s : piece.staples()) {
      Vec2 u = Vec2.polar(s.angle());
      Path bar = Path.line(s.at().along(u, -STAPLE / 2), s.at().along(u, STAPLE / 2));
      sheet.line(bar, LineStyle.STAPLE_BODY);
      sheet.room().add(new Box(s.at(), STAPLE + 0.6, 0.6, s.angle()));
    }
    for (PointMark p : piece.points()) {
      switch (p.kind()) {
        case CENTRE_MARK -> triangle(p.at());
        case HOLE, SCREW -> hole(p);
        case AREA -> {}
      }
    }
  }

  private void triangle(Vec2 tip) {
    Vec2 in = inwards(tip);
    Vec2 foot = tip.along(in, TRIANGLE);
    Vec2 side = in.left().times(TRIANGLE / 2.5);
    sheet.items(List.of(new Fill(Path.polygon(tip, foot.minus(side), foot.plus(side)), 0)));
    Vec2 middle = tip.along(in, TRIANGLE / 2);
    sheet.room().add(new Box(middle, TRIANGLE, TRIANGLE / 1.25, in.angle()));
  }

  /** Away from the nearest side of the cut line, which runs anticlockwise round the piece. */
  private Vec2 inwards(Vec2 p) {
    double best = Double.POSITIVE_INFINITY;
    Vec2 in = new Vec2(0, 1);
    for (Segment s : piece.cutLine().segments()) {
      if (s.chord() == 0) {
        continue;
      }
      double t = s.isArc() ? nearestOnArc(s, p) : nearestOnLine(s, p);
      double d = s.pointAt(t).distance(p);
      if (d < best) {
        best = d;
        in = s.directionAt(t).left();
      }
    }
    return in;
  }

  private static double nearestOnLine(Segment s, Vec2 p) {
    Vec2 run = s.end().minus(s.start());
    return Math.max(0, Math.min(1, p.minus(s.start()).dot(run) / run.dot(run)));
  }

  private static double nearestOnArc(Segment s, Vec2 p) {
    Vec2 c = s.centre();
    double turn = p.minus(c).angle() - s.start().minus(c).angle();
    double full = 2 * Math.PI;
    double way = s.sweep() > 0 ? 1 : -1;
    double gone = ((turn * way) % full + full) % full;
    double sweep = Math.abs(s.sweep());
    if (gone <= sweep) {
      return gone / sweep;
    }
    return s.start().distance(p) < s.end().distance(p) ? 0 : 1;
  }

  private void hole(PointMark p) {
    double r = p.diameter() / 2;
    boolean cutAlready =
        piece.innerCuts().stream().anyMatch(c -> c.bounds().centre().distance(p.at()) < 0.01);
    if (r > 0 && !cutAlready) {
      sheet.line(Path.circle(p.at(), r), LineStyle.MARK);
    }
    double arm = r + CROSSHAIR;
    Vec2 x = new Vec2(arm, 0);
    Vec2 y = new Vec2(0, arm);
    sheet.line(Path.line(p.at().minus(x), p.at().plus(x)), LineStyle.MARK);
    sheet.line(Path.line(p.at().minus(y), p.at().plus(y)), LineStyle.MARK);
    sheet.room().add(new Box(p.at(), 2 * arm, 2 * arm, 0));
  }

  /** The words and numbers that belong to those bodies. */
  void words() {
    piece.lines().stream()
        .filter(l -> l.kind() == PatternPiece.LineKind.FRONT)
        .forEach(l -> front(l.path()));
    for (PointMark p : piece.points()) {
      if (p.kind() != PatternPiece.PointKind.CENTRE_MARK) {
        holeLabel(p);
      }
    }
    List<String> crowded = new ArrayList<>();
    for (StapleMark s : piece.staples()) {
      if (!number(s)) {
        crowded.add(Integer.toString(s.number()));
      }
    }
    if (!crowded.isEmpty()) {
      String note = "staples with no room for their number: " + String.join(", ", crowded);
      besideOnly(CornerDiagram.wrapped(note, NOTE_WIDTH));
    }
  }

  private void besideOnly(List<String> lines) {
    sheet.beside(NoteBlock.of("", lines, 1), 0, false);
  }

  private void outside(Vec2 target, String words) {
    if (!sheet.callout(target, words)) {
      besideOnly(List.of(words));
    }
  }

  private void front(Path path) {
    Segment longest = path.segments().get(0);
    for (Segment s : path.segments()) {
      longest = s.length() > longest.length() ? s : longest;
    }
    Vec2 middle = sheet.room().bounds().centre();
    double half = Lettering.NOTE * 0.5;
    for (double offset : OFFSETS) {
      for (double t : ALONG) {
        Vec2 at = longest.pointAt(t);
        Vec2 way = longest.directionAt(t);
        Vec2 in = way.left().dot(middle.minus(at)) >= 0 ? way.left() : way.right();
        Vec2 place = at.along(in, half + 1.8 + offset);
        if (sheet.textAt(place, Lettering.NOTE, upright(way.angle()), "FRONT")) {
          return;
        }
      }
    }
    outside(longest.pointAt(0.5), "FRONT");
  }

  /** The angle a word is written at along a line, never upside down. */
  static double upright(double angle) {
    double a = Math.IEEEremainder(angle, Math.PI);
    if (a <= -Math.PI / 2 + 1e-6) {
      a += Math.PI;
    }
    return Math.abs(a) < 1e-12 ? 0 : a;
  }

  private void holeLabel(PointMark p) {
    if (p.kind() == PatternPiece.PointKind.AREA) {
      if (!AreaLabel.put(sheet, piece, p)) {
        outside(p.at(), p.label());
      }
      return;
    }
    String size = p.diameter() > 0 ? "\u00f8 " + diameter(p.diameter()) : "";
    String words = (p.label() + " " + size).strip();
    if (words.isEmpty()) {
      return;
    }
    double reach = p.diameter() / 2 + CROSSHAIR + 1.3;
    for (double shift : SHIFTS) {
      for (int i = 0; i < 8; i++) {
        Vec2 way = Vec2.polar(i * Math.PI / 4);
        if (sheet.textAt(beyond(p.at(), way, reach + shift, words), Lettering.NOTE, 0, words)) {
          return;
        }
      }
    }
    outside(p.at(), words);
  }

  private String diameter(double mm) {
    return units == Units.MM ? PieceNotes.plain(mm) : LengthText.inches(mm, 64, Rounding.NEAREST);
  }

  /** The middle of a word that keeps its whole box {@code reach} away from a point. */
  private static Vec2 beyond(Vec2 from, Vec2 way, double reach, String words) {
    double hw = Lettering.width(words, Lettering.NOTE) / 2;
    double hh = Lettering.NOTE * (Lettering.ASCENT + Lettering.DESCENT) / 2;
    double sx = Math.abs(way.x()) < 1e-9 ? 0 : Math.signum(way.x());
    double sy = Math.abs(way.y()) < 1e-9 ? 0 : Math.signum(way.y());
    return from.along(way, reach).plus(new Vec2(sx * hw, sy * hh));
  }

  private boolean number(StapleMark s) {
    String n = Integer.toString(s.number());
    double hw = Lettering.width(n, Lettering.NOTE) / 2;
    double hh = Lettering.NOTE * (Lettering.ASCENT + Lettering.DESCENT) / 2;
    Vec2 across = Vec2.polar(s.angle()).left();
    if (across.dot(inwards(s.at())) < 0) {
      across = across.times(-1);
    }
    Vec2 along = Vec2.polar(s.angle());
    Vec2[] ways = {across, across.times(-1), along, along.times(-1)};
    double half = Math.abs(across.x()) * hw + Math.abs(across.y()) * hh;
    double halfAlong = Math.abs(along.x()) * hw + Math.abs(along.y()) * hh;
    for (int i = 0; i < ways.length; i++) {
      double start = i < 2 ? half + 1.45 : halfAlong + STAPLE / 2 + 1.45;
      for (double shift : SHIFTS) {
        for (double slide : i < 2 ? SLIDES : STILL) {
          Vec2 at = s.at().along(ways[i], start + shift).along(along, slide);
          if (sheet.textAt(at, Lettering.NOTE, 0, n)) {
            return true;
          }
        }
      }
    }
    return sheet.callout(s.at(), n);
  }
}
