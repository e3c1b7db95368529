package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.joint.JointFault;
import io.github.holdpath.sim.motion.joint.JointWalk;
import io.github.holdpath.sim.motion.joint.JointWords;
import io.github.holdpath.sim.robot.NearestPosture;
import io.github.holdpath.sim.robot.Reach;
import io.github.holdpath.sim.robot.Robot;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.List;
import java.util.Optional;

/**
 * Plans the moves along the joints of a route: knows where the joints stand, as it follows the
 * pieces before each. For one walk along one route.
 */
final class JointMoves {
  private final Robot robot;
  private final Pose grip;
  private final JointWalk walk;
  private int followed;

  /**
   * Begins.
   *
   * @param robot the robot
   * @param grip pose of the grip frame in the flange, {@code X_FT}
   * @param start joint values at the start of the route, rad or m
   */
  JointMoves(Robot robot, Pose grip, double[] start) {
    this.robot = robot;
    this.grip = grip;
    walk = new JointWalk(robot, grip, start);
  }

  /**
   * Follows what was planned so far.
   *
   * @return false if the joints cannot
   */
  boolean follow(List<MotionPiece> pieces) {
    while (followed < pieces.size()) {
      if (!walk.go(pieces.get(followed))) {
        return false;
      }
      followed++;
    }
    return true;
  }

  /** Answer to where a move along the joints goes. */
  sealed interface Planned permits Way, Refused {}

  /** Its way and the law along it, of which it leaves the timing to {@link JointLaw}. */
  record Way(JointWay way, JointLaw law) implements Planned {}

  /** There is none. */
  record Refused(JointFault fault) implements Planned {}

  /**
   * Plans a move from where the joints stand.
   *
   * @param before pose of the grip frame there
   * @param time at which it begins, s
   */
  Planned plan(Pose before, RouteStep.Move move, LawKind law, double time) {
    return plan(walk.standing(), before, move, law, time);
  }

  /**
   * Plans a move from joint values that are given.
   *
   * @param from joint values where it begins, rad or m
   * @param before pose of the grip frame there
   * @param time at which it, or the stretch of moves that it belongs to, begins, s
   */
  Planned plan(double[] from, Pose before, RouteStep.Move move, LawKind law, double time) {
    Reach reach = robot.inverse(move.target().times(grip.inverse()));
    if (reach instanceof Reach.Unreachable out) {
      String place = JointWords.place(move.target().position());
      return refused(move, time, JointWords.outOfReach(time, out, place));
    }
    double[] to = NearestPosture.of(robot, ((Reach.Reached) reach).postures(), from);
    JointStates states = new JointStates(robot, grip, from, to, before.rotation());
    for (int i = 0; i <= JointWay.CELLS; i++) {
      if (!states.fits(i / (double) JointWay.CELLS)) {
        return refused(move, time, JointMoveWords.noPlace(i / (double) JointWay.CELLS));
      }
    }
    JointWay way = new JointWay(states);
    if (way.length() == 0 && way.turn() == 0) {
      return refused(move, time, "the grip is there already; take this move out");
    }
    JointLaw timing = new JointLaw(way, move.limits(), law);
    Optional<String> missing = timing.missing();
    return missing.isPresent() ? refused(move, time, missing.get()) : new Way(way, timing);
  }

  /** Joint values where what was followed ends: a copy. */
  double[] standing() {
    return walk.standing();
  }

  Robot robot() {
    return robot;
  }

  /** Pose of the grip frame in the flange, {@code X_FT}. */
  Pose grip() {
    return grip;
  }

  static Refused refused(RouteStep.Move move, double time, String words) {
    return new Refused(new JointFault(move.pointer(), time, words));
  }
}
