package io.github.holdpath.dynamics.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Expect;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Values of the standard atmosphere computed by an independent program.
 *
 * @see "ISO 2533, Standard Atmosphere (model and constants from memory)"
 */
class AtmosphereValidationTest {
  /** Half the last digit as printed, Pa. */
  private static final double HALF_DIGIT = 0.05;

  private static final double EARTH_RADIUS = 6356766;

  @ParameterizedTest
  @CsvSource({
    "0, 101325.0",
    "500, 95461.3",
    "1000, 89876.3",
    "1500, 84559.7",
    "2000, 79501.4",
    "3000, 70121.1"
  })
  void pressureAtGeometricAltitude(double altitude, double pressure) {
    assertEquals(pressure, Atmosphere.pressure(altitude), HALF_DIGIT);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 101325.0",
    "500, 95460.8",
    "1000, 89874.6",
    "1500, 84556.0",
    "2000, 79495.2",
    "3000, 70108.5"
  })
  void pressureAtGeopotentialHeight(double height, double pressure) {
    double altitude = EARTH_RADIUS * height / (EARTH_RADIUS - height);
    assertEquals(pressure, Atmosphere.pressure(altitude), HALF_DIGIT);
  }

  /** Weight of the air between two heights is their difference of pressure. */
  @Test
  void pressureFallsByTheWeightOfTheAir() {
    for (double z = 0; z <= 8000; z += 500) {
      double slope = (Atmosphere.pressure(z + 1) - Atmosphere.pressure(z - 1)) / 2;
      double temperature = 288.15 - 0.0065 * EARTH_RADIUS * z / (EARTH_RADIUS + z);
      double gravity = 9.80665 * Math.pow(EARTH_RADIUS / (EARTH_RADIUS + z), 2);
      double density = Atmosphere.density(Atmosphere.pressure(z), temperature);
      // The exponent is given to six digits.
      assertEquals(-density * gravity, slope, 1e-5 * density * gravity);
    }
  }

  /** Dry air at sea level, 15 degC: 1.225 kg/m^3, as every table of the standard gives it. */
  @Test
  void densityAtSeaLevelIsTheStandardOne() {
    assertEquals(1.225, Atmosphere.density(101325, 288.15), 5e-5);
  }

  @Test
  void endsOfTheRangeBelongToIt() {
    assertTrue(Atmosphere.pressure(Atmosphere.LOWEST) > 101325);
    assertTrue(Atmosphere.pressure(Atmosphere.HIGHEST) > 0);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-500.1, 9000.1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesAltitudesOutsideTheModel(double altitude) {
    Expect.refused("altitude must lie in -500.0 to 9000.0 m", () -> Atmosphere.pressure(altitude));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void densityRefusesWhatNoAirHas(double bad) {
    Expect.refused("pressure must be finite", () -> Atmosphere.density(bad, 288));
    Expect.refused("temperature must be finite", () -> Atmosphere.density(101325, bad));
    Expect.refused("temperature must be finite", () -> Atmosphere.density(101325, 0));
  }
}
