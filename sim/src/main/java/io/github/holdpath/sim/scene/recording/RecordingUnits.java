package io.github.holdpath.sim.scene.recording;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * SI size of the units of a recording.
 *
 * @param time s in one unit of the time column
 * @param length m in one unit of the position columns
 * @param angle rad in one unit of the angle columns; 1 for quaternions
 */
record RecordingUnits(double time, double length, double angle) {
  /** Time units a scene may name, with their size in s. */
  static final Map<String, Double> TIME = table("s", 1, "ms", 1e-3);

  /** Length units a scene may name, with their size in m. */
  static final Map<String, Double> LENGTH = table("m", 1, "mm", 1e-3, "cm", 1e-2, "in", 0.0254);

  /** Angle units a scene may name, with their size in rad. */
  static final Map<String, Double> ANGLE = table("rad", 1, "deg", Math.PI / 180);

  private static Map<String, Double> table(Object... entries) {
    Map<String, Double> table = new LinkedHashMap<>();
    for (int i = 0; i < entries.length; i += 2) {
      table.put((String) entries[i], ((Number) entries[i + 1]).doubleValue());
    }
    return Collections.unmodifiableMap(table);
  }

  /** Refuses sizes that are not positive and finite. */
  RecordingUnits {
    for (double size : new double[] {time, length, angle}) {
      if (!(size > 0 && size < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException("a unit must have a positive size, but has " + size);
      }
    }
  }
}
