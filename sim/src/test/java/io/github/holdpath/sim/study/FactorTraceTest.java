package io.github.holdpath.sim.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.read.SceneReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FactorTraceTest {
  private static final double STEP = 5e-3;

  /** Two ways through the same sums, relative. */
  private static final double ROUNDING = 1e-12;

  private final StudyResult result = cartons();
  private final FactorTrace trace = FactorTrace.of(result, STEP);

  private static StudyResult cartons() {
    try {
      Scene scene = SceneReader.read(Path.of("../scenes/cartons.json"), Map.of()).scene();
      return HoldStudy.run(scene, scene.requiredSafety());
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void agreesWithTheTableOfSamples() {
    List<SampleTable.Row> rows = new ArrayList<>();
    List<Vec3> places = new ArrayList<>();
    new SampleTable(result, STEP)
        .forEach(
            row -> {
              rows.add(row);
              places.add(MotionState.of(row.state()).pose().position());
            });
    assertEquals(rows.size(), trace.size());
    int lowered = 0;
    for (int i = 0; i < rows.size(); i++) {
      SampleTable.Row row = rows.get(i);
      assertEquals(row.time(), trace.time(i));
      assertEquals(row.segment(), trace.segment(i));
      assertEquals(places.get(i), trace.position(i));
      assertEquals(row.hold().isPresent(), trace.factor(i).isPresent());
      if (row.hold().isPresent()) {
        double expected = row.hold().get().factor();
        double factor = trace.factor(i).orElseThrow();
        assertTrue(factor <= expected * (1 + ROUNDING));
        lowered += factor < expected * (1 - ROUNDING) ? 1 : 0;
        assertEquals(factor / 2, trace.margin(i).orElseThrow());
      }
    }
    assertTrue(lowered <= result.segments().size(), "lowered " + lowered);
  }

  @Test
  void leastFactorIsThatOfTheResult() {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < trace.size(); i++) {
      least = Math.min(least, trace.factor(i).orElse(least));
    }
    assertEquals(result.factor(), least, ROUNDING * least);
  }

  @ParameterizedTest
  @ValueSource(strings = {"cartons", "paint-tin", "peaches", "glass-sheet", "shaft-arm", "arm-log"})
  void withoutAStudyItIsTheSame(String name) throws Exception {
    Scene scene = SceneReader.read(Path.of("../scenes", name + ".json"), Map.of()).scene();
    FactorTrace judged = FactorTrace.of(HoldStudy.run(scene, 1.5), STEP);
    FactorTrace alone = FactorTrace.of(scene, 1.5, STEP);
    assertEquals(judged.size(), alone.size());
    for (int i = 0; i < judged.size(); i++) {
      assertEquals(judged.time(i), alone.time(i));
      assertEquals(judged.position(i), alone.position(i));
      assertEquals(judged.segment(i), alone.segment(i));
      assertEquals(judged.margin(i), alone.margin(i), "at " + judged.time(i) + " s");
      assertEquals(judged.speed(i), alone.speed(i));
      assertEquals(judged.acceleration(i), alone.acceleration(i));
    }
  }

  @Test
  void tellsSpeedAndAccelerationOfTheOrigin() {
    List<MotionState> states = new ArrayList<>();
    new SampleTable(result, STEP).forEach(row -> states.add(MotionState.of(row.state())));
    for (int i = 0; i < trace.size(); i++) {
      double speed = states.get(i).velocity().norm();
      double acceleration = states.get(i).acceleration().norm();
      assertEquals(speed, trace.speed(i), ROUNDING * Math.max(1, speed));
      assertEquals(acceleration, trace.acceleration(i), ROUNDING * Math.max(1, acceleration));
    }
  }

  @Test
  void refusesAStepThatIsNotPositive() {
    assertThrows(IllegalArgumentException.class, () -> FactorTrace.of(result, 0));
    assertThrows(IllegalArgumentException.class, () -> FactorTrace.of(result, Double.NaN));
  }
}
