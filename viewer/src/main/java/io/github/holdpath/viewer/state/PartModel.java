package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.PartShape;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.mesh.LineData;
import io.github.holdpath.viewer.mesh.MeshData;
import io.github.holdpath.viewer.mesh.Solids;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The part and the grip's contacts at one instant.
 *
 * @param part body of the part; empty where the scene tells no shape
 * @param edges of the part
 * @param patches a body for each contact
 * @param reach points that the part and the contacts reach to, world axes, m
 */
record PartModel(
    Optional<MeshData> part, Optional<LineData> edges, List<MeshData> patches, List<Vec3> reach) {
  private static final Quaternion[] ALONG = {
    Quaternion.ofAxisAngle(new Vec3(0, 1, 0), Math.PI / 2),
    Quaternion.ofAxisAngle(new Vec3(1, 0, 0), -Math.PI / 2),
    Quaternion.IDENTITY
  };

  /** Thickness of a contact's body per the length of its shorter side. */
  private static final double BODY = 0.35;

  /** Width of a line of contact as drawn, per its length. */
  private static final double LINE_WIDTH = 0.08;

  /**
   * At a pose of the grip frame.
   *
   * @param scene of which
   * @param grip {@code X_WT}
   * @param marked index of the contact that is shown in another colour, -1 for none
   * @param markRgb that colour
   */
  static PartModel at(Scene scene, Pose grip, int marked, int markRgb) {
    List<Vec3> reach = new ArrayList<>();
    Optional<MeshData> body = Optional.empty();
    Optional<LineData> edges = Optional.empty();
    if (scene.part().shape().isPresent()) {
      PartShape shape = scene.part().shape().get();
      Pose pose = grip.times(new Pose(scene.part().shapeCentre(), Quaternion.IDENTITY));
      body = Optional.of(body(shape, pose));
      List<Vec3> lines = edges(shape, pose);
      edges = lines.isEmpty() ? Optional.empty() : Optional.of(LineData.of(lines, Tones.EDGE));
      for (int i = 0; i < 8; i++) {
        Vec3 e = shape.extent().times(0.5);
        reach.add(
            pose.apply(
                new Vec3(
                    (i & 1) == 0 ? e.x() : -e.x(),
                    (i & 2) == 0 ? e.y() : -e.y(),
                    (i & 4) == 0 ? e.z() : -e.z())));
      }
    }
    List<MeshData> patches = new ArrayList<>();
    List<ContactPatch> all = scene.grip().patches();
    for (int i = 0; i < all.size(); i++) {
      patches.add(patch(grip, all.get(i), i == marked ? markRgb : Tones.TOOL));
      reach.add(grip.times(all.get(i).pose()).position());
    }
    return new PartModel(body, edges, patches, reach);
  }

  private static MeshData body(PartShape shape, Pose pose) {
    if (shape instanceof PartShape.Cylinder c) {
      return Solids.cylinder(
          turned(pose, c), c.diameter() / 2, c.innerDiameter() / 2, c.length(), Tones.PART);
    }
    if (shape instanceof PartShape.Sphere s) {
      return Solids.sphere(pose.position(), s.diameter() / 2, Tones.PART);
    }
    return Solids.box(pose, shape.extent(), Tones.PART);
  }

  private static List<Vec3> edges(PartShape shape, Pose pose) {
    if (shape instanceof PartShape.Cylinder c) {
      List<Vec3> ends = new ArrayList<>(Solids.rims(turned(pose, c), c.diameter() / 2, c.length()));
      if (c.innerDiameter() > 0) {
        ends.addAll(Solids.rims(turned(pose, c), c.innerDiameter() / 2, c.length()));
      }
      return ends;
    }
    return shape instanceof PartShape.Box b ? Solids.boxEdges(pose, b.size()) : List.of();
  }

  private static Pose turned(Pose pose, PartShape.Cylinder c) {
    return pose.times(new Pose(Vec3.ZERO, ALONG[c.axis()]));
  }

  /** A body that stands on the part's surface, outside it. */
  private static MeshData patch(Pose grip, ContactPatch patch, int rgb) {
    PatchShape shape = patch.shape();
    Pose pose = grip.times(patch.pose());
    if (shape instanceof PatchShape.Ring r) {
      return round(pose, r.radius(), rgb);
    }
    if (shape instanceof PatchShape.Disc d) {
      return round(pose, d.radius(), rgb);
    }
    double a = 0;
    double b = 0;
    if (shape instanceof PatchShape.Rectangle rectangle) {
      a = rectangle.a();
      b = rectangle.b();
    } else if (shape instanceof PatchShape.Line line) {
      a = line.length();
      b = LINE_WIDTH * line.length();
    }
    double thick = BODY * Math.min(a, b);
    return Solids.box(pose.times(Pose.at(0, 0, -thick / 2)), new Vec3(a, b, thick), rgb);
  }

  private static MeshData round(Pose pose, double radius, int rgb) {
    double thick = 2 * BODY * radius;
    return Solids.cylinder(pose.times(Pose.at(0, 0, -thick / 2)), radius, 0, thick, rgb);
  }
}
