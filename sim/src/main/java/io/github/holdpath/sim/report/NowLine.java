package io.github.holdpath.sim.report;

import io.github.holdpath.dynamics.margin.FailureMode;
import io.github.holdpath.dynamics.margin.FirstSlip;
import io.github.holdpath.sim.study.Playback;
import io.github.holdpath.sim.study.StudyResult;

/** One instant of a result in one line, for pictures. */
public final class NowLine {
  private NowLine() {}

  /**
   * Time, move and margin, as {@code 0.412 s, move 2 (lift): margin 1.31}.
   *
   * @param result that is shown
   * @param now an instant of its motion
   */
  public static String of(StudyResult result, Playback.Instant now) {
    return Text.fixed(now.time(), 3)
        + " s, "
        + Words.segment(result, now.segment())
        + ": "
        + now.first().map(f -> margin(f, result.requiredSafety())).orElse("not held");
  }

  private static String margin(FirstSlip first, double required) {
    return first.mode() == FailureMode.NONE
        ? "the load meets no limit"
        : "margin " + CheckReport.figure(first.factor() / required, 1);
  }
}
