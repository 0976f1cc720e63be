package padwright.design;

import java.util.List;

/**
 * Cut-outs through the part and what is let into or put on its board.
 *
 * @param cutOuts through board and foam
 * @param vents through the board, so that air leaves when the foam is pressed
 * @param inserts T-nuts
 * @param zones hook-and-loop or tape on the back
 */
public record Fittings(
    List<CutOut> cutOuts,
    List<WrappedPad.Hole> vents,
    List<ThreadedInsert> inserts,
    List<Zone> zones) {
  public Fittings {
    cutOuts = List.copyOf(cutOuts);
    vents = List.copyOf(vents);
    inserts = List.copyOf(inserts);
    zones = List.copyOf(zones);
  }

  public static Fittings none() {
    return new Fittings(List.of(), List.of(), List.of(), List.of());
  }

  /**
   * A cut-out through board and foam.
   *
   * @param shape any outline; its middle lies at x, y from the middle of the base's
   */
  public record CutOut(OutlineShape shape, double x, double y, Through through) {}

  /** What the covering does over a cut-out. */
  public enum Through {
    /** Slit and turned through to the back. */
    TURNED,
    /** Left whole: the cut-out is in board and foam only. */
    WHOLE
  }

  /**
   * A T-nut: its barrel goes through the board, its flange lies on the board's face under the foam.
   */
  public record ThreadedInsert(double x, double y, double barrel, double flange) {}

  /** A rectangle on the back kept for hook-and-loop or tape; x, y its middle. */
  public record Zone(ZoneKind kind, double x, double y, double length, double width) {}

  /** What is stuck on a zone. */
  public enum ZoneKind {
    HOOK_AND_LOOP,
    TAPE
  }
}
