package io.github.holdpath.sim.study;

import io.github.holdpath.sim.motion.JointTrack;
import io.github.holdpath.sim.motion.JointedPiece;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import java.util.ArrayList;
import java.util.List;

/**
 * Joint values by time, from one walk along the motion. Pieces that know their joints are asked,
 * all others are interpolated between the samples of the walk, 1 ms apart: enough for a picture.
 */
final class JointTape {
  private final List<List<double[]>> values = new ArrayList<>();
  private final List<List<Double>> times = new ArrayList<>();
  private final Motion motion;

  JointTape(JointTrack track) {
    this.motion = track.motion();
    List<MotionPiece> pieces = motion.pieces();
    for (int i = 0; i < pieces.size(); i++) {
      values.add(new ArrayList<>());
      times.add(new ArrayList<>());
    }
    int[] at = {0};
    track.visit(
        (piece, time, q, qd, qdd) -> {
          while (pieces.get(at[0]) != piece) {
            at[0]++;
          }
          if (!(piece instanceof JointedPiece) || values.get(at[0]).isEmpty()) {
            values.get(at[0]).add(q.clone());
            times.get(at[0]).add(time);
          }
        });
  }

  /**
   * Joint values in a piece.
   *
   * @param index of the piece in the motion
   * @param time inside it, s
   */
  double[] at(int index, double time) {
    List<double[]> samples = values.get(index);
    double[] q = samples.get(0).clone();
    if (motion.pieces().get(index) instanceof JointedPiece known) {
      known.joints(time, q, q.clone(), q.clone());
      return q;
    }
    List<Double> when = times.get(index);
    int low = 0;
    int high = when.size() - 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (when.get(middle) <= time) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double span = when.get(high) - when.get(low);
    double share = span > 0 ? Math.max(0, Math.min(1, (time - when.get(low)) / span)) : 0;
    for (int k = 0; k < q.length; k++) {
      q[k] = samples.get(low)[k] + share * (samples.get(high)[k] - samples.get(low)[k]);
    }
    return q;
  }
}
