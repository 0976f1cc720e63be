package padwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import padwright.export.Drawing;
import padwright.export.Lettering;
import padwright.export.PageDrawing;
import padwright.export.PartHeader;
import padwright.export.PieceDrawing;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;
import padwright.jobfile.JobReader;
import padwright.material.Catalogue;
import padwright.material.CatalogueReader;
import padwright.material.Paper;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternSet;

/** What is written on a pattern of several sheets can be read once they are taped. */
class WordsOffJoinsTest {
  @Test
  void noWordOfTheDemoLiesAcrossAJoinAndEveryStapleNumberIsWholeOnOneSheet() throws IOException {
    int numbers = 0;
    int words = 0;
    for (Paper paper : List.of(Samples.A4, Samples.LETTER)) {
      for (TiledPdf.Laid laid : laid(paper)) {
        for (Drawing.Item item : laid.drawing().items()) {
          if (item instanceof Drawing.Text t && crossed(t, laid)) {
            assertThat(t.text()).as(laid.drawing().title()).matches("\\d+");
            assertThat(laid.tiling().tiles())
                .as(laid.drawing().title() + ": " + t.text())
                .anyMatch(tile -> within(tile.window(), box(t)));
            numbers++;
          } else if (item instanceof Drawing.Text) {
            words++;
          }
        }
      }
    }
    assertThat(words).isGreaterThan(500);
    assertThat(numbers).isLessThan(words / 100);
  }

  /** No beginning or end of a word is left in a strip; what says how to join is whole, too. */
  @Test
  void everySheetPrintsWholeWordsAndWholeNotes() throws IOException {
    int notes = 0;
    try (PDDocument d = new PDDocument()) {
      Typeface face = new Typeface(d);
      for (Paper paper : List.of(Samples.A4, Samples.LETTER)) {
        for (TiledPdf.Laid laid : laid(paper, face)) {
          TilePage page = new TilePage(laid.drawing(), laid.ink(), laid.tiling(), laid.joints());
          for (Drawing.Item item : laid.drawing().items()) {
            if (!(item instanceof Drawing.Text t) || t.text().isBlank()) {
              continue;
            }
            Bounds box = Ink.frame(t, face).bounds();
            List<Tile> shown =
                laid.tiling().tiles().stream().filter(tile -> page.shows(face, t, tile)).toList();
            assertThat(shown).as(t.text()).isNotEmpty();
            if (!crossed(t, laid)) {
              assertThat(shown).as(t.text()).allMatch(tile -> within(tile.window(), box));
            }
          }
          for (Joint j : laid.joints()) {
            for (Tile tile : List.of(j.under(), j.over())) {
              var note = page.note(face, j, tile);
              notes += note.isPresent() ? 1 : 0;
              note.ifPresent(
                  t -> {
                    Bounds box = Ink.frame(t, face).bounds();
                    assertThat(within(tile.window(), box)).as(t.text()).isTrue();
                    assertThat(j.line().bounds().overlaps(box)).as(t.text()).isFalse();
                  });
            }
          }
        }
      }
    }
    assertThat(notes).isGreaterThan(100);
  }

  /** The grid that was chosen first is kept: moving words costs no sheet. */
  @Test
  void movingWordsTakesNoMoreSheets() throws IOException {
    try (PDDocument d = new PDDocument()) {
      Typeface face = new Typeface(d);
      for (PageDrawing piece : pieces()) {
        Ink ink = new Ink(piece.clearOf(List.of()), face);
        Tiling fixed = Tiling.best(ink, Samples.A4, PrintCorrection.none());
        Tiling moved = TiledPdf.Laid.out(piece, face, Samples.A4, PrintCorrection.none()).tiling();
        assertThat(moved.tiles().size()).isLessThanOrEqualTo(fixed.tiles().size());
      }
    }
  }

  private static boolean crossed(Drawing.Text t, TiledPdf.Laid laid) {
    Bounds b = box(t);
    return laid.joints().stream().anyMatch(j -> j.line().bounds().overlaps(b));
  }

  private static boolean within(Bounds outer, Bounds b) {
    return outer.contains(new Vec2(b.minX(), b.minY()))
        && outer.contains(new Vec2(b.maxX(), b.maxY()));
  }

  private static Bounds box(Drawing.Text t) {
    return Lettering.box(t).bounds();
  }

  private static List<TiledPdf.Laid> laid(Paper paper) throws IOException {
    try (PDDocument d = new PDDocument()) {
      return laid(paper, new Typeface(d));
    }
  }

  private static List<TiledPdf.Laid> laid(Paper paper, Typeface face) {
    List<TiledPdf.Laid> list = new ArrayList<>();
    for (PageDrawing piece : pieces()) {
      list.add(TiledPdf.Laid.out(piece, face, paper, PrintCorrection.none()));
    }
    return list;
  }

  private static List<PageDrawing> pieces() {
    Catalogue catalogue = CatalogueReader.builtIn();
    PatternSet set =
        new PatternEngine(catalogue)
            .run(new JobReader(catalogue).read(Path.of("demo", "reading-nook.json")));
    List<PageDrawing> list = new ArrayList<>();
    for (PartResult r : set.parts()) {
      PartHeader h =
          new PartHeader(
              "Nook", r.asked().name(), r.asked().id(), 1, 0, "2026-03-14", set.job().units());
      for (PatternPiece p : r.pieces()) {
        list.addAll(PieceDrawing.forPages(h, p));
      }
    }
    return list;
  }
}
