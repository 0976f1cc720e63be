package padwright.cli;

import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.FoamLayer;
import padwright.design.WrappedPad.WaddingLayer;
import padwright.pattern.Figures.Box;
import padwright.pattern.FitAnswer;
import padwright.pattern.FitResult;
import padwright.pattern.HeightFit;

/** Make-ups for a finished height as JSON, mm at full precision. Names are added, never renamed. */
final class FitJson {
  private final JsonOut out;

  private FitJson(JsonOut out) {
    this.out = out;
  }

  /**
   * @param file where the answer {@code saved} was written; empty where none was
   */
  static CharSequence of(FitResult r, String file, int saved) throws IOException {
    StringBuilder text = new StringBuilder();
    try (JsonOut out = new JsonOut(text)) {
      new FitJson(out).document(r, file, saved);
    }
    return text;
  }

  private void document(FitResult r, String file, int saved) throws IOException {
    out.object(null).text("part", r.start().id()).text("name", r.start().name());
    out.number("height", r.wish().height());
    out.text("size", r.start().base().size().name().toLowerCase(Locale.ROOT));
    out.number("least", r.least()).number("most", r.most());
    out.number("sheetTolerance", HeightFit.tolerance());
    out.array("answers");
    int k = 0;
    for (FitAnswer a : r.answers()) {
      answer(a, ++k);
    }
    out.end().array("rejected");
    for (FitResult.Rejected rejected : r.rejected()) {
      out.object(null).number("error", rejected.error()).count("sheets", rejected.sheets());
      makeUp(rejected.pad());
      FiguresJson.findings(out, rejected.stops());
      if (rejected.refusal().isEmpty()) {
        out.nothing("refusal");
      } else {
        out.text("refusal", rejected.refusal());
      }
      out.end();
    }
    out.end();
    if (file.isEmpty()) {
      out.nothing("saved");
    } else {
      out.object("saved").text("file", file).count("answer", saved).end();
    }
    out.end();
  }

  private void answer(FitAnswer a, int number) throws IOException {
    out.object(null).count("answer", number).number("error", a.error());
    out.flag("withinSheetTolerance", a.withinTolerance()).count("sheets", a.sheets());
    out.flag("asItStands", a.asItStands()).array("changed");
    for (FitAnswer.Change c : a.changed().stream().sorted().toList()) {
      out.text(null, c.name().toLowerCase(Locale.ROOT));
    }
    out.end().number("errorWithFewerSheets", a.fewer());
    makeUp(a.pad());
    box("finished", a.result().figures().finished(), "height");
    box("base", a.result().figures().base(), "thickness");
    FiguresJson.findings(out, a.result().findings());
    out.end();
  }

  private void makeUp(WrappedPad pad) throws IOException {
    out.object("board").text("board", pad.base().board());
    out.number("thickness", pad.base().thickness()).end();
    out.array("foam");
    for (FoamLayer f : pad.foam()) {
      out.object(null).text("foam", f.foam()).number("thickness", f.thickness());
      out.number("overhang", f.overhang()).end();
    }
    out.end();
    Optional<WaddingLayer> wadding = pad.wadding();
    if (wadding.isEmpty()) {
      out.nothing("wadding");
    } else {
      out.object("wadding").text("wadding", wadding.get().wadding());
      out.number("thickness", wadding.get().thickness()).end();
    }
  }

  private void box(String name, Box b, String third) throws IOException {
    out.object(name).number("length", b.length()).number("width", b.width());
    out.number(third, b.height()).end();
  }
}
