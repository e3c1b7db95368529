package io.github.holdpath.sim.motion;

import java.util.ArrayList;
import java.util.List;

/**
 * Samples of the joints along a motion, piece by piece, as they are kept to be looked at again.
 * Those of a very long motion are not kept: walking along it once more takes time, not memory.
 */
final class JointSamples {
  /** With six joints some 15 MB. */
  private static final int MOST = 100_000;

  private final List<JointWalk.Samples> pieces = new ArrayList<>();
  private int count;

  /** Takes those of the next piece. */
  void add(JointWalk.Samples piece) {
    count += piece.times().length;
    if (whole()) {
      pieces.add(piece);
    } else {
      pieces.clear();
    }
  }

  /** Whether all are here. */
  boolean whole() {
    return count <= MOST;
  }

  /** Visits them in order. */
  void visit(Motion motion, JointTrack.Visit visit) {
    for (int p = 0; p < pieces.size(); p++) {
      JointWalk.Samples s = pieces.get(p);
      MotionPiece piece = motion.pieces().get(p);
      for (int i = 0; i < s.times().length; i++) {
        visit.at(piece, s.times()[i], s.q()[i], s.qd()[i], s.qdd()[i]);
      }
    }
  }
}
