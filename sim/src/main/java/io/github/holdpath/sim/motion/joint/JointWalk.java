package io.github.holdpath.sim.motion.joint;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.JointedPiece;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.robot.JointMotion;
import io.github.holdpath.sim.robot.JointMotion.Outcome;
import io.github.holdpath.sim.robot.Robot;
import java.util.Arrays;

/**
 * Walks along a motion with the joints of a robot, piece by piece and sample by sample, each sample
 * from the one before it (theory, eq. 8.24). Where a step is not as foretold it is halved, so that
 * no branch is changed unseen. A workspace.
 */
public final class JointWalk {
  /** Most by which joint values may differ from what was foretold, rad or of the robot's length. */
  private static final double SURPRISE = 0.02;

  private static final int MOST_HALVINGS = 12;
  private static final double SAME_INSTANT = 1e-9;

  private final double spacing;
  private final double[] unit;
  private final JointMotion solver;
  private final double[] state = new double[MotionState.SIZE];
  private final double[] q;
  private final double[] qd;
  private final double[] qdd;
  private final double[] next;
  private final double[] nextD;
  private final double[] nextDd;
  private double[] times = new double[0];
  private double[][] values = new double[0][];
  private double[][] speeds = new double[0][];
  private double[][] accelerations = new double[0][];
  private int size;
  private boolean lost;
  private boolean straight = true;

  /**
   * Begins.
   *
   * @param robot the robot
   * @param grip pose of the grip frame in the flange, {@code X_FT}
   * @param start joint values at the motion's beginning, or near them
   */
  public JointWalk(Robot robot, Pose grip, double[] start) {
    this(robot, grip, start, JointTrack.STEP);
  }

  /**
   * The same with another spacing.
   *
   * @param spacing of the samples, s
   */
  JointWalk(Robot robot, Pose grip, double[] start, double spacing) {
    this.spacing = spacing;
    unit =
        robot.joints().stream().mapToDouble(j -> j.kind().turns() ? 1 : robot.length()).toArray();
    solver = new JointMotion(robot, grip);
    int n = unit.length;
    q = start.clone();
    qd = new double[n];
    qdd = new double[n];
    next = new double[n];
    nextD = new double[n];
    nextDd = new double[n];
  }

  /**
   * Samples of one piece: by index of the sample, then of the joint.
   *
   * @param times s
   * @param q joint values, rad or m
   * @param qd their rates
   * @param qdd their second rates
   */
  record Samples(double[] times, double[][] q, double[][] qd, double[][] qdd) {}

  /**
   * Makes the joint values fit the first instant of a piece, where they can; else they stay. Then
   * begin anew from where it stands.
   */
  void settle(MotionPiece first) {
    advance(first, first.from(), first.from(), 0);
  }

  /**
   * Goes through a piece that begins where the walk stands.
   *
   * @return false if it is stuck at the last sample it reached
   */
  public boolean go(MotionPiece piece) {
    times = times(piece);
    int n = unit.length;
    values = new double[times.length][n];
    speeds = new double[times.length][n];
    accelerations = new double[times.length][n];
    size = 0;
    double now = piece.from();
    for (double time : times) {
      if (!advance(piece, now, time, MOST_HALVINGS)) {
        return false;
      }
      now = time;
      System.arraycopy(q, 0, values[size], 0, n);
      System.arraycopy(qd, 0, speeds[size], 0, n);
      System.arraycopy(qdd, 0, accelerations[size], 0, n);
      size++;
    }
    if (n > 6 && !(piece instanceof JointedPiece)) {
      smoothSpare(piece);
    }
    return true;
  }

  private double[] times(MotionPiece piece) {
    double from = piece.from();
    double to = piece.to();
    if (piece.still()) {
      return new double[] {from, to};
    }
    double[] t = new double[(int) Math.min(1e9, Math.floor((to - from) / spacing)) + 4];
    int count = 0;
    t[count++] = from;
    for (long i = (long) Math.floor(from / spacing) + 1; i * spacing < to - SAME_INSTANT; i++) {
      if (i * spacing > from + SAME_INSTANT) {
        t[count++] = i * spacing;
      }
    }
    if (count == 1 && to > from) {
      t[count++] = from + (to - from) / 2;
    }
    if (to > from) {
      t[count++] = to;
    }
    return Arrays.copyOf(t, count);
  }

  private boolean advance(MotionPiece piece, double from, double to, int halvings) {
    if (piece instanceof JointedPiece known) {
      known.joints(to, q, qd, qdd);
      return true;
    }
    double dt = to - from;
    for (int k = 0; k < q.length; k++) {
      next[k] = q[k] + dt * (qd[k] + dt * qdd[k] / 2);
    }
    Outcome outcome = solve(piece, to, next, nextD, nextDd);
    // Standing still a singular place does no harm: no joint moves.
    boolean good = outcome == Outcome.FOLLOWED || (outcome == Outcome.SINGULAR && piece.still());
    if (good && (dt == 0 || surprise(dt) < SURPRISE)) {
      System.arraycopy(next, 0, q, 0, q.length);
      System.arraycopy(nextD, 0, qd, 0, q.length);
      System.arraycopy(nextDd, 0, qdd, 0, q.length);
      return true;
    }
    if (halvings == 0 || dt == 0 || outcome == Outcome.SINGULAR) {
      lost = outcome == Outcome.LOST;
      return false;
    }
    double middle = from + dt / 2;
    return advance(piece, from, middle, halvings - 1) && advance(piece, middle, to, halvings - 1);
  }

  private double surprise(double dt) {
    double sum = 0;
    for (int k = 0; k < q.length; k++) {
      double d = (next[k] - q[k] - dt * (qd[k] + dt * qdd[k] / 2)) / unit[k];
      sum += d * d;
    }
    return Math.sqrt(sum);
  }

  /** Of many speeds that fit the shortest: an arm with joints to spare does not wander. */
  private Outcome solve(MotionPiece piece, double time, double[] x, double[] xd, double[] xdd) {
    piece.state(time, state);
    Arrays.fill(xd, 0);
    Arrays.fill(xdd, 0);
    return solver.solve(state, x, xd, xdd);
  }

  /** Accelerations of an arm with joints to spare, as they follow from its shortest speeds. */
  private void smoothSpare(MotionPiece piece) {
    for (int i = 0; i < size; i++) {
      int before = Math.max(0, i - 1);
      int after = Math.min(size - 1, i + 1);
      if (times[after] == times[before]) {
        return;
      }
      for (int k = 0; k < unit.length; k++) {
        accelerations[i][k] =
            (speeds[after][k] - speeds[before][k]) / (times[after] - times[before]);
      }
      piece.state(times[i], state);
      solver.solve(state, values[i].clone(), speeds[i].clone(), accelerations[i]);
    }
  }

  /** Samples of the piece that was gone through last. */
  public int size() {
    return size;
  }

  /** Whether it never looked between samples, which changes the rounding of those that follow. */
  boolean straight() {
    return straight;
  }

  /** All of them, for good. */
  Samples samples() {
    return new Samples(times, values, speeds, accelerations);
  }

  /** Instant of a sample, s. */
  public double time(int i) {
    return times[i];
  }

  /** Joint values of a sample; lent until the next piece. */
  double[] q(int i) {
    return values[i];
  }

  /** Rates of joint values of a sample; lent likewise. */
  public double[] qd(int i) {
    return speeds[i];
  }

  /** Second rates of joint values of a sample; lent likewise. */
  public double[] qdd(int i) {
    return accelerations[i];
  }

  /**
   * Joints at a time near a sample.
   *
   * @return whether they were found
   */
  public boolean at(
      MotionPiece piece, int near, double time, double[] x, double[] xd, double[] xdd) {
    if (piece instanceof JointedPiece known) {
      known.joints(time, x, xd, xdd);
      return true;
    }
    straight = false;
    System.arraycopy(values[near], 0, x, 0, x.length);
    return solve(piece, time, x, xd, xdd) == Outcome.FOLLOWED;
  }

  /** Where the walk stands, or stood when it stuck: a copy. */
  public double[] standing() {
    return q.clone();
  }

  /** The instant it could not reach any more, s. */
  public double stuckAt() {
    return times[size];
  }

  /** Whether no joint values fit; if not, it stuck at a singular place. */
  public boolean lost() {
    return lost;
  }
}
