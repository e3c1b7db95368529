package io.github.holdpath.sim.bench;

import io.github.holdpath.sim.report.CheckReport;
import io.github.holdpath.sim.report.Ink;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.sim.study.SampleTable;
import java.nio.file.Path;
import java.util.Map;
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
import org.openjdk.jmh.infra.Blackhole;

/**
 * A whole check of the cartons scene, from its text to the table, beside every sample's factor and
 * headroom computed in full. Run from the project's root as {@link ScurvePlanBenchmark} says, with
 * {@code Check}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class CheckBenchmark {
  /** What is checked: a demo scene whose part swings, and ten moves of a part held by six cups. */
  @Param({"scenes/cartons.json", "sim/src/test/resources/bench/ten-moves.json"})
  public String file = "scenes/cartons.json";

  private Scene scene = read();

  private Scene read() {
    try {
      return SceneReader.read(Path.of(file), Map.of()).scene();
    } catch (SceneException e) {
      throw new IllegalStateException("run from the project's root", e);
    }
  }

  /** Reads once. */
  @Setup
  public void prepare() {
    scene = read();
  }

  /** Text to table. */
  @Benchmark
  public String wholeCheck() {
    return CheckReport.text(HoldStudy.run(read(), 2), Ink.PLAIN);
  }

  /** Judging alone. */
  @Benchmark
  public double judgeAlone() {
    return HoldStudy.run(scene, 2).factor();
  }

  /** The reference: every sample in full, without bounds that spare the root searches. */
  @Benchmark
  public void everySample(Blackhole hole) {
    new SampleTable(HoldStudy.run(scene, 2), HoldStudy.STEP).forEach(hole::consume);
  }
}
