package io.github.holdpath.viewer.shot;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.study.Playback;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.viewer.mesh.MeshData;
import io.github.holdpath.viewer.state.Item;
import io.github.holdpath.viewer.state.Layer;
import io.github.holdpath.viewer.state.Show;
import io.github.holdpath.viewer.state.Stage;
import java.util.ArrayList;
import java.util.List;

/**
 * A job to make pictures of.
 *
 * @param stage what is shown
 * @param name to tell it from another beside it
 */
public record Take(Stage stage, String name) {
  /** Of a result. */
  public static Take of(StudyResult result, String name) {
    return new Take(Stage.of(result), name);
  }

  /** The same with the part leaving the grip at an instant, s. */
  public Take withDropAt(double time) {
    return new Take(stage.withDropAt(time), name);
  }

  /** Length of its motion, s. */
  public double duration() {
    return stage.playback().duration();
  }

  /**
   * Points that must be seen: those of the stage, and all that moves at some instants, s; without
   * any at the tightest.
   */
  List<Vec3> fit(Show show, List<Double> times) {
    List<Vec3> points = new ArrayList<>(stage.fit(show));
    for (double t : times.isEmpty() ? List.of(stage.worst().time()) : times) {
      Playback.Instant now = stage.playback().at(t);
      if (show.robot()) {
        points.addAll(stage.robotReach(now));
      }
      for (Item item : stage.at(now, show.withRobot(false))) {
        if (item instanceof Item.Body body
            && (body.layer() == Layer.MACHINE || body.layer() == Layer.PART)) {
          corners(body.mesh()).forEach(p -> points.add(body.pose().apply(p)));
        }
      }
    }
    return points;
  }

  /** Corners of the box about a mesh, its own frame, m. */
  private static List<Vec3> corners(MeshData mesh) {
    double[] p = mesh.positions();
    if (p.length == 0) {
      return List.of();
    }
    double[] least = {p[0], p[1], p[2]};
    double[] most = least.clone();
    for (int i = 0; i < p.length; i++) {
      least[i % 3] = Math.min(least[i % 3], p[i]);
      most[i % 3] = Math.max(most[i % 3], p[i]);
    }
    List<Vec3> corners = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      corners.add(
          new Vec3(
              (i & 1) == 0 ? least[0] : most[0],
              (i & 2) == 0 ? least[1] : most[1],
              (i & 4) == 0 ? least[2] : most[2]));
    }
    return corners;
  }
}
