package io.github.holdpath.viewer.shot;

/** Nothing on this machine can draw: one sentence that says what to install. */
public final class NoGraphicsException extends Exception {
  private static final long serialVersionUID = 1L;

  NoGraphicsException(String why, Throwable cause) {
    super(message(why), cause);
  }

  private static String message(String why) {
    return "no graphics library can draw here (" + why + "); " + Machine.HERE.advice;
  }
}
