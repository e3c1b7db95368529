package io.github.holdpath.sim.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.margin.FirstSlip;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CarefulLookTest {
  /** The warning prints three decimals. */
  private static final double PRINTED = 5e-4;

  private static Scene cartons() throws SceneException {
    return SceneReader.read(Path.of("../scenes/cartons.json"), Map.of()).scene();
  }

  private static List<String> careful(StudyResult result) {
    return result.warnings().stream().filter(w -> w.startsWith("Taken with care")).toList();
  }

  @Test
  void warnsWhereOnlyTheCarefulFactorFails() throws SceneException {
    Scene scene = cartons();
    StudyResult plain = HoldStudy.run(scene, 1);
    FirstSlip careful = HoldModel.of(scene.grip()).careful(plain.worst().load().total());
    assertTrue(careful.factor() < plain.factor(), "the tilted cups slip earlier");

    double between = (careful.factor() + plain.factor()) / 2;
    StudyResult result = HoldStudy.run(scene, between);
    assertTrue(result.margin() >= 1, "the plain factor passes");
    List<String> warnings = careful(result);
    assertEquals(1, warnings.size());
    assertTrue(warnings.get(0).contains(careful.patchName()), warnings.get(0));
    String number = warnings.get(0).replaceAll(".*slips at factor ([0-9.]+) at.*", "$1");
    assertEquals(careful.factor(), Double.parseDouble(number), PRINTED);
  }

  @Test
  void isQuietWhereBothPassOrBothFail() throws SceneException {
    assertTrue(careful(HoldStudy.run(cartons(), 1)).isEmpty());
    StudyResult failing = HoldStudy.run(cartons(), 4);
    assertEquals(Verdict.DOES_NOT_HOLD, failing.verdict());
  }
}
