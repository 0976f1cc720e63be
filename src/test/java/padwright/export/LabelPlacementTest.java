package padwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.export.Drawing.Text;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece;

/**
 * Labels measured without the program's own metrics or geometry: glyph outlines by the Java
 * platform's font renderer, overlaps by the JTS library.
 */
class LabelPlacementTest {
  @Test
  void noLabelTouchesALineAStapleOrAnotherLabel() {
    List<PatternPiece> pieces = RandomPieces.some(300);
    for (int i = 0; i < pieces.size(); i++) {
      LabelInk.check("piece " + i, PieceDrawing.of(Pieces.HEADER, pieces.get(i)));
    }
  }

  /** Staples so close that their numbers have no room: the numbers go outside on leaders. */
  @Test
  void crowdedNumbersStandOutsideOnLeaders() {
    Drawing d = PieceDrawing.of(Pieces.HEADER, Pieces.round(64, 90, false));
    LabelInk.check("crowded", d);
    long leaders =
        d.items().stream()
            .filter(i -> i instanceof Stroke s && s.style() == LineStyle.LEADER)
            .count();
    assertThat(leaders).isGreaterThan(5);
    // Nor is any number lost: those that no leader reaches are named in a note.
    String all = " " + String.join(" ", words(d)).replace(",", "") + " ";
    for (int n = 1; n <= 90; n++) {
      assertThat(all).contains(" " + n + " ");
    }
  }

  @Test
  void theDemosLabelsTouchNothingEither() {
    for (Drawing d : Demo.pieces()) {
      LabelInk.check(d.title(), d);
    }
  }

  @Test
  void labelsAreOnThePieceOrWhollyBesideItWithALeader() {
    List<PatternPiece> pieces = RandomPieces.some(300);
    int beside = 0;
    for (int i = 0; i < pieces.size(); i++) {
      Drawing d = PieceDrawing.of(Pieces.HEADER, pieces.get(i));
      PreparedGeometry piece = outline(d);
      boolean noteOutside = false;
      for (Item item : d.items()) {
        if (item instanceof Text t) {
          Geometry ink = LabelInk.of(t);
          boolean inside = piece.contains(ink);
          assertThat(inside || piece.disjoint(ink)).as("piece %s: %s", i, t).isTrue();
          noteOutside |= !inside && t.text().contains("Forearm rest");
        }
      }
      if (noteOutside) {
        beside++;
        assertThat(d.items())
            .as("piece %s: a leader ends on the piece", i)
            .anyMatch(
                x ->
                    x instanceof Stroke s
                        && s.style() == LineStyle.LEADER
                        && piece.intersects(LabelInk.line(s.path())));
      }
    }
    assertThat(beside).as("pieces too small for their notes").isBetween(5, 200);
  }

  @Test
  void everyPieceNamesItselfItsNumberMaterialSizeSideAndDate() {
    for (PatternPiece p : RandomPieces.some(100)) {
      List<String> words = words(PieceDrawing.of(Pieces.HEADER, p));
      assertThat(words)
          .contains(p.name(), "Forearm rest", "cut " + p.quantity())
          .anyMatch(w -> w.startsWith(p.material() + ", "))
          .anyMatch(w -> w.startsWith("cut size "))
          .anyMatch(w -> w.contains("seen from the back") || w.contains("on the back of the"))
          .anyMatch(w -> w.contains("2026-03-14"));
      assertThat(words.stream().filter(w -> w.matches("[0-9]+")).count())
          .isEqualTo(p.staples().size());
    }
  }

  /** A number nearer to another staple would be read as that one's. */
  @Test
  void everyStapleNumberStandsNearestToItsOwnStaple() {
    int checked = 0;
    for (PatternPiece p : RandomPieces.some(120)) {
      PatternPiece shown = MirrorImage.of(p); // these bases are drawn as seen from the back
      for (Item item : PieceDrawing.of(Pieces.HEADER, p).items()) {
        if (item instanceof Text t && t.text().matches("[0-9]+")) {
          Geometry ink = LabelInk.of(t);
          double own = Double.POSITIVE_INFINITY;
          double other = Double.POSITIVE_INFINITY;
          for (PatternPiece.StapleMark s : shown.staples()) {
            Vec2 u = Vec2.polar(s.angle()).times(3);
            double d = ink.distance(LabelInk.line(Path.line(s.at().minus(u), s.at().plus(u))));
            if (s.number() == Integer.parseInt(t.text())) {
              own = d;
            } else {
              other = Math.min(other, d);
            }
          }
          if (own < 5) { // further away it stands on a leader
            checked++;
            assertThat(own).as("number %s", t).isLessThan(other);
          }
        }
      }
    }
    assertThat(checked).isGreaterThan(1000);
  }

  @Test
  void namesAreSixMillimetresAndNotesThreeAndAHalf() {
    for (PatternPiece p : RandomPieces.some(40)) {
      for (Item item : PieceDrawing.of(Pieces.HEADER, p).items()) {
        if (item instanceof Text t) {
          assertThat(t.height()).isEqualTo(t.text().equals(p.name()) ? 6 : 3.5);
        }
      }
    }
  }

  static List<String> words(Drawing d) {
    return d.items().stream().filter(Text.class::isInstance).map(i -> ((Text) i).text()).toList();
  }

  private static PreparedGeometry outline(Drawing d) {
    for (Item item : d.items()) {
      if (item instanceof Stroke s && s.style() == LineStyle.CUT && !s.sample()) {
        return PreparedGeometryFactory.prepare(LabelInk.area(s.path()));
      }
    }
    throw new AssertionError("no cut line");
  }
}
