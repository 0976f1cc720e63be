package padwright.desk.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How far a part can be opened: from covered, one body after another is taken off in the order in
 * which a maker would strip it, down to the board alone.
 *
 * @param stages from covered to the board alone; at least one
 */
public record Opening(List<Stage> stages) {
  public Opening {
    stages = List.copyOf(stages);
  }

  /**
   * A part opened so far.
   *
   * @param words what is seen, such as "Covering taken off"
   * @param bodies that are still there
   */
  public record Stage(String words, List<Body> bodies) {
    public Stage {
      bodies = List.copyOf(bodies);
    }
  }

  private static final int ON_BACK = 1;

  /** What comes off first: what lies on the back, then from the face downwards. */
  private static int order(Body body) {
    return switch (body.kind()) {
      case DUST_COVER -> 0;
      case PACKING -> ON_BACK;
      case COVERING -> 2;
      case WADDING -> 3;
      case FOAM -> 1000 - body.layer();
      case BOARD -> 2000;
    };
  }

  public static Opening of(Solid solid) {
    List<Body> left = new ArrayList<>(solid.bodies());
    left.sort(Comparator.comparingInt(Opening::order));
    List<Stage> stages = new ArrayList<>();
    stages.add(new Stage("Covered, as finished", left));
    while (left.size() > 1) {
      String names = left.remove(0).name();
      // What lies on the back comes off together: from the face nothing of it is seen.
      if (order(left.get(0)) == ON_BACK && stages.size() == 1) {
        names += " and " + left.remove(0).name();
      }
      String words =
          Character.toUpperCase(names.charAt(0))
              + names.substring(1)
              + " taken off"
              + (left.size() == 1 ? ": " + left.get(0).name() + " alone" : "");
      stages.add(new Stage(words, left));
    }
    return new Opening(stages);
  }

  /** How many steps there are from covered to the board alone. */
  public int steps() {
    return stages.size() - 1;
  }

  /** The part opened by so many steps; by as many as there are where that is more. */
  public Stage at(int step) {
    return stages.get(within(step));
  }

  public int within(int step) {
    return Math.max(0, Math.min(steps(), step));
  }
}
