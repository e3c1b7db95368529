package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.spatial.Pose;
import java.util.List;

/**
 * The guide that carries one jaw in the gripper.
 *
 * @param name of the jaw's pad, as shown to the user
 * @param patches indices of the patches that the jaw presses on the part
 * @param pose {@code X_TG}: guide frame in the grip frame, x across, y in which the jaw closes, z
 *     along the grip frame's
 * @param rating what it bears
 */
public record Guide(String name, List<Integer> patches, Pose pose, GuideRating rating) {
  /** Copies the list; refuses a guide without patches. */
  public Guide {
    patches = List.copyOf(patches);
    if (patches.isEmpty()) {
      throw new IllegalArgumentException("a guided jaw has at least one patch");
    }
  }
}
