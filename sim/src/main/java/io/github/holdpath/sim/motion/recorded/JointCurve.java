package io.github.holdpath.sim.motion.recorded;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.sim.robot.FlangeToGrip;
import io.github.holdpath.sim.robot.RobotMotion;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * A smooth curve of joint values, and the poses to which the robot takes the grip by them. Velocity
 * and acceleration are exact derivatives, by the robot's own motion (theory, eq. 6.10).
 */
final class JointCurve implements RecordedCurve {
  /** Part of a cell by which the jerk's differences reach to either side. */
  private static final double REACH = 1.0 / 16;

  private final QuinticCurve curve;
  private final int joints;
  private final RecordedJoints recorded;
  private final AtomicReference<@Nullable Workspace> spare = new AtomicReference<>();

  private JointCurve(QuinticCurve curve, RecordedJoints recorded) {
    this.curve = curve;
    this.joints = recorded.robot().joints().size();
    this.recorded = recorded;
  }

  /** Fits joint values. */
  static JointCurve fit(double[] times, RecordedJoints recorded, double cutoff) {
    int n = recorded.robot().joints().size();
    double[] y = new double[times.length * n];
    for (int i = 0; i < times.length; i++) {
      for (int k = 0; k < n; k++) {
        y[i * n + k] = recorded.rows().get(i).get(k);
      }
    }
    return new JointCurve(SmoothingFit.fit(times, y, n, cutoff), recorded);
  }

  @Override
  public int cells() {
    return curve.cells();
  }

  @Override
  public double step() {
    return curve.step();
  }

  @Override
  public int cell(double time) {
    return curve.cell(time);
  }

  /** Lent to one caller at a time; a second one at the same time gets another. */
  private Workspace borrow() {
    Workspace lent = spare.getAndSet(null);
    return lent == null ? new Workspace(recorded) : lent;
  }

  void joints(double time, double[] q, double[] qd, double[] qdd) {
    Workspace ws = borrow();
    joints(time, ws.three, q, qd, qdd);
    spare.set(ws);
  }

  private void joints(double time, double[] three, double[] q, double[] qd, double[] qdd) {
    for (int k = 0; k < joints; k++) {
      curve.evaluate(k, time, three, 0, 1, 2);
      q[k] = three[0];
      qd[k] = three[1];
      qdd[k] = three[2];
    }
  }

  @Override
  public void state(double time, double[] out) {
    Workspace ws = borrow();
    state(time, ws, out);
    spare.set(ws);
  }

  private void state(double time, Workspace ws, double[] out) {
    joints(time, ws.three, ws.q, ws.qd, ws.qdd);
    if (!ws.motion.move(ws.q, ws.qd, ws.qdd)) {
      throw new IllegalStateException("no pose fits the joint values at " + time + " s");
    }
    ws.motion.flange(out);
    ws.toGrip.apply(out);
  }

  /** The rotations are those of a robot, so nothing is lost between them. */
  @Override
  public double quaternionLength(double time, double[] scratch) {
    return 1;
  }

  /** By differences of the acceleration. */
  @Override
  public void jerks(double time, double[] out) {
    Workspace ws = borrow();
    double reach = REACH * curve.step();
    double from = Math.max(0, time - reach);
    double to = Math.min(curve.cells() * curve.step(), time + reach);
    state(from, ws, ws.before);
    state(to, ws, ws.after);
    out[0] = difference(ws, MotionState.ACCELERATION, to - from);
    out[1] = difference(ws, MotionState.ANGULAR_ACCELERATION, to - from);
    spare.set(ws);
  }

  private static double difference(Workspace ws, int at, double span) {
    double sum = 0;
    for (int i = at; i < at + 3; i++) {
      double d = (ws.after[i] - ws.before[i]) / span;
      sum += d * d;
    }
    return Math.sqrt(sum);
  }

  /** What one caller computes in. */
  private static final class Workspace {
    private final RobotMotion motion;
    private final FlangeToGrip toGrip;
    private final double[] q;
    private final double[] qd;
    private final double[] qdd;
    private final double[] three = new double[3];
    private final double[] before = new double[MotionState.SIZE];
    private final double[] after = new double[MotionState.SIZE];

    Workspace(RecordedJoints recorded) {
      int n = recorded.robot().joints().size();
      motion = recorded.robot().motion();
      toGrip = new FlangeToGrip(recorded.grip());
      q = new double[n];
      qd = new double[n];
      qdd = new double[n];
    }
  }
}
