package io.github.holdpath.sim.timelaw;

import java.util.ArrayList;
import java.util.List;

/** Stretches of constant jerk one after the other; filled in place, so that it can be reused. */
final class JerkChain {
  private static final int MOST = 20;

  private final double[] jerk = new double[MOST];
  private final double[] end = new double[MOST];
  private final double[] position = new double[MOST + 1];
  private final double[] speed = new double[MOST + 1];
  private final double[] acceleration = new double[MOST + 1];
  private int count;
  private double duration;

  /** Takes all out and begins anew at a state. */
  void begin(double positionThere, double speedThere, double accelerationThere) {
    count = 0;
    duration = 0;
    position[0] = positionThere;
    speed[0] = speedThere;
    acceleration[0] = accelerationThere;
  }

  /** Adds a stretch; one without time, or pushed below 0 by rounding, is left out. */
  void add(double jerkThere, double time) {
    if (time > 0) {
      int i = count++;
      double v = speed[i];
      double a = acceleration[i];
      jerk[i] = jerkThere;
      duration += time;
      end[i] = duration;
      position[i + 1] = position[i] + time * (v + time * (a / 2 + time * (jerkThere / 6)));
      speed[i + 1] = v + time * (a + time * (jerkThere / 2));
      acceleration[i + 1] = a + time * jerkThere;
    }
  }

  /** Sum of the times, s. */
  double duration() {
    return duration;
  }

  /** Position at the end. */
  double position() {
    return position[count];
  }

  /** Speed at the end, 1/s. */
  double speed() {
    return speed[count];
  }

  /** Acceleration at the end, 1/s^2. */
  double acceleration() {
    return acceleration[count];
  }

  /** Position, speed, acceleration and jerk at a time (s); times outside are clamped. */
  void at(double time, double[] out) {
    double t = Math.max(0, Math.min(duration, time));
    int i = 0;
    while (i < count - 1 && t > end[i]) {
      i++;
    }
    t -= i == 0 ? 0 : end[i - 1];
    double v = speed[i];
    double a = acceleration[i];
    double j = count == 0 ? 0 : jerk[i];
    out[0] = position[i] + t * (v + t * (a / 2 + t * (j / 6)));
    out[1] = v + t * (a + t * (j / 2));
    out[2] = a + t * j;
    out[3] = j;
  }

  /** The phases; one without time if there is nothing to do. */
  List<LawPhase> phases() {
    List<LawPhase> phases = new ArrayList<>();
    double from = 0;
    for (int i = 0; i < count; i++) {
      phases.add(phase(from, end[i], i, jerk[i]));
      from = end[i];
    }
    return phases.isEmpty() ? List.of(phase(0, 0, 0, 0)) : phases;
  }

  private LawPhase phase(double from, double to, int i, double jerkThere) {
    return new JerkPhase(from, to, from, position[i], speed[i], acceleration[i], jerkThere);
  }
}
