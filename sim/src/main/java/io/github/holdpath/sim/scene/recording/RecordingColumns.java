package io.github.holdpath.sim.scene.recording;

import java.util.ArrayList;
import java.util.List;

/**
 * Names of the columns of a recording, as its first line spells them.
 *
 * @param time column of the time
 * @param position columns of x, y, z; empty for joint values
 * @param rotation columns of qw, qx, qy, qz, or of roll, pitch, yaw (fixed axes X, Y, Z); those of
 *     the joints where there is no position
 */
record RecordingColumns(String time, List<String> position, List<String> rotation) {
  private static final List<String> POSITION = List.of("x", "y", "z");
  private static final List<String> QUATERNION = List.of("qw", "qx", "qy", "qz");
  private static final List<String> ANGLES = List.of("roll", "pitch", "yaw");

  /** Copies the lists; refuses other than 3 position and 3 or 4 rotation columns. */
  RecordingColumns {
    position = List.copyOf(position);
    rotation = List.copyOf(rotation);
    boolean pose = position.size() == 3 && (rotation.size() == 3 || rotation.size() == 4);
    if (!pose && (!position.isEmpty() || rotation.isEmpty())) {
      throw new IllegalArgumentException(
          "a recording needs 3 position and 3 or 4 rotation columns, or those of joints");
    }
  }

  /** Whether these are joint values, not poses. */
  boolean joints() {
    return position.isEmpty();
  }

  /** Whether the rotation is a quaternion, not three angles. */
  boolean quaternion() {
    return !joints() && rotation.size() == 4;
  }

  /** All names in order: time, position, rotation. */
  List<String> names() {
    return join(time, position, rotation);
  }

  /** What each of the names stands for, as the scene's field {@code columns} calls it. */
  List<String> roles() {
    if (joints()) {
      return join("time", List.of(), rotation.stream().map(n -> "a joint").toList());
    }
    return join("time", POSITION, quaternion() ? QUATERNION : ANGLES);
  }

  private static List<String> join(String time, List<String> position, List<String> rotation) {
    List<String> all = new ArrayList<>();
    all.add(time);
    all.addAll(position);
    all.addAll(rotation);
    return List.copyOf(all);
  }
}
