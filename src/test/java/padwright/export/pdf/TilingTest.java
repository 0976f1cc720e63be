package padwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import padwright.export.Drawing;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.geometry.Affine;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.material.Paper;

class TilingTest {
  private static final long SEED = 20260314;
  private static final List<Paper> PAPERS =
      List.of(Samples.A4, Samples.A3, Samples.LETTER, Samples.TABLOID, Samples.A0, Samples.ROLL);

  /** Runs over many random pieces, papers and printers. */
  private interface Case {
    void check(Drawing drawing, Ink ink, Tiling tiling);
  }

  private static void each(int times, Case c) throws IOException {
    Random r = new Random(SEED);
    try (PDDocument d = new PDDocument()) {
      Typeface face = new Typeface(d);
      for (int i = 0; i < times; i++) {
        Drawing drawing = Samples.random(r, 30 + r.nextInt(1200), 30 + r.nextInt(800));
        PrintCorrection correction =
            i % 3 == 0
                ? PrintCorrection.none()
                : new PrintCorrection(97 + 6 * r.nextDouble(), 97 + 6 * r.nextDouble());
        Ink ink = new Ink(drawing, face);
        c.check(drawing, ink, Tiling.best(ink, PAPERS.get(i % PAPERS.size()), correction));
      }
    }
  }

  @Test
  void every_point_of_every_line_is_on_a_tile_and_stays_when_the_tiles_are_trimmed()
      throws IOException {
    each(
        120,
        (drawing, ink, tiling) -> {
          for (Drawing.Item item : drawing.items()) {
            if (item instanceof Stroke s) {
              for (Vec2 p : s.path().flattened(0.5)) {
                assertThat(tiling.tiles()).anyMatch(t -> t.cell().contains(p));
                assertThat(tiling.tiles()).anyMatch(t -> t.window().contains(p));
              }
            }
          }
        });
  }

  @Test
  void neighbours_overlap_by_10_mm_and_their_trimmed_edges_meet() throws IOException {
    each(
        60,
        (drawing, ink, tiling) -> {
          for (Tile t : tiling.tiles()) {
            tiling
                .at(t.row(), t.column() + 1)
                .ifPresent(
                    o -> {
                      assertThat(t.window().maxX() - o.window().minX()).isCloseTo(10, within(1e-6));
                      assertThat(t.cell().maxX()).isCloseTo(o.cell().minX(), within(1e-6));
                    });
            tiling
                .at(t.row() + 1, t.column())
                .ifPresent(
                    o -> {
                      assertThat(o.window().maxY() - t.window().minY()).isCloseTo(10, within(1e-6));
                      assertThat(t.cell().minY()).isCloseTo(o.cell().maxY(), within(1e-6));
                    });
          }
        });
  }

  @Test
  void no_tile_is_empty_and_none_is_printed_twice() throws IOException {
    each(
        60,
        (drawing, ink, tiling) -> {
          assertThat(tiling.tiles()).allMatch(t -> ink.touches(t.window()));
          Set<String> labels = new HashSet<>();
          assertThat(tiling.tiles()).allMatch(t -> labels.add(t.label()));
        });
  }

  @Test
  void a_large_ring_leaves_out_the_sheets_inside_it() throws IOException {
    try (PDDocument d = new PDDocument()) {
      Drawing ring = Samples.of("Ring", new Stroke(Path.circle(Vec2.ZERO, 700), LineStyle.CUT));
      Tiling t = Tiling.best(new Ink(ring, new Typeface(d)), Samples.A4, PrintCorrection.none());
      assertThat(t.tiles().size()).isLessThan(t.rows() * t.columns());
    }
  }

  @Test
  void marks_have_a_letter_each_and_stand_on_the_trim_line_inside_both_sheets() throws IOException {
    each(
        60,
        (drawing, ink, tiling) -> {
          Set<String> letters = new HashSet<>();
          for (Joint j : Joint.of(tiling, ink)) {
            assertThat(j.marks()).hasSize(2);
            for (Joint.Mark m : j.marks()) {
              assertThat(letters.add(m.label())).isTrue();
              Bounds whole = Joint.room(m.at(), j.upright()).grown(-1e-6);
              for (Tile t : List.of(j.under(), j.over())) {
                assertThat(t.window().contains(new Vec2(whole.minX(), whole.minY()))).isTrue();
                assertThat(t.window().contains(new Vec2(whole.maxX(), whole.maxY()))).isTrue();
              }
              double off =
                  j.upright()
                      ? m.at().x() - j.under().cell().maxX()
                      : m.at().y() - j.under().cell().minY();
              assertThat(off).isCloseTo(0, within(1e-9));
            }
          }
        });
  }

  @Test
  void marks_read_back_from_the_pages_coincide_on_the_piece() throws IOException {
    Drawing cover = Samples.cover(700, 500);
    try (PDDocument d = ReadBack.open(List.of(cover), Samples.A4, PrintCorrection.none())) {
      Tiling tiling =
          Tiling.best(new Ink(cover, new Typeface(d)), Samples.A4, PrintCorrection.none());
      List<Vec2> marks = new ArrayList<>();
      for (int i = 0; i < tiling.tiles().size(); i++) {
        Affine onPage = tiling.sheet().frame().after(tiling.place(tiling.tiles().get(i)));
        for (ReadBack.Line l : ReadBack.lines(d.getPage(i + 1))) {
          // The rings of the marks: circles of radius 2.
          if (Math.abs(l.length() - 4 * Math.PI) < 0.01 && l.points().size() > 100) {
            marks.add(onPiece(onPage, l.bounds().centre()));
          }
        }
      }
      int joints = Joint.of(tiling, new Ink(cover, new Typeface(d))).size();
      assertThat(joints).isGreaterThan(4);
      assertThat(marks).hasSize(joints * 2 * 2);
      for (Vec2 m : marks) {
        assertThat(marks.stream().filter(o -> o.distance(m) < 0.005)).hasSize(2);
      }
    }
  }

  /** Undoes a map that only turns, scales evenly and moves; page mm to piece mm. */
  private static Vec2 onPiece(Affine m, Vec2 pageMm) {
    Vec2 p = pageMm.times(72 / 25.4).minus(new Vec2(m.e(), m.f()));
    double det = m.a() * m.d() - m.b() * m.c();
    return new Vec2((m.d() * p.x() - m.c() * p.y()) / det, (m.a() * p.y() - m.b() * p.x()) / det);
  }
}
