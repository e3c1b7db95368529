package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;

/**
 * Where the jaws of a grip are guided, alike for all of them.
 *
 * @param overhang from the guide to the pad's middle, along z of the grip frame, m, not negative
 * @param rating what each guide bears
 */
public record JawGuide(double overhang, GuideRating rating) {
  private static final Vec3 Z = new Vec3(0, 0, 1);

  /** Refuses a negative overhang. */
  public JawGuide {
    if (!(overhang >= 0) || !Double.isFinite(overhang)) {
      throw new IllegalArgumentException("overhang must not be negative, but was " + overhang);
    }
  }

  /**
   * The guide of one jaw.
   *
   * @param name of the jaw's pad
   * @param patches indices of the jaw's patches
   * @param pad middle of the pad, grip frame, m
   * @param closing unit direction in which the jaw closes, grip frame, square to z
   */
  Guide of(String name, List<Integer> patches, Vec3 pad, Vec3 closing) {
    return new Guide(
        name,
        patches,
        new Pose(pad.minus(Z.times(overhang)), Quaternion.ofAxes(Z, closing.cross(Z))),
        rating);
  }
}
