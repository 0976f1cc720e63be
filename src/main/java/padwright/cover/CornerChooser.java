package padwright.cover;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import padwright.design.WrappedPad.Kind;
import padwright.design.WrappedPad.Side;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.Vec2;
import padwright.measure.Sentence;
import padwright.shape.TautPath;

/**
 * Decides how a corner is folded: as the maker named it where that can be done, else by rule. The
 * numbers of the rule are our own choice and the trade's, and each is a named constant.
 */
final class CornerChooser {
  /** A base to this width is a narrow rest: its ends go over its long sides. mm, own choice. */
  static final double NARROW = 75;

  /** A wall higher than this is thick: two small folds lie flatter than a large one. mm, own. */
  static final double THICK = 60;

  /** From this radius a corner is eased if the covering takes it, then pleated evenly. mm, own. */
  static final double ROUNDED = 25;

  /** A pleat's flat facet may leave the rounding by this much, mm; own choice: it does not show. */
  static final double SAGITTA = 0.5;

  /** Depth of an ordinary pleat at a large rounding, mm; own choice. */
  static final double PLEAT_DEPTH = 10;

  /** Notches stand about this far apart on the outline, mm; own choice. */
  static final double NOTCH_SPACING = 25;

  /** Two sides face the front alike when the cosines differ by less. */
  private static final double EVEN = 1e-9;

  private final Kind kind;
  private final Side front;
  private final double leastWidth;
  private final boolean longPart;
  private final Function<CornerSite, TautPath> paths;
  private final Predicate<CornerSite> uneven;
  private final Predicate<CornerSite> glued;
  private final HollowChooser hollows;
  private final double ease;
  private final OptionalDouble pleatDepth;

  /**
   * @param leastWidth of the base
   * @param longPart whether the base is longer than wide, so that it has ends
   * @param paths the covering's way over the edge at a turning place
   * @param uneven whether two different sections meet at a turning place
   * @param glued whether the covering of a rounding ends where the back begins
   * @param ease part of its length that the covering can be eased by
   */
  CornerChooser(
      Kind kind,
      Side front,
      double leastWidth,
      boolean longPart,
      Function<CornerSite, TautPath> paths,
      Predicate<CornerSite> uneven,
      Predicate<CornerSite> glued,
      double ease,
      OptionalDouble pleatDepth) {
    this.kind = kind;
    this.front = front;
    this.leastWidth = leastWidth;
    this.longPart = longPart;
    this.paths = paths;
    this.uneven = uneven;
    this.glued = glued;
    this.hollows = new HollowChooser(paths);
    this.ease = ease;
    this.pleatDepth = pleatDepth;
  }

  CornerChoice choose(CornerSite site, Treatment asked, String endSides) {
    if (site.hollow()) {
      return hollows.choose(site, asked);
    }
    return site.sharp() ? sharp(site, asked, endSides) : rounded(site, asked);
  }

  /** How far the covering must stretch at a hollow place, a fraction; infinite where it cannot. */
  double stretchNeeded(CornerSite site) {
    return hollows.stretchNeeded(site);
  }

  /**
   * The fullness as a part of the covering's length where it is largest, 0 to 1: at the wall's end
   * or at the trim line.
   */
  double easeNeeded(CornerSite site, boolean wallOnly) {
    boolean wall = wallOnly || glued.test(site);
    TautPath path = paths.apply(site);
    return Math.max(easeAt(site, path.backStart()), wall ? 0 : easeAt(site, path.developed()));
  }

  private double easeAt(CornerSite site, double s) {
    double out = Math.max(-site.leastRadius(), paths.apply(site).out(s));
    return (s - out) / (site.leastRadius() + s);
  }

  private CornerChoice sharp(CornerSite site, Treatment asked, String endSides) {
    TautPath path = paths.apply(site);
    CornerRefusal refused = CornerRefusal.NONE;
    Treatment take = asked;
    if (asked == Treatment.EASED || asked == Treatment.PLEATS || asked == Treatment.NOTCHES) {
      refused = CornerRefusal.plain(words(asked) + " needs a rounded corner and this one is sharp");
      take = Treatment.AUTO;
    }
    boolean acute = site.turn() > Math.PI / 2 + 1e-6;
    if (take == Treatment.DOUBLE_PLEAT && acute) {
      double angle = 180 - Math.toDegrees(site.turn());
      refused =
          CornerRefusal.of(
              text("a double pleat needs 90 degrees or more and this corner has %.1f", angle),
              angle,
              90,
              "degrees");
      take = Treatment.SINGLE_PLEAT;
    }
    if (take == Treatment.DOUBLE_PLEAT && uneven.test(site)) {
      refused =
          CornerRefusal.plain(
              "a double pleat needs the same edge on both sides and here two different ones meet");
      take = Treatment.SINGLE_PLEAT;
    }
    String reason = "as named in the job";
    if (take == Treatment.AUTO) {
      if (leastWidth <= NARROW && longPart && !endSides.isEmpty()) {
        take = Treatment.MITRED_END;
        reason =
            text(
                "the base is %.0f wide, %.0f or less: the ends go over the long sides",
                leastWidth, NARROW);
      } else if (acute) {
        take = Treatment.SINGLE_PLEAT;
        reason = "the corner is sharper than square";
      } else if (uneven.test(site)) {
        take = Treatment.SINGLE_PLEAT;
        reason = "two different edges meet there";
      } else if (kind == Kind.STOOL_TOP) {
        take = Treatment.DOUBLE_PLEAT;
        reason = "a stool's corners are seen from both walls";
      } else if (path.backStart() > THICK) {
        take = Treatment.DOUBLE_PLEAT;
        reason =
            text(
                "the wall is %.0f high, over %.0f: two small folds lie flatter",
                path.backStart(), THICK);
      } else {
        take = Treatment.SINGLE_PLEAT;
        reason =
            text(
                "the wall is %.0f high, %.0f or less: one fold lies flat", path.backStart(), THICK);
      }
    }
    Fold fold =
        take == Treatment.DOUBLE_PLEAT
            ? Fold.DOUBLE
            : firstOver(site, take, endSides) ? Fold.SINGLE_FIRST_OVER : Fold.SINGLE_SECOND_OVER;
    double depth = path.surplus(path.backStart()) * Math.tan(site.turn() / 2);
    int pleats = take == Treatment.DOUBLE_PLEAT ? 2 : 1;
    return new CornerChoice(take, fold, pleats, depth / pleats, 0, reason, refused);
  }

  /**
   * The strip on top hides the pleat from whoever looks at its own wall: the front's and the back's
   * strips go over the sides', and on a narrow rest the ends' over the long sides'.
   */
  private boolean firstOver(CornerSite site, Treatment take, String endSides) {
    if (take == Treatment.MITRED_END && !endSides.isEmpty()) {
      return endSides.contains(site.before());
    }
    String seen = front.name().toLowerCase(Locale.ROOT);
    if (site.before().equals(site.after())) {
      return facesMore(site);
    }
    if (site.before().equals(seen)) {
      return true;
    }
    if (site.after().equals(seen)) {
      return false;
    }
    if (site.before().equals(opposite(seen)) || site.after().equals(opposite(seen))) {
      return site.before().equals(opposite(seen));
    }
    return facesMore(site);
  }

  /** Of two sides that face alike, whether the one before faces the front, or the back, more. */
  private boolean facesMore(CornerSite site) {
    Vec2 towards = Vec2.polar(-Math.PI / 2 + front.ordinal() * Math.PI / 2);
    return Math.abs(site.outBefore().dot(towards)) > Math.abs(site.outAfter().dot(towards)) + EVEN;
  }

  private static String opposite(String side) {
    return switch (side) {
      case "front" -> "back";
      case "back" -> "front";
      case "left" -> "right";
      default -> "left";
    };
  }

  private CornerChoice rounded(CornerSite site, Treatment asked) {
    CornerRefusal refused = CornerRefusal.NONE;
    Treatment take = asked;
    if (asked == Treatment.SINGLE_PLEAT
        || asked == Treatment.DOUBLE_PLEAT
        || asked == Treatment.MITRED_END) {
      refused =
          CornerRefusal.of(
              text(
                  "%s needs a sharp corner and this one is rounded to %.1f",
                  words(asked), site.leastRadius()),
              site.leastRadius(),
              0,
              "mm");
      take = Treatment.AUTO;
    }
    if (take == Treatment.NOTCHES && glued.test(site)) {
      refused = CornerRefusal.plain("notches are cut into a turn-under, and a glued side has none");
      take = Treatment.AUTO;
    }
    double wall = easeNeeded(site, true);
    double all = easeNeeded(site, false);
    String reason = "as named in the job";
    if (take == Treatment.EASED && all > ease) {
      refused =
          CornerRefusal.of(
              text("easing takes up %.1f %% and the covering gives %.1f %%", 100 * all, 100 * ease),
              100 * all,
              100 * ease,
              "%");
      take = Treatment.AUTO;
    }
    if (take == Treatment.AUTO) {
      if (all <= ease) {
        take = Treatment.EASED;
        reason =
            text("easing takes up %.1f %% and the covering gives %.1f %%", 100 * all, 100 * ease);
      } else if (wall <= ease) {
        take = Treatment.NOTCHES;
        reason =
            text(
                "the wall eases (%.1f %% of %.1f %%), the turn-under (%.1f %%) needs notches",
                100 * wall, 100 * ease, 100 * all);
      } else {
        take = Treatment.PLEATS;
        reason =
            text(
                "the wall would have to ease %.1f %% and the covering gives %.1f %%",
                100 * wall, 100 * ease);
      }
    }
    if (take == Treatment.EASED) {
      return new CornerChoice(take, Fold.NONE, 0, 0, 0, reason, refused);
    }
    if (take == Treatment.NOTCHES && wall > ease) {
      refused =
          CornerRefusal.of(
              text(
                  "notches take up what lies on the back, but the wall would have to ease %.1f %%"
                      + " and the covering gives %.1f %%",
                  100 * wall, 100 * ease),
              100 * wall,
              100 * ease,
              "%");
      take = Treatment.PLEATS;
    }
    if (take == Treatment.NOTCHES) {
      double along = site.turn() * site.mostRadius();
      int notches = Math.max(1, (int) Math.ceil(along / NOTCH_SPACING));
      return new CornerChoice(take, Fold.NONE, 0, 0, notches, reason, refused);
    }
    return pleated(site, reason, refused);
  }

  /** Path length at which the covering of a turning place ends. */
  double end(CornerSite site) {
    TautPath path = paths.apply(site);
    return glued.test(site) ? path.wallEnd() : path.developed();
  }

  private CornerChoice pleated(CornerSite site, String reason, CornerRefusal refused) {
    double fullness = fullness(site, end(site));
    double ratio = Math.min(1, SAGITTA / site.mostRadius());
    int facets = (int) Math.ceil(site.turn() / (2 * Math.acos(1 - ratio)) - 1e-9);
    int deep = 1;
    if (pleatDepth.isPresent() || site.leastRadius() >= ROUNDED) {
      double depth = pleatDepth.orElse(PLEAT_DEPTH);
      deep = (int) Math.ceil(fullness / (2 * depth) - 1e-9);
    }
    // A closed rim needs at least a triangle of facets, and four keep its bounding box.
    int n = Math.max(site.closed() ? 4 : 1, Math.max(facets, deep));
    Fold fold = awayFromFront(site);
    return new CornerChoice(Treatment.PLEATS, fold, n, fullness / (2 * n), 0, reason, refused);
  }

  /** The surplus of covering at a path length; round a corner the back cannot pass its centre. */
  double fullness(CornerSite site, double s) {
    TautPath path = paths.apply(site);
    double out = site.sharp() ? path.out(s) : Math.max(-site.leastRadius(), path.out(s));
    return site.turn() * (s - out);
  }

  private Fold awayFromFront(CornerSite site) {
    String seen = front.name().toLowerCase(Locale.ROOT);
    return site.after().equals(seen) || site.before().equals(opposite(seen))
        ? Fold.SINGLE_SECOND_OVER
        : Fold.SINGLE_FIRST_OVER;
  }

  static String words(Treatment t) {
    return t.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  static String text(String format, Object... values) {
    return Sentence.of(format, values);
  }
}
