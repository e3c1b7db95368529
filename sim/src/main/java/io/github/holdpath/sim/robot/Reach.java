package io.github.holdpath.sim.robot;

import java.util.List;

/** Answer to where a robot's joints stand when its flange is in a pose. */
public sealed interface Reach {
  /**
   * It can be reached; joint limits are not looked at.
   *
   * @param postures one per branch, at least one; angles are brought as near the middle of their
   *     range as whole turns can
   */
  record Reached(List<Posture> postures) implements Reach {
    /** Takes a copy; refuses an empty list. */
    public Reached {
      postures = List.copyOf(postures);
      if (postures.isEmpty()) {
        throw new IllegalArgumentException("postures must not be empty");
      }
    }
  }

  /** What keeps a robot from a pose. */
  enum Cause {
    /** Farther than the arm is long; measure in m. */
    TOO_FAR,
    /** Nearer than the arm folds; measure in m. */
    TOO_NEAR,
    /** Off the plane or line in which the robot moves; measure in m. */
    NO_AXIS,
    /** The flange cannot lean so far, with most kinds not at all; measure in rad. */
    CANNOT_LEAN,
    /** The robot has no axis that turns the flange; measure in rad. */
    CANNOT_TURN,
    /** No posture was found by search; measure in m, of rad times the robot's length. */
    NOT_FOUND
  }

  /**
   * It cannot be reached.
   *
   * @param cause what keeps the robot from it
   * @param reason the same in words
   * @param measure how far it is from what can be reached, in the unit of the cause, positive
   */
  record Unreachable(Cause cause, String reason, double measure) implements Reach {}
}
