package io.github.holdpath.sim.bench;

import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneText;
import io.github.holdpath.sim.study.FactorTrace;
import io.github.holdpath.sim.study.HoldStudy;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One value of a scene changed, and the margin along its path anew: what a slider waits for. Run
 * from the project's root as {@link ScurvePlanBenchmark} says, with {@code Slider}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SliderBenchmark {
  /** Scene, the value that changes, its middle and unit: the slowest of each kind. */
  @Param({
    "paint-tin part/mass 3.9 kg",
    "paint-tin override 90 %",
    "cartons override 90 %",
    "shaft-arm override 90 %",
    "arm-log route/recording/cutoff 39 Hz"
  })
  public String change = "paint-tin override 90 %";

  private String[] words = change.split(" ", -1);
  private SceneText text = open();
  private int count;

  private SceneText open() {
    try {
      return SceneText.open(Path.of("scenes", words[0] + ".json"));
    } catch (SceneException e) {
      throw new IllegalStateException("run from the project's root", e);
    }
  }

  /** Opens once. */
  @Setup
  public void prepare() {
    words = change.split(" ", -1);
    text = open();
  }

  /** Each time another value. */
  @Benchmark
  public FactorTrace changed() throws SceneException {
    count = (count + 1) % 1000;
    double value = Double.parseDouble(words[2]) * (1 + 1e-5 * count);
    text = text.with(words[1], String.format(Locale.ROOT, "%.6f %s", value, words[3]));
    Scene scene = text.preview();
    return FactorTrace.of(scene, scene.requiredSafety(), HoldStudy.STEP);
  }
}
