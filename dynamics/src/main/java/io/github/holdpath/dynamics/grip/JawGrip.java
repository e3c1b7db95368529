package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * Two opposed jaws that close along y of the grip frame, whose origin is midway between them.
 *
 * @param opening distance between the pads' faces when closed on the part, m
 * @param padShape a rectangle (face) or a line (round part in flat pads)
 * @param padAlong grip-frame direction of the pads' patch x, square to y
 * @param mechanism how the jaws are driven
 * @param force per jaw, N
 * @param friction mu between pad and part, dimensionless
 * @param stiffness of each pad, {@code pad +y} first
 * @param maxPressure permitted mean pressure on the part, Pa, infinite if none is given
 * @param maxPeakPressure permitted peak pressure on the part, Pa, infinite if none is given
 * @param ledges form fit, may be empty
 */
public record JawGrip(
    double opening,
    PatchShape padShape,
    Vec3 padAlong,
    Mechanism mechanism,
    double force,
    double friction,
    PatchStiffness stiffness,
    double maxPressure,
    double maxPeakPressure,
    List<Ledge> ledges)
    implements GripModel {
  private static final List<Vec3> CLOSING = List.of(new Vec3(0, -1, 0), new Vec3(0, 1, 0));

  /** Copies the ledges; refuses an opening that is not positive. */
  public JawGrip {
    ledges = List.copyOf(ledges);
    if (!(opening > 0) || !Double.isFinite(opening)) {
      throw new IllegalArgumentException("opening must be positive, but was " + opening);
    }
  }

  @Override
  public String kind() {
    return "jaws";
  }

  @Override
  public List<ContactPatch> patches() {
    List<ContactPatch> patches = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      Vec3 closing = CLOSING.get(i);
      patches.add(
          new ContactPatch(
              i == 0 ? "pad +y" : "pad -y",
              new Pose(closing.times(-opening / 2), Quaternion.ofAxes(closing, padAlong)),
              padShape,
              friction,
              force,
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

  @Override
  public List<Drive> drives() {
    return switch (mechanism) {
      case SYNCHRONISED -> List.of(new Drive(List.of(0, 1), CLOSING));
      case INDEPENDENT ->
          List.of(
              new Drive(List.of(0), CLOSING.subList(0, 1)),
              new Drive(List.of(1), CLOSING.subList(1, 2)));
      case SELF_LOCKING -> List.of();
    };
  }

  @Override
  public List<Drive> closures() {
    return mechanism == Mechanism.SELF_LOCKING
        ? List.of(new Drive(List.of(0, 1), CLOSING))
        : List.of();
  }
}
