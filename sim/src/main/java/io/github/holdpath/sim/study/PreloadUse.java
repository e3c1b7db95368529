package io.github.holdpath.sim.study;

/**
 * How much of the permitted pressure the grip's preload takes at rest, at the patch where it takes
 * most.
 *
 * @param patch its name
 * @param preload N0, N
 * @param permitted N_max, N
 */
public record PreloadUse(String patch, double preload, double permitted) {
  /** N0 / N_max, dimensionless. */
  public double ratio() {
    return preload / permitted;
  }
}
