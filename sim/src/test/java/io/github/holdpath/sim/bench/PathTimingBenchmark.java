package io.github.holdpath.sim.bench;

import io.github.holdpath.sim.timelaw.AxisLimits;
import io.github.holdpath.sim.timing.FastestTiming;
import io.github.holdpath.sim.timing.JointRows;
import io.github.holdpath.sim.timing.SplineCurve;
import io.github.holdpath.sim.timing.TimingGoal;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time to time a spline of seven joints through five waypoints, workspace warm: 1000 even cells,
 * and cells where they are needed with all limits kept between nodes.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PathTimingBenchmark {
  private static final double[][] WAYPOINTS = {
    {0, 0.3, 0, -1.8, 0, 1.2, 0},
    {0.4, 0.6, -0.2, -1.5, 0.3, 1.0, 0.5},
    {0.9, 0.4, 0.1, -1.1, 0.1, 1.4, 0.2},
    {1.0, -0.1, 0.5, -1.4, -0.4, 1.6, -0.6},
    {0.6, 0.1, 0.4, -1.9, -0.2, 1.3, -1.1}
  };

  private static final double[] ACCELERATION = {15, 7.5, 10, 12.5, 15, 20, 20};

  private final FastestTiming fastest = new FastestTiming();
  private final JointRows rows = rows();
  private final TimingGoal even = TimingGoal.even(1000);
  private final TimingGoal adaptive = TimingGoal.adaptive(1e-3);

  private static JointRows rows() {
    List<AxisLimits> limits = new ArrayList<>();
    for (double a : ACCELERATION) {
      limits.add(new AxisLimits(-2, 2, -a, a, 1));
    }
    return new JointRows(new SplineCurve(new double[] {0, 1, 2, 3, 4}, WAYPOINTS, true), limits);
  }

  /** Both passes over 1000 even cells, limits at their ends alone. */
  @Benchmark
  public double even1000() {
    fastest.solve(rows, 0, 0, even);
    return fastest.duration();
  }

  /** Within 0.1 % of the least duration, limits kept everywhere. */
  @Benchmark
  public double adaptive() {
    fastest.solve(rows, 0, 0, adaptive);
    return fastest.duration();
  }
}
