package padwright.jobfile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import padwright.design.EdgeShape;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.Open;
import padwright.design.WrappedPad.Run;
import padwright.json.Node;

/** Reads the runs of the outline that differ from the rest of the part. */
final class RunReader {
  private final Lengths lengths;
  private final List<String> names;
  private final double across;
  private final Function<Node, EdgeShape> edges;

  /**
   * @param across the outline's shorter side, mm
   * @param edges reads an edge shape
   */
  RunReader(Lengths lengths, OutlineShape outline, double across, Function<Node, EdgeShape> edges) {
    this.lengths = lengths;
    this.names = Outlines.sides(outline);
    this.across = across;
    this.edges = edges;
  }

  List<Run> runs(Node part) {
    List<Run> runs = new ArrayList<>();
    Map<String, Node> taken = new HashMap<>();
    for (Node node : Fields.list(part, "runs", Limits.MOST_RUNS)) {
      runs.add(run(node, taken));
    }
    return runs;
  }

  private Run run(Node node, Map<String, Node> taken) {
    node.requireObject("sides", "edge", "turnUnder", "overhang", "open", "passage");
    List<String> sides = sides(node.require("sides"), taken);
    Optional<Open> open = node.get("open").map(Words.OPEN::read);
    OptionalDouble turnUnder =
        lengths.optional(node, "turnUnder", Limits.LEAST_TURN_UNDER, Limits.MOST_TURN_UNDER);
    if (open.isPresent() && turnUnder.isPresent()) {
      throw node.require("turnUnder")
          .refuse("an open run has no turn-under", "Leave out \"turnUnder\" or \"open\"");
    }
    OptionalDouble passage =
        lengths.optional(node, "passage", Limits.LEAST_PASSAGE, Limits.LARGEST);
    if (passage.isPresent() && node.get("edge").isEmpty() && node.get("overhang").isEmpty()) {
      throw node.require("passage")
          .refuse(
              "a passage leads from one edge shape or overhang to another, and this run has neither"
                  + " of its own",
              "Give \"edge\" or \"overhang\" as well, or leave out \"passage\"");
    }
    Run run =
        new Run(
            sides,
            node.get("edge").map(edges),
            turnUnder,
            lengths.optional(node, "overhang", -Limits.mostStep(across), Limits.MOST_FOAM),
            open,
            passage);
    if (node.fields().size() == 1) {
      throw node.refuse(
          "this run differs in nothing", "Give \"edge\", \"turnUnder\", \"overhang\" or \"open\"");
    }
    return run;
  }

  private List<String> sides(Node node, Map<String, Node> taken) {
    if (names.isEmpty()) {
      throw node.refuse(
          "a round outline has one edge all round and no sides to tell apart",
          "Leave out \"runs\", or draw it with a \"path\"");
    }
    List<String> sides = new ArrayList<>();
    for (Node item : node.array(1, names.size())) {
      String side = item.oneOf(names);
      Node before = taken.putIfAbsent(side, item);
      if (before != null) {
        throw item.refuse(
            item.shown() + " is in a run already, in line " + before.line(), "Name each side once");
      }
      sides.add(side);
    }
    return sides;
  }
}
