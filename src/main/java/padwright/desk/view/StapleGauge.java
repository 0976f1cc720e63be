package padwright.desk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import padwright.design.PadSpec;
import padwright.design.Units;
import padwright.fastening.StapleDepths;
import padwright.fastening.StaplePlan;
import padwright.fastening.StaplePlan.LegVerdict;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;
import padwright.measure.Sentence;
import padwright.output.JobLengths;
import padwright.pattern.Figures.StapleFigures;
import padwright.pattern.PartResult;

/**
 * One staple in the board, to scale: crown and both legs, the covering under it, the board as sold
 * and as thin as it may be. The back of the board is up, as it lies when staples are driven. Every
 * depth is that of {@link StapleDepths}, as in the figures; nothing is judged here. Screen points,
 * y down.
 *
 * @param staple number of the staple shown, from 1; 0 where no leg serves and none was asked for
 * @param bands covering, board and what lies under it, from the top down
 * @param wire outline of the staple; empty without one
 * @param bars dimensions
 * @param nominal where the board's face is as sold
 * @param least where it may be
 * @param words what the staple does, in a sentence
 * @param verdict whether that will do
 */
public record StapleGauge(
    double width,
    double height,
    double text,
    double scale,
    int staple,
    int layers,
    List<Band> bands,
    List<Vec2> wire,
    List<Bar> bars,
    SectionForm.Line nominal,
    SectionForm.Line least,
    String words,
    Sign sign,
    String verdict) {
  private static final double MARGIN = 6;
  private static final double[] SCALES = {
    20, 15, 12, 10, 9, 8, 7, 6, 5, 4, 3, 2.5, 2, 1.5, 1, 0.5, 0.2
  };
  private static final double LIFE = 96 / 25.4;
  private static final double BELOW = 4;

  public StapleGauge {
    bands = List.copyOf(bands);
    wire = List.copyOf(wire);
    bars = List.copyOf(bars);
  }

  /** How a verdict is marked, besides its words. */
  public enum Sign {
    PASSES("\u2713"),
    CAUTION("!"),
    STOP("\u2715");

    private final String mark;

    Sign(String mark) {
      this.mark = mark;
    }

    /** A sign that is told apart without colour. */
    public String mark() {
      return mark;
    }
  }

  /** A layer cut through. */
  public record Band(SectionForm.Kind kind, String title, Bounds box) {}

  /**
   * A depth.
   *
   * @param mm what it comes to
   * @param label in words, in {@code box}
   */
  public record Bar(String label, double mm, Vec2 from, Vec2 to, Bounds box) {}

  /**
   * The worst staple of a part: the one that has least to spare, of board under its point or of
   * what holds. Empty where there is none.
   */
  public static OptionalInt worst(PartResult result) {
    int worst = -1;
    double least = Double.POSITIVE_INFINITY;
    List<StaplePlan.Position> all = result.staples().positions();
    for (int i = 0; i < all.size(); i++) {
      LegVerdict v = verdict(result, all.get(i).layers());
      double spare =
          Math.min(v.margin() - StapleDepths.LEAST_MARGIN, v.hold() - StapleDepths.GOOD_HOLD);
      if (spare < least - 1e-9) {
        least = spare;
        worst = i;
      }
    }
    return worst < 0 ? OptionalInt.empty() : OptionalInt.of(worst);
  }

  /** The engine's verdict on a staple through so many layers, which it takes as one thick one. */
  private static LegVerdict verdict(PartResult result, int layers) {
    PadSpec spec = result.spec();
    return StapleDepths.verdict(
        spec.staple(),
        result.figures().staples().leg(),
        1,
        layers * spec.coverThickness(),
        spec.leastThickness());
  }

  /**
   * The gauge at a staple.
   *
   * @param position number of a staple in {@code result.staples().positions()}, from 0; empty for
   *     the worst
   */
  public static StapleGauge of(PartResult result, OptionalInt position, SectionForm.Room room) {
    OptionalInt at = position.isPresent() ? position : worst(result);
    int layers =
        at.isPresent() && at.getAsInt() < result.staples().positions().size()
            ? result.staples().positions().get(at.getAsInt()).layers()
            : 1;
    return new Drawn(result, layers, room).gauge(at.orElse(-1) + 1);
  }

  /** Works the places of one gauge out. */
  private static final class Drawn {
    private final PadSpec spec;
    private final StapleFigures figures;
    private final LegVerdict depth;
    private final int layers;
    private final SectionForm.Room room;
    private final double t;
    private final double cover;
    private final double scale;
    private final double middle;
    private final double top;
    private final double left;
    private final double right;

    private Drawn(PartResult result, int layers, SectionForm.Room room) {
      this.spec = result.spec();
      this.figures = result.figures().staples();
      this.depth = verdict(result, layers);
      this.layers = layers;
      this.room = room;
      this.t = room.text();
      this.cover = layers * spec.coverThickness();
      double deep = Math.max(spec.boardThickness(), figures.leg() - cover) + BELOW;
      double beside = Math.min(10.5 * t, room.width() * 0.36);
      double wide = room.width() - 2 * beside - 2 * MARGIN;
      double high = room.height() - 2 * MARGIN - 5.4 * t;
      this.scale = room.scale().orElse(fit(spec.staple().crown() * 1.25, cover + deep, wide, high));
      this.middle = room.width() / 2;
      this.left = MARGIN + beside;
      this.right = room.width() - MARGIN - beside;
      double slack = Math.max(0, high - (cover + deep + 0.5) * scale);
      this.top = MARGIN + slack / 2 + (cover + 0.5) * scale;
    }

    private static double fit(double wide, double high, double roomWide, double roomHigh) {
      for (double s : SCALES) {
        if (wide * s * LIFE <= roomWide && (high + 0.5) * s * LIFE <= roomHigh) {
          return s * LIFE;
        }
      }
      return SCALES[SCALES.length - 1] * LIFE;
    }

    private double y(double depth) {
      return top + depth * scale;
    }

    private StapleGauge gauge(int number) {
      boolean any = figures.leg() > 0;
      return new StapleGauge(
          room.width(),
          room.height(),
          t,
          scale,
          any ? number : 0,
          layers,
          bands(),
          any ? wire() : List.of(),
          bars(any),
          across(spec.boardThickness()),
          across(spec.leastThickness()),
          any ? words() : "No leg of " + spec.staple().name() + " serves here",
          any ? sign() : Sign.STOP,
          any ? depth.verdict() : "no leg passes");
    }

    private SectionForm.Line across(double depth) {
      return new SectionForm.Line(new Vec2(left, y(depth)), new Vec2(right, y(depth)));
    }

    private List<Band> bands() {
      List<Band> bands = new ArrayList<>();
      double one = spec.coverThickness();
      for (int i = layers; i > 0; i--) {
        bands.add(band(SectionForm.Kind.COVER, spec.covering().name(), -i * one, -(i - 1) * one));
      }
      bands.add(band(SectionForm.Kind.BOARD, spec.board().name(), 0, spec.boardThickness()));
      if (!spec.foam().isEmpty()) {
        String foam = spec.foam().get(0).foam().name();
        double deep = Math.max(spec.boardThickness(), depth.penetration()) + BELOW / 2;
        bands.add(band(SectionForm.Kind.FOAM, foam, spec.boardThickness(), deep));
      }
      return bands;
    }

    private Band band(SectionForm.Kind kind, String title, double from, double to) {
      return new Band(kind, title, new Bounds(left, y(from), right, y(to)));
    }

    /** Crown up; outside sizes, the points ground from both sides. */
    private List<Vec2> wire() {
      double w = spec.staple().wireWidth() * scale;
      double half = spec.staple().crown() / 2 * scale;
      double up = y(-cover);
      double under = up + spec.staple().wireThickness() * scale;
      double tip = y(depth.penetration());
      double shoulder = Math.max(under, tip - w);
      return List.of(
          new Vec2(middle - half, up),
          new Vec2(middle + half, up),
          new Vec2(middle + half, shoulder),
          new Vec2(middle + half - w / 2, tip),
          new Vec2(middle + half - w, shoulder),
          new Vec2(middle + half - w, under),
          new Vec2(middle - half + w, under),
          new Vec2(middle - half + w, shoulder),
          new Vec2(middle - half + w / 2, tip),
          new Vec2(middle - half, shoulder));
    }

    private String mm(double mm) {
      return new JobLengths(room.units()).depth(mm);
    }

    private record Wanted(String label, double mm, double from, double to) {}

    private List<Bar> bars(boolean any) {
      List<Wanted> right = new ArrayList<>();
      List<Wanted> left = new ArrayList<>();
      String layer = layers == 1 ? "1 layer, " : layers + " layers, ";
      left.add(new Wanted(layer + mm(cover), cover, -cover, 0));
      left.add(
          new Wanted(
              (spec.thicknessMeasured() ? "measured " : "at least ") + mm(spec.leastThickness()),
              spec.leastThickness(),
              0,
              spec.leastThickness()));
      left.add(
          new Wanted(
              "board " + mm(spec.boardThickness()),
              spec.boardThickness(),
              0,
              spec.boardThickness()));
      if (any) {
        right.add(new Wanted("leg " + mm(figures.leg()), figures.leg(), -cover, pen()));
        right.add(new Wanted("holds " + mm(depth.hold()), depth.hold(), 0, depth.hold()));
        right.add(new Wanted("into board " + mm(pen()), pen(), 0, pen()));
        right.add(
            new Wanted(
                depth.margin() > 0
                    ? "left " + mm(depth.margin())
                    : "through by " + mm(-depth.margin()),
                depth.margin(),
                pen(),
                spec.leastThickness()));
      }
      List<Bar> bars = new ArrayList<>();
      side(bars, left, -1);
      side(bars, right, 1);
      return bars;
    }

    private double pen() {
      return depth.penetration();
    }

    private void side(List<Bar> bars, List<Wanted> wanted, int sign) {
      List<Double> middles = wanted.stream().map(w -> y((w.from() + w.to()) / 2)).toList();
      double high = room.height() - 5.6 * t;
      double[] at = Spread.along(middles, 1.35 * t, MARGIN + t, high);
      for (int i = 0; i < wanted.size(); i++) {
        Wanted w = wanted.get(i);
        double x = (sign < 0 ? left : right) + sign * (5 + i * 7.0);
        double from = sign < 0 ? MARGIN : right + 5 + 7.0 * wanted.size();
        double to = sign < 0 ? left - 5 - 7.0 * wanted.size() : room.width() - MARGIN;
        Bounds box = new Bounds(from, at[i] - 0.62 * t, to, at[i] + 0.62 * t);
        bars.add(new Bar(w.label(), w.mm(), new Vec2(x, y(w.from())), new Vec2(x, y(w.to())), box));
      }
    }

    private String words() {
      String through = layers == 1 ? "" : " through " + layers + " layers";
      String unit = room.units() == Units.MM ? " mm" : "";
      String left =
          depth.margin() > 0
              ? mm(depth.margin()) + " left under the point"
              : "through by " + mm(-depth.margin());
      return Sentence.of(
          "leg %s%s%s: %s into the board, %s, holds %s",
          mm(figures.leg()), unit, through, mm(pen()), left, mm(depth.hold()));
    }

    /** As grave as the findings of the same depth are. */
    private Sign sign() {
      if (depth.margin() <= 0 || depth.penetration() <= 0) {
        return Sign.STOP;
      }
      return depth.margin() < StapleDepths.LEAST_MARGIN || depth.hold() < StapleDepths.GOOD_HOLD
          ? Sign.CAUTION
          : Sign.PASSES;
    }
  }
}
