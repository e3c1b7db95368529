package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.Ledge;
import io.github.holdpath.dynamics.grip.MagnetFace;
import io.github.holdpath.dynamics.grip.MagnetGrip;
import io.github.holdpath.dynamics.grip.MagnetType;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.surface.Materials;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Builds magnet grips. */
final class MagnetBuilder {
  private final Values grip;
  private final GripContext context;
  private final Faults faults;

  private MagnetBuilder(Values grip, GripContext context) {
    this.grip = grip;
    this.context = context;
    this.faults = context.faults();
  }

  /**
   * Builds the grip.
   *
   * @return empty if faults were noted
   */
  static Optional<MagnetGrip> build(Values grip, GripContext context) {
    return new MagnetBuilder(grip, context).build();
  }

  private Optional<MagnetGrip> build() {
    int before = faults.count();
    OptionalDouble friction = FrictionInput.read(grip, context);
    partIsHeldByMagnets();
    context.peakIsForJaws("magnets");
    Optional<MagnetType> type =
        grip.text("type")
            .flatMap(
                t -> Stream.of(MagnetType.values()).filter(m -> m.label().equals(t)).findFirst());
    Optional<Values> faces = grip.group("faces");
    if (faces.isEmpty()) {
      return Optional.empty();
    }
    PatchStiffness stiffness = LedgeBuilder.stiffness(faces.get(), context.notes());
    PatchLayout layout = new PatchLayout(faces.get(), "face", faults);
    List<PatchLayout.Spot> spots = layout.spots();
    List<SpotSize> sizes =
        SpotSize.of(
            spots,
            "is missing: diameter of each round face, or size of each rectangular one, here or for"
                + " all faces; for example \"50 mm\"",
            faults);
    double safety = grip.number("includesSafety").orElse(1);
    List<Double> pulls = new MagnetPull(faces.get(), safety, context).of(spots);
    List<Ledge> ledges =
        LedgeBuilder.build(
            grip,
            faces.get(),
            stiffness,
            spots.stream().map(PatchLayout.Spot::name).toList(),
            context);
    if (faults.count() > before
        || friction.isEmpty()
        || type.isEmpty()
        || spots.isEmpty()
        || sizes.isEmpty()
        || pulls.isEmpty()) {
      return Optional.empty();
    }
    List<Outline> outlines = new ArrayList<>();
    List<PatchLayout.Spot> on = layout.switchedOn(spots);
    List<MagnetFace> built = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      PatchLayout.Spot spot = spots.get(i);
      outlines.add(outline(spot, sizes.get(i)));
      if (on.contains(spot)) {
        built.add(
            new MagnetFace(spot.name(), spot.at(), shape(sizes.get(i)), pulls.get(i), stiffness));
      }
    }
    Outline.refuseOverlaps(outlines, faces.get().place(), faults);
    return faults.count() > before
        ? Optional.empty()
        : Optional.of(
            new MagnetGrip(
                built, type.get(), ledges, friction.getAsDouble(), context.damage("maxPressure")));
  }

  private static Outline outline(PatchLayout.Spot spot, SpotSize size) {
    return size.round()
        ? Outline.circle(spot.name(), spot.at(), size.a())
        : Outline.rectangle(spot.name(), spot.at(), size.a(), size.b());
  }

  private static PatchShape shape(SpotSize size) {
    return size.round()
        ? new PatchShape.Disc(size.a() / 2)
        : new PatchShape.Rectangle(size.a(), size.b());
  }

  /** A material that no magnet holds is refused; one that the words do not settle is shown. */
  private void partIsHeldByMagnets() {
    if (context.part().isEmpty()) {
      return;
    }
    Values part = context.part().get();
    String material = part.text("material").orElse("");
    Optional<Boolean> held = Materials.load().magnetic(material);
    if (held.isEmpty()) {
      context
          .notes()
          .add(
              part,
              "material",
              (material.isEmpty() ? "not stated" : material) + ", taken as ferromagnetic",
              Scene.Origin.ASSUMED);
    } else if (!held.get()) {
      faults.add(
          part.place("material"),
          "no magnet holds \""
              + material
              + "\", which is not ferromagnetic; take suction or jaws, or write the material of the"
              + " wall under the faces, for example \"steel\"");
    }
  }
}
