package padwright.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.Neighbour;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.geometry.Bounds;
import padwright.geometry.MovedIn;
import padwright.geometry.Necks;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.measure.InputRefused;
import padwright.measure.Sentence;

/**
 * Finds the base outline from the size the maker gave: the board itself, the finished part, or the
 * opening it goes into. Each side steps in by what stands between the board's edge and the size.
 */
public final class BaseSizer {
  private BaseSizer() {}

  /**
   * What stands between board and size on one side, mm: the covered stack where the side is free,
   * the thickest place of the covering where it touches something, and the clearance as well where
   * it must keep clear.
   */
  public static double step(
      SizeMeaning meaning,
      Neighbour neighbour,
      double greatestX,
      double coverThickness,
      int layers,
      double clearance) {
    if (meaning == SizeMeaning.BOARD) {
      return 0;
    }
    return switch (neighbour) {
      case FREE -> greatestX + coverThickness;
      case BUTTING -> greatestX + coverThickness * layers;
      case KEEP_CLEAR -> greatestX + coverThickness * layers + clearance;
    };
  }

  /**
   * The base outline.
   *
   * @param steps for front, right, back, left
   * @throws InputRefused where nothing is left of the board
   */
  public static Outlines.Named base(OutlineShape shape, double[] steps, String partId) {
    return base(shape, Outlines.of(shape), steps, partId);
  }

  /**
   * The same of an outline that was laid out already.
   *
   * @param full the shape laid out, its sides named
   */
  public static Outlines.Named base(
      OutlineShape shape, Outlines.Named full, double[] steps, String partId) {
    if (shape instanceof OutlineShape.Rectangle r) {
      double length = r.length() - steps[1] - steps[3];
      double width = r.width() - steps[0] - steps[2];
      require(length > 0 && width > 0, partId);
      double[] radii = new double[4];
      for (int k = 0; k < 4; k++) {
        // Corner k lies between side k-1 and side k.
        double step = Math.min(steps[(k + 3) % 4], steps[k]);
        radii[k] = Math.max(0, r.radii().get(k) - step);
      }
      return Outlines.rectangle(length, width, Arrays.stream(radii).boxed().toList());
    }
    if (Arrays.stream(steps).allMatch(s -> s == 0)) {
      return full;
    }
    if (shape instanceof OutlineShape.Trapezoid) {
      double[] inward = Arrays.stream(steps).map(s -> -s).toArray();
      Path moved = Offset.by(full.path(), inward).orElse(null);
      require(moved != null && moved.segments().size() == 4, partId);
      return new Outlines.Named(centred(moved), full.names());
    }
    if (shape instanceof OutlineShape.FreePath) {
      return free(full, steps, partId);
    }
    double step = Arrays.stream(steps).max().orElse(0);
    Path moved = Offset.by(full.path(), -step).orElse(null);
    Bounds box = full.path().bounds();
    require(step < Math.min(box.width(), box.height()) / 2, partId);
    if (moved == null || moved.segments().size() != full.path().segments().size()) {
      throw new InputRefused(
          "",
          0,
          "parts[" + partId + "].base.outline",
          Sentence.of(
              "an ellipse this narrow comes to a point when %.1f mm is taken off all round", step),
          "Give the size of the board itself, or a wider ellipse");
    }
    return new Outlines.Named(moved, Outlines.roundNames(moved));
  }

  /**
   * A free outline steps in by what its sides face; one with curves by the largest step all round,
   * since a curve has to move as far as the sides it runs into.
   */
  private static Outlines.Named free(Outlines.Named full, double[] steps, String partId) {
    List<Segment> segments = full.path().segments();
    boolean straight = segments.stream().noneMatch(Segment::isArc);
    double most = Arrays.stream(steps).max().orElse(0);
    double[] inward = new double[segments.size()];
    for (int i = 0; i < inward.length; i++) {
      String facing = Outlines.facing(full.names().get(i), segments.get(i));
      inward[i] = straight ? -steps[Outlines.SIDES.indexOf(facing)] : -most;
    }
    MovedIn in = MovedIn.of(full.path(), inward, inward);
    require(!in.loops().isEmpty(), partId);
    if (!in.whole()) {
      throw apart(full, in, most, partId);
    }
    Path moved = in.loops().get(0);
    List<String> names = new ArrayList<>();
    for (Segment s : moved.segments()) {
      names.add(full.nearest(s.pointAt(0.5)));
    }
    return new Outlines.Named(centred(moved), names);
  }

  private static InputRefused apart(Outlines.Named full, MovedIn in, double most, String partId) {
    String taken =
        Sentence.of(
            "once covering, foam overhang and clearance are taken off, up to %.1f mm, ", most);
    return new InputRefused(
        "",
        0,
        "parts[" + partId + "].base.outline",
        in.usedUp()
            .map(p -> taken + "nothing is left of the board along " + full.nearest(p))
            .orElse(
                taken
                    + Sentence.of(
                        "the board falls into %d pieces: at its narrowest the outline is %.1f mm"
                            + " wide",
                        in.loops().size(), Necks.narrowest(full.path(), true))),
        "Widen the outline there, overhang the foam less, give the size of the board itself, or"
            + " make two parts of it");
  }

  private static Path centred(Path path) {
    return path.translated(path.bounds().centre().times(-1));
  }

  private static void require(boolean holds, String partId) {
    if (!holds) {
      throw new InputRefused(
          "",
          0,
          "parts[" + partId + "].base.outline",
          "nothing is left of the board once covering, foam overhang and clearance are taken off",
          "Give a larger size, a thinner covering or less overhang");
    }
  }

  /** Names of sides in the order the steps come in. */
  public static List<String> sides() {
    return Outlines.SIDES;
  }
}
