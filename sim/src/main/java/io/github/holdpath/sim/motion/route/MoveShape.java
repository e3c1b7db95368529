package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.path.ArcPath;
import io.github.holdpath.sim.path.LineCurve;
import io.github.holdpath.sim.path.PathCurve;

/** The way that a move takes from where it begins to its target. */
public sealed interface MoveShape {
  /** The straight line. */
  MoveShape LINE = new Line();

  /**
   * The path by its way (theory, section 5.10).
   *
   * @param from {@code X_WT} at its start
   * @param to {@code X_WT} at its end
   * @throws IllegalArgumentException if no such path joins the poses, with the reason
   */
  PathCurve curve(Pose from, Pose to);

  /** All joints of the robot in proportion; the way follows from the robot. */
  MoveShape JOINTS = new Joints();

  /** Along the joints; no path by itself. */
  record Joints() implements MoveShape {
    @Override
    public PathCurve curve(Pose from, Pose to) {
      throw new IllegalArgumentException("a move along the joints has no path without its robot");
    }
  }

  /** Straight on. */
  record Line() implements MoveShape {
    @Override
    public PathCurve curve(Pose from, Pose to) {
      return LineCurve.between(from, to);
    }
  }

  /**
   * The arc of a circle through a point.
   *
   * @param via in the world, m
   */
  record ArcThrough(Vec3 via) implements MoveShape {
    @Override
    public PathCurve curve(Pose from, Pose to) {
      return ArcPath.through(from, via, to);
    }
  }

  /**
   * The arc of a circle about an axis; the target must be where it leads.
   *
   * @param onAxis a point of the axis in the world, m
   * @param axis its direction in the world, of any length but 0
   * @param angle rad, right-handed about the axis
   */
  record ArcAbout(Vec3 onAxis, Vec3 axis, double angle) implements MoveShape {
    /** The end of the arc may miss the target by as much, m. */
    private static final double MEETS_WITHIN = 1e-9;

    @Override
    public PathCurve curve(Pose from, Pose to) {
      ArcPath arc = ArcPath.about(from, onAxis, axis, angle, to.rotation());
      double missed = arc.end().minus(to.position()).norm();
      if (missed > MEETS_WITHIN) {
        throw new IllegalArgumentException("the arc misses its target by " + missed + " m");
      }
      return arc;
    }
  }
}
