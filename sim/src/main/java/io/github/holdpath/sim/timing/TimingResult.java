package io.github.holdpath.sim.timing;

/** Either a timing of the path, or why there is none. */
public sealed interface TimingResult permits Timing, NoTiming {}
