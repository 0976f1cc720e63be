package padwright.measure;

/** Millimetres and what they are made of. */
public final class Mm {
  /** One inch, exactly (international yard and pound agreement, 1959). */
  public static final double PER_INCH = 25.4;

  private Mm() {}
}
