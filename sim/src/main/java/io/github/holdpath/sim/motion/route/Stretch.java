package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.sim.path.ChainOutcome;
import io.github.holdpath.sim.path.LineCurve;
import io.github.holdpath.sim.path.PathChain;
import io.github.holdpath.sim.path.PathCurve;
import io.github.holdpath.sim.path.PathPoint;
import java.util.ArrayList;
import java.util.List;

/**
 * Moves between two stops, joined by blends.
 *
 * @param start {@code X_WT} where it begins
 * @param moves at least one; all but the last have a blend
 */
record Stretch(Pose start, List<RouteStep.Move> moves) {
  Stretch {
    moves = List.copyOf(moves);
  }

  /** Whether it is one straight line. */
  boolean line() {
    return moves.size() == 1 && moves.get(0).shape() instanceof MoveShape.Line;
  }

  /** Whether a robot must say how its path goes. */
  boolean joints() {
    return moves.stream().anyMatch(move -> move.shape() instanceof MoveShape.Joints);
  }

  /** The zones of its corners, m, or rad where both moves of a corner only turn. */
  double[] zones() {
    return moves.subList(0, moves.size() - 1).stream().mapToDouble(RouteStep.Move::blend).toArray();
  }

  /** The path of a move that needs no robot. */
  static PathCurve curve(RouteStep.Move move, Pose from) {
    try {
      return move.shape().curve(from, move.target());
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(move.pointer() + ": " + e.getMessage(), e);
    }
  }

  /** Its path, or the faults of its corners. */
  ChainOutcome chain() {
    List<PathCurve> curves = new ArrayList<>();
    Pose pose = start;
    for (RouteStep.Move move : moves) {
      PathCurve curve = curve(move, pose);
      curves.add(curve);
      pose = end(curve, move);
    }
    return PathChain.build(curves, zones());
  }

  /** The pose in which the path of a move ends. */
  static Pose end(PathCurve curve, RouteStep.Move move) {
    if (curve instanceof JointLine line) {
      return line.way().states().pose(1);
    }
    return curve instanceof LineCurve line ? line.line().to() : move.target();
  }

  /** The target of the last move; of the two quaternions the one at which the chain arrives. */
  Pose end(PathChain chain) {
    double[] point = new double[PathPoint.SIZE];
    chain.at(chain.length(), point);
    int q = PathPoint.ROTATION;
    Quaternion arrived = new Quaternion(point[q], point[q + 1], point[q + 2], point[q + 3]);
    Pose target = moves.get(moves.size() - 1).target();
    boolean flip = arrived.dot(target.rotation()) < 0;
    return new Pose(target.position(), flip ? target.rotation().negated() : target.rotation());
  }
}
