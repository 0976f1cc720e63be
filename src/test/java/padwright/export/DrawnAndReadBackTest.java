package padwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import padwright.design.Job;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.export.pdf.PartPdf;
import padwright.export.pdf.PrintCorrection;
import padwright.export.pdf.ReadBack;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.material.Paper;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternPiece.LineKind;
import padwright.pattern.PatternSet;
import padwright.pattern.RandomPads;

/**
 * Three hundred parts by seed, worked out, drawn and read back by readers that share no code with
 * the writers: the SVG by the formulas of SVG 1.1, appendix F, the PDF by PDFBox's content stream
 * engine, labels by the Java platform's fonts and JTS.
 */
class DrawnAndReadBackTest {
  private static final long SEED = 300_2026;
  private static final int PARTS = 300;

  /** Every so many parts are printed as well. */
  private static final int PRINTED = 8;

  private static final List<String> PAPERS = List.of("a4", "letter", "a3", "a0", "roll-914");

  /** What a maker could measure on the drawing, with a hundredth of a millimetre to spare. */
  private static final double TOLERANCE = 0.01;

  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

  private static List<PartResult> parts;

  @BeforeAll
  static void workOut() {
    RandomPads random = new RandomPads(SEED);
    List<Pads> asked = new ArrayList<>();
    for (int i = 0; i < PARTS; i++) {
      asked.add(random.next());
    }
    parts = asked.parallelStream().map(Pads::run).toList();
  }

  private static PartHeader header(PartResult r) {
    WrappedPad pad = r.asked();
    return new PartHeader("Three hundred", pad.name(), pad.id(), 1, 0, DAY.toString(), Units.MM);
  }

  @Test
  void everyLineOfEverySvgIsAsLongAsTheModels() {
    IntStream.range(0, PARTS).parallel().forEach(i -> svg("part " + i, parts.get(i)));
    assertThat(parts.stream().filter(r -> r.spec().stretchX() > 0).count())
        .as("parts with a stretch allowance")
        .isGreaterThan(20);
  }

  private static void svg(String part, PartResult result) {
    for (PatternPiece p : result.pieces()) {
      String what = part + ", " + p.id();
      SvgBack svg = new SvgBack(SvgWriter.write(PieceDrawing.of(header(result), p)));
      length(what, svg, "cut-line", p.cutLine().length());
      length(what, svg, "inner-cuts", p.innerCuts().stream().mapToDouble(Path::length).sum());
      length(what, svg, "trim-line", model(p, LineKind.TRIM));
      length(what, svg, "fold-lines", model(p, LineKind.FOLD));
      length(what, svg, "staple-line", model(p, LineKind.STAPLE));
      length(what, svg, "relief-cuts", model(p, LineKind.RELIEF));
    }
    // Pictures have no lengths to keep, but must be whole files all the same.
    assertThat(new SvgBack(SvgWriter.write(PartSections.usual(header(result), result))).texts)
        .isNotEmpty();
    for (NamedDrawing corner : CornerDiagram.all(header(result), result)) {
      assertThat(new SvgBack(SvgWriter.write(corner.drawing())).texts).contains("1", "5");
    }
  }

  private static void length(String what, SvgBack svg, String group, double model) {
    assertThat(svg.length(group)).as("%s: %s", what, group).isCloseTo(model, within(TOLERANCE));
  }

  private static double model(PatternPiece p, LineKind kind) {
    return p.lines().stream()
        .filter(l -> l.kind() == kind)
        .mapToDouble(l -> l.path().length())
        .sum();
  }

  /** Undone by hand: each straight stretch of the cut line, shortened axis by axis. */
  @Test
  void theStretchAllowanceIsInTheDrawnCutLine() {
    int checked = 0;
    for (PartResult r : parts) {
      double kx = 1 - r.spec().stretchX();
      double ky = 1 - r.spec().stretchY();
      if (kx == 1 && ky == 1 || r.cover().cut().segments().stream().anyMatch(Segment::isArc)) {
        continue;
      }
      double sum = 0;
      for (Segment s : r.cover().cut().segments()) {
        Vec2 d = s.end().minus(s.start());
        sum += Math.hypot(kx * d.x(), ky * d.y());
      }
      PatternPiece cover =
          r.pieces().stream().filter(p -> p.kind() == PatternPiece.Kind.COVER).findFirst().get();
      SvgBack svg = new SvgBack(SvgWriter.write(PieceDrawing.of(header(r), cover)));
      length(r.asked().base().outline().toString(), svg, "cut-line", sum);
      checked++;
    }
    assertThat(checked).isGreaterThan(10);
  }

  @Test
  void noLabelOfAnyPieceTouchesALineOrAnotherLabel() {
    IntStream.range(0, PARTS)
        .parallel()
        .forEach(
            i -> {
              PartResult r = parts.get(i);
              for (PatternPiece p : r.pieces()) {
                LabelInk.check("part " + i + ", " + p.id(), PieceDrawing.of(header(r), p));
              }
            });
  }

  @Test
  void everyCutLineOfTheirPdfsIsAsLongAsTheModelsAndLeavesNothingUnprinted() {
    IntStream.range(0, PARTS / PRINTED)
        .parallel()
        .forEach(
            i -> {
              try {
                pdf(parts.get(i * PRINTED), PAPERS.get(i % PAPERS.size()));
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            });
  }

  private static void pdf(PartResult result, String paper) throws IOException {
    Paper sheet = Pads.CATALOGUE.paper(paper).orElseThrow();
    Job job =
        new Job(
            "Three hundred",
            Optional.empty(),
            Optional.of(DAY.toString()),
            Units.MM,
            List.of(result.asked()));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PartPdf.write(
        new PatternSet(job, List.of(result)), result, sheet, PrintCorrection.none(), DAY, out);
    try (PDDocument d = Loader.loadPDF(out.toByteArray())) {
      List<Page> pages = new ArrayList<>();
      for (int i = 0; i < d.getNumberOfPages(); i++) {
        pages.add(new Page(ReadBack.words(d, i + 1), ReadBack.lines(d.getPage(i))));
      }
      for (PatternPiece p : result.pieces()) {
        String title = (result.asked().name() + ":" + p.name()).replace(" ", "");
        printed(
            paper + ", " + p.id() + " of " + result.asked().base().outline(),
            p,
            pages.stream().filter(g -> g.words.contains(title)).toList());
      }
    }
  }

  private record Page(String words, List<ReadBack.Line> lines) {}

  /** Each sheet carries the whole cut line behind its window; together the windows show all. */
  private static void printed(String what, PatternPiece piece, List<Page> pages) {
    // Another line of the piece may be as long: lines are told apart by their number of points.
    Map<Integer, BitSet> shown = new HashMap<>();
    for (Page page : pages) {
      for (ReadBack.Line line : page.lines) {
        if (isCutLine(line, piece)) {
          BitSet seen = shown.computeIfAbsent(line.points().size(), k -> new BitSet());
          for (int k = 0; k < line.points().size(); k++) {
            if (line.window() == null || line.window().contains(line.points().get(k))) {
              seen.set(k);
            }
          }
        }
      }
    }
    assertThat(shown)
        .as("%s: lines %.4f long on its %d pages", what, piece.cutLine().length(), pages.size())
        .isNotEmpty();
    assertThat(shown)
        .as("%s: points of the cut line that are printed", what)
        .anySatisfy((points, seen) -> assertThat(seen.cardinality()).isEqualTo(points));
  }

  private static boolean isCutLine(ReadBack.Line line, PatternPiece piece) {
    if (Math.abs(line.length() - piece.cutLine().length()) > TOLERANCE) {
      return false;
    }
    Bounds drawn = line.bounds();
    Bounds model = piece.cutLine().bounds();
    boolean turned = Math.abs(drawn.width() - model.width()) > TOLERANCE;
    return Math.abs((turned ? drawn.height() : drawn.width()) - model.width()) < TOLERANCE
        && Math.abs((turned ? drawn.width() : drawn.height()) - model.height()) < TOLERANCE;
  }
}
