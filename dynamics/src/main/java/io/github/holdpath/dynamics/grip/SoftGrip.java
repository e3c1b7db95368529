package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import java.util.ArrayList;
import java.util.List;

/**
 * Compliant fingers evenly spread on a circle about z of the grip frame, the first on +x, pressing
 * inward. A finger wraps round the part, so it touches in a face whatever the part's shape.
 *
 * @param count of the fingers, at least 2
 * @param diameter of the circle on which they press, m
 * @param sizeAcross side of the face that a finger presses, along the tangent, m
 * @param sizeAlong the other side, along z, m
 * @param mechanism how the fingers are driven
 * @param force per finger, N
 * @param maxForce the most that a finger may press on the part, N, infinite if it is not told
 * @param friction mu between finger and part, dimensionless
 * @param stiffness of each finger at its face
 * @param maxPressure permitted mean pressure on the part, Pa, infinite if none is given
 * @param maxPeakPressure permitted peak pressure on the part, Pa, infinite if none is given
 * @param ledges form fit, may be empty
 */
public record SoftGrip(
    int count,
    double diameter,
    double sizeAcross,
    double sizeAlong,
    Mechanism mechanism,
    double force,
    double maxForce,
    double friction,
    PatchStiffness stiffness,
    double maxPressure,
    double maxPeakPressure,
    List<Ledge> ledges)
    implements GripModel {
  /** Copies the ledges; refuses fewer than 2 fingers and a limit that is not positive. */
  public SoftGrip {
    ledges = List.copyOf(ledges);
    if (!(maxForce > 0)) {
      throw new IllegalArgumentException("maxForce must be positive, but was " + maxForce);
    }
    new Fingers(count, diameter, false);
  }

  private Fingers fingers() {
    return new Fingers(count, diameter, false);
  }

  @Override
  public String kind() {
    return "soft";
  }

  @Override
  public List<ContactPatch> patches() {
    PatchShape face = new PatchShape.Rectangle(sizeAcross, sizeAlong);
    // A patch limits its normal force by pressure: the lower of both limits counts.
    double pressure = Math.min(maxPressure, maxForce / face.area());
    Fingers fingers = fingers();
    List<ContactPatch> patches = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      patches.add(
          new ContactPatch(
              "finger " + (i + 1),
              fingers.pose(i, false),
              face,
              friction,
              force,
              0,
              stiffness,
              pressure,
              maxPeakPressure,
              false));
    }
    for (Ledge ledge : ledges) {
      patches.add(ledge.patch(friction, maxPressure, maxPeakPressure));
    }
    return List.copyOf(patches);
  }

  @Override
  public List<DesignInput> designInputs() {
    return List.of(
        DesignInput.force("force per finger"),
        DesignInput.size("finger face"),
        DesignInput.friction());
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
  public List<String> assumptions() {
    return List.of(
        "Soft fingers wrap round the part: each counts as an evenly pressed face of its stated"
            + " size, whatever the part's shape; measure the force at which a real part slips.");
  }
}
