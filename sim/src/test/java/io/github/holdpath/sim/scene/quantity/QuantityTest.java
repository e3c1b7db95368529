package io.github.holdpath.sim.scene.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTest {
  /** A product and a quotient of doubles. */
  private static final double RELATIVE = 1e-15;

  /**
   * SI sizes by definition: the inch, the pound, the litre and the bar are exact decimals; the
   * pound-force is the pound times 9.80665 m/s^2, the psi that on a square inch.
   */
  @ParameterizedTest
  @CsvSource({
    "LENGTH, m, 1",
    "LENGTH, mm, 0.001",
    "LENGTH, cm, 0.01",
    "LENGTH, in, 0.0254",
    "MASS, kg, 1",
    "MASS, g, 0.001",
    "MASS, t, 1000",
    "MASS, lb, 0.45359237",
    "FORCE, N, 1",
    "FORCE, kN, 1000",
    "FORCE, lbf, 4.4482216152605",
    "PRESSURE, Pa, 1",
    "PRESSURE, kPa, 1000",
    "PRESSURE, MPa, 1e6",
    "PRESSURE, bar, 1e5",
    "PRESSURE, mbar, 100",
    "PRESSURE, psi, 6894.757293168361",
    "TIME, s, 1",
    "TIME, ms, 0.001",
    "TIME, min, 60",
    "ANGLE, rad, 1",
    "ANGLE, deg, 0.017453292519943295",
    "SPEED, m/s, 1",
    "SPEED, mm/s, 0.001",
    "TURN_SPEED, rad/s, 1",
    "TURN_SPEED, deg/s, 0.017453292519943295",
    "ACCELERATION, m/s^2, 1",
    "ACCELERATION, mm/s^2, 0.001",
    "ACCELERATION, gn, 9.80665",
    "TURN_ACCELERATION, rad/s^2, 1",
    "TURN_ACCELERATION, deg/s^2, 0.017453292519943295",
    "JERK, m/s^3, 1",
    "TURN_JERK, rad/s^3, 1",
    "TURN_JERK, deg/s^3, 0.017453292519943295",
    "INERTIA, kg*m^2, 1",
    "INERTIA, kg*mm^2, 1e-6",
    "MOMENT, N*m, 1",
    "STIFFNESS, N/m, 1",
    "STIFFNESS, N/mm, 1000",
    "VOLUME, L, 0.001",
    "VOLUME, mL, 1e-6",
    "FLOW, L/min, 1.6666666666666667e-5",
    "FLOW, m^3/h, 2.777777777777778e-4",
    "ENERGY, J, 1",
    "POWER, W, 1",
    "FREQUENCY, Hz, 1",
    "FREQUENCY, 1/min, 0.016666666666666666",
    "TEMPERATURE, K, 1",
    "TEMPERATURE, degC, 274.15",
    "AREA, m^2, 1",
    "AREA, cm^2, 1e-4",
    "DENSITY, kg/m^3, 1",
    "DENSITY, g/cm^3, 1000"
  })
  void unitsHaveTheirSizeInSi(Dimension dimension, String unit, double si) {
    Quantity q = Quantity.parse("1 " + unit).quantity().orElseThrow();
    assertEquals("", q.unitFault(dimension));
    assertEquals(si, q.toSi(dimension)[0], RELATIVE * si);
  }

  @Test
  void everyUnitBelongsToOneDimension() {
    Set<String> seen = new HashSet<>();
    int count = 0;
    for (Dimension d : Dimension.values()) {
      for (String unit : d.unitNames()) {
        assertTrue(seen.add(unit), unit);
        count++;
      }
    }
    assertEquals(53, count, "as many as rows in the table of sizes above");
  }

  @ParameterizedTest
  @CsvSource({
    "0.35 m, 0.35",
    "350 mm, 0.35",
    "130 mm, 0.13",
    "-20 mm, -0.02",
    "+1.5e3 mm, 1.5",
    "12.5mm, 0.0125",
    ".5 m, 0.5",
    "5. cm, 0.05",
    "'  7 m  ', 7"
  })
  void decimalUnitsConvertToTheNearestDouble(String text, double metres) {
    Quantity q = Quantity.parse(text).quantity().orElseThrow();
    assertEquals(metres, q.toSi(Dimension.LENGTH)[0]);
  }

  @Test
  void aListSharesTheLastUnit() {
    Quantity q = Quantity.parse("400 300  270 mm").quantity().orElseThrow();
    assertEquals(3, q.numbers().size());
    assertEquals(0.27, q.toSi(Dimension.LENGTH)[2]);
  }

  @ParameterizedTest
  @CsvSource({"fricton, friction", "CentreofMass, friction", "frction, friction"})
  void nearestNameCountsWrongLetters(String written, String known) {
    boolean near = NearestName.of(written, Set.of(known)).isPresent();
    assertEquals(written.startsWith("fr"), near);
  }
}
