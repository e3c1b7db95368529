package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import java.util.Arrays;

/**
 * Joint values, speeds and accelerations for a motion of the grip frame: from the values of the
 * instant before, by Newton steps and the Jacobian (theory, eq. 8.21 and 8.22). Because it goes on
 * from values that are given it never changes branch. A workspace: make one per thread; {@link
 * #solve} allocates nothing.
 *
 * <p>The same serves a path by its parameter s: a flat {@code PathPoint} begins like a flat motion
 * state, and then speeds and accelerations are derivatives by s.
 */
public final class JointMotion {
  /**
   * Condition below which a place counts as singular: a joint outruns the tool ten thousandfold.
   */
  public static final double SINGULAR = 1e-4;

  /** A Newton step after which the next would be rounding, as steps shrink to their squares. */
  private static final double LAST_STEP = 1e-9;

  /**
   * A first step so short that the Jacobian of the place before serves for it. Where that one is
   * not near, the second step, by the Jacobian of its own place, mends it.
   */
  private static final double NEAR = 1e-4;

  private static final int MOST_STEPS = 25;

  /** A step so long that the values given were no neighbours. */
  private static final double LEAP = 1;

  private final FlangeSolver solver;
  private final FlangeToGrip toFlange;
  private final double[] flange = new double[MotionState.SIZE];
  private final double[] step;

  /** How a motion was followed. */
  public enum Outcome {
    /** Joint values, speeds and accelerations are those of the motion. */
    FOLLOWED,
    /** The values are, but speeds and accelerations are not to be relied on: near a singularity. */
    SINGULAR,
    /** No joint values near those given fit the pose; the arrays hold nothing of use. */
    LOST
  }

  /**
   * For a robot that carries a tool.
   *
   * @param robot the robot
   * @param grip pose of the grip frame in the flange, {@code X_FT}
   */
  public JointMotion(Robot robot, Pose grip) {
    solver = new FlangeSolver(robot);
    step = new double[solver.drives()];
    toFlange = new FlangeToGrip(grip.inverse());
  }

  /**
   * Joint values, speeds and accelerations for one instant.
   *
   * @param grip flat motion state of the grip frame in the world; numbers after the first {@link
   *     MotionState#SIZE} are passed over
   * @param q joint values near those looked for, rad or m; overwritten
   * @param qd joint speeds, overwritten; of many that fit, those nearest the given ones
   * @param qdd joint accelerations, overwritten; of many that fit, those nearest the given ones
   */
  public Outcome solve(double[] grip, double[] q, double[] qd, double[] qdd) {
    moveToFlange(grip);
    for (int i = 0; i < MOST_STEPS; i++) {
      if (!solver.look(q, flange)) {
        return Outcome.LOST;
      }
      boolean near = i == 0 && solver.stepAsBefore(step) < NEAR;
      double size = near ? NEAR : solver.step(0, step);
      if (!(size < LEAP)) {
        return Outcome.LOST;
      }
      double open = size < LAST_STEP ? solver.openGap(step) : 0;
      for (int k = 0; k < q.length; k++) {
        q[k] += step[k];
      }
      if (size < LAST_STEP) {
        if (open > PoseSearch.REACHED) {
          return Outcome.LOST;
        }
        boolean moves = solver.rates(q, flange, qd, qdd, step);
        return moves && !solver.singular(SINGULAR) ? Outcome.FOLLOWED : Outcome.SINGULAR;
      }
    }
    return Outcome.LOST;
  }

  /** The same where only one motion fits or the shortest is wanted: begins from rest. */
  Outcome solveFromRest(double[] grip, double[] q, double[] qd, double[] qdd) {
    Arrays.fill(qd, 0);
    Arrays.fill(qdd, 0);
    return solve(grip, q, qd, qdd);
  }

  /** Least by greatest singular value of the Jacobian where it was solved last, 0 to 1. */
  public double condition() {
    return solver.condition();
  }

  /** Size of a difference of joint values, lengths in units of the robot's length. */
  double size(double[] a, double[] b) {
    return solver.size(a, b);
  }

  private void moveToFlange(double[] grip) {
    System.arraycopy(grip, 0, flange, 0, MotionState.SIZE);
    toFlange.apply(flange);
  }
}
