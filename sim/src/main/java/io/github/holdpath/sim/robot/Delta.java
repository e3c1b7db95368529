package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.robot.Reach.Cause;
import io.github.holdpath.sim.robot.Reach.Unreachable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Three arms around an upright axis, each joined to the platform by a pair of rods that keep it
 * level, and perhaps an axis that turns the flange. Base z up through the middle of the arms' axes,
 * which lie in its plane z = 0; arm i points to the angle (i - 1) times 120 degrees from x. An arm
 * at 0 is level; positive angles lower it. The platform is below (theory, eq. 8.14 to 8.16).
 *
 * <p>Only the posture in which such robots work is given: every knee outside, platform below. How
 * far the rods' ball joints may swing is not known here.
 *
 * @param baseRadius from the upright axis to the arms' axes, m
 * @param platformRadius from the platform's middle to the rods' joints, m
 * @param upperArm from an arm's axis to its knee, m
 * @param rod from the knee to the platform, m
 * @param arm limits of each arm, rad
 * @param turn limits of the turning axis, rad; empty if there is none
 * @param mount pose of the flange in the platform; with {@link Robot#HANGING} it points down
 * @param base pose of the base in the world, {@code X_WB}
 * @param ratedPayload kg
 * @see "Clavel: Conception d'un robot parallele rapide a 4 degres de liberte, thesis 925, EPFL
 *     1991; Merlet: Parallel Robots, 2nd ed. 2006 (both from memory)"
 */
public record Delta(
    double baseRadius,
    double platformRadius,
    double upperArm,
    double rod,
    JointLimits arm,
    Optional<JointLimits> turn,
    Pose mount,
    Pose base,
    OptionalDouble ratedPayload)
    implements Robot {
  /** Share of its length by which a stretched leg may seem too short from rounding. */
  private static final double ROUNDING = 1e-12;

  /** Refuses lengths that are none, and arms that could never meet. */
  public Delta {
    LevelAxes.checkLength(baseRadius, "baseRadius");
    LevelAxes.checkLength(platformRadius, "platformRadius");
    LevelAxes.checkLength(upperArm, "upperArm");
    LevelAxes.checkLength(rod, "rod");
    LevelAxes.checkPayload(ratedPayload);
    if (Math.abs(baseRadius - platformRadius) >= upperArm + rod) {
      throw new IllegalArgumentException(
          "rod must be longer, so that the arms meet, but was " + rod);
    }
  }

  /** From the upright axis to an arm's axis, less what the platform is wide. */
  double radius() {
    return baseRadius - platformRadius;
  }

  @Override
  public List<RobotJoint> joints() {
    List<RobotJoint> joints = new ArrayList<>();
    for (int i = 1; i <= 3; i++) {
      joints.add(new RobotJoint("arm " + i, JointKind.REVOLUTE, arm));
    }
    turn.ifPresent(limits -> joints.add(LevelAxes.turning("turn", limits)));
    return List.copyOf(joints);
  }

  @Override
  public double length() {
    return upperArm;
  }

  @Override
  public RobotMotion motion() {
    return new DeltaMotion(this);
  }

  @Override
  public Optional<RobotFigure> figure(double... q) {
    return Figures.delta(this, q);
  }

  @Override
  public Reach inverse(Pose flange) {
    LevelPose last = LevelPose.of(flange, base, mount);
    Optional<Unreachable> fault = last.fault("delta", turn.isPresent());
    if (fault.isPresent()) {
      return fault.get();
    }
    double[] q = new double[turn.isPresent() ? 4 : 3];
    for (int i = 0; i < 3; i++) {
      double angle = i * 2 * Math.PI / 3;
      Vec3 p = last.position();
      double out = p.x() * Math.cos(angle) + p.y() * Math.sin(angle) - radius();
      double aside = p.y() * Math.cos(angle) - p.x() * Math.sin(angle);
      double reach = Math.hypot(out, p.z());
      double inPlane = Math.sqrt(Math.max(0, (rod - aside) * (rod + aside)));
      double slack = ROUNDING * (upperArm + rod);
      String leg = "arm " + (i + 1) + " and its rod ";
      if (Math.abs(aside) > rod + slack || reach > upperArm + inPlane + slack) {
        double missing = Math.max(Math.abs(aside) - rod, reach - upperArm - inPlane);
        return new Unreachable(Cause.TOO_FAR, leg + "stretched do not reach it", missing);
      }
      if (reach < Math.abs(upperArm - inPlane) - slack) {
        double missing = Math.abs(upperArm - inPlane) - reach;
        return new Unreachable(Cause.TOO_NEAR, leg + "do not fold so far", missing);
      }
      // Half the bend between arm and line to the platform, by the cosine rule in its stable form.
      double far = (upperArm + reach - inPlane) * (upperArm + reach + inPlane);
      double near = (inPlane - upperArm + reach) * (inPlane + upperArm - reach);
      double bend = 2 * Math.atan2(Math.sqrt(Math.max(0, near)), Math.sqrt(Math.max(0, far)));
      q[i] = arm.turnedIn(Math.atan2(-p.z(), out) - bend);
    }
    turn.ifPresent(limits -> q[3] = limits.turnedIn(last.turn()));
    return new Reach.Reached(List.of(new Posture("", q)));
  }
}
