package padwright.export;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class LookTest {
  @Test
  void look() throws Exception {
    Path dir = Path.of("target/look");
    Files.createDirectories(dir);
    save(dir, "base600", PieceDrawing.of(Pieces.HEADER, Pieces.base(600, 60, 25)));
    save(dir, "base48", PieceDrawing.of(Pieces.HEADER, Pieces.base(300, 40, 20)));
    save(dir, "base40tall", PieceDrawing.of(Pieces.HEADER, Pieces.base(40, 300, 20)));
    save(dir, "base40sq", PieceDrawing.of(Pieces.HEADER, Pieces.base(60, 60, 20)));
    save(dir, "cover600", PieceDrawing.of(Pieces.HEADER, Pieces.cover(600, 60, 57.57, false)));
    save(dir, "cover400", PieceDrawing.of(Pieces.HEADER, Pieces.cover(400, 380, 80, true)));
    save(dir, "round320", PieceDrawing.of(Pieces.HEADER, Pieces.round(320, 70, true)));
    save(dir, "sec-a", Sections.rest(new padwright.design.EdgeShape.Round(6), 3, 0));
    save(dir, "sec-b", Sections.rest(new padwright.design.EdgeShape.FullRound(), -4, 6));
    padwright.design.PadSpec big =
        Sections.spec(
            18,
            java.util.List.of(
                new padwright.shape.Stack.Layer(50, 6), new padwright.shape.Stack.Layer(50, 12)),
            new padwright.design.EdgeShape.Bevel(15),
            8,
            1.6,
            45);
    save(
        dir,
        "sec-c",
        SectionDrawing.of(
            Pieces.HEADER,
            Sections.section(big),
            big,
            new SectionDrawing.Facts(18 + 100 + 8 + 1.6, 1.6, 12, 10.4, 6.7)));
    for (var e : Results.ALL.entrySet()) {
      int i = 0;
      for (Drawing d : CornerDiagram.all(Pieces.HEADER, e.getValue())) {
        save(dir, "corner-" + e.getKey() + i++, d);
      }
    }
    var catalogue = padwright.material.CatalogueReader.builtIn();
    var job = new padwright.jobfile.JobReader(catalogue).read(Path.of("demo/reading-nook.json"));
    var set = new padwright.pattern.PatternEngine(catalogue).run(job);
    for (var r : set.parts()) {
      PartHeader h =
          new PartHeader(
              job.title(),
              r.asked().name(),
              r.asked().id(),
              r.asked().quantity(),
              r.asked().mirrored(),
              "2026-03-14",
              job.units());
      for (var p : r.pieces()) {
        save(dir, "demo-" + h.partId() + "-" + p.id(), PieceDrawing.of(h, p));
      }
      save(dir, "demo-" + h.partId() + "-section", SectionDrawing.of(h, r));
      int i = 0;
      for (Drawing d : CornerDiagram.all(h, r)) {
        save(dir, "demo-" + h.partId() + "-corner" + i++, d);
      }
    }
    long t = 0;
    for (int k = 0; k < 5; k++) {
      t = System.nanoTime();
      for (int i = 0; i < 300; i++) {
        SvgWriter.write(PieceDrawing.of(Pieces.HEADER, Pieces.cover(600, 60, 57.57, false)));
      }
      System.out.println("cover us " + (System.nanoTime() - t) / 300000);
      t = System.nanoTime();
      for (int i = 0; i < 300; i++) {
        SvgWriter.write(PieceDrawing.of(Pieces.HEADER, Pieces.base(600, 60, 25)));
      }
      System.out.println("base us " + (System.nanoTime() - t) / 300000);
      t = System.nanoTime();
      for (int i = 0; i < 300; i++) {
        SvgWriter.write(PieceDrawing.of(Pieces.HEADER, Pieces.round(320, 70, true)));
      }
      System.out.println("round us " + (System.nanoTime() - t) / 300000);
    }
  }

  static void save(Path dir, String name, Drawing d) throws Exception {
    Files.writeString(dir.resolve(name + ".svg"), SvgWriter.write(d));
  }
}
