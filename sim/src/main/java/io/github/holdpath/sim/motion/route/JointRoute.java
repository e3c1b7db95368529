package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.joint.JointFault;
import io.github.holdpath.sim.motion.joint.JointOutcome;
import io.github.holdpath.sim.motion.joint.JointStart;
import io.github.holdpath.sim.motion.joint.JointTrack;
import io.github.holdpath.sim.robot.Reach;
import io.github.holdpath.sim.robot.Robot;
import java.util.List;
import java.util.Optional;

/**
 * Plans a route and follows it with a robot. Its moves along the joints go from where the joints
 * stand to the posture of {@link io.github.holdpath.sim.robot.NearestPosture} (theory, section
 * 5.16).
 */
public final class JointRoute {
  private final Robot robot;
  private final Pose grip;
  private final Route route;
  private final double spacing;

  private JointRoute(Robot robot, Pose grip, Route route, double spacing) {
    this.robot = robot;
    this.grip = grip;
    this.route = route;
    this.spacing = spacing;
  }

  /**
   * Plans a route and follows it, as {@link JointTrack#follow} has it of a planned motion.
   *
   * @param robot the robot
   * @param grip pose of the grip frame in the flange, {@code X_FT}
   * @param route planned
   * @param start where the joints begin
   * @throws IllegalArgumentException as {@link RouteMotion#plan}
   */
  public static JointOutcome follow(Robot robot, Pose grip, Route route, JointStart start) {
    return follow(robot, grip, route, start, JointTrack.STEP);
  }

  /**
   * The same with another spacing of the samples.
   *
   * @param spacing of the samples, s
   */
  public static JointOutcome follow(
      Robot robot, Pose grip, Route route, JointStart start, double spacing) {
    return route.firstJointMove().isPresent()
        ? new JointRoute(robot, grip, route, spacing).from(start)
        : JointTrack.follow(robot, grip, route.motion(), start, false, spacing);
  }

  /** Follows from the first posture to begin with from which the whole route can be followed. */
  private JointOutcome from(JointStart start) {
    Motion standing = new RouteBuilder(route, Optional.empty()).build();
    JointOutcome answer = JointTrack.follow(robot, grip, standing, start, false, spacing);
    if (answer instanceof JointFault) {
      return answer;
    }
    Reach.Reached reach = (Reach.Reached) robot.inverse(route.start().times(grip.inverse()));
    List<double[]> starts = start.candidates(robot, reach.postures());
    answer = from(starts.get(0));
    for (int i = 1; i < starts.size() && answer instanceof JointFault; i++) {
      JointOutcome other = from(starts.get(i));
      answer = other instanceof JointTrack ? other : answer;
    }
    return answer;
  }

  private JointOutcome from(double[] q) {
    JointMoves joints = new JointMoves(robot, grip, q);
    RouteBuilder builder = new RouteBuilder(route, Optional.of(joints));
    for (RouteStep step : route.steps()) {
      RouteMotion.add(step, builder);
      Optional<JointFault> fault = builder.fault();
      if (fault.isPresent()) {
        return fault.get();
      }
      if (builder.lost()) {
        JointOutcome why = JointTrack.follow(robot, grip, builder.build(), q, spacing);
        if (why instanceof JointTrack) {
          throw new IllegalStateException("the joints follow what they could not follow before");
        }
        return why;
      }
    }
    return JointTrack.follow(robot, grip, builder.build(), q, spacing);
  }
}
