package io.github.holdpath.sim.scene.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.grip.JawGrip;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A scene that names a pair of materials in place of a friction coefficient. */
class FrictionPairSceneTest {
  private static final Path JAWS = SceneFiles.GOOD.resolve("jaws.json");
  private static final String PAIR = "{ \"pair\": \"Steel, steel\", \"state\": \"oily\" }";

  private static Scene with(String... set) throws SceneException {
    Map<String, String> values = new TreeMap<>();
    for (int i = 0; i < set.length; i += 2) {
      values.put(set[i], set[i + 1]);
    }
    return SceneReader.read(JAWS, values).scene();
  }

  private static Scene.InputNote note(Scene scene) {
    return scene.inputs().stream()
        .filter(n -> n.pointer().equals("grip/friction"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void takesTheLowEndAndSaysSo() throws SceneException {
    Scene scene = with("grip/friction", PAIR);
    assertEquals(0.08, ((JawGrip) scene.grip()).friction());
    String text = note(scene).text();
    assertTrue(
        text.startsWith("0.08, the low end of 0.08 to 0.15 for steel, steel, oily (common"), text);
  }

  @Test
  void staysAssumedUnlessTheFileSaysOtherwise() throws SceneException {
    assertEquals(Scene.Origin.ASSUMED, note(with("grip/friction", PAIR, "origins", "{}")).origin());
    assertEquals(
        Scene.Origin.ESTIMATED,
        note(with("grip/friction", PAIR, "origins", "{ \"grip/friction\": \"estimated\" }"))
            .origin());
  }

  @Test
  void aNumberStillCountsAsItIsWritten() throws SceneException {
    Scene scene = with("grip/friction", "0.3");
    assertEquals(0.3, ((JawGrip) scene.grip()).friction());
    assertEquals("0.3", note(scene).text());
  }

  @Test
  void oneFieldOfThePairCanBeSet() throws SceneException {
    // In the order of their names: friction first, then what is in it.
    Scene scene = with("grip/friction", PAIR, "grip/friction/state", "dry");
    assertEquals(0.15, ((JawGrip) scene.grip()).friction());
  }
}
