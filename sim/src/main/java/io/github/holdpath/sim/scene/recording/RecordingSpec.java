package io.github.holdpath.sim.scene.recording;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.robot.Robot;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a scene says about its recording.
 *
 * @param folder of the scene file
 * @param file as the scene names it, relative to the folder
 * @param frame whose poses the rows hold
 * @param flangeToGrip {@code X_FT}; used for {@link RecordingFrame#FLANGE}
 * @param separator between fields: comma, semicolon or tab
 * @param decimalComma whether numbers are written 0,5; only with the semicolon or tab
 * @param columns names of the columns
 * @param units of the columns
 * @param heldFrom s from the first row; empty: from the start
 * @param heldTo s from the first row; empty: to the end
 * @param cutoff of the fit, Hz
 * @param robot whose joints are recorded; used for {@link RecordingFrame#JOINTS}
 */
record RecordingSpec(
    Path folder,
    String file,
    RecordingFrame frame,
    Pose flangeToGrip,
    char separator,
    boolean decimalComma,
    RecordingColumns columns,
    RecordingUnits units,
    OptionalDouble heldFrom,
    OptionalDouble heldTo,
    double cutoff,
    Optional<Robot> robot) {
  /** A recording of poses. */
  RecordingSpec(
      Path folder,
      String file,
      RecordingFrame frame,
      Pose flangeToGrip,
      char separator,
      boolean decimalComma,
      RecordingColumns columns,
      RecordingUnits units,
      OptionalDouble heldFrom,
      OptionalDouble heldTo,
      double cutoff) {
    this(
        folder,
        file,
        frame,
        flangeToGrip,
        separator,
        decimalComma,
        columns,
        units,
        heldFrom,
        heldTo,
        cutoff,
        Optional.empty());
  }

  /** The same but for what the rows do not depend on: cut-off and when the part is held. */
  RecordingSpec ofRows() {
    return new RecordingSpec(
        folder,
        file,
        frame,
        flangeToGrip,
        separator,
        decimalComma,
        columns,
        units,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        DEFAULT_CUTOFF,
        robot);
  }

  /** Cut-off where the scene names none, Hz. */
  static final double DEFAULT_CUTOFF = 40;

  /** Refuses times and a cut-off that are not finite; all else is judged with the file. */
  RecordingSpec {
    for (double v : new double[] {heldFrom.orElse(0), heldTo.orElse(0), cutoff}) {
      if (!(Math.abs(v) <= Double.MAX_VALUE)) {
        throw new IllegalArgumentException("held and cutoff must be finite, but one is " + v);
      }
    }
  }
}
