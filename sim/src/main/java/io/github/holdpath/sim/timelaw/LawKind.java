package io.github.holdpath.sim.timelaw;

/** Kinds of motion law between two stops. */
public enum LawKind {
  /** Acceleration in steps: fastest within limits of speed and acceleration. */
  TRAPEZOID("trapezoid"),
  /** Acceleration in ramps: fastest within limits of speed, acceleration and jerk. */
  S_CURVE("s-curve"),
  /** The 3-4-5 polynomial, stretched until it keeps limits of speed, acceleration and jerk. */
  QUINTIC("quintic"),
  /** The modified sine, stretched likewise. */
  MODIFIED_SINE("modified-sine"),
  /** The cycloidal law, a whole sine of acceleration, stretched likewise. */
  CYCLOIDAL("cycloidal");

  private final String label;

  LawKind(String label) {
    this.label = label;
  }

  /** Name in scene files and texts. */
  public String label() {
    return label;
  }

  /** Whether the law bounds the jerk and so needs a limit for it. */
  public boolean boundsJerk() {
    return this != TRAPEZOID;
  }
}
