package io.github.holdpath.sim.motion.recorded;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.MotionSegment;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The joint log of an industrial arm against rates computed elsewhere from ten times as many rows.
 * Origin and attribution: reference/recording/README.md.
 */
class RecordedMotionValidationTest {
  private static final double CUTOFF = 40;

  /**
   * A two-way Butterworth filter of the same cut-off on the same 500 Hz rows comes within 0.0003
   * m/s and 0.06 m/s^2 of the reference; twice that is left for another filter.
   */
  private static final double VELOCITY_RMS = 0.0006;

  private static final double ACCELERATION_RMS = 0.12;

  /** Rotation has a lever of a quarter of a metre or so: the same errors divided by 0.2 m. */
  private static final double TURN_SPEED_RMS = 0.003;

  private static final double TURN_ACCELERATION_RMS = 0.6;

  /** Peaks of the reference at 40 Hz, and 1 % of them. */
  private static final double PEAK = 22.43;

  private static final double SPEED = 2.055;

  private static RecordedMotion motion;
  private static List<double[]> reference;

  @BeforeAll
  static void fit() throws IOException {
    motion = RecordedMotion.fit(recording(CUTOFF));
    reference = NumberTable.read("/reference/recording/arm-reference.csv");
  }

  private static Recording recording(double cutoff) throws IOException {
    List<Double> times = new ArrayList<>();
    List<Pose> poses = new ArrayList<>();
    for (double[] r : NumberTable.read("/reference/recording/arm-poses.csv")) {
      times.add(r[0]);
      poses.add(new Pose(new Vec3(r[1], r[2], r[3]), new Quaternion(r[4], r[5], r[6], r[7])));
    }
    return new Recording("arm-poses.csv", times, poses, 0, 8.998, cutoff);
  }

  private static double rms(RecordedMotion motion, int stateOffset, int column) {
    double[] s = new double[MotionState.SIZE];
    double sum = 0;
    for (double[] row : reference) {
      motion.pieces().get(0).state(row[0], s);
      for (int d = 0; d < 3; d++) {
        sum += Math.pow(s[stateOffset + d] - row[column + d], 2);
      }
    }
    return Math.sqrt(sum / reference.size());
  }

  @Test
  void velocityFollowsTheReference() {
    assertEquals(0, rms(motion, MotionState.VELOCITY, 1), VELOCITY_RMS);
  }

  @Test
  void accelerationFollowsTheReference() {
    assertEquals(0, rms(motion, MotionState.ACCELERATION, 4), ACCELERATION_RMS);
  }

  @Test
  void angularVelocityFollowsTheReference() {
    assertEquals(0, rms(motion, MotionState.ANGULAR_VELOCITY, 7), TURN_SPEED_RMS);
  }

  @Test
  void angularAccelerationFollowsTheReference() {
    assertEquals(0, rms(motion, MotionState.ANGULAR_ACCELERATION, 10), TURN_ACCELERATION_RMS);
  }

  @Test
  void peaksAreThoseOfTheReference() {
    MotionSegment segment = motion.segments().get(0);
    assertEquals(PEAK, segment.peakAcceleration(), 0.01 * PEAK);
    assertEquals(SPEED, segment.peakSpeed(), 0.01 * SPEED);
    assertEquals(15.85, segment.peakTurnSpeed(), 0.01 * 15.85);
    assertEquals(106.9, segment.peakTurnAcceleration(), 0.03 * 106.9);
    assertEquals(5.92, segment.length(), 0.01 * 5.92);
  }

  /**
   * Published with the log: 38 m/s^2 by second differences of the 500 Hz rows, 22 m/s^2 in truth.
   */
  @Test
  void secondDifferencesOfTheRowsAreFarAboveTheFit() {
    RecordingFigures figures = motion.figures();
    assertEquals(38, figures.rawPeakAcceleration(), 0.5);
    assertTrue(figures.rawPeakAcceleration() > 1.6 * figures.peakAcceleration());
  }

  /** The log begins and ends at rest, so its ends need no warning. */
  @Test
  void notesAreThreeSentences() {
    assertEquals(3, motion.notes().size());
  }

  /** With 20 Hz the two-way Butterworth filter itself is 0.0022 m/s and 0.42 m/s^2 away. */
  @Test
  void halfTheCutoffLosesAsMuchAsTheTwoWayFilter() throws IOException {
    RecordedMotion slow = RecordedMotion.fit(recording(CUTOFF / 2));
    assertEquals(0.0022, rms(slow, MotionState.VELOCITY, 1), 0.0002);
    assertEquals(0.42, rms(slow, MotionState.ACCELERATION, 4), 0.04);
  }
}
