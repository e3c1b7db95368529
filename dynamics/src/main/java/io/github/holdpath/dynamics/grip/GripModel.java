package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import java.util.List;

/**
 * A kind of grip: whatever its trade inputs, it yields contact patches in the grip frame and the
 * drives that tie their normal forces together. All later steps see these two alone.
 */
public sealed interface GripModel
    permits SuctionGrip, JawGrip, CentricGrip, SoftGrip, MagnetGrip, PatchGrip {
  /** Name of the kind in scene files and texts. */
  String kind();

  /** Contact patches in the order in which they are named to the user. */
  List<ContactPatch> patches();

  /** Drives that act on the patches; empty where nothing moves. */
  List<Drive> drives();

  /**
   * Whether the stiffness of its cups, pads or faces is known in N/m. Where it is not, all count as
   * alike: that settles the shares, but not how the part swings.
   */
  default boolean stiffnessKnown() {
    return patches().stream()
        .noneMatch(p -> !p.ledge() && p.stiffness().equals(PatchStiffness.ALIKE));
  }

  /**
   * Closures of self-locking fingers: each keeps its travel, so that the closing forces per
   * stiffness keep their sum. Empty where nothing locks; used by the whole-grip factor alone.
   */
  default List<Drive> closures() {
    return List.of();
  }

  /** Guides of the jaws; empty where nothing is told of them. */
  default List<Guide> guides() {
    return List.of();
  }

  /** What a designer may choose about it, forces first. */
  List<DesignInput> designInputs();

  /** What this kind of grip takes for granted, a sentence each for the user; may be empty. */
  default List<String> assumptions() {
    return List.of();
  }
}
