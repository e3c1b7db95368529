package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.robot.Chain;
import io.github.holdpath.sim.robot.Delta;
import io.github.holdpath.sim.robot.Gantry;
import io.github.holdpath.sim.robot.Joint;
import io.github.holdpath.sim.robot.JointKind;
import io.github.holdpath.sim.robot.JointLimits;
import io.github.holdpath.sim.robot.LinkBody;
import io.github.holdpath.sim.robot.Robot;
import io.github.holdpath.sim.robot.Scara;
import io.github.holdpath.sim.robot.SerialArm;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/** Fictional robots with joint values to move between. */
final class JointRobots {
  static final Pose GRIP = Pose.at(0.03, 0.02, 0.15);
  private static final double FREE = Double.POSITIVE_INFINITY;

  private JointRobots() {}

  /** A robot and two postures whose way does not stand still. */
  record Case(Robot robot, double[] from, double[] to) {}

  static JointLimits range(double range, double speed, double acceleration) {
    return new JointLimits(-range, range, speed, acceleration, FREE);
  }

  static Gantry gantry() {
    return gantry(4, 40);
  }

  static Gantry gantry(double speed, double acceleration) {
    JointLimits l = range(3, speed, acceleration);
    return new Gantry(
        Optional.of(l),
        Optional.of(l),
        Optional.of(l),
        Optional.of(l),
        Robot.HANGING,
        Pose.IDENTITY,
        OptionalDouble.empty());
  }

  static Scara scara() {
    return scara(4, 40);
  }

  static Scara scara(double speed, double acceleration) {
    return scara(0.5, 0.4, speed, acceleration);
  }

  /** Arms of equal length: folded, the flange is on the shoulder's axis. */
  static Scara evenScara() {
    return scara(0.4, 0.4, 4, 40);
  }

  static Scara scara(double upper, double fore, double speed, double acceleration) {
    JointLimits l = range(3, speed, acceleration);
    return new Scara(
        upper, fore, l, l, l, l, Robot.HANGING, Pose.at(0, 0, 0.2), OptionalDouble.of(5));
  }

  static Delta delta() {
    return new Delta(
        0.2,
        0.045,
        0.35,
        0.8,
        range(1.4, 12, 400),
        Optional.of(range(6, 20, 500)),
        Robot.HANGING,
        Pose.IDENTITY,
        OptionalDouble.empty());
  }

  private static Joint joint(int i, Pose origin, Vec3 axis) {
    JointLimits limits = range(2.9, 3, 25);
    return Joint.driven("j" + i, JointKind.REVOLUTE, origin, axis, limits, LinkBody.NONE);
  }

  private static SerialArm arm(JointKind last, JointLimits lastLimits) {
    Vec3 z = new Vec3(0, 0, 1);
    Vec3 y = new Vec3(0, 1, 0);
    List<Joint> joints =
        List.of(
            joint(1, Pose.at(0, 0, 0.3), z),
            joint(2, Pose.at(0.05, 0, 0), y),
            joint(3, Pose.at(0, 0, 0.45), y),
            joint(4, Pose.at(0.02, 0, 0.1), z),
            joint(5, Pose.at(0, 0, 0.35), y),
            Joint.driven("j6", last, Pose.IDENTITY, z, lastLimits, LinkBody.NONE));
    return new SerialArm(
        new Chain(joints, Pose.at(0, 0, 0.08)), Pose.IDENTITY, OptionalDouble.empty());
  }

  /** A bent arm with a wrist whose axes meet. */
  static SerialArm arm() {
    return arm(JointKind.REVOLUTE, range(2.9, 3, 25));
  }

  /** The same, but its last joint turns without end. */
  static SerialArm endlessArm() {
    return arm(JointKind.CONTINUOUS, range(FREE, 4, 30));
  }

  /** Seven turning joints. */
  static SerialArm seven() {
    List<Joint> joints = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      Vec3 axis = i % 2 == 0 ? new Vec3(0, 0, 1) : new Vec3(0, 1, 0);
      joints.add(joint(i + 1, Pose.at(0, 0, 0.2), axis));
    }
    return new SerialArm(
        new Chain(joints, Pose.at(0.03, 0, 0.1)), Pose.IDENTITY, OptionalDouble.empty());
  }

  static List<Case> cases() {
    return List.of(
        new Case(gantry(), new double[] {0.5, -0.4, -0.3, 0.2}, new double[] {0.7, 0.5, -0.5, 1.4}),
        new Case(scara(), new double[] {-0.8, 0.9, -0.1, 0.2}, new double[] {0.7, 1.4, -0.2, -0.9}),
        new Case(delta(), new double[] {0.1, 0.5, -0.2, 0.3}, new double[] {0.6, -0.1, 0.4, 2}),
        new Case(
            arm(),
            new double[] {-0.8, 0.4, 1.0, 0.3, 0.9, 1.9},
            new double[] {1.1, 0.2, 1.3, -0.5, 0.6, -1.2}));
  }

  /** Joint values of the six-axis arm. */
  static double[] draw(SplittableRandom random) {
    double[] q = new double[6];
    for (int k = 0; k < 6; k++) {
      q[k] = random.nextDouble(-2.2, 2.2);
    }
    return q;
  }
}
