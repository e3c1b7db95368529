package io.github.holdpath.sim.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a motion asks of the robot's joints, at the samples.
 *
 * @param kind of robot, as scene files name it
 * @param joints in the order of the robot
 * @param moves the joint nearest a limit in each move; empty where no joint has a limit
 */
public record JointUse(String kind, List<Peaks> joints, List<Optional<Nearest>> moves) {
  /** Copies the lists. */
  public JointUse {
    joints = List.copyOf(joints);
    moves = List.copyOf(moves);
  }

  /** The joint nearest a limit over all; empty where no joint has a limit. */
  public Optional<Nearest> nearest() {
    return joints.stream()
        .flatMap(j -> j.nearest().stream())
        .reduce((a, b) -> b.use() > a.use() ? b : a);
  }

  /** What a joint may be near to. */
  public enum Limit {
    /** A stop of its range. */
    RANGE("range"),
    /** Its greatest speed. */
    SPEED("speed"),
    /** Its greatest acceleration. */
    ACCELERATION("acceleration"),
    /** Its greatest torque, or force where it slides. */
    TORQUE("torque");

    private final String label;

    Limit(String label) {
      this.label = label;
    }

    /** Name in texts and files. */
    public String label() {
      return label;
    }
  }

  /**
   * Where a joint is nearest a limit.
   *
   * @param joint name
   * @param limit which
   * @param use share of the limit, 1 at it; of a range the share of half of it, from its middle
   * @param segment move, 0 before the first
   * @param time s
   */
  public record Nearest(String joint, Limit limit, double use, int segment, double time) {}

  /**
   * Largest values of one joint.
   *
   * @param name of the joint
   * @param turns whether it turns: rad; if not, it slides: m
   * @param lowest joint value, rad or m
   * @param highest joint value, rad or m
   * @param speed rad/s or m/s
   * @param acceleration rad/s^2 or m/s^2
   * @param torque N m or N, without friction, motors and gears; empty where it is not known
   * @param uses largest share of each limit, 1 at it; empty where there is none
   * @param nearest the limit it is nearest to; empty where it has none
   */
  public record Peaks(
      String name,
      boolean turns,
      double lowest,
      double highest,
      double speed,
      double acceleration,
      OptionalDouble torque,
      Uses uses,
      Optional<Nearest> nearest) {}

  /**
   * Shares of a joint's limits.
   *
   * @param range of half its range, from its middle
   * @param speed of its greatest speed
   * @param acceleration of its greatest acceleration
   * @param torque of its greatest torque
   */
  public record Uses(
      OptionalDouble range,
      OptionalDouble speed,
      OptionalDouble acceleration,
      OptionalDouble torque) {}
}
