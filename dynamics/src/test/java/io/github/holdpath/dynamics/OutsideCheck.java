package io.github.holdpath.dynamics;

/**
 * One outside number, or a set of them.
 *
 * @param group heading on the page
 * @param what is compared
 * @param source of the outside number
 * @param ours by this code; of a set how many numbers there are
 * @param theirs from outside; of a set as {@code ours}
 * @param difference relative, of a set the largest
 * @param tolerance relative
 * @param digits shown of the numbers
 */
public record OutsideCheck(
    String group,
    String what,
    String source,
    double ours,
    double theirs,
    double difference,
    double tolerance,
    int digits) {
  /** One number from outside. */
  public static OutsideCheck of(
      String group, String what, String source, double ours, double theirs, double tolerance) {
    double difference = theirs == 0 ? Math.abs(ours) : Math.abs(ours - theirs) / Math.abs(theirs);
    return new OutsideCheck(group, what, source, ours, theirs, difference, tolerance, 6);
  }

  /** A set of numbers, of which the largest difference counts. */
  public static OutsideCheck set(
      String group, String what, String source, int count, double difference, double tolerance) {
    return new OutsideCheck(group, what, source, count, count, difference, tolerance, 6);
  }
}
