package padwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import padwright.design.OutlineShape.FreePath;
import padwright.design.Units;
import padwright.drawing.DrawingReport;
import padwright.drawing.DrawnOutline;
import padwright.jobfile.OutlineText;
import padwright.measure.LengthText;
import padwright.measure.Sentence;
import padwright.output.Plural;
import padwright.output.Sentences;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reads an outline from a drawing and prints it in the form of a job file. */
@Command(
    name = "outline",
    description =
        "Read an outline from an SVG or DXF drawing: what was read, its size, its points.",
    sortOptions = false,
    footer = {
      "",
      "The largest closed outline is the part's, those inside it may be cut-outs; the rest is left",
      "and named. Put the points into a job file, or start one with new PATTERN --outline DRAWING.",
      "",
      "Example:",
      "  padwright outline seat.svg",
      "  padwright outline seat.dxf --drawn-in in --json"
    })
final class OutlineCommand implements Callable<Integer> {
  private final Streams streams;

  @Parameters(paramLabel = "DRAWING", description = "An SVG or an ASCII DXF file.")
  private Path file;

  @Mixin private DrawingOptions drawing = new DrawingOptions();

  @Option(names = "--json", description = "Print JSON, all lengths in mm.")
  private boolean json;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  private boolean help;

  OutlineCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() throws IOException {
    DrawnOutline drawn = drawing.read(file);
    streams.deliver(json ? asJson(drawn) : asText(drawn));
    return ExitStatus.FINE;
  }

  private CharSequence asText(DrawnOutline drawn) {
    StringBuilder text = new StringBuilder(OutlineWords.report(file, drawn));
    List<OutlineWords.Side> sides = OutlineWords.sides(drawn.outline());
    text.append("Outline ")
        .append(OutlineWords.size(drawn.length(), drawn.width()))
        .append(", ")
        .append(Plural.of(sides.size(), "side"))
        .append('\n');
    for (int k = 0; k < sides.size(); k++) {
      OutlineWords.Side side = sides.get(k);
      String from = point(drawn.outline(), k);
      text.append(
          Sentence.of(
              "  %s%s%s from %s\n",
              Sentences.padded(side.name(), 11),
              Sentences.padded(side.kind(), 10),
              LengthText.mm(side.length()),
              from));
    }
    text.append('\n').append(OutlineText.write(drawn.outline(), Units.MM));
    for (DrawnOutline.Opening o : drawing.openings(drawn)) {
      text.append(
          Sentence.of(
              "\nInside it %s, its middle at x %s, y %s from the outline's middle\n\n",
              OutlineWords.size(o.length(), o.width()),
              Sentence.plain(o.at().x()),
              Sentence.plain(o.at().y())));
      text.append(OutlineText.write(o.path(), Units.MM));
    }
    return text;
  }

  private static String point(FreePath path, int k) {
    return Sentence.of(
        "[%s, %s]",
        Sentence.plain(path.points().get(k).at().x()),
        Sentence.plain(path.points().get(k).at().y()));
  }

  private CharSequence asJson(DrawnOutline drawn) throws IOException {
    DrawingReport report = drawn.report();
    StringBuilder text = new StringBuilder();
    try (JsonOut out = new JsonOut(text)) {
      out.object(null).text("file", file.toString());
      out.text("format", report.format()).text("scale", report.scale());
      out.number("length", drawn.length()).number("width", drawn.width());
      out.document("outline", OutlineText.write(drawn.outline(), Units.MM));
      out.array("sides");
      for (OutlineWords.Side side : OutlineWords.sides(drawn.outline())) {
        out.object(null).text("side", side.name()).text("kind", side.kind());
        out.number("length", side.length()).end();
      }
      out.end().array("openings");
      for (DrawnOutline.Opening o : drawing.openings(drawn)) {
        out.object(null).document("outline", OutlineText.write(o.path(), Units.MM));
        out.number("x", o.at().x()).number("y", o.at().y());
        out.number("length", o.length()).number("width", o.width()).end();
      }
      out.end();
      counts(out, "read", report.read());
      counts(out, "left", report.left());
      out.array("gaps");
      for (double gap : report.gaps()) {
        out.number(null, gap);
      }
      out.end().array("notes");
      for (String note : report.notes()) {
        out.text(null, note);
      }
      out.end().end();
    }
    return text;
  }

  private static void counts(JsonOut out, String name, List<DrawingReport.Count> counts)
      throws IOException {
    out.array(name);
    for (DrawingReport.Count c : counts) {
      out.object(null).count("count", c.count()).text("kind", c.kind());
      out.text("layer", c.layer()).text("why", c.why()).end();
    }
    out.end();
  }
}
