package padwright.jobfile;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.Corners;
import padwright.design.WrappedPad.DustCover;
import padwright.design.WrappedPad.Finish;
import padwright.design.WrappedPad.Fixing;
import padwright.design.WrappedPad.Host;
import padwright.design.WrappedPad.Staples;
import padwright.design.WrappedPad.Treatment;
import padwright.json.Node;

/** Reads what holds the covering and the part: corners, staples, host and dust cover. */
final class FixingReader {
  /** Folds that need a corner; a round outline has none. */
  private static final Set<Treatment> CORNER_FOLDS =
      EnumSet.of(Treatment.SINGLE_PLEAT, Treatment.DOUBLE_PLEAT, Treatment.MITRED_END);

  /** Ways for a hollow corner or curve; of all outlines only a free one can have it. */
  private static final Set<Treatment> HOLLOW = EnumSet.of(Treatment.GUSSET, Treatment.CLIPS);

  private final Rows rows;
  private final Lengths lengths;

  FixingReader(Rows rows, Lengths lengths) {
    this.rows = rows;
    this.lengths = lengths;
  }

  Corners corners(Optional<Node> given, OutlineShape outline) {
    if (given.isEmpty()) {
      return new Corners(List.of(Treatment.AUTO), OptionalDouble.empty(), OptionalDouble.empty());
    }
    Node node = given.get();
    if (node.kind() == Node.Kind.STRING) {
      return new Corners(
          List.of(treatment(node, outline)), OptionalDouble.empty(), OptionalDouble.empty());
    }
    if (node.kind() != Node.Kind.OBJECT) {
      throw node.refuse(
          node.shown() + " is not a way to fold a corner", "Use " + Words.TREATMENT.listed());
    }
    node.requireObject("treatment", "each", "reliefStop", "pleatDepth");
    Fields.notBoth(node, "treatment", "each");
    return new Corners(
        treatments(node, outline),
        lengths.optional(node, "reliefStop", 0, Limits.MOST_TURN_UNDER),
        lengths.optional(node, "pleatDepth", Limits.LEAST_PLEAT, Limits.MOST_PLEAT));
  }

  private static List<Treatment> treatments(Node node, OutlineShape outline) {
    Optional<Node> each = node.get("each");
    if (each.isEmpty()) {
      return List.of(node.get("treatment").map(n -> treatment(n, outline)).orElse(Treatment.AUTO));
    }
    if (Outlines.round(outline)) {
      throw each.get()
          .refuse(
              each.get().excerpt() + ": a round outline has no corners to tell apart",
              "Write \"treatment\" with \"auto\", \"eased\", \"pleats\" or \"notches\"");
    }
    int corners = Outlines.corners(outline);
    return each.get().array(corners, corners).stream().map(n -> treatment(n, outline)).toList();
  }

  private static Treatment treatment(Node node, OutlineShape outline) {
    Treatment treatment = Words.TREATMENT.read(node);
    if (HOLLOW.contains(treatment) && !(outline instanceof OutlineShape.FreePath)) {
      throw node.refuse(
          node.shown() + " is for a hollow corner or curve, and this outline has none",
          "Use \"auto\", or draw the outline as a \"path\"");
    }
    if (Outlines.round(outline) && CORNER_FOLDS.contains(treatment)) {
      throw node.refuse(
          node.shown() + " needs a corner, and a round outline has none",
          "Use \"auto\", \"eased\", \"pleats\" or \"notches\"");
    }
    return treatment;
  }

  Staples staples(Optional<Node> given, OutlineShape outline) {
    if (given.isEmpty()) {
      return new Staples(
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty());
    }
    Node node = given.get();
    node.requireObject("staple", "leg", "spacing", "edgeDistance", "pull");
    Optional<Node> pull = node.get("pull");
    return new Staples(
        node.get("staple").map(rows::staple),
        lengths.optional(node, "leg", Limits.LEAST_LEG, Limits.MOST_LEG),
        lengths.optional(node, "spacing", Limits.LEAST_SPACING, Limits.MOST_SPACING),
        lengths.optional(
            node, "edgeDistance", Limits.LEAST_TURN_UNDER, Outlines.shorterSide(outline) / 2),
        pull.isPresent()
            ? OptionalDouble.of(pull.get().number(0, Limits.MOST_PULL))
            : OptionalDouble.empty());
  }

  Host host(Optional<Node> given, OutlineShape outline) {
    if (given.isEmpty()) {
      return Host.none();
    }
    Node node = given.get();
    node.requireObject("fixing", "thickness", "finish", "screw", "screwLength", "positions");
    Node fixing = node.require("fixing");
    if (Words.FIXING.read(fixing) != Fixing.SCREWS) {
      for (String field : List.of("screw", "screwLength", "positions")) {
        if (node.get(field).isPresent()) {
          throw node.require(field)
              .refuse(
                  "\""
                      + field
                      + "\" is given as "
                      + node.require(field).excerpt()
                      + ", but the fixing is "
                      + fixing.shown(),
                  "Leave it out, or write \"fixing\": \"screws\"");
        }
      }
    }
    Host host =
        new Host(
            Words.FIXING.read(fixing),
            lengths.optional(node, "thickness", Limits.LEAST_BOARD / 2, Limits.MOST_FOAM),
            node.get("finish").map(Words.FINISH::read).orElse(Finish.BARE),
            node.get("screw").map(rows::screw),
            lengths.optional(node, "screwLength", Limits.LEAST_LEG, Limits.MOST_SCREW),
            BaseReader.holes(node, "positions", outline, lengths));
    if (host.fixing() == Fixing.SCREWS && host.thickness().isEmpty()) {
      throw node.refuse(
          "\"thickness\" is missing, and it is needed with screws: " + node.excerpt(),
          "Add \"thickness\" with what the screw goes through before it reaches the base");
    }
    return host;
  }

  DustCover dustCover(Optional<Node> given, OutlineShape outline) {
    if (given.isEmpty() || given.get().kind() == Node.Kind.BOOL) {
      boolean wanted = given.isEmpty() || given.get().bool();
      return new DustCover(wanted, OptionalDouble.empty(), OptionalDouble.empty());
    }
    Node node = given.get();
    if (node.kind() != Node.Kind.OBJECT) {
      throw node.refuse(
          node.shown() + " is not a dust cover",
          "Write true, false or { \"inset\": 6, \"turn\": 12 }");
    }
    node.requireObject("inset", "turn");
    return new DustCover(
        true,
        lengths.optional(node, "inset", 0, Outlines.shorterSide(outline) / 2),
        lengths.optional(node, "turn", 0, Limits.MOST_TURN_UNDER));
  }
}
