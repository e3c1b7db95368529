package io.github.holdpath.sim.scene.read;

import io.github.holdpath.sim.motion.joint.JointTrack;
import io.github.holdpath.sim.scene.Beside;
import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.json.JsonTree;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * Reads scene files. A scene is read in three steps: JSON text to nodes with places, nodes to
 * checked fields by the specs of the format, and checked fields to the values of a {@link Scene}.
 */
public final class SceneReader {
  private SceneReader() {}

  /**
   * Reads a scene file.
   *
   * @param file to read; recordings are looked for beside it
   * @param set values that replace or add fields, by JSON Pointer without its leading slash: {@code
   *     grip/friction} to {@code 0.3}; a value is taken as JSON if it is a number, true, false, or
   *     begins like a text, list or object of JSON, and else as text
   * @throws SceneException with every fault of the file, each with its place and what would be
   *     right; a file that is not JSON has one fault
   */
  public static LoadedScene read(Path file, Map<String, String> set) throws SceneException {
    SceneFile text = SceneFile.read(file);
    Faults faults = new Faults(text.name());
    JsonNode edited = SceneEdits.apply(parse(text), set, faults);
    Scene scene =
        scene(text.name(), (JsonNode.Obj) edited, Beside.file(file), faults, JointTrack.STEP);
    Path name = file.getFileName();
    return new LoadedScene(scene, name == null ? text.name() : name.toString(), text.sha256(), set);
  }

  /**
   * The object of a scene file.
   *
   * @throws SceneException with one fault, if it is none
   */
  static JsonNode.Obj parse(SceneFile file) throws SceneException {
    JsonNode parsed = JsonTree.parse(file.name(), file.text(), "");
    if (parsed instanceof JsonNode.Obj obj) {
      return obj;
    }
    Faults faults = new Faults(file.name());
    faults.add(
        parsed.place(),
        "a scene is an object in braces, but this is "
            + parsed.words()
            + "; it begins with {"
            + " \"format\": \""
            + Scene.FORMAT
            + "\"");
    faults.throwIfAny();
    throw new IllegalStateException("a fault was noted and not thrown");
  }

  /**
   * The scene of an object.
   *
   * @param name of its file, as the user named it
   * @param root with all values set
   * @param beside files beside it
   * @param faults those of the values that could not be set; takes more
   * @param spacing of the samples of a robot's joints, s
   */
  static Scene scene(String name, JsonNode.Obj root, Beside beside, Faults faults, double spacing)
      throws SceneException {
    version(name, root);
    Values values = Values.read(SceneSpec.SCENE, root, faults);
    return new SceneBuilder(values, root, beside, faults, spacing).build();
  }

  /** An unknown version is the only fault of its file: nothing else can be judged. */
  private static void version(String name, JsonNode.Obj root) throws SceneException {
    JsonNode format = root.get("format").orElse(null);
    if (format instanceof JsonNode.Text t && !t.value().equals(Scene.FORMAT)) {
      Faults fault = new Faults(name);
      boolean ours = t.value().startsWith("holdpath-scene/");
      fault.add(
          t.place(),
          t.shown()
              + (ours ? " is a version" : " is a format")
              + " that is not known here; known: "
              + String.join(", ", List.of(Scene.FORMAT)));
      fault.throwIfAny();
    }
  }
}
