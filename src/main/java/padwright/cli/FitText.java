package padwright.cli;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import padwright.design.Finding;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.measure.Length;
import padwright.measure.LengthText;
import padwright.measure.LengthUnit;
import padwright.measure.Rounding;
import padwright.measure.Sentence;
import padwright.output.JobLengths;
import padwright.output.Plural;
import padwright.output.Sentences;
import padwright.output.Table;
import padwright.pattern.Figures.Box;
import padwright.pattern.FitAnswer;
import padwright.pattern.FitAnswer.Change;
import padwright.pattern.FitResult;
import padwright.pattern.HeightFit;

/** Make-ups for a finished height as a table in the job's units, and a line or two on each. */
final class FitText {
  private static final String INDENT = "  ";
  private static final double INCH = 25.4;

  /** The finest fraction that foam and board are sold by. */
  private static final int SOLD_PARTS = 32;

  /** A smaller error is printed as none, mm. */
  private static final double LEAST_SHOWN = 0.005;

  /** More of them say the same again. */
  private static final int REJECTED_SHOWN = 5;

  private final FitResult result;
  private final JobLengths lengths;
  private final StringBuilder out = new StringBuilder();

  private FitText(FitResult result, Units units) {
    this.result = result;
    this.lengths = new JobLengths(units);
  }

  /**
   * @param file where the answer {@code saved} was written; empty where none was
   */
  static CharSequence of(FitResult result, Units units, String file, int saved) {
    FitText text = new FitText(result, units);
    text.head();
    text.answers();
    text.rejected();
    text.foot();
    if (!file.isEmpty()) {
      text.out.append("\nAnswer ").append(saved).append(" written to ").append(file);
      text.out.append("\nNext: padwright check ").append(file).append('\n');
    }
    return text.out;
  }

  private void head() {
    WrappedPad pad = result.start();
    out.append(pad.name()).append(" (").append(pad.id()).append("), ");
    out.append(lengths.spoken(result.wish().height())).append(" high wanted\n");
    String text =
        "Its foams come out "
            + lengths.spoken(result.least())
            + " to "
            + lengths.spoken(result.most())
            + " high; length and width are those of the "
            + meaning(pad.base().size())
            + ".";
    out.append(Sentences.block(INDENT, "", 0, text)).append('\n');
  }

  private static String meaning(SizeMeaning size) {
    return size == SizeMeaning.FINISHED ? "finished part" : size.name().toLowerCase(Locale.ROOT);
  }

  private void answers() {
    if (result.answers().isEmpty()) {
      out.append(INDENT).append("No make-up is left that can be built.\n");
      return;
    }
    Table t = new Table(INDENT, "rrrlrrrl");
    t.row(
        "answer",
        "height " + (lengths.inches() ? "in" : "mm"),
        "error",
        "matters",
        "finished",
        "base",
        "sheets",
        "findings");
    int k = 0;
    for (FitAnswer a : result.answers()) {
      Box finished = a.result().figures().finished();
      t.row(
          Integer.toString(++k),
          length(finished.height(), Rounding.NEAREST),
          signed(a.error()),
          a.withinTolerance() ? "no" : "yes",
          plan(finished, Rounding.NEAREST),
          plan(a.result().figures().base(), Rounding.DOWN),
          Integer.toString(a.sheets()),
          counts(a.result().findings()));
    }
    out.append(t).append('\n');
    k = 0;
    for (FitAnswer a : result.answers()) {
      String label = Integer.toString(++k);
      out.append(Sentences.block(INDENT, label, 4, makeUp(a.pad()) + ". " + why(a)));
      for (Finding f : a.result().findings()) {
        if (f.level() == Finding.Level.CAUTION) {
          out.append(Sentences.block(INDENT, "", 4, "Caution: " + f.message()));
        }
      }
    }
  }

  private String why(FitAnswer a) {
    List<String> said = new ArrayList<>();
    if (a.asItStands()) {
      said.add("as the part stands");
    }
    if (!a.changed().isEmpty()) {
      String what =
          a.changed().stream()
              .sorted()
              .map(c -> c == Change.FOAM ? "foam as hard" : c.name().toLowerCase(Locale.ROOT))
              .collect(Collectors.joining(" and "));
      said.add("another " + what);
    }
    int sheets = a.sheets();
    if (sheets == 1) {
      said.add("a single sheet");
    } else if (a.fewer().isPresent()) {
      String miss = signed(a.fewer().getAsDouble());
      said.add((sheets == 2 ? "a single sheet misses by " : "fewer sheets miss by ") + miss);
    }
    if (a.withinTolerance() && Math.abs(a.error()) >= LEAST_SHOWN) {
      said.add("the error is within what a sheet itself may differ");
    }
    String text = String.join("; ", said);
    return text.isEmpty() ? "" : Character.toUpperCase(text.charAt(0)) + text.substring(1) + ".";
  }

  private String makeUp(WrappedPad pad) {
    List<String> parts = new ArrayList<>();
    parts.add("Board " + sold(pad.base().thickness()));
    pad.foam().forEach(f -> parts.add(f.foam() + " " + sold(f.thickness())));
    pad.wadding().ifPresent(w -> parts.add(w.wadding()));
    return String.join(", ", parts);
  }

  /** As it is sold: a sheet in mm stays one in a job in inches. */
  private String sold(double mm) {
    if (!lengths.inches()) {
      return Sentence.plain(mm);
    }
    String inches = LengthText.inches(mm, SOLD_PARTS, Rounding.NEAREST);
    return Length.parse(inches, LengthUnit.INCH) == mm ? inches : Sentence.plain(mm) + " mm";
  }

  private void rejected() {
    if (result.rejected().isEmpty()) {
      return;
    }
    out.append("\n  Not to be built").append(lengths.inSentences()).append('\n');
    Set<String> told = new HashSet<>();
    for (FitResult.Rejected r :
        result.rejected().subList(0, Math.min(REJECTED_SHOWN, result.rejected().size()))) {
      String rule = r.stops().isEmpty() ? r.refusal() : r.stops().get(0).rule();
      String reason =
          r.stops().isEmpty()
              ? "it cannot be worked out: " + r.refusal()
              : rule + ", " + r.stops().get(0).message();
      // The same stop at another thickness is as long and differs in a number.
      String text =
          told.add(rule) ? reason : r.stops().isEmpty() ? "the same" : rule + ", as above";
      String made = makeUp(r.pad()) + ", " + signed(r.error()) + ": ";
      out.append(Sentences.block(INDENT, "stop", 6, Sentences.closed(made + text)));
    }
    int more = result.rejected().size() - REJECTED_SHOWN;
    if (more > 0) {
      out.append(INDENT).append("and ").append(more).append(" more\n");
    }
  }

  private void foot() {
    String text =
        "An error does not matter where a sheet of foam may itself be as much thicker or thinner"
            + " than it is sold: "
            + LengthText.inches(HeightFit.tolerance(), SOLD_PARTS, Rounding.NEAREST)
            + String.format(Locale.ROOT, " or %.2f mm", HeightFit.tolerance())
            + " (Joint Industry Foam Standards 10.2.1). Heights are for foam at its full thickness.";
    out.append('\n').append(Sentences.block(INDENT, "", 0, text));
  }

  private static String counts(List<Finding> findings) {
    Map<Finding.Level, Integer> count = new EnumMap<>(Finding.Level.class);
    findings.forEach(f -> count.merge(f.level(), 1, Integer::sum));
    return count.isEmpty()
        ? "none"
        : count.entrySet().stream()
            .map(e -> Plural.of(e.getValue(), Sentences.level(e.getKey())))
            .collect(Collectors.joining(", "));
  }

  private String plan(Box b, Rounding rounding) {
    return length(b.length(), rounding) + " x " + length(b.width(), rounding);
  }

  private String length(double mm, Rounding rounding) {
    return lengths.inches() ? JobLengths.inches(mm, rounding) : JobLengths.mm(mm, rounding);
  }

  /** An error is compared, not measured: hundredths of a mm, or thousandths of an inch. */
  private String signed(double mm) {
    String text =
        lengths.inches()
            ? String.format(Locale.ROOT, "%.3f", Math.abs(mm) / INCH)
            : String.format(Locale.ROOT, "%.2f", Math.abs(mm));
    boolean nothing = text.chars().allMatch(c -> c == '0' || c == '.');
    return nothing ? text : (mm < 0 ? "-" : "+") + text;
  }
}
