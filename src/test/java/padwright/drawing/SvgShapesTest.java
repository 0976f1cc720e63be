package padwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.batik.parser.AWTPathProducer;
import org.apache.batik.parser.AWTTransformProducer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import padwright.geometry.Vec2;
import padwright.measure.LengthUnit;

/** Shapes against closed forms, and paths and transforms against Batik's own readers of them. */
class SvgShapesTest {
  private static final GeometryFactory JTS = new GeometryFactory();

  /** 0.01 mm for curves as arcs, and half a thousandth each way for rounding. */
  private static final double ERROR = 0.011;

  // Areas by hand: pi r^2, pi a b, w h - (4 - pi) rx ry, half the base times the height.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
      <rect x='10' y='20' width='300' height='150'/>|300|150|45000
      <rect x='10' y='20' width='300' height='150' rx='20'/>|300|150|44656.6371
      <rect width='300' height='150' rx='40' ry='10'/>|300|150|44656.6371
      <rect width='100' height='50' rx='80' ry='99'/>|100|50|3926.9908
      <circle cx='200' cy='100' r='90'/>|180|180|25446.9005
      <ellipse cx='200' cy='100' rx='150' ry='60'/>|300|120|28274.3339
      <polygon points='0,0 200,0 200 100'/>|200|100|10000
      <polyline points='0,0 200,0 200,100'/>|200|100|10000
      <rect width='50mm' height='1in'/>|188.976|96|18141.7323
      """)
  void shapesHaveTheSizeAndAreaOfTheirClosedForm(
      String shape, double length, double width, double area) {
    DrawnOutline drawn = Drawings.read(Drawings.svg(shape));
    assertThat(drawn.length()).isCloseTo(length, within(ERROR));
    assertThat(drawn.width()).isCloseTo(width, within(ERROR));
    assertThat(Drawings.area(drawn)).isCloseTo(area, within(ERROR * (length + width) * 2));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "M10 10 L200 10 L200 100 L10 100 Z",
        "m10 10 l190 0 l0 90 l-190 0 z",
        "M10,10 200,10 200,100 10,100z",
        "M10 10H200V100H10Z",
        "m10 10h190v90h-190z",
        "M10 10C60-20 150 40 200 10S220 80 200 100 120 140 10 100Z",
        "m10 10c50-30 140 30 190 0s20 70 0 90-100 40-190 0z",
        "M10 10Q100-30 200 10T200 100T10 100Z",
        "m10 10q90-40 190 0t0 90t-190 0z",
        "M10 10A100 100 0 0 1 200 10A60 50 20 0 1 200 100L10 100Z",
        "m10 10a98 40 0 0 1 190 0a60 50 -40 0 0 0 90l0 40-190 0z",
        "M50 10 a40,25 30 1,1 -10,5z",
        "M50 10a40 25 30 11-10 5z",
        "M50 10A95 60 77 0 1 150 60Z",
        "M50,10a40 40 0 1 0 .2 0zM300,10",
        "M1e1 1.E1L.2e3 10-0-.5e2Z",
        "M0 0L100 0 100 100ZL50 0",
        "M10 10A0 30 0 0 1 200 10L200 100Z",
      })
  void aPathIsReadAsAnotherReaderReadsIt(String d) throws IOException {
    DrawnOutline drawn = Drawings.read(Drawings.svg("<path d='" + d + "'/>"));
    same(drawn, AWTPathProducer.createShape(new StringReader(d), PathIterator.WIND_NON_ZERO), 1);
  }

  /** A step of half a tenth is a draughtsman's slip: as a side it would be a corner to fold. */
  @Test
  void slipsAreLeftOut() {
    DrawnOutline drawn = Drawings.read(Drawings.svg("<path d='M0 0H100V50h.05V100H0Z'/>"));

    assertThat(drawn.outline().points()).hasSize(5);
    assertThat(Drawings.area(drawn)).isCloseTo(10_000, within(100 * 0.05));
    assertThat(drawn.report().notes()).contains("1 side shorter than 0.1 mm left out");
  }

  /**
   * SVG 1.1, F.6.6: radii too small are made just large enough, so that the arc is half an ellipse.
   */
  @Test
  void anArcWithRadiiTooSmallIsHalfAnEllipse() {
    DrawnOutline half = Drawings.read(Drawings.svg("<path d='M10 100A5 2 0 0 1 210 100Z'/>"));
    // Half axes 100 and 40: pi a b / 2.
    assertThat(half.width()).isCloseTo(40, within(ERROR));
    assertThat(Drawings.area(half)).isCloseTo(Math.PI * 100 * 40 / 2, within(3.0));
    DrawnOutline round = Drawings.read(Drawings.svg("<path d='M10 100A5 5 33 0 1 210 100Z'/>"));
    assertThat(Drawings.area(round)).isCloseTo(Math.PI * 5000, within(0.2));
    assertThat(round.outline().points()).hasSizeLessThanOrEqualTo(3);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "translate(30,-20)",
        "translate(30)",
        "scale(2)",
        "scale(1.5, 0.4)",
        "scale(-1, 1)",
        "rotate(30)",
        "rotate(30 50 20)",
        "skewX(20)",
        "skewY(-15)",
        "matrix(0.8 0.3 -0.5 1.1 7 9)",
        "translate(10 10) rotate(45), scale(2 0.5)\n skewX(10)",
      })
  void transformsAreAsAnotherReaderReadsThem(String transform) throws IOException {
    String d = "M10 10A110 60 10 0 1 200 10C220 40 180 80 200 100Q100 130 10 100Z";
    String one = "<path d='" + d + "' transform='" + transform + "'/>";
    String half = "<g transform='scale(0.5)'><g transform='" + transform + "'><path d='";
    AffineTransform map = AWTTransformProducer.createAffineTransform(transform);
    Shape shape = AWTPathProducer.createShape(new StringReader(d), PathIterator.WIND_NON_ZERO);
    same(Drawings.read(Drawings.svg(one)), map.createTransformedShape(shape), 1);
    String nested = half + d + "'/></g></g>";
    same(Drawings.read(Drawings.svg(nested)), map.createTransformedShape(shape), 0.5);
  }

  @Test
  void anEllipseDrawnByATransformStaysWithinAHundredth() {
    // By hand: scale(3, 1) of a circle of radius 50 is an ellipse of half axes 150 and 50.
    DrawnOutline drawn =
        Drawings.read(Drawings.svg("<circle cx='50' cy='60' r='50' transform='scale(3 1)'/>"));
    for (Vec2 p : Drawings.chords(drawn)) {
      double x = (p.x() - 150) / 150;
      double y = (p.y() - 50) / 50;
      double gradient = 2 * Math.hypot(x / 150, y / 50);
      assertThat(Math.abs(x * x + y * y - 1) / gradient).isLessThan(ERROR);
    }
    assertThat(drawn.outline().points()).hasSizeLessThan(100);
  }

  // CSS Values 3, 5.2: 1 in = 96 px = 72 pt = 6 pc = 25.4 mm = 101.6 q; a rect of 96 x 48 units.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      nullValues = "-",
      textBlock =
          """
      width='400mm' height='300mm' viewBox='0 0 400 300'|96|48|1 unit is 1 mm (by the file's
      width='40cm' height='30cm' viewBox='0 0 400 300'|96|48|1 unit is 1 mm
      width='8in' height='6in' viewBox='0 0 8 6'|2438.4|1219.2|1 unit is 25.4 mm
      width='720pt' height='720pt' viewBox='0 0 960 960'|25.4|12.7|1 unit is 0.264583 mm
      width='10pc' viewBox='0 0 160 100'|25.4|12.7|by the file's width
      height='25.4mm' viewBox='5 5 960 96'|25.4|12.7|by the file's width, height
      width='960' height='960' viewBox='0 0 960 960'|25.4|12.7|CSS pixels
      width='100%' height='100%' viewBox='0 0 960 960'|25.4|12.7|names no unit
      width='100' height='100'|25.4|12.7|no viewBox
      width='100mm' height='100mm' viewBox='0 0 100 200'|48|24|1 unit is 0.5 mm
      width='100mm' height='100mm' viewBox='0 0 100 200' preserveAspectRatio='none'|96|24|1 mm across and 0.5 mm up
      width='100mm' height='100mm' viewBox='0 0 100 200' preserveAspectRatio='xMidYMid slice'|96|48|1 unit is 1 mm
      """)
  void theUnitIsFoundAndSaid(String root, double length, double width, String said) {
    DrawnOutline drawn =
        Drawings.read(Drawings.svg(root, "<rect x='3' y='4' width='96' height='48'/>"));
    assertThat(drawn.length()).isCloseTo(length, within(1e-3));
    assertThat(drawn.width()).isCloseTo(width, within(1e-3));
    assertThat(drawn.report().scale()).contains(said);
  }

  @Test
  void aUnitGivenByTheMakerCountsOnlyWhereTheFileNamesNone() {
    String rect = "<rect width='96' height='48'/>";
    for (String root : List.of("", "viewBox='0 0 100 100'", "width='9px' viewBox='0 0 10 10'")) {
      byte[] bytes = Drawings.svg(root, rect).getBytes(StandardCharsets.UTF_8);
      DrawnOutline drawn = DrawingReader.read("a.svg", bytes, Optional.of(LengthUnit.MM));
      assertThat(drawn.length()).isEqualTo(96);
      assertThat(drawn.report().scale()).contains("as you say");
    }
    byte[] bytes = Drawings.svg(rect).getBytes(StandardCharsets.UTF_8);
    assertThat(DrawingReader.read("a.svg", bytes, Optional.of(LengthUnit.INCH)).length())
        .isEqualTo(96);
  }

  @Test
  void yRunsUpAndTheLowerLeftIsTheOrigin() {
    DrawnOutline drawn =
        Drawings.read(
            Drawings.svg("<path d='M100 100H200V150H150Z'/><circle cx='190' cy='110' r='5'/>"));
    // The slanted side leaves from the upper left, which is high up in the drawing.
    assertThat(drawn.outline().points().get(0).at()).isEqualTo(new Vec2(0, 50));
    assertThat(drawn.openings()).hasSize(1);
    assertThat(drawn.openings().get(0).at()).isEqualTo(new Vec2(40, 15));
    assertThat(drawn.openings().get(0).length()).isEqualTo(10);
  }

  /** Both ways: no point of one is further from the other's line than the error. */
  private static void same(DrawnOutline ours, Shape theirs, double scale) {
    AffineTransform up = AffineTransform.getScaleInstance(scale, -scale);
    Shape turned = up.createTransformedShape(theirs);
    List<Coordinate> flat = new ArrayList<>();
    double[] c = new double[6];
    for (PathIterator it = turned.getPathIterator(null, 1e-3); !it.isDone(); it.next()) {
      int kind = it.currentSegment(c);
      if (kind == PathIterator.SEG_MOVETO && flat.size() > 2) {
        break;
      }
      flat.add(kind == PathIterator.SEG_CLOSE ? flat.get(0) : new Coordinate(c[0], c[1]));
    }
    LineString line = JTS.createLineString(flat.toArray(Coordinate[]::new));
    Rectangle2D box =
        new Rectangle2D.Double(
            line.getEnvelopeInternal().getMinX(), line.getEnvelopeInternal().getMinY(), 0, 0);
    List<Coordinate> mine = new ArrayList<>();
    Drawings.chords(ours)
        .forEach(p -> mine.add(new Coordinate(p.x() + box.getX(), p.y() + box.getY())));
    mine.add(mine.get(0));
    LineString drawn = JTS.createLineString(mine.toArray(Coordinate[]::new));
    // Batik's own flattening is a thousandth, and the box it is moved by has an error of its own.
    assertThat(DiscreteHausdorffDistance.distance(drawn, line)).isLessThan(3 * ERROR);
    assertThat(DiscreteHausdorffDistance.distance(line, drawn)).isLessThan(3 * ERROR);
  }
}
