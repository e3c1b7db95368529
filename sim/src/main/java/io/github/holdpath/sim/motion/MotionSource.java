package io.github.holdpath.sim.motion;

/** Where a motion comes from: a route that is planned, or a recording that is fitted. */
public sealed interface MotionSource permits Route, Recording {
  /** The motion that follows. */
  Motion motion();
}
