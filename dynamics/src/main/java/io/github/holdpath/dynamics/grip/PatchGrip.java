package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.contact.ContactPatch;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Any set of contact patches written out one by one, for what the other kinds do not cover.
 *
 * @param patches form fit last, each with a name of its own
 * @param drives that act on the patches, may be empty
 * @param closures of fingers that lock, may be empty
 */
public record PatchGrip(List<ContactPatch> patches, List<Drive> drives, List<Drive> closures)
    implements GripModel {
  /** Copies the lists; refuses what the patches and drives say against each other. */
  public PatchGrip {
    patches = List.copyOf(patches);
    drives = List.copyOf(drives);
    closures = List.copyOf(closures);
    if (patches.isEmpty()) {
      throw new IllegalArgumentException("a grip needs at least one patch");
    }
    Set<String> names = new HashSet<>();
    boolean formFit = false;
    for (ContactPatch patch : patches) {
      if (!names.add(patch.name())) {
        throw new IllegalArgumentException("two patches are called " + patch.name());
      }
      if (formFit && !patch.ledge()) {
        throw new IllegalArgumentException("form fit comes last, but " + patch.name() + " follows");
      }
      formFit = patch.ledge();
    }
    Set<Integer> moved = new HashSet<>();
    for (List<Drive> list : List.of(drives, closures)) {
      for (Drive drive : list) {
        for (int i : drive.patches()) {
          checkMoved(patches, i, moved.add(i));
        }
      }
    }
  }

  private static void checkMoved(List<ContactPatch> patches, int i, boolean first) {
    if (i < 0 || i >= patches.size()) {
      throw new IllegalArgumentException("there is no patch " + i + " to move");
    }
    if (patches.get(i).ledge() || !first) {
      throw new IllegalArgumentException(
          patches.get(i).name() + (first ? " is form fit and cannot be moved" : " is moved twice"));
    }
  }

  @Override
  public List<DesignInput> designInputs() {
    return List.of(
        DesignInput.force("preload and pull"),
        DesignInput.size("patch size"),
        DesignInput.friction());
  }

  @Override
  public String kind() {
    return "patches";
  }
}
