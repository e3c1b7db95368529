package io.github.holdpath.sim.scene.route;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import java.util.Optional;

/** Builds poses. */
public final class PoseBuilder {
  /** A quaternion written with three decimals is still taken, and scaled to length 1. */
  private static final double LENGTH_TOLERANCE = 2e-3;

  private PoseBuilder() {}

  /**
   * Builds a pose.
   *
   * @param pose checked fields
   * @param unless orientation where the file gives none
   * @return empty if faults were noted
   */
  public static Optional<Pose> build(Values pose, Quaternion unless, Faults faults) {
    Optional<Vec3> at = pose.vector("at");
    Optional<Quaternion> rotation = rotation(pose, unless, faults);
    return at.isPresent() && rotation.isPresent()
        ? Optional.of(new Pose(at.get(), rotation.get()))
        : Optional.empty();
  }

  /** Whether the file gives an orientation. */
  static boolean hasRotation(Values pose) {
    return pose.isThere("rpy") || pose.isThere("quaternion");
  }

  /**
   * The orientation of an object that may give one in rpy or quaternion.
   *
   * @return {@code unless} where the file gives none, empty if faults were noted
   */
  static Optional<Quaternion> rotation(Values pose, Quaternion unless, Faults faults) {
    if (pose.isThere("rpy") && pose.isThere("quaternion")) {
      faults.add(
          pose.place("quaternion"), "only one of rpy, quaternion may be given; keep one of them");
      return Optional.empty();
    }
    if (pose.isThere("rpy")) {
      return pose.amount("rpy").map(a -> Quaternion.ofRpy(a.get(0), a.get(1), a.get(2)));
    }
    if (!pose.isThere("quaternion")) {
      return Optional.of(unless);
    }
    double[] q = pose.numbers("quaternion");
    if (q == null) {
      return Optional.empty();
    }
    double n = Math.sqrt(q[0] * q[0] + q[1] * q[1] + q[2] * q[2] + q[3] * q[3]);
    if (!(Math.abs(n - 1) <= LENGTH_TOLERANCE)) {
      faults.add(
          pose.place("quaternion"),
          "the quaternion has length "
              + (float) n
              + ", but a rotation has length 1; for example"
              + " [0, 1, 0, 0], which looks down");
      return Optional.empty();
    }
    return Optional.of(new Quaternion(q[0] / n, q[1] / n, q[2] / n, q[3] / n));
  }
}
