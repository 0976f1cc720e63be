package padwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import padwright.cover.CornerPlan;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Text;
import padwright.pattern.PartResult;
import padwright.pattern.PatternPiece.Kind;
import padwright.pattern.PatternPiece.StapleMark;
import padwright.pattern.PatternSet;

/** What corner diagrams and legends tell a maker agrees with the pieces. */
class CornerLayersSaidTest {
  private static final Pattern THROUGH = Pattern.compile("through up to (\\d+) layers there");

  @Test
  void aDiagramNamesTheMostLayersCountedUnderTheStaplesOfItsCorners() {
    PatternSet set = Demo.set();
    int read = 0;
    for (PartResult r : set.parts()) {
      for (NamedDrawing d : CornerDiagram.all(Demo.header(set, r), r)) {
        if (d.name().contains("gusset")) {
          // Sewn, not folded: it speaks of no staples.
          continue;
        }
        String words = words(d.drawing());
        Matcher m = THROUGH.matcher(words);
        int said = m.find() ? Integer.parseInt(m.group(1)) : 1;
        List<CornerPlan> corners = new ArrayList<>();
        for (CornerPlan c : r.cover().corners()) {
          if (words.contains(c.name())) {
            corners.add(c);
          }
        }
        assertThat(corners).as(words).isNotEmpty();
        int counted = corners.stream().mapToInt(c -> counted(r, c)).max().orElseThrow();
        assertThat(said).as(r.asked().id() + " " + d.name()).isEqualTo(counted);
        read++;
      }
    }
    assertThat(read).isEqualTo(11);
  }

  /** From the marks of the base pattern, by the nearest corner of its own outline. */
  private static int counted(PartResult r, CornerPlan corner) {
    int most = 0;
    for (StapleMark s : r.piece(Kind.BASE).orElseThrow().staples()) {
      double here = s.at().distance(corner.apex());
      if (r.cover().corners().stream().noneMatch(c -> c.apex().distance(s.at()) < here)) {
        most = Math.max(most, s.layers());
      }
    }
    return most;
  }

  /** Two front corners sharper than square and two back ones: staples go through 2 and 3 layers. */
  @Test
  void frontAndBackCornersOfATrapezoidDifferAndSaySo() {
    PatternSet set = Demo.set();
    PartResult seat = set.parts().get(2);
    List<NamedDrawing> both = CornerDiagram.all(Demo.header(set, seat), seat);
    assertThat(words(both.get(0).drawing())).contains("through up to 2 layers there");
    assertThat(words(both.get(1).drawing())).contains("through up to 3 layers there");
  }

  /** Each pleat its own staple is said only where there are as many; nothing else is certain. */
  @Test
  void aDiagramPromisesAStapleAPleatOnlyWhereThereIsOne() {
    PatternSet set = Demo.set();
    for (PartResult r : set.parts()) {
      for (NamedDrawing d : CornerDiagram.all(Demo.header(set, r), r)) {
        String words = words(d.drawing());
        if (!d.name().contains("rim-pleats")) {
          continue;
        }
        int pleats = r.cover().corners().get(0).pleats();
        int staples = r.staples().positions().size();
        assertThat(words.contains("a staple holds each")).isEqualTo(staples >= pleats);
        assertThat(words.contains("the " + staples + " staples hold the " + pleats + " pleats"))
            .isEqualTo(staples < pleats);
      }
    }
  }

  /** At arm's length a line is told by its weight, its beat, the strokes in a beat or its ink. */
  @Test
  void noTwoLinesOfAPatternAreAlikeAtArmsLength() {
    List<LineStyle> lines =
        List.of(
            LineStyle.TRIM,
            LineStyle.FOLD,
            LineStyle.CREASE,
            LineStyle.STAPLE,
            LineStyle.OUTLINE,
            LineStyle.CENTRE,
            LineStyle.SLIT,
            LineStyle.ZONE,
            LineStyle.RELIEF);
    for (LineStyle a : lines) {
      for (LineStyle b : lines.subList(0, lines.indexOf(a))) {
        boolean weight = ratio(a.width(), b.width()) >= 2;
        boolean beat = ratio(beat(a), beat(b)) >= 2;
        boolean strokes = a.dashes().length != b.dashes().length;
        boolean ink = ratio(ink(a), ink(b)) >= 2;
        assertThat(weight || beat || strokes || ink).as(a + " and " + b).isTrue();
      }
    }
  }

  /** The trim line runs along a corner's cuts: there the cut line must show as a full line. */
  @Test
  void theCutLineCoversATrimLineOnIt() {
    assertThat(LineStyle.CUT.dashes()).isEmpty();
    assertThat(LineStyle.CUT.width()).isGreaterThan(LineStyle.TRIM.width());
  }

  private static double beat(LineStyle s) {
    double sum = 0;
    for (double d : s.dashes()) {
      sum += d;
    }
    return sum;
  }

  /** How much of its length is drawn. */
  private static double ink(LineStyle s) {
    double drawn = 0;
    for (int i = 0; i < s.dashes().length; i += 2) {
      drawn += s.dashes()[i];
    }
    return drawn / beat(s);
  }

  private static double ratio(double a, double b) {
    return Math.max(a, b) / Math.min(a, b);
  }

  private static String words(Drawing d) {
    return d.items().stream()
        .filter(Text.class::isInstance)
        .map(i -> ((Text) i).text())
        .collect(Collectors.joining(" "));
  }
}
