package io.github.holdpath.sim.scene.recording;

import static io.github.holdpath.sim.scene.recording.RecordingText.exact;
import static io.github.holdpath.sim.scene.recording.RecordingText.plain;
import static io.github.holdpath.sim.scene.recording.RecordingText.text;

import io.github.holdpath.sim.motion.recorded.RecordedMotion;
import java.util.Arrays;
import java.util.List;

/** Whether the rows of a recording make a motion: rising times, no gaps, no jumps. */
final class RecordingChecks {
  /** No arm moves a part faster, m/s; a unit taken wrong does. */
  private static final double GREATEST_SPEED = 50;

  /** A larger turn between two rows has no certain direction, rad. */
  private static final double GREATEST_JUMP = Math.toRadians(120);

  /** A larger turn within half a period of the cut-off would be smoothed out of shape, rad. */
  private static final double GREATEST_TURN = Math.toRadians(90);

  private static final int LOOKS = 8;

  private final RecordingRows rows;
  private final double cutoff;
  private final RecordingFaults faults;

  RecordingChecks(RecordingRows rows, double cutoff, RecordingFaults faults) {
    this.rows = rows;
    this.cutoff = cutoff;
    this.faults = faults;
  }

  /** Checks every pair of neighbours, and how many there are. */
  void run() {
    if (rows.seen() < RecordedMotion.LEAST_ROWS) {
      faults.whole(
          text(
              "%d rows below the first line; a recording needs at least %d",
              rows.seen(), RecordedMotion.LEAST_ROWS));
    }
    double median = medianStep();
    boolean rising = true;
    for (int i = 1; i < rows.size(); i++) {
      if (rows.followsOn(i)) {
        rising &= checkPair(i, median);
      }
    }
    if (rising && faults.isEmpty()) {
      checkTurning();
    }
  }

  /** Median of the steps between neighbours that rise, s; 0 if there are none. */
  private double medianStep() {
    double[] steps = new double[rows.size()];
    int n = 0;
    for (int i = 1; i < rows.size(); i++) {
      double step = rows.time(i) - rows.time(i - 1);
      if (rows.followsOn(i) && step > 0) {
        steps[n++] = step;
      }
    }
    Arrays.sort(steps, 0, n);
    return n == 0 ? 0 : steps[n / 2];
  }

  private boolean checkPair(int i, double median) {
    double step = rows.time(i) - rows.time(i - 1);
    if (!(step > 0)) {
      faults.at(
          rows.line(i),
          text(
              "time %s is not after %s in line %d; times must rise from row to row",
              exact(rows.written(i)), exact(rows.written(i - 1)), rows.line(i - 1)));
      return false;
    }
    if (cutoff > 0 && step > 1 / cutoff) {
      faults.at(
          rows.line(i),
          text(
              "gap of %s s since line %d, longer than a period of the cut-off of %s Hz, %s s;"
                  + " fill it, cut the recording there, or lower the cutoff",
              plain(step), rows.line(i - 1), plain(cutoff), plain(1 / cutoff)));
    }
    checkJump(i, Math.max(step, median));
    checkJoints(i);
    return true;
  }

  private void checkJump(int i, double step) {
    double distance = rows.pose(i).position().minus(rows.pose(i - 1).position()).norm();
    if (distance / step > GREATEST_SPEED) {
      faults.at(
          rows.line(i),
          text(
              "moves %s m in %s s since line %d, faster than %s m/s; is units/length right (mm"
                  + " taken for m?), and units/time?",
              plain(distance), plain(step), rows.line(i - 1), plain(GREATEST_SPEED)));
    }
    double turn = rows.pose(i).rotation().angleTo(rows.pose(i - 1).rotation());
    if (turn > GREATEST_JUMP) {
      faults.at(
          rows.line(i),
          text(
              "turns by %s deg since line %d; above 120 deg the way round is not certain: a row"
                  + " out of place, or units/angle taken wrong?",
              plain(Math.toDegrees(turn)), rows.line(i - 1)));
    }
  }

  private void checkJoints(int i) {
    if (rows.joints().isEmpty()) {
      return;
    }
    List<Double> now = rows.joints().get(i);
    List<Double> before = rows.joints().get(i - 1);
    for (int k = 0; k < now.size(); k++) {
      double jump = Math.abs(now.get(k) - before.get(k));
      if (jump > GREATEST_JUMP) {
        faults.at(
            rows.line(i),
            text(
                "joint %d goes by %s rad or m since line %d: a row out of place, a unit taken wrong,"
                    + " or an angle that begins anew at half a turn? It must count on",
                k + 1, plain(jump), rows.line(i - 1)));
      }
    }
  }

  private void checkTurning() {
    double span = 0.5 / cutoff;
    int end = 0;
    for (int i = 0; i < rows.size(); i++) {
      while (end + 1 < rows.size() && rows.time(end + 1) - rows.time(i) <= span) {
        end++;
      }
      if (turnsTooFar(i, end)) {
        return;
      }
    }
  }

  private boolean turnsTooFar(int from, int to) {
    for (int look = 1; look <= LOOKS; look++) {
      int other = from + (int) ((long) (to - from) * look / LOOKS);
      double turn = rows.pose(from).rotation().angleTo(rows.pose(other).rotation());
      if (turn > GREATEST_TURN) {
        faults.at(
            rows.line(other),
            text(
                "turns by %s deg since line %d, within half a period of the cut-off of %s Hz;"
                    + " above 90 deg the fit would lose the rotation: raise the cutoff",
                plain(Math.toDegrees(turn)), rows.line(from), plain(cutoff)));
        return true;
      }
    }
    return false;
  }
}
