package io.github.holdpath.viewer.export;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.viewer.mesh.LineData;
import io.github.holdpath.viewer.mesh.MeshData;
import io.github.holdpath.viewer.state.Item;
import io.github.holdpath.viewer.state.Layer;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JsonGenerator;

/**
 * Items of a cycle as nodes, meshes, materials and an animation. Items that move alike hang below
 * one node, which moves; a shape that comes again is written once.
 */
final class GltfItems {
  private static final int LINES = 1;
  private static final double ROUGHNESS = 0.9;

  private final Cycle cycle;
  private final List<Group> groups = new ArrayList<>();
  private final List<Drawn> meshes = new ArrayList<>();
  private final List<Look> looks = new ArrayList<>();
  private final Map<Object, Shape> shapes = new IdentityHashMap<>();
  private final Map<Layer, Integer> named = new EnumMap<>(Layer.class);
  private final int firstNode;
  private int times = -1;

  /** Accessors of a shape; no normals and triangles where it is lines. */
  private record Shape(int places, Optional<Surface> surface) {}

  private record Surface(int normals, int colours, int triangles) {}

  /** A shape in a material. */
  private record Drawn(Shape shape, int look) {}

  /** A material. */
  private record Look(int rgb, double opacity, boolean lit) {}

  private record Child(String name, int mesh, Optional<Pose> pose) {}

  /** Items that move alike, with the accessors of their way; or one that stands still. */
  private record Group(String name, Optional<Way> way, List<Child> children) {}

  private record Way(int translations, int rotations, Pose start) {}

  /**
   * Of a cycle.
   *
   * @param firstNode number of the first node of this class in the file
   * @param numbers that take the arrays
   */
  GltfItems(Cycle cycle, int firstNode, GlbBinary numbers) {
    this.cycle = cycle;
    this.firstNode = firstNode;
    Map<List<Pose>, Group> moving = new LinkedHashMap<>();
    for (int i = 0; i < cycle.items().size(); i++) {
      Item item = cycle.items().get(i);
      if (empty(item)) {
        continue;
      }
      int mesh = mesh(item, numbers);
      if (cycle.moves(i)) {
        List<Pose> way = cycle.poses().get(i);
        Group group = moving.get(way);
        if (group == null) {
          String name = way.equals(cycle.grip()) ? "grip" : "moving " + (moving.size() + 1);
          group = new Group(name, Optional.of(way(way, numbers)), new ArrayList<>());
          moving.put(way, group);
          groups.add(group);
        }
        group.children.add(new Child(name(item), mesh, Optional.empty()));
      } else {
        Child child = new Child(name(item), mesh, Optional.of(item.pose()));
        groups.add(new Group("", Optional.empty(), List.of(child)));
      }
    }
  }

  private static boolean empty(Item item) {
    return item instanceof Item.Body body
        ? body.mesh().triangles().length == 0
        : ((Item.Lines) item).lines().points().length == 0;
  }

  private String name(Item item) {
    String kind =
        switch (item.layer()) {
          case GROUND -> "floor";
          case MACHINE -> "grip or machine";
          case PART -> "part";
          case FORCE -> "force";
          case PATH -> "path";
        };
    int number = named.merge(item.layer(), 1, Integer::sum);
    return number == 1 && item.layer() != Layer.MACHINE ? kind : kind + " " + number;
  }

  private int mesh(Item item, GlbBinary numbers) {
    Shape shape = shapes.computeIfAbsent(Cycle.shape(item), s -> shape(item, numbers));
    Look look =
        item instanceof Item.Body body
            ? new Look(body.tint(), body.opacity(), body.lit())
            : new Look(((Item.Lines) item).lines().rgb(), 1, false);
    Drawn drawn = new Drawn(shape, index(looks, look));
    return index(meshes, drawn);
  }

  private static <T> int index(List<T> all, T wanted) {
    int known = all.indexOf(wanted);
    if (known >= 0) {
      return known;
    }
    all.add(wanted);
    return all.size() - 1;
  }

  private static Shape shape(Item item, GlbBinary numbers) {
    if (item instanceof Item.Lines lines) {
      LineData data = lines.lines();
      return new Shape(numbers.places(data.points()), Optional.empty());
    }
    MeshData data = ((Item.Body) item).mesh();
    return new Shape(
        numbers.places(data.positions()),
        Optional.of(
            new Surface(
                numbers.normals(data.normals()),
                numbers.colours(data.colours()),
                numbers.indices(data.triangles()))));
  }

  private Way way(List<Pose> poses, GlbBinary numbers) {
    if (times < 0) {
      times = numbers.times(cycle.times());
    }
    double[] places = new double[3 * poses.size()];
    double[] turns = new double[4 * poses.size()];
    Quaternion last = poses.get(0).rotation();
    for (int i = 0; i < poses.size(); i++) {
      Pose pose = poses.get(i);
      places[3 * i] = pose.position().x();
      places[3 * i + 1] = pose.position().y();
      places[3 * i + 2] = pose.position().z();
      // Of the two that mean one rotation the nearer, or a player turns the long way round.
      Quaternion q = pose.rotation();
      q = q.dot(last) < 0 ? q.negated() : q;
      turns[4 * i] = q.x();
      turns[4 * i + 1] = q.y();
      turns[4 * i + 2] = q.z();
      turns[4 * i + 3] = q.w();
      last = q;
    }
    return new Way(numbers.translations(places), numbers.rotations(turns), poses.get(0));
  }

  /** Numbers of the nodes that hang below the root. */
  List<Integer> roots() {
    List<Integer> all = new ArrayList<>();
    int next = firstNode;
    for (Group group : groups) {
      all.add(next);
      next += group.way.isPresent() ? 1 + group.children.size() : 1;
    }
    return all;
  }

  /** Writes the nodes. */
  void writeNodes(JsonGenerator json) {
    int next = firstNode;
    for (Group group : groups) {
      next++;
      if (group.way.isPresent()) {
        json.writeStartObject();
        json.writeStringProperty("name", group.name);
        GltfScene.pose(json, group.way.get().start());
        json.writeArrayPropertyStart("children");
        for (int i = 0; i < group.children.size(); i++) {
          json.writeNumber(next++);
        }
        json.writeEndArray();
        json.writeEndObject();
      }
      for (Child child : group.children) {
        json.writeStartObject();
        json.writeStringProperty("name", child.name);
        json.writeNumberProperty("mesh", child.mesh);
        child.pose.ifPresent(pose -> GltfScene.pose(json, pose));
        json.writeEndObject();
      }
    }
  }

  /** Writes the members meshes, materials and animations. */
  void write(JsonGenerator json) {
    json.writeArrayPropertyStart("meshes");
    for (Drawn drawn : meshes) {
      json.writeStartObject();
      json.writeArrayPropertyStart("primitives");
      json.writeStartObject();
      json.writeObjectPropertyStart("attributes");
      json.writeNumberProperty("POSITION", drawn.shape.places);
      Optional<Surface> surface = drawn.shape.surface;
      if (surface.isPresent()) {
        json.writeNumberProperty("NORMAL", surface.get().normals);
        json.writeNumberProperty("COLOR_0", surface.get().colours);
      }
      json.writeEndObject();
      if (surface.isPresent()) {
        json.writeNumberProperty("indices", surface.get().triangles);
      } else {
        json.writeNumberProperty("mode", LINES);
      }
      json.writeNumberProperty("material", drawn.look);
      json.writeEndObject();
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayPropertyStart("materials");
    looks.forEach(look -> material(json, look));
    json.writeEndArray();
    if (times >= 0) {
      animation(json);
    }
  }

  private static void material(JsonGenerator json, Look look) {
    json.writeStartObject();
    json.writeObjectPropertyStart("pbrMetallicRoughness");
    json.writeName("baseColorFactor");
    GltfScene.numbers(
        json,
        GlbBinary.linear(look.rgb >> 16 & 0xFF),
        GlbBinary.linear(look.rgb >> 8 & 0xFF),
        GlbBinary.linear(look.rgb & 0xFF),
        look.opacity);
    json.writeNumberProperty("metallicFactor", 0);
    json.writeNumberProperty("roughnessFactor", ROUGHNESS);
    json.writeEndObject();
    if (look.opacity < 1) {
      json.writeStringProperty("alphaMode", "BLEND");
    }
    if (!look.lit) {
      json.writeObjectPropertyStart("extensions");
      json.writeObjectPropertyStart("KHR_materials_unlit");
      json.writeEndObject();
      json.writeEndObject();
    }
    json.writeEndObject();
  }

  private void animation(JsonGenerator json) {
    List<Integer> nodes = new ArrayList<>();
    List<Way> ways = new ArrayList<>();
    List<Integer> roots = roots();
    for (int i = 0; i < groups.size(); i++) {
      if (groups.get(i).way.isPresent()) {
        nodes.add(roots.get(i));
        ways.add(groups.get(i).way.get());
      }
    }
    json.writeArrayPropertyStart("animations");
    json.writeStartObject();
    json.writeStringProperty("name", "one cycle");
    json.writeArrayPropertyStart("samplers");
    for (Way way : ways) {
      sampler(json, way.translations);
      sampler(json, way.rotations);
    }
    json.writeEndArray();
    json.writeArrayPropertyStart("channels");
    for (int i = 0; i < nodes.size(); i++) {
      channel(json, 2 * i, nodes.get(i), "translation");
      channel(json, 2 * i + 1, nodes.get(i), "rotation");
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeEndArray();
  }

  private void sampler(JsonGenerator json, int output) {
    json.writeStartObject();
    json.writeNumberProperty("input", times);
    json.writeNumberProperty("output", output);
    json.writeStringProperty("interpolation", "LINEAR");
    json.writeEndObject();
  }

  private static void channel(JsonGenerator json, int sampler, int node, String path) {
    json.writeStartObject();
    json.writeNumberProperty("sampler", sampler);
    json.writeObjectPropertyStart("target");
    json.writeNumberProperty("node", node);
    json.writeStringProperty("path", path);
    json.writeEndObject();
    json.writeEndObject();
  }
}
