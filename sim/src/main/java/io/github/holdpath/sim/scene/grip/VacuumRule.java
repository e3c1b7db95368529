package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.supply.Atmosphere;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.quantity.Amount;
import java.util.Locale;
import java.util.OptionalDouble;

/** Turns what a data sheet says of the supply into the vacuum at the site. */
final class VacuumRule {
  private VacuumRule() {}

  /**
   * The vacuum at the site.
   *
   * @param supply object for places
   * @param name of the field that was written, {@code vacuum} or {@code absolutePressure}
   * @param written Pa
   * @param ratedAt altitude for which a vacuum is stated, m; the site's if empty
   * @return Pa below the local atmosphere; empty if a fault was noted
   */
  static OptionalDouble here(
      Values supply,
      String name,
      double written,
      OptionalDouble ratedAt,
      Scene.Site site,
      GripContext context) {
    double local = site.pressure();
    double rated = ratedAt.isPresent() ? Atmosphere.pressure(ratedAt.getAsDouble()) : local;
    if (!(written < rated)) {
      context.faults().add(supply.place(name), tooMuch(name, rated, ratedAt, site));
      return OptionalDouble.empty();
    }
    if (name.equals("absolutePressure")) {
      double vacuum = local - written;
      note(supply, name, vacuum, context);
      return OptionalDouble.of(vacuum);
    }
    if (ratedAt.isEmpty()) {
      context.notes().add(supply, name, Scene.Origin.NOT_STATED);
      return OptionalDouble.of(written);
    }
    double vacuum = written * local / rated;
    note(supply, name, vacuum, context);
    return OptionalDouble.of(vacuum);
  }

  private static void note(Values supply, String name, double vacuum, GripContext context) {
    String text = supply.amount(name).map(Amount::text).orElse("");
    context
        .notes()
        .add(
            supply,
            name,
            text + ", a vacuum of " + kilo(vacuum) + " at the site",
            Scene.Origin.NOT_STATED);
  }

  private static String tooMuch(
      String name, double rated, OptionalDouble ratedAt, Scene.Site site) {
    String where =
        ratedAt.isPresent() ? "at ratedAt" : "at the site, " + (float) site.altitude() + " m high,";
    return name.equals("vacuum")
        ? "there is no such vacuum: the air "
            + where
            + " has "
            + kilo(rated)
            + "; write the pressure below it, for example \"60 kPa\""
        : "there is no vacuum: the air "
            + where
            + " has "
            + kilo(rated)
            + " itself; write the lower pressure left in the cups, for example \"40 kPa\"";
  }

  private static String kilo(double pascal) {
    return String.format(Locale.ROOT, "%.1f kPa", pascal / 1000);
  }
}
