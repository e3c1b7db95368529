package io.github.holdpath.sim.scene.field;

import io.github.holdpath.sim.scene.Scene.InputNote;
import io.github.holdpath.sim.scene.Scene.Origin;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.json.Pointers;
import io.github.holdpath.sim.scene.quantity.NearestName;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Gathers the values whose origin the result must name. */
public final class InputNotes {
  private final List<Entry> entries = new ArrayList<>();

  private record Entry(JsonNode.Place place, String text, Origin unless) {}

  /**
   * Notes a value.
   *
   * @param owner object that holds it
   * @param name of its field; nothing is noted where the file does not have it
   * @param unless origin where the file states none
   */
  public void add(Values owner, String name, Origin unless) {
    owner.node(name).ifPresent(n -> entries.add(new Entry(n.place(), text(n), unless)));
  }

  /** Notes a value in other words than those of the file. */
  public void add(Values owner, String name, String text, Origin unless) {
    entries.add(new Entry(owner.place(name), text, unless));
  }

  /**
   * All notes in the order of the file, with the origins that it states; a value with a stated
   * origin is noted even if nobody else asked for it.
   *
   * @param origins as stated
   * @param root the whole file
   * @param faults takes origins of values that are not there
   */
  public List<InputNote> all(List<OriginsType.Entry> origins, JsonNode root, Faults faults) {
    for (OriginsType.Entry origin : origins) {
      Optional<JsonNode> node = Pointers.find(root, origin.pointer());
      if (node.isEmpty()) {
        faults.add(origin.place(), missing(origin.pointer(), root));
      } else if (entries.stream().noneMatch(e -> e.place().equals(node.get().place()))) {
        entries.add(new Entry(node.get().place(), text(node.get()), origin.origin()));
      }
    }
    return entries.stream()
        .sorted(
            Comparator.comparingInt((Entry e) -> e.place().line() > 0 ? 0 : 1)
                .thenComparingInt(e -> e.place().line())
                .thenComparingInt(e -> e.place().column()))
        .map(e -> new InputNote(e.place().pointer(), e.text(), origin(e, origins)))
        .toList();
  }

  private static Origin origin(Entry entry, List<OriginsType.Entry> origins) {
    return origins.stream()
        .filter(o -> o.pointer().equals(entry.place().pointer()))
        .findFirst()
        .map(OriginsType.Entry::origin)
        .orElse(entry.unless());
  }

  private static String missing(String pointer, JsonNode root) {
    List<String> known = new ArrayList<>();
    pointers(root, known);
    String hint = NearestName.hint(pointer, known);
    return "there is no such value in this file; "
        + (hint.isEmpty() ? "name one that is there, for example part/mass" : hint.strip());
  }

  private static void pointers(JsonNode node, List<String> known) {
    if (known.size() > 2000) {
      return;
    }
    known.add(node.place().pointer());
    if (node instanceof JsonNode.Obj obj) {
      obj.members().forEach(m -> pointers(m.value(), known));
    } else if (node instanceof JsonNode.Items list) {
      list.items().forEach(item -> pointers(item, known));
    }
  }

  private static String text(JsonNode node) {
    if (node instanceof JsonNode.Text t) {
      return t.value().strip();
    }
    if (node instanceof JsonNode.Obj obj) {
      return obj.members().stream()
          .filter(m -> !m.name().equals(Values.NOTE))
          .map(m -> m.name() + " " + text(m.value()))
          .reduce((a, b) -> a + ", " + b)
          .orElse("empty");
    }
    if (node instanceof JsonNode.Items list) {
      return Stream.of(list)
          .flatMap(l -> l.items().stream())
          .map(InputNotes::text)
          .reduce((a, b) -> a + ", " + b)
          .orElse("empty");
    }
    return node.shown();
  }
}
