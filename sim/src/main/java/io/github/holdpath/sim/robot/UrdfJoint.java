package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.Optional;
import java.util.Set;

/** A joint as its file has it. */
record UrdfJoint(
    String name,
    int line,
    String type,
    String parent,
    String child,
    Pose origin,
    Vec3 axis,
    Optional<Limit> limit,
    Optional<Mimic> mimic) {
  /** The types of URDF. */
  static final Set<String> TYPES =
      Set.of("revolute", "continuous", "prismatic", "fixed", "floating", "planar");

  /** What {@code <limit>} holds, not yet judged; rad or m, rad/s or m/s, N m or N. */
  record Limit(double lower, double upper, double speed, double effort) {}

  boolean fixed() {
    return "fixed".equals(type);
  }

  /** Why this can be no joint of a chain, in words; empty if it can. */
  String fault() {
    if (fixed()) {
      return "";
    }
    if ("floating".equals(type) || "planar".equals(type)) {
      return "is " + type + "; a chain may turn, slide or be fixed, one axis at a time";
    }
    if (!(axis.norm() > 0)) {
      return "axis must not be 0 0 0";
    }
    if (limit.isEmpty()) {
      return "continuous".equals(type)
          ? ""
          : "is " + type + " and needs <limit lower= upper= velocity= effort=>";
    }
    Limit l = limit.get();
    if (!"continuous".equals(type) && l.lower() > l.upper()) {
      return "limit lower " + l.lower() + " is above upper " + l.upper();
    }
    if (!(l.speed() > 0)) {
      return "limit velocity must be above 0, but is "
          + l.speed()
          + "; a file made by a program may hold 0 for not known: take it from the maker's sheet";
    }
    if (!(l.effort() > 0)) {
      return "limit effort must be above 0, but is "
          + l.effort()
          + "; a file made by a program may hold 0 for not known: take it from the maker's sheet";
    }
    return "";
  }

  JointKind kind() {
    return switch (type) {
      case "prismatic" -> JointKind.PRISMATIC;
      case "continuous" -> JointKind.CONTINUOUS;
      default -> JointKind.REVOLUTE;
    };
  }

  /** Limits; only without a fault. */
  JointLimits limits() {
    if (limit.isEmpty()) {
      return JointLimits.NONE;
    }
    Limit l = limit.get();
    boolean endless = kind() == JointKind.CONTINUOUS;
    return new JointLimits(
        endless ? Double.NEGATIVE_INFINITY : l.lower(),
        endless ? Double.POSITIVE_INFINITY : l.upper(),
        l.speed(),
        l.effort());
  }
}
