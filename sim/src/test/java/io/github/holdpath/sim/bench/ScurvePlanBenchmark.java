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
 * <p>Run: {@code mvn -pl sim -am test-compile dependency:build-classpath
 * -Dmdep.outputFile=target/classpath.txt}, then {@code java -cp
 * sim/target/test-classes:sim/target/classes:$(cat sim/target/classpath.txt) org.openjdk.jmh.Main
 * ScurvePlan -prof gc}.
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

  private double speed = 1.8;
  private double acceleration = 9;
  private double deceleration = 14;
  private double jerk = 90;

  /** Plans a whole law with equal accelerations. */
  @Benchmark
  public LawProfile planEqual() {
    return RestToRest.plan(
        LawKind.S_CURVE, LawLimits.symmetric(speed, acceleration, jerk), distance);
  }

  /** Plans a whole law that may brake harder than it speeds up. */
  @Benchmark
  public LawProfile planUnequal() {
    return RestToRest.plan(
        LawKind.S_CURVE, new LawLimits(speed, acceleration, deceleration, jerk), distance);
  }

  /** The reference: duration for equal limits (theory, eq. 5.9), no phases. */
  @Benchmark
  public double durationAlone() {
    double v = speed;
    double a = acceleration;
    double j = jerk;
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
