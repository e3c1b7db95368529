package io.github.holdpath.viewer.export;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.study.Playback;
import io.github.holdpath.viewer.Demo;
import io.github.holdpath.viewer.colour.MarginStep;
import io.github.holdpath.viewer.state.Stage;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The file read back by rules of the glTF 2.0 specification. */
class GltfSceneTest {
  /** Single precision of numbers about 1, with some to spare. */
  private static final double FLOAT = 1e-6;

  private static final int FLOATS = 5126;
  private static final Map<Integer, Integer> BYTES = Map.of(5123, 2, 5125, 4, FLOATS, 4);
  private static final Map<String, Integer> WIDE = Map.of("SCALAR", 1, "VEC3", 3, "VEC4", 4);

  /** Both chunks. */
  private record File(JsonNode json, ByteBuffer numbers) {
    static File of(byte[] glb) {
      ByteBuffer in = ByteBuffer.wrap(glb).order(ByteOrder.LITTLE_ENDIAN);
      assertEquals(0x46546C67, in.getInt(), "magic");
      assertEquals(2, in.getInt(), "version");
      assertEquals(glb.length, in.getInt(), "length");
      byte[] text = new byte[in.getInt()];
      assertEquals(0, text.length % 4, "alignment of the text");
      assertEquals(0x4E4F534A, in.getInt(), "JSON");
      in.get(text);
      int length = in.getInt();
      assertEquals(0, length % 4, "alignment of the numbers");
      assertEquals(0x004E4942, in.getInt(), "BIN");
      assertEquals(length, in.remaining());
      JsonNode json = new ObjectMapper().readTree(new String(text, StandardCharsets.UTF_8));
      return new File(json, in.slice().order(ByteOrder.LITTLE_ENDIAN));
    }

    JsonNode accessor(int i) {
      return json.path("accessors").path(i);
    }

    int wide(int accessor) {
      return WIDE.getOrDefault(accessor(accessor).path("type").asString(), 0);
    }

    /** Numbers of an accessor of floats or of whole numbers. */
    double[] values(int accessor) {
      JsonNode a = accessor(accessor);
      int start =
          json.path("bufferViews").path(a.path("bufferView").asInt()).path("byteOffset").asInt();
      double[] values = new double[a.path("count").asInt() * wide(accessor)];
      for (int i = 0; i < values.length; i++) {
        values[i] =
            switch (a.path("componentType").asInt()) {
              case FLOATS -> numbers.getFloat(start + 4 * i);
              case 5125 -> numbers.getInt(start + 4 * i);
              default -> numbers.getShort(start + 2 * i) & 0xFFFF;
            };
      }
      return values;
    }
  }

  private static Stage stage(String name) {
    return Stage.of(Demo.judged(name));
  }

  @ParameterizedTest
  @ValueSource(strings = {"cartons", "peaches", "shaft", "arm-log"})
  void arraysLieInTheBufferAndKeepTheirBounds(String name) {
    File file = File.of(GltfScene.glb(stage(name), "1"));
    int length = file.json.path("buffers").path(0).path("byteLength").asInt();
    assertTrue(length <= file.numbers.capacity() && length > file.numbers.capacity() - 4);
    for (int i = 0; i < file.json.path("accessors").size(); i++) {
      JsonNode a = file.accessor(i);
      JsonNode view = file.json.path("bufferViews").path(a.path("bufferView").asInt());
      int bytes = BYTES.getOrDefault(a.path("componentType").asInt(), 0);
      assertEquals(0, view.path("byteOffset").asInt() % 4, "alignment");
      assertEquals(bytes * file.wide(i) * a.path("count").asInt(), view.path("byteLength").asInt());
      assertTrue(view.path("byteOffset").asInt() + view.path("byteLength").asInt() <= length);
      if (a.has("min")) {
        int wide = file.wide(i);
        double[] values = file.values(i);
        for (int k = 0; k < wide; k++) {
          double least = Double.MAX_VALUE;
          double most = -Double.MAX_VALUE;
          for (int n = k; n < values.length; n += wide) {
            least = Math.min(least, values[n]);
            most = Math.max(most, values[n]);
          }
          assertEquals(least, a.path("min").path(k).asDouble(), 0);
          assertEquals(most, a.path("max").path(k).asDouble(), 0);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"cartons", "peaches"})
  void everyNumberOfAnotherThingIsInRange(String name) {
    File file = File.of(GltfScene.glb(stage(name), "1"));
    for (JsonNode mesh : file.json.path("meshes")) {
      JsonNode primitive = mesh.path("primitives").path(0);
      JsonNode attributes = primitive.path("attributes");
      int count = file.accessor(attributes.path("POSITION").asInt()).path("count").asInt();
      assertTrue(primitive.path("material").asInt() < file.json.path("materials").size());
      if (primitive.has("indices")) {
        for (double v : file.values(primitive.path("indices").asInt())) {
          assertTrue(v >= 0 && v < count);
        }
        assertEquals(
            count, file.accessor(attributes.path("COLOR_0").asInt()).path("count").asInt());
      } else {
        assertEquals(1, primitive.path("mode").asInt());
      }
    }
    Set<Integer> parented = new HashSet<>(Set.of(0));
    JsonNode nodes = file.json.path("nodes");
    for (JsonNode node : nodes) {
      for (JsonNode child : node.path("children")) {
        assertTrue(parented.add(child.asInt()), "one parent each");
      }
      if (node.has("mesh")) {
        assertTrue(node.path("mesh").asInt() < file.json.path("meshes").size());
      }
    }
    assertEquals(nodes.size(), parented.size(), "every node hangs on the root");
  }

  @Test
  void gripMovesAsThePlaybackTells() {
    Stage stage = stage("cartons");
    File file = File.of(GltfScene.glb(stage, "1"));
    JsonNode animation = file.json.path("animations").path(0);
    List<String> paths = new ArrayList<>();
    int checked = 0;
    for (JsonNode channel : animation.path("channels")) {
      if (!nameOf(file, channel).equals("grip")) {
        continue;
      }
      paths.add(channel.path("target").path("path").asString());
      JsonNode sampler = animation.path("samplers").path(channel.path("sampler").asInt());
      assertEquals("LINEAR", sampler.path("interpolation").asString());
      double[] times = file.values(sampler.path("input").asInt());
      double[] values = file.values(sampler.path("output").asInt());
      assertEquals(0, times[0], 0);
      assertEquals(stage.playback().duration(), times[times.length - 1], FLOAT * 10);
      int wide = values.length / times.length;
      for (int i = 0; i < times.length; i++) {
        assertTrue(i == 0 || times[i] > times[i - 1], "times ascend");
        assertTrue(i == 0 || times[i] - times[i - 1] <= 1.0 / 30 + FLOAT, "dense enough");
        Pose pose = stage.playback().at(times[i]).state().pose();
        var q = pose.rotation();
        double[] wanted =
            wide == 3
                ? new double[] {pose.position().x(), pose.position().y(), pose.position().z()}
                : new double[] {q.x(), q.y(), q.z(), q.w()};
        double sign = wide == 3 ? 1 : Math.signum(dot(wanted, values, 4 * i));
        for (int k = 0; k < wide; k++) {
          // A time in single precision is off by up to 3e-7 s, in which the grip goes a micrometre.
          assertEquals(wanted[k], sign * values[wide * i + k], 3e-6, "at " + times[i]);
          checked++;
        }
        if (wide == 4 && i > 0) {
          double[] here = java.util.Arrays.copyOfRange(values, 4 * i, 4 * i + 4);
          assertTrue(dot(here, values, 4 * i - 4) > 0, "the short way round");
        }
      }
    }
    assertEquals(List.of("translation", "rotation"), paths);
    assertTrue(checked > 700);
  }

  private static String nameOf(File file, JsonNode channel) {
    int node = channel.path("target").path("node").asInt();
    return file.json.path("nodes").path(node).path("name").asString("");
  }

  @ParameterizedTest
  @ValueSource(strings = {"cartons", "chocolates", "shaft", "shaft-arm", "circuit-board"})
  void robotMovesAsThePlaybackTells(String name) {
    Stage stage = stage(name);
    File file = File.of(GltfScene.glb(stage, "1"));
    JsonNode animation = file.json.path("animations").path(0);
    List<double[]> ways = new ArrayList<>();
    double[] times = new double[0];
    for (JsonNode channel : animation.path("channels")) {
      JsonNode sampler = animation.path("samplers").path(channel.path("sampler").asInt());
      times = file.values(sampler.path("input").asInt());
      if (channel.path("target").path("path").asString().equals("translation")) {
        ways.add(file.values(sampler.path("output").asInt()));
      }
    }
    // Every bone that moves begins, at every time, where one of the moving nodes is.
    for (int i = 0; i < times.length; i += 5) {
      Playback.Instant now = stage.playback().at(times[i]);
      Playback.Instant start = stage.playback().at(0);
      for (int b = 0; b < now.robot().orElseThrow().bones().size(); b++) {
        Vec3 from = now.robot().orElseThrow().bones().get(b).from();
        if (from.minus(start.robot().orElseThrow().bones().get(b).from()).norm() < 1e-3) {
          continue;
        }
        double nearest = Double.MAX_VALUE;
        for (double[] way : ways) {
          Vec3 at = new Vec3(way[3 * i], way[3 * i + 1], way[3 * i + 2]);
          nearest = Math.min(nearest, at.minus(from).norm());
        }
        // As of the grip, times the larger speeds that joints may have.
        assertEquals(0, nearest, 1e-5, name + ", bone " + b + " at " + times[i]);
      }
    }
    assertTrue(ways.size() > 2, "more than the grip moves");
  }

  private static double dot(double[] a, double[] b, int from) {
    double sum = 0;
    for (int k = 0; k < a.length; k++) {
      sum += a[k] * b[from + k];
    }
    return sum;
  }

  @Test
  void rootTurnsZUpToYUp() {
    JsonNode root = File.of(GltfScene.glb(stage("shaft"), "1")).json.path("nodes").path(0);
    double x = root.path("rotation").path(0).asDouble();
    double w = root.path("rotation").path(3).asDouble();
    // Turned about x: the image of (0, 0, 1) is (0, -2xw, w^2 - x^2).
    assertEquals(1, -2 * x * w, 1e-12);
    assertEquals(0, w * w - x * x, 1e-12);
  }

  @Test
  void pathHasTheColoursOfTheMarginsInLinearLight() {
    Stage stage = stage("cartons");
    File file = File.of(GltfScene.glb(stage, "1"));
    int mesh = -1;
    for (JsonNode node : file.json.path("nodes")) {
      mesh = node.path("name").asString("").equals("path") ? node.path("mesh").asInt() : mesh;
    }
    JsonNode primitive = file.json.path("meshes").path(mesh).path("primitives").path(0);
    assertTrue(
        file.json
            .path("materials")
            .path(primitive.path("material").asInt())
            .path("extensions")
            .has("KHR_materials_unlit"));
    double[] colours = file.values(primitive.path("attributes").path("COLOR_0").asInt());
    int[] rgbs = stage.path().colours();
    assertEquals(4 * rgbs.length, colours.length);
    for (int i = 0; i < rgbs.length; i++) {
      for (int k = 0; k < 3; k++) {
        double linear = colours[4 * i + k] / 65535;
        double back =
            linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
        assertEquals(rgbs[i] >> (16 - 8 * k) & 0xFF, 255 * back, 0.1);
      }
    }
  }

  @Test
  void wordsPlacesAndCautionComeAlong() {
    Stage stage = stage("cartons");
    JsonNode json = File.of(GltfScene.glb(stage, "1.2.3")).json;
    assertEquals("Holdpath 1.2.3", json.path("asset").path("generator").asString());
    JsonNode extras = json.path("scenes").path(0).path("extras");
    assertEquals(stage.headline().verdict(), extras.path("verdict").asString());
    assertEquals(stage.headline().caution(), extras.path("caution").asString());
    assertEquals(MarginStep.values().length, extras.path("marginColours").size());
    assertEquals("#7F1D00", extras.path("marginColours").path(0).path("colour").asString());
    for (int i = 0; i < stage.waypoints().size(); i++) {
      JsonNode node = json.path("nodes").path(1 + i);
      assertEquals(stage.waypoints().get(i).label(), node.path("name").asString());
      assertEquals(
          stage.waypoints().get(i).place().z(), node.path("translation").path(2).asDouble(), 0);
    }
  }

  @Test
  void theSameSceneGivesTheSameBytes() {
    assertArrayEquals(GltfScene.glb(stage("peaches"), "1"), GltfScene.glb(stage("peaches"), "1"));
  }
}
