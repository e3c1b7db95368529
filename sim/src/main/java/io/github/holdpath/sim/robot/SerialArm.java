package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.robot.Reach.Reached;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * A serial arm, as read from a URDF file. Where its geometry has a closed form the postures come
 * from that, else by search, which may miss some.
 *
 * @param chain joints from the base to the flange
 * @param base pose of the base in the world, {@code X_WB}
 * @param ratedPayload kg
 */
public record SerialArm(Chain chain, Pose base, OptionalDouble ratedPayload) implements Robot {
  /** Refuses a payload that is none. */
  public SerialArm {
    LevelAxes.checkPayload(ratedPayload);
  }

  @Override
  public List<RobotJoint> joints() {
    List<Joint> drives = chain.drives();
    return IntStream.range(0, drives.size())
        .mapToObj(k -> new RobotJoint(drives.get(k).name(), drives.get(k).kind(), chain.limits(k)))
        .toList();
  }

  /** The way from the first joint's origin over those of all others to the flange, at values 0. */
  @Override
  public double length() {
    double sum = chain.flange().position().norm();
    for (Joint joint : chain.joints().subList(1, chain.joints().size())) {
      sum += joint.origin().position().norm();
    }
    return sum > 0 ? sum : 1;
  }

  /** The chain with its base in the world. */
  private Chain inWorld() {
    List<Joint> joints = new ArrayList<>(chain.joints());
    Joint j = joints.get(0);
    Pose origin = base.times(j.origin());
    joints.set(0, new Joint(j.name(), j.kind(), origin, j.axis(), j.limits(), j.body(), j.mimic()));
    return new Chain(joints, chain.flange());
  }

  @Override
  public ChainMotion motion() {
    return new ChainMotion(inWorld());
  }

  /**
   * A new workspace for the torques of the drives.
   *
   * @param gravity acceleration of free fall in the world, m/s^2
   * @param payload tool and part together, in the flange's frame
   */
  public JointTorques torques(Vec3 gravity, LinkBody payload) {
    return new JointTorques(inWorld(), gravity, payload);
  }

  /** Whether the postures come from a closed form. */
  public boolean hasClosedForm() {
    return SphericalWrist.of(inWorld(), length()).isPresent();
  }

  @Override
  public Optional<RobotFigure> figure(double... q) {
    return Figures.arm(this, q);
  }

  @Override
  public Reach inverse(Pose flange) {
    PoseSearch search = new PoseSearch(this);
    Optional<SphericalWrist> wrist = SphericalWrist.of(inWorld(), length());
    if (wrist.isEmpty()) {
      return search.everywhere(flange, length());
    }
    Reach reach = wrist.get().postures(flange);
    if (reach instanceof Reached reached) {
      // Closes what the file's rounding leaves open.
      List<Posture> exact = search.from(reached.postures(), flange);
      return exact.isEmpty() ? search.everywhere(flange, length()) : new Reached(exact);
    }
    return reach;
  }
}
