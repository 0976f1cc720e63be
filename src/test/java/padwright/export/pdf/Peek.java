package padwright.export.pdf;

import java.nio.file.*;
import java.util.*;

class Peek {
  public static void main(String[] a) throws Exception {
    try (var o = Files.newOutputStream(Path.of("/tmp/pdfx/tiles.pdf"))) {
      TiledPdf.write(
          List.of(
              Samples.cover(715, 215),
              Samples.cover(150, 120),
              Samples.of(
                  "Circle",
                  new padwright.export.Drawing.Stroke(
                      padwright.geometry.Path.circle(new padwright.geometry.Vec2(0, 0), 230),
                      padwright.export.Drawing.LineStyle.CUT))),
          Samples.A4,
          new PrintCorrection(99, 101),
          Samples.HEADER,
          o);
    }
    try (var o = Files.newOutputStream(Path.of("/tmp/pdfx/roll.pdf"))) {
      TiledPdf.write(
          List.of(Samples.cover(5600, 515)),
          Samples.ROLL,
          PrintCorrection.none(),
          Samples.HEADER,
          o);
    }
  }
}
