package padwright.desk.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

class SolidPainterTest {
  private static final Palette LIGHT = Palette.light();

  /** A box about the z axis between two heights. */
  private static Body box(double half, double low, double high, Body.Kind kind) {
    Path square =
        Path.polygon(
            new Vec2(-half, -half),
            new Vec2(half, -half),
            new Vec2(half, half),
            new Vec2(-half, half));
    Chains chains = Chains.of(List.of(Band.sheet(0, low, high)));
    Rim rim = Rim.plain(square);
    BodyMaker maker = new BodyMaker();
    int[][] ends = maker.walls(rim.rings(chains), rim.arrises(chains));
    maker.face(ends[0], List.of(), false);
    maker.face(ends[1], List.of(), true);
    return maker.body("box", kind, 0);
  }

  private static Opening.Stage stage(Solid solid) {
    return new Opening.Stage("", solid.bodies());
  }

  @Test
  void aPointIsProjectedAsWorkedByHand() {
    Solid cube = Solid.of("cube", List.of(box(30, 0, 60, Body.Kind.BOARD)));
    // Centre 0, 0, 30; radius 30 sqrt 3; the camera 4 radii away. From the face x runs to the
    // right and y up. The lens: half of 400 pixels over tan(asin(1 / 4)) = 1 / sqrt 15.
    double radius = 30 * Math.sqrt(3);
    double lens = 200 * Math.sqrt(15);
    Projection face = new Projection(Camera.of(Camera.View.FACE), cube, 600, 400);
    double depth = face.depth(30, 30, 60);
    assertThat(depth).isCloseTo(4 * radius - 30, within(1e-9));
    assertThat(face.pixelX(face.across(30, 30, 60), depth))
        .isCloseTo(300 + lens * 30 / depth, within(1e-9));
    assertThat(face.pixelY(face.above(30, 30, 60), depth))
        .isCloseTo(200 - lens * 30 / depth, within(1e-9));
    // From the front z runs up and what lies at the front edge is nearer.
    Projection front = new Projection(Camera.of(Camera.View.FRONT), cube, 600, 400);
    assertThat(front.depth(0, -30, 30)).isCloseTo(4 * radius - 30, within(1e-9));
    assertThat(front.above(0, 0, 60)).isCloseTo(30, within(1e-9));
    // Turned over sideways, left and right change places and the back edge stays at the top.
    Projection back = new Projection(Camera.of(Camera.View.BACK), cube, 600, 400);
    assertThat(back.across(30, 0, 0)).isCloseTo(-30, within(1e-9));
    assertThat(back.above(0, 30, 0)).isCloseTo(30, within(1e-9));
  }

  /** The rows of the matrix and the projection must say the same of any point. */
  @Test
  void theMatrixForACardSaysTheSame() {
    Solid cube = Solid.of("cube", List.of(box(30, 0, 60, Body.Kind.BOARD)));
    Camera camera = new Camera(0.7, 0.4, 2, 0.1, -0.2);
    Projection p = new Projection(camera, cube, 600, 400);
    double[] m = p.matrix();
    double[] at = {11, -7, 23};
    double[] out = new double[3];
    for (int row = 0; row < 3; row++) {
      out[row] = m[4 * row] * at[0] + m[4 * row + 1] * at[1] + m[4 * row + 2] * at[2];
      out[row] += m[4 * row + 3];
    }
    assertThat(out[0]).isCloseTo(p.across(11, -7, 23), within(1e-9));
    assertThat(out[1]).isCloseTo(-p.above(11, -7, 23), within(1e-9));
    assertThat(out[2]).isCloseTo(p.depth(11, -7, 23), within(1e-9));
  }

  @Test
  void whatIsNearerHidesWhatIsFartherWhicheverIsPaintedFirst() {
    Body board = box(30, 0, 10, Body.Kind.BOARD);
    Body foam = box(20, 10, 20, Body.Kind.WADDING);
    for (List<Body> order : List.of(List.of(board, foam), List.of(foam, board))) {
      Solid solid = Solid.of("two", order);
      Camera face = Camera.of(Camera.View.FACE);
      int[] pixels = new SolidPainter().paint(solid, stage(solid), face, LIGHT, 200, 200).clone();
      assertThat(bright(pixels[100 * 200 + 100])).isGreaterThan(bright(LIGHT.board()));
      Camera back = Camera.of(Camera.View.BACK);
      assertThat(picked(solid, face, 100, 100)).contains(foam);
      assertThat(picked(solid, back, 100, 100)).contains(board);
      assertThat(picked(solid, face, 1, 1)).isEmpty();
      assertThat(pixels[0]).isEqualTo(LIGHT.background());
    }
  }

  private static Optional<Body> picked(Solid solid, Camera camera, double x, double y) {
    return SolidPainter.pick(solid, stage(solid), camera, 200, 200, x, y);
  }

  private static int bright(int argb) {
    return (argb >> 16 & 255) + (argb >> 8 & 255) + (argb & 255);
  }

  /** A cube seen from a corner shows nine of its twelve edges; the three hidden ones stay away. */
  @Test
  void hiddenEdgesAreNotDrawn() {
    Solid cube = Solid.of("cube", List.of(box(30, 0, 60, Body.Kind.BOARD)));
    Camera camera = new Camera(Math.PI / 4, Math.toRadians(35), 1, 0, 0);
    int[] pixels = new SolidPainter().paint(cube, stage(cube), camera, LIGHT, 400, 400);
    Projection p = new Projection(camera, cube, 400, 400);
    int drawn = 0;
    double[][] c = new double[8][];
    for (int i = 0; i < 8; i++) {
      c[i] = new double[] {(i & 1) * 60 - 30, (i >> 1 & 1) * 60 - 30, (i >> 2) * 60};
    }
    for (int i = 0; i < 8; i++) {
      for (int bit = 1; bit < 8; bit <<= 1) {
        if ((i & bit) == 0) {
          drawn += dark(pixels, p, c[i], c[i | bit]) ? 1 : 0;
        }
      }
    }
    assertThat(drawn).isEqualTo(9);
  }

  /** Whether a line is drawn a third of the way along an edge. */
  private static boolean dark(int[] pixels, Projection p, double[] a, double[] b) {
    double[] m = new double[3];
    for (int i = 0; i < 3; i++) {
      m[i] = a[i] + (b[i] - a[i]) / 3;
    }
    double depth = p.depth(m[0], m[1], m[2]);
    int x = (int) p.pixelX(p.across(m[0], m[1], m[2]), depth);
    int y = (int) p.pixelY(p.above(m[0], m[1], m[2]), depth);
    int least = 1000;
    for (int dy = -1; dy <= 1; dy++) {
      for (int dx = -1; dx <= 1; dx++) {
        least = Math.min(least, bright(pixels[(y + dy) * 400 + x + dx]));
      }
    }
    return least < 180;
  }

  @Test
  void theSamePictureIsPaintedEveryTimeAndFitsItsFrame() {
    Solid solid = Solid.of(SolidParts.demo("reading-chair"));
    Camera camera = Camera.of(Camera.View.CORNER).fitted(solid, 300, 200);
    SolidPainter painter = new SolidPainter();
    int[] first = painter.paint(solid, stage(solid), camera, LIGHT, 300, 200).clone();
    painter.paint(solid, stage(solid), camera.turned(1, 0), Palette.dark(), 300, 200);
    int[] again = painter.paint(solid, stage(solid), camera, LIGHT, 300, 200);
    assertThat(again).isEqualTo(first);
    boolean edge = false;
    int inside = 0;
    for (int i = 0; i < first.length; i++) {
      boolean shown = first[i] != LIGHT.background();
      inside += shown ? 1 : 0;
      edge |= shown && (i % 300 < 2 || i % 300 > 297 || i < 600 || i >= first.length - 600);
    }
    assertThat(edge).isFalse();
    assertThat(inside).isGreaterThan(first.length / 4);
  }

  @Test
  void aPartIsOpenedFromWhatLiesOutsideToTheBoard() {
    Opening opening = Opening.of(Solid.of(SolidParts.demo("stool-top")));
    assertThat(opening.stages())
        .extracting(Opening.Stage::words)
        .containsExactly(
            "Covered, as finished",
            "Dust cover and packing panel taken off",
            "Covering taken off",
            "Wadding taken off",
            "Foam layer 2 taken off",
            "Foam layer 1 taken off: board alone");
    assertThat(opening.at(99).bodies()).extracting(Body::name).containsExactly("board");
    assertThat(opening.at(-1)).isEqualTo(opening.at(0));
  }

  @Test
  void theCameraSaysFromWhereItLooksAndStopsAtThePoles() {
    assertThat(Camera.of(Camera.View.FACE).words()).isEqualTo("from above the face");
    assertThat(Camera.of(Camera.View.CORNER).words()).isEqualTo("from the front and above");
    assertThat(Camera.of(Camera.View.BACK).words()).isEqualTo("from under the back of the board");
    Camera over = Camera.of(Camera.View.CORNER).turned(2 * Math.PI, 9);
    assertThat(over.elevation()).isEqualTo(Math.PI / 2);
    assertThat(over.azimuth()).isCloseTo(Math.toRadians(28), within(1e-12));
    // Moved by so many pixels, the middle of the solid lies that far from the picture's.
    Solid cube = Solid.of("cube", List.of(box(30, 0, 60, Body.Kind.BOARD)));
    Camera moved = Camera.of(Camera.View.CORNER).panned(30, -20, 600, 400);
    Projection p = new Projection(moved, cube, 600, 400);
    double depth = p.depth(0, 0, 30);
    assertThat(p.pixelX(p.across(0, 0, 30), depth)).isCloseTo(330, within(1e-9));
    assertThat(p.pixelY(p.above(0, 0, 30), depth)).isCloseTo(180, within(1e-9));
  }

  /** Lightness by Rec. 709 luma: bodies that touch are told apart without their hue. */
  @Test
  void bodiesThatTouchDifferInLightness() {
    for (Palette p : List.of(Palette.light(), Palette.dark())) {
      int[][] touching = {
        {p.board(), p.foam()}, {p.foam(), p.foamBetween()}, {p.foam(), p.wadding()},
        {p.wadding(), p.covering()}, {p.foam(), p.covering()}, {p.covering(), p.board()}
      };
      for (int[] pair : touching) {
        assertThat(Math.abs(luma(pair[0]) - luma(pair[1]))).isGreaterThan(10);
      }
    }
  }

  private static double luma(int c) {
    return 0.2126 * (c >> 16 & 255) + 0.7152 * (c >> 8 & 255) + 0.0722 * (c & 255);
  }
}
