package io.github.holdpath.dynamics.margin;

/** How a patch lets go. */
public enum FailureMode {
  /** The part slides across the patch. */
  SLIP("slip"),
  /** The part turns on the patch: slip in which torsion outweighs the sideways force. */
  TWIST("twist"),
  /** The lip of a cup opens and the vacuum is lost. */
  PEEL("peel"),
  /** The part tips over the edge of a pad. */
  TIP("tip"),
  /** The part leaves the patch. */
  RELEASE("release"),
  /** The part is pressed harder than it may be. */
  CRUSH("crush"),
  /** Nothing in the grip can carry this load. */
  FLOATS("floats"),
  /** The load can grow without end and the grip still holds. */
  NONE("no limit");

  private final String label;

  FailureMode(String label) {
    this.label = label;
  }

  /** Name in results and texts. */
  public String label() {
    return label;
  }
}
