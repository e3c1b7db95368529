package io.github.holdpath.viewer.export;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.report.Headline;
import io.github.holdpath.viewer.colour.MarginStep;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.state.Stage;
import io.github.holdpath.viewer.state.Waypoint;
import java.io.StringWriter;
import java.util.Locale;
import java.util.Optional;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/**
 * Path and scene as a binary glTF file (Khronos, glTF 2.0 Specification): every item of a stage as
 * a node, those that move with an animation of one cycle, places as named nodes, the words in
 * {@code extras} of the scene. Lengths are in m. The root node turns Z up to glTF's Y up, so that
 * everything below it has the coordinates of the scene file.
 */
public final class GltfScene {
  private static final double QUARTER = Math.sqrt(0.5);

  private final JsonGenerator json;
  private final Stage stage;
  private final String version;
  private final GlbBinary numbers = new GlbBinary();
  private final GltfItems items;

  private GltfScene(JsonGenerator json, Stage stage, String version) {
    this.json = json;
    this.stage = stage;
    this.version = version;
    this.items = new GltfItems(Cycle.of(stage), 1 + stage.waypoints().size(), numbers);
  }

  /**
   * The file.
   *
   * @param stage to take away
   * @param version of the program
   */
  public static byte[] glb(Stage stage, String version) {
    StringWriter text = new StringWriter();
    GltfScene scene;
    try (JsonGenerator json =
        JsonFactory.builder().build().createGenerator(ObjectWriteContext.empty(), text)) {
      scene = new GltfScene(json, stage, version);
      scene.write();
    }
    return GlbFile.of(text.toString(), scene.numbers.bytes());
  }

  private void write() {
    json.writeStartObject();
    json.writeObjectPropertyStart("asset");
    json.writeStringProperty("version", "2.0");
    json.writeStringProperty("generator", "Holdpath " + version);
    json.writeEndObject();
    json.writeArrayPropertyStart("extensionsUsed");
    json.writeString("KHR_materials_unlit");
    json.writeEndArray();
    json.writeNumberProperty("scene", 0);
    json.writeArrayPropertyStart("scenes");
    json.writeStartObject();
    json.writeStringProperty("name", stage.headline().title());
    json.writeArrayPropertyStart("nodes");
    json.writeNumber(0);
    json.writeEndArray();
    extras();
    json.writeEndObject();
    json.writeEndArray();
    nodes();
    items.write(json);
    numbers.write(json);
    json.writeEndObject();
  }

  /** What a picture says in words. */
  private void extras() {
    Headline words = stage.headline();
    json.writeObjectPropertyStart("extras");
    json.writeStringProperty("title", words.title());
    json.writeStringProperty("subject", words.subject());
    json.writeStringProperty("verdict", words.verdict());
    optional("tightest", words.tightest());
    optional("swing", words.swing());
    json.writeStringProperty("caution", words.caution());
    json.writeStringProperty(
        "contacts", "The colours of the contacts are those of the tightest instant throughout.");
    json.writeArrayPropertyStart("marginColours");
    for (MarginStep step : MarginStep.values()) {
      json.writeStartObject();
      json.writeNumberProperty("from", step.from());
      if (Double.isFinite(step.to())) {
        json.writeNumberProperty("below", step.to());
      }
      json.writeBooleanProperty("holds", step.passes());
      json.writeStringProperty("colour", hex(step.rgb()));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeStringProperty("notHeldColour", hex(Tones.NOT_HELD));
    json.writeEndObject();
  }

  private void optional(String name, Optional<String> text) {
    if (text.isPresent()) {
      json.writeStringProperty(name, text.get());
    }
  }

  private static String hex(int rgb) {
    return String.format(Locale.ROOT, "#%06X", rgb);
  }

  /** Root first, then the places, then the items. */
  private void nodes() {
    int places = stage.waypoints().size();
    json.writeArrayPropertyStart("nodes");
    json.writeStartObject();
    json.writeStringProperty("name", "world, Z up");
    json.writeName("rotation");
    numbers(json, -QUARTER, 0, 0, QUARTER);
    json.writeArrayPropertyStart("children");
    for (int i = 1; i <= places; i++) {
      json.writeNumber(i);
    }
    items.roots().forEach(json::writeNumber);
    json.writeEndArray();
    json.writeEndObject();
    for (Waypoint place : stage.waypoints()) {
      json.writeStartObject();
      json.writeStringProperty("name", place.label());
      pose(json, Pose.at(place.place().x(), place.place().y(), place.place().z()));
      json.writeEndObject();
    }
    items.writeNodes(json);
    json.writeEndArray();
  }

  /** Members translation and rotation of a node. */
  static void pose(JsonGenerator json, Pose pose) {
    json.writeName("translation");
    numbers(json, pose.position().x(), pose.position().y(), pose.position().z());
    json.writeName("rotation");
    var q = pose.rotation();
    numbers(json, q.x(), q.y(), q.z(), q.w());
  }

  static void numbers(JsonGenerator json, double... values) {
    json.writeStartArray();
    for (double v : values) {
      json.writeNumber(v + 0.0);
    }
    json.writeEndArray();
  }
}
