/**
 * The command line: the one package that prints and exits. Read {@link
 * io.github.holdpath.sim.cli.Main} first; docs/guide is the user's page.
 */
@NullMarked
package io.github.holdpath.sim.cli;

import org.jspecify.annotations.NullMarked;
