package io.github.holdpath.sim.scene.read;

import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.PartShape;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.FieldSpec;
import io.github.holdpath.sim.scene.field.InputNotes;
import io.github.holdpath.sim.scene.field.RoundType;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.quantity.Amount;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Builds the part. */
final class PartBuilder {
  private static final List<String> SHAPES = List.of("box", "cylinder", "tube", "sphere");

  private final Values part;
  private final Faults faults;

  PartBuilder(Values part, Faults faults) {
    this.part = part;
    this.faults = faults;
  }

  /**
   * Builds the part.
   *
   * @param shape as built by {@link #shape}
   * @param site surroundings
   * @param between whether the part is held between fingers, so that its shape is centred on the
   *     grip
   * @param notes takes values whose origin the result names
   * @return empty if faults were noted
   */
  Optional<Scene.Part> build(
      Optional<PartShape> shape, Optional<Scene.Site> site, boolean between, InputNotes notes) {
    for (String name : List.of("mass", "centreOfMass", "inertia")) {
      notes.add(part, name, Scene.Origin.NOT_STATED);
    }
    OptionalDouble mass = part.number("mass");
    Optional<Vec3> centre = part.vector("centreOfMass");
    Optional<Inertia> inertia = inertia(shape, mass);
    Optional<AirLoad> air = air(site);
    if (part.isThere("shapeAt") && SHAPES.stream().noneMatch(part::isThere)) {
      faults.add(
          part.place("shapeAt"),
          "there is no shape to place; give one, for example \"box\": \"400 300 260 mm\"");
    }
    if (mass.isEmpty() || centre.isEmpty() || inertia.isEmpty() || air.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Scene.Part(
            part.text("name").orElse("part"),
            new MassProperties(mass.getAsDouble(), centre.get(), inertia.get()),
            air.get(),
            shape,
            part.vector("shapeAt").orElseGet(() -> middle(shape, centre.get(), between)),
            part.text("material").orElse("")));
  }

  private static Vec3 middle(Optional<PartShape> shape, Vec3 centreOfMass, boolean between) {
    if (shape.isEmpty()) {
      return centreOfMass;
    }
    return between ? Vec3.ZERO : new Vec3(0, 0, shape.get().extent().z() / 2);
  }

  /** The shape, if the file gives one without fault. */
  Optional<PartShape> shape() {
    List<String> given = SHAPES.stream().filter(part::isThere).toList();
    if (given.size() > 1) {
      faults.add(
          part.place(given.get(1)),
          "only one shape may be given; keep one of " + String.join(", ", given));
      return Optional.empty();
    }
    Optional<PartShape> box = part.vector("box").map(PartShape.Box::new);
    Optional<PartShape> sphere = part.amount("sphere").map(a -> new PartShape.Sphere(a.first()));
    return box.or(() -> sphere).or(this::cylinder).or(this::tube);
  }

  private Optional<PartShape> cylinder() {
    return part.value("cylinder", RoundType.Size.class)
        .map(s -> new PartShape.Cylinder(s.lengths().get(0), 0, s.lengths().get(1), s.axis()));
  }

  private Optional<PartShape> tube() {
    Optional<RoundType.Size> size = part.value("tube", RoundType.Size.class);
    if (size.isPresent() && size.get().lengths().get(1) >= size.get().lengths().get(0)) {
      faults.add(
          part.place("tube"),
          "the inner diameter must be below the outer one; write outer, inner, length and axis, for"
              + " example \"120 30 40 mm z\"");
      return Optional.empty();
    }
    return size.map(
        s ->
            new PartShape.Cylinder(
                s.lengths().get(0), s.lengths().get(1), s.lengths().get(2), s.axis()));
  }

  private Optional<Inertia> inertia(Optional<PartShape> shape, OptionalDouble mass) {
    Optional<Amount> six = part.amount("inertia");
    if (six.isPresent()) {
      return inertia(part, six.get(), faults);
    }
    Optional<String> word = part.text("inertia");
    if (word.isEmpty()) {
      return Optional.empty();
    }
    String wanted = word.get().substring("uniform ".length());
    if (!part.isThere(wanted)) {
      List<String> given = SHAPES.stream().filter(part::isThere).toList();
      faults.add(
          part.place("inertia"),
          given.isEmpty()
              ? "there is no "
                  + wanted
                  + " to compute it from; give one, or six numbers such as"
                  + " \"0.1 0.1 0.1 0 0 0 kg*m^2\""
              : "the shape is a "
                  + given.get(0)
                  + ", not a "
                  + wanted
                  + "; write \"uniform "
                  + given.get(0)
                  + "\"");
      return Optional.empty();
    }
    return shape.isPresent() && mass.isPresent()
        ? Optional.of(shape.get().inertia(mass.getAsDouble()))
        : Optional.empty();
  }

  /**
   * An inertia written out as six numbers in the field {@code inertia}.
   *
   * @return empty if no body can have it, which is noted
   */
  static Optional<Inertia> inertia(Values owner, Amount six, Faults faults) {
    Inertia inertia =
        new Inertia(six.get(0), six.get(1), six.get(2), six.get(3), six.get(4), six.get(5));
    String wrong = inertia.fault();
    if (wrong.isEmpty()) {
      return Optional.of(inertia);
    }
    faults.add(
        owner.place("inertia"),
        "no body has this inertia, which "
            + wrong
            + "; write xx yy zz xy xz yz about the centre of mass, for example"
            + " \"0.12 0.18 0.2 0 0 0 kg*m^2\"");
    return Optional.empty();
  }

  private Optional<AirLoad> air(Optional<Scene.Site> site) {
    if (!part.isThere("drag")) {
      return Optional.of(AirLoad.NONE);
    }
    Optional<Values> given = part.group("drag");
    if (given.isEmpty()) {
      return Optional.empty();
    }
    Values drag = given.get();
    int before = faults.count();
    together(drag, "area", "coefficient");
    together(drag, "coefficient", "area");
    double added = drag.number("addedMass").orElse(0);
    if (added > 0 && !drag.isThere("normal")) {
      faults.add(
          drag.place("normal"),
          "is missing: the added mass acts along the normal of the flat part; for example"
              + " \"0 0 1\"");
    }
    if (faults.count() > before || site.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new AirLoad(
            site.get().airDensity(),
            drag.number("area").orElse(0) * drag.number("coefficient").orElse(0),
            added,
            drag.vector("normal").orElse(AirLoad.NONE.normal())));
  }

  private void together(Values drag, String one, String other) {
    if (drag.isThere(one) && !drag.isThere(other)) {
      FieldSpec field = drag.spec().field(other).orElseThrow();
      faults.add(drag.place(other), "is missing: " + one + " works only with it; " + field.right());
    }
  }
}
