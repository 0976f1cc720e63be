package padwright.desk.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Run;

/**
 * The sides of an outline of a named kind as sides of the same outline by its points. A rounded
 * corner, which has no name in a run, goes with the run that its edge comes from.
 */
final class NamedSides {
  private static final String CORNER = " corner";

  private final List<String> names;
  private final WrappedPad pad;

  /**
   * @param names of the segments, in order
   */
  NamedSides(List<String> names, WrappedPad pad) {
    this.names = names;
    this.pad = pad;
  }

  List<String> numbered(List<String> sides) {
    List<String> all = new ArrayList<>();
    for (int k = 0; k < names.size(); k++) {
      String name = names.get(k);
      if (sides.contains(name) || name.endsWith(CORNER) && withRun(k, sides)) {
        all.add(OutlineEdit.side(k));
      }
    }
    return all;
  }

  private boolean withRun(int corner, List<String> sides) {
    int n = names.size();
    Optional<Run> before = run(names.get(Math.floorMod(corner - 1, n)));
    Optional<Run> after = run(names.get((corner + 1) % n));
    Optional<Run> shaped = before.filter(this::shapes);
    boolean both = shaped.isPresent() && before.equals(after);
    Optional<Run> own =
        both
            ? before
            : before.filter(this::passes).isPresent() ? before : after.filter(this::passes);
    return own.isPresent() && own.get().sides().equals(sides);
  }

  private Optional<Run> run(String side) {
    return pad.runs().stream().filter(r -> r.sides().contains(side)).findFirst();
  }

  /** A rounded corner takes an edge from its sides, but never their turn-under. */
  private boolean shapes(Run run) {
    boolean shaped = run.edge().isPresent() || run.overhang().isPresent();
    return shaped && run.turnUnder().isEmpty() && run.open().isEmpty();
  }

  private boolean passes(Run run) {
    return run.passage().isPresent() && shapes(run);
  }
}
