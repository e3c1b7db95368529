package io.github.holdpath.sim.bench;

import io.github.holdpath.sim.timelaw.AxesPlanner;
import io.github.holdpath.sim.timelaw.AxisLimits;
import io.github.holdpath.sim.timelaw.AxisPlanner;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time to plan the fastest move of one axis, over drawn problems one after the other, so that the
 * processor cannot learn a single one; and to sample a planned move. {@code -prof gc} shows that
 * neither makes objects.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class AxisPlanBenchmark {
  private static final int PROBLEMS = 4096;
  private static final int AXES = 7;

  private final double[][] states = new double[PROBLEMS][];
  private final AxisLimits[] limits = new AxisLimits[PROBLEMS];
  private final AxisPlanner planner = new AxisPlanner();
  private final AxisPlanner planned = new AxisPlanner();
  private final AxesPlanner seven = new AxesPlanner(AXES);
  private final List<List<AxisLimits>> groups = new ArrayList<>();
  private final double[][] starts = new double[PROBLEMS / AXES][3 * AXES];
  private final double[][] ends = new double[PROBLEMS / AXES][3 * AXES];
  private final double[] out = new double[4];
  private int next;

  /** Draws the problems. */
  @Setup
  public void draw() {
    SplittableRandom random = new SplittableRandom(71);
    for (int i = 0; i < PROBLEMS; i++) {
      limits[i] =
          new AxisLimits(
              -random.nextDouble(0.3, 3),
              random.nextDouble(0.3, 3),
              -random.nextDouble(1, 15),
              random.nextDouble(1, 15),
              Math.exp(random.nextDouble(Math.log(2), Math.log(300))));
      double[] start = state(random, limits[i]);
      double[] end = state(random, limits[i]);
      states[i] = new double[] {start[0], start[1], start[2], end[0], end[1], end[2]};
    }
    for (int g = 0; g < starts.length; g++) {
      groups.add(List.of(Arrays.copyOfRange(limits, AXES * g, AXES * g + AXES)));
      for (int k = 0; k < AXES; k++) {
        System.arraycopy(states[AXES * g + k], 0, starts[g], 3 * k, 3);
        System.arraycopy(states[AXES * g + k], 3, ends[g], 3 * k, 3);
      }
    }
    planned.plan(0, 0.2, 1, 1.4, 0, 0, new AxisLimits(-1, 1, -5, 5, 50));
  }

  private static double[] state(SplittableRandom random, AxisLimits l) {
    while (true) {
      double v = random.nextDouble(l.minSpeed(), l.maxSpeed());
      double a = random.nextDouble(l.minAcceleration(), l.maxAcceleration());
      double change = a * a / (2 * l.jerk());
      if (v + change <= l.maxSpeed() && v - change >= l.minSpeed()) {
        return new double[] {random.nextDouble(-1, 1), v, a};
      }
    }
  }

  private int step() {
    next = (next + 1) & (PROBLEMS - 1);
    return next;
  }

  /** From any state to any state. */
  @Benchmark
  public double anyToAny() {
    int i = step();
    double[] s = states[i];
    planner.plan(s[0], s[1], s[2], s[3], s[4], s[5], limits[i]);
    return planner.duration();
  }

  /** From any state to rest. */
  @Benchmark
  public double anyToRest() {
    int i = step();
    double[] s = states[i];
    planner.plan(s[0], s[1], s[2], s[3], 0, 0, limits[i]);
    return planner.duration();
  }

  /** From rest to rest. */
  @Benchmark
  public double restToRest() {
    int i = step();
    double[] s = states[i];
    planner.plan(s[0], 0, 0, s[3], 0, 0, limits[i]);
    return planner.duration();
  }

  /** Seven axes from any state to any state, begun and ended together. */
  @Benchmark
  public double sevenAxes() {
    int g = step() % starts.length;
    seven.plan(starts[g], ends[g], groups.get(g));
    return seven.duration();
  }

  /** One sample of a move of seven phases at changing times. */
  @Benchmark
  public double sample() {
    planned.at(planned.duration() * step() / PROBLEMS, out);
    return out[0];
  }
}
