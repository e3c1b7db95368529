package io.github.holdpath.sim.path;

/** What {@link PathChain#build} answers: the chain, or all faults of its corners. */
public sealed interface ChainOutcome permits PathChain, ChainFaults {}
