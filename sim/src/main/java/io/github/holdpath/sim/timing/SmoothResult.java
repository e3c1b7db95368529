package io.github.holdpath.sim.timing;

/** Either a timing of the path with bounded jerk, or why there is none. */
public sealed interface SmoothResult permits SmoothTiming, NoTiming {}
