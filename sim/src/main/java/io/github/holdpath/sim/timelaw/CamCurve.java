package io.github.holdpath.sim.timelaw;

/**
 * A smooth stretch of a cam law with stroke 1 and duration 1, and its exact derivatives (theory,
 * section 5.6). {@code tau} is the part of the duration that has passed; all values are
 * dimensionless.
 */
sealed interface CamCurve {
  /** Part of the stroke. */
  double position(double tau);

  /** First derivative. */
  double speed(double tau);

  /** Second derivative. */
  double acceleration(double tau);

  /** Third derivative. */
  double jerk(double tau);

  /** The polynomial of eq. 5.16. */
  record Quintic() implements CamCurve {
    @Override
    public double position(double tau) {
      return tau * tau * tau * (10 + tau * (6 * tau - 15));
    }

    @Override
    public double speed(double tau) {
      double both = tau * (1 - tau);
      return 30 * both * both;
    }

    @Override
    public double acceleration(double tau) {
      return 60 * tau * (1 - tau) * (1 - 2 * tau);
    }

    @Override
    public double jerk(double tau) {
      return 60 - 360 * tau * (1 - tau);
    }
  }

  /**
   * A sine on a straight line, eq. 5.17.
   *
   * @param centre where the sine is 0
   * @param position there
   * @param speed there
   * @param swing amplitude of the sine
   * @param frequency of the sine, radians in the whole duration
   */
  record Sine(double centre, double position, double speed, double swing, double frequency)
      implements CamCurve {
    @Override
    public double position(double tau) {
      double x = tau - centre;
      double angle = frequency * x;
      return position + speed * x - swing * (angle - Math.sin(angle));
    }

    @Override
    public double speed(double tau) {
      // The square of the half angle keeps the digits near rest, which 1 - cos would lose.
      double half = Math.sin(frequency * (tau - centre) / 2);
      return speed - 2 * swing * frequency * half * half;
    }

    @Override
    public double acceleration(double tau) {
      return -swing * frequency * frequency * Math.sin(frequency * (tau - centre));
    }

    @Override
    public double jerk(double tau) {
      return -swing * frequency * frequency * frequency * Math.cos(frequency * (tau - centre));
    }
  }
}
