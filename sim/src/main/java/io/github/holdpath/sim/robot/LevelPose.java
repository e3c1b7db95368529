package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.robot.Reach.Cause;
import io.github.holdpath.sim.robot.Reach.Unreachable;
import java.util.Optional;

/**
 * Pose, in the base, of the last body of a robot that keeps it level.
 *
 * @param position of its origin, m
 * @param turn about the base's z axis, rad, -pi to pi
 * @param lean angle between its z axis and the base's, rad
 */
record LevelPose(Vec3 position, double turn, double lean) {
  /** Angles that a pose written with six digits may be off. */
  static final double SLACK = 1e-6;

  /**
   * From a pose of the flange.
   *
   * @param flange {@code X_WF}
   * @param base {@code X_WB}
   * @param mount pose of the flange in the last body
   */
  static LevelPose of(Pose flange, Pose base, Pose mount) {
    Pose last = base.inverse().times(flange).times(mount.inverse());
    Quaternion q = last.rotation();
    double turn = 2 * Math.atan2(q.z(), q.w());
    return new LevelPose(
        last.position(),
        turn - 2 * Math.PI * Math.rint(turn / (2 * Math.PI)),
        2 * Math.atan2(Math.hypot(q.x(), q.y()), Math.hypot(q.w(), q.z())));
  }

  /** Why a robot cannot take the rotation. */
  Optional<Unreachable> fault(String kind, boolean turns) {
    if (lean > SLACK) {
      String words = "the tool cannot lean: a " + kind + " keeps its flange level";
      return Optional.of(new Unreachable(Cause.CANNOT_LEAN, words, lean));
    }
    if (!turns && Math.abs(turn) > SLACK) {
      String words = "the tool cannot turn: this " + kind + " has no turning axis";
      return Optional.of(new Unreachable(Cause.CANNOT_TURN, words, Math.abs(turn)));
    }
    return Optional.empty();
  }
}
