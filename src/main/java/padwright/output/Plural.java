package padwright.output;

/** Counts in words. */
public final class Plural {
  private Plural() {}

  /** Such as {@code 1 part} or {@code 3 parts}. */
  public static String of(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
