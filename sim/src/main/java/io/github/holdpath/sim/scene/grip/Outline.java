package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import java.util.List;
import java.util.Locale;

/**
 * Outline of a cup or face in the plane z = 0: a box with its sides along x and y, grown by a
 * radius all round. So a circle is a point that is grown, an oval a line, a rectangle is not grown.
 *
 * @param name of the cup or face
 * @param at its middle, grip frame, m
 * @param halfX half of the box along x, m
 * @param halfY half of the box along y, m
 * @param radius by which it is grown, m
 */
record Outline(String name, Vec3 at, double halfX, double halfY, double radius) {
  private static final double TOLERANCE = 1e-6;
  private static final int SHOWN = 3;

  static Outline circle(String name, Vec3 at, double diameter) {
    return new Outline(name, at, 0, 0, diameter / 2);
  }

  /** Two half circles with straight sides between. */
  static Outline oval(String name, Vec3 at, double a, double b) {
    double r = Math.min(a, b) / 2;
    return new Outline(name, at, a / 2 - r, b / 2 - r, r);
  }

  static Outline rectangle(String name, Vec3 at, double a, double b) {
    return new Outline(name, at, a / 2, b / 2, 0);
  }

  /** By how much one must move for the two to touch only, m; 0 or less if they are apart. */
  double overlap(Outline o) {
    double x = Math.abs(at.x() - o.at.x()) - halfX - o.halfX;
    double y = Math.abs(at.y() - o.at.y()) - halfY - o.halfY;
    double apart = x > 0 || y > 0 ? Math.hypot(Math.max(0, x), Math.max(0, y)) : Math.max(x, y);
    return radius + o.radius - apart;
  }

  /** Notes one fault that names the pairs that overlap, the first few of many. */
  static void refuseOverlaps(List<Outline> outlines, JsonNode.Place place, Faults faults) {
    StringBuilder pairs = new StringBuilder();
    int count = 0;
    for (int i = 0; i < outlines.size(); i++) {
      for (int j = i + 1; j < outlines.size(); j++) {
        double overlap = outlines.get(i).overlap(outlines.get(j));
        if (overlap > TOLERANCE && ++count <= SHOWN) {
          pairs.append(
              String.format(
                  Locale.ROOT,
                  "%s\"%s\" and \"%s\" by %.1f mm",
                  count > 1 ? ", " : "",
                  outlines.get(i).name(),
                  outlines.get(j).name(),
                  1000 * overlap));
        }
      }
    }
    if (count > 0) {
      faults.add(
          place,
          "these overlap: "
              + pairs
              + (count > SHOWN ? " and " + (count - SHOWN) + " more pairs" : "")
              + "; put them further apart or take smaller ones");
    }
  }
}
