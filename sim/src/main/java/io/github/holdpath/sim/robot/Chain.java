package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * An arm: a serial chain of joints from base to flange. Joint values, speeds and torques are arrays
 * with one number for each joint that has a drive of its own, in the order from the base ({@link
 * #drives()}); joints that mimic follow.
 *
 * <p>The motion of the flange is computed by a {@link ChainMotion}, torques of the drives by {@link
 * JointTorques}.
 *
 * @param joints from the base to the flange, at least one
 * @param flange pose of the flange in the frame of the last joint (position in m)
 */
public record Chain(List<Joint> joints, Pose flange) {
  /** Refuses an empty chain, a name that comes twice, and a mimic without a driven leader. */
  public Chain {
    joints = List.copyOf(joints);
    if (joints.isEmpty()) {
      throw new IllegalArgumentException("a chain needs a joint that moves");
    }
    Set<String> names = new HashSet<>();
    Set<String> driven = new HashSet<>();
    for (Joint joint : joints) {
      if (!names.add(joint.name())) {
        throw new IllegalArgumentException("joint " + joint.name() + " comes twice");
      }
      if (joint.mimic().isEmpty()) {
        driven.add(joint.name());
      }
    }
    for (Joint joint : joints) {
      if (joint.mimic().isPresent() && !driven.contains(joint.mimic().get().leader())) {
        throw new IllegalArgumentException(
            "joint "
                + joint.name()
                + " mimics "
                + joint.mimic().get().leader()
                + ", which is no joint of the chain with a drive of its own");
      }
    }
  }

  /** The joints with a drive of their own, from the base: the order of every array. */
  public List<Joint> drives() {
    return joints.stream().filter(j -> j.mimic().isEmpty()).toList();
  }

  /**
   * Limits of a drive, with those of the joints that mimic it: the narrower holds. Efforts are not
   * joined, as a mimicking joint has no drive.
   *
   * @param drive index in {@link #drives()}
   * @throws IllegalArgumentException if the limits leave no value at all
   */
  public JointLimits limits(int drive) {
    Joint leader = drives().get(drive);
    double lower = leader.limits().lower();
    double upper = leader.limits().upper();
    double speed = leader.limits().speed();
    double acceleration = leader.limits().acceleration();
    for (Joint joint : joints) {
      if (joint.mimic().isPresent() && joint.mimic().get().leader().equals(leader.name())) {
        Mimic m = joint.mimic().get();
        double a = (joint.limits().lower() - m.offset()) / m.multiplier();
        double b = (joint.limits().upper() - m.offset()) / m.multiplier();
        lower = Math.max(lower, Math.min(a, b));
        upper = Math.min(upper, Math.max(a, b));
        speed = Math.min(speed, joint.limits().speed() / Math.abs(m.multiplier()));
        acceleration =
            Math.min(acceleration, joint.limits().acceleration() / Math.abs(m.multiplier()));
      }
    }
    return new JointLimits(lower, upper, speed, acceleration, leader.limits().effort());
  }

  /**
   * Pose of the flange in the base, {@code X_BF}.
   *
   * @param q joint values, rad or m
   */
  public Pose flangeAt(double... q) {
    ChainMotion motion = new ChainMotion(this);
    motion.moveTo(q);
    return motion.flangePose();
  }

  /** For every joint, the index of the drive that moves it. */
  int[] driveOfEach() {
    List<String> names = new ArrayList<>();
    drives().forEach(j -> names.add(j.name()));
    return joints.stream()
        .mapToInt(j -> names.indexOf(j.mimic().map(Mimic::leader).orElse(j.name())))
        .toArray();
  }
}
