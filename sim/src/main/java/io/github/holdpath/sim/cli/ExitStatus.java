package io.github.holdpath.sim.cli;

/** Exit statuses of the program. */
final class ExitStatus {
  /** It holds, or the command did what it was told. */
  static final int OK = 0;

  /** The grip does not hold. */
  static final int DOES_NOT_HOLD = 1;

  /** The call or a file is wrong; nothing was written. */
  static final int WRONG_INPUT = 2;

  /** A bug of this program. */
  static final int BUG = 70;

  private ExitStatus() {}
}
