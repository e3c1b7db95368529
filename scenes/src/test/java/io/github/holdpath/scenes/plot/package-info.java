/**
 * The plots and tables of the page that compares the motion laws. {@link
 * io.github.holdpath.scenes.plot.LawsPageTest} makes them; read it first.
 */
@NullMarked
package io.github.holdpath.scenes.plot;

import org.jspecify.annotations.NullMarked;
