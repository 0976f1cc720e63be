package padwright.desk.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Paths;
import java.util.List;
import org.junit.jupiter.api.Test;
import padwright.design.Job;
import padwright.desk.view.Measure.Kind;
import padwright.export.PartHeader;
import padwright.export.PieceDrawing;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.jobfile.JobReader;
import padwright.material.Catalogue;
import padwright.material.CatalogueReader;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;
import padwright.pattern.PatternPiece;

class PiecePlaceTest {
  @Test
  void every_staple_of_the_demo_is_measured_where_it_is_drawn() {
    Catalogue catalogue = CatalogueReader.builtIn();
    Job job = new JobReader(catalogue).read(Paths.get("demo", "reading-nook.json"));
    PartResult r = new PatternEngine(catalogue).run(job.parts().get(0));
    PartHeader header = new PartHeader("", r.asked().name(), "p", 1, 0, "", job.units());
    int staples = 0;
    for (PatternPiece piece : r.pieces()) {
      Measure m = Measure.of(PieceDrawing.of(header, piece));
      for (PatternPiece.StapleMark s : piece.staples()) {
        Measure.Place p = m.snap(PiecePlace.drawn(piece, s.at()), 0.02);
        assertThat(p.kind()).isEqualTo(Kind.STAPLE);
        assertThat(p.at().distance(PiecePlace.drawn(piece, s.at()))).isLessThan(1e-9);
        staples++;
      }
      Bounds drawn = PiecePlace.drawn(piece, piece.cutLine()).bounds();
      assertThat(drawn.width()).isEqualTo(piece.cutLine().bounds().width());
    }
    assertThat(staples).isGreaterThan(20);
  }

  @Test
  void a_highlight_is_as_large_as_all_it_points_at() {
    Highlight h =
        new Highlight(List.of(new Vec2(-5, 0)), List.of(Path.circle(new Vec2(10, 10), 5)));
    Bounds b = h.bounds().orElseThrow();
    assertThat(b.minX()).isEqualTo(-5);
    assertThat(b.maxX()).isEqualTo(15);
    assertThat(b.maxY()).isEqualTo(15);
    assertThat(Highlight.NONE.bounds()).isEmpty();
  }
}
