package padwright.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import padwright.cover.CornerPlan;
import padwright.design.Assumption;
import padwright.design.Finding;
import padwright.design.PadSpec;
import padwright.design.Units;
import padwright.material.Status;
import padwright.pattern.Figures;
import padwright.pattern.PartResult;

/** What the job sheet says below its cutting list, section by section. */
final class JobSheetText {
  /**
   * One line each; the rules themselves are for the maker's country and a licensed trade to say.
   */
  private static final List<String> SAFETY =
      List.of(
          "Foam: cut with a blade, never a hot wire; hot polyurethane gives off isocyanates.",
          "Spray adhesive: ventilate, keep off the skin, no flame or spark till the solvent is gone.",
          "Stapler: nose pressed on, finger off the trigger between shots, eye protection, other hand"
              + " behind the tool. Unplug it to clear a jam.",
          "Fire: for sale, let or public use covering and filling fall under rules (UK SI 1988/1324 as"
              + " amended, US 16 CFR 1640, 49 CFR 571.302 in vehicles, IMO FTP Code at sea). Local"
              + " rules and licensed practice go before this sheet.");

  private final PartResult part;
  private final boolean inches;
  private final List<Block> blocks = new ArrayList<>();

  private JobSheetText(PartResult part, Units units) {
    this.part = part;
    this.inches = units == Units.INCH;
  }

  /**
   * @param units what is printed first
   * @param brief leaves out why a default was taken, where the sheet is full
   */
  static List<Block> of(PartResult part, Units units, boolean brief) {
    JobSheetText t = new JobSheetText(part, units);
    if (t.inches) {
      t.blocks.add(Block.item("Plain lengths in the sentences below are mm; inches are named."));
    }
    t.findings("Before you cut", false);
    t.blanks();
    t.sizes();
    t.staples();
    t.steps();
    t.mounting();
    t.findings("Notes", true);
    t.assumptions(brief);
    t.blocks.add(Block.heading("Safety"));
    SAFETY.forEach(s -> t.blocks.add(Block.item("\u2013", s)));
    return List.copyOf(t.blocks);
  }

  private void findings(String heading, boolean notes) {
    List<Finding> list =
        part.findings().stream().filter(f -> (f.level() == Finding.Level.NOTE) == notes).toList();
    if (list.isEmpty()) {
      return;
    }
    blocks.add(Block.heading(heading));
    for (Finding f : list) {
      String marker =
          switch (f.level()) {
            case STOP -> "STOP";
            case CAUTION -> "Caution";
            case NOTE -> "\u2013";
          };
      String remedy = f.remedy().isBlank() ? "" : " " + sentence(f.remedy());
      blocks.add(Block.item(marker, sentence(f.message()) + remedy));
    }
  }

  private static String sentence(String s) {
    String t = s.strip();
    return t.isEmpty() || ".!?".indexOf(t.charAt(t.length() - 1)) >= 0 ? t : t + ".";
  }

  private void blanks() {
    PadSpec s = part.spec();
    String unit = inches ? "in" : "mm";
    blocks.add(Block.heading("Measure first, write down"));
    blocks.add(
        Block.blank(
            "Board, planned "
                + planned(s.boardThickness())
                + ", at least "
                + planned(s.leastThickness()),
            unit));
    for (int i = 0; i < s.foam().size(); i++) {
      blocks.add(
          Block.blank(
              "Foam"
                  + (s.foam().size() > 1 ? " " + (i + 1) : "")
                  + ", planned "
                  + planned(s.foam().get(i).thickness()),
              unit));
    }
    blocks.add(Block.blank("Covering, planned " + covering(s.coverThickness()), unit));
    if (s.waddingThickness() > 0) {
      String pressed = "Wadding, pressed as under the covering, planned ";
      blocks.add(Block.blank(pressed + planned(s.waddingThickness()), unit));
    }
    blocks.add(Block.item("Where one differs, put it into the job and draw again before cutting."));
  }

  private String size(double mm) {
    return inches ? Sizes.inches(mm) + " in (" + Sizes.mm(mm) + " mm)" : Sizes.mm(mm) + " mm";
  }

  /** Beside a line to write on, where there is room for one unit only. */
  private String planned(double mm) {
    return inches ? Sizes.inches(mm) + " in" : Sizes.mm(mm) + " mm";
  }

  private String covering(double mm) {
    return inches ? Sizes.inches(mm) + " in (" + hundredths(mm) + " mm)" : hundredths(mm) + " mm";
  }

  private static String hundredths(double mm) {
    String s = String.format(Locale.ROOT, "%.2f", mm);
    return s.endsWith("0") ? s.substring(0, s.length() - 1) : s;
  }

  private void sizes() {
    Figures.Box f = part.figures().finished();
    blocks.add(Block.heading("Finished size"));
    String mm = Sizes.mm(f.length()) + " x " + Sizes.mm(f.width()) + " x " + Sizes.mm(f.height());
    String in =
        Sizes.inches(f.length())
            + " x "
            + Sizes.inches(f.width())
            + " x "
            + Sizes.inches(f.height());
    blocks.add(
        Block.item(
            (inches ? in + " high in (" + mm + " mm), " : mm + " high mm (" + in + " in), ")
                + hundredths(part.figures().weight())
                + " kg."));
    blocks.add(
        Block.item(
            "The turn-under stands "
                + covering(part.figures().standOff())
                + " proud of the base's back."));
  }

  private void staples() {
    Figures.StapleFigures f = part.figures().staples();
    blocks.add(Block.heading("Staples"));
    if (f.leg() <= 0) {
      blocks.add(Block.item("No leg passes: see above."));
      return;
    }
    blocks.add(
        Block.item(
            part.spec().staple().name()
                + ", leg "
                + size(f.leg())
                + ", "
                + f.count()
                + " of them, at most "
                + size(part.staples().mostApart(f.spacing()))
                + " apart, "
                + size(part.spec().edgeDistance())
                + " from the edge."));
    blocks.add(Block.item(depth(f.single(), "")));
    if (f.corner().layers() != f.single().layers()) {
      blocks.add(Block.item(depth(f.corner(), thickest(f.corner().layers()))));
    }
  }

  /** Where the most layers lie; corners may differ. */
  private String thickest(int layers) {
    List<CornerPlan> corners = part.cover().corners();
    List<String> names =
        corners.stream()
            .filter(c -> part.layersAt(c) == layers)
            .map(CornerPlan::name)
            .collect(Collectors.toList());
    if (corners.size() == 1) {
      return ", at the rim's pleats";
    }
    return names.size() == corners.size()
        ? ", at the corners"
        : ", at corner " + String.join(", ", names);
  }

  private String depth(Figures.StapleDepth d, String where) {
    return "Through "
        + d.layers()
        + (d.layers() == 1 ? " layer" : " layers")
        + where
        + ": "
        + Sizes.depth(d.penetration(), inches)
        + " into the board, "
        + Sizes.depth(d.margin(), inches)
        + " left under the point, hold "
        + Sizes.depth(d.hold(), inches)
        + ".";
  }

  private void steps() {
    blocks.add(Block.heading("Order of work"));
    int n = 1;
    for (String s : OrderOfWork.steps(part)) {
      blocks.add(Block.tick(n++ + ".", s));
    }
  }

  private void mounting() {
    List<String> list = part.mounting().steps();
    if (!list.isEmpty()) {
      blocks.add(Block.heading("Mounting"));
      list.forEach(s -> blocks.add(Block.tick("", sentence(s))));
    }
  }

  private void assumptions(boolean brief) {
    List<Assumption> list = part.spec().assumptions();
    if (list.isEmpty()) {
      return;
    }
    blocks.add(Block.heading("Taken because the job does not say"));
    if (brief) {
      String all =
          list.stream().map(a -> a.field() + " " + a.value()).collect(Collectors.joining("; "));
      blocks.add(Block.item(all + ". The figures give the reasons."));
      return;
    }
    for (Assumption a : list) {
      blocks.add(
          Block.item(
              "\u2013",
              a.field() + ": " + a.value() + " (" + a.reason() + "; " + origin(a.status()) + ")"));
    }
  }

  private static String origin(Status status) {
    return switch (status) {
      case PUBLISHED -> "published";
      case PRACTICE -> "common practice, no source";
      case MEMORY -> "from memory, to be verified";
      case OWN -> "our own choice";
      case MEASURED -> "measured";
    };
  }
}
