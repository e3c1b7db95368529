/**
 * Texts and files of a study: table, explanation, result file, samples. Reads results and computes
 * no mechanics. Read {@link io.github.holdpath.sim.report.CheckReport} first.
 */
@NullMarked
package io.github.holdpath.sim.report;

import org.jspecify.annotations.NullMarked;
