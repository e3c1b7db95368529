package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Linear axes along x, y and z of the base, any of them missing, and one that turns the flange
 * about z. Joint values are the coordinates of the last body's origin in the base, and its turn.
 *
 * @param x limits of the axis along x, m; empty if there is none
 * @param y limits of the axis along y, m; empty if there is none
 * @param z limits of the axis along z, upwards in the base, m; empty if there is none
 * @param turn limits of the turning axis, rad; empty if there is none
 * @param mount pose of the flange in the last body; with {@link Robot#HANGING} it points down
 * @param base pose of the base in the world, {@code X_WB}
 * @param ratedPayload kg
 */
public record Gantry(
    Optional<JointLimits> x,
    Optional<JointLimits> y,
    Optional<JointLimits> z,
    Optional<JointLimits> turn,
    Pose mount,
    Pose base,
    OptionalDouble ratedPayload)
    implements Robot {
  /** Metres that a pose may be off a line or plane on which the axes move. */
  private static final double SLACK = 1e-9;

  private static final Vec3 UP = new Vec3(0, 0, 1);

  /** Refuses a gantry without axes. */
  public Gantry {
    if (x.isEmpty() && y.isEmpty() && z.isEmpty() && turn.isEmpty()) {
      throw new IllegalArgumentException("a gantry needs an axis that moves");
    }
    LevelAxes.checkPayload(ratedPayload);
  }

  @Override
  public List<RobotJoint> joints() {
    List<RobotJoint> joints = new ArrayList<>();
    x.ifPresent(limits -> joints.add(new RobotJoint("x", JointKind.PRISMATIC, limits)));
    y.ifPresent(limits -> joints.add(new RobotJoint("y", JointKind.PRISMATIC, limits)));
    z.ifPresent(limits -> joints.add(new RobotJoint("z", JointKind.PRISMATIC, limits)));
    turn.ifPresent(limits -> joints.add(LevelAxes.turning("turn", limits)));
    return List.copyOf(joints);
  }

  /** One metre: a gantry has no size of its own. */
  @Override
  public double length() {
    return 1;
  }

  @Override
  public RobotMotion motion() {
    LevelAxes axes = new LevelAxes(base);
    for (RobotJoint joint : joints()) {
      Vec3 axis =
          switch (joint.name()) {
            case "x" -> new Vec3(1, 0, 0);
            case "y" -> new Vec3(0, 1, 0);
            default -> UP;
          };
      axes.add(joint, Vec3.ZERO, axis);
    }
    return axes.motion(mount);
  }

  @Override
  public Optional<RobotFigure> figure(double... q) {
    return Figures.gantry(this, q);
  }

  @Override
  public Reach inverse(Pose flange) {
    LevelPose last = LevelPose.of(flange, base, mount);
    Optional<Reach.Unreachable> fault = last.fault("gantry", turn.isPresent());
    if (fault.isPresent()) {
      return fault.get();
    }
    double[] place = {last.position().x(), last.position().y(), last.position().z()};
    List<Optional<JointLimits>> linear = List.of(x, y, z);
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      if (linear.get(i).isPresent()) {
        values.add(place[i]);
      } else if (Math.abs(place[i]) > SLACK) {
        String axis = "xyz".substring(i, i + 1);
        String words = "the tool cannot move along " + axis + ": this gantry has no such axis";
        return new Reach.Unreachable(Reach.Cause.NO_AXIS, words, Math.abs(place[i]));
      }
    }
    turn.ifPresent(limits -> values.add(limits.turnedIn(last.turn())));
    double[] q = values.stream().mapToDouble(Double::doubleValue).toArray();
    return new Reach.Reached(List.of(new Posture("", q)));
  }
}
