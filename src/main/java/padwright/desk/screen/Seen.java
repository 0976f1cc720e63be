package padwright.desk.screen;

/** Remembers what a pane was last drawn from, so that it is drawn again only for something new. */
final class Seen {
  private Object[] last = {};

  /** Whether any of these is another object than the last time. */
  boolean changed(Object... now) {
    boolean same = now.length == last.length;
    for (int i = 0; same && i < now.length; i++) {
      same = now[i] == last[i];
    }
    last = now;
    return !same;
  }

  /** The next look is taken for a new one. */
  void forget() {
    last = new Object[0];
  }
}
