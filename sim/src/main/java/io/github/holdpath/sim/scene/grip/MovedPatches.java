package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.grip.Drive;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.quantity.NearestName;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads drives and closures, which tie patches together by their names. */
final class MovedPatches {
  private final List<ContactPatch> patches;
  private final List<String> names;
  private final Faults faults;
  private final Set<String> taken = new HashSet<>();

  MovedPatches(List<ContactPatch> patches, Faults faults) {
    this.patches = patches;
    this.names = patches.stream().map(ContactPatch::name).toList();
    this.faults = faults;
  }

  /**
   * Reads one of the two lists.
   *
   * @param field {@code drives} or {@code closures}; a patch of the first cannot be in the second
   * @return those without fault
   */
  List<Drive> read(Values grip, String field) {
    List<Drive> list = new ArrayList<>();
    for (Values moved : grip.groups(field)) {
      int before = faults.count();
      List<String> wanted = moved.items("patches", String.class);
      List<Integer> indices = wanted.stream().map(n -> index(moved, n)).toList();
      if (faults.count() > before || indices.isEmpty()) {
        continue;
      }
      List<Vec3> directions = directions(moved, indices);
      if (faults.count() == before) {
        list.add(new Drive(indices, directions));
      }
    }
    return list;
  }

  private int index(Values moved, String name) {
    int index = names.indexOf(name);
    if (index < 0) {
      faults.add(
          moved.place("patches"),
          "there is no patch \""
              + name
              + "\"; "
              + NearestName.hint(name, names)
              + "patches: "
              + String.join("; ", names.subList(0, Math.min(12, names.size()))));
    } else if (patches.get(index).ledge()) {
      faults.add(
          moved.place("patches"),
          "\"" + name + "\" is a ledge, which nothing moves; take it out of this list");
    } else if (!taken.add(name)) {
      faults.add(
          moved.place("patches"),
          "\"" + name + "\" is moved already; name each patch once in all drives and closures");
    }
    return index;
  }

  private List<Vec3> directions(Values moved, List<Integer> indices) {
    List<Vec3> own = indices.stream().map(this::normal).toList();
    if (!moved.isThere("directions")) {
      return own;
    }
    List<Vec3> written = moved.items("directions", Vec3.class);
    if (written.size() != own.size()) {
      faults.add(
          moved.place("directions"),
          "there are "
              + written.size()
              + " directions for "
              + own.size()
              + " patches; give one for each, or leave the list out for their own normals");
      return own;
    }
    List<Vec3> units = written.stream().map(Vec3::unit).toList();
    for (int i = 0; i < units.size(); i++) {
      if (!(units.get(i).dot(own.get(i)) > 0)) {
        faults.add(
            moved.place("directions"),
            "\""
                + names.get(indices.get(i))
                + "\" would close out of the part; give the direction in which it presses on it");
      }
    }
    return units;
  }

  private Vec3 normal(int index) {
    return patches.get(index).pose().rotation().rotate(new Vec3(0, 0, 1));
  }
}
