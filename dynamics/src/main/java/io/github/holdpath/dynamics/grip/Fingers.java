package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Fingers evenly spread on a circle about z of the grip frame, the first on +x.
 *
 * @param count how many, at least 2
 * @param diameter of the circle on which they press, m, positive
 * @param inside whether they press outward from within
 */
record Fingers(int count, double diameter, boolean inside) {
  private static final Vec3 Z = new Vec3(0, 0, 1);

  Fingers {
    if (count < 2) {
      throw new IllegalArgumentException("there must be at least 2 fingers, but was " + count);
    }
    if (!(diameter > 0) || !Double.isFinite(diameter)) {
      throw new IllegalArgumentException("diameter must be positive, but was " + diameter);
    }
  }

  private Vec3 outward(int index) {
    double angle = 2 * Math.PI * index / count;
    return new Vec3(Math.cos(angle), Math.sin(angle), 0);
  }

  /** Unit direction in which a finger presses on the part, grip frame. */
  Vec3 closing(int index) {
    return outward(index).times(inside ? 1 : -1);
  }

  /** Middle of a finger's contact, grip frame, m. */
  Vec3 place(int index) {
    return outward(index).times(diameter / 2);
  }

  /**
   * Pose of a finger's contact, +z into the part.
   *
   * @param upright whether patch x lies along z of the grip frame; along the tangent if not
   */
  Pose pose(int index, boolean upright) {
    Vec3 closing = closing(index);
    return new Pose(place(index), Quaternion.ofAxes(closing, upright ? Z : closing.cross(Z)));
  }

  /** Each finger by itself, as patch of the same index. */
  List<Drive> drives() {
    return IntStream.range(0, count)
        .mapToObj(i -> new Drive(List.of(i), List.of(closing(i))))
        .toList();
  }
}
