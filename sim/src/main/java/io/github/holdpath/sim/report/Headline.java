package io.github.holdpath.sim.report;

import io.github.holdpath.dynamics.margin.FailureMode;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.study.GiveResult;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.sim.study.Verdict;
import io.github.holdpath.sim.study.Worst;
import java.util.Locale;
import java.util.Optional;

/**
 * A result in a few lines, for pictures.
 *
 * @param title of the scene
 * @param subject what is held, by what, and the required safety
 * @param holds whether the required safety is kept
 * @param verdict in capitals, with factor and margin
 * @param tightest time, move, patch and mode of the least factor; empty where no limit is met
 * @param swing the same for the part that swings on its grip; empty where that is not known
 * @param mark margin and mode of the least factor in a few words; empty where no limit is met
 * @param caution what the numbers are not
 */
public record Headline(
    String title,
    String subject,
    boolean holds,
    String verdict,
    Optional<String> tightest,
    Optional<String> swing,
    Optional<String> mark,
    String caution) {
  /** Of a result. */
  public static Headline of(StudyResult result) {
    Worst worst = result.worst();
    boolean limited = worst.first().mode() != FailureMode.NONE;
    String required = Text.number(result.requiredSafety(), 4);
    String word = result.verdict().label().toUpperCase(Locale.ROOT);
    boolean swingAlone = result.verdict() == Verdict.DOES_NOT_HOLD && result.margin() >= 1;
    String rigid = swingAlone ? " by its swing; rigid on its grip: " : ": ";
    String numbers =
        limited
            ? rigid
                + "least factor "
                + CheckReport.figure(worst.first().factor(), result.requiredSafety())
                + ", required "
                + required
                + ", margin "
                + CheckReport.figure(result.margin(), 1)
            : rigid + "the load meets no limit";
    return new Headline(
        result.scene().title(),
        subject(result.scene()),
        result.verdict() == Verdict.HOLDS,
        word + numbers,
        limited
            ? Optional.of("Tightest at " + place(result, worst) + ": " + happens(worst))
            : Optional.empty(),
        result.give().map(g -> swing(result, g)),
        limited
            ? Optional.of(
                "margin " + CheckReport.figure(result.margin(), 1) + ": " + happens(worst))
            : Optional.empty(),
        Words.CAUTION);
  }

  /**
   * While a scene is still being judged: no verdict, only what its samples say so far.
   *
   * @param scene as far as it is read
   * @param safety required safety S
   * @param least least factor of the samples, the part rigid on its grip
   */
  public static Headline judging(Scene scene, double safety, double least) {
    boolean limited = least < HoldModel.NO_LIMIT;
    String numbers =
        limited
            ? "least factor of the rigid part about "
                + CheckReport.figure(least, safety)
                + ", required "
                + Text.number(safety, 4)
            : "the load of the rigid part meets no limit so far";
    return new Headline(
        scene.title(),
        subject(scene),
        least >= safety,
        "Judging ... " + numbers,
        Optional.empty(),
        Optional.empty(),
        limited
            ? Optional.of("margin about " + CheckReport.figure(least / safety, 1))
            : Optional.empty(),
        Words.CAUTION);
  }

  private static String subject(Scene scene) {
    return scene.part().name()
        + ", "
        + Text.number(scene.part().body().mass(), 4)
        + " kg, held by "
        + Words.grip(scene.grip().kind());
  }

  private static String swing(StudyResult result, GiveResult give) {
    Worst worst = give.worst();
    if (worst.first().mode() == FailureMode.NONE) {
      return "Swinging on its grip the part meets no limit";
    }
    return "Swinging on its grip: margin "
        + CheckReport.figure(worst.first().factor() / result.requiredSafety(), 1)
        + " at "
        + place(result, worst)
        + ": "
        + happens(worst);
  }

  private static String happens(Worst worst) {
    return Words.happens(worst.first());
  }

  private static String place(StudyResult result, Worst worst) {
    return Text.fixed(worst.time(), 3) + " s in " + Words.segment(result, worst.segment());
  }
}
