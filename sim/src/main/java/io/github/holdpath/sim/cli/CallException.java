package io.github.holdpath.sim.cli;

/** The call is wrong: one sentence that says what would be right. */
public final class CallException extends Exception {
  private static final long serialVersionUID = 1L;

  /** With the sentence. */
  public CallException(String message) {
    super(message);
  }
}
