package padwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import padwright.measure.InputRefused;

/** Where a command reads and writes. Results go to {@code out}, everything said to {@code err}. */
final class Streams {
  private final PrintStream out;
  private final PrintStream err;
  private final BufferedReader in;
  private final boolean terminal;

  /**
   * @param terminal whether a person sits at the other end and can be asked
   */
  Streams(PrintStream out, PrintStream err, InputStream in, boolean terminal) {
    this.out = out;
    this.err = err;
    this.in = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    this.terminal = terminal;
  }

  PrintStream out() {
    return out;
  }

  PrintStream err() {
    return err;
  }

  boolean terminal() {
    return terminal;
  }

  /** The next line of input; null at its end. */
  String readLine() {
    try {
      return in.readLine();
    } catch (IOException e) {
      throw new InputRefused(
          "", 0, "", "standard input cannot be read", "Give the numbers as options instead");
    }
  }

  /**
   * Hands a whole result over at once, so that a failure on the way leaves no half of it.
   *
   * @throws IOException where the other end does not take it, such as a full disk
   */
  void deliver(CharSequence result) throws IOException {
    out.append(result);
    if (out.checkError()) {
      throw new IOException("standard output could not be written");
    }
  }
}
