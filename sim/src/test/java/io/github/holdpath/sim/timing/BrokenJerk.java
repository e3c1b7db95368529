package io.github.holdpath.sim.timing;

import io.github.holdpath.sim.timelaw.AxisLimits;
import java.util.List;

/** Looks at a smooth timing from outside for limits of joints. */
final class BrokenJerk {
  private BrokenJerk() {}

  /** Largest part of a limit of speed, acceleration or jerk that a joint takes, by its states. */
  static double most(
      SmoothTiming timing, JointCurve curve, List<AxisLimits> limits, double[] jerk, int looks) {
    int joints = curve.joints();
    double[] q = new double[joints];
    double[] dq = new double[joints];
    double[] ddq = new double[joints];
    double[] dddq = new double[joints];
    double[] state = new double[4];
    double most = 0;
    int piece = 0;
    for (int i = 0; i < looks; i++) {
      timing.at(timing.duration() * (i + 0.37) / looks, state);
      double s = state[SmoothTiming.PLACE];
      while (piece + 1 < curve.pieces() && curve.start(piece + 1) <= s) {
        piece++;
      }
      curve.at(piece, s, q, dq, ddq);
      curve.third(piece, s, dddq);
      double v = state[SmoothTiming.RATE];
      double u = state[SmoothTiming.ACCELERATION];
      double w = state[SmoothTiming.JERK];
      for (int j = 0; j < joints; j++) {
        double third = dq[j] * w + 3 * ddq[j] * v * u + dddq[j] * v * v * v;
        most = Math.max(most, part(limits.get(j), dq[j] * v, dq[j] * u + ddq[j] * v * v));
        most = Math.max(most, Math.abs(third) / jerk[j]);
      }
    }
    return most;
  }

  /**
   * The same by differences of the joints' positions alone: a third difference over the cube of its
   * step is a mean of the jerk, wherever that jumps, and so keeps its limit.
   */
  static double mostByPositions(
      SmoothTiming timing, JointCurve curve, List<AxisLimits> limits, double[] jerk, double step) {
    int joints = curve.joints();
    double[][] q = new double[4][joints];
    double[] dq = new double[joints];
    double[] ddq = new double[joints];
    double[] state = new double[4];
    double most = 0;
    for (int i = -3; (i - 3) * step < timing.duration(); i++) {
      double[] oldest = q[0];
      q[0] = q[1];
      q[1] = q[2];
      q[2] = q[3];
      q[3] = oldest;
      timing.at(i * step, state);
      int piece = 0;
      while (piece + 1 < curve.pieces() && curve.start(piece + 1) <= state[SmoothTiming.PLACE]) {
        piece++;
      }
      curve.at(piece, state[SmoothTiming.PLACE], q[3], dq, ddq);
      for (int j = 0; j < joints && i >= 0; j++) {
        double speed = (q[3][j] - q[2][j]) / step;
        double bend = (q[3][j] - 2 * q[2][j] + q[1][j]) / (step * step);
        double third = q[3][j] - 3 * q[2][j] + 3 * q[1][j] - q[0][j];
        most = Math.max(most, part(limits.get(j), speed, bend));
        most = Math.max(most, Math.abs(third) / (step * step * step) / jerk[j]);
      }
    }
    return most;
  }

  private static double part(AxisLimits limits, double speed, double acceleration) {
    return Math.max(
        speed > 0 ? speed / limits.maxSpeed() : speed / limits.minSpeed(),
        acceleration > 0
            ? acceleration / limits.maxAcceleration()
            : acceleration / limits.minAcceleration());
  }
}
