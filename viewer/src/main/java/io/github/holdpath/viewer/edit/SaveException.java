package io.github.holdpath.viewer.edit;

/** A draft was not saved; the message says why and what to do. */
public final class SaveException extends Exception {
  private static final long serialVersionUID = 1L;

  /** With a message for the user. */
  public SaveException(String message) {
    super(message);
  }
}
