package io.github.holdpath.sim.scene;

/**
 * One fault in a user's file.
 *
 * @param file as the user named it
 * @param line from 1, or 0 where no place applies
 * @param column from 1, or 0 where no place applies
 * @param pointer JSON Pointer without its leading slash, as {@code part/mass}; empty for the whole
 *     file
 * @param message what is wrong and what would be right, one or two sentences
 */
public record Fault(String file, int line, int column, String pointer, String message) {
  /** One line for the error stream: {@code file:line:column: pointer: message}. */
  public String toLine() {
    StringBuilder s = new StringBuilder(file);
    if (line > 0) {
      s.append(':').append(line).append(':').append(column);
    }
    s.append(": ");
    if (!pointer.isEmpty()) {
      s.append(pointer).append(": ");
    }
    return s.append(message).toString();
  }
}
