package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.path.ArcPath;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Routes of lines and arcs with blends, drawn at random so that all blends fit. */
final class DrawnRoutes {
  /** Zones of at most half of the shorter chord always leave the next corner its own. */
  private static final double HALF = 0.5;

  private static final Pose START =
      new Pose(new Vec3(0.9, -0.5, 0.4), Quaternion.ofRpy(Math.PI, 0, 0));

  private DrawnRoutes() {}

  /** Two to five moves in one stretch. */
  static Route draw(LawKind law, SplittableRandom random) {
    while (true) {
      Route route = tryOne(law, random);
      // Some corners turn back, and some arcs fold.
      if (RouteCorners.faults(route).isEmpty()) {
        return route;
      }
    }
  }

  private static Route tryOne(LawKind law, SplittableRandom random) {
    List<RouteStep> steps = new ArrayList<>();
    int count = random.nextInt(2, 6);
    Vec3[] ways = new Vec3[count];
    for (int i = 0; i < count; i++) {
      ways[i] = vector(random).times(random.nextInt(4) == 0 ? 0.1 : 1);
    }
    Pose pose = START;
    for (int i = 0; i < count; i++) {
      Vec3 way = ways[i];
      Quaternion turn =
          random.nextInt(3) == 0
              ? Quaternion.IDENTITY
              : Quaternion.ofRpy(
                  random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(-2.5, 2.5));
      Pose next = new Pose(pose.position().plus(way), turn.times(pose.rotation()));
      MoveShape shape = MoveShape.LINE;
      if (random.nextInt(3) == 0) {
        Vec3 via = pose.position().plus(way.times(0.5)).plus(vector(random).times(0.4));
        if (ArcPath.fault(pose, via, next).isEmpty()) {
          shape = new MoveShape.ArcThrough(via);
        }
      }
      double blend = 0;
      if (i < count - 1) {
        double share = random.nextInt(5) == 0 ? HALF : random.nextDouble(0.02, HALF);
        blend = Math.min(way.norm(), ways[i + 1].norm()) * share;
      }
      double override = random.nextInt(3) == 0 ? random.nextDouble(0.3, 1) : 1;
      steps.add(new RouteStep.Move("route/" + i, "", shape, next, limits(random), blend, override));
      pose = next;
    }
    return new Route(START, law, steps);
  }

  private static Vec3 vector(SplittableRandom random) {
    return new Vec3(random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(-1, 1));
  }

  private static MoveLimits limits(SplittableRandom random) {
    return new MoveLimits(
        random.nextDouble(0.2, 3),
        random.nextDouble(2, 20),
        random.nextDouble(10, 200),
        random.nextDouble(0.5, 4),
        random.nextDouble(2, 20),
        random.nextDouble(10, 200));
  }
}
