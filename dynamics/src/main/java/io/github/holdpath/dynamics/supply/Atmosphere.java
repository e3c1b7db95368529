package io.github.holdpath.dynamics.supply;

/**
 * Standard atmosphere below 11 km (theory, eq. 4.1): {@code p = 101325 Pa (1 - 0.0065 H/288.15)^n}
 * with {@code n = g/(0.0065 R)} and the geopotential height {@code H = r z/(r + z)}.
 *
 * @see "ISO 2533, Standard Atmosphere (model and constants from memory)"
 */
public final class Atmosphere {
  private static final double SEA_LEVEL_PRESSURE = 101325;
  private static final double SEA_LEVEL_TEMPERATURE = 288.15;
  private static final double LAPSE = 0.0065;
  private static final double EARTH_RADIUS = 6356766;
  private static final double EXPONENT = 5.25588;

  /** Specific gas constant of dry air, J/(kg K). */
  public static final double GAS_CONSTANT = 287.053;

  /** Lowest and highest geometric altitude of the model as used here, m. */
  public static final double LOWEST = -500;

  /** Highest geometric altitude of the model as used here, m. */
  public static final double HIGHEST = 9000;

  private Atmosphere() {}

  /**
   * Pressure at an altitude.
   *
   * @param altitude geometric, m, {@link #LOWEST} to {@link #HIGHEST}
   * @return Pa
   */
  public static double pressure(double altitude) {
    if (!(altitude >= LOWEST && altitude <= HIGHEST)) {
      throw new IllegalArgumentException(
          "altitude must lie in " + LOWEST + " to " + HIGHEST + " m, but was " + altitude);
    }
    double height = EARTH_RADIUS * altitude / (EARTH_RADIUS + altitude);
    return SEA_LEVEL_PRESSURE * Math.pow(1 - LAPSE * height / SEA_LEVEL_TEMPERATURE, EXPONENT);
  }

  /**
   * Density of dry air as an ideal gas.
   *
   * @param pressure Pa, finite and not negative
   * @param temperature K, finite and positive
   * @return kg/m^3
   */
  public static double density(double pressure, double temperature) {
    if (!(pressure >= 0) || !Double.isFinite(pressure)) {
      throw new IllegalArgumentException(
          "pressure must be finite and not negative, but was " + pressure);
    }
    if (!(temperature > 0) || !Double.isFinite(temperature)) {
      throw new IllegalArgumentException(
          "temperature must be finite and positive, but was " + temperature);
    }
    return pressure / (GAS_CONSTANT * temperature);
  }
}
