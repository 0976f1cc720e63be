package padwright.cli;

import java.util.List;
import java.util.Locale;
import padwright.cover.CornerPlan;
import padwright.design.Assumption;
import padwright.design.Finding;
import padwright.design.Job;
import padwright.design.PadSpec;
import padwright.design.PaddedPart;
import padwright.design.WrappedPad.Treatment;
import padwright.fastening.StaplePlan.LegVerdict;
import padwright.measure.LengthText;
import padwright.measure.Rounding;
import padwright.pattern.Figures;
import padwright.pattern.Figures.Box;
import padwright.pattern.Figures.StapleDepth;
import padwright.pattern.Figures.StapleFigures;
import padwright.pattern.PartResult;

/**
 * The figures of a job as tables: mm to a tenth with inches to a sixteenth beside. What is sawn is
 * rounded down and what must reach is rounded up, so that neither comes out wrong by the rounding.
 */
final class FiguresText {
  private static final String INDENT = "  ";

  /** The finest fraction of an inch that a thickness is sold by. */
  private static final int INCH_PARTS = 32;

  private static final List<String> SIDES = List.of("front", "right", "back", "left");

  private final StringBuilder out = new StringBuilder();

  private FiguresText() {}

  /** The tables of one part, with an empty line before them. */
  static CharSequence of(PartResult result) {
    FiguresText text = new FiguresText();
    text.part(result);
    return text.out;
  }

  /** The job in one line. */
  static String title(Job job) {
    return job.title()
        + job.client().map(c -> ", for " + c).orElse("")
        + job.date().map(d -> ", " + d).orElse("");
  }

  /** Words of a corner's treatment, such as {@code mitred end}. */
  static String words(Treatment t) {
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
    corners(r);
    out.append("\n  Findings\n").append(findings(r.findings()));
    assumptions(r.spec().assumptions());
  }

  private void sizes(PartResult r) {
    Figures f = r.figures();
    PadSpec spec = r.spec();
    Table t = new Table(INDENT, "lrrrlrrr");
    t.row("Sizes", "length", "width", "height", "mm", "length", "width", "height in");
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
    length(one, "Cover, each side", c.perSide());
    length(one, "Turn-under", c.turnUnder());
    length(one, "Grip beyond the trim line", c.grip());
    length(one, "Turn-under stands proud of the back", f.standOff());
    for (int i = 0; i < f.bareGap().size() && i < SIDES.size(); i++) {
      length(one, "Bare gap for the dry fit, " + SIDES.get(i), f.bareGap().get(i));
    }
    one.row("Cover, area", decimals(c.area() / 1e6, 4) + " m2");
    one.row("Weight of one", decimals(f.weight(), 2) + " kg");
    out.append(one);
  }

  private static void box(Table t, String name, Box b, Rounding r) {
    t.row(
        name,
        mm(b.length(), r),
        mm(b.width(), r),
        b.height() == 0 ? "" : mm(b.height(), Rounding.NEAREST),
        "",
        inches(b.length(), r),
        inches(b.width(), r),
        thickness(b.height()));
  }

  private static void length(Table t, String name, double mm) {
    t.row(name, mm(mm, Rounding.NEAREST) + " mm", inches(mm, Rounding.NEAREST) + " in");
  }

  private void staples(PartResult r) {
    StapleFigures s = r.figures().staples();
    out.append("\n  Staples: ").append(Plural.of(s.count(), "staple"));
    if (s.leg() > 0) {
      out.append(", leg ").append(plain(s.leg()));
    }
    out.append(", ").append(mm(s.spacing(), Rounding.NEAREST)).append(" mm apart at most, ");
    out.append(
        s.suggestedLeg().isPresent()
            ? "longest leg that passes " + plain(s.suggestedLeg().getAsDouble()) + " mm"
            : "no leg passes");
    out.append('\n');
    if (s.leg() > 0) {
      Table t = new Table(INDENT, "lrrr");
      t.row("mm", "into the board", "left under the point", "holds");
      depth(t, s.single());
      depth(t, s.corner());
      out.append(t);
    }
    if (s.suggestedLeg().isEmpty()) {
      legs(r);
    }
  }

  private static void depth(Table t, StapleDepth d) {
    t.row(
        Plural.of(d.layers(), "layer") + (d.layers() == 1 ? "" : ", at the corners"),
        mm(d.penetration(), Rounding.NEAREST),
        mm(d.margin(), Rounding.NEAREST),
        mm(d.hold(), Rounding.NEAREST));
  }

  /** Where none passes, the maker has to choose among them all. */
  private void legs(PartResult r) {
    Table t = new Table(INDENT, "lrrrl");
    t.row("Every leg", "mm", "left under the point", "holds", "verdict");
    for (LegVerdict v : r.staples().legs()) {
      t.row(
          v.staple(),
          plain(v.leg()),
          mm(v.margin(), Rounding.NEAREST),
          mm(v.hold(), Rounding.NEAREST),
          v.verdict());
    }
    out.append(t);
  }

  private void corners(PartResult r) {
    if (r.cover().corners().isEmpty()) {
      return;
    }
    out.append("\n  Corners\n");
    int width = 0;
    for (CornerPlan c : r.cover().corners()) {
      width = Math.max(width, c.name().length() + 2);
    }
    for (CornerPlan c : r.cover().corners()) {
      String text = words(c.treatment()) + ": " + c.reason();
      out.append(Sentences.block(INDENT, c.name(), width, text));
    }
  }

  /** Findings in sentences, each after its level. */
  static String findings(List<Finding> findings) {
    if (findings.isEmpty()) {
      return INDENT + "nothing to say\n";
    }
    StringBuilder s = new StringBuilder();
    for (Finding f : findings) {
      s.append(Sentences.block(INDENT, Sentences.level(f.level()), 9, Sentences.finding(f)));
    }
    return s.toString();
  }

  private void assumptions(List<Assumption> assumptions) {
    if (assumptions.isEmpty()) {
      return;
    }
    out.append("\n  Taken because it was left out\n");
    out.append(table(assumptions));
  }

  /** Defaults: field, value, and why. */
  static String table(List<Assumption> assumptions) {
    Table t = new Table(INDENT, "lll");
    for (Assumption a : assumptions) {
      t.row(a.field(), a.value(), a.reason() + " (" + Sentences.status(a.status()) + ")");
    }
    return t.toString();
  }

  private static String mm(double mm, Rounding rounding) {
    return Double.isFinite(mm) ? LengthText.mmNumber(mm, LengthText.MM_DIGITS, rounding) : "-";
  }

  private static String inches(double mm, Rounding rounding) {
    return inches(mm, INCH_PARTS, rounding);
  }

  /** Boards and coverings are sold by finer steps; what has none is left empty. */
  private static String thickness(double mm) {
    return mm == 0 ? "" : inches(mm, INCH_PARTS, Rounding.NEAREST);
  }

  private static String inches(double mm, int parts, Rounding rounding) {
    if (!Double.isFinite(mm)) {
      return "-";
    }
    String text = LengthText.inches(mm, parts, rounding);
    return text.substring(0, text.length() - " in".length());
  }

  private static String decimals(double value, int digits) {
    return String.format(Locale.ROOT, "%." + digits + "f", value);
  }

  /** Without needless noughts: 8, 9.5. */
  static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e9
        ? Long.toString((long) value)
        : Double.toString(value);
  }
}
