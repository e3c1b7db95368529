package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.robot.RobotFigure;
import io.github.holdpath.sim.robot.RobotFigure.Bone;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.mesh.MeshData;
import io.github.holdpath.viewer.mesh.Shafts;
import java.util.List;

/** The robot's figure as bodies. */
final class RobotShape {
  /** A bone shorter than this part of its thickness is not drawn. */
  private static final double NOTHING = 1e-6;

  private RobotShape() {}

  static Item item(RobotFigure figure) {
    List<MeshData> bodies =
        figure.bones().stream()
            .filter(b -> b.length() > NOTHING * b.radius())
            .map(RobotShape::body)
            .toList();
    return new Item.Body(
        MeshData.joined(bodies), Pose.IDENTITY, Layer.MACHINE, Item.Body.WHITE, 1, true);
  }

  private static MeshData body(Bone b) {
    return switch (b.role()) {
      case BASE, PLATE -> Shafts.round(b.from(), b.to(), b.radius(), false, Tones.ROBOT_BASE);
      case JOINT -> Shafts.round(b.from(), b.to(), b.radius(), false, Tones.ROBOT_JOINT);
      case RAIL -> Shafts.beam(b.from(), b.to(), b.radius(), Tones.ROBOT);
      case CARRIAGE -> Shafts.beam(b.from(), b.to(), b.radius(), Tones.ROBOT_JOINT);
      case LINK -> Shafts.round(b.from(), b.to(), b.radius(), true, Tones.ROBOT);
      case ROD -> Shafts.round(b.from(), b.to(), b.radius(), true, Tones.ROBOT_JOINT);
    };
  }
}
