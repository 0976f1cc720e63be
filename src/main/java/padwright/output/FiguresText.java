package padwright.output;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import padwright.cover.CornerPlan;
import padwright.design.Assumption;
import padwright.design.Finding;
import padwright.design.Job;
import padwright.design.PadSpec;
import padwright.design.PaddedPart;
import padwright.design.Units;
import padwright.design.WrappedPad.Treatment;
import padwright.fastening.StaplePlan.LegVerdict;
import padwright.measure.Rounding;
import padwright.measure.Sentence;
import padwright.pattern.Figures;
import padwright.pattern.Figures.Box;
import padwright.pattern.Figures.StapleDepth;
import padwright.pattern.Figures.StapleFigures;
import padwright.pattern.PartResult;

/**
 * The figures of a job as tables: mm to a tenth and inches to a thirty-second, the job's unit
 * first. What is sawn is rounded down and what must reach is rounded up, so that neither comes out
 * wrong by the rounding.
 */
public final class FiguresText {
  private static final String INDENT = "  ";

  private static final double MM2_A_SQUARE_FOOT = 304.8 * 304.8;

  /** International avoirdupois pound of 1959, kg. */
  private static final double POUND = 0.45359237;

  private static final List<String> SIDES = List.of("front", "right", "back", "left");

  private final StringBuilder out = new StringBuilder();

  private final JobLengths lengths;

  private FiguresText(JobLengths lengths) {
    this.lengths = lengths;
  }

  /** The tables of one part, with an empty line before them. */
  public static CharSequence of(PartResult result, Units units) {
    FiguresText text = new FiguresText(new JobLengths(units));
    text.part(result);
    return text.out;
  }

  /** The job in one line. */
  public static String title(Job job) {
    return job.title()
        + job.client().map(c -> ", for " + c).orElse("")
        + job.date().map(d -> ", " + d).orElse("");
  }

  /** Words of a corner's treatment, such as {@code mitred end}. */
  public static String words(Treatment t) {
    return t.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private void part(PartResult r) {
    PaddedPart p = r.asked();
    out.append('\n').append(p.name()).append(" (").append(p.id()).append("), ");
    out.append(p.quantity()).append(" as drawn");
    if (p.mirrored() > 0) {
      out.append(" and ").append(p.mirrored()).append(" mirrored");
    }
    out.append('\n');
    sizes(r);
    staples(r);
    dome(r);
    corners(r);
    out.append("\n  Findings").append(lengths.inSentences()).append('\n');
    out.append(findings(r.findings(), lengths));
    assumptions(r.spec().assumptions());
  }

  private void sizes(PartResult r) {
    Figures f = r.figures();
    PadSpec spec = r.spec();
    Table t = new Table(INDENT, "lrrrlrrr");
    t.row(
        lengths.inches()
            ? List.of("Sizes", "length", "width", "height", "in", "length", "width", "height mm")
            : List.of("Sizes", "length", "width", "height", "mm", "length", "width", "height in"));
    box(t, "Finished", f.finished(), Rounding.NEAREST);
    box(t, "Base, " + spec.board().name(), f.base(), Rounding.DOWN);
    for (int i = 0; i < f.foam().size(); i++) {
      String name = i < spec.foam().size() ? ", " + spec.foam().get(i).foam().name() : "";
      box(t, "Foam " + (i + 1) + name, f.foam().get(i), Rounding.NEAREST);
    }
    f.wadding().forEach(b -> box(t, "Wadding, cut", b, Rounding.UP));
    Figures.CoverFigures c = f.cover();
    double thickness = spec.coverThickness();
    box(t, "Cover, trim line", new Box(c.length(), c.width(), thickness), Rounding.UP);
    box(t, "Cover, cut size", new Box(c.cutLength(), c.cutWidth(), thickness), Rounding.UP);
    f.dustCover().forEach(b -> box(t, "Dust cover, cut", b, Rounding.NEAREST));
    out.append(t).append('\n');
    Table one = new Table(INDENT, "lrr");
    // As finely as they are printed.
    String usual = JobLengths.mm(c.perSide(), Rounding.NEAREST);
    Map<String, Double> others = new LinkedHashMap<>(c.perSideBySide());
    others.values().removeIf(mm -> JobLengths.mm(mm, Rounding.NEAREST).equals(usual));
    length(one, others.isEmpty() ? "Cover, each side" : "Cover, each other side", c.perSide());
    others.forEach((side, mm) -> length(one, "Cover, " + side, mm));
    length(one, "Turn-under", c.turnUnder());
    length(one, "Grip beyond the trim line", c.grip());
    length(one, "Turn-under stands proud of the back", f.standOff());
    for (int i = 0; i < f.bareGap().size() && i < SIDES.size(); i++) {
      length(one, "Bare gap for the dry fit, " + SIDES.get(i), f.bareGap().get(i));
    }
    String area = Sentence.decimal(c.area() / 1e6, 4) + " m2";
    String weight = Sentence.decimal(f.weight(), 2) + " kg";
    if (lengths.inches()) {
      one.row("Cover, area", Sentence.decimal(c.area() / MM2_A_SQUARE_FOOT, 2) + " sq ft", area);
      one.row("Weight of one", Sentence.decimal(f.weight() / POUND, 2) + " lb", weight);
    } else {
      one.row("Cover, area", area);
      one.row("Weight of one", weight);
    }
    out.append(one);
  }

  private void box(Table t, String name, Box b, Rounding r) {
    List<String> mm =
        List.of(
            JobLengths.mm(b.length(), r),
            JobLengths.mm(b.width(), r),
            b.height() == 0 ? "" : JobLengths.mm(b.height(), Rounding.NEAREST));
    List<String> inches =
        List.of(
            JobLengths.inches(b.length(), r),
            JobLengths.inches(b.width(), r),
            b.height() == 0 ? "" : JobLengths.inches(b.height(), Rounding.NEAREST));
    List<String> cells = new ArrayList<>(List.of(name));
    cells.addAll(lengths.inches() ? inches : mm);
    cells.add("");
    cells.addAll(lengths.inches() ? mm : inches);
    t.row(cells);
  }

  private void length(Table t, String name, double length) {
    String mm = JobLengths.mm(length, Rounding.NEAREST) + " mm";
    String inches = JobLengths.inches(length, Rounding.NEAREST) + " in";
    t.row(name, lengths.inches() ? inches : mm, lengths.inches() ? mm : inches);
  }

  private void staples(PartResult r) {
    StapleFigures s = r.figures().staples();
    out.append("\n  Staples: ").append(Plural.of(s.count(), "staple"));
    if (s.leg() > 0) {
      out.append(", leg ").append(lengths.leg(s.leg()));
    }
    out.append(", ")
        .append(lengths.spoken(r.staples().mostApart(s.spacing())))
        .append(" apart at most, ");
    out.append(
        s.suggestedLeg().isPresent()
            ? "longest leg that passes " + longest(s.suggestedLeg().getAsDouble())
            : "no leg passes");
    out.append('\n');
    if (s.leg() > 0) {
      Table t = new Table(INDENT, "lrrr");
      t.row(lengths.depthUnit(), "into the board", "left under the point", "holds");
      boolean round = r.cover().corners().size() == 1;
      depth(t, s.single(), round);
      depth(t, s.corner(), round);
      out.append(t);
    }
    if (s.suggestedLeg().isEmpty()) {
      legs(r);
    } else {
      ownLegs(r);
    }
  }

  private String longest(double mm) {
    return lengths.inches() ? lengths.leg(mm) : Sentence.plain(mm) + " mm";
  }

  private void depth(Table t, StapleDepth d, boolean round) {
    t.row(
        Plural.of(d.layers(), "layer")
            + (d.layers() == 1 ? "" : round ? ", at the rim's pleats" : ", at the corners"),
        lengths.depth(d.penetration()),
        lengths.depth(d.margin()),
        lengths.depth(d.hold()));
  }

  /** The legs of the series used: which others would do, and why the rest would not. */
  private void ownLegs(PartResult r) {
    Table t = new Table(INDENT, "lrrl");
    t.row(
        "Legs, " + lengths.depthUnit(),
        "left under the point",
        "holds",
        "verdict" + lengths.inSentences());
    for (LegVerdict v : r.staples().legs()) {
      if (v.staple().equals(r.spec().staple().id())) {
        t.row(
            lengths.inches() ? lengths.depth(v.leg()) : Sentence.plain(v.leg()),
            lengths.depth(v.margin()),
            lengths.depth(v.hold()),
            v.verdict());
      }
    }
    out.append(t);
  }

  /** Where none passes, the maker has to choose among them all. */
  private void legs(PartResult r) {
    Table t = new Table(INDENT, "lrrrl");
    t.row(
        "Every leg",
        lengths.depthUnit(),
        "left under the point",
        "holds",
        "verdict" + lengths.inSentences());
    for (LegVerdict v : r.staples().legs()) {
      t.row(
          v.staple(),
          lengths.inches() ? lengths.depth(v.leg()) : Sentence.plain(v.leg()),
          lengths.depth(v.margin()),
          lengths.depth(v.hold()),
          v.verdict());
    }
    out.append(t);
  }

  /** What the domed top asks of the covering; nothing where the top is flat. */
  private void dome(PartResult r) {
    r.dome()
        .filter(d -> d.refusal().isEmpty())
        .ifPresent(
            d -> {
              Table t = new Table(INDENT, "lrrl");
              t.row("Domed top, covering", "asked", "takes", "most");
              t.row(
                  "stretched",
                  percent(d.stretched().strain()),
                  percent(d.stretchTaken()),
                  d.stretched().near());
              t.row(
                  "eased in",
                  percent(-d.eased().strain()),
                  percent(d.easeTaken()),
                  d.eased().near());
              t.row("mean of both", percent(d.mean()), "", "");
              if (!d.seams().isEmpty()) {
                t.row("stretched, with seams", percent(d.leftStretched()), "", "");
                t.row("eased in, with seams", percent(-d.leftEased()), "", "");
              }
              out.append('\n').append(t);
            });
  }

  private static String percent(double strain) {
    return Sentence.decimal(100 * strain, 1) + " %";
  }

  private void corners(PartResult r) {
    if (r.cover().corners().isEmpty()) {
      return;
    }
    out.append("\n  Corners").append(lengths.inSentences()).append('\n');
    int width = 0;
    for (CornerPlan c : r.cover().corners()) {
      width = Math.max(width, c.name().length() + 2);
    }
    for (CornerPlan c : r.cover().corners()) {
      String text = words(c.treatment()) + ": " + c.reason() + row(c);
      out.append(Sentences.block(INDENT, c.name(), width, text));
    }
  }

  /** How many stand along a curve, and how. */
  private static String row(CornerPlan c) {
    if (c.row().spacing() == 0) {
      return "";
    }
    String many =
        switch (c.treatment()) {
          case CLIPS -> c.pleats() == 1 ? "clip" : "clips";
          case NOTCHES -> c.pleats() == 1 ? "notch" : "notches";
          default -> c.pleats() == 1 ? "pleat" : "pleats";
        };
    return Sentence.of("; %d %s", c.pleats(), many)
        + (c.pleats() > 1
            ? Sentence.of(", %.1f apart along the base's edge", c.row().spacing())
            : "")
        + (c.row().mouth() > 0
            ? Sentence.of(", %.1f wide at the cut line", c.row().mouth())
            : c.pleatDepth() > 0 ? Sentence.of(", %.1f deep", c.pleatDepth()) : "")
        + (c.row().stop() > 0
            ? Sentence.of(", stopping %.0f short of the back arris", c.row().stop())
            : "");
  }

  /** Findings in sentences, each after its level. */
  public static String findings(List<Finding> findings, JobLengths lengths) {
    if (findings.isEmpty()) {
      return INDENT + "nothing to say\n";
    }
    StringBuilder s = new StringBuilder();
    for (Finding f : findings) {
      String text = Sentences.finding(f, lengths.beside(f));
      s.append(Sentences.block(INDENT, Sentences.level(f.level()), 9, text));
    }
    return s.toString();
  }

  private void assumptions(List<Assumption> assumptions) {
    if (assumptions.isEmpty()) {
      return;
    }
    out.append("\n  Taken because it was left out").append(lengths.inSentences()).append('\n');
    out.append(table(assumptions, lengths));
  }

  /** Defaults: field, value, and why. */
  public static String table(List<Assumption> assumptions, JobLengths lengths) {
    Table t = new Table(INDENT, "lll");
    for (Assumption a : assumptions) {
      t.row(
          a.field(),
          lengths.value(a.value()),
          a.reason() + " (" + Sentences.status(a.status()) + ")");
    }
    return t.toString();
  }
}
