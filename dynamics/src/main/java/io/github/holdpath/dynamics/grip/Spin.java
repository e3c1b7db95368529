package io.github.holdpath.dynamics.grip;

/**
 * A grip that spins with the part, as a chuck does: each jaw is thrown outward.
 *
 * @param speed of rotation about z of the grip frame, rad/s, positive
 * @param jawMass of one jaw with all that moves with it, kg, positive
 * @param jawRadius distance of the jaw's centre of mass from the axis, m, positive
 */
public record Spin(double speed, double jawMass, double jawRadius) {
  /** Refuses numbers that are not positive. */
  public Spin {
    if (!(speed > 0 && jawMass > 0 && jawRadius > 0)
        || !Double.isFinite(speed * speed * jawMass * jawRadius)) {
      throw new IllegalArgumentException(
          "speed, mass and radius must be positive, but were "
              + speed
              + ", "
              + jawMass
              + ", "
              + jawRadius);
    }
  }

  /** Force that throws each jaw outward, {@code m r omega^2}, N (theory, eq. 2.8). */
  public double outward() {
    return jawMass * jawRadius * speed * speed;
  }
}
