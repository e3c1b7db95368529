package io.github.holdpath.sim.cli;

/** The call is wrong: one sentence that says what would be right. */
final class CallException extends Exception {
  private static final long serialVersionUID = 1L;

  CallException(String message) {
    super(message);
  }
}
