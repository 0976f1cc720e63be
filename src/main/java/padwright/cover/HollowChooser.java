package padwright.cover;

import java.util.function.Function;
import padwright.design.WrappedPad.Treatment;
import padwright.shape.TautPath;

/** Decides what is done where an outline is hollow and the covering has too little length. */
final class HollowChooser {
  /** Clips along a hollow curve stand about this far apart, mm; common practice, no source. */
  static final double CLIP_SPACING = 15;

  /** A clip ends this far past the back arris, mm, so that none shows on the wall; own choice. */
  static final double CLIP_TIP = 6;

  /** A sharp hollow corner's lack of covering is spread over so much of either side, mm; own. */
  static final double STRETCHED = 60;

  /** A hollow corner that asks for no more stretch than this takes no gusset; own choice. */
  static final double SLIGHT_STRETCH = 0.03;

  private final Function<CornerSite, TautPath> paths;

  HollowChooser(Function<CornerSite, TautPath> paths) {
    this.paths = paths;
  }

  /**
   * Where the outline is hollow the covering lacks length: a sharp corner takes a gusset, and along
   * a curve the turn-under is clipped and the wall stretched.
   */
  CornerChoice choose(CornerSite site, Treatment asked) {
    boolean slight = site.sharp() && stretchNeeded(site) <= SLIGHT_STRETCH;
    Treatment take = site.sharp() && !slight ? Treatment.GUSSET : Treatment.CLIPS;
    CornerRefusal refused =
        asked == Treatment.AUTO || asked == take
            ? CornerRefusal.NONE
            : CornerRefusal.plain(
                CornerChooser.words(asked)
                    + " takes up covering, and at a hollow place there is too little");
    double lack = opening(site);
    if (slight) {
      return new CornerChoice(
          take,
          Fold.NONE,
          0,
          0,
          1,
          CornerChooser.text(
              "the corner is slightly hollow: the covering stretches %.0f over %.0f on either side",
              lack, STRETCHED),
          refused);
    }
    if (site.sharp()) {
      return new CornerChoice(
          take,
          Fold.GUSSET,
          0,
          0,
          0,
          CornerChooser.text("the corner is hollow and the covering opens %.0f there", lack),
          refused);
    }
    double needed = stretchNeeded(site);
    int clips = (int) Math.ceil(-site.turn() * site.mostRadius() / CLIP_SPACING - 1e-9);
    String reason =
        Double.isInfinite(needed)
            ? CornerChooser.text(
                "the curve is hollow, its radius of %.0f no more than the wall", site.leastRadius())
            : CornerChooser.text("the curve is hollow: the wall stretches %.1f %%", 100 * needed);
    return new CornerChoice(take, Fold.NONE, 0, 0, Math.max(1, clips), reason, refused);
  }

  /** How far the covering opens at a sharp hollow corner by the time it reaches the back, mm. */
  private double opening(CornerSite site) {
    TautPath path = paths.apply(site);
    return -2 * Math.tan(site.turn() / 2) * path.surplus(path.backStart());
  }

  /**
   * How far the covering must stretch along a hollow curve, a fraction of its length: the most of
   * (r - x(s)) / (r - s) - 1 down to the tips of its clips; infinite where no flat covering is
   * left.
   */
  double stretchNeeded(CornerSite site) {
    if (site.sharp()) {
      return opening(site) / (2 * STRETCHED);
    }
    TautPath path = paths.apply(site);
    double worst = 0;
    for (double s : path.breaks(8)) {
      worst = Math.max(worst, stretchAt(site, path, s));
    }
    return Math.max(worst, stretchAt(site, path, path.backStart() + CLIP_TIP));
  }

  private static double stretchAt(CornerSite site, TautPath path, double s) {
    double flat = site.leastRadius() - s;
    return flat <= 0 ? Double.POSITIVE_INFINITY : (site.leastRadius() - path.out(s)) / flat - 1;
  }
}
