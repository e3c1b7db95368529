package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.spatial.Vec3;

/**
 * The groove of a vee pad: a round bar touches it along two flanks.
 *
 * @param angle between the flanks, rad, above 0 and below pi
 */
public record Vee(double angle) {
  /** Refuses an angle that makes no groove. */
  public Vee {
    if (!(angle > 0 && angle < Math.PI)) {
      throw new IllegalArgumentException("angle must lie between 0 and pi, but was " + angle);
    }
  }

  /**
   * Normal force of each flank per force of the jaw, {@code 1/(2 sin(angle/2))} (theory, eq. 2.7).
   */
  public double flankPerForce() {
    return 1 / (2 * Math.sin(angle / 2));
  }

  /**
   * Direction in which a flank presses on the bar.
   *
   * @param closing unit direction in which the jaw closes
   * @param side unit direction across bar and closing axis towards which the flank lies
   */
  Vec3 normal(Vec3 closing, Vec3 side) {
    return closing.times(Math.sin(angle / 2)).minus(side.times(Math.cos(angle / 2)));
  }
}
