package io.github.holdpath.sim.study;

import io.github.holdpath.sim.motion.MotionSegment;
import java.util.Optional;

/**
 * One move as judged, with the held waits behind it.
 *
 * @param move what it is and what it reaches
 * @param worst least factor while the part is held; empty where it is not held
 * @param drop least whole-grip factor likewise
 * @param speedHeadroom largest k at which this move, played k times as fast, keeps the required
 *     safety; 100 at most, and 100 where the part is not held
 */
public record SegmentResult(
    MotionSegment move, Optional<Worst> worst, Optional<DropBound> drop, double speedHeadroom) {
  /** Whether the part is held at any instant of it. */
  public boolean held() {
    return worst.isPresent();
  }
}
