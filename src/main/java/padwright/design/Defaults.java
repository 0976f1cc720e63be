package padwright.design;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.material.Board;
import padwright.material.Constants;
import padwright.material.Covering;
import padwright.material.Foam;
import padwright.material.Status;
import padwright.measure.Sentence;

/**
 * The values taken where the maker left a field out, each remembered with its reason so that the
 * result can name it. The numbers and where they come from stand in {@link Constants}.
 */
public final class Defaults {
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
    note(field, Sentence.of("%.1f mm", value), reason, status);
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
        Sentence.of("the thinnest that %s sold as %.1f may be", board.name(), nominal),
        board.listed(nominal).map(t -> t.origin().status()).orElse(board.origin().status()));
  }

  public double overhang(
      OptionalDouble given, int layer, Foam foam, double foamHeight, SizeMeaning size) {
    double flush = Constants.value("foam-flush-thickness");
    double middle = Constants.value("foam-overhang-middle-thickness");
    String field = "foam[" + layer + "].overhang";
    if (size == SizeMeaning.OPENING) {
      return rule(given, field, "foam-overhang-opening", "flush in an opening");
    }
    if (foamHeight <= flush && foam.firm()) {
      return or(
          given,
          field,
          0,
          text("foam to %.0f thick and firm stands flush", flush),
          status("foam-flush-thickness"));
    }
    return foamHeight <= middle
        ? rule(
            given,
            field,
            "foam-overhang-middle",
            text("soft foam, or foam to %.0f thick, stands over", middle))
        : rule(
            given, field, "foam-overhang-thick", text("foam over %.0f thick stands over", middle));
  }

  private static boolean stiff(Covering covering, double thickness) {
    return covering.family() == Covering.Family.LEATHER
        || (covering.family() == Covering.Family.COATED
            && thickness >= Constants.value("covering-stiff"));
  }

  /** Which of the rules for turn-under and grip a base falls under. */
  private static String widthRule(double baseWidth, Covering c, double thickness) {
    if (baseWidth <= Constants.value("base-narrow")) {
      return "narrow";
    }
    if (stiff(c, thickness)) {
      return "stiff";
    }
    return baseWidth <= Constants.value("base-middle") ? "middle" : "wide";
  }

  private static String widthReason(String rule) {
    return switch (rule) {
      case "narrow" -> text("base to %.0f wide", Constants.value("base-narrow"));
      case "stiff" -> "stiff covering pulled by hand";
      case "middle" -> text("base to %.0f wide", Constants.value("base-middle"));
      default -> text("base over %.0f wide", Constants.value("base-middle"));
    };
  }

  public double turnUnder(OptionalDouble given, double baseWidth, Covering c, double thickness) {
    String rule = widthRule(baseWidth, c, thickness);
    return rule(given, "cover.turnUnder", "turn-under-" + rule, widthReason(rule));
  }

  public double grip(OptionalDouble given, double baseWidth, Covering c, double thickness) {
    String rule = widthRule(baseWidth, c, thickness);
    String reason = widthReason(rule);
    return rule(
        given,
        "cover.grip",
        "grip-" + rule,
        rule.equals("narrow") ? reason + ": staple and trim one side first" : reason);
  }

  public double reliefStop(OptionalDouble given, double baseWidth, double wall) {
    boolean thin =
        baseWidth <= Constants.value("rest-thin-width")
            && wall <= Constants.value("rest-thin-wall");
    return thin
        ? rule(given, "corners.reliefStop", "relief-stop-narrow", "thin narrow rest")
        : rule(
            given,
            "corners.reliefStop",
            "relief-stop",
            "relief cuts stop about 1/2 in from the fold");
  }

  public double spacing(OptionalDouble given, Covering covering) {
    boolean close =
        covering.family() == Covering.Family.COATED || covering.family() == Covering.Family.LEATHER;
    return close
        ? rule(given, "staples.spacing", "staple-spacing-coated", "coated cloth and leather")
        : rule(given, "staples.spacing", "staple-spacing-woven", "woven and knitted cloth");
  }

  public double edgeDistance(OptionalDouble given, double baseWidth, Board board) {
    double narrow = Constants.value("base-narrow");
    if (baseWidth <= narrow) {
      return rule(
          given, "staples.edgeDistance", "staple-edge-narrow", text("base to %.0f wide", narrow));
    }
    return board.pressedFibre()
        ? rule(
            given,
            "staples.edgeDistance",
            "staple-edge-pressed-fibre",
            "pressed fibre board splits at its edge")
        : rule(given, "staples.edgeDistance", "staple-edge", text("base over %.0f wide", narrow));
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
    return Math.max(
        Constants.value("opening-clearance-least"),
        Constants.value("opening-clearance") - coverThickness * layers);
  }

  public double dustCoverInset(OptionalDouble given, boolean wanted) {
    return wanted
        ? rule(given, "dustCover.inset", "dust-cover-inset", "its edge inside the base's edge")
        : given.orElse(Constants.value("dust-cover-inset"));
  }

  public double dustCoverTurn(OptionalDouble given, boolean wanted) {
    return wanted
        ? rule(given, "dustCover.turn", "dust-cover-turn", "its own edge turned under")
        : given.orElse(Constants.value("dust-cover-turn"));
  }

  private double rule(OptionalDouble given, String field, String constant, String reason) {
    return or(given, field, Constants.value(constant), reason, status(constant));
  }

  private static Status status(String constant) {
    return Constants.row(constant).origin().status();
  }

  private static String text(String format, Object... values) {
    return Sentence.of(format, values);
  }
}
