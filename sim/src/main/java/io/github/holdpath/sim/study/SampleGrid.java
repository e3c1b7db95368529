package io.github.holdpath.sim.study;

/** Sample times of a stretch: its ends, and the whole steps between. */
final class SampleGrid {
  private final double step;
  private final double from;
  private final double to;
  private final long first;
  private final int inside;

  /**
   * Times between two ends.
   *
   * @param step whole multiples of which are sampled, s
   */
  SampleGrid(double from, double to, double step) {
    this.step = step;
    this.from = from;
    this.to = to;
    // A quotient may round to either side of a whole step that is one of the ends.
    long start = (long) Math.floor(from / step);
    while (start * step <= from) {
      start++;
    }
    long last = (long) Math.ceil(to / step);
    while (last * step >= to) {
      last--;
    }
    this.first = start;
    this.inside = (int) Math.max(1, last - first + 1);
  }

  /** Whether both ends are one. */
  boolean instant() {
    return from == to;
  }

  /** Number of samples. */
  int size() {
    return inside + 2;
  }

  /** Time of one, s. */
  double time(int i) {
    if (i == 0) {
      return from;
    }
    if (i == inside + 1) {
      return to;
    }
    double t = (first + i - 1) * step;
    // A stretch shorter than a step gets its middle.
    return t > from && t < to ? t : from + (to - from) / 2;
  }

  /** The sample nearest to a time. */
  int near(double time) {
    return (int) Math.max(0, Math.min(size() - 1, Math.round(time / step) - first + 1));
  }
}
