package io.github.holdpath.sim.scene.read;

import io.github.holdpath.sim.motion.joint.JointTrack;
import io.github.holdpath.sim.scene.Beside;
import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.json.JsonText;
import io.github.holdpath.sim.scene.json.JsonTree;
import io.github.holdpath.sim.scene.json.Pointers;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The text of a scene that is being changed. A new value is put in at its place, and all else stays
 * as it was written: order, layout, notes. So what is saved is the user's own file with new values,
 * and a fault has the line that the user knows. What the files beside it hold, and the motion where
 * nothing changed on which it depends, are read and planned once. Immutable; for any number of
 * threads. Values that are set from outside and not kept go to {@link SceneReader#read}.
 *
 * <p>A value is named by its JSON Pointer without the leading slash, as {@code grip/friction}.
 */
public final class SceneText {
  /** Spacing of the samples of a robot's joints for a first look, s. */
  private static final double PREVIEW = 5 * JointTrack.STEP;

  private final Path file;
  private final String text;
  private final JsonNode.Obj root;
  private final Beside beside;

  private SceneText(Path file, SceneFile text, Beside beside) throws SceneException {
    this.file = file;
    this.text = text.text();
    this.root = SceneReader.parse(text);
    this.beside = beside;
  }

  /**
   * Opens a file. Its fields are not looked at yet.
   *
   * @throws SceneException with one fault, if it cannot be read or is no JSON object
   */
  public static SceneText open(Path file) throws SceneException {
    return new SceneText(file, SceneFile.read(file), Beside.file(file));
  }

  /** The file that it comes from; recordings and robots are looked for beside it. */
  public Path file() {
    return file;
  }

  /** As it would be saved. */
  public String text() {
    return text;
  }

  /**
   * The scene that the text tells.
   *
   * @throws SceneException with every fault
   */
  public Scene scene() throws SceneException {
    return scene(JointTrack.STEP);
  }

  /**
   * The same, to be shown while a value is still being changed: quicker where a robot follows, as
   * its joints are looked at less often. A joint that is too fast is slowed nearly as it should be,
   * and a place that it cannot reach may be missed.
   *
   * @throws SceneException with the faults that were found
   */
  public Scene preview() throws SceneException {
    return scene(PREVIEW);
  }

  private Scene scene(double spacing) throws SceneException {
    Faults none = new Faults(file.toString());
    return SceneReader.scene(file.toString(), root, beside, none, spacing);
  }

  /**
   * What is wrong with single fields, without building the scene: quick, but what several fields
   * say together is not looked at.
   *
   * @return every fault of the fields, none where all can be read
   */
  public List<Fault> fieldFaults() {
    Faults faults = new Faults(file.toString());
    Values.read(SceneSpec.SCENE, root, faults);
    try {
      faults.throwIfAny();
      return List.of();
    } catch (SceneException e) {
      return e.faults();
    }
  }

  /**
   * The value of a field as {@link #with} takes it: setting it changes nothing.
   *
   * @return a text without its quotes unless it would then be taken for JSON, all else as it is
   *     written; empty if there is none, or null, which cannot be set
   */
  public Optional<String> value(String pointer) {
    return Pointers.find(root, pointer)
        .filter(node -> !(node instanceof JsonNode.Word w && w.text().equals("null")))
        .map(
            node ->
                node instanceof JsonNode.Text t && !isJson(t.value()) ? t.value() : written(node));
  }

  /** The text that a field holds, whatever it looks like; empty if it holds none. */
  public Optional<String> words(String pointer) {
    return Pointers.find(root, pointer)
        .filter(JsonNode.Text.class::isInstance)
        .map(node -> ((JsonNode.Text) node).value());
  }

  private String written(JsonNode node) {
    JsonSpot spot = new JsonSpot(text);
    int from = spot.from(node.place());
    return text.substring(from, spot.to(from));
  }

  /** Names of the fields of an object in their order; none if there is no object. */
  public List<String> names(String pointer) {
    Optional<JsonNode> node = Pointers.find(root, pointer);
    return node.isPresent() && node.get() instanceof JsonNode.Obj obj
        ? obj.members().stream().map(JsonNode.Member::name).toList()
        : List.of();
  }

  /**
   * With another value, or one more.
   *
   * @param pointer to it; objects on the way that are missing are made
   * @param value taken as JSON if it is a number, true, false, or a text, list or object of JSON,
   *     and else as text
   * @throws IllegalArgumentException if the pointer leads into something that has no fields
   */
  public SceneText with(String pointer, String value) {
    return put(pointer, isJson(value) ? value.strip() : JsonText.quoted(value));
  }

  /**
   * With another text, or one more, whatever it looks like.
   *
   * @throws IllegalArgumentException as {@link #with} does
   */
  public SceneText withWords(String pointer, String words) {
    return put(pointer, JsonText.quoted(words));
  }

  private SceneText put(String pointer, String json) {
    List<String> steps = Pointers.steps(pointer);
    int known = steps.size();
    while (known > 0 && find(steps.subList(0, known)).isEmpty()) {
      known--;
    }
    JsonNode holder = find(steps.subList(0, known)).orElseThrow();
    String fresh = json;
    for (int i = steps.size() - 1; i > known; i--) {
      fresh = "{ " + JsonText.quoted(steps.get(i)) + ": " + fresh + " }";
    }
    return known == steps.size()
        ? replaced(holder, fresh)
        : added(holder, pointer, steps.get(known), fresh);
  }

  private Optional<JsonNode> find(List<String> steps) {
    String pointer = "";
    for (String step : steps) {
      pointer = Pointers.join(pointer, step);
    }
    return steps.isEmpty() ? Optional.of(root) : Pointers.find(root, pointer);
  }

  private SceneText replaced(JsonNode old, String fresh) {
    JsonSpot spot = new JsonSpot(text);
    int from = spot.from(old.place());
    return parsed(text.substring(0, from) + fresh + text.substring(spot.to(from)));
  }

  private SceneText added(JsonNode holder, String pointer, String name, String fresh) {
    if (!(holder instanceof JsonNode.Obj obj)) {
      throw new IllegalArgumentException(
          "pointer " + pointer + " leads into " + holder.words() + ", which has no field " + name);
    }
    JsonSpot spot = new JsonSpot(text);
    String member = JsonText.quoted(name) + ": " + fresh;
    if (obj.members().isEmpty()) {
      return replaced(obj, "{ " + member + " }");
    }
    JsonNode.Member last = obj.members().get(obj.members().size() - 1);
    int end = spot.to(spot.from(last.value().place()));
    String between = "," + spot.indent(spot.from(last.place()));
    return parsed(text.substring(0, end) + between + member + text.substring(end));
  }

  private SceneText parsed(String changed) {
    try {
      return new SceneText(file, new SceneFile(file.toString(), changed, ""), beside);
    } catch (SceneException e) {
      throw new IllegalStateException("a JSON text with one value changed is JSON", e);
    }
  }

  /** Whether a value is taken as JSON. */
  private static boolean isJson(String value) {
    if (!SceneEdits.isJson(value)) {
      return false;
    }
    try {
      JsonTree.parse("", value, "");
      return true;
    } catch (SceneException e) {
      return false;
    }
  }
}
