package io.github.holdpath.sim.motion.recorded;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.KnownJoints;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.MotionSegment;
import io.github.holdpath.sim.path.Flat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Motion that follows a recording: a smoothing fit whose velocity and acceleration are the exact
 * derivatives of its poses, so that all samples of it belong to one possible motion.
 *
 * <p>Plain second differences of a log magnify its rounding by the square of the sample rate; the
 * fit takes out what lies above the cut-off and leaves what lies below (docs/theory/recording.md).
 * What shakes the part above the cut-off is not in the result: {@link #figures} says what the fit
 * did.
 */
public final class RecordedMotion implements Motion {
  /** Fewest rows that can be fitted. */
  public static final int LEAST_ROWS = 8;

  private static final String POINTER = "route/recording";
  private static final int LOOKS_PER_CELL = 4;

  /** A quaternion this short is the mean of opposite ones: the rotation is lost. */
  private static final double LEAST_QUATERNION = 0.5;

  /** Share of the peak speed from which an end counts as being in motion. */
  private static final double MOVING = 0.05;

  private static final String NOISY_END =
      "The recording %s in motion while the part is held: within half a period of the cut-off of"
          + " that end, noise in the rows shows up to six times as strongly in the acceleration.";

  private final MotionPiece piece;
  private final MotionSegment segment;
  private final RecordingFigures figures;
  private final double heldFrom;
  private final double heldTo;

  private RecordedMotion(
      MotionPiece piece, MotionSegment segment, RecordingFigures figures, Recording recording) {
    this.piece = piece;
    this.segment = segment;
    this.figures = figures;
    this.heldFrom = recording.heldFrom();
    this.heldTo = recording.heldTo();
  }

  /**
   * Fits a recording.
   *
   * @throws IllegalArgumentException if it has fewer than 8 rows, times that do not rise from 0, a
   *     cut-off that is not positive or not below half the sample rate, or rotations that change by
   *     half a turn or so within one period of the cut-off
   */
  public static RecordedMotion fit(Recording recording) {
    double[] times = recording.times().stream().mapToDouble(Double::doubleValue).toArray();
    check(times, recording.cutoff());
    Optional<JointCurve> joints =
        recording.joints().map(j -> JointCurve.fit(times, j, recording.cutoff()));
    RecordedCurve curve =
        joints.isPresent()
            ? joints.get()
            : PoseCurve.fit(times, recording.poses(), recording.cutoff());
    double duration = times[times.length - 1];
    Peaks peaks = new Peaks(curve, duration);
    RecordedPiece piece =
        new RecordedPiece(curve, duration, RecordedPiece.still(peaks.speed, peaks.turnSpeed));
    MotionSegment segment =
        new MotionSegment(
            1,
            POINTER,
            "recording",
            0,
            duration,
            piece.length(),
            piece.turn(),
            peaks.speed,
            peaks.acceleration,
            peaks.jerk,
            peaks.turnSpeed,
            peaks.turnAcceleration,
            peaks.turnJerk);
    MotionPiece whole =
        joints.isPresent() ? new KnownJoints(piece, false, joints.get()::joints) : piece;
    return new RecordedMotion(
        whole, segment, figures(recording, times, curve, peaks.acceleration), recording);
  }

  private static void check(double[] times, double cutoff) {
    if (times.length < LEAST_ROWS) {
      throw new IllegalArgumentException(
          "a recording must have at least " + LEAST_ROWS + " rows, but has " + times.length);
    }
    if (times[0] != 0) {
      throw new IllegalArgumentException("times must begin at 0 s, but begin at " + times[0]);
    }
    for (int i = 1; i < times.length; i++) {
      if (!(times[i] > times[i - 1] && times[i] < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException("times must rise, but row " + i + " is " + times[i]);
      }
    }
    double nyquist = 0.5 / medianPeriod(times);
    if (!(cutoff > 0 && cutoff < nyquist)) {
      throw new IllegalArgumentException(
          "cut-off must be positive and below half the sample rate, "
              + nyquist
              + " Hz, but was "
              + cutoff);
    }
  }

  /**
   * Median step between neighbouring times.
   *
   * @param times s, strictly rising, at least two
   * @return s
   */
  public static double medianPeriod(double[] times) {
    double[] steps = steps(times);
    Arrays.sort(steps);
    int n = steps.length;
    return (steps[(n - 1) / 2] + steps[n / 2]) / 2;
  }

  private static double[] steps(double[] times) {
    double[] steps = new double[times.length - 1];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = times[i + 1] - times[i];
    }
    return steps;
  }

  private static RecordingFigures figures(
      Recording recording, double[] times, RecordedCurve curve, double peakAcceleration) {
    double position = 0;
    double turn = 0;
    double[] s = new double[MotionState.SIZE];
    for (int i = 0; i < times.length; i++) {
      curve.state(times[i], s);
      Pose row = recording.poses().get(i);
      double distance = row.position().minus(new Vec3(s[0], s[1], s[2])).norm();
      double angle = row.rotation().angleTo(new Quaternion(s[3], s[4], s[5], s[6]));
      position += distance * distance;
      turn += angle * angle;
    }
    return new RecordingFigures(
        recording.file(),
        times.length,
        medianPeriod(times),
        Arrays.stream(steps(times)).max().orElseThrow(),
        recording.cutoff(),
        rawPeak(times, recording.poses()),
        peakAcceleration,
        Math.sqrt(position / times.length),
        Math.sqrt(turn / times.length));
  }

  private static double rawPeak(double[] times, List<Pose> poses) {
    double peak = 0;
    for (int i = 1; i < times.length - 1; i++) {
      Vec3 x = poses.get(i).position();
      Vec3 before = x.minus(poses.get(i - 1).position()).times(1 / (times[i] - times[i - 1]));
      Vec3 after = poses.get(i + 1).position().minus(x).times(1 / (times[i + 1] - times[i]));
      peak = Math.max(peak, after.minus(before).norm() * 2 / (times[i + 1] - times[i - 1]));
    }
    return peak;
  }

  /** What the fit did to the recording. */
  public RecordingFigures figures() {
    return figures;
  }

  @Override
  public List<MotionPiece> pieces() {
    return List.of(piece);
  }

  @Override
  public List<MotionSegment> segments() {
    return List.of(segment);
  }

  @Override
  public double duration() {
    return piece.to();
  }

  @Override
  public double heldFrom() {
    return heldFrom;
  }

  @Override
  public double heldTo() {
    return heldTo;
  }

  @Override
  public List<String> notes() {
    List<String> notes = new ArrayList<>(figures.notes());
    double unsure = 0.5 / figures.cutoff();
    if (heldFrom < unsure && moves(0)) {
      notes.add(NOISY_END.formatted("begins"));
    }
    if (heldTo > duration() - unsure && moves(duration())) {
      notes.add(NOISY_END.formatted("ends"));
    }
    return List.copyOf(notes);
  }

  private boolean moves(double time) {
    double[] s = new double[MotionState.SIZE];
    piece.state(time, s);
    return Flat.norm(s, MotionState.VELOCITY) > MOVING * segment.peakSpeed()
        || Flat.norm(s, MotionState.ANGULAR_VELOCITY) > MOVING * segment.peakTurnSpeed();
  }

  /** Largest values of the fit, looked up four times a cell, 32 times a period of the cut-off. */
  private static final class Peaks {
    private double speed;
    private double acceleration;
    private double jerk;
    private double turnSpeed;
    private double turnAcceleration;
    private double turnJerk;

    Peaks(RecordedCurve curve, double duration) {
      double[] s = new double[MotionState.SIZE];
      double[] jerks = new double[2];
      int looks = curve.cells() * LOOKS_PER_CELL;
      for (int i = 0; i <= looks; i++) {
        double time = duration * i / looks;
        checkRotation(curve, time, s);
        curve.state(time, s);
        speed = Math.max(speed, Flat.norm(s, MotionState.VELOCITY));
        acceleration = Math.max(acceleration, Flat.norm(s, MotionState.ACCELERATION));
        turnSpeed = Math.max(turnSpeed, Flat.norm(s, MotionState.ANGULAR_VELOCITY));
        turnAcceleration =
            Math.max(turnAcceleration, Flat.norm(s, MotionState.ANGULAR_ACCELERATION));
        curve.jerks(time, jerks);
        jerk = Math.max(jerk, jerks[0]);
        turnJerk = Math.max(turnJerk, jerks[1]);
      }
    }

    private static void checkRotation(RecordedCurve curve, double time, double[] scratch) {
      if (!(curve.quaternionLength(time, scratch) > LEAST_QUATERNION)) {
        throw new IllegalArgumentException(
            "rotations must change by less than half a turn within a period of the cut-off, but do"
                + " not at "
                + time
                + " s");
      }
    }
  }
}
