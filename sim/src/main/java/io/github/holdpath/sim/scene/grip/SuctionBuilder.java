package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.Cup;
import io.github.holdpath.dynamics.grip.Ledge;
import io.github.holdpath.dynamics.grip.SuctionGrip;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Builds suction grips. */
final class SuctionBuilder {
  private final Values grip;
  private final GripContext context;
  private final Faults faults;

  private SuctionBuilder(Values grip, GripContext context) {
    this.grip = grip;
    this.context = context;
    this.faults = context.faults();
  }

  /**
   * Builds the grip.
   *
   * @return empty if faults were noted
   */
  static Optional<SuctionGrip> build(Values grip, GripContext context) {
    return new SuctionBuilder(grip, context).build();
  }

  private Optional<SuctionGrip> build() {
    int before = faults.count();
    OptionalDouble friction = FrictionInput.read(grip, context);
    OptionalDouble vacuum = grip.group("supply").map(this::vacuum).orElse(OptionalDouble.empty());
    context.peakIsForJaws("cups");
    Optional<Values> cups = grip.group("cups");
    if (cups.isEmpty()) {
      return Optional.empty();
    }
    PatchStiffness stiffness = LedgeBuilder.stiffness(cups.get(), context.notes());
    Optional<PadLayout> pad =
        cups.get().group("pad").map(p -> new PadLayout(cups.get(), p, context));
    PatchLayout layout = new PatchLayout(cups.get(), pad.isPresent() ? "cell" : "cup", faults);
    List<PatchLayout.Spot> spots = pad.map(PadLayout::spots).orElseGet(layout::spots);
    bellowsGiveBothWays(cups.get());
    List<SpotSize> sizes =
        SpotSize.of(
            spots,
            "is missing: effective diameter of each lip, or size of each oval one, here or for all"
                + " cups; for example \"50 mm\"",
            faults);
    boolean good = pullIsWhole(cups.get(), spots);
    List<Ledge> ledges =
        LedgeBuilder.build(
            grip,
            cups.get(),
            stiffness,
            spots.stream().map(PatchLayout.Spot::name).toList(),
            context);
    if (!good
        || spots.isEmpty()
        || sizes.isEmpty()
        || faults.count() > before
        || friction.isEmpty()
        || vacuum.isEmpty()) {
      return Optional.empty();
    }
    List<PatchLayout.Spot> on = layout.switchedOn(spots);
    List<Outline> outlines = new ArrayList<>();
    List<Cup> built = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      PatchLayout.Spot spot = spots.get(i);
      SpotSize size = sizes.get(i);
      outlines.add(Outline.oval(spot.name(), spot.at(), size.a(), size.b()));
      if (on.contains(spot)) {
        double pull = pull(cups.get(), spot, size, vacuum.getAsDouble());
        built.add(new Cup(spot.name(), spot.at(), size.a(), size.b(), pull, stiffness));
      }
    }
    Outline.refuseOverlaps(outlines, cups.get().place(), faults);
    return faults.count() > before
        ? Optional.empty()
        : Optional.of(
            new SuctionGrip(
                built,
                ledges,
                friction.getAsDouble(),
                context.damage("maxPressure"),
                pad.map(PadLayout::idle).orElse(0)));
  }

  /** Two thirds of the normal stiffness stand for a solid lip, not for folds. */
  private void bellowsGiveBothWays(Values cups) {
    boolean shear = cups.group("stiffness").filter(given -> given.isThere("shear")).isPresent();
    if (cups.text("form").equals(Optional.of(SuctionSpec.BELLOWS)) && !shear) {
      faults.add(
          cups.place("stiffness"),
          "needs normal and shear, as bellows give sideways far more than flat cups; measure both,"
              + " for example { \"normal\": \"3 N/mm\", \"shear\": \"0.8 N/mm\" }");
    }
  }

  private double pull(Values cups, PatchLayout.Spot spot, SpotSize size, double vacuum) {
    OptionalDouble sheet = spot.holder("pull").number("pull");
    OptionalDouble at = cups.number("pullAt");
    if (sheet.isPresent() && at.isPresent()) {
      double safety = grip.number("includesSafety").orElse(1);
      return sheet.getAsDouble() * safety * vacuum / at.getAsDouble();
    }
    // The ellipse in the two sides is the least area that an oval lip can have.
    return Cup.pull(vacuum, Math.sqrt(size.a() * size.b()), cups.number("areaRatio").orElse(1));
  }

  /** Whether what belongs to a data sheet's pull is all there, or not there at all. */
  private boolean pullIsWhole(Values cups, List<PatchLayout.Spot> spots) {
    int before = faults.count();
    boolean sheet =
        cups.isThere("pull") || cups.groups("list").stream().anyMatch(c -> c.isThere("pull"));
    if (sheet && !cups.isThere("pullAt")) {
      faults.add(
          cups.place("pullAt"),
          "is missing: the vacuum for which the data sheet states the pull; for example"
              + " \"60 kPa\"");
    }
    if (!sheet && cups.isThere("pullAt")) {
      faults.add(
          cups.place("pullAt"), "there is no pull that it belongs to; give \"pull\": \"70 N\" too");
    }
    if (cups.isThere("pull") && cups.isThere("areaRatio")) {
      faults.add(
          cups.place("areaRatio"), "the data sheet's pull counts already; keep pull or areaRatio");
    }
    if (!sheet && grip.isThere("includesSafety")) {
      faults.add(
          grip.place("includesSafety"),
          "there is no data sheet's pull that it belongs to, as the pull is computed from the"
              + " vacuum; take it out, or give cups/pull and cups/pullAt");
    }
    if (sheet) {
      notePull(cups, spots);
    }
    return faults.count() == before;
  }

  private void notePull(Values cups, List<PatchLayout.Spot> spots) {
    double safety = grip.number("includesSafety").orElse(1);
    if (cups.number("pull").isPresent()) {
      SafetyNote.add(context.notes(), cups, "pull", safety);
    }
    cups.groups("list").stream()
        .filter(c -> c.number("pull").isPresent())
        .limit(spots.size())
        .forEach(c -> SafetyNote.add(context.notes(), c, "pull", safety));
  }

  private OptionalDouble vacuum(Values supply) {
    String name = supply.isThere("vacuum") ? "vacuum" : "absolutePressure";
    OptionalDouble written = supply.number(name);
    boolean rated = supply.isThere("ratedAt");
    if (rated && name.equals("absolutePressure")) {
      faults.add(
          supply.place("ratedAt"),
          "belongs to vacuum; an absolute pressure is the same at any altitude: take it out");
      return OptionalDouble.empty();
    }
    if (written.isEmpty() || context.site().isEmpty()) {
      return OptionalDouble.empty();
    }
    OptionalDouble ratedAt = supply.number("ratedAt");
    if (rated && ratedAt.isEmpty()) {
      return OptionalDouble.empty();
    }
    return VacuumRule.here(
        supply, name, written.getAsDouble(), ratedAt, context.site().get(), context);
  }
}
