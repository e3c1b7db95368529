package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Two opposed jaws that close along y of the grip frame, whose origin is midway between them. With
 * a vee each jaw has two patches, its flanks, each pressed by {@code F/(2 sin(angle/2))}.
 *
 * @param opening distance between the pads' faces when closed on the part, m; with a vee the
 *     diameter of the bar
 * @param padShape a rectangle (face) or a line (round part in flat pads, flank of a vee)
 * @param padAlong grip-frame direction of the pads' patch x, square to y; with a vee that of the
 *     bar, x or z
 * @param vee groove of the pads, if they have one
 * @param mechanism how the jaws are driven
 * @param force per jaw, N
 * @param friction mu between pad and part, dimensionless
 * @param stiffness of each pad, {@code pad +y} first; with a vee of each flank
 * @param maxPressure permitted mean pressure on the part, Pa, infinite if none is given
 * @param maxPeakPressure permitted peak pressure on the part, Pa, infinite if none is given
 * @param ledges form fit, may be empty
 * @param guide of the jaws, if it is known
 */
public record JawGrip(
    double opening,
    PatchShape padShape,
    Vec3 padAlong,
    Optional<Vee> vee,
    Mechanism mechanism,
    double force,
    double friction,
    PatchStiffness stiffness,
    double maxPressure,
    double maxPeakPressure,
    List<Ledge> ledges,
    Optional<JawGuide> guide)
    implements GripModel {
  private static final List<Vec3> CLOSING = List.of(new Vec3(0, -1, 0), new Vec3(0, 1, 0));
  private static final List<String> NAMES = List.of("pad +y", "pad -y");
  private static final Vec3 X = new Vec3(1, 0, 0);
  private static final Vec3 Z = new Vec3(0, 0, 1);

  /** Copies the ledges; refuses an opening that is not positive and a vee that lies askew. */
  public JawGrip {
    ledges = List.copyOf(ledges);
    if (!(opening > 0) || !Double.isFinite(opening)) {
      throw new IllegalArgumentException("opening must be positive, but was " + opening);
    }
    if (vee.isPresent() && !padAlong.equals(X) && !padAlong.equals(Z)) {
      throw new IllegalArgumentException(
          "padAlong of a vee must be the x or z axis, but was " + padAlong);
    }
  }

  /** Jaws with flat pads, of whose guides nothing is known. */
  public JawGrip(
      double opening,
      PatchShape padShape,
      Vec3 padAlong,
      Mechanism mechanism,
      double force,
      double friction,
      PatchStiffness stiffness,
      double maxPressure,
      double maxPeakPressure,
      List<Ledge> ledges) {
    this(
        opening,
        padShape,
        padAlong,
        Optional.empty(),
        mechanism,
        force,
        friction,
        stiffness,
        maxPressure,
        maxPeakPressure,
        ledges,
        Optional.empty());
  }

  /**
   * Names of the pads' patches in their order.
   *
   * @param vee whether the pads have a groove
   * @param alongX whether the bar in it lies along x; along z if not
   */
  public static List<String> patchNames(boolean vee, boolean alongX) {
    if (!vee) {
      return NAMES;
    }
    String side = alongX ? "z" : "x";
    return NAMES.stream()
        .flatMap(pad -> List.of(pad + " flank +" + side, pad + " flank -" + side).stream())
        .toList();
  }

  @Override
  public String kind() {
    return "jaws";
  }

  @Override
  public List<ContactPatch> patches() {
    List<String> names = patchNames(vee.isPresent(), padAlong.equals(X));
    List<ContactPatch> patches = new ArrayList<>();
    for (Vec3 closing : CLOSING) {
      for (Vec3 normal : normals(closing)) {
        patches.add(
            new ContactPatch(
                names.get(patches.size()),
                new Pose(normal.times(-opening / 2), Quaternion.ofAxes(normal, padAlong)),
                padShape,
                friction,
                force * vee.map(Vee::flankPerForce).orElse(1.0),
                0,
                stiffness,
                maxPressure,
                maxPeakPressure,
                false));
      }
    }
    for (Ledge ledge : ledges) {
      patches.add(ledge.patch(friction, maxPressure, maxPeakPressure));
    }
    return List.copyOf(patches);
  }

  /** Directions in which one jaw presses on the part: one, or those of its two flanks. */
  private List<Vec3> normals(Vec3 closing) {
    Vec3 side = padAlong.equals(X) ? Z : X;
    return vee.map(v -> List.of(v.normal(closing, side), v.normal(closing, side.times(-1))))
        .orElse(List.of(closing));
  }

  /**
   * The patches of each jaw; both flanks of a vee move in the direction in which the jaw closes.
   */
  private List<Drive> jaws() {
    List<Drive> jaws = new ArrayList<>();
    for (int i = 0; i < CLOSING.size(); i++) {
      Vec3 closing = CLOSING.get(i);
      jaws.add(
          vee.isPresent()
              ? new Drive(List.of(2 * i, 2 * i + 1), List.of(closing, closing))
              : new Drive(List.of(i), List.of(closing)));
    }
    return jaws;
  }

  @Override
  public List<DesignInput> designInputs() {
    return List.of(
        DesignInput.force("force per jaw"), DesignInput.size("pad size"), DesignInput.friction());
  }

  @Override
  public List<Drive> drives() {
    return mechanism.drives(jaws());
  }

  @Override
  public List<Drive> closures() {
    return mechanism.closures(jaws());
  }

  @Override
  public List<Guide> guides() {
    if (guide.isEmpty()) {
      return List.of();
    }
    List<Drive> jaws = jaws();
    List<Guide> guides = new ArrayList<>();
    for (int i = 0; i < CLOSING.size(); i++) {
      Vec3 closing = CLOSING.get(i);
      Vec3 pad = closing.times(-opening / 2);
      guides.add(guide.get().of(NAMES.get(i), jaws.get(i).patches(), pad, closing));
    }
    return List.copyOf(guides);
  }
}
