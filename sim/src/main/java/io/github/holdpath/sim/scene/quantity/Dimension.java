package io.github.holdpath.sim.scene.quantity;

import java.util.List;
import java.util.Optional;

/** Kinds of physical quantity that scene files hold, each with the units it may be written in. */
public enum Dimension {
  LENGTH("a length", "m", u("m"), u("mm", 1, 1000), u("cm", 1, 100), u("in", 254, 10_000)),
  MASS("a mass", "kg", u("kg"), u("g", 1, 1000), u("t", 1000, 1), u("lb", 0.45359237, 1)),
  FORCE("a force", "N", u("N"), u("kN", 1000, 1), u("lbf", 4.4482216152605, 1)),
  PRESSURE(
      "a pressure",
      "Pa",
      u("Pa"),
      u("kPa", 1000, 1),
      u("MPa", 1e6, 1),
      u("bar", 1e5, 1),
      u("mbar", 100, 1),
      u("psi", 6894.757293168361, 1)),
  TIME("a time", "s", u("s"), u("ms", 1, 1000), u("min", 60, 1)),
  ANGLE("an angle", "rad", u("rad"), u("deg", Math.PI, 180)),
  SPEED("a speed", "m/s", u("m/s"), u("mm/s", 1, 1000)),
  TURN_SPEED("a turning speed", "rad/s", u("rad/s"), u("deg/s", Math.PI, 180)),
  ACCELERATION("an acceleration", "m/s^2", u("m/s^2"), u("mm/s^2", 1, 1000), u("gn", 9.80665, 1)),
  TURN_ACCELERATION("a turning acceleration", "rad/s^2", u("rad/s^2"), u("deg/s^2", Math.PI, 180)),
  JERK("a jerk", "m/s^3", u("m/s^3")),
  TURN_JERK("a turning jerk", "rad/s^3", u("rad/s^3"), u("deg/s^3", Math.PI, 180)),
  INERTIA("an inertia", "kg*m^2", u("kg*m^2"), u("kg*mm^2", 1, 1e6)),
  MOMENT("a moment", "N*m", u("N*m")),
  STIFFNESS("a stiffness", "N/m", u("N/m"), u("N/mm", 1000, 1)),
  VOLUME("a volume", "m^3", u("L", 1, 1000), u("mL", 1, 1e6)),
  FLOW("a flow", "m^3/s", u("L/min", 1, 60_000), u("m^3/h", 1, 3600)),
  ENERGY("an energy", "J", u("J")),
  POWER("a power", "W", u("W")),
  FREQUENCY("a frequency", "Hz", u("Hz"), u("1/min", 1, 60)),
  TEMPERATURE("a temperature", "K", u("K"), new Unit("degC", 1, 1, 273.15)),
  AREA("an area", "m^2", u("m^2"), u("cm^2", 1, 10_000)),
  DENSITY("a density", "kg/m^3", u("kg/m^3"), u("g/cm^3", 1000, 1));

  private final String words;
  private final String si;
  private final List<Unit> units;

  Dimension(String words, String si, Unit... units) {
    this.words = words;
    this.si = si;
    this.units = List.of(units);
  }

  /**
   * A unit of measure; {@code SI = value times / per + offset}, so that decimal units convert with
   * a single rounding.
   *
   * @param name as written
   * @param times factor
   * @param per divisor
   * @param offset in SI
   */
  record Unit(String name, double times, double per, double offset) {
    double toSi(double value) {
      return value * times / per + offset;
    }
  }

  /** In a sentence, with its article. */
  public String words() {
    return words;
  }

  /** Name of the SI unit. */
  public String si() {
    return si;
  }

  /** Units that a value may be written in. */
  List<Unit> units() {
    return units;
  }

  /** Names of the units. */
  public List<String> unitNames() {
    return units.stream().map(Unit::name).toList();
  }

  /** The unit of that name. */
  public Optional<Unit> unit(String name) {
    return units.stream().filter(unit -> unit.name().equals(name)).findFirst();
  }

  /** The first dimension that knows a unit of that name. */
  static Optional<Dimension> ofUnit(String name) {
    for (Dimension d : values()) {
      if (d.unit(name).isPresent()) {
        return Optional.of(d);
      }
    }
    return Optional.empty();
  }

  private static Unit u(String name) {
    return new Unit(name, 1, 1, 0);
  }

  private static Unit u(String name, double times, double per) {
    return new Unit(name, times, per, 0);
  }
}
