package io.github.holdpath.sim.bench;

import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.Cup;
import io.github.holdpath.dynamics.grip.SuctionGrip;
import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.List;
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
 * Load and first-slip factor of one sample, beside the plain formulas that say the same: the
 * required wrench and the factor by records. Run as {@link ScurvePlanBenchmark} says, with {@code
 * Hold -prof gc}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class HoldBenchmark {
  /** Number of cups. */
  @Param({"6", "36"})
  public int cups;

  private HoldModel hold = new HoldModel(grip(6).patches(), List.of());
  private HoldModel.Workspace ws = hold.workspace();
  private final LoadModel loads =
      new LoadModel(
          new MassProperties(
              8, new Vec3(0.02, -0.01, 0.1), Inertia.solidBox(8, new Vec3(0.4, 0.3, 0.2))),
          new Vec3(0, 0, -9.80665),
          AirLoad.NONE);
  private final MotionState state =
      new MotionState(
          new Pose(new Vec3(0.1, 0.2, 0.3), Quaternion.ofRpy(3, 0.1, 0.4)),
          new Vec3(0.3, 0.1, 0.2),
          new Vec3(0.2, 0.4, 1),
          new Vec3(3, 4, 1),
          new Vec3(1, 2, 3));
  private final double[] flat = state.toArray();
  private final double[] load = new double[LoadModel.SIZE];
  private final double[] whole = new double[6];
  private final double[] scratch = new double[9];

  /** A grip of the wanted size. */
  @org.openjdk.jmh.annotations.Setup
  public void prepare() {
    hold = HoldModel.of(grip(cups));
    ws = hold.workspace();
  }

  private static SuctionGrip grip(int cups) {
    List<Cup> list = new ArrayList<>();
    int rows = cups / 6;
    for (int i = 0; i < cups; i++) {
      Vec3 at = new Vec3(0.06 * (i / rows % 6 - 2.5), 0.07 * (i % rows - (rows - 1) / 2.0), 0);
      list.add(new Cup("cup " + i, at, 0.04, 60, PatchStiffness.ofNormal(5000)));
    }
    return new SuctionGrip(list, List.of(), 0.5, 2e5);
  }

  /** The kernel: required wrench and use of the limits. */
  @Benchmark
  public double kernel() {
    flat[13] += 1e-9;
    loads.required(flat, load, scratch);
    for (int k = 0; k < 6; k++) {
      whole[k] = load[k] + load[6 + k];
    }
    return hold.use(whole, 0, ws);
  }

  /** The reference: the same by the plain records, every limit written out. */
  @Benchmark
  public double plain() {
    return hold.firstSlip(loads.required(state).total()).factor();
  }
}
