package io.github.holdpath.sim.timing;

/**
 * A timing from rest to rest with bounded jerk: the mean of another timing over a window of time,
 * played at a pace (theory, section 5.17). Jerk is a number at every instant and jumps; all else is
 * continuous. Immutable. Queries allocate nothing.
 */
public final class SmoothTiming implements SmoothResult {
  /** Offset of s in the state that {@link #at} writes. */
  public static final int PLACE = Timing.PLACE;

  /** Offset of s', 1/s in the unit of s. */
  public static final int RATE = Timing.RATE;

  /** Offset of s'', 1/s^2 in the unit of s. */
  public static final int ACCELERATION = Timing.ACCELERATION;

  /** Offset of s''', 1/s^3 in the unit of s. */
  public static final int JERK = 3;

  private final Timing base;
  private final double window;
  private final double pace;
  private final double least;
  private final String governs;

  /**
   * Smooths a timing.
   *
   * @param base the timing whose mean is taken, from rest to rest
   * @param window length of time of the mean, positive, s of the timing
   * @param pace how fast the mean is played, 1 as it is; speed goes with it, acceleration with its
   *     square, jerk with its cube
   * @param least duration of the fastest timing without limits of jerk, s
   * @param governs the limit that sets the pace
   * @throws IllegalArgumentException if the timing starts or ends in motion, or a number is not
   *     positive and finite
   */
  SmoothTiming(Timing base, double window, double pace, double least, String governs) {
    if (base.rate(0) != 0 || base.rate(base.cells()) != 0) {
      throw new IllegalArgumentException(
          "base must start and end at rest, but its rates there were "
              + base.rate(0)
              + " and "
              + base.rate(base.cells()));
    }
    positive("window", window);
    positive("pace", pace);
    this.base = base;
    this.window = window;
    this.pace = pace;
    this.least = least;
    this.governs = governs;
  }

  private static void positive(String name, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be positive and finite, but was " + value);
    }
  }

  /** Time from start to end, s. */
  public double duration() {
    return base.cells() == 0 ? 0 : (base.duration() + window) / pace;
  }

  /** Duration of the fastest timing of the same path without limits of jerk, s. */
  public double leastWithoutJerk() {
    return least;
  }

  /** The limit that is met exactly, and would be broken by playing faster. */
  public String governs() {
    return governs;
  }

  /** Time over which the mean is taken, s. */
  public double window() {
    return window / pace;
  }

  /**
   * Place and derivatives at an instant. Where the jerk jumps it is that after the jump.
   *
   * @param t time since the start, s; before it and after the end the path rests
   * @param state receives them at {@link #PLACE}, {@link #RATE}, {@link #ACCELERATION}, {@link
   *     #JERK}
   */
  public void at(double t, double[] state) {
    double end = base.duration();
    double to = pace * t;
    double length = base.place(base.cells());
    if (base.cells() == 0 || to <= 0 || to >= end + window) {
      state[PLACE] = to <= 0 ? 0 : length;
      state[RATE] = 0;
      state[ACCELERATION] = 0;
      state[JERK] = 0;
      return;
    }
    double from = to - window;
    double place = length;
    double rate = 0;
    double jerk = 0;
    if (to < end) {
      base.at(to, state);
      place = state[PLACE];
      rate = state[RATE];
      jerk = state[ACCELERATION];
    }
    double area = base.area(to);
    if (from >= 0) {
      base.at(from, state);
      place -= state[PLACE];
      rate -= state[RATE];
      jerk -= state[ACCELERATION];
      area -= base.area(from);
    }
    state[PLACE] = Math.max(0, Math.min(length, area / window));
    state[RATE] = Math.max(0, place / window) * pace;
    state[ACCELERATION] = rate / window * (pace * pace);
    state[JERK] = jerk / window * (pace * pace * pace);
  }
}
