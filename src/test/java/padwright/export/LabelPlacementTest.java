package padwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;
import padwright.export.Drawing.Anchor;
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
  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static Font font;

  @BeforeAll
  static void loadFont() throws Exception {
    try (InputStream in =
        PDDocument.class.getResourceAsStream(
            "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")) {
      font = Font.createFont(Font.TRUETYPE_FONT, in);
    }
  }

  @Test
  void noLabelTouchesALineAStapleOrAnotherLabel() {
    List<PatternPiece> pieces = RandomPieces.some(300);
    for (int i = 0; i < pieces.size(); i++) {
      check("piece " + i, PieceDrawing.of(Pieces.HEADER, pieces.get(i)));
    }
  }

  /** Staples so close that their numbers have no room: the numbers go outside on leaders. */
  @Test
  void crowdedNumbersStandOutsideOnLeaders() {
    Drawing d = PieceDrawing.of(Pieces.HEADER, Pieces.round(64, 90, false));
    check("crowded", d);
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
      check(d.title(), d);
    }
  }

  private static void check(String name, Drawing d) {
    STRtree lines = new STRtree();
    for (Item item : d.items()) {
      if (item instanceof Stroke s) {
        Geometry line = line(s.path());
        lines.insert(line.getEnvelopeInternal(), line);
      } else if (item instanceof Drawing.Fill f) {
        Geometry fill = line(f.path());
        lines.insert(fill.getEnvelopeInternal(), fill);
      }
    }
    STRtree others = new STRtree();
    for (Item item : d.items()) {
      if (item instanceof Text t && !t.text().isBlank()) {
        Geometry ink = ink(t);
        for (Object hit : lines.query(ink.getEnvelopeInternal())) {
          assertThat(ink.intersects((Geometry) hit)).as("%s: '%s' on a line", name, t).isFalse();
        }
        others.insert(ink.getEnvelopeInternal(), ink);
      }
    }
    for (Item item : d.items()) {
      if (item instanceof Text t && !t.text().isBlank()) {
        Geometry ink = ink(t);
        int meets = 0;
        for (Object hit : others.query(ink.getEnvelopeInternal())) {
          meets += ink.intersects((Geometry) hit) ? 1 : 0;
        }
        assertThat(meets).as("%s: '%s' meets only itself", name, t).isEqualTo(1);
      }
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
          Geometry ink = ink(t);
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
                        && piece.intersects(line(s.path())));
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
          Geometry ink = ink(t);
          double own = Double.POSITIVE_INFINITY;
          double other = Double.POSITIVE_INFINITY;
          for (PatternPiece.StapleMark s : shown.staples()) {
            Vec2 u = Vec2.polar(s.angle()).times(4);
            double d = ink.distance(line(Path.line(s.at().minus(u), s.at().plus(u))));
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
        return PreparedGeometryFactory.prepare(
            GEOMETRY.createPolygon(ring(s.path().flattened(0.01))));
      }
    }
    throw new AssertionError("no cut line");
  }

  private static Coordinate[] ring(List<Vec2> points) {
    List<Coordinate> list = new ArrayList<>();
    points.forEach(p -> list.add(new Coordinate(p.x(), p.y())));
    list.add(list.get(0));
    return list.toArray(new Coordinate[0]);
  }

  private static Geometry line(Path path) {
    List<Vec2> points = path.flattened(0.01);
    List<Coordinate> list = new ArrayList<>();
    points.forEach(p -> list.add(new Coordinate(p.x(), p.y())));
    if (path.closed()) {
      list.add(list.get(0));
    }
    return GEOMETRY.createLineString(list.toArray(new Coordinate[0]));
  }

  /** The box round the ink of the glyphs, turned and set where the text stands. */
  private static Geometry ink(Text t) {
    // Measured at a hundred times the size: the platform rounds small fonts.
    Font sized = font.deriveFont((float) (100 * t.height()));
    FontRenderContext context = new FontRenderContext(null, true, true);
    Rectangle2D box = sized.createGlyphVector(context, t.text()).getVisualBounds();
    double advance = sized.getStringBounds(t.text(), context).getWidth() / 100;
    double shift =
        t.anchor() == Anchor.START ? 0 : t.anchor() == Anchor.MIDDLE ? -advance / 2 : -advance;
    double x1 = box.getMinX() / 100 + shift;
    double x2 = box.getMaxX() / 100 + shift;
    double y1 = -box.getMaxY() / 100;
    double y2 = -box.getMinY() / 100;
    List<Vec2> corners = new ArrayList<>();
    for (Vec2 v : List.of(new Vec2(x1, y1), new Vec2(x2, y1), new Vec2(x2, y2), new Vec2(x1, y2))) {
      corners.add(v.rotated(t.angle()).plus(t.at()));
    }
    return GEOMETRY.createPolygon(ring(corners));
  }
}
