package io.github.holdpath.sim.motion.joint;

import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.robot.JointLimits;
import java.util.function.DoubleUnaryOperator;

/**
 * Looks at one piece of a walk: how far joints are beyond their stops, and how much of their speed
 * and acceleration they use. Where the largest sample may hide a larger value beside it, that is
 * looked for. A workspace.
 */
final class JointLook {
  private static final double GOLDEN = (3 - Math.sqrt(5)) / 2;
  private static final int NARROWINGS = 32;

  /** A use below this cannot be one between samples that matters. */
  private static final double NEAR = 0.9;

  private final JointWalk walk;
  private final double[] x;
  private final double[] xd;
  private final double[] xdd;
  private double foundAt;

  JointLook(JointWalk walk, int joints) {
    this.walk = walk;
    x = new double[joints];
    xd = new double[joints];
    xdd = new double[joints];
  }

  /** Largest share of a joint's speed limit that it uses; infinite speeds have none. */
  double speed(MotionPiece piece, int k, double limit) {
    return largest(
        piece, i -> Math.abs(walk.qd(i)[k]) / limit, at -> Math.abs(xd[k]) / limit, NEAR);
  }

  /** Largest share of a joint's acceleration limit that it uses. */
  double acceleration(MotionPiece piece, int k, double limit) {
    return largest(
        piece, i -> Math.abs(walk.qdd(i)[k]) / limit, at -> Math.abs(xdd[k]) / limit, NEAR);
  }

  /** How far a joint is beyond its stops at most, rad or m; negative inside. */
  double beyond(MotionPiece piece, int k, JointLimits limits) {
    double near = -1e-3 * Math.max(1, Math.abs(walk.q(0)[k]));
    return largest(piece, i -> beyond(limits, walk.q(i)[k]), at -> beyond(limits, x[k]), near);
  }

  /** Where the last answer was found, s. */
  double foundAt() {
    return foundAt;
  }

  static double beyond(JointLimits limits, double value) {
    return Math.max(limits.lower() - value, value - limits.upper());
  }

  /** Something by the index of a sample. */
  private interface BySample {
    double of(int i);
  }

  private double largest(
      MotionPiece piece, BySample sample, DoubleUnaryOperator between, double near) {
    int best = 0;
    for (int i = 1; i < walk.size(); i++) {
      best = sample.of(i) > sample.of(best) ? i : best;
    }
    foundAt = walk.time(best);
    double most = sample.of(best);
    if (piece.still() || !(most > near) || Double.isInfinite(most)) {
      return most;
    }
    double a = walk.time(Math.max(0, best - 1));
    double b = walk.time(Math.min(walk.size() - 1, best + 1));
    double lo = a + GOLDEN * (b - a);
    double hi = b - GOLDEN * (b - a);
    double atLo = look(piece, best, lo, between);
    double atHi = look(piece, best, hi, between);
    for (int i = 0; i < NARROWINGS; i++) {
      if (Math.max(atLo, atHi) > most) {
        most = Math.max(atLo, atHi);
        foundAt = atLo > atHi ? lo : hi;
      }
      if (atLo > atHi) {
        b = hi;
        hi = lo;
        atHi = atLo;
        lo = a + GOLDEN * (b - a);
        atLo = look(piece, best, lo, between);
      } else {
        a = lo;
        lo = hi;
        atLo = atHi;
        hi = b - GOLDEN * (b - a);
        atHi = look(piece, best, hi, between);
      }
    }
    return most;
  }

  private double look(MotionPiece piece, int near, double time, DoubleUnaryOperator between) {
    return walk.at(piece, near, time, x, xd, xdd)
        ? between.applyAsDouble(time)
        : Double.NEGATIVE_INFINITY;
  }
}
