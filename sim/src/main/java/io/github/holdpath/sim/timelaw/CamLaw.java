package io.github.holdpath.sim.timelaw;

import java.util.List;
import java.util.Optional;

/**
 * A law of one fixed shape, for stroke 1 and duration 1: its first half, which the second half
 * mirrors, and its peaks (theory, section 5.6).
 *
 * @param name as a message begins with it
 * @param stretches of the first half in order
 * @param speed largest first derivative
 * @param acceleration largest second derivative
 * @param jerk largest third derivative
 * @param crest place of the largest second derivative, as a part of the duration
 */
record CamLaw(
    String name,
    List<Stretch> stretches,
    double speed,
    double acceleration,
    double jerk,
    double crest) {
  /**
   * A stretch of the first half.
   *
   * @param to where it ends, as a part of the duration
   * @param curve that it follows
   */
  record Stretch(double to, CamCurve curve) {}

  /** Largest speed of the modified sine. */
  private static final double MODIFIED = 4 * Math.PI / (4 + Math.PI);

  private static final CamLaw QUINTIC =
      new CamLaw(
          "a quintic law",
          List.of(new Stretch(0.5, new CamCurve.Quintic())),
          15.0 / 8,
          10 / Math.sqrt(3),
          60,
          (1 - 1 / Math.sqrt(3)) / 2);

  private static final CamLaw MODIFIED_SINE =
      new CamLaw(
          "a modified sine",
          List.of(
              new Stretch(1.0 / 8, sine(0, 0, 0, -1 / (4 * (4 + Math.PI)), 4 * Math.PI)),
              new Stretch(0.5, sine(0.5, 0.5, MODIFIED, 9 / (4 * (4 + Math.PI)), 4 * Math.PI / 3))),
          MODIFIED,
          Math.PI * MODIFIED,
          4 * Math.PI * Math.PI * MODIFIED,
          1.0 / 8);

  private static final CamLaw CYCLOIDAL =
      new CamLaw(
          "a cycloidal law",
          List.of(new Stretch(0.5, sine(0, 0, 0, -1 / (2 * Math.PI), 2 * Math.PI))),
          2,
          2 * Math.PI,
          4 * Math.PI * Math.PI,
          1.0 / 4);

  /** The curve of the first half at {@code tau}, a part of the duration up to 1/2. */
  CamCurve curveAt(double tau) {
    int i = 0;
    while (i < stretches.size() - 1 && tau > stretches.get(i).to()) {
      i++;
    }
    return stretches.get(i).curve();
  }

  private static CamCurve sine(
      double centre, double position, double speed, double swing, double frequency) {
    return new CamCurve.Sine(centre, position, speed, swing, frequency);
  }

  /** The shape of a kind of law; empty where its shape depends on the limits. */
  static Optional<CamLaw> of(LawKind law) {
    return switch (law) {
      case TRAPEZOID, S_CURVE -> Optional.empty();
      case QUINTIC -> Optional.of(QUINTIC);
      case MODIFIED_SINE -> Optional.of(MODIFIED_SINE);
      case CYCLOIDAL -> Optional.of(CYCLOIDAL);
    };
  }
}
