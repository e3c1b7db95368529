package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Three or more jaws evenly spread on a circle about z of the grip frame, the first on +x. They
 * press inward on a part between them, or outward in a hole.
 *
 * @param count of the jaws, at least 3
 * @param diameter of the circle on which the pads press, m
 * @param inside whether they press outward
 * @param padShape a rectangle (face) or a line (round part in flat pads)
 * @param padUpright whether patch x of the pads lies along z; along the tangent if not
 * @param mechanism how the jaws are driven
 * @param force per jaw that the drive gives at rest, N
 * @param spin rotation of the grip about its axis, if it spins
 * @param friction mu between pad and part, dimensionless
 * @param stiffness of each pad
 * @param maxPressure permitted mean pressure on the part, Pa, infinite if none is given
 * @param maxPeakPressure permitted peak pressure on the part, Pa, infinite if none is given
 * @param ledges form fit, may be empty
 * @param guide of the jaws, if it is known
 */
public record CentricGrip(
    int count,
    double diameter,
    boolean inside,
    PatchShape padShape,
    boolean padUpright,
    Mechanism mechanism,
    double force,
    Optional<Spin> spin,
    double friction,
    PatchStiffness stiffness,
    double maxPressure,
    double maxPeakPressure,
    List<Ledge> ledges,
    Optional<JawGuide> guide)
    implements GripModel {
  /** Copies the ledges; refuses fewer than 3 jaws and a grip that the spin opens. */
  public CentricGrip {
    ledges = List.copyOf(ledges);
    if (count < 3) {
      throw new IllegalArgumentException("a centric grip needs 3 jaws, but count was " + count);
    }
    double left = heldForce(force, inside, spin);
    if (!(left > 0)) {
      throw new IllegalArgumentException(
          "force must be left at speed, but of " + force + " N there is " + left);
    }
    new Fingers(count, diameter, inside);
  }

  /**
   * Force of each pad while the grip spins: the jaws are thrown outward, which takes from an inward
   * grip and adds to an outward one.
   *
   * @param force per jaw at rest, N
   * @param inside whether the jaws press outward
   * @param spin rotation, if it spins
   * @return N; not positive where the spin opens the grip
   */
  public static double heldForce(double force, boolean inside, Optional<Spin> spin) {
    double thrown = spin.map(Spin::outward).orElse(0.0);
    return inside ? force + thrown : force - thrown;
  }

  private Fingers fingers() {
    return new Fingers(count, diameter, inside);
  }

  @Override
  public String kind() {
    return "centric";
  }

  @Override
  public List<ContactPatch> patches() {
    Fingers fingers = fingers();
    double held = heldForce(force, inside, spin);
    List<ContactPatch> patches = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      patches.add(
          new ContactPatch(
              name(i),
              fingers.pose(i, padUpright),
              padShape,
              friction,
              held,
              0,
              stiffness,
              maxPressure,
              maxPeakPressure,
              false));
    }
    for (Ledge ledge : ledges) {
      patches.add(ledge.patch(friction, maxPressure, maxPeakPressure));
    }
    return List.copyOf(patches);
  }

  private static String name(int index) {
    return "pad " + (index + 1);
  }

  @Override
  public List<DesignInput> designInputs() {
    return List.of(
        DesignInput.force("force per jaw"), DesignInput.size("pad size"), DesignInput.friction());
  }

  @Override
  public List<Drive> drives() {
    return mechanism.drives(fingers().drives());
  }

  @Override
  public List<Drive> closures() {
    return mechanism.closures(fingers().drives());
  }

  @Override
  public List<Guide> guides() {
    Fingers fingers = fingers();
    return guide.stream()
        .flatMap(
            g ->
                IntStream.range(0, count)
                    .mapToObj(i -> g.of(name(i), List.of(i), fingers.place(i), fingers.closing(i))))
        .toList();
  }

  @Override
  public List<String> assumptions() {
    return spin.map(s -> List.of(spinning(s))).orElse(List.of());
  }

  private String spinning(Spin s) {
    return String.format(
        Locale.ROOT,
        inside
            ? "The jaws press with %.1f N each at speed, %.1f N of it because they are thrown"
                + " outward: check without grip/spin too, for the time before it spins."
            : "The jaws press with %.1f N each at speed, %.1f N less than at rest; what the spin"
                + " does to an unbalanced part is not looked at.",
        heldForce(force, inside, spin),
        s.outward());
  }
}
