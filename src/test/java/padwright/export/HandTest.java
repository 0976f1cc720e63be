package padwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternPiece.PointKind;
import padwright.pattern.PatternPiece.PointMark;
import padwright.pattern.PatternPiece.SideUp;

class HandTest {
  /** A board whose right front corner is cut off: no mirror image of itself. */
  private static PatternPiece oneHanded(SideUp side, int drawn, int mirrored) {
    PatternPiece p = Pieces.base(400, 300, 25);
    return new PatternPiece(
        p.id(),
        p.kind(),
        p.name(),
        drawn,
        mirrored,
        p.material(),
        p.thickness(),
        Path.polygon(
            new Vec2(-200, -150),
            new Vec2(120, -150),
            new Vec2(200, -70),
            new Vec2(200, 150),
            new Vec2(-200, 150)),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        p.grain(),
        false,
        side,
        400,
        300);
  }

  private static List<Double> cutCornersX(Drawing d) {
    List<Double> xs = new ArrayList<>();
    for (Item i : d.items()) {
      if (i instanceof Stroke s && s.style() == LineStyle.CUT && !s.sample()) {
        s.path().segments().forEach(g -> xs.add(g.start().x()));
      }
    }
    return xs;
  }

  @Test
  void aPieceMarkedOnItsBackIsDrawnMirroredLeftToRight() {
    Drawing face = PieceDrawing.of(Pieces.HEADER, oneHanded(SideUp.FACE, 1, 0));
    Drawing back = PieceDrawing.of(Pieces.HEADER, oneHanded(SideUp.BACK, 1, 0));
    assertThat(cutCornersX(face)).contains(120.0).doesNotContain(-120.0);
    assertThat(cutCornersX(back)).contains(-120.0).doesNotContain(120.0);
    assertThat(LabelPlacementTest.words(back)).contains("seen from the back");
    assertThat(LabelPlacementTest.words(face)).contains("seen from the face");
  }

  @Test
  void eachHandHasItsOwnSheetWithItsOwnNumber() {
    PatternPiece piece = oneHanded(SideUp.BACK, 3, 2);
    Drawing drawn = PieceDrawing.of(Pieces.HEADER, piece);
    Optional<Drawing> mirrored = PieceDrawing.mirroredHand(Pieces.HEADER, piece);
    assertThat(cutCornersX(drawn)).contains(-120.0);
    assertThat(cutCornersX(mirrored.orElseThrow())).contains(120.0);
    assertThat(LabelPlacementTest.words(drawn))
        .anyMatch(w -> w.startsWith("hand: as drawn. Cut 3;"));
    assertThat(LabelPlacementTest.words(mirrored.orElseThrow()))
        .anyMatch(w -> w.startsWith("hand: mirrored. Cut 2;"));
    assertThat(mirrored.orElseThrow().title()).endsWith("mirrored hand");
  }

  @Test
  void aPieceThatIsItsOwnMirrorImageServesBothHands() {
    PatternPiece round = Pieces.hands(Pieces.round(320, 70, true), 2, 1);
    assertThat(PieceDrawing.mirroredHand(Pieces.HEADER, withoutMarks(round))).isEmpty();
    assertThat(LabelPlacementTest.words(PieceDrawing.of(Pieces.HEADER, withoutMarks(round))))
        .contains("cut 3: 2 as drawn + 1 mirrored, both alike");
  }

  @Test
  void aHoleOffTheMiddleMakesTwoHands() {
    PatternPiece p = withoutMarks(Pieces.hands(Pieces.round(320, 70, false), 1, 1));
    PatternPiece holed =
        new PatternPiece(
            p.id(),
            p.kind(),
            p.name(),
            1,
            1,
            p.material(),
            p.thickness(),
            p.cutLine(),
            List.of(),
            List.of(),
            List.of(),
            List.of(new PointMark(PointKind.HOLE, new Vec2(40, 10), 8, "hole")),
            p.grain(),
            false,
            SideUp.FACE,
            320,
            320);
    assertThat(PieceDrawing.mirroredHand(Pieces.HEADER, p)).isEmpty();
    assertThat(PieceDrawing.mirroredHand(Pieces.HEADER, holed)).isPresent();
  }

  @Test
  void nobodyAskedForAMirroredHandGetsNone() {
    assertThat(PieceDrawing.mirroredHand(Pieces.HEADER, oneHanded(SideUp.FACE, 4, 0))).isEmpty();
  }

  /** Mirroring keeps area and length, and an outline anticlockwise. */
  @Test
  void mirroringKeepsTheOutlinesSizeAndSense() {
    for (PatternPiece p : RandomPieces.some(50)) {
      Path a = p.cutLine();
      Path b = MirrorImage.of(p).cutLine();
      assertThat(b.signedArea()).isCloseTo(a.signedArea(), within(1e-6));
      assertThat(b.length()).isCloseTo(a.length(), within(1e-9));
    }
  }

  private static PatternPiece withoutMarks(PatternPiece p) {
    return new PatternPiece(
        p.id(),
        p.kind(),
        p.name(),
        p.quantity(),
        p.mirrored(),
        p.material(),
        p.thickness(),
        p.cutLine(),
        p.innerCuts(),
        p.lines(),
        List.of(),
        List.of(),
        p.grain(),
        p.nap(),
        p.side(),
        p.length(),
        p.width());
  }
}
