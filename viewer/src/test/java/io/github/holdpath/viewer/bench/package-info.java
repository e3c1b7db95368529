/** Benchmarks of drawing, run by hand; see DEVELOPERS.md. */
@org.jspecify.annotations.NullMarked
package io.github.holdpath.viewer.bench;
