package padwright.cli;

/** Counts in words. */
final class Plural {
  private Plural() {}

  /** Such as {@code 1 part} or {@code 3 parts}. */
  static String of(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
