package io.github.holdpath.viewer.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DraftTest {
  @TempDir Path folder;
  private Draft small;

  @BeforeEach
  void open() throws IOException, SceneException {
    small = Draft.open(Scenes.small(folder));
  }

  @Test
  void changesTheValueAndNothingElse() {
    String json = small.with("limits/speed", "1.5 m/s").json();
    assertEquals(Scenes.SMALL.replace("\"1 m/s\"", "\"1.5 m/s\""), json);
  }

  @Test
  void addsAFieldThatTheFileDoesNotHave() throws SceneException {
    Draft slow = small.with("override", "50 %").with("site/altitude", "500 m");
    assertEquals(Optional.of("50 %"), slow.value("override"));
    assertEquals(500, slow.scene().site().altitude());
    assertTrue(slow.json().contains("\"note\": \"kept as it is\""));
  }

  @Test
  void aNumberIsWrittenWithoutQuotes() throws SceneException {
    Draft rough = small.with("grip/friction", "0.7");
    assertTrue(rough.json().contains("\"friction\": 0.7,"), rough.json());
    assertEquals(0.7, rough.scene().grip().patches().get(0).friction());
  }

  @Test
  void aChangedValueIsNoLongerMeasured() throws SceneException {
    Draft heavy = small.with("part/mass", "3 kg");
    assertEquals(Map.of("part/mass", "measured"), heavy.countAsAssumed());
    assertEquals(Optional.of("assumed"), heavy.value("origins/part~1mass"));
    assertTrue(
        heavy.scene().inputs().stream()
            .filter(i -> i.pointer().equals("part/mass"))
            .allMatch(i -> i.origin() == Scene.Origin.ASSUMED));
    assertEquals(Optional.of("data sheet"), heavy.value("origins/grip~1supply~1vacuum"));
  }

  @Test
  void theOldValueIsMeasuredAgain() {
    assertEquals(Scenes.SMALL, small.with("part/mass", "3 kg").with("part/mass", "2 kg").json());
    assertEquals(Scenes.SMALL, small.with("override", "50 %").reset("override").json());
    assertFalse(small.with("part/mass", "3 kg").reset("part/mass").isChanged());
  }

  @Test
  void anOriginOfAWholeObjectGoesWithEachOfItsFields() throws IOException, SceneException {
    Files.writeString(
        folder.resolve("b.json"),
        Scenes.SMALL
            .replace("\"30 mm\" }", "\"30 mm\", \"stiffness\": { \"normal\": \"6 N/mm\" } }")
            .replace("\"origins\": {", "\"origins\": { \"grip/cups/stiffness\": \"measured\","));
    Draft b = Draft.open(folder.resolve("b.json")).with("grip/cups/stiffness/shear", "5 N/mm");
    assertEquals(Map.of("grip/cups/stiffness", "measured"), b.countAsAssumed());
    b.scene();
  }

  @Test
  void refusesWhatTheReaderRefusesInItsWords() {
    assertTrue(small.refusal("limits/speed", "3 kg").orElseThrow().contains("a speed is due"));
    assertTrue(small.refusal("limits/speed", "3").orElseThrow().contains("has no unit"));
    assertEquals(Optional.empty(), small.refusal("limits/speed", "900 mm/s"));
  }

  @Test
  void aValueWithQuotesAndBackslashesStaysOneText() {
    assertEquals(Optional.of("a \"b\" \\c"), small.with("title", "a \"b\" \\c").value("title"));
  }

  @Test
  void aPointerIntoAValueIsACallersBug() {
    assertThrows(IllegalArgumentException.class, () -> small.with("law/x", "1"));
  }

  @Test
  void faultsHaveTheLineOfTheFile() {
    SceneException e =
        assertThrows(SceneException.class, () -> small.with("limits/speed", "-1 m/s").scene());
    assertEquals("limits/speed", e.faults().get(0).pointer());
    assertEquals(14, e.faults().get(0).line());
  }
}
