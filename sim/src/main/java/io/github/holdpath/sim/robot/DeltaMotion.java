package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.Arrays;

/**
 * Motion of a delta's flange in the world (theory, eq. 8.14 to 8.16). A workspace: make one per
 * thread.
 */
public final class DeltaMotion implements RobotMotion {
  /** Volume spanned by the three rods' directions below which they bear the platform no more. */
  private static final double FLAT = 1e-9;

  private final int drives;
  private final double radius;
  private final double upperArm;
  private final double rod;
  private final double[] baseR;
  private final double[] baseP;
  private final double[] baseQ;
  private final double[] mountP;
  private final double[] mountQ;
  private final double[] rest;

  private final double[][] out = new double[3][3];
  private final double[][] knee = new double[3][3];
  private final double[][] kneeRate = new double[3][3];
  private final double[][] legs = new double[3][3];
  private final double[] gear = new double[3];
  private final double[] rhs = new double[3];
  private final double[] p = new double[3];
  private final double[] v = new double[3];
  private final double[] a = new double[3];
  private final double[] j = new double[3];
  private final double[] angles = new double[3];
  private final double[] rates = new double[3];
  private final double[] seconds = new double[3];
  private final double[] reach = new double[3];
  private final double[] d1 = new double[3];
  private final double[] d2 = new double[3];
  private final double[] d3 = new double[3];
  private final double[] lever = new double[3];
  private final double[] column = new double[3];
  private final double[] scratch = new double[4];
  private final double[] quaternion = new double[4];
  private final double[] turnQ = new double[4];
  private double turnRate;
  private double turnSecond;

  /** In no state yet: nothing may be read before one is set. */
  DeltaMotion(Delta robot) {
    drives = robot.joints().size();
    radius = robot.radius();
    upperArm = robot.upperArm();
    rod = robot.rod();
    baseR = robot.base().rotation().toMatrix();
    baseP = FrameMotion.array(robot.base().position());
    baseQ = array(robot.base().rotation());
    mountP = FrameMotion.array(robot.mount().position());
    mountQ = array(robot.mount().rotation());
    rest = new double[drives];
    for (int i = 0; i < 3; i++) {
      out[i][0] = Math.cos(i * 2 * Math.PI / 3);
      out[i][1] = Math.sin(i * 2 * Math.PI / 3);
    }
  }

  private static double[] array(Quaternion q) {
    return new double[] {q.w(), q.x(), q.y(), q.z()};
  }

  @Override
  public int drives() {
    return drives;
  }

  @Override
  public boolean moveTo(double[] q) {
    return move(q, rest, rest);
  }

  @Override
  public boolean move(double[] q, double[] qd, double[] qdd) {
    ChainMotion.check(q, drives, "joint values");
    ChainMotion.check(qd, drives, "joint speeds");
    ChainMotion.check(qdd, drives, "joint accelerations");
    for (int i = 0; i < 3; i++) {
      double c = Math.cos(q[i]);
      knee[i][0] = (radius + upperArm * c) * out[i][0];
      knee[i][1] = (radius + upperArm * c) * out[i][1];
      knee[i][2] = -upperArm * Math.sin(q[i]);
    }
    if (!meet()) {
      return false;
    }
    for (int i = 0; i < 3; i++) {
      Flat.minus(p, knee[i], legs[i]);
      tangent(i, q[i], d1);
      gear[i] = Flat.dot(legs[i], d1);
      rhs[i] = gear[i] * qd[i];
      Arrays.fill(kneeRate[i], 0);
      Flat.add(qd[i], d1, kneeRate[i]);
    }
    if (!solve(rhs, v)) {
      return false;
    }
    for (int i = 0; i < 3; i++) {
      Flat.minus(v, kneeRate[i], d1);
      double inward = upperArm * Math.cos(q[i]);
      d2[0] = -inward * out[i][0];
      d2[1] = -inward * out[i][1];
      d2[2] = upperArm * Math.sin(q[i]);
      rhs[i] = gear[i] * qdd[i] + Flat.dot(legs[i], d2) * qd[i] * qd[i] - Flat.dot(d1, d1);
    }
    solve(rhs, a);
    System.arraycopy(q, 0, angles, 0, 3);
    System.arraycopy(qd, 0, rates, 0, 3);
    System.arraycopy(qdd, 0, seconds, 0, 3);
    boolean turns = drives == 4;
    turnRate = turns ? qd[3] : 0;
    turnSecond = turns ? qdd[3] : 0;
    double half = turns ? q[3] / 2 : 0;
    turnQ[0] = Math.cos(half);
    turnQ[1] = 0;
    turnQ[2] = 0;
    turnQ[3] = Math.sin(half);
    double c = Math.cos(2 * half);
    double s = Math.sin(2 * half);
    lever[0] = c * mountP[0] - s * mountP[1];
    lever[1] = s * mountP[0] + c * mountP[1];
    lever[2] = mountP[2];
    return true;
  }

  /** Third derivative of the platform, from that of the rods' fixed lengths (eq. 5.74). */
  private void thirdOrder() {
    for (int i = 0; i < 3; i++) {
      double rate = rates[i];
      double inward = upperArm * Math.cos(angles[i]);
      column[0] = -inward * out[i][0];
      column[1] = -inward * out[i][1];
      column[2] = upperArm * Math.sin(angles[i]);
      tangent(i, angles[i], reach);
      Flat.minus(v, kneeRate[i], d1);
      // The knee's own second derivative, then what the rod's end has beside it.
      Arrays.fill(d2, 0);
      Flat.add(seconds[i], reach, d2);
      Flat.add(rate * rate, column, d2);
      Flat.minus(a, d2, d3);
      rhs[i] =
          3 * rate * seconds[i] * Flat.dot(legs[i], column)
              - rate * rate * rate * gear[i]
              - 3 * Flat.dot(d1, d3);
    }
    solve(rhs, j);
  }

  /** Direction in which a knee moves with its arm, times the arm's length. */
  private void tangent(int i, double angle, double[] t) {
    double s = -upperArm * Math.sin(angle);
    t[0] = s * out[i][0];
    t[1] = s * out[i][1];
    t[2] = -upperArm * Math.cos(angle);
  }

  /** The lower point that is a rod's length from all three knees. */
  private boolean meet() {
    Flat.minus(knee[1], knee[0], d1);
    Flat.minus(knee[2], knee[0], d2);
    Flat.cross(d1, d2, d3);
    double square = Flat.dot(d3, d3);
    double a2 = Flat.dot(d1, d1);
    double b2 = Flat.dot(d2, d2);
    double ab = Flat.dot(d1, d2);
    if (!(square > FLAT * FLAT * a2 * b2)) {
      return false;
    }
    // Centre of the circle through the knees, then down along the normal of their plane.
    double s = b2 * (a2 - ab) / (2 * square);
    double t = a2 * (b2 - ab) / (2 * square);
    Arrays.fill(p, 0);
    Flat.add(s, d1, p);
    Flat.add(t, d2, p);
    double height = rod * rod - Flat.dot(p, p);
    if (!(height > 0)) {
      return false;
    }
    double k = Math.sqrt(height / square);
    Flat.add(d3[2] > 0 ? -k : k, d3, p);
    Flat.add(1, knee[0], p);
    return true;
  }

  /** Solves {@code legs x = b} by Cramer's rule; false where the legs lie in one plane. */
  private boolean solve(double[] b, double[] x) {
    Flat.cross(legs[1], legs[2], d1);
    Flat.cross(legs[2], legs[0], d2);
    Flat.cross(legs[0], legs[1], d3);
    double det = Flat.dot(legs[0], d1);
    if (!(Math.abs(det) > FLAT * rod * rod * rod)) {
      return false;
    }
    Arrays.fill(x, 0);
    Flat.add(b[0] / det, d1, x);
    Flat.add(b[1] / det, d2, x);
    Flat.add(b[2] / det, d3, x);
    return true;
  }

  @Override
  public Pose flangePose() {
    double[] s = new double[MotionState.SIZE];
    flange(s);
    return new Pose(new Vec3(s[0], s[1], s[2]), new Quaternion(s[3], s[4], s[5], s[6]));
  }

  @Override
  public void flange(double[] state) {
    Flat.copy(p, d1);
    Flat.add(1, lever, d1);
    Flat.times(baseR, d1, d2);
    Flat.add(1, baseP, d2);
    System.arraycopy(d2, 0, state, MotionState.POSITION, 3);

    Flat.quaternionTimes(baseQ, turnQ, scratch);
    Flat.quaternionTimes(scratch, mountQ, quaternion);
    System.arraycopy(quaternion, 0, state, MotionState.ROTATION, 4);

    d1[0] = v[0] - turnRate * lever[1];
    d1[1] = v[1] + turnRate * lever[0];
    d1[2] = v[2];
    put(d1, state, MotionState.VELOCITY);
    d1[0] = a[0] - turnSecond * lever[1] - turnRate * turnRate * lever[0];
    d1[1] = a[1] + turnSecond * lever[0] - turnRate * turnRate * lever[1];
    d1[2] = a[2];
    put(d1, state, MotionState.ACCELERATION);
    upright(turnRate, state, MotionState.ANGULAR_VELOCITY);
    upright(turnSecond, state, MotionState.ANGULAR_ACCELERATION);
  }

  @Override
  public void third(double[] third) {
    thirdOrder();
    double square = 3 * turnSecond * turnRate;
    double cube = turnRate * turnRate * turnRate;
    d1[0] = j[0] - square * lever[0] + cube * lever[1];
    d1[1] = j[1] - square * lever[1] - cube * lever[0];
    d1[2] = j[2];
    put(d1, third, 0);
    Arrays.fill(third, 3, 6, 0);
  }

  private void put(double[] inBase, double[] state, int at) {
    Flat.times(baseR, inBase, d2);
    System.arraycopy(d2, 0, state, at, 3);
  }

  private void upright(double rate, double[] state, int at) {
    state[at] = rate * baseR[2];
    state[at + 1] = rate * baseR[5];
    state[at + 2] = rate * baseR[8];
  }

  @Override
  public void jacobian(double[] jacobian) {
    if (jacobian.length != 6 * drives) {
      throw new IllegalArgumentException(
          "matrix must have " + 6 * drives + " numbers, but has " + jacobian.length);
    }
    Arrays.fill(jacobian, 0);
    for (int i = 0; i < 3; i++) {
      Arrays.fill(rhs, 0);
      rhs[i] = gear[i];
      solve(rhs, column);
      Flat.times(baseR, column, d1);
      for (int row = 0; row < 3; row++) {
        jacobian[row * drives + i] = d1[row];
      }
    }
    if (drives == 4) {
      column[0] = -lever[1];
      column[1] = lever[0];
      column[2] = 0;
      Flat.times(baseR, column, d1);
      for (int row = 0; row < 3; row++) {
        jacobian[row * drives + 3] = d1[row];
        jacobian[(row + 3) * drives + 3] = baseR[3 * row + 2];
      }
    }
  }
}
