package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.Drive;
import io.github.holdpath.dynamics.grip.Ledge;
import io.github.holdpath.dynamics.grip.PatchGrip;
import io.github.holdpath.dynamics.grip.PreloadBalance;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.quantity.Amount;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Builds grips that are written out patch by patch. */
final class PatchesBuilder {
  private final Values grip;
  private final GripContext context;
  private final Faults faults;

  private PatchesBuilder(Values grip, GripContext context) {
    this.grip = grip;
    this.context = context;
    this.faults = context.faults();
  }

  /**
   * Builds the grip.
   *
   * @return empty if faults were noted
   */
  static Optional<PatchGrip> build(Values grip, GripContext context) {
    return new PatchesBuilder(grip, context).build();
  }

  private Optional<PatchGrip> build() {
    int before = faults.count();
    OptionalDouble friction = FrictionInput.read(grip, context);
    PatchStiffness common = LedgeBuilder.stiffness(grip, context.notes());
    List<Values> written = grip.groups("patches");
    stiffnessIsAllOrNone(written);
    peakNeedsRectangles(written);
    List<ContactPatch> patches = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (Values patch : written) {
      nameIsItsOwn(patch, names);
      patch(patch, friction, common).ifPresent(patches::add);
    }
    // With a faulty patch left out, neither the balance nor the names in drives can be judged.
    if (faults.count() > before || friction.isEmpty() || patches.size() < count()) {
      return Optional.empty();
    }
    patches.sort(Comparator.comparing(ContactPatch::ledge));
    MovedPatches moved = new MovedPatches(patches, faults);
    List<Drive> drives = moved.read(grip, "drives");
    List<Drive> closures = moved.read(grip, "closures");
    holdsByItself(patches);
    return faults.count() > before
        ? Optional.empty()
        : Optional.of(new PatchGrip(patches, drives, closures));
  }

  /** Items of the list, faulty or not; more than any list has where it is no list. */
  private int count() {
    return grip.isFaulty("patches")
            || !(grip.node("patches").orElse(null) instanceof JsonNode.Items list)
        ? Integer.MAX_VALUE
        : list.items().size();
  }

  private void nameIsItsOwn(Values patch, Set<String> names) {
    Optional<String> name = patch.text("name");
    if (name.isPresent() && !names.add(name.get())) {
      faults.add(
          patch.place("name"),
          "another patch is called \"" + name.get() + "\" already; give each its own name");
    }
  }

  private Optional<ContactPatch> patch(
      Values v, OptionalDouble gripFriction, PatchStiffness common) {
    Optional<Vec3> at = v.vector("at");
    Optional<Quaternion> rotation = rotation(v);
    Optional<PatchShape> shape = shape(v);
    boolean ledge = v.value("ledge", Boolean.class).orElse(false);
    int before = faults.count();
    ledgeOnlyPushes(v, ledge);
    double limit = v.number("maxPressure").orElse(context.damage("maxPressure"));
    OptionalDouble friction = v.isThere("friction") ? FrictionInput.read(v, context) : gripFriction;
    PatchStiffness stiffness =
        v.isThere("stiffness") ? LedgeBuilder.stiffness(v, context.notes()) : common;
    context.notes().add(v, "preload", Scene.Origin.NOT_STATED);
    context.notes().add(v, "pull", Scene.Origin.NOT_STATED);
    double pull = v.number("pull").orElse(0);
    if (faults.count() > before
        || v.spec().names().stream().anyMatch(v::isFaulty)
        || v.text("name").isEmpty()
        || at.isEmpty()
        || rotation.isEmpty()
        || shape.isEmpty()
        || friction.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new ContactPatch(
            v.text("name").get(),
            new Pose(at.get(), rotation.get()),
            shape.get(),
            friction.getAsDouble(),
            v.number("preload").orElse(pull),
            pull,
            stiffness,
            limit,
            shape.get() instanceof PatchShape.Rectangle
                ? context.damage("maxPeakPressure")
                : Double.POSITIVE_INFINITY,
            ledge));
  }

  private static Optional<Quaternion> rotation(Values v) {
    return v.isThere("rpy")
        ? v.amount("rpy").map(a -> Quaternion.ofRpy(a.get(0), a.get(1), a.get(2)))
        : v.vector("normal").map(Ledge::facing);
  }

  private Optional<PatchShape> shape(Values v) {
    Optional<String> word = v.text("shape");
    Optional<Amount> size = v.amount("size");
    if (word.isEmpty() || size.isEmpty()) {
      return Optional.empty();
    }
    if (word.get().equals(PatchesSpec.LINE) && v.isThere("maxPressure")) {
      faults.add(
          v.place("maxPressure"),
          "a line has no area, so its pressure is not judged; take it out, or give a rectangle");
    }
    int due = word.get().equals(PatchesSpec.RECTANGLE) ? 2 : 1;
    int given = size.get().values().size();
    if (given != due) {
      faults.add(v.place("size"), sizeFault(word.get(), given));
      return Optional.empty();
    }
    double a = size.get().first();
    return Optional.of(
        switch (word.get()) {
          case PatchesSpec.RING -> new PatchShape.Ring(a / 2);
          case PatchesSpec.DISC -> new PatchShape.Disc(a / 2);
          case PatchesSpec.LINE -> new PatchShape.Line(a);
          default -> new PatchShape.Rectangle(a, size.get().get(1));
        });
  }

  private static String sizeFault(String shape, int given) {
    String has = given == 1 ? "has one length, but a " : "has two lengths, but a ";
    return has
        + shape
        + switch (shape) {
          case PatchesSpec.RECTANGLE -> " needs its two sides; for example \"30 15 mm\"";
          case PatchesSpec.LINE -> " needs its length alone; for example \"30 mm\"";
          default -> " needs its diameter alone; for example \"40 mm\"";
        };
  }

  private void ledgeOnlyPushes(Values v, boolean ledge) {
    for (String name : List.of("preload", "pull")) {
      if (ledge && v.number(name).orElse(0) > 0) {
        faults.add(
            v.place(name),
            "a ledge only stands in the way, it neither presses nor pulls by itself; take it out,"
                + " or write \"ledge\": false");
      }
    }
  }

  /** Shares need the ratios of all stiffnesses, so that one alone cannot be used. */
  private void stiffnessIsAllOrNone(List<Values> written) {
    if (grip.isThere("stiffness") || written.stream().noneMatch(p -> p.isThere("stiffness"))) {
      return;
    }
    for (Values patch : written) {
      if (!patch.isThere("stiffness")) {
        faults.add(
            patch.place("stiffness"),
            "is missing: other patches have one, and a load is shared by comparing them; give it"
                + " here, for all in grip/stiffness, or nowhere");
      }
    }
  }

  private void peakNeedsRectangles(List<Values> written) {
    boolean rectangle =
        written.stream().anyMatch(p -> p.text("shape").equals(Optional.of(PatchesSpec.RECTANGLE)));
    if (!rectangle) {
      context
          .part()
          .flatMap(p -> p.group("damage"))
          .filter(d -> d.isThere("maxPeakPressure"))
          .ifPresent(
              d ->
                  faults.add(
                      d.place("maxPeakPressure"),
                      "is judged at the edge of rectangles, of which this grip has none; write"
                          + " maxPressure"));
    }
  }

  private void holdsByItself(List<ContactPatch> patches) {
    if (patches.stream().filter(ContactPatch::ledge).count() > HoldModel.MOST_LEDGES) {
      faults.add(
          grip.place("patches"),
          "more than "
              + HoldModel.MOST_LEDGES
              + " ledges cannot be judged together; keep those that carry most");
    }
    if (patches.stream().noneMatch(p -> p.preload() > 0)) {
      faults.add(
          grip.place("patches"),
          "nothing presses on the part, so that nothing holds it; give preload or pull, for example"
              + " \"preload\": \"200 N\"");
    }
    Optional<Wrench> rest = PreloadBalance.rest(patches);
    rest.ifPresent(w -> faults.add(grip.place("patches"), unbalanced(w)));
  }

  private static String unbalanced(Wrench w) {
    return "preload and pull do not balance by themselves: "
        + (float) w.force().norm()
        + " N"
        + along(" along ", w.force())
        + " and "
        + (float) w.moment().norm()
        + " N m"
        + along(" about ", w.moment())
        + " of the grip frame are left over; give preloads that press against each other, or as"
        + " much pull as preload";
  }

  private static String along(String word, Vec3 v) {
    if (v.norm() == 0) {
      return "";
    }
    Vec3 u = v.unit();
    // Adding zero takes the sign off a negative zero.
    return String.format(
        Locale.ROOT, "%s(%.3f %.3f %.3f)", word, u.x() + 0.0, u.y() + 0.0, u.z() + 0.0);
  }
}
