package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.robot.FrameMotion.FixedPose;
import java.util.Arrays;
import java.util.List;

/**
 * Motion of every frame of a chain from its joints' motion, by one pass from base to flange
 * (theory, eq. 8.1 to 8.6). A workspace: make one per thread, set a state, then read; nothing
 * allocates but {@link #flangePose()}.
 *
 * <p>The Jacobian is the geometric one. Its six rows are velocity of the flange's origin (m/s),
 * then angular velocity (rad/s), in the axes of the base; its columns are the drives, row-major.
 *
 * @see "Craig: Introduction to Robotics, 3rd ed. 2005, chapters 5 and 6 (from memory)"
 */
public final class ChainMotion implements RobotMotion {
  private final int drives;
  private final int[] driveOf;
  private final boolean[] turns;
  private final double[] multiplier;
  private final double[] offset;
  private final double[][] axisInFrame;
  private final FixedPose[] origin;
  private final FixedPose flangeInLast;

  private final FrameMotion base = new FrameMotion();
  private final FrameMotion flange = new FrameMotion();
  private final FrameMotion[] frames;
  private final double[][] axes;
  private final double[][] axisRates;
  private boolean moving;
  private final double[] turn = new double[4];
  private final double[] scratch = new double[4];
  private final double[] arm = new double[3];
  private final double[] armRate = new double[3];
  private final double[] column = new double[6];

  /** For a chain, with every joint at value 0 and at rest. */
  public ChainMotion(Chain chain) {
    List<Joint> joints = chain.joints();
    int n = joints.size();
    driveOf = chain.driveOfEach();
    drives = chain.drives().size();
    turns = new boolean[n];
    multiplier = new double[n];
    offset = new double[n];
    axisInFrame = new double[n][];
    origin = new FixedPose[n];
    frames = new FrameMotion[n];
    axes = new double[n][3];
    axisRates = new double[n][3];
    for (int i = 0; i < n; i++) {
      Joint joint = joints.get(i);
      turns[i] = joint.kind().turns();
      multiplier[i] = joint.mimic().map(Mimic::multiplier).orElse(1.0);
      offset[i] = joint.mimic().map(Mimic::offset).orElse(0.0);
      axisInFrame[i] = FrameMotion.array(joint.axis());
      origin[i] = new FixedPose(joint.origin());
      frames[i] = new FrameMotion();
    }
    flangeInLast = new FixedPose(chain.flange());
    moveTo(new double[drives]);
  }

  @Override
  public int drives() {
    return drives;
  }

  @Override
  public boolean moveTo(double[] q) {
    check(q, drives, "joint values");
    if (moving) {
      halt();
    }
    FrameMotion before = base;
    for (int i = 0; i < frames.length; i++) {
      FrameMotion frame = frames[i];
      frame.placedOn(before, origin[i]);
      Flat.times(frame.r, axisInFrame[i], axes[i]);
      double value = multiplier[i] * q[driveOf[i]] + offset[i];
      if (turns[i]) {
        halfAngle(axisInFrame[i], value);
        frame.turnTo(turn, scratch);
      } else {
        Flat.add(value, axes[i], frame.p);
      }
      before = frame;
    }
    flange.placedOn(before, flangeInLast);
    return true;
  }

  /** Everything comes to rest. */
  private void halt() {
    for (int i = 0; i < frames.length; i++) {
      frames[i].halt();
      Arrays.fill(axisRates[i], 0);
    }
    flange.halt();
    moving = false;
  }

  @Override
  public boolean move(double[] q, double[] qd, double[] qdd) {
    check(q, drives, "joint values");
    check(qd, drives, "joint speeds");
    check(qdd, drives, "joint accelerations");
    moving = true;
    FrameMotion before = base;
    for (int i = 0; i < frames.length; i++) {
      int k = driveOf[i];
      FrameMotion frame = frames[i];
      frame.fixedTo(before, origin[i]);
      Flat.times(frame.r, axisInFrame[i], axes[i]);
      double value = multiplier[i] * q[k] + offset[i];
      double rate = multiplier[i] * qd[k];
      double second = multiplier[i] * qdd[k];
      Flat.cross(frame.w, axes[i], axisRates[i]);
      if (turns[i]) {
        halfAngle(axisInFrame[i], value);
        frame.turn(axes[i], turn, rate, second, scratch);
      } else {
        frame.slide(axes[i], value, rate, second);
      }
      before = frame;
    }
    flange.fixedTo(before, flangeInLast);
    return true;
  }

  private void halfAngle(double[] axis, double angle) {
    double s = Math.sin(angle / 2);
    turn[0] = Math.cos(angle / 2);
    turn[1] = axis[0] * s;
    turn[2] = axis[1] * s;
    turn[3] = axis[2] * s;
  }

  /** Refuses an array of another length, and numbers that are not finite. */
  static void check(double[] x, int drives, String what) {
    if (x.length != drives) {
      throw new IllegalArgumentException(
          what + " must be " + drives + " numbers, but were " + x.length);
    }
    for (double number : x) {
      if (!Double.isFinite(number)) {
        throw new IllegalArgumentException(what + " must be finite, but one was " + number);
      }
    }
  }

  @Override
  public Pose flangePose() {
    double[] q = flange.q;
    return new Pose(
        new Vec3(flange.p[0], flange.p[1], flange.p[2]), new Quaternion(q[0], q[1], q[2], q[3]));
  }

  @Override
  public void flange(double[] state) {
    System.arraycopy(flange.p, 0, state, MotionState.POSITION, 3);
    System.arraycopy(flange.q, 0, state, MotionState.ROTATION, 4);
    System.arraycopy(flange.v, 0, state, MotionState.VELOCITY, 3);
    System.arraycopy(flange.w, 0, state, MotionState.ANGULAR_VELOCITY, 3);
    System.arraycopy(flange.a, 0, state, MotionState.ACCELERATION, 3);
    System.arraycopy(flange.alpha, 0, state, MotionState.ANGULAR_ACCELERATION, 3);
  }

  @Override
  public void jacobian(double[] jacobian) {
    clear(jacobian);
    for (int i = 0; i < frames.length; i++) {
      if (turns[i]) {
        Flat.minus(flange.p, frames[i].p, arm);
        column[0] = axes[i][1] * arm[2] - axes[i][2] * arm[1];
        column[1] = axes[i][2] * arm[0] - axes[i][0] * arm[2];
        column[2] = axes[i][0] * arm[1] - axes[i][1] * arm[0];
        System.arraycopy(axes[i], 0, column, 3, 3);
      } else {
        clearTurn(axes[i]);
      }
      addColumn(i, jacobian);
    }
  }

  /**
   * Rate of the Jacobian: {@code (a, alpha) = J q'' + J' q'}.
   *
   * @param rate row-major, 6 rows by drives, overwritten; its unit is that of the Jacobian by s
   */
  public void jacobianRate(double[] rate) {
    clear(rate);
    for (int i = 0; i < frames.length; i++) {
      double[] s = axes[i];
      double[] sd = axisRates[i];
      if (turns[i]) {
        Flat.minus(flange.p, frames[i].p, arm);
        Flat.minus(flange.v, frames[i].v, armRate);
        column[0] = sd[1] * arm[2] - sd[2] * arm[1] + s[1] * armRate[2] - s[2] * armRate[1];
        column[1] = sd[2] * arm[0] - sd[0] * arm[2] + s[2] * armRate[0] - s[0] * armRate[2];
        column[2] = sd[0] * arm[1] - sd[1] * arm[0] + s[0] * armRate[1] - s[1] * armRate[0];
        System.arraycopy(sd, 0, column, 3, 3);
      } else {
        clearTurn(sd);
      }
      addColumn(i, rate);
    }
  }

  private void clear(double[] matrix) {
    if (matrix.length != 6 * drives) {
      throw new IllegalArgumentException(
          "matrix must have " + 6 * drives + " numbers, but has " + matrix.length);
    }
    for (int i = 0; i < matrix.length; i++) {
      matrix[i] = 0;
    }
  }

  private void clearTurn(double[] slide) {
    System.arraycopy(slide, 0, column, 0, 3);
    column[3] = 0;
    column[4] = 0;
    column[5] = 0;
  }

  private void addColumn(int joint, double[] matrix) {
    for (int row = 0; row < 6; row++) {
      matrix[row * drives + driveOf[joint]] += multiplier[joint] * column[row];
    }
  }

  /** Motion of a joint's frame. */
  FrameMotion frame(int joint) {
    return frames[joint];
  }

  /** Motion of the flange. */
  FrameMotion flange() {
    return flange;
  }

  /** Direction of a joint's axis in the base. */
  double[] axis(int joint) {
    return axes[joint];
  }

  /** Whether a joint turns. */
  boolean turns(int joint) {
    return turns[joint];
  }

  /** Adds a force or moment along a joint's axis to the drive that bears it. */
  void addEffort(int joint, double effort, double[] efforts) {
    efforts[driveOf[joint]] += multiplier[joint] * effort;
  }
}
