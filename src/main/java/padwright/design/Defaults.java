package padwright.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.material.Board;
import padwright.material.Covering;
import padwright.material.Foam;
import padwright.material.Status;

/**
 * The values taken where the maker left a field out, each remembered with its reason so that the
 * result can name it. Practice and our own choice, no standard; the same figures stand in the
 * catalogue's constants with their status.
 */
public final class Defaults {
  /** A base to this width is narrow, mm. */
  public static final double NARROW = 60;

  /** A base wider than this is wide, mm. */
  public static final double WIDE = 300;

  /** A coated covering from this thickness on counts as stiff, mm. */
  private static final double STIFF = 1.5;

  /** A rest to this width and height takes a shorter relief stop, mm. */
  private static final double THIN_REST_WIDTH = 75;

  private static final double THIN_REST_WALL = 40;

  /** The published gap a side of a set-in seat, mm (3/16 in; E. A. Johnson 1919, ch. IV). */
  public static final double OPENING_GAP = 4.7625;

  /** A gap that is kept however thick the covering is, mm. */
  public static final double LEAST_CLEARANCE = 1.5;

  private final List<Assumption> taken = new ArrayList<>();

  /** Everything taken so far, in the order it was asked for. */
  public List<Assumption> taken() {
    return List.copyOf(taken);
  }

  /** Notes a default that is not a length. */
  public void note(String field, String value, String reason, Status status) {
    taken.add(new Assumption(field, value, reason, status));
  }

  private double or(
      OptionalDouble given, String field, double value, String reason, Status status) {
    if (given.isPresent()) {
      return given.getAsDouble();
    }
    note(field, String.format(Locale.ROOT, "%.1f mm", value), reason, status);
    return value;
  }

  public double coverThickness(OptionalDouble given, Covering covering) {
    return or(
        given,
        "cover.thickness",
        covering.thickness(),
        "the catalogue's for " + covering.id(),
        covering.origin().status());
  }

  /** The thinnest the board may be: what a caliper said, or its tolerance's lower limit. */
  public double leastThickness(OptionalDouble measured, Board board, double nominal) {
    return or(
        measured,
        "base.measured",
        board.lowerLimit(nominal),
        String.format(
            Locale.ROOT, "the thinnest that %s sold as %.1f may be", board.name(), nominal),
        board.listed(nominal).map(t -> t.origin().status()).orElse(board.origin().status()));
  }

  public double overhang(
      OptionalDouble given, int layer, Foam foam, double foamHeight, SizeMeaning size) {
    double value;
    String reason;
    if (size == SizeMeaning.OPENING) {
      value = 0;
      reason = "flush in an opening";
    } else if (foamHeight <= 25 && foam.firm()) {
      value = 0;
      reason = "foam to 25 thick and firm stands flush";
    } else if (foamHeight <= 50) {
      value = 6;
      reason = "soft foam, or foam to 50 thick, stands 6 over";
    } else {
      value = 12;
      reason = "foam over 50 thick stands 12 over";
    }
    return or(given, "foam[" + layer + "].overhang", value, reason, Status.PRACTICE);
  }

  private static boolean stiff(Covering covering, double thickness) {
    return covering.family() == Covering.Family.LEATHER
        || (covering.family() == Covering.Family.COATED && thickness >= STIFF);
  }

  public double turnUnder(OptionalDouble given, double baseWidth, Covering c, double thickness) {
    double value = 25;
    String reason = "base over 300 wide";
    if (baseWidth <= NARROW) {
      value = 15;
      reason = "base to 60 wide";
    } else if (stiff(c, thickness)) {
      value = 30;
      reason = "stiff covering pulled by hand";
    } else if (baseWidth <= WIDE) {
      value = 20;
      reason = "base to 300 wide";
    }
    return or(given, "cover.turnUnder", value, reason, Status.PRACTICE);
  }

  public double grip(OptionalDouble given, double baseWidth, Covering c, double thickness) {
    double value = 25;
    String reason = "base over 300 wide";
    if (baseWidth <= NARROW) {
      value = 17;
      reason = "base to 60 wide: staple and trim one side first";
    } else if (stiff(c, thickness)) {
      value = 45;
      reason = "stiff covering pulled by hand";
    } else if (baseWidth <= WIDE) {
      value = 12;
      reason = "base to 300 wide";
    }
    return or(given, "cover.grip", value, reason, Status.PRACTICE);
  }

  public double reliefStop(OptionalDouble given, double baseWidth, double wall) {
    boolean thin = baseWidth <= THIN_REST_WIDTH && wall <= THIN_REST_WALL;
    return or(
        given,
        "corners.reliefStop",
        thin ? 10 : 12,
        thin ? "thin narrow rest" : "relief cuts stop about 1/2 in from the fold",
        Status.PRACTICE);
  }

  public double spacing(OptionalDouble given, Covering covering) {
    boolean close =
        covering.family() == Covering.Family.COATED || covering.family() == Covering.Family.LEATHER;
    return or(
        given,
        "staples.spacing",
        close ? 20 : 25,
        close ? "coated cloth and leather" : "woven and knitted cloth",
        Status.PRACTICE);
  }

  public double edgeDistance(OptionalDouble given, double baseWidth, Board board) {
    double value = baseWidth <= NARROW ? 8 : board.pressedFibre() ? 15 : 12;
    String reason =
        baseWidth <= NARROW
            ? "base to 60 wide"
            : board.pressedFibre() ? "pressed fibre board splits at its edge" : "base over 60 wide";
    return or(given, "staples.edgeDistance", value, reason, Status.PRACTICE);
  }

  public double waddingThickness(OptionalDouble given, double compressed, String id) {
    return or(
        given,
        "wadding.thickness",
        compressed,
        "compressed, the catalogue's for " + id,
        Status.PRACTICE);
  }

  /** The gap of a keep-clear side with so many layers of covering in it. */
  public static double clearance(double coverThickness, int layers) {
    return Math.max(LEAST_CLEARANCE, OPENING_GAP - coverThickness * layers);
  }

  /** Names the gaps taken on the sides that keep clear, each with its layers of covering. */
  public void noteClearance(List<WrappedPad.Neighbour> sides, double coverThickness, int[] layers) {
    List<String> values = new ArrayList<>();
    for (int k = 0; k < sides.size(); k++) {
      String value = String.format(Locale.ROOT, "%.1f mm", clearance(coverThickness, layers[k]));
      if (sides.get(k) == WrappedPad.Neighbour.KEEP_CLEAR && !values.contains(value)) {
        values.add(value);
      }
    }
    if (!values.isEmpty()) {
      note(
          "base.clearance",
          String.join(", ", values),
          String.format(
              Locale.ROOT,
              "3/16 in a side less the covering in it, at least %.1f mm",
              LEAST_CLEARANCE),
          Status.PUBLISHED);
    }
  }

  public double dustCoverInset(OptionalDouble given, boolean wanted) {
    return wanted
        ? or(given, "dustCover.inset", 6, "its edge inside the base's edge", Status.PRACTICE)
        : given.orElse(6);
  }

  public double dustCoverTurn(OptionalDouble given, boolean wanted) {
    return wanted
        ? or(given, "dustCover.turn", 12, "its own edge turned under", Status.PRACTICE)
        : given.orElse(12);
  }
}
