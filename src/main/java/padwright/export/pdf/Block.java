package padwright.export.pdf;

/**
 * One paragraph of a sheet for the bench.
 *
 * @param marker before it, such as "3." or "Stop"; may be empty. Behind the line to write on, its
 *     unit
 */
record Block(Kind kind, String marker, String text) {
  enum Kind {
    /** Begins a section; stays with what follows. */
    HEADING,
    /** Plain, or with a marker before it. */
    ITEM,
    /** With a box to tick. */
    TICK,
    /** With a line to write on. */
    BLANK
  }

  static Block heading(String text) {
    return new Block(Kind.HEADING, "", text);
  }

  static Block item(String text) {
    return new Block(Kind.ITEM, "", text);
  }

  static Block item(String marker, String text) {
    return new Block(Kind.ITEM, marker, text);
  }

  static Block tick(String marker, String text) {
    return new Block(Kind.TICK, marker, text);
  }

  static Block blank(String text, String unit) {
    return new Block(Kind.BLANK, unit, text);
  }
}
