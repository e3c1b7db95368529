package io.github.holdpath.sim.scene.read;

import io.github.holdpath.sim.scene.Beside;
import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.json.JsonText;
import io.github.holdpath.sim.scene.json.Pointers;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A scene file that is changed value by value and read again and again. The file is read and taken
 * apart once; files beside it are read anew only when they have changed, and the motion is planned
 * anew only when a value has changed on which it depends. Immutable: a change gives another draft.
 * For any number of threads.
 *
 * <p>A value is named by its JSON Pointer without the leading slash, as {@code grip/friction}.
 */
public final class SceneDraft {
  private final Path path;
  private final SceneFile file;
  private final JsonNode.Obj parsed;
  private final JsonNode.Obj root;
  private final Map<String, String> set;
  private final Beside beside;

  private SceneDraft(
      Path path, SceneFile file, JsonNode.Obj parsed, Map<String, String> set, Beside beside) {
    this.path = path;
    this.file = file;
    this.parsed = parsed;
    this.set = set;
    this.root = (JsonNode.Obj) SceneEdits.apply(parsed, set, new Faults(file.name()));
    this.beside = beside;
  }

  /**
   * A value of the draft that is not made of others.
   *
   * @param pointer to it
   * @param text as {@link SceneDraft#value} gives it
   */
  public record Field(String pointer, String text) {}

  /**
   * Reads a file.
   *
   * @throws SceneException with one fault, if it cannot be read or is no JSON object
   */
  public static SceneDraft open(Path path) throws SceneException {
    SceneFile file = SceneFile.read(path);
    return new SceneDraft(path, file, SceneReader.parse(file), Map.of(), Beside.file(path));
  }

  /**
   * The draft with one value replaced or added, by the rules of {@link SceneReader#read}. What
   * cannot be set is told by {@link #scene}.
   *
   * @param pointer to the value
   * @param text taken as JSON if it is a number, true, false, or begins like a text, list or object
   *     of JSON, and else as text
   */
  public SceneDraft with(String pointer, String text) {
    Map<String, String> later = new LinkedHashMap<>(set);
    // What was set here or further inside is replaced with the rest of the value.
    later.keySet().removeIf(p -> p.equals(pointer) || p.startsWith(pointer + "/"));
    later.put(pointer, text);
    return new SceneDraft(path, file, parsed, later, beside);
  }

  /** The file with these values set, each as told, and no other. */
  SceneDraft withAll(Map<String, String> values) {
    return new SceneDraft(path, file, parsed, new LinkedHashMap<>(values), beside);
  }

  /**
   * The scene.
   *
   * @throws SceneException with every fault of the draft; one of a value that was set has no line
   */
  public Scene scene() throws SceneException {
    Faults faults = new Faults(file.name());
    JsonNode edited = SceneEdits.apply(parsed, set, faults);
    return SceneReader.scene(file.name(), (JsonNode.Obj) edited, beside, faults);
  }

  /**
   * The scene, with its file and the values that were set.
   *
   * @throws SceneException as {@link #scene}
   */
  public LoadedScene loaded() throws SceneException {
    Path name = path.getFileName();
    return new LoadedScene(
        scene(), name == null ? file.name() : name.toString(), file.sha256(), set);
  }

  /** Values that differ from the file's by {@link #with}, by pointer, in the order of setting. */
  public Map<String, String> set() {
    return new LinkedHashMap<>(set);
  }

  /**
   * A value as {@link #with} takes it: setting it changes nothing. Texts come without quotes unless
   * they would be taken for JSON; lists and objects as JSON.
   *
   * @return empty if there is no such value, or null, which cannot be set
   */
  public Optional<String> value(String pointer) {
    return pointer.isEmpty()
        ? Optional.empty()
        : Pointers.find(root, pointer).filter(n -> !isNull(n)).map(SceneDraft::text);
  }

  private static boolean isNull(JsonNode node) {
    return node instanceof JsonNode.Word w && w.text().equals("null");
  }

  private static String text(JsonNode node) {
    if (node instanceof JsonNode.Text t && !SceneEdits.isJson(t.value())) {
      return t.value();
    }
    return JsonText.line(node);
  }

  /** All values that are not made of others, in the order of the file. */
  public List<Field> fields() {
    List<Field> fields = new ArrayList<>();
    gather(root, fields);
    return List.copyOf(fields);
  }

  private static void gather(JsonNode node, List<Field> fields) {
    if (node instanceof JsonNode.Obj obj) {
      obj.members().forEach(m -> gather(m.value(), fields));
    } else if (node instanceof JsonNode.Items list) {
      list.items().forEach(item -> gather(item, fields));
    } else if (!isNull(node)) {
      fields.add(new Field(node.place().pointer(), text(node)));
    }
  }

  /**
   * The draft as the text of a scene file, which is read as the same scene in the same folder. It
   * keeps the order of all fields, notes and numbers as they were written; a value that could not
   * be set is not in it.
   */
  public String json() {
    return JsonText.pretty(root);
  }
}
