package padwright.design;

/** The shape of the foam's top edge. */
public sealed interface EdgeShape {
  record Square() implements EdgeShape {}

  /** Rounded to a quarter circle of this radius, mm. */
  record Round(double radius) implements EdgeShape {}

  /** Cut off at 45 degrees, this far in and down, mm. */
  record Bevel(double size) implements EdgeShape {}

  /** A half circle over the whole height of the foam. */
  record FullRound() implements EdgeShape {}
}
