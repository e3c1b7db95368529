package io.github.holdpath.sim.motion.recorded;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionSource;
import java.util.List;
import java.util.Optional;

/**
 * A recorded motion: time-stamped poses of the grip frame.
 *
 * @param file as named in the scene, for texts
 * @param times s, strictly rising, beginning at 0
 * @param poses {@code X_WT} at each time
 * @param heldFrom s
 * @param heldTo s, after heldFrom
 * @param cutoff frequency above which the fit smooths, Hz
 * @param joints from which the poses follow, and which then are fitted in their place
 */
public record Recording(
    String file,
    List<Double> times,
    List<Pose> poses,
    double heldFrom,
    double heldTo,
    double cutoff,
    Optional<RecordedJoints> joints)
    implements MotionSource {
  /** Copies the lists; refuses lists of different length. */
  public Recording {
    times = List.copyOf(times);
    poses = List.copyOf(poses);
    if (times.size() != poses.size()) {
      throw new IllegalArgumentException("a recording needs one pose for each time");
    }
  }

  /** A recording of poses. */
  public Recording(
      String file,
      List<Double> times,
      List<Pose> poses,
      double heldFrom,
      double heldTo,
      double cutoff) {
    this(file, times, poses, heldFrom, heldTo, cutoff, Optional.empty());
  }

  @Override
  public Motion motion() {
    return RecordedMotion.fit(this);
  }
}
