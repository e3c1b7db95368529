package io.github.holdpath.sim.motion.recorded;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.MotionSegment;
import io.github.holdpath.sim.path.Flat;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordedMotionTest {
  private static final double CUTOFF = 40;
  private static final double PERIOD = 0.002;

  /** Rounding of a system whose condition is some 1e6, twice differenced over 3 ms. */
  private static final double SOLVED = 1e-6;

  /** The passage of a sine is exact but for the spline's own 0.1 % and the stretch at the ends. */
  private static final double PASSAGE = 2e-3;

  private static final Quaternion TILTED = Quaternion.ofRpy(0.3, -0.7, 2.9);

  private static double[] evenTimes(int rows) {
    double[] t = new double[rows];
    for (int i = 0; i < rows; i++) {
      t[i] = i * PERIOD;
    }
    return t;
  }

  /** Steps drawn between a fifth and nine fifths of the period. */
  private static double[] unevenTimes(int rows, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] t = new double[rows];
    for (int i = 1; i < rows; i++) {
      t[i] = t[i - 1] + PERIOD * random.nextDouble(0.2, 1.8);
    }
    return t;
  }

  private static Recording record(double[] times, double cutoff, DoubleFunction<Pose> pose) {
    List<Double> t = new ArrayList<>();
    List<Pose> poses = new ArrayList<>();
    for (double time : times) {
      t.add(time);
      poses.add(pose.apply(time));
    }
    return new Recording("log.csv", t, poses, 0, times[times.length - 1], cutoff);
  }

  private static double[] state(RecordedMotion motion, double time) {
    double[] s = new double[MotionState.SIZE];
    motion.pieces().get(0).state(time, s);
    return s;
  }

  private static double[] part(double[] s, int at) {
    return new double[] {s[at], s[at + 1], s[at + 2]};
  }

  private static Pose cubic(double t) {
    return new Pose(
        new Vec3(1 + 2 * t - 3 * t * t + t * t * t, -t, 0.5 * t * t), Quaternion.IDENTITY);
  }

  /** The penalty leaves cubics alone, so they come back whole, ends included. */
  @Test
  void cubicPolynomialsComeBackExactlyAtUnevenTimes() {
    RecordedMotion motion =
        RecordedMotion.fit(record(unevenTimes(500, 1), CUTOFF, RecordedMotionTest::cubic));
    for (double t = 0; t < motion.duration(); t += 0.0137) {
      double[] s = state(motion, t);
      double[] v = {2 - 6 * t + 3 * t * t, -1, t};
      double[] a = {-6 + 6 * t, 0, 1};
      assertEquals(cubic(t).position().x(), s[0], SOLVED);
      assertArrayEquals(v, part(s, MotionState.VELOCITY), SOLVED);
      assertArrayEquals(a, part(s, MotionState.ACCELERATION), SOLVED);
    }
    assertEquals(6, motion.segments().get(0).peakJerk(), 1e-3);
  }

  private static Pose swing(double t, double hz) {
    double x = Math.sin(2 * Math.PI * hz * t);
    return new Pose(new Vec3(x, 0, 0), Quaternion.IDENTITY);
  }

  /** Share of a sine that the fit passes, by projection over the middle, where ends are far. */
  private static double passed(RecordedMotion motion, double hz) {
    double from = 1;
    double to = 2;
    int n = 10_000;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double t = from + (to - from) * i / n;
      sum += 2 * state(motion, t)[0] * Math.sin(2 * Math.PI * hz * t) / n;
    }
    return sum;
  }

  @ParameterizedTest
  @CsvSource({"5", "10", "20", "30", "40", "50", "80"})
  void aSinePassesAsTheTransferFunctionSays(double hz) {
    RecordedMotion motion = RecordedMotion.fit(record(evenTimes(1500), CUTOFF, t -> swing(t, hz)));
    assertEquals(1 / (1 + Math.pow(hz / CUTOFF, 8)), passed(motion, hz), PASSAGE);
  }

  /** The weights make up for uneven times: the same half at the cut-off, within 2 %. */
  @Test
  void aSineAtTheCutoffIsHalvedAtUnevenTimesToo() {
    RecordedMotion motion =
        RecordedMotion.fit(record(unevenTimes(1600, 2), CUTOFF, t -> swing(t, CUTOFF)));
    assertEquals(0.5, passed(motion, CUTOFF), 0.02);
  }

  private static Pose wave(double t) {
    return new Pose(
        new Vec3(0.3 * Math.sin(9 * t), 0.2 * Math.cos(7 * t), 0.1 * Math.sin(12 * t)),
        TILTED.times(Quaternion.ofAxisAngle(new Vec3(0.6, 0, 0.8), 2.5 * Math.sin(6 * t))));
  }

  @Test
  void ratesOfASmoothMotionComeBackAtUnevenTimes() {
    RecordedMotion motion =
        RecordedMotion.fit(record(unevenTimes(1500, 3), CUTOFF, RecordedMotionTest::wave));
    Vec3 axis = TILTED.rotate(new Vec3(0.6, 0, 0.8));
    for (double t = 0.1; t < motion.duration() - 0.1; t += 0.0171) {
      double[] s = state(motion, t);
      assertEquals(0.3 * 9 * Math.cos(9 * t), s[MotionState.VELOCITY], 1e-3);
      assertEquals(-0.3 * 81 * Math.sin(9 * t), s[MotionState.ACCELERATION], 2e-2);
      double omega = 15 * Math.cos(6 * t);
      double alpha = -90 * Math.sin(6 * t);
      assertArrayEquals(
          new double[] {axis.x() * omega, axis.y() * omega, axis.z() * omega},
          part(s, MotionState.ANGULAR_VELOCITY),
          2e-3);
      assertArrayEquals(
          new double[] {axis.x() * alpha, axis.y() * alpha, axis.z() * alpha},
          part(s, MotionState.ANGULAR_ACCELERATION),
          5e-2);
    }
  }

  /** Rows of 0.1 mm noise: the fit's acceleration stays within what eq. 6.9 leaves of it. */
  @Test
  void noiseAboveTheCutoffIsTakenOut() {
    SplittableRandom random = new SplittableRandom(4);
    double noise = 1e-4;
    Recording noisy =
        record(
            evenTimes(2000),
            CUTOFF,
            t ->
                new Pose(
                    new Vec3(0.3 * Math.sin(9 * t) + noise * random.nextDouble(-1, 1), 0, 0),
                    Quaternion.IDENTITY));
    RecordedMotion motion = RecordedMotion.fit(noisy);
    double sum = 0;
    int n = 0;
    for (double t = 0.1; t < 3.9; t += 0.001) {
      double error = state(motion, t)[MotionState.ACCELERATION] + 24.3 * Math.sin(9 * t);
      sum += error * error;
      n++;
    }
    double sigma = noise / Math.sqrt(3);
    double share = 3 * Math.PI / (64 * Math.sin(3 * Math.PI / 8));
    double expected =
        sigma * Math.pow(2 * Math.PI * CUTOFF, 2) * Math.sqrt(2 * PERIOD * CUTOFF * share);
    assertEquals(expected, Math.sqrt(sum / n), 0.15 * expected);
    assertTrue(motion.figures().rawPeakAcceleration() > 40);
  }

  private static double[] integrate(double[] before, double[] after, double h, int at) {
    return new double[] {
      (before[at] + after[at]) * h / 2,
      (before[at + 1] + after[at + 1]) * h / 2,
      (before[at + 2] + after[at + 2]) * h / 2
    };
  }

  /** The trapezoid rule at 20 us: what it leaves is below h^2/12 times the fourth derivative. */
  @Test
  void accelerationIntegratedTwiceGivesThePosesBack() {
    SplittableRandom random = new SplittableRandom(5);
    Recording shaky =
        record(
            unevenTimes(700, 6),
            CUTOFF,
            t ->
                new Pose(
                    wave(t).position().plus(new Vec3(random.nextDouble(-1e-3, 1e-3), 0, 0)),
                    wave(t).rotation()));
    RecordedMotion motion = RecordedMotion.fit(shaky);
    double h = 2e-5;
    int steps = (int) Math.floor(motion.duration() / h);
    double[] before = state(motion, 0);
    double[] v = part(before, MotionState.VELOCITY);
    double[] w = part(before, MotionState.ANGULAR_VELOCITY);
    double[] x = part(before, 0);
    Quaternion q = MotionState.of(before).pose().rotation();
    for (int i = 1; i <= steps; i++) {
      double[] after = state(motion, i * h);
      double[] dv = integrate(before, after, h, MotionState.ACCELERATION);
      double[] dw = integrate(before, after, h, MotionState.ANGULAR_ACCELERATION);
      Vec3 turn = new Vec3(w[0] + dw[0] / 2, w[1] + dw[1] / 2, w[2] + dw[2] / 2);
      for (int d = 0; d < 3; d++) {
        x[d] += (v[d] + dv[d] / 2) * h;
        v[d] += dv[d];
        w[d] += dw[d];
      }
      if (turn.norm() > 0) {
        q = Quaternion.ofAxisAngle(turn.unit(), turn.norm() * h).times(q);
      }
      before = after;
    }
    assertArrayEquals(part(before, 0), x, 1e-6);
    assertArrayEquals(part(before, MotionState.VELOCITY), v, 1e-5);
    assertArrayEquals(part(before, MotionState.ANGULAR_VELOCITY), w, 1e-4);
    assertEquals(0, q.angleTo(MotionState.of(before).pose().rotation()), 1e-5);
  }

  /** Central differences of the reported acceleration over 20 us against the exact peak. */
  @Test
  void jerkPeaksAreThoseOfTheReportedAccelerations() {
    RecordedMotion motion =
        RecordedMotion.fit(record(evenTimes(1000), CUTOFF, RecordedMotionTest::wave));
    double h = 1e-5;
    double jerk = 0;
    double turnJerk = 0;
    for (double t = h; t < motion.duration() - h; t += 2.5e-4) {
      double[] a = state(motion, t - h);
      double[] b = state(motion, t + h);
      double[] da = new double[MotionState.SIZE];
      for (int i = 0; i < da.length; i++) {
        da[i] = (b[i] - a[i]) / (2 * h);
      }
      jerk = Math.max(jerk, Flat.norm(da, MotionState.ACCELERATION));
      turnJerk = Math.max(turnJerk, Flat.norm(da, MotionState.ANGULAR_ACCELERATION));
    }
    MotionSegment segment = motion.segments().get(0);
    assertEquals(jerk, segment.peakJerk(), 0.01 * jerk);
    assertEquals(turnJerk, segment.peakTurnJerk(), 0.01 * turnJerk);
  }

  @Test
  void signsOfQuaternionsDoNotMatter() {
    SplittableRandom random = new SplittableRandom(7);
    double[] times = evenTimes(400);
    RecordedMotion plain = RecordedMotion.fit(record(times, CUTOFF, RecordedMotionTest::wave));
    RecordedMotion flipped =
        RecordedMotion.fit(
            record(
                times,
                CUTOFF,
                t ->
                    t > 0 && random.nextBoolean()
                        ? new Pose(wave(t).position(), wave(t).rotation().negated())
                        : wave(t)));
    for (double t = 0; t < plain.duration(); t += 0.01) {
      assertArrayEquals(state(plain, t), state(flipped, t), SOLVED);
    }
  }

  @Test
  void lengthAndTurnAreThoseOfACircle() {
    double radius = 0.4;
    double omega = 2;
    RecordedMotion motion =
        RecordedMotion.fit(
            record(
                evenTimes(1001),
                CUTOFF,
                t ->
                    new Pose(
                        new Vec3(radius * Math.cos(omega * t), radius * Math.sin(omega * t), 1),
                        Quaternion.ofRpy(0, 0, omega * t))));
    MotionSegment segment = motion.segments().get(0);
    assertEquals(radius * omega * 2, segment.length(), 1e-5);
    assertEquals(omega * 2, segment.turn(), 1e-5);
    MotionPiece piece = motion.pieces().get(0);
    assertEquals(radius * omega * 1.2345, piece.distance(1.2345), 1e-5);
    assertEquals(segment.length(), piece.distance(piece.to()), 1e-12);
    assertFalse(piece.still());
  }

  @Test
  void distanceIsTheTurnWhereThePartOnlyTurns() {
    RecordedMotion motion =
        RecordedMotion.fit(
            record(
                evenTimes(500),
                CUTOFF,
                t -> new Pose(new Vec3(1, 2, 3), Quaternion.ofRpy(0, 0, t))));
    assertEquals(0.5, motion.pieces().get(0).distance(0.5), 1e-6);
  }

  @Test
  void aPartThatStandsIsStill() {
    RecordedMotion motion =
        RecordedMotion.fit(
            record(evenTimes(100), CUTOFF, t -> new Pose(new Vec3(1, 2, 3), TILTED)));
    assertTrue(motion.pieces().get(0).still());
    assertEquals(0, motion.figures().peakAcceleration(), SOLVED);
  }

  @Test
  void notesNameRowsPeriodCutoffAndBothPeaks() {
    RecordedMotion motion =
        RecordedMotion.fit(record(evenTimes(400), CUTOFF, RecordedMotionTest::wave));
    String notes = String.join(" ", motion.notes());
    assertTrue(notes.contains("400 rows, median period 2 ms,"), notes);
    assertTrue(notes.contains("40 Hz"), notes);
    assertTrue(notes.contains("second differences"), notes);
  }

  @Test
  void anEndInMotionWhileHeldIsNoted() {
    double[] times = evenTimes(400);
    Recording all = record(times, CUTOFF, RecordedMotionTest::wave);
    Recording inner =
        new Recording(all.file(), all.times(), all.poses(), 0.1, times[399] - 0.1, CUTOFF);
    assertEquals(5, RecordedMotion.fit(all).notes().size());
    assertTrue(RecordedMotion.fit(all).notes().get(3).contains("begins in motion"));
    assertEquals(3, RecordedMotion.fit(inner).notes().size());
  }

  @Test
  void refusesWhatCannotBeFitted() {
    double[] falling = evenTimes(20);
    falling[7] = falling[6];
    DoubleFunction<Pose> pose = RecordedMotionTest::wave;
    assertRefused("rows", record(evenTimes(7), CUTOFF, pose));
    assertRefused("rise", record(falling, CUTOFF, pose));
    assertRefused("cut-off", record(evenTimes(20), 250, pose));
    assertRefused("cut-off", record(evenTimes(20), 0, pose));
    assertRefused(
        "half a turn",
        record(
            evenTimes(1000),
            1,
            t -> new Pose(Vec3.ZERO, Quaternion.ofRpy(0, 0, 4 * Math.sin(40 * t)))));
  }

  private static void assertRefused(String word, Recording recording) {
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> RecordedMotion.fit(recording));
    assertTrue(String.valueOf(e.getMessage()).contains(word), e.getMessage());
  }

  /** Cost grows with the rows alone; the bound is loose so that a busy machine passes. */
  @Test
  void aHundredThousandRowsAreFittedInSeconds() {
    Recording long1 = record(evenTimes(100_000), CUTOFF, RecordedMotionTest::wave);
    assertTimeout(Duration.ofSeconds(10), () -> RecordedMotion.fit(long1));
  }
}
