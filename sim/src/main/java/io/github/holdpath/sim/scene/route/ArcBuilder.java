package io.github.holdpath.sim.scene.route;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.route.MoveShape;
import io.github.holdpath.sim.path.ArcPath;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import java.util.List;
import java.util.Optional;

/** Builds arcs: through a point, or about a centre. */
final class ArcBuilder {
  private final Values arc;
  private final Faults faults;

  ArcBuilder(Values arc, Faults faults) {
    this.arc = arc;
    this.faults = faults;
  }

  /** An arc: its shape, the pose at its end, and the length of its way, m. */
  record Arc(MoveShape shape, Pose end, double length) {}

  /**
   * Builds an arc.
   *
   * @param from where it begins
   * @return empty if faults were noted
   */
  Optional<Arc> build(Pose from) {
    int before = faults.count();
    boolean through = arc.isThere("via");
    if (through == arc.isThere("centre")) {
      return Optional.empty(); // noted where the fields were read
    }
    allowed(
        through ? List.of("at") : List.of("axis", "angle"),
        through ? List.of("axis", "angle") : List.of("at"),
        through ? "via" : "centre");
    Optional<Quaternion> rotation = PoseBuilder.rotation(arc, from.rotation(), faults);
    if (faults.count() > before || rotation.isEmpty()) {
      return Optional.empty();
    }
    return through ? through(from, rotation.get()) : about(from, rotation.get());
  }

  private void allowed(List<String> needed, List<String> strange, String with) {
    for (String name : needed) {
      if (!arc.isThere(name)) {
        faults.add(
            arc.place(name),
            "is missing: an arc with "
                + with
                + " needs it; "
                + arc.spec().field(name).orElseThrow().right());
      }
    }
    for (String name : strange) {
      if (arc.isThere(name) && arc.isThere(with)) {
        faults.add(arc.place(name), "does not go with " + with + "; take one of them out");
      }
    }
  }

  private Optional<Arc> through(Pose from, Quaternion rotation) {
    Optional<Vec3> via = arc.group("via").flatMap(v -> v.vector("at"));
    Optional<Vec3> at = arc.vector("at");
    if (via.isEmpty() || at.isEmpty()) {
      return Optional.empty();
    }
    Pose end = new Pose(at.get(), rotation);
    Optional<String> fault = ArcPath.fault(from, via.get(), end);
    if (fault.isPresent()) {
      faults.add(arc.place("via"), fault.get());
      return Optional.empty();
    }
    double length = ArcPath.through(from, via.get(), end).length();
    return Optional.of(new Arc(new MoveShape.ArcThrough(via.get()), end, length));
  }

  private Optional<Arc> about(Pose from, Quaternion rotation) {
    Optional<Vec3> centre = arc.vector("centre");
    Optional<Vec3> axis = arc.vector("axis");
    if (centre.isEmpty() || axis.isEmpty() || arc.number("angle").isEmpty()) {
      return Optional.empty();
    }
    double angle = arc.number("angle").getAsDouble();
    Optional<String> fault = ArcPath.aboutFault(from, centre.get(), axis.get(), angle, rotation);
    if (fault.isPresent()) {
      faults.add(arc.place("centre"), fault.get());
      return Optional.empty();
    }
    ArcPath path = ArcPath.about(from, centre.get(), axis.get(), angle, rotation);
    MoveShape shape = new MoveShape.ArcAbout(centre.get(), axis.get(), angle);
    return Optional.of(new Arc(shape, new Pose(path.end(), rotation), path.length()));
  }
}
