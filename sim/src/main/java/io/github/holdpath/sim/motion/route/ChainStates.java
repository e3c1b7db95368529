package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.sim.path.PathChain;
import io.github.holdpath.sim.path.PathPoint;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * Motion states along a chain (theory, eq. 5.64). The workspace is lent to one caller at a time; a
 * second one at the same time makes its own.
 */
final class ChainStates {
  private final PathChain chain;
  private final boolean moves;
  private final AtomicReference<double @Nullable []> spare = new AtomicReference<>();

  ChainStates(PathChain chain) {
    this.chain = chain;
    double[] point = new double[PathPoint.SIZE];
    chain.at(0, point);
    moves =
        point[PathPoint.TANGENT] != 0
            || point[PathPoint.TANGENT + 1] != 0
            || point[PathPoint.TANGENT + 2] != 0;
  }

  /** Whether the origin moves along the chain; else it only turns, all the way. */
  boolean moves() {
    return moves;
  }

  /**
   * State at a place of a piece.
   *
   * @param piece index of the piece
   * @param s the way from the start of the chain
   * @param ds its rate, 1/s
   * @param dds its second derivative by time, 1/s^2
   * @param out flat form of {@link MotionState}, overwritten
   */
  void state(int piece, double s, double ds, double dds, double[] out) {
    double[] lent = spare.getAndSet(null);
    double[] point = lent == null ? new double[PathPoint.SIZE] : lent;
    chain.at(piece, s, point);
    System.arraycopy(point, PathPoint.POSITION, out, MotionState.POSITION, 3);
    System.arraycopy(point, PathPoint.ROTATION, out, MotionState.ROTATION, 4);
    double square = ds * ds;
    for (int k = 0; k < 3; k++) {
      double tangent = point[PathPoint.TANGENT + k];
      double turn = point[PathPoint.TURN + k];
      out[MotionState.VELOCITY + k] = ds * tangent;
      out[MotionState.ANGULAR_VELOCITY + k] = ds * turn;
      out[MotionState.ACCELERATION + k] = dds * tangent + square * point[PathPoint.SECOND + k];
      out[MotionState.ANGULAR_ACCELERATION + k] =
          dds * turn + square * point[PathPoint.TURN_SECOND + k];
    }
    spare.set(point);
  }
}
