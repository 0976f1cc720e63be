package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import padwright.design.Finding;
import padwright.design.Finding.Level;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.design.WrappedPad.WaddingLayer;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece.Kind;
import padwright.pattern.PatternPiece.LineKind;

/**
 * A cut-out with the covering turned through, against closed forms worked by hand. The panel: board
 * 12, foam 12, covering 1.0, staples 12 from the edge, so that a tongue takes 12 + 12 + (pi / 2)
 * 1.0 = 25.5708 down the wall and 12 + 4 = 16 on the back.
 */
class CutOutTest {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final double WALL = 25.570796326794897;

  private static PatternPiece piece(PartResult part, Kind kind) {
    return part.piece(kind).orElseThrow();
  }

  private static List<Path> lines(PatternPiece piece, LineKind kind) {
    return piece.lines().stream().filter(l -> l.kind() == kind).map(l -> l.path()).toList();
  }

  private static Finding only(PartResult part, String rule) {
    List<Finding> found = FittedPads.of(part, rule);
    assertThat(found).as(rule).hasSize(1);
    return found.get(0);
  }

  private static FreePath free(double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(new Vec2(xy[i], xy[i + 1]), new Leg.Straight()));
    }
    return new FreePath(points);
  }

  @Test
  void boardFoamAndWaddingAreCutAtOneSizeInOnePlace() {
    FittedPads p = new FittedPads().cut(Pads.rectangle(150, 90), 100, -50);
    p.pads.foam = List.of(Pads.layer(6, 0), Pads.layer(6, 6));
    p.pads.wadding = Optional.of(new WaddingLayer("polyester-150", OptionalDouble.of(3), false));
    PartResult part = p.run();
    assertThat(part.pieces().stream().filter(q -> q.kind() == Kind.FOAM)).hasSize(2);
    for (PatternPiece q : part.pieces()) {
      if (q.kind() == Kind.BASE || q.kind() == Kind.FOAM || q.kind() == Kind.WADDING) {
        assertThat(q.innerCuts()).as(q.id()).hasSize(1);
        assertThat(q.innerCuts().get(0).area()).isCloseTo(150.0 * 90, within(1e-9));
        assertThat(q.innerCuts().get(0).bounds().centre().distance(new Vec2(100, -50)))
            .isLessThan(1e-9);
      }
    }
    assertThat(piece(part, Kind.COVER).innerCuts()).isEmpty();
  }

  /** 150 - 2 x 1.0 and 90 - 2 x 1.0. */
  @Test
  void theCoveringTakesItsThicknessOnEverySide() {
    PartResult part = new FittedPads().cut(Pads.rectangle(150, 90), 0, 0).run();
    Finding f = only(part, "cutout-finished");
    assertThat(f.level()).isEqualTo(Level.NOTE);
    assertThat(f.message()).contains("150.0 x 90.0").contains("148.0 x 88.0");
    assertThat(part.spec().assumptions()).anyMatch(a -> a.field().equals("fittings.cutOuts"));
  }

  /**
   * The middle slit is 150 - 90 = 60 long; from its ends slits run at 45 degrees, 45 sqrt 2 less 3.
   */
  @Test
  void aRectangleIsSlitAlongItsMiddleAndForkedToItsCorners() {
    PatternPiece cover =
        piece(new FittedPads().cut(Pads.rectangle(150, 90), 100, -50).run(), Kind.COVER);
    List<Path> slits = lines(cover, LineKind.SLIT);
    assertThat(slits).hasSize(5);
    assertThat(slits.get(0).length()).isCloseTo(60, within(1e-9));
    for (Path slit : slits.subList(1, 5)) {
      assertThat(slit.length()).isCloseTo(45 * Math.sqrt(2) - 3, within(1e-9));
      double x = Math.abs(slit.end().x() - 100);
      double y = Math.abs(slit.end().y() + 50);
      // 3 short of the corner (75, 45), on its diagonal.
      assertThat(Math.hypot(75 - x, 45 - y)).isCloseTo(3, within(1e-9));
      assertThat(75 - x).isCloseTo(45 - y, within(1e-9));
    }
  }

  @Test
  void slitsShrinkWithTheStretchAllowanceAsTheCoverDoes() {
    FittedPads p = new FittedPads().cut(Pads.rectangle(150, 90), 100, -50);
    p.pads.stretchAlong = 0.02;
    Path middle = lines(piece(p.run(), Kind.COVER), LineKind.SLIT).get(0);
    // 2 % off along x: from 70 to 130 becomes 68.6 to 127.4.
    assertThat(middle.start().distance(new Vec2(68.6, -50))).isLessThan(1e-9);
    assertThat(middle.end().distance(new Vec2(127.4, -50))).isLessThan(1e-9);
  }

  /** A tongue of a rectangle 2 x 41.5708 wide just reaches; a hair less does not. */
  @Test
  void aTongueMustGetDownTheWallAndOnToTheBack() {
    double least = 2 * (WALL + 16);
    PartResult fits = new FittedPads().cut(Pads.rectangle(150, least + 0.01), 0, 0).run();
    assertThat(FittedPads.of(fits, "cutout-reach")).isEmpty();
    assertThat(fits.stopped()).isFalse();
    PartResult part = new FittedPads().cut(Pads.rectangle(150, least - 1), 0, 0).run();
    Finding f = only(part, "cutout-reach");
    assertThat(f.level()).isEqualTo(Level.STOP);
    assertThat(f.value().orElseThrow()).isCloseTo(WALL + 15.5, within(1e-9));
    assertThat(f.limit().orElseThrow()).isCloseTo(WALL + 16, within(1e-9));
    // Half a mm short on each side.
    assertThat(f.remedy()).contains("1.0 wider").contains("0.5 thinner");
  }

  /**
   * An L of 260 with arms of 120, its slits meeting at (60, 60): the tongue on the edge from (260,
   * 120) to (120, 120) has its tip over x = 60, 200 along an edge of 140, so at depth 60 * 140 /
   * 200 = 42 nothing of it lies over its own wall any more.
   */
  @Test
  void aTongueThatSlantsAwayFromItsEdgeDoesNotReach() {
    FittedPads p =
        new FittedPads()
            .cut(
                Pads.free(
                    new double[][] {
                      {0, 0}, {260, 0}, {260, 120}, {120, 120}, {120, 260}, {0, 260}
                    }),
                0,
                0);
    p.pads.outline = Pads.rectangle(700, 500);
    p.pads.foam = List.of(Pads.layer(25, 0));
    Finding f = only(p.run(), "cutout-reach");
    assertThat(f.level()).isEqualTo(Level.STOP);
    assertThat(f.value().orElseThrow()).isCloseTo(42, within(0.5));
  }

  @Test
  void aThickPadNeedsAWiderCutOut() {
    FittedPads p = new FittedPads().cut(Pads.rectangle(150, 90), 0, 0);
    p.pads.foam = List.of(Pads.layer(50, 0));
    Finding f = only(p.run(), "cutout-reach");
    // 50 + 12 + 1.5708 + 16 against 45.
    assertThat(f.limit().orElseThrow()).isCloseTo(79.5708, within(1e-4));
    assertThat(f.value().orElseThrow()).isCloseTo(45, within(1e-9));
  }

  /**
   * Walls of perimeter P and height H are covered by what lay over the hole within H of its edge: P
   * H - 4 H^2 of a rectangle, 2 pi R H - pi H^2 of a circle (Steiner). Bare: 4 H^2 and pi H^2, H =
   * 24.
   */
  @Test
  void whatStaysBareIsWhatHollowCornersLack() {
    Finding square = only(new FittedPads().cut(Pads.rectangle(150, 90), 0, 0).run(), "cutout-bare");
    assertThat(square.value().orElseThrow()).isCloseTo(4 * 24 * 24, within(1e-6));
    // 2 (150 + 90) + 20 of lap.
    assertThat(square.remedy()).contains("500 long and 24 high");
    Finding round =
        only(new FittedPads().cut(new OutlineShape.Circle(120), 0, 0).run(), "cutout-bare");
    assertThat(round.value().orElseThrow()).isCloseTo(Math.PI * 24 * 24, within(1e-6));
  }

  /** Slits of a circle point at its middle, evenly, and no further apart than the folds allow. */
  @Test
  void aCircleIsSlitInAStar() {
    PatternPiece cover =
        piece(new FittedPads().cut(new OutlineShape.Circle(120), 40, 30).run(), Kind.COVER);
    List<Path> slits = lines(cover, LineKind.SLIT);
    Vec2 middle = new Vec2(40, 30);
    for (Path slit : slits) {
      assertThat(slit.end().distance(middle)).isCloseTo(57, within(1e-9));
      Vec2 way = slit.end().minus(middle).unit();
      assertThat(way.cross(slit.start().minus(middle))).isCloseTo(0, within(1e-9));
      // All of what a tongue needs, 41.5708 from the edge, hangs free of its neighbours.
      assertThat(60 - slit.start().distance(middle)).isGreaterThanOrEqualTo(WALL + 16);
    }
    assertThat(slits).anyMatch(q -> q.start().distance(middle) < 1e-9);
    double each = 2 * Math.PI / slits.size();
    // Sagitta R (1 - cos(each / 2)) is 0.5 at most, as at pleats, and tongues are not over-fine.
    assertThat(60 * (1 - Math.cos(each / 2))).isLessThanOrEqualTo(0.5);
    assertThat(60 * each).isGreaterThan(12);
  }

  /**
   * However many arcs an ellipse is drawn with: perimeter 479 (Ramanujan), 15 each at the least.
   */
  @Test
  void anEllipseHasAsManySlitsAsItsLengthAsks() {
    PatternPiece cover =
        piece(new FittedPads().cut(new OutlineShape.Ellipse(180, 120), 0, 0).run(), Kind.COVER);
    double h = Math.pow(30.0 / 150, 2);
    double perimeter = Math.PI * 150 * (1 + 3 * h / (10 + Math.sqrt(4 - 3 * h)));
    assertThat(lines(cover, LineKind.SLIT))
        .hasSizeLessThanOrEqualTo((int) Math.ceil(perimeter / 15))
        .hasSizeGreaterThan(16);
  }

  @Test
  void tonguesOfACurveAreTooNarrowForACrownAndAreGlued() {
    PartResult part = new FittedPads().cut(new OutlineShape.Circle(120), 0, 0).run();
    Finding f = only(part, "cutout-glue");
    int slits = lines(piece(part, Kind.COVER), LineKind.SLIT).size();
    assertThat(f.value().orElseThrow()).isEqualTo(slits);
    assertThat(part.staples().positions()).noneMatch(q -> q.side().startsWith("cut-out"));
  }

  /** An L has a place that sees all of its edge, its inner corner; a U has none. */
  @Test
  void aFreeCutOutIsSlitFromWhereAllOfItsEdgeIsSeen() {
    FreePath ell = free(0, 0, 260, 0, 260, 120, 120, 120, 120, 260, 0, 260);
    PartResult part = new FittedPads().cut(ell, 0, 0).run();
    assertThat(FittedPads.of(part, "cutout-slits")).isEmpty();
    List<Path> slits = lines(piece(part, Kind.COVER), LineKind.SLIT);
    assertThat(slits).hasSize(6);
    // The middle of its square of 120, 60 from four of its lines: (-70, -70) from the box's middle.
    assertThat(slits.get(0).start().distance(new Vec2(-70, -70))).isLessThan(0.1);
    FreePath you = free(0, 0, 260, 0, 260, 200, 180, 200, 180, 80, 80, 80, 80, 200, 0, 200);
    Finding f = only(new FittedPads().cut(you, 0, 0).run(), "cutout-slits");
    assertThat(f.level()).isEqualTo(Level.STOP);
  }

  @Test
  void everySlitStaysInsideItsCutOut() {
    for (OutlineShape shape :
        List.of(
            Pads.rectangle(150, 90, 20),
            Pads.rectangle(90, 150),
            Pads.rectangle(110, 110),
            new OutlineShape.Trapezoid(160, 100, 110),
            new OutlineShape.Ellipse(180, 110),
            new OutlineShape.Circle(100))) {
      PartResult part = new FittedPads().cut(shape, 20, -10).run();
      Geometry hole = jts(piece(part, Kind.BASE).innerCuts().get(0).flattened(0.001), true);
      List<Path> slits = lines(piece(part, Kind.COVER), LineKind.SLIT);
      assertThat(slits).as(shape.toString()).hasSizeGreaterThanOrEqualTo(4);
      for (Path slit : slits) {
        Geometry line = jts(List.of(slit.start(), slit.end()), false);
        assertThat(hole.contains(line)).as(shape.toString()).isTrue();
        // 3 from what it points at; nearer to the sides of a sharp corner, by its half's sine.
        assertThat(hole.getBoundary().distance(line)).as(shape.toString()).isGreaterThan(1.5);
      }
    }
  }

  private static Geometry jts(List<Vec2> points, boolean ring) {
    List<Coordinate> list = new ArrayList<>();
    points.forEach(v -> list.add(new Coordinate(v.x(), v.y())));
    if (ring) {
      list.add(list.get(0));
    }
    Coordinate[] array = list.toArray(Coordinate[]::new);
    return ring ? GEOMETRY.createPolygon(array) : GEOMETRY.createLineString(array);
  }

  @Test
  void leftWholeNothingIsOnTheCover() {
    PartResult part = new FittedPads().whole(Pads.rectangle(150, 90), 0, 0).run();
    assertThat(lines(piece(part, Kind.COVER), LineKind.SLIT)).isEmpty();
    assertThat(piece(part, Kind.BASE).innerCuts()).hasSize(1);
    assertThat(piece(part, Kind.FOAM).innerCuts()).hasSize(1);
    assertThat(only(part, "cutout-whole").level()).isEqualTo(Level.NOTE);
    assertThat(FittedPads.of(part, "cutout-bare")).isEmpty();
  }

  /**
   * Dust cover 6 inside the edge, its own edge turned 12: cut 6 inside the hole, folded 6 outside.
   */
  @Test
  void theDustCoverHasAHoleWithItsEdgeTurned() {
    PatternPiece dust =
        piece(new FittedPads().cut(Pads.rectangle(150, 90), 0, 0).run(), Kind.DUST_COVER);
    assertThat(dust.innerCuts().get(0).area()).isCloseTo(138.0 * 78, within(1e-9));
    assertThat(lines(dust, LineKind.FOLD))
        .anySatisfy(p -> assertThat(p.area()).isCloseTo(162.0 * 102, within(1e-9)));
  }

  /** Tongues of 45 - 25.5708 on the back and 2 of room. */
  @Test
  void thePackingLeavesRoomForTheTongues() {
    PatternPiece packing =
        piece(new FittedPads().cut(Pads.rectangle(150, 90), 0, 0).run(), Kind.PACKING);
    double room = 45 - WALL + 2;
    assertThat(packing.innerCuts().get(0).area())
        .isCloseTo((150 + 2 * room) * (90 + 2 * room), within(1e-9));
  }
}
