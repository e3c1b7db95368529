package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;
import java.util.function.BiFunction;

/**
 * One number that a designer of the grip may choose, and what it does to the contacts.
 *
 * @param label in the trade's words, as {@code "vacuum"}
 * @param effect a patch when the number is {@code factor} times what it is; ledges are left alone
 */
public record DesignInput(String label, BiFunction<ContactPatch, Double, ContactPatch> effect) {
  /** Press and pull of all patches. */
  static DesignInput force(String label) {
    return new DesignInput(label, (p, f) -> p.withForces(f * p.preload(), f * p.pull()));
  }

  /** Size of all patches, forces kept. */
  static DesignInput size(String label) {
    return new DesignInput(label, (p, f) -> p.withShape(p.shape().scaled(f)));
  }

  /** Size of all patches whose pull comes of a pressure on their area. */
  static DesignInput sizeAtPressure(String label) {
    return new DesignInput(
        label,
        (p, f) ->
            p.withShape(p.shape().scaled(f)).withForces(f * f * p.preload(), f * f * p.pull()));
  }

  /** Friction of all patches. */
  static DesignInput friction() {
    return new DesignInput("friction", (p, f) -> p.withFriction(f * p.friction()));
  }

  /** Distances of patches in the plane z = 0 from the origin. */
  static DesignInput spacing(String label) {
    return new DesignInput(
        label,
        (p, f) -> {
          Vec3 at = p.pose().position();
          return p.withPose(
              new Pose(new Vec3(f * at.x(), f * at.y(), at.z()), p.pose().rotation()));
        });
  }

  /** All patches when the number is {@code factor} times what it is. */
  public List<ContactPatch> on(List<ContactPatch> patches, double factor) {
    return patches.stream().map(p -> p.ledge() ? p : effect.apply(p, factor)).toList();
  }
}
