package padwright.fastening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.fastening.StaplePlan.LegVerdict;
import padwright.material.Staple;
import padwright.measure.Sentence;

/**
 * How deep a staple goes. Breaking through is judged by the nominal leg, the longer of the two
 * conventions in use, and holding by the inside leg, a wire thickness shorter; so both err on the
 * safe side whichever the box means.
 */
public final class StapleDepths {
  /**
   * Board left under the point, mm; own choice. Also takes the crown's bedding into soft covering.
   */
  public static final double LEAST_MARGIN = 1.5;

  /** A leg should enter the board this far, mm: 1/4 in, trade rule. */
  public static final double GOOD_HOLD = 6.35;

  /** Below this a staple barely holds, mm; own choice. */
  public static final double POOR_HOLD = 4;

  private StapleDepths() {}

  /** Nominal leg less the covering over the board: how far the point goes into the board. */
  public static double penetration(double leg, int layers, double coverThickness) {
    return leg - layers * coverThickness;
  }

  /** Board left under the point; negative where it comes through. */
  public static double margin(double leg, int layers, double coverThickness, double leastBoard) {
    return leastBoard - penetration(leg, layers, coverThickness);
  }

  /** Inside leg less the covering: what holds. */
  public static double hold(Staple staple, double leg, int layers, double coverThickness) {
    return leg - staple.wireThickness() - layers * coverThickness;
  }

  /** Every leg of every series with its verdict, in the catalogue's order. */
  public static List<LegVerdict> all(
      List<Staple> series, int cornerLayers, double coverThickness, double leastBoard) {
    List<LegVerdict> list = new ArrayList<>();
    for (Staple s : series) {
      for (double leg : s.legs()) {
        list.add(verdict(s, leg, cornerLayers, coverThickness, leastBoard));
      }
    }
    return list;
  }

  /** One leg, in one layer and in the most layers that a corner has. */
  public static LegVerdict verdict(
      Staple s, double leg, int cornerLayers, double coverThickness, double leastBoard) {
    double margin = margin(leg, 1, coverThickness, leastBoard);
    double hold = hold(s, leg, 1, coverThickness);
    double cornerHold = hold(s, leg, cornerLayers, coverThickness);
    String verdict;
    if (margin <= 0) {
      verdict = text("comes through by %.1f", -margin);
    } else if (margin < LEAST_MARGIN) {
      verdict = text("only %.1f of board left under the point", margin);
    } else if (hold < POOR_HOLD) {
      verdict = text("too short: holds %.1f", hold);
    } else if (hold < GOOD_HOLD) {
      verdict = text("short: holds %.1f, %.2f wanted", hold, GOOD_HOLD);
    } else if (cornerHold < POOR_HOLD) {
      verdict = text("passes, but holds only %.1f at the corners", cornerHold);
    } else {
      verdict = "passes";
    }
    return new LegVerdict(
        s.id(),
        leg,
        penetration(leg, 1, coverThickness),
        margin,
        hold,
        margin(leg, cornerLayers, coverThickness, leastBoard),
        cornerHold,
        margin >= LEAST_MARGIN && hold >= GOOD_HOLD,
        verdict);
  }

  /** The verdict in two or three words, the same for every leg that shares it. */
  public static String brief(LegVerdict v) {
    if (v.margin() <= 0) {
      return "come through";
    } else if (v.margin() < LEAST_MARGIN) {
      return "leave too little board";
    } else if (v.hold() < POOR_HOLD) {
      return "too short";
    }
    return v.hold() < GOOD_HOLD ? "short" : "pass";
  }

  /** The longest leg of a series that passes. */
  public static Optional<LegVerdict> longestPassing(List<LegVerdict> legs, String series) {
    return legs.stream()
        .filter(v -> v.staple().equals(series) && v.passes())
        .max(java.util.Comparator.comparingDouble(LegVerdict::leg));
  }

  private static String text(String format, Object... values) {
    return Sentence.of(format, values);
  }
}
