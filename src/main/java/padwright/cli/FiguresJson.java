package padwright.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import padwright.cover.CornerPlan;
import padwright.cover.WrapReport;
import padwright.design.Assumption;
import padwright.design.Finding;
import padwright.dome.DomeReport;
import padwright.fastening.StaplePlan;
import padwright.fastening.StaplePlan.LegVerdict;
import padwright.output.FiguresText;
import padwright.output.Sentences;
import padwright.pattern.Figures;
import padwright.pattern.Figures.Box;
import padwright.pattern.Figures.CoverFigures;
import padwright.pattern.Figures.StapleDepth;
import padwright.pattern.Figures.StapleFigures;
import padwright.pattern.PartResult;

/**
 * The figures of a job as JSON, one part after another. The names are a contract with other
 * programs: add, never rename. Lengths in mm, areas in mm2, weight in kg.
 */
final class FiguresJson {
  private static final List<String> SIDES = List.of("front", "right", "back", "left");

  /** A part stands in a list in an object. */
  private static final int DEPTH = 2;

  private final JsonOut out;

  private FiguresJson(JsonOut out) {
    this.out = out;
  }

  /** One part, to be put into {@link #document}. */
  static CharSequence of(PartResult result) throws IOException {
    StringBuilder text = new StringBuilder();
    try (JsonOut out = JsonOut.within(text, DEPTH)) {
      new FiguresJson(out).part(result);
    }
    return text;
  }

  /** The whole document. */
  static CharSequence document(List<CharSequence> parts) throws IOException {
    StringBuilder text = new StringBuilder();
    try (JsonOut out = new JsonOut(text)) {
      out.object(null).array("parts");
      for (CharSequence part : parts) {
        out.written(part);
      }
      out.end().end();
    }
    return text;
  }

  private void part(PartResult r) throws IOException {
    Figures f = r.figures();
    out.object(null).text("id", r.asked().id()).text("name", r.asked().name());
    out.count("quantity", r.asked().quantity()).count("mirrored", r.asked().mirrored());
    box("finished", f.finished(), "height");
    box("base", f.base(), "thickness");
    boxes("foam", f.foam());
    boxes("wadding", f.wadding());
    boxes("dustCover", f.dustCover());
    cover(f.cover());
    staples(f.staples(), r.staples());
    out.number("standOff", f.standOff());
    gap(f.bareGap());
    out.number("weight", f.weight());
    wrap(r.wrap());
    dome(r.dome());
    corners(r.cover().corners());
    assumptions(r.spec().assumptions());
    findings(out, r.findings());
    out.end();
  }

  private void box(String name, Box b, String third) throws IOException {
    out.object(name).number("length", b.length()).number("width", b.width());
    out.number(third, b.height()).end();
  }

  private void boxes(String name, List<Box> boxes) throws IOException {
    out.array(name);
    for (Box b : boxes) {
      box(null, b, "thickness");
    }
    out.end();
  }

  private void cover(CoverFigures c) throws IOException {
    out.object("cover")
        .number("length", c.length())
        .number("width", c.width())
        .number("perSide", c.perSide())
        .number("area", c.area())
        .number("cutLength", c.cutLength())
        .number("cutWidth", c.cutWidth())
        .number("turnUnder", c.turnUnder())
        .number("grip", c.grip());
    out.object("perSideBySide");
    for (Map.Entry<String, Double> side : c.perSideBySide().entrySet()) {
      out.number(side.getKey(), side.getValue());
    }
    out.end().end();
  }

  private void staples(StapleFigures s, StaplePlan plan) throws IOException {
    out.object("staples")
        .number("leg", s.leg())
        .count("count", s.count())
        .number("spacing", s.spacing())
        .number("largestGap", plan.largestGap());
    depth(s.single());
    out.number("suggestedLeg", s.suggestedLeg());
    out.object("corner");
    depth(s.corner());
    out.end();
    out.array("legs");
    for (LegVerdict v : plan.legs()) {
      out.object(null)
          .text("staple", v.staple())
          .number("leg", v.leg())
          .number("penetration", v.penetration())
          .number("margin", v.margin())
          .number("hold", v.hold());
      out.object("corner").number("margin", v.cornerMargin()).number("hold", v.cornerHold()).end();
      out.flag("passes", v.passes()).text("verdict", v.verdict()).end();
    }
    out.end().end();
  }

  private void depth(StapleDepth d) throws IOException {
    out.count("layers", d.layers())
        .number("penetration", d.penetration())
        .number("margin", d.margin())
        .number("hold", d.hold());
  }

  private void gap(List<Double> bareGap) throws IOException {
    if (bareGap.size() != SIDES.size()) {
      out.nothing("bareGap");
      return;
    }
    out.object("bareGap");
    for (int i = 0; i < SIDES.size(); i++) {
      out.number(SIDES.get(i), bareGap.get(i));
    }
    out.end();
  }

  private void wrap(WrapReport w) throws IOException {
    out.object("wrap")
        .flag("proved", w.proved())
        .number("bareArea", w.bareArea())
        .number("leastTurnUnder", w.leastTurnUnder())
        .number("leastHiding", w.leastHiding())
        .number("worstEase", w.worstEase())
        .number("worstStretch", w.worstStretch())
        .number("worstFlapStrain", w.worstFlapStrain());
    out.array("failures");
    for (String failure : w.failures()) {
      out.text(null, failure);
    }
    out.end().end();
  }

  private void dome(Optional<DomeReport> dome) throws IOException {
    if (dome.isEmpty()) {
      out.nothing("dome");
      return;
    }
    DomeReport d = dome.get();
    out.object("dome").number("surplus", d.surplus());
    if (d.refusal().isPresent()) {
      out.text("unknown", d.refusal().get()).end();
      return;
    }
    out.flag("taken", d.taken()).number("meanStrain", d.mean());
    out.number("stretch", d.stretched().strain()).text("stretchNear", d.stretched().near());
    out.number("stretchTaken", d.stretchTaken());
    out.number("ease", -d.eased().strain()).text("easeNear", d.eased().near());
    out.number("easeTaken", d.easeTaken());
    out.array("seams");
    for (DomeReport.Seam s : d.seams()) {
      out.object(null).text("at", s.corner()).number("length", s.length());
      out.flag("hollow", s.hollow());
      out.number("fromX", s.from().x()).number("fromY", s.from().y());
      out.number("toX", s.to().x()).number("toY", s.to().y()).end();
    }
    out.end();
    if (!d.seams().isEmpty()) {
      out.number("stretchWithSeams", d.leftStretched()).number("easeWithSeams", -d.leftEased());
    }
    out.end();
  }

  private void corners(List<CornerPlan> corners) throws IOException {
    out.array("corners");
    for (CornerPlan c : corners) {
      out.object(null)
          .text("name", c.name())
          .text("treatment", FiguresText.words(c.treatment()))
          .text("reason", c.reason())
          .number("turn", Math.toDegrees(c.turn()))
          .count("count", c.pleats())
          .number("pleatDepth", c.pleatDepth())
          .number("spacing", c.row().spacing())
          .number("mouth", c.row().mouth())
          .number("stop", c.row().stop())
          .number("stretchNeeded", c.stretchNeeded())
          .end();
    }
    out.end();
  }

  private void assumptions(List<Assumption> assumptions) throws IOException {
    out.array("assumptions");
    for (Assumption a : assumptions) {
      assumption(out, a);
    }
    out.end();
  }

  static void assumption(JsonOut out, Assumption a) throws IOException {
    out.object(null)
        .text("field", a.field())
        .text("value", a.value())
        .text("reason", a.reason())
        .text("status", a.status().name().toLowerCase(Locale.ROOT))
        .end();
  }

  static void findings(JsonOut out, List<Finding> findings) throws IOException {
    out.array("findings");
    for (Finding f : findings) {
      out.object(null)
          .text("rule", f.rule())
          .text("level", Sentences.level(f.level()))
          .text("message", f.message())
          .text("source", f.source())
          .number("value", f.value())
          .number("limit", f.limit())
          .text("unit", f.unit())
          .text("remedy", f.remedy())
          .end();
    }
    out.end();
  }
}
