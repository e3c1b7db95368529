package io.github.holdpath.viewer.edit;

import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneText;
import io.github.holdpath.viewer.state.Shown;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A scene as it stands after some changes: the text of its file and the values that replace those
 * of the text. A changed value that its file calls measured, estimated or from a data sheet counts
 * as assumed. Immutable.
 */
public final class Draft {
  private static final String ASSUMED = Scene.Origin.ASSUMED.label();

  private final SceneText base;
  private final Map<String, String> edits;
  private final Map<String, String> demoted;
  private final SceneText now;

  private Draft(SceneText base, Map<String, String> edits) {
    this.base = base;
    this.edits = Collections.unmodifiableMap(new LinkedHashMap<>(edits));
    this.demoted = Collections.unmodifiableMap(demoted(base, edits));
    SceneText text = base;
    for (Map.Entry<String, String> e : edits.entrySet()) {
      text = text.with(e.getKey(), e.getValue());
    }
    for (String pointer : demoted.keySet()) {
      text = text.with(origin(pointer), ASSUMED);
    }
    this.now = text;
  }

  /**
   * A file as it is on disk.
   *
   * @throws SceneException with one fault, if it cannot be read or is not JSON
   */
  public static Draft open(Path file) throws SceneException {
    return new Draft(SceneText.open(file), Map.of());
  }

  /**
   * Origins that a change makes untrue, by their pointer: that of the value or of what holds it.
   */
  private static Map<String, String> demoted(SceneText base, Map<String, String> edits) {
    Map<String, String> found = new LinkedHashMap<>();
    for (String edit : edits.keySet()) {
      for (String stated : base.names("origins")) {
        boolean about = edit.equals(stated) || edit.startsWith(stated + "/");
        String word = base.value(origin(stated)).orElse(ASSUMED);
        if (about && !word.equals(ASSUMED) && !stated.equals("note")) {
          found.put(stated, word);
        }
      }
    }
    return found;
  }

  private static String origin(String pointer) {
    return "origins/" + pointer.replace("~", "~0").replace("/", "~1");
  }

  /**
   * With another value; that of the file takes the change back.
   *
   * @param pointer JSON Pointer without its leading slash, as {@code limits/speed}
   * @param text as a scene file writes it, texts without their quotes; only a text that looks like
   *     JSON needs them
   * @throws IllegalArgumentException if the pointer leads into something that has no fields
   */
  public Draft with(String pointer, String text) {
    Map<String, String> changed = new LinkedHashMap<>(edits);
    if (base.value(pointer).filter(text::equals).isPresent()) {
      changed.remove(pointer);
    } else {
      changed.put(pointer, text);
    }
    return new Draft(base, changed);
  }

  /** With the value of the file, or none if the file has none. */
  public Draft reset(String pointer) {
    Map<String, String> changed = new LinkedHashMap<>(edits);
    changed.remove(pointer);
    return new Draft(base, changed);
  }

  /**
   * The same changes on another text, as of a file that changed on disk.
   *
   * @return what of them still has a place
   */
  public Draft onto(Draft fresh) {
    Draft moved = fresh.opened();
    for (Map.Entry<String, String> e : edits.entrySet()) {
      try {
        moved = moved.with(e.getKey(), e.getValue());
      } catch (IllegalArgumentException gone) {
        // The file no longer has the object that this value belongs to.
        continue;
      }
    }
    return moved;
  }

  /** As it was before all changes. */
  public Draft opened() {
    return new Draft(base, Map.of());
  }

  /** The value of a field as {@link #with} takes it; empty if not there. */
  public Optional<String> value(String pointer) {
    return now.value(pointer);
  }

  /** The value before all changes. */
  public Optional<String> openedValue(String pointer) {
    return base.value(pointer);
  }

  /** Names of the fields of an object; none if it is none. */
  public List<String> names(String pointer) {
    return now.names(pointer);
  }

  /**
   * The scene.
   *
   * @throws SceneException with every fault
   */
  public Scene scene() throws SceneException {
    return now.scene();
  }

  /**
   * The scene for a first look.
   *
   * @throws SceneException as {@link SceneText#preview}
   */
  Scene preview() throws SceneException {
    return now.preview();
  }

  /**
   * What the reader says of a value before it is set, as text for its field.
   *
   * @return empty if the field can hold it
   */
  public Optional<String> refusal(String pointer, String text) {
    return with(pointer, text).now.fieldFaults().stream()
        .filter(f -> f.pointer().equals(pointer) || f.pointer().startsWith(pointer + "/"))
        .map(Fault::message)
        .findFirst();
  }

  /** As it would be saved beside its file. */
  public String json() {
    return now.text();
  }

  /** The text of the scene. */
  SceneText text() {
    return now;
  }

  /** Whether its values replace those of another text. */
  boolean isBasedOnOther(Draft other) {
    return base != other.base;
  }

  /** The file that it comes from. */
  public Path file() {
    return base.file();
  }

  /** What it is called. */
  public String name() {
    return Shown.nameOf(file());
  }

  /** Pointers of the values that were changed, in the order of the changes. */
  public List<String> changed() {
    return new ArrayList<>(edits.keySet());
  }

  /** Whether anything differs from the file. */
  public boolean isChanged() {
    return !edits.isEmpty();
  }

  /** What the file said of values that now count as assumed, by pointer. */
  public Map<String, String> countAsAssumed() {
    return demoted;
  }
}
