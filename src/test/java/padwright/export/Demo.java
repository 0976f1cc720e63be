package padwright.export;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import padwright.design.Job;
import padwright.jobfile.JobReader;
import padwright.material.Catalogue;
import padwright.material.CatalogueReader;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternSet;

/** The demo job worked out, for drawings of real results. */
final class Demo {
  private Demo() {}

  static PatternSet set() {
    Catalogue catalogue = CatalogueReader.builtIn();
    Job job = new JobReader(catalogue).read(Path.of("demo", "reading-nook.json"));
    return new PatternEngine(catalogue).run(job);
  }

  static PartHeader header(PatternSet set, PartResult r) {
    return new PartHeader(
        set.job().title(),
        r.asked().name(),
        r.asked().id(),
        r.asked().quantity(),
        r.asked().mirrored(),
        "2026-03-14",
        set.job().units());
  }

  /** Every piece of every part, both hands. */
  static List<Drawing> pieces() {
    PatternSet set = set();
    List<Drawing> list = new ArrayList<>();
    for (PartResult r : set.parts()) {
      PartHeader h = header(set, r);
      for (PatternPiece p : r.pieces()) {
        list.add(PieceDrawing.of(h, p));
        PieceDrawing.mirroredHand(h, p).ifPresent(list::add);
      }
    }
    return list;
  }

  /** Sections and corner diagrams. */
  static List<Drawing> pictures() {
    PatternSet set = set();
    List<Drawing> list = new ArrayList<>();
    for (PartResult r : set.parts()) {
      PartHeader h = header(set, r);
      list.add(PartSections.usual(h, r));
      list.add(WrapMap.of(h, r));
      CornerDiagram.all(h, r).forEach(d -> list.add(d.drawing()));
    }
    return list;
  }
}
