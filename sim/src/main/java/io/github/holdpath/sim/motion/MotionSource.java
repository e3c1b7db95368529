package io.github.holdpath.sim.motion;

/**
 * Where a motion comes from: a route that is planned, or a recording that is fitted. There is no
 * other; each has a package of its own, so a test holds this and not the compiler.
 */
public interface MotionSource {
  /** The motion that follows. */
  Motion motion();
}
