package padwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternPiece.StapleMark;

/** A part asked for as its own mirror image is worked out and drawn as the mirror image. */
class MirrorTest {
  private static final double SAME = 1e-9;

  /** Files keep a ten-thousandth of a mm; two roundings and a difference of two. */
  private static final double SAME_ON_PAPER = 5e-4;

  /** Front left, front right, back right, back left: no two alike. */
  private static final double[] ROUNDED = {6, 22, 38, 60};

  private static final double[] SHARP_AND_ROUNDED = {0, 12, 0, 45};

  private static Pads pads(double... radii) {
    Pads p = new Pads();
    p.outline = Pads.rectangle(420, 310, radii);
    p.foam = List.of(Pads.layer(20, 0), Pads.layer(10, -4));
    return p;
  }

  private static PartResult asDrawn(double... r) {
    return pads(r).run();
  }

  private static PartResult mirrored(double... r) {
    return pads(r[1], r[0], r[3], r[2]).run();
  }

  @Test
  void everyCutLineIsTheMirrorImage() {
    for (double[] radii : List.of(ROUNDED, SHARP_AND_ROUNDED)) {
      List<PatternPiece> a = asDrawn(radii).pieces();
      List<PatternPiece> b = mirrored(radii).pieces();
      assertThat(b)
          .extracting(PatternPiece::id)
          .isEqualTo(a.stream().map(PatternPiece::id).toList());
      for (int i = 0; i < a.size(); i++) {
        same(a.get(i).id(), a.get(i).cutLine().mirrored(), b.get(i).cutLine());
        // Not its own mirror image, or this would say nothing.
        assertThat(unlike(a.get(i).cutLine(), b.get(i).cutLine()) || isPacking(a.get(i)))
            .as(a.get(i).id())
            .isTrue();
      }
    }
  }

  private static boolean isPacking(PatternPiece p) {
    return p.kind() == PatternPiece.Kind.PACKING;
  }

  private static boolean unlike(Path a, Path b) {
    return a.segments().stream().anyMatch(s -> b.segments().stream().noneMatch(t -> close(s, t)));
  }

  private static void same(String what, Path a, Path b) {
    assertThat(b.segments()).as(what).hasSameSizeAs(a.segments());
    for (Segment s : a.segments()) {
      assertThat(b.segments()).as("%s: %s", what, s).anyMatch(t -> close(s, t));
    }
  }

  private static boolean close(Segment s, Segment t) {
    return s.start().distance(t.start()) < SAME
        && s.end().distance(t.end()) < SAME
        && Math.abs(s.bulge() - t.bulge()) < SAME;
  }

  @Test
  void everyStapleIsTheMirrorImageWithAsManyLayersUnderIt() {
    for (double[] radii : List.of(ROUNDED, SHARP_AND_ROUNDED)) {
      List<StapleMark> a = base(asDrawn(radii)).staples();
      List<StapleMark> b = base(mirrored(radii)).staples();
      assertThat(b).hasSameSizeAs(a).hasSizeGreaterThan(30);
      for (StapleMark s : a) {
        Vec2 at = new Vec2(-s.at().x(), s.at().y());
        assertThat(b)
            .as("staple %s", s)
            .anyMatch(
                t ->
                    t.at().distance(at) < SAME
                        && Math.abs(Math.sin(t.angle() + s.angle())) < SAME
                        && t.layers() == s.layers());
      }
    }
  }

  private static PatternPiece base(PartResult r) {
    return r.pieces().stream().filter(p -> p.kind() == PatternPiece.Kind.BASE).findFirst().get();
  }

  /** One part and one mirrored ask for two sheets; the second is the mirrored part's own. */
  @Test
  void theMirroredHandsSvgIsTheMirroredPartsSvg() {
    for (double[] radii : List.of(ROUNDED, SHARP_AND_ROUNDED)) {
      List<PatternPiece> a = asDrawn(radii).pieces();
      List<PatternPiece> b = mirrored(radii).pieces();
      int compared = 0;
      for (int i = 0; i < a.size(); i++) {
        var hand = PieceDrawing.mirroredHand(Pieces.HEADER, Pieces.hands(a.get(i), 1, 1));
        if (isPacking(a.get(i)) && hand.isEmpty()) {
          continue;
        }
        SvgBack one = new SvgBack(SvgWriter.write(hand.orElseThrow()));
        SvgBack other = new SvgBack(SvgWriter.write(PieceDrawing.of(Pieces.HEADER, b.get(i))));
        for (String group :
            List.of(
                "cut-line", "inner-cuts", "trim-line", "fold-lines", "staple-line", "staples")) {
          String what = a.get(i).id() + ", " + group;
          assertThat(other.length(group)).as(what).isCloseTo(one.length(group), within(0.01));
          List<Vec2> p = points(one, group);
          List<Vec2> q = points(other, group);
          // Not one by one: a closed line ends in an arc or in a stretch that closes it.
          assertThat(p).as(what).allMatch(x -> q.stream().anyMatch(y -> near(x, y)));
          assertThat(q).as(what).allMatch(x -> p.stream().anyMatch(y -> near(x, y)));
          compared += p.size();
        }
      }
      assertThat(compared).isGreaterThan(200);
    }
  }

  private static boolean near(Vec2 a, Vec2 b) {
    return a.distance(b) < SAME_ON_PAPER;
  }

  /** From the cut line's upper left corner: words beside the piece may move it on its sheet. */
  private static List<Vec2> points(SvgBack svg, String group) {
    double left = Double.POSITIVE_INFINITY;
    double top = Double.POSITIVE_INFINITY;
    for (double[] p : svg.points.get("cut-line")) {
      left = Math.min(left, p[0]);
      top = Math.min(top, p[1]);
    }
    List<Vec2> list = new ArrayList<>();
    for (double[] p : svg.points.getOrDefault(group, List.of())) {
      list.add(new Vec2(p[0] - left, p[1] - top));
    }
    return list;
  }
}
