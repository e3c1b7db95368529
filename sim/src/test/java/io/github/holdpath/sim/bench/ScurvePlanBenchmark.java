package io.github.holdpath.sim.bench;

import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawLimits;
import io.github.holdpath.sim.timelaw.LawProfile;
import io.github.holdpath.sim.timelaw.RestToRest;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time to plan one S-curve, beside the duration alone by the plain formula for equal limits.
 *
 * <p>Run: {@code mvn -pl sim -am test-compile}, write the class path with {@code mvn -pl sim
 * dependency:build-classpath -Dmdep.outputFile=target/cp.txt -Dmdep.includeScope=test} (the
 * dynamics module must be installed, or its target/classes put in front), then {@code java -cp
 * sim/target/test-classes:sim/target/classes:dynamics/target/classes:$(cat sim/target/cp.txt)
 * org.openjdk.jmh.Main ScurvePlan -prof gc}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ScurvePlanBenchmark {
  /** Distance, m: no constant acceleration; no cruise; all seven phases. */
  @Param({"0.1", "0.3", "1.2"})
  public double distance;

  /** Deceleration, m/s^2: equal to the acceleration, or more. */
  @Param({"9", "14"})
  public double deceleration;

  /** Plans a whole law. */
  @Benchmark
  public LawProfile plan() {
    return RestToRest.plan(LawKind.S_CURVE, new LawLimits(1.8, 9, deceleration, 90), distance);
  }

  /** The reference: duration for equal limits, no phases. */
  @Benchmark
  public double durationAlone() {
    double v = 1.8;
    double a = 9;
    double j = 90;
    double ramp = v * j >= a * a ? a / j + v / a : 2 * Math.sqrt(v / j);
    if (distance >= v * ramp) {
      return distance / v + ramp;
    }
    if (distance >= 2 * a * a * a / (j * j)) {
      return a / j + Math.sqrt(a / j * (a / j) + 4 * distance / a);
    }
    return 4 * Math.cbrt(distance / (2 * j));
  }
}
