package io.github.holdpath.sim.timelaw;

import java.util.List;

/** Several axes in time with each other, on the straight line in their space, rest to rest. */
public final class StraightAxes {
  private StraightAxes() {}

  /**
   * The law of a move from rest to rest on the straight line in the space of the axes: each axis is
   * at {@code from + u (to - from)}, where u follows the law from 0 to 1.
   *
   * @param law kind
   * @param from positions
   * @param to positions, at least one other than in {@code from}
   * @param limits one per axis
   * @throws IllegalArgumentException if lengths do not fit or nothing moves
   */
  public static LawProfile plan(LawKind law, double[] from, double[] to, List<AxisLimits> limits) {
    if (from.length != to.length || from.length != limits.size()) {
      throw new IllegalArgumentException("from, to and limits must have the same length");
    }
    double inf = Double.POSITIVE_INFINITY;
    double speed = inf;
    double acceleration = inf;
    double deceleration = inf;
    double jerk = inf;
    for (int i = 0; i < from.length; i++) {
      AxisLimits l = limits.get(i);
      double way = to[i] - from[i];
      if (way != 0) {
        AxisLimits forth = way > 0 ? l : l.mirrored();
        double length = Math.abs(way);
        speed = Math.min(speed, forth.maxSpeed() / length);
        acceleration = Math.min(acceleration, forth.maxAcceleration() / length);
        deceleration = Math.min(deceleration, -forth.minAcceleration() / length);
        jerk = Math.min(jerk, forth.jerk() / length);
      }
    }
    if (Double.isInfinite(jerk)) {
      throw new IllegalArgumentException("to must differ from from in some axis");
    }
    return RestToRest.plan(law, new LawLimits(speed, acceleration, deceleration, jerk), 1);
  }
}
