package padwright.cli;

/** What the program tells its caller on leaving. Part of the contract: scripts rely on it. */
public final class ExitStatus {
  public static final int FINE = 0;

  /** At least one part has a stop finding. */
  public static final int STOPPED = 1;

  /** The command, a file or a number in it was not taken; nothing was done. */
  public static final int REFUSED = 2;

  /** A file could not be written; nothing new was left behind. */
  public static final int CANNOT_WRITE = 3;

  /** A fault in the program. */
  public static final int FAULT = 4;

  private ExitStatus() {}
}
