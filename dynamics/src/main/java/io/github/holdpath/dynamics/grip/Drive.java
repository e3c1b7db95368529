package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;

/**
 * A drive that moves one or more patches together: the sum of the contact forces along their
 * closing directions stays what the drive gives (theory, eq. 2.6).
 *
 * @param patches indices of the patches that it moves
 * @param directions unit closing direction of each, grip frame
 */
public record Drive(List<Integer> patches, List<Vec3> directions) {
  /** Copies the lists; refuses lists of different length. */
  public Drive {
    patches = List.copyOf(patches);
    directions = List.copyOf(directions);
    if (patches.isEmpty() || patches.size() != directions.size()) {
      throw new IllegalArgumentException("a drive needs one direction for each of its patches");
    }
  }

  /** One drive in place of several: it moves the patches of all. */
  static Drive together(List<Drive> drives) {
    return new Drive(
        drives.stream().flatMap(d -> d.patches().stream()).toList(),
        drives.stream().flatMap(d -> d.directions().stream()).toList());
  }
}
