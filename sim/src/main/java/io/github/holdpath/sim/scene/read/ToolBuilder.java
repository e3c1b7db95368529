package io.github.holdpath.sim.scene.read;

import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.robot.FlangePattern;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.quantity.NearestName;
import io.github.holdpath.sim.scene.route.PoseBuilder;
import java.util.Optional;
import java.util.OptionalDouble;

/** Builds the tool. */
final class ToolBuilder {
  private ToolBuilder() {}

  /**
   * Builds the tool.
   *
   * @return empty if faults were noted
   */
  static Optional<Scene.Tool> build(Values tool, Faults faults) {
    OptionalDouble mass = tool.number("mass");
    Optional<Vec3> centre = tool.vector("centreOfMass");
    Optional<Pose> grip =
        tool.group("flangeToGrip").flatMap(p -> PoseBuilder.build(p, Quaternion.IDENTITY, faults));
    Optional<Inertia> inertia =
        tool.isThere("inertia")
            ? tool.amount("inertia").flatMap(a -> PartBuilder.inertia(tool, a, faults))
            : Optional.of(Inertia.POINT);
    Optional<FlangePattern> flange = tool.text("flange").flatMap(t -> flange(tool, t, faults));
    if (mass.isEmpty() || centre.isEmpty() || grip.isEmpty() || inertia.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Scene.Tool(
            new MassProperties(mass.getAsDouble(), centre.get(), inertia.get()),
            grip.get(),
            flange));
  }

  private static Optional<FlangePattern> flange(Values tool, String text, Faults faults) {
    Optional<FlangePattern> pattern = FlangePattern.parse(text);
    if (pattern.isEmpty()) {
      faults.add(
          tool.place("flange"),
          "is no designation of a flange: \""
              + text
              + "\"; "
              + NearestName.hint(text, FlangePattern.COMMON)
              + "write the pitch circle in mm, the number of threaded holes and the thread, as"
              + " \"ISO 9409-1-50-4-M6\"");
    }
    return pattern;
  }
}
