package io.github.holdpath.sim.report;

import io.github.holdpath.dynamics.margin.FailureMode;
import io.github.holdpath.dynamics.margin.SpeedHeadroom;
import io.github.holdpath.sim.study.GiveResult;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.sim.study.Verdict;
import io.github.holdpath.sim.study.Worst;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to do next about a job: how fast it may run, and how much stronger its grip would be. */
public final class NextWords {
  private NextWords() {}

  /** Speed first, then the grip's force where the job does not hold. */
  public static List<String> sentences(StudyResult result) {
    List<String> all = new ArrayList<>(List.of(speed(result)));
    if (result.verdict() != Verdict.HOLDS) {
      force(result).ifPresent(all::add);
    }
    return all;
  }

  /** Whether the table passes and the part fails by its swing. */
  static boolean swingAloneFails(StudyResult result) {
    return result.verdict() != Verdict.HOLDS && result.margin() >= 1;
  }

  /** How many times as fast the whole job may be played. */
  static String speed(StudyResult result) {
    double k = result.speedHeadroom();
    String sentence;
    if (k >= SpeedHeadroom.LARGEST) {
      sentence = "Speed does not matter here: the motion's own load meets no limit.";
    } else if (k == 0) {
      sentence =
          "No speed helps: the weight alone asks for more than the grip gives at the required"
              + " safety.";
    } else {
      String speed = percent(k) + " of this speed (acceleration at " + percent(k * k) + ").";
      boolean swings = swingAloneFails(result);
      sentence =
          k < 1
              ? "The whole job just holds at "
                  + speed
                  + " Check that your controller's override scales its ramps so."
              : swings
                  ? "Only taken as rigid it holds, up to "
                      + speed
                      + " Soften the ramps or slow it, and check its swing again."
                  : "The whole job may run at up to " + speed;
      if (result.give().isPresent() && !swings) {
        sentence += " (Rigid on its grip: check again at that speed.)";
      }
    }
    return sentence + limit(result.speedHeadroomLimit());
  }

  private static String limit(double limit) {
    if (limit == 0) {
      return " Even with nothing in hand the weight alone is too much.";
    }
    return limit < SpeedHeadroom.LARGEST
        ? " With nothing in hand (safety 1) it lets go above " + percent(limit) + "."
        : "";
  }

  /** Per cent, towards the safe side. */
  private static String percent(double share) {
    return Text.number(Math.floor(share * 1000) / 10, 4) + " %";
  }

  /** How many times its force the grip needs, swing counted; empty where force does not help. */
  static Optional<String> force(StudyResult result) {
    // What the grip carries does not hang on its force, so the factor grows in proportion to it.
    Worst worst =
        result
            .give()
            .map(GiveResult::worst)
            .filter(swinging -> swinging.first().factor() < result.factor())
            .orElse(result.worst());
    boolean byForce =
        worst.first().mode() != FailureMode.CRUSH && worst.first().mode() != FailureMode.FLOATS;
    if (!byForce || worst.first().factor() <= 0) {
      return Optional.empty();
    }
    double times = Math.ceil(100 * result.requiredSafety() / worst.first().factor()) / 100;
    return Optional.of(
        "At this speed the grip needs "
            + Text.number(times, 4)
            + " times its "
            + (result.scene().grip().kind().equals("suction") ? "pull" : "force")
            + " in the same places.");
  }
}
