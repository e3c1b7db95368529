package io.github.holdpath.sim.path;

import java.util.ArrayList;
import java.util.List;

/** Checks the corners of a chain one after the other, then makes its pieces. */
final class ChainBuilder {
  /** Rests of a move shorter than this share of it are rounding. */
  private static final double NO_REST = 1e-12;

  private final List<? extends PathCurve> moves;
  private final double[] zones;
  private final List<ChainFault> faults = new ArrayList<>();
  private final List<BlendPath> blends = new ArrayList<>();

  ChainBuilder(List<? extends PathCurve> moves, double[] zones) {
    this.moves = moves;
    this.zones = zones.clone();
    for (int i = 0; i < moves.size(); i++) {
      double length = moves.get(i).length();
      if (!(length > 0) || !Double.isFinite(length)) {
        throw new IllegalArgumentException(
            "moves must have a length above 0, but move " + i + " has " + length);
      }
    }
  }

  ChainOutcome build() {
    double taken = 0;
    for (int i = 0; i < zones.length; i++) {
      taken = corner(i, taken);
    }
    return faults.isEmpty() ? chain() : new ChainFaults(faults);
  }

  /**
   * Checks a corner.
   *
   * @param taken how much of the first move the corner before has taken
   * @return how much of the second move this one takes; of a faulty corner, what the largest zone
   *     that fits would take, so that the faults together tell zones that fit together
   */
  private double corner(int i, double taken) {
    Corner corner = new Corner(moves.get(i), moves.get(i + 1));
    double free = corner.before().length() - taken;
    double next = corner.after().length();
    BlendCheck check = new BlendCheck(i, corner, zones[i]);
    var fault = check.fault(free, next);
    if (fault.isPresent()) {
      faults.add(fault.get());
      double largest = fault.get().largestZone();
      return largest > 0 ? corner.depth(false, largest).orElse(next) : 0;
    }
    double depthBefore = corner.depth(true, zones[i]).orElseThrow();
    if (depthBefore > free - NO_REST * corner.before().length()) {
      depthBefore = free;
    }
    double depthAfter = corner.depth(false, zones[i]).orElseThrow();
    if (faults.isEmpty()) {
      blends.add(BlendPath.of(corner, zones[i], depthBefore, depthAfter));
    }
    return depthAfter;
  }

  private PathChain chain() {
    PathChain.Pieces pieces = new PathChain.Pieces();
    double from = 0;
    for (int i = 0; i < moves.size(); i++) {
      PathCurve move = moves.get(i);
      boolean last = i == moves.size() - 1;
      double to = last ? move.length() : move.length() - blends.get(i).depthBefore();
      if (to - from > NO_REST * move.length()) {
        pieces.move(move, from, to, i);
      }
      if (!last) {
        pieces.blend(blends.get(i), i);
        from = blends.get(i).depthAfter();
      }
    }
    return pieces.chain();
  }
}
