package io.github.holdpath.sim.timing;

import io.github.holdpath.sim.timelaw.AxisLimits;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds a timing of a path of joints from rest to rest with bounded jerk (theory, section 5.17):
 * the mean over a window of time of a fastest timing, with limits lowered where the mean breaks
 * one. It is not the fastest one there is.
 *
 * <p>Not for several threads at once. {@link FastestTiming} finds the timing without limits of
 * jerk.
 */
public final class JerkPass {
  /** Cells of the path, at least, and for each piece. */
  private static final int CELLS = 1000;

  private static final int CELLS_OF_PIECE = 80;

  /** Parts of the path with limits of their own, at least, and for each piece. */
  private static final int BINS = 400;

  private static final int BINS_OF_PIECE = 40;

  /** Part by which the timing without limits of jerk may be above the fastest one. */
  private static final double FREE = 1e-3;

  /** Rounds of remedies for a window while searching, and for the one that is kept. */
  private static final int ROUNDS = 9;

  private static final int FINAL_ROUNDS = 14;

  /**
   * Rounds after which a window is given up that even at full pace would be no better: by then the
   * limits are about as low as they will be.
   */
  private static final int PROMISING = 3;

  /**
   * How much limits are raised at most, in the first round, and what is left of that after each.
   */
  private static final double RAISE = 0.05;

  private static final double CALMER = 0.8;

  /** Factor by which the window is tried longer and shorter while that helps; then finer ones. */
  private static final double STEP = 1.5;

  private static final double[] FINER = {1.2, 1.07};

  /** Part of the duration that a step must gain to be followed by another. */
  private static final double BETTER = 1e-4;

  /** Intervals in which the mean is looked at, while searching and in the end. */
  private static final double INTERVALS = 3000;

  private static final double FINAL_INTERVALS = 20_000;

  /** Part by which the motion is played slower than needed, for crests that were missed. */
  private static final double SAFETY = 2e-7;

  /** Part of the fastest duration that a window has at least, and at most. */
  private static final double SHORTEST = 1e-4;

  private static final double LONGEST = 10;

  /** Part of the fastest duration that the first window has at most. */
  private static final double LONGEST_FIRST = 0.5;

  /** Steps in a piece in which the size of its derivatives is looked for. */
  private static final int LOOKS = 8;

  /** Part of the largest second derivative that counts as a jump where pieces meet. */
  private static final double JUMP = 1e-9;

  private final JointCurve curve;
  private final double[] jerk;
  private final EasedRows eased;
  private final JointPeaks peaks;
  private final double ramp;
  private final TimingGoal goal;
  private final FastestTiming fastest = new FastestTiming();
  private final Timing first;
  private Timing best;
  private double bestWindow;
  private double bestDuration;

  /** Whether windows are looked at closely: not while searching for the best of them. */
  private boolean crests;

  private JerkPass(JointCurve curve, List<AxisLimits> limits, double[] jerk, Timing start) {
    this.curve = curve;
    this.jerk = jerk;
    JointRows rows = new JointRows(curve, limits);
    eased = new EasedRows(rows, curve, jerk, Math.max(BINS, BINS_OF_PIECE * curve.pieces()));
    peaks = new JointPeaks(curve, limits, jerk);
    goal = TimingGoal.even(Math.max(CELLS, CELLS_OF_PIECE * curve.pieces()));
    first = start;
    best = start;
    double longest = 0;
    for (int j = 0; j < jerk.length; j++) {
      AxisLimits l = limits.get(j);
      longest = Math.max(longest, Math.max(l.maxAcceleration(), -l.minAcceleration()) / jerk[j]);
    }
    ramp = longest;
  }

  /**
   * A timing with bounded jerk, or why there is none.
   *
   * @param curve the path of the joints
   * @param limits of speed and acceleration, one for each joint, in its order and unit; their jerk
   *     is not looked at
   * @param jerk largest jerk of each joint, 1/s^3 in its unit, positive; infinite where nothing
   *     bounds it
   * @throws IllegalArgumentException if there are more or fewer limits than joints, or a jerk is
   *     not positive
   */
  public static SmoothResult of(JointCurve curve, List<AxisLimits> limits, double[] jerk) {
    if (jerk.length != curve.joints()) {
      throw new IllegalArgumentException(
          "jerk must be one for each of " + curve.joints() + " joints, but were " + jerk.length);
    }
    for (double j : jerk) {
      if (!(j > 0)) {
        throw new IllegalArgumentException("jerk must be positive, but was " + j);
      }
    }
    TimingResult free = FastestTiming.of(new JointRows(curve, limits), TimingGoal.adaptive(FREE));
    if (free instanceof NoTiming none) {
      return none;
    }
    Timing start = (Timing) free;
    if (start.cells() == 0) {
      return new SmoothTiming(start, 1, 1, 0, "length");
    }
    JerkPass pass = new JerkPass(curve, limits, jerk.clone(), start);
    NoTiming jump = pass.jump();
    return jump == null ? pass.search() : jump;
  }

  private SmoothResult search() {
    double free = first.duration();
    eased.cut(first);
    bestDuration = Double.POSITIVE_INFINITY;
    double window = Math.max(2 * SHORTEST * free, Math.min(ramp, LONGEST_FIRST * free));
    attempt(window);
    if (Double.isInfinite(bestDuration)) {
      // Whatever comes, this one can be played.
      judge(first, window);
    }
    while (step(STEP)) {
      // On to the next window.
    }
    for (double finer : FINER) {
      step(finer);
    }
    crests = true;
    bestDuration = Double.POSITIVE_INFINITY;
    judge(best, bestWindow);
    attempt(bestWindow);
    eased.forget();
    peaks.look(best, bestWindow, (best.duration() + bestWindow) / FINAL_INTERVALS, true, eased);
    return new SmoothTiming(best, bestWindow, peaks.pace * (1 - SAFETY), free, peaks.governs());
  }

  /** Tries a longer window, then a shorter one; whether either is better by enough to go on. */
  private boolean step(double factor) {
    double before = bestDuration;
    double middle = bestWindow;
    attempt(middle * factor);
    if (bestDuration == before) {
      attempt(middle / factor);
    }
    return bestDuration < before * (1 - BETTER);
  }

  /** Where a joint with a limit of jerk turns or bends at once, if anywhere. */
  private @Nullable NoTiming jump() {
    int joints = curve.joints();
    double[] q = new double[joints];
    double[][] slope = new double[2][joints];
    double[][] bend = new double[2][joints];
    double[] most = new double[joints];
    for (int p = 0; p < curve.pieces(); p++) {
      double from = curve.start(p);
      double to = ThirdDerivative.end(curve, p);
      for (int i = 0; i <= LOOKS; i++) {
        curve.at(p, from + (to - from) * i / LOOKS, q, slope[0], bend[0]);
        for (int j = 0; j < joints; j++) {
          double size = Math.abs(slope[0][j]) / curve.length() + Math.abs(bend[0][j]);
          most[j] = Math.max(most[j], size);
        }
      }
    }
    for (int p = 1; p < curve.pieces(); p++) {
      double s = curve.start(p);
      curve.at(p - 1, s, q, slope[0], bend[0]);
      curve.at(p, s, q, slope[1], bend[1]);
      for (int j = 0; j < joints; j++) {
        double turn = Math.abs(slope[1][j] - slope[0][j]) / curve.length();
        double jump = Math.max(turn, Math.abs(bend[1][j] - bend[0][j]));
        if (jump > JUMP * most[j] && Double.isFinite(jerk[j])) {
          String name = "joint " + (j + 1) + " jerk";
          return new NoTiming(
              s,
              name,
              "The path of joint "
                  + (j + 1)
                  + " bends at once at s = "
                  + s
                  + ": no rate keeps "
                  + name
                  + " there.");
        }
      }
    }
    return null;
  }

  /** Looks at the mean of a timing and keeps it if it is the best one yet. */
  private void judge(Timing timing, double window) {
    peaks.look(timing, window, (timing.duration() + window) / INTERVALS, crests, eased);
    double duration = (timing.duration() + window) / peaks.pace;
    if (duration < bestDuration) {
      bestDuration = duration;
      best = timing;
      bestWindow = window;
    }
  }

  /** Tries a window. */
  private void attempt(double window) {
    double free = first.duration();
    if (!(window >= SHORTEST * free && window <= LONGEST * free)) {
      return;
    }
    eased.begin(Math.min(1, window / ramp));
    if (!fastest.solve(eased, 0, 0, goal)) {
      return;
    }
    eased.flatten((Timing) fastest.result(), window);
    double raise = RAISE;
    int rounds = crests ? FINAL_ROUNDS : ROUNDS;
    for (int round = 0; round < rounds && fastest.solve(eased, 0, 0, goal); round++) {
      Timing timing = (Timing) fastest.result();
      judge(timing, window);
      if (!crests && round >= PROMISING && timing.duration() + window > bestDuration) {
        return;
      }
      eased.remedy(1 + raise);
      raise *= CALMER;
    }
  }
}
