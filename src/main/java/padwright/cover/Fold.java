package padwright.cover;

/** How the surplus of covering at a corner is folded away. */
public enum Fold {
  /** No surplus: the outline runs on smoothly. */
  NONE,
  /** One pleat; the strip of the side before the corner lies on top. */
  SINGLE_FIRST_OVER,
  /** One pleat; the strip of the side after the corner lies on top. */
  SINGLE_SECOND_OVER,
  /** Two pleats that meet on the arris. */
  DOUBLE,
  /** A hollow corner: slit along the bisector and a gusset let in. */
  GUSSET;

  boolean single() {
    return this == SINGLE_FIRST_OVER || this == SINGLE_SECOND_OVER;
  }

  boolean firstOver() {
    return this == SINGLE_FIRST_OVER;
  }
}
