package io.github.holdpath.viewer.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.study.FactorTrace;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class InputsTest {
  @TempDir Path folder;

  static List<Path> demos() throws IOException {
    return Scenes.demos();
  }

  /** Each input a few positions off, one after another; single moves once of each kind. */
  @ParameterizedTest
  @MethodSource("demos")
  void eachInputSetToAnotherValueReadsBackAndJudges(Path file) throws SceneException {
    Draft draft = Draft.open(file);
    Scene scene = draft.scene();
    List<Input> all = Inputs.of(draft, scene);
    assertTrue(all.size() >= 4, all.toString());
    boolean move = false;
    for (Input input : all) {
      if (input.kind() == Input.Kind.CHOICE || (input.group() == Input.Group.MOVES && move)) {
        continue;
      }
      move = input.group() == Input.Group.MOVES;
      Scale scale = input.scale().orElseThrow();
      int here = scale.position(input.value().orElseThrow());
      String text = input.at(here > 3 ? here - 3 : here + 3);
      Draft other = draft.with(input.pointer(), text);
      assertEquals(Optional.of(text), other.value(input.pointer()), input.label());
      Scene changed = other.scene();
      assertTrue(FactorTrace.of(changed, changed.requiredSafety(), 0.05).size() > 1);
      Input back = same(Inputs.of(other, changed), input);
      assertEquals(text, back.text());
      assertFalse(back.asOpened());
      assertEquals(input.text(), back.openedText());
    }
  }

  private static Input same(List<Input> all, Input like) {
    return all.stream().filter(i -> i.key().equals(like.key())).findFirst().orElseThrow();
  }

  @Test
  void jerkIsOfferedOnlyToLawsThatUseIt() throws SceneException {
    Draft trapezoid = Draft.open(Path.of("../scenes/cover.json"));
    assertFalse(pointers(trapezoid).contains("limits/jerk"));
    assertTrue(pointers(trapezoid.with("law", "quintic")).contains("limits/jerk"));
  }

  @Test
  void turningLimitsAreOfferedOnlyWhereSomethingTurns() throws SceneException {
    assertFalse(
        pointers(Draft.open(Path.of("../scenes/cartons.json"))).contains("limits/turnSpeed"));
    assertTrue(
        pointers(Draft.open(Path.of("../scenes/steel-sheet.json"))).contains("limits/turnSpeed"));
  }

  @Test
  void aRecordingHasNoLimitsAndNoLaw() throws SceneException {
    assertTrue(
        pointers(Draft.open(Path.of("../scenes/arm-log.json"))).stream()
            .noneMatch(p -> p.startsWith("limits") || p.equals("law") || p.equals("override")));
  }

  @Test
  void whatIsNotInTheFileShowsWhatCountsAndIsWrittenWhenMoved() throws SceneException, IOException {
    Draft small = Draft.open(Scenes.small(folder));
    Input override = of(small, "override");
    assertFalse(override.inFile());
    assertEquals("100 %", override.text());
    assertTrue(override.note().contains("not in the file"));
    Draft slow = small.with("override", override.at(45));
    assertEquals(Optional.of("50 %"), slow.value("override"));
    assertTrue(of(slow, "override").inFile());
  }

  @Test
  void keepsTheUnitOfTheFileAndFewDigits() throws SceneException, IOException {
    Input mass = of(Draft.open(Scenes.small(folder)), "part/mass");
    for (int i = 0; i <= mass.scale().orElseThrow().last(); i++) {
      assertTrue(mass.at(i).matches("[0-9.]{1,6} kg"), mass.at(i));
    }
  }

  @Test
  void theOpenedValueIsMetExactly() throws SceneException, IOException {
    Draft odd = Draft.open(Scenes.small(folder)).with("part/mass", "1 kg");
    Input mass = of(odd, "part/mass");
    assertEquals("2 kg", mass.at(mass.scale().orElseThrow().position(2)));
  }

  @Test
  void oneOfTwoSpacingsChangesAlone() throws SceneException, IOException {
    Input x = of(Draft.open(Scenes.small(folder)), "grip/cups/spacing");
    assertEquals("60 mm", x.shown());
    assertEquals("70 60 mm", x.withNumber(70));
    assertEquals("80 60 mm", x.typed("8 cm"));
    assertEquals("8 kg", x.typed("8 kg"));
  }

  private static Input of(Draft draft, String pointer) throws SceneException {
    return Inputs.of(draft, draft.scene()).stream()
        .filter(i -> i.pointer().equals(pointer))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> pointers(Draft draft) throws SceneException {
    return Inputs.of(draft, draft.scene()).stream().map(Input::pointer).toList();
  }
}
