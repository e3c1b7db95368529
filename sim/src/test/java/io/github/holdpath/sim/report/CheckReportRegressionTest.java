package io.github.holdpath.sim.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.holdpath.sim.DemoScenes;
import io.github.holdpath.sim.study.HoldStudy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CheckReportRegressionTest {
  /** Table and verdict alone: what the result rests on is worded elsewhere. */
  @Test
  void cartonsAreToldAsBefore() throws IOException {
    var scene = DemoScenes.read("cartons", Map.of()).scene();
    String told = CheckReport.text(HoldStudy.run(scene, scene.requiredSafety()), Ink.PLAIN);
    String before = Files.readString(Path.of("src/test/resources/report/cartons.txt"));
    assertEquals(before, told.substring(0, told.indexOf("\nRests on:")));
  }
}
