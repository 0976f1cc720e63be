package padwright.measure;

/** Makes text from outside fit to show: one line, no control characters, not overlong. */
public final class Printable {
  private Printable() {}

  /** {@code text} cut after {@code most} characters, control characters shown as {@code ?}. */
  public static String shortened(String text, int most) {
    StringBuilder b = new StringBuilder();
    text.codePoints()
        .limit(most)
        .forEach(c -> b.appendCodePoint(Character.isISOControl(c) || isFormat(c) ? '?' : c));
    if (text.codePointCount(0, text.length()) > most) {
      b.append("...");
    }
    return b.toString();
  }

  private static boolean isFormat(int codePoint) {
    int type = Character.getType(codePoint);
    return type == Character.FORMAT
        || type == Character.SURROGATE
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR;
  }
}
