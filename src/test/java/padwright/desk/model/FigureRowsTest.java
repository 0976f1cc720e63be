package padwright.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import padwright.design.Units;
import padwright.desk.edit.Shipped;
import padwright.desk.model.FigureRows.Row;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;

/** The figures as rows, against sums done by hand from the demo's own sizes. */
class FigureRowsTest {
  private static PartResult result(String id) {
    return new PatternEngine(Shipped.CATALOGUE).run(Shipped.demo(id));
  }

  private static Row row(List<Row> rows, String what) {
    return rows.stream().filter(r -> r.what().startsWith(what)).findFirst().orElseThrow();
  }

  /** A board of 600 x 60 x 12, two layers of 12 and a covering of 1 all round: 602 x 62 x 37. */
  @Test
  void theRestInMillimetres() {
    List<Row> rows = FigureRows.of(result("desk-rest"), Units.MM);
    assertThat(row(rows, "Finished"))
        .isEqualTo(new Row("Finished", "602.0 mm", "62.0 mm", "37.0 mm"));
    assertThat(row(rows, "Base").length()).isEqualTo("600.0 mm");
    assertThat(row(rows, "Foam layer 2").height()).isEqualTo("12.0 mm");
    // A leg of 10 through one layer of 1 goes 9 into a board of at least 11.5.
    assertThat(row(rows, "Left under the point, through 1 layer").length()).isEqualTo("2.5 mm");
    assertThat(row(rows, "Staple leg").length()).isEqualTo("10.0 mm");
    assertThat(rows).noneMatch(r -> r.what().startsWith("Bare gap"));
    String text = FigureRows.tabbed(rows);
    assertThat(text)
        .startsWith("what\tlength\twidth\theight\nFinished\t602.0 mm\t62.0 mm\t37.0 mm\n");
    assertThat(text.lines()).hasSize(rows.size() + 1).allMatch(l -> l.split("\t", -1).length == 4);
  }

  /**
   * 602 / 25.4 = 23.701, to the nearest 1/32: 23 11/16 (23.688). The board is sawn, so 600 / 25.4 =
   * 23.622 goes down to 23 19/32 (23.594), not up to 23 5/8 (23.625).
   */
  @Test
  void theRestInInches() {
    List<Row> rows = FigureRows.of(result("desk-rest"), Units.INCH);
    assertThat(row(rows, "Finished").length()).isEqualTo("23 11/16 in");
    assertThat(row(rows, "Base").length()).isEqualTo("23 19/32 in");
  }

  /** A drop-in seat has a gap left to each side of its frame. */
  @Test
  void whatStandsInAFrameSaysItsGaps() {
    List<String> with =
        Shipped.demo().parts().stream()
            .map(p -> FigureRows.of(result(p.id()), Units.MM))
            .filter(rows -> rows.stream().anyMatch(r -> r.what().startsWith("Bare gap")))
            .map(rows -> row(rows, "Bare gap").length())
            .toList();
    assertThat(with).isNotEmpty().allMatch(s -> Double.parseDouble(s.replace(" mm", "")) >= 0);
  }
}
