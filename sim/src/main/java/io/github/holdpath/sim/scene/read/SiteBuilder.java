package io.github.holdpath.sim.scene.read;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.supply.Atmosphere;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.Values;
import java.util.Optional;

/** Builds the surroundings. */
final class SiteBuilder {
  private static final double TEMPERATURE = 293.15;
  private static final Vec3 GRAVITY = new Vec3(0, 0, -9.80665);

  private SiteBuilder() {}

  /**
   * Builds the site; what the file leaves out is sea level, 20 degC and standard gravity.
   *
   * @param scene checked fields of the file
   * @return empty if the site has faults
   */
  static Optional<Scene.Site> build(Values scene) {
    if (!scene.isThere("site")) {
      return Optional.of(site(0, TEMPERATURE, GRAVITY));
    }
    return scene.group("site").flatMap(SiteBuilder::of);
  }

  private static Optional<Scene.Site> of(Values site) {
    for (String name : site.spec().names()) {
      boolean read = site.number(name).isPresent() || site.vector(name).isPresent();
      if (site.isThere(name) && !read) {
        return Optional.empty();
      }
    }
    Scene.Site base =
        site(
            site.number("altitude").orElse(0),
            site.number("temperature").orElse(TEMPERATURE),
            site.vector("gravity").orElse(GRAVITY));
    double density = site.number("airDensity").orElse(base.airDensity());
    return Optional.of(
        new Scene.Site(
            base.altitude(), base.temperature(), base.gravity(), base.pressure(), density));
  }

  private static Scene.Site site(double altitude, double temperature, Vec3 gravity) {
    double pressure = Atmosphere.pressure(altitude);
    return new Scene.Site(
        altitude, temperature, gravity, pressure, Atmosphere.density(pressure, temperature));
  }
}
