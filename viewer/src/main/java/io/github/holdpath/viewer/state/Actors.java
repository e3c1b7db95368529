package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.PartShape;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.study.Playback;
import io.github.holdpath.viewer.colour.MarginStep;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.mesh.LineData;
import io.github.holdpath.viewer.mesh.MeshData;
import io.github.holdpath.viewer.mesh.Solids;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What moves along the path: the part and the grip's contacts, each contact in the colour of its
 * own margin.
 */
public final class Actors {
  private static final Quaternion[] ALONG = {
    Quaternion.ofAxisAngle(new Vec3(0, 1, 0), Math.PI / 2),
    Quaternion.ofAxisAngle(new Vec3(1, 0, 0), -Math.PI / 2),
    Quaternion.IDENTITY
  };

  /** Thickness of a contact's body per the length of its shorter side. */
  static final double BODY = 0.35;

  /** Width of a line of contact as drawn, per its length. */
  private static final double LINE_WIDTH = 0.08;

  private static final double PART_OPACITY = 0.55;

  /** Of the part where it lands. */
  private static final double GHOST_OPACITY = 0.25;

  private final Optional<MeshData> part;
  private final Optional<LineData> edges;
  private final List<MeshData> patches;
  private final List<Vec3> reach;
  private final MeshData tool;
  private final Optional<RobotShape> robot;

  /** Of a scene; all meshes in the grip frame. */
  Actors(Scene scene) {
    List<Vec3> corners = new ArrayList<>();
    Optional<MeshData> body = Optional.empty();
    Optional<LineData> lines = Optional.empty();
    if (scene.part().shape().isPresent()) {
      PartShape shape = scene.part().shape().get();
      Pose pose = new Pose(scene.part().shapeCentre(), Quaternion.IDENTITY);
      body = Optional.of(body(shape, pose));
      List<Vec3> ends = edges(shape, pose);
      lines = ends.isEmpty() ? Optional.empty() : Optional.of(LineData.of(ends, Tones.EDGE));
      Vec3 half = shape.extent().times(0.5);
      for (Vec3 end : Solids.boxEdges(pose, half.times(2))) {
        corners.add(end);
      }
    }
    List<ContactPatch> all = scene.grip().patches();
    all.forEach(p -> corners.add(p.pose().position()));
    this.part = body;
    this.edges = lines;
    this.patches = all.stream().map(Actors::patch).toList();
    this.tool = ToolShape.of(scene);
    this.robot =
        scene
            .robot()
            .flatMap(cell -> cell.robot().figure(cell.track().start()))
            .map(RobotShape::new);
    this.reach = List.copyOf(corners);
  }

  /** Points that part and contacts reach to, world axes, m. */
  public List<Vec3> reach(Pose grip) {
    return reach.stream().map(grip::apply).toList();
  }

  /** Corners of the box in grip axes that the tool fills, world axes, m. */
  List<Vec3> toolReach(Pose grip) {
    double[] lo = Arrays.copyOf(tool.positions(), 3);
    double[] hi = lo.clone();
    double[] p = tool.positions();
    for (int i = 0; i < p.length; i++) {
      lo[i % 3] = Math.min(lo[i % 3], p[i]);
      hi[i % 3] = Math.max(hi[i % 3], p[i]);
    }
    Vec3 middle = new Vec3((lo[0] + hi[0]) / 2, (lo[1] + hi[1]) / 2, (lo[2] + hi[2]) / 2);
    Vec3 size = new Vec3(hi[0] - lo[0], hi[1] - lo[1], hi[2] - lo[2]);
    return Solids.boxEdges(grip.times(new Pose(middle, Quaternion.IDENTITY)), size);
  }

  /** All of it at one instant: robot, tool, contacts and part, as far as they are shown. */
  List<Item> at(Playback.Instant now, Show show, Optional<Flight> flight) {
    Pose grip = now.state().pose();
    List<Item> items = new ArrayList<>();
    if (show.robot()) {
      now.robot()
          .ifPresent(
              figure -> items.addAll(robot.orElseGet(() -> new RobotShape(figure)).items(figure)));
    }
    if (show.tool()) {
      items.add(new Item.Body(tool, grip, Layer.MACHINE, Item.Body.WHITE, 1, true));
    }
    Optional<Flight> shown = flight.filter(f -> show.drop());
    boolean flies = shown.map(f -> now.time() > f.drop().leaves()).orElse(false);
    for (int i = 0; i < patches.size(); i++) {
      boolean own = show.contacts() && now.held() && !flies;
      int rgb = own ? MarginStep.of(now.margins().get(i)).rgb() : Tones.TOOL;
      items.add(new Item.Body(patches.get(i), grip, Layer.MACHINE, rgb, 1, true));
    }
    if (show.part()) {
      Pose at = flies ? shown.orElseThrow().drop().pose(now.time()) : now.part();
      items.addAll(part(at, PART_OPACITY));
      shown.ifPresent(f -> items.addAll(part(f.drop().pose(f.drop().lands()), GHOST_OPACITY)));
    }
    shown.ifPresent(f -> items.add(f.item()));
    return items;
  }

  private List<Item> part(Pose at, double opacity) {
    List<Item> items = new ArrayList<>();
    part.ifPresent(
        mesh -> items.add(new Item.Body(mesh, at, Layer.PART, Item.Body.WHITE, opacity, true)));
    edges.ifPresent(lines -> items.add(new Item.Lines(lines, at, Layer.PART)));
    return items;
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
  private static MeshData patch(ContactPatch patch) {
    PatchShape shape = patch.shape();
    Pose pose = patch.pose();
    if (shape instanceof PatchShape.Ring r) {
      return round(pose, r.radius());
    }
    if (shape instanceof PatchShape.Disc d) {
      return round(pose, d.radius());
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
    return Solids.box(
        pose.times(Pose.at(0, 0, -thick / 2)), new Vec3(a, b, thick), Item.Body.WHITE);
  }

  private static MeshData round(Pose pose, double radius) {
    double thick = 2 * BODY * radius;
    return Solids.cylinder(
        pose.times(Pose.at(0, 0, -thick / 2)), radius, 0, thick, Item.Body.WHITE);
  }
}
