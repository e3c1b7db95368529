package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.path.PathCurve;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/** Robots of every kind, fictional but for the two arms, with bases that lean. */
final class Robots {
  static final Pose BASE = new Pose(new Vec3(0.3, -0.2, 0.7), Quaternion.ofRpy(0.2, -0.1, 2));
  static final Pose MOUNT =
      new Pose(new Vec3(0.05, -0.02, -0.1), Quaternion.ofRpy(Math.PI - 0.3, 0.1, 0.4));
  private static final OptionalDouble NO_RATING = OptionalDouble.empty();

  private Robots() {}

  static JointLimits range(double lower, double upper) {
    return new JointLimits(lower, upper, 3, Double.POSITIVE_INFINITY);
  }

  static Gantry gantry(Pose base, Pose mount) {
    return new Gantry(
        Optional.of(range(-1, 2)),
        Optional.of(range(-0.5, 0.5)),
        Optional.of(range(0, 0.8)),
        Optional.of(range(-3, 3)),
        mount,
        base,
        OptionalDouble.of(12));
  }

  static Scara scara(Pose base, Pose mount) {
    return new Scara(
        0.325,
        0.275,
        range(-2.2, 2.2),
        range(-2.6, 2.6),
        range(-0.2, 0),
        range(-6, 6),
        mount,
        base,
        NO_RATING);
  }

  static Delta delta(Pose base, Pose mount, boolean turns) {
    return new Delta(
        0.2,
        0.045,
        0.35,
        0.8,
        range(-0.9, 1.4),
        turns ? Optional.of(range(-6, 6)) : Optional.empty(),
        mount,
        base,
        NO_RATING);
  }

  static SerialArm logged(Pose base) throws IOException {
    return new SerialArm(Arms.logged(), base, OptionalDouble.of(2));
  }

  static SerialArm published() throws IOException {
    return new SerialArm(Arms.published(), BASE, NO_RATING);
  }

  private static Joint joint(int i, Pose origin, Vec3 axis) {
    return Joint.driven("j" + i, JointKind.REVOLUTE, origin, axis, range(-2.8, 2.8), LinkBody.NONE);
  }

  /** Shoulder offset to the side, forearm bent, wrist axes at 60 degrees, flange aslant. */
  static SerialArm oblique() {
    Vec3 z = new Vec3(0, 0, 1);
    Vec3 y = new Vec3(0, 1, 0);
    Vec3 lean = new Vec3(Math.sin(Math.PI / 3), 0, Math.cos(Math.PI / 3));
    List<Joint> joints =
        List.of(
            joint(1, Pose.at(0.1, 0, 0.2), z),
            joint(2, Pose.at(0.12, 0.07, 0.3), y),
            joint(3, Pose.at(0.05, 0.02, 0.4), y.times(-1)),
            joint(4, Pose.at(0.2, 0.03, 0.1), z),
            joint(5, Pose.at(0, 0, 0.3), lean),
            joint(6, Pose.IDENTITY, z));
    return new SerialArm(new Chain(joints, MOUNT), BASE, NO_RATING);
  }

  /** Three parallel axes and a wrist whose axes do not meet: no closed form here. */
  static SerialArm offsetWrist() {
    Vec3 z = new Vec3(0, 0, 1);
    Vec3 y = new Vec3(0, 1, 0);
    List<Joint> joints =
        List.of(
            joint(1, Pose.at(0, 0, 0.15), z),
            joint(2, Pose.at(0, 0.13, 0), y),
            joint(3, Pose.at(0, -0.12, 0.42), y),
            joint(4, Pose.at(0, 0, 0.39), y),
            joint(5, Pose.at(0, 0.09, 0), z),
            joint(6, Pose.at(0, 0, 0.095), y));
    return new SerialArm(new Chain(joints, Pose.at(0, 0.08, 0)), BASE, NO_RATING);
  }

  /** Seven turning joints. */
  static SerialArm seven() {
    Vec3 z = new Vec3(0, 0, 1);
    Vec3 y = new Vec3(0, 1, 0);
    List<Joint> joints = new ArrayList<>();
    double[] up = {0.15, 0.2, 0.2, 0.2, 0.2, 0.2, 0.1};
    for (int i = 0; i < 7; i++) {
      joints.add(joint(i + 1, Pose.at(0, 0, up[i]), i % 2 == 0 ? z : y));
    }
    return new SerialArm(new Chain(joints, Pose.at(0.03, 0, 0.1)), Pose.IDENTITY, NO_RATING);
  }

  /** Joint values inside the limits, a share of the range away from the stops. */
  static double[] draw(Robot robot, SplittableRandom random, double share) {
    return robot.joints().stream()
        .mapToDouble(
            j -> {
              double lower = Math.max(j.limits().lower(), -Math.PI);
              double upper = Math.min(j.limits().upper(), Math.PI);
              double cut = share * (upper - lower);
              return random.nextDouble(lower + cut, upper - cut);
            })
        .toArray();
  }

  /** A straight line at constant turning rate, in the world. */
  record Line(Pose from, Vec3 direction, Vec3 turn, double length) implements PathCurve {
    @Override
    public void at(double s, double[] out) {
      java.util.Arrays.fill(out, 0);
      double angle = turn.norm() * s;
      Quaternion q =
          angle == 0
              ? from.rotation()
              : Quaternion.ofAxisAngle(turn.unit(), angle).times(from.rotation());
      Vec3 p = from.position().plus(direction.times(s));
      double[] x = {
        p.x(),
        p.y(),
        p.z(),
        q.w(),
        q.x(),
        q.y(),
        q.z(),
        direction.x(),
        direction.y(),
        direction.z(),
        turn.x(),
        turn.y(),
        turn.z()
      };
      System.arraycopy(x, 0, out, 0, x.length);
    }
  }
}
