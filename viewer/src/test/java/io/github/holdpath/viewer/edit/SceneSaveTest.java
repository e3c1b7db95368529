package io.github.holdpath.viewer.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.study.HoldStudy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SceneSaveTest {
  @TempDir Path folder;

  private static List<Path> in(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.toList();
    }
  }

  @Test
  void whatIsSavedReadsBackToTheSameResult() throws Exception {
    Draft draft = Draft.open(Scenes.small(folder)).with("limits/acceleration", "9.5 m/s^2");
    Path file = folder.resolve("other.json");
    SceneSave.save(draft, file, false);
    assertEquals(draft.json(), Files.readString(file));
    assertEquals(
        HoldStudy.run(draft.scene(), 2).factor(),
        HoldStudy.run(Draft.open(file).scene(), 2).factor());
    assertEquals(2, in(folder).size());
  }

  @Test
  void neverOverTheOpenedSceneUnlessToldSo() throws Exception {
    Path file = Scenes.small(folder);
    Draft draft = Draft.open(file).with("part/mass", "3 kg");
    SaveException e = assertThrows(SaveException.class, () -> SceneSave.save(draft, file, false));
    assertTrue(String.valueOf(e.getMessage()).contains("the opened scene itself"), e.getMessage());
    assertEquals(Scenes.SMALL, Files.readString(file));
    SceneSave.save(draft, file, true);
    assertEquals(draft.json(), Files.readString(file));
  }

  @Test
  void aFolderThatCannotBeWrittenLosesNothing() throws Exception {
    Draft draft = Draft.open(Scenes.small(folder)).with("part/mass", "3 kg");
    // A place under a regular file, as the superuser may write into any folder.
    Path blocked = Files.writeString(folder.resolve("file"), "x").resolve("a.json");
    SaveException e =
        assertThrows(SaveException.class, () -> SceneSave.save(draft, blocked, false));
    assertTrue(
        String.valueOf(e.getMessage()).contains("your changes are still here"), e.getMessage());
    assertEquals(2, in(folder).size());
  }

  @Test
  void theRobotIsFoundFromAnotherFolder() throws Exception {
    Path shaft = Path.of("../scenes/shaft-arm.json");
    Draft draft = Draft.open(shaft).with("part/mass", "4 kg");
    Path sub = Files.createDirectory(folder.resolve("deeper"));
    SceneSave.save(draft, sub.resolve("arm.json"), false);
    Draft back = Draft.open(sub.resolve("arm.json"));
    assertTrue(back.value("robot/file").orElseThrow().endsWith("scenes/shaft-arm.urdf"));
    assertTrue(back.scene().robot().isPresent());
  }

  @Test
  void savedChangesAreNoLongerUnsaved() throws Exception {
    try (Job job = Job.open(Scenes.small(folder), Judge.byStudy(), Runnable::run, 0)) {
      job.set("part/mass", "3 kg");
      assertTrue(job.state().unsaved());
      job.save(folder.resolve("c.json"), false);
      assertEquals(false, job.state().unsaved());
      assertEquals(
          Optional.of("assumed"), Draft.open(folder.resolve("c.json")).value("origins/part~1mass"));
    }
  }
}
