package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.robot.RobotFigure;
import io.github.holdpath.sim.robot.RobotFigure.Bone;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.mesh.MeshData;
import io.github.holdpath.viewer.mesh.Shafts;
import java.util.ArrayList;
import java.util.List;

/**
 * The robot's figure as bodies, one for each bone, each made once and then only moved. Immutable.
 */
final class RobotShape {
  /** A bone shorter than this part of its thickness is not drawn. */
  private static final double NOTHING = 1e-6;

  /** Bones that differ by less than this part are the same bone elsewhere: rounding is less. */
  private static final double SAME = 1e-9;

  private final List<Bone> bones;
  private final List<MeshData> meshes;

  /** Of a robot wherever it stands, along z of each bone. */
  RobotShape(RobotFigure figure) {
    this.bones = figure.bones();
    this.meshes = bones.stream().map(RobotShape::standing).toList();
  }

  /** The same robot as it stands in a figure. */
  List<Item> items(RobotFigure figure) {
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < figure.bones().size(); i++) {
      Bone bone = figure.bones().get(i);
      MeshData mesh = same(i, bone) ? meshes.get(i) : standing(bone);
      if (mesh.size() > 0) {
        Pose pose = Shafts.along(bone.from(), bone.to().minus(bone.from()));
        items.add(new Item.Body(mesh, pose, Layer.MACHINE, Item.Body.WHITE, 1, true));
      }
    }
    return items;
  }

  private boolean same(int i, Bone bone) {
    Bone known = bones.get(Math.min(i, bones.size() - 1));
    double off =
        Math.abs(known.length() - bone.length()) + Math.abs(known.radius() - bone.radius());
    return i < bones.size()
        && known.role() == bone.role()
        && off < SAME * (bone.length() + bone.radius());
  }

  private static MeshData standing(Bone b) {
    return b.length() > NOTHING * b.radius()
        ? body(new Bone(b.role(), Vec3.ZERO, new Vec3(0, 0, b.length()), b.radius()))
        : MeshData.joined(List.of());
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
