package padwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.apache.batik.transcoder.image.PNGTranscoder;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padwright.design.EdgeShape;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.export.Drawing.Text;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;

/** SVG files as readers that are not ours see them: xmllint with the W3C's DTD, and Batik. */
class SvgReadersTest {
  @TempDir Path dir;

  private static List<String> everyKind() {
    List<Drawing> list = new ArrayList<>();
    RandomPieces.some(40).forEach(p -> list.add(PieceDrawing.of(Pieces.HEADER, p)));
    list.add(Sections.rest(new EdgeShape.Round(6), 3, 0));
    list.add(Sections.rest(new EdgeShape.FullRound(), -4, 6));
    for (var result : Results.ALL.values()) {
      CornerDiagram.all(Pieces.HEADER, result).forEach(d -> list.add(d.drawing()));
    }
    list.addAll(Demo.pieces());
    list.addAll(Demo.pictures());
    return list.stream().map(SvgWriter::write).toList();
  }

  /** The DTD of SVG 1.1 (REC-SVG11-20110816) as the package w3c-sgml-lib brings it. */
  private static Optional<Path> dtd() throws IOException {
    Path lib = Path.of("/usr/share/xml/w3c-sgml-lib");
    if (!Files.isDirectory(lib)) {
      return Optional.empty();
    }
    try (Stream<Path> files = Files.walk(lib)) {
      return files.filter(f -> f.endsWith(Path.of("REC-SVG11-20110816", "svg11.dtd"))).findFirst();
    }
  }

  @Test
  void everyDrawingIsValidSvgElevenByTheDtd() throws Exception {
    Optional<Path> dtd = dtd();
    Assumptions.assumeTrue(
        dtd.isPresent() && runs("xmllint", "--version"),
        "xmllint and the SVG 1.1 DTD are not here (packages libxml2-utils, w3c-sgml-lib)");
    List<String> command =
        new ArrayList<>(
            List.of("xmllint", "--nonet", "--noout", "--dtdvalid", dtd.get().toString()));
    int i = 0;
    for (String svg : everyKind()) {
      Path file = dir.resolve("drawing-" + i++ + ".svg");
      Files.writeString(file, svg);
      command.add(file.toString());
    }
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
  }

  private static boolean runs(String... command) throws InterruptedException {
    try {
      return new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start()
              .waitFor()
          == 0;
    } catch (IOException e) {
      return false;
    }
  }

  /** A tenth of a millimetre a pixel: the check line must be 1000 pixels long, give or take one. */
  @Test
  void aHundredMillimetresMeasureAHundredOnARaster() throws Exception {
    for (double angle : new double[] {0, Math.PI / 2}) {
      CheckLine check = new CheckLine();
      Box box = new Box(new Vec2(60, 60), check.width(), check.height(), angle);
      List<Drawing.Item> line = check.drawn(box).stream().filter(Stroke.class::isInstance).toList();
      BufferedImage image =
          raster(SvgWriter.write(new Drawing("check", new Bounds(0, 0, 120, 120), line)), 0.1f);
      assertThat(image.getWidth()).isEqualTo(1200);
      boolean level = angle == 0;
      int first = Integer.MAX_VALUE;
      int last = 0;
      for (int x = 0; x < 1200; x++) {
        for (int y = 0; y < 1200; y++) {
          if ((image.getRGB(x, y) & 0xFF) < 128) {
            int at = level ? x : y;
            first = Math.min(first, at);
            last = Math.max(last, at);
          }
        }
      }
      // From the outside of one tick to the outside of the other: 100 mm and the line's width.
      double width = LineStyle.CHECK.width();
      assertThat((last - first + 1) * 0.1).isCloseTo(100 + width, within(0.2));
    }
  }

  @Test
  void everyDrawingCanBeRasterisedAndIsNotEmpty() throws Exception {
    List<String> all = everyKind();
    for (String svg : all.subList(30, all.size())) {
      BufferedImage image = raster(svg, 1f);
      int dark = 0;
      for (int x = 0; x < image.getWidth(); x++) {
        for (int y = 0; y < image.getHeight(); y++) {
          dark += (image.getRGB(x, y) & 0xFF) < 200 ? 1 : 0;
        }
      }
      assertThat(dark).isGreaterThan(100);
    }
  }

  private static BufferedImage raster(String svg, float mmPerPixel) throws Exception {
    PNGTranscoder coder = new PNGTranscoder();
    coder.addTranscodingHint(SVGAbstractTranscoder.KEY_PIXEL_UNIT_TO_MILLIMETER, mmPerPixel);
    coder.addTranscodingHint(ImageTranscoder.KEY_BACKGROUND_COLOR, java.awt.Color.WHITE);
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    coder.transcode(new TranscoderInput(new StringReader(svg)), new TranscoderOutput(png));
    return ImageIO.read(new ByteArrayInputStream(png.toByteArray()));
  }

  @Test
  void anyTextSurvivesTheFile() {
    String nasty = "A & B <c> \"d\" 'e' \u00e9\u00f8 \ud83d\ude00 ]]>";
    Drawing d =
        new Drawing(
            nasty,
            nasty,
            new Bounds(0, 0, 10, 10),
            List.of(new Text(Vec2.ZERO, 3.5, 0, Anchor.START, false, nasty + "\u0001\ud800")));
    assertThat(new SvgBack(SvgWriter.write(d)).texts).containsExactly(nasty + "??");
  }

  @Test
  void theMachinesLanguageDoesNotChangeTheFile() {
    Locale before = Locale.getDefault();
    try {
      List<String> files = new ArrayList<>();
      for (String tag : List.of("en-GB", "de-DE", "ar-EG", "tr-TR")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        files.add(SvgWriter.write(PieceDrawing.of(Pieces.HEADER, Pieces.base(601.7, 60.3, 25))));
        files.add(SvgWriter.write(Sections.rest(new EdgeShape.Bevel(6), 3, 2)));
      }
      for (int i = 2; i < files.size(); i++) {
        assertThat(files.get(i)).isEqualTo(files.get(i % 2));
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void aNumberThatIsNoneIsRefused() {
    Drawing d =
        new Drawing(
            "nan",
            new Bounds(0, 0, 10, 10),
            List.of(
                new Stroke(
                    padwright.geometry.Path.line(Vec2.ZERO, new Vec2(Double.NaN, 1)),
                    LineStyle.CUT)));
    assertThatThrownBy(() -> SvgWriter.write(d)).hasMessageContaining("NaN");
  }
}
