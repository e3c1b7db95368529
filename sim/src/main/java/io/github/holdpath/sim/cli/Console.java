package io.github.holdpath.sim.cli;

import java.io.PrintWriter;

/**
 * Where a command writes.
 *
 * @param out standard output
 * @param err error stream
 * @param colour whether the standard output may be coloured
 */
record Console(PrintWriter out, PrintWriter err, boolean colour) {}
