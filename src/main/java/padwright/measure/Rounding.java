package padwright.measure;

/** Which way a printed length may differ from the true one. */
public enum Rounding {
  NEAREST,
  /** Never more than the true length: a base, which must still go into its opening. */
  DOWN,
  /** Never less than the true length: a cover, which must still reach. */
  UP
}
