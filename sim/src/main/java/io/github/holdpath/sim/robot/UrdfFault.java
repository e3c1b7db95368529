package io.github.holdpath.sim.robot;

/**
 * One fault in a URDF file.
 *
 * @param file as the user named it
 * @param line from 1, or 0 where no line applies
 * @param message what is wrong and what would be right
 */
public record UrdfFault(String file, int line, String message) {
  /** One line for the error stream: {@code file:line: message}. */
  public String toLine() {
    return file + (line > 0 ? ":" + line : "") + ": " + message;
  }
}
