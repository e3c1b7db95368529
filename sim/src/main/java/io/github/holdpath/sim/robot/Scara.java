package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.robot.Reach.Cause;
import io.github.holdpath.sim.robot.Reach.Unreachable;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Two level arms that turn about upright axes, a lift and a turning axis at the end of the second.
 * The base's origin is on the shoulder's axis, z up; with all joints at 0 both arms lie along x
 * (theory, eq. 8.13).
 *
 * @param upperArm from shoulder to elbow, m
 * @param foreArm from elbow to the turning axis, m
 * @param shoulder limits of the first arm, rad
 * @param elbow limits of the second arm against the first, rad
 * @param lift limits of the height, upwards in the base, m
 * @param turn limits of the turning axis against the second arm, rad
 * @param mount pose of the flange in the last body; with {@link Robot#HANGING} it points down
 * @param base pose of the base in the world, {@code X_WB}
 * @param ratedPayload kg
 * @see "Spong, Hutchinson, Vidyasagar: Robot Modeling and Control, 2006, chapter 3 (from memory)"
 */
public record Scara(
    double upperArm,
    double foreArm,
    JointLimits shoulder,
    JointLimits elbow,
    JointLimits lift,
    JointLimits turn,
    Pose mount,
    Pose base,
    OptionalDouble ratedPayload)
    implements Robot {
  /** Share of its length by which a stretched arm may seem too short from rounding. */
  private static final double ROUNDING = 1e-12;

  private static final Vec3 UP = new Vec3(0, 0, 1);

  /** Refuses lengths that are none. */
  public Scara {
    LevelAxes.checkLength(upperArm, "upperArm");
    LevelAxes.checkLength(foreArm, "foreArm");
    LevelAxes.checkPayload(ratedPayload);
  }

  @Override
  public List<RobotJoint> joints() {
    return List.of(
        LevelAxes.turning("shoulder", shoulder),
        LevelAxes.turning("elbow", elbow),
        new RobotJoint("lift", JointKind.PRISMATIC, lift),
        LevelAxes.turning("turn", turn));
  }

  @Override
  public double length() {
    return upperArm + foreArm;
  }

  @Override
  public RobotMotion motion() {
    List<RobotJoint> joints = joints();
    LevelAxes axes = new LevelAxes(base);
    axes.add(joints.get(0), Vec3.ZERO, UP);
    axes.add(joints.get(1), new Vec3(upperArm, 0, 0), UP);
    axes.add(joints.get(2), new Vec3(foreArm, 0, 0), UP);
    axes.add(joints.get(3), Vec3.ZERO, UP);
    return axes.motion(mount);
  }

  @Override
  public Optional<RobotFigure> figure(double... q) {
    return Figures.scara(this, q);
  }

  @Override
  public Reach inverse(Pose flange) {
    LevelPose last = LevelPose.of(flange, base, mount);
    Optional<Unreachable> fault = last.fault("scara", true);
    if (fault.isPresent()) {
      return fault.get();
    }
    double x = last.position().x();
    double y = last.position().y();
    double r = Math.hypot(x, y);
    double far = upperArm + foreArm;
    double near = Math.abs(upperArm - foreArm);
    if (r > far * (1 + ROUNDING)) {
      return new Unreachable(Cause.TOO_FAR, "both arms stretched do not reach it", r - far);
    }
    if (r < near - far * ROUNDING) {
      return new Unreachable(
          Cause.TOO_NEAR, "the folded arm does not come so near its shoulder", near - r);
    }
    // Factored, so that nothing cancels where the arm is nearly stretched or folded.
    double sine = Math.sqrt(Math.max(0, (far - r) * (far + r) * (r - near) * (r + near)));
    double cosine = r * r - upperArm * upperArm - foreArm * foreArm;
    double bend = Math.atan2(sine, cosine);
    Posture left = posture("elbow left", x, y, -bend, last);
    Posture right = posture("elbow right", x, y, bend, last);
    return new Reach.Reached(List.of(left, right));
  }

  private Posture posture(String branch, double x, double y, double bend, LevelPose last) {
    double first =
        Math.atan2(y, x)
            - Math.atan2(foreArm * Math.sin(bend), upperArm + foreArm * Math.cos(bend));
    return new Posture(
        branch,
        shoulder.turnedIn(first),
        elbow.turnedIn(bend),
        last.position().z(),
        turn.turnedIn(last.turn() - first - bend));
  }
}
