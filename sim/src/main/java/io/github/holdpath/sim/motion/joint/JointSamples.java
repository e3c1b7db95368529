package io.github.holdpath.sim.motion.joint;

import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import java.util.ArrayList;
import java.util.List;

/**
 * Samples of the joints along a motion, piece by piece, as they are kept to be looked at again. Of
 * a very long motion only some are: enough to show it, while to judge it anew takes another walk
 * along it.
 */
final class JointSamples {
  /** With six joints some 15 MB. */
  private static final int MOST = 100_000;

  /** Of a very long motion one sample in so many is kept. */
  private static final int THIN = 10;

  private final List<JointWalk.Samples> pieces = new ArrayList<>();
  private int count;

  /** Takes those of the next piece. */
  void add(JointWalk.Samples piece) {
    boolean before = whole();
    count += piece.times().length;
    if (before && !whole()) {
      pieces.replaceAll(JointSamples::thinned);
    }
    pieces.add(whole() ? piece : thinned(piece));
  }

  /** Both ends, one in so many between them, and no rates. */
  private static JointWalk.Samples thinned(JointWalk.Samples piece) {
    int last = piece.times().length - 1;
    int kept = (last + THIN - 1) / THIN + 1;
    double[] times = new double[kept];
    double[][] q = new double[kept][];
    for (int i = 0; i < kept; i++) {
      int from = Math.min(last, i * THIN);
      times[i] = piece.times()[from];
      q[i] = piece.q()[from];
    }
    return new JointWalk.Samples(times, q, new double[0][], new double[0][]);
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

  /**
   * Joint values between two samples, in proportion.
   *
   * @param piece its index
   * @param share of its duration that has passed, from 0 to 1
   */
  double[] at(int piece, double share) {
    double[] times = pieces.get(piece).times();
    double[][] q = pieces.get(piece).q();
    int high = times.length - 1;
    double time = times[0] + share * (times[high] - times[0]);
    int low = 0;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (times[middle] <= time) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double span = times[high] - times[low];
    double part = span > 0 ? (time - times[low]) / span : 0;
    double[] x = q[low].clone();
    for (int k = 0; k < x.length; k++) {
      x[k] += part * (q[high][k] - x[k]);
    }
    return x;
  }
}
