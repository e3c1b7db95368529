package io.github.holdpath.viewer.state;

/** What is drawn after what: a later layer covers an earlier one where neither hides the other. */
public enum Layer {
  /** The floor and what is seen on it. */
  GROUND,
  /** Robot, tool and grip. */
  MACHINE,
  /** The part, which one can look through. */
  PART,
  /** Forces and flight of the part: over the part, but not over the path. */
  FORCE,
  /** The path and all that belongs to it: nothing hides it. */
  PATH
}
