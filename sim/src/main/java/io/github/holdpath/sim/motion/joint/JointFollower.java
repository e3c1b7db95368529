package io.github.holdpath.sim.motion.joint;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.JointedPiece;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.path.Flat;
import io.github.holdpath.sim.robot.JointLimits;
import io.github.holdpath.sim.robot.Reach;
import io.github.holdpath.sim.robot.Robot;
import io.github.holdpath.sim.robot.RobotJoint;
import io.github.holdpath.sim.robot.SerialArm;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Follows one motion with one robot, and judges what its joints must do. */
final class JointFollower {
  /** Beyond a stop by no more than this is on it, rad or m. */
  private static final double ON_IT = 1e-9;

  /** A motion this slow stands, m/s and rad/s: one law ends and another begins. */
  private static final double STANDS = 1e-9;

  /** Looks into each piece of a move for the place farthest out of reach. */
  private static final int LOOKS = 50;

  /** A use above 1 by less than this is rounding. */
  private static final double ROUNDING = 1e-9;

  private final Robot robot;
  private final Pose grip;
  private final Motion motion;
  private final boolean recorded;
  private final double spacing;
  private final List<RobotJoint> joints;
  private final double[] state = new double[MotionState.SIZE];

  JointFollower(Robot robot, Pose grip, Motion motion, boolean recorded, double spacing) {
    this.robot = robot;
    this.grip = grip;
    this.motion = motion;
    this.recorded = recorded;
    this.spacing = spacing;
    joints = robot.joints();
  }

  JointOutcome follow(JointStart start) {
    MotionPiece first = motion.pieces().get(0);
    if (first instanceof JointedPiece known) {
      int n = joints.size();
      double[] q = new double[n];
      known.joints(first.from(), q, new double[n], new double[n]);
      return run(q);
    }
    Reach reach = robot.inverse(flangeAt(first, first.from()));
    if (reach instanceof Reach.Unreachable out) {
      return new JointFault(
          pointer(first), first.from(), JointWords.outOfReach(first.from(), out, place(first, 0)));
    }
    List<double[]> starts = start.candidates(robot, ((Reach.Reached) reach).postures());
    if (starts.isEmpty()) {
      double[] q = ((Reach.Reached) reach).postures().get(0).values();
      return recorded ? run(q) : stop(first, q);
    }
    JointOutcome answer = run(starts.get(0));
    for (int i = 1; i < starts.size() && answer instanceof JointFault; i++) {
      JointOutcome other = run(starts.get(i));
      answer = other instanceof JointTrack ? other : answer;
    }
    return answer;
  }

  /** Every posture at the beginning is past a stop. */
  private JointFault stop(MotionPiece first, double[] q) {
    int worst = 0;
    for (int k = 1; k < q.length; k++) {
      worst =
          joints.get(k).limits().room(q[k]) < joints.get(worst).limits().room(q[worst]) ? k : worst;
    }
    double beyond = JointLook.beyond(joints.get(worst).limits(), q[worst]);
    double at = first.from();
    return past(new JointPast(worst, first.segment(), at, at, q[worst], beyond));
  }

  /** Follows from joint values that fit the beginning. */
  JointOutcome run(double[] start) {
    JointWalk beginning = new JointWalk(robot, grip, start);
    beginning.settle(motion.pieces().get(0));
    double[] begun = beginning.standing();
    JointWalk walk = new JointWalk(robot, grip, begun, spacing);
    JointSamples samples = new JointSamples();
    JointLook look = new JointLook(walk, start.length);
    List<MotionPiece> pieces = motion.pieces();
    double[] factors = new double[pieces.size()];
    @Nullable JointPast[] past = new JointPast[start.length];
    List<JointSlowing> slowings = new ArrayList<>();
    int stretch = 0;
    Governor governor = new Governor();
    for (int i = 0; i < pieces.size(); i++) {
      MotionPiece piece = pieces.get(i);
      if (!walk.go(piece)) {
        return stuck(piece, walk);
      }
      samples.add(walk.samples());
      for (int k = 0; k < start.length; k++) {
        lookPast(piece, k, walk, look, past);
        governor.look(piece, k, look);
      }
      if (i == pieces.size() - 1 || stopsBetween(piece, pieces.get(i + 1))) {
        for (int j = stretch; j <= i; j++) {
          factors[j] = governor.factor;
        }
        if (governor.factor < 1) {
          slowings.add(
              governor.slowing(Math.max(1, pieces.get(stretch).segment()), piece.segment()));
        }
        stretch = i + 1;
        governor = new Governor();
      }
    }
    List<JointPast> found = new ArrayList<>();
    for (JointPast p : past) {
      if (p != null) {
        found.add(p);
      }
    }
    if (!recorded && !found.isEmpty()) {
      JointPast first = found.get(0);
      for (JointPast p : found) {
        first = p.from() < first.from() ? p : first;
      }
      return past(first);
    }
    if (slowings.isEmpty()) {
      return track(motion, begun, slowings, found, samples, walk.straight());
    }
    Motion slowed = new SlowedMotion(motion, factors, JointWords.slowed(slowings, motion));
    return track(slowed, begun, slowings, found, samples, false);
  }

  private JointTrack track(
      Motion followed,
      double[] start,
      List<JointSlowing> slowings,
      List<JointPast> past,
      JointSamples samples,
      boolean exact) {
    return new JointTrack(
        new JointTrack.Way(robot, grip, followed, start, spacing), slowings, past, samples, exact);
  }

  private void lookPast(
      MotionPiece piece, int k, JointWalk walk, JointLook look, @Nullable JointPast[] past) {
    JointLimits limits = joints.get(k).limits();
    double beyond = look.beyond(piece, k, limits);
    if (!(beyond > ON_IT)) {
      return;
    }
    JointPast known = past[k];
    if (known != null && known.beyond() >= beyond) {
      return;
    }
    double at = look.foundAt();
    double first = at;
    for (int i = walk.size() - 1; i >= 0; i--) {
      first =
          JointLook.beyond(limits, walk.q(i)[k]) > ON_IT ? Math.min(first, walk.time(i)) : first;
    }
    double[] x = new double[joints.size()];
    walk.at(piece, near(walk, at), at, x, new double[x.length], new double[x.length]);
    double from = known == null ? first : known.from();
    past[k] = new JointPast(k, piece.segment(), from, at, x[k], beyond);
  }

  private static int near(JointWalk walk, double time) {
    int best = 0;
    for (int i = 1; i < walk.size(); i++) {
      best = Math.abs(walk.time(i) - time) < Math.abs(walk.time(best) - time) ? i : best;
    }
    return best;
  }

  private JointFault past(JointPast p) {
    int segment = p.segment();
    return new JointFault(
        segment == 0 ? "" : motion.segments().get(segment - 1).pointer(),
        p.from(),
        JointWords.past(joints.get(p.joint()), p));
  }

  private boolean stopsBetween(MotionPiece before, MotionPiece after) {
    return before.still() || after.still() || stands(before, before.to());
  }

  private boolean stands(MotionPiece piece, double time) {
    piece.state(time, state);
    return Flat.norm(state, MotionState.VELOCITY) < STANDS
        && Flat.norm(state, MotionState.ANGULAR_VELOCITY) < STANDS;
  }

  private JointFault stuck(MotionPiece piece, JointWalk walk) {
    double time = walk.stuckAt();
    Optional<Reach.Unreachable> out = unreachable(piece, time);
    if (out.isEmpty()) {
      String words = JointWords.singular(time, place(piece, time), walk.lost());
      return new JointFault(pointer(piece), time, words);
    }
    Reach.Unreachable worst = out.get();
    String at = place(piece, time);
    // Each look at an arm without a closed form is a search.
    int looks = robot instanceof SerialArm arm && !arm.hasClosedForm() ? 0 : LOOKS;
    for (MotionPiece later : motion.pieces()) {
      if (later.segment() != piece.segment() || later.to() <= time || later.still()) {
        continue;
      }
      double from = Math.max(time, later.from());
      for (int i = 1; i <= looks; i++) {
        double t = from + (later.to() - from) * i / looks;
        Optional<Reach.Unreachable> here = unreachable(later, t);
        if (here.isPresent() && here.get().measure() > worst.measure()) {
          worst = here.get();
          at = place(later, t);
        }
      }
    }
    return new JointFault(pointer(piece), time, JointWords.outOfReach(time, worst, at));
  }

  private Optional<Reach.Unreachable> unreachable(MotionPiece piece, double time) {
    return robot.inverse(flangeAt(piece, time)) instanceof Reach.Unreachable out
        ? Optional.of(out)
        : Optional.empty();
  }

  private Pose poseAt(MotionPiece piece, double time) {
    piece.state(time, state);
    return MotionState.of(state).pose();
  }

  private Pose flangeAt(MotionPiece piece, double time) {
    return poseAt(piece, time).times(grip.inverse());
  }

  private String place(MotionPiece piece, double time) {
    return JointWords.place(poseAt(piece, Math.max(time, piece.from())).position());
  }

  private String pointer(MotionPiece piece) {
    return piece.segment() == 0 ? "" : motion.segments().get(piece.segment() - 1).pointer();
  }

  /** What slows a stretch most. */
  private final class Governor {
    private double factor = 1;
    private int joint;
    private boolean bySpeed;

    void look(MotionPiece piece, int k, JointLook look) {
      if (recorded || piece.still()) {
        return;
      }
      JointLimits limits = joints.get(k).limits();
      double speed = look.speed(piece, k, limits.speed());
      double acceleration = look.acceleration(piece, k, limits.acceleration());
      if (speed > 1 + ROUNDING && 1 / speed < factor) {
        factor = 1 / speed;
        joint = k;
        bySpeed = true;
      }
      if (acceleration > 1 + ROUNDING && 1 / Math.sqrt(acceleration) < factor) {
        factor = 1 / Math.sqrt(acceleration);
        joint = k;
        bySpeed = false;
      }
    }

    JointSlowing slowing(int from, int to) {
      return new JointSlowing(from, to, factor, joints.get(joint).name(), bySpeed);
    }
  }
}
