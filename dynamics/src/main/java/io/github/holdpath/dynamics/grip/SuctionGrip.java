package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import java.util.ArrayList;
import java.util.List;

/**
 * Suction cups in the plane z = 0 of the grip frame, with form-fit ledges if there are any.
 *
 * @param cups those that pull, at least one
 * @param ledges form fit, may be empty
 * @param friction mu between lip and part, dimensionless
 * @param maxPressure permitted mean pressure on the part, Pa, infinite if none is given
 * @param idleCells cells of an area pad that lie off the part and do not pull
 */
public record SuctionGrip(
    List<Cup> cups, List<Ledge> ledges, double friction, double maxPressure, int idleCells)
    implements GripModel {
  /** A grip whose cups all pull. */
  public SuctionGrip(List<Cup> cups, List<Ledge> ledges, double friction, double maxPressure) {
    this(cups, ledges, friction, maxPressure, 0);
  }

  /** Copies the lists; refuses a grip without cups. */
  public SuctionGrip {
    cups = List.copyOf(cups);
    ledges = List.copyOf(ledges);
    if (cups.isEmpty()) {
      throw new IllegalArgumentException("a suction grip needs at least one cup");
    }
  }

  @Override
  public String kind() {
    return "suction";
  }

  @Override
  public List<ContactPatch> patches() {
    List<ContactPatch> patches = new ArrayList<>();
    for (Cup cup : cups) {
      patches.add(
          new ContactPatch(
              cup.name(),
              new Pose(cup.position(), Quaternion.IDENTITY),
              new PatchShape.Ring(cup.diameter() / 2),
              friction,
              cup.pull(),
              cup.pull(),
              cup.stiffness(),
              maxPressure,
              Double.POSITIVE_INFINITY,
              false));
    }
    for (Ledge ledge : ledges) {
      patches.add(ledge.patch(friction, maxPressure, Double.POSITIVE_INFINITY));
    }
    return List.copyOf(patches);
  }

  @Override
  public List<DesignInput> designInputs() {
    return List.of(
        DesignInput.force("vacuum"),
        DesignInput.sizeAtPressure("cup diameter at this vacuum"),
        DesignInput.spacing("spacing of the cups"),
        DesignInput.friction());
  }

  @Override
  public List<Drive> drives() {
    return List.of();
  }
}
