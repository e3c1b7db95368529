package io.github.holdpath.sim.motion.joint;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.JointedPiece;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.robot.Robot;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * How a robot's joints go along with a motion of the grip frame. Immutable; samples are always the
 * same. They are kept from following the motion, or from the first visit where that was slowed or
 * looked at closely; those of a very long motion are computed for each.
 *
 * <p><b>Caution.</b> Nothing here knows of collisions.
 */
public final class JointTrack implements JointOutcome {
  /** Spacing of the samples where nothing else is asked for, s. */
  public static final double STEP = 1e-3;

  private final Way way;
  private final List<JointSlowing> slowings;
  private final List<JointPast> past;
  private final JointSamples followed;
  private final AtomicReference<@Nullable JointSamples> samples;

  /**
   * All that a walk needs.
   *
   * @param robot that follows
   * @param grip pose of the grip frame in the flange, {@code X_FT}
   * @param motion as the robot makes it
   * @param start where the joints begin
   * @param spacing of the samples, s
   */
  record Way(Robot robot, Pose grip, Motion motion, double[] start, double spacing) {
    JointWalk walk() {
      return new JointWalk(robot, grip, start, spacing);
    }
  }

  /**
   * Keeps all.
   *
   * @param way along the motion
   * @param slowings of the motion
   * @param past joints beyond a stop
   * @param followed samples, piece by piece, of the motion or of the same one before it was slowed
   * @param exact whether they are to the last bit those of a walk along the motion
   */
  JointTrack(
      Way way,
      List<JointSlowing> slowings,
      List<JointPast> past,
      JointSamples followed,
      boolean exact) {
    this.way = way;
    this.slowings = List.copyOf(slowings);
    this.past = List.copyOf(past);
    this.followed = followed;
    this.samples = new AtomicReference<>(exact ? followed : null);
  }

  /**
   * Follows a motion (theory, eq. 8.24 and 8.25). A planned motion is slowed where a joint would
   * exceed its speed or acceleration, from stop to stop, and a joint beyond its stop is a fault; a
   * recorded one was so, and is taken as it is.
   *
   * @param robot the robot
   * @param grip pose of the grip frame in the flange, {@code X_FT}
   * @param motion of the grip frame
   * @param start where the joints begin
   * @param recorded whether the motion was recorded
   */
  public static JointOutcome follow(
      Robot robot, Pose grip, Motion motion, JointStart start, boolean recorded) {
    return follow(robot, grip, motion, start, recorded, STEP);
  }

  /**
   * The same with another spacing of the samples: a coarse one is quick, and its stops, speeds and
   * slowing are nearly right.
   *
   * @param spacing of the samples, s
   */
  public static JointOutcome follow(
      Robot robot, Pose grip, Motion motion, JointStart start, boolean recorded, double spacing) {
    return new JointFollower(robot, grip, motion, recorded, spacing).follow(start);
  }

  /**
   * Follows a planned motion from joint values that fit its beginning.
   *
   * @param robot the robot
   * @param grip pose of the grip frame in the flange, {@code X_FT}
   * @param motion of the grip frame
   * @param start joint values, rad or m
   * @param spacing of the samples, s
   */
  public static JointOutcome follow(
      Robot robot, Pose grip, Motion motion, double[] start, double spacing) {
    return new JointFollower(robot, grip, motion, false, spacing).run(start);
  }

  /** What is done with a sample; the arrays are only lent, and must not be changed. */
  @FunctionalInterface
  public interface Visit {
    /**
     * One sample.
     *
     * @param piece of the motion that it belongs to
     * @param time s
     * @param q joint values, rad or m
     * @param qd their rates, rad/s or m/s
     * @param qdd their second rates, rad/s^2 or m/s^2
     */
    void at(MotionPiece piece, double time, double[] q, double[] qd, double[] qdd);
  }

  /** Visits samples, 1 ms apart unless asked otherwise, and both ends of every piece, in order. */
  public void visit(Visit visit) {
    JointSamples kept = samples.get();
    if (kept == null) {
      kept = walk();
      samples.set(kept);
    }
    if (kept.whole()) {
      kept.visit(way.motion(), visit);
    } else {
      walk(visit);
    }
  }

  private JointSamples walk() {
    JointSamples all = new JointSamples();
    JointWalk walk = way.walk();
    for (MotionPiece piece : way.motion().pieces()) {
      walk.go(piece);
      all.add(walk.samples());
    }
    return all;
  }

  private void walk(Visit visit) {
    JointWalk walk = way.walk();
    for (MotionPiece piece : way.motion().pieces()) {
      walk.go(piece);
      for (int i = 0; i < walk.size(); i++) {
        visit.at(piece, walk.time(i), walk.q(i), walk.qd(i), walk.qdd(i));
      }
    }
  }

  /**
   * Joint values at a time, to show the robot: those of the piece where it knows them, else between
   * two samples of the walk that followed the motion. Takes no walk.
   *
   * @param piece index of the motion's piece
   * @param time s; what lies outside the piece is taken as its nearer end
   * @return joint values, rad or m; a new array
   */
  public double[] values(int piece, double time) {
    MotionPiece in = way.motion().pieces().get(piece);
    double t = Math.max(in.from(), Math.min(in.to(), time));
    if (in instanceof JointedPiece known) {
      double[] q = new double[way.start().length];
      known.joints(t, q, new double[q.length], new double[q.length]);
      return q;
    }
    double span = in.to() - in.from();
    return followed.at(piece, span > 0 ? (t - in.from()) / span : 0);
  }

  /** The robot. */
  public Robot robot() {
    return way.robot();
  }

  /** Pose of the grip frame in the flange, {@code X_FT}. */
  public Pose grip() {
    return way.grip();
  }

  /** The motion as the robot makes it, slowed where its joints ask for that. */
  public Motion motion() {
    return way.motion();
  }

  /** Joint values at the beginning, rad or m; a copy. */
  public double[] start() {
    return way.start().clone();
  }

  /** Stretches that are played slower than the tool's own limits allow. */
  public List<JointSlowing> slowings() {
    return slowings;
  }

  /** Joints beyond a stop, the worst place of each; only in recorded motions. */
  public List<JointPast> past() {
    return past;
  }
}
