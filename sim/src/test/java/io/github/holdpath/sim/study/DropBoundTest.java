package io.github.holdpath.sim.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.sim.DemoScenes;
import io.github.holdpath.sim.DrawnJobs;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The least whole-grip factor against one solve for every sample: the bounds must spare none. */
class DropBoundTest {
  private static final int JOBS = 60;

  /** What the search may miss, and what two solves may differ by. */
  private static final double PROMISED = DropSearch.TOLERANCE + 1e-6;

  private static double everySample(StudyResult result, double step) {
    double[] least = {HoldModel.NO_LIMIT};
    new SampleTable(result, step)
        .forEach(
            row -> {
              if (row.hold().isPresent()) {
                least[0] = Math.min(least[0], row.wholeGripFactor());
              }
            });
    return least[0];
  }

  private static void agrees(Scene scene, double step, String what) {
    StudyResult result = HoldStudy.run(scene, scene.requiredSafety());
    double least = everySample(result, step);
    double found = result.drop().factor();
    assertTrue(found <= least * (1 + PROMISED), what + ": " + found + " above " + least);
    assertTrue(found >= result.factor() * (1 - PROMISED), what + " is below the first slip");
    double segments =
        result.segments().stream()
            .flatMap(s -> s.drop().stream())
            .mapToDouble(DropBound::factor)
            .min()
            .orElse(HoldModel.NO_LIMIT);
    assertEquals(segments, found);
  }

  @ParameterizedTest
  @MethodSource("io.github.holdpath.sim.DemoScenes#planned")
  void noSampleOfADemoSceneIsLower(String name) throws SceneException {
    agrees(SceneReader.read(DemoScenes.file(name), Map.of()).scene(), 2e-3, name);
  }

  @Test
  void noSampleOfADrawnJobIsLower() {
    for (int i = 0; i < JOBS; i++) {
      agrees(new DrawnJobs(9000 + i).next(i), 10e-3, "job " + i);
    }
  }

  /** What the search rests on: the loads that a grip can hold are a convex set. */
  @Test
  void usesOfLoadsAddUpToAtMostTheirSum() {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < JOBS; i++) {
      Scene scene = new DrawnJobs(300 + i).next(i);
      HoldModel hold = HoldModel.of(scene.grip());
      HoldModel.Workspace ws = hold.workspace();
      DropSearch search =
          new DropSearch(hold, ws, io.github.holdpath.dynamics.margin.WholeGrip.of(scene.grip()));
      double[] three = new double[18];
      for (int k = 0; k < 6; k++) {
        three[k] = (random.nextDouble() - 0.5) * (k < 3 ? 40 : 3);
        three[6 + k] = (random.nextDouble() - 0.5) * (k < 3 ? 40 : 3);
        three[12 + k] = three[k] + three[6 + k];
      }
      double[] use = new double[3];
      for (int k = 0; k < 3; k++) {
        use[k] = search.use(three, 6 * k, hold.use(three, 6 * k, ws));
      }
      assertTrue(use[2] <= (use[0] + use[1]) * (1 + PROMISED), "grip " + i);
    }
  }
}
