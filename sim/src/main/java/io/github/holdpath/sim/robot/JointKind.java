package io.github.holdpath.sim.robot;

/** How a joint moves; URDF's words. A fixed joint is no joint of a {@link Chain}. */
public enum JointKind {
  /** Turns about its axis between two stops; values in rad. */
  REVOLUTE,
  /** Turns about its axis without stops; values in rad. */
  CONTINUOUS,
  /** Slides along its axis between two stops; values in m. */
  PRISMATIC;

  /** Whether the joint turns; if not, it slides. */
  public boolean turns() {
    return this != PRISMATIC;
  }
}
