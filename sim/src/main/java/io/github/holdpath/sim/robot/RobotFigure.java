package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;

/**
 * A robot as a figure of plain bodies, for showing where it is. Joints and flange are where the
 * robot's own motion puts them; thicknesses and what stands between the joints are proportions, not
 * the robot's own, and say nothing of collisions. No bone changes its length: those of one robot
 * are the same bones wherever it stands, in the same order.
 *
 * @param bones from the base to the flange: the last one ends at the flange's origin
 */
public record RobotFigure(List<Bone> bones) {
  /** Copies the list. */
  public RobotFigure {
    bones = List.copyOf(bones);
  }

  /** What a bone stands for. */
  public enum Role {
    /** What carries the robot and does not move. */
    BASE,
    /** An arm between two joints. */
    LINK,
    /** Housing of a joint, along its axis. */
    JOINT,
    /** A beam on which something slides, over its whole range. */
    RAIL,
    /** What slides on a beam. */
    CARRIAGE,
    /** A thin round body. */
    ROD,
    /** A flat round body, thicker than long. */
    PLATE
  }

  /**
   * A straight body.
   *
   * @param role what it stands for
   * @param from one end of its middle line, world axes, m
   * @param to other end
   * @param radius half its thickness, m, positive
   */
  public record Bone(Role role, Vec3 from, Vec3 to, double radius) {
    /** Refuses a thickness that is none. */
    public Bone {
      if (!(radius > 0) || !Double.isFinite(radius)) {
        throw new IllegalArgumentException("radius must be positive, but was " + radius);
      }
    }

    /** m. */
    public double length() {
      return to.minus(from).norm();
    }
  }

  /** Origin of the flange, world axes, m. */
  public Vec3 flange() {
    return bones.get(bones.size() - 1).to();
  }
}
