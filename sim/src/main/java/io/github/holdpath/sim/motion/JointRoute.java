package io.github.holdpath.sim.motion;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.robot.Reach;
import io.github.holdpath.sim.robot.Robot;
import java.util.List;
import java.util.Optional;

/** Plans a route with moves along the joints, and follows it with the robot that it needs. */
final class JointRoute {
  private final Robot robot;
  private final Pose grip;
  private final Route route;
  private final double spacing;

  JointRoute(Robot robot, Pose grip, Route route, double spacing) {
    this.robot = robot;
    this.grip = grip;
    this.route = route;
    this.spacing = spacing;
  }

  /** Follows from the first posture to begin with from which the whole route can be followed. */
  JointOutcome follow(JointStart start) {
    Motion standing = new RouteBuilder(route, Optional.empty()).build();
    JointOutcome answer = new JointFollower(robot, grip, standing, false, spacing).follow(start);
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
        JointOutcome why = new JointFollower(robot, grip, builder.build(), false, spacing).run(q);
        if (why instanceof JointTrack) {
          throw new IllegalStateException("the joints follow what they could not follow before");
        }
        return why;
      }
    }
    return new JointFollower(robot, grip, builder.build(), false, spacing).run(q);
  }
}
