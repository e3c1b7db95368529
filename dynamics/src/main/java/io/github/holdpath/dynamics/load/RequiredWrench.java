package io.github.holdpath.dynamics.load;

import io.github.holdpath.dynamics.spatial.Wrench;

/**
 * What the grip must put on the part, about the grip frame's origin and in its axes.
 *
 * @param gravity what holds the part against gravity alone
 * @param motion everything that the motion and the air add
 */
public record RequiredWrench(Wrench gravity, Wrench motion) {
  /** The whole required wrench. */
  public Wrench total() {
    return gravity.plus(motion);
  }
}
