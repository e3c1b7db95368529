package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.study.Drop;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.mesh.MeshData;
import io.github.holdpath.viewer.mesh.Shafts;
import java.util.ArrayList;
import java.util.List;

/**
 * The flight of a part that has left the grip, as drawn: a beaded line of its centre.
 *
 * @param drop as computed
 * @param beads of the centre's flight
 */
public record Flight(Drop drop, MeshData beads) {
  /** Beads at most. */
  private static final int MOST = 60;

  /** Between beads, in their radii. */
  private static final double PITCH = 5;

  static Flight of(Drop drop, double radius) {
    List<Vec3> centres = centres(drop, 200);
    double length = 0;
    for (int i = 1; i < centres.size(); i++) {
      length += centres.get(i).minus(centres.get(i - 1)).norm();
    }
    int count = (int) Math.max(2, Math.min(MOST, length / (PITCH * radius)));
    List<MeshData> beads = new ArrayList<>();
    for (Vec3 at : centres(drop, count)) {
      Vec3 half = new Vec3(0, 0, 1e-3 * radius);
      beads.add(Shafts.round(at.minus(half), at.plus(half), radius, true, Tones.FLIGHT));
    }
    return new Flight(drop, MeshData.joined(beads));
  }

  private static List<Vec3> centres(Drop drop, int count) {
    List<Vec3> all = new ArrayList<>();
    for (int i = 0; i <= count; i++) {
      all.add(drop.centre(drop.leaves() + (drop.lands() - drop.leaves()) * i / count));
    }
    return all;
  }

  /** Places along it that a view must show. */
  List<Vec3> reach() {
    return centres(drop, 8);
  }

  Item item() {
    return new Item.Body(beads, Pose.IDENTITY, Layer.FORCE, Item.Body.WHITE, 1, false);
  }
}
