package io.github.holdpath.sim.bench;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.margin.WholeGrip;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
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
 * Whole-grip factor of one load, its two bounds meeting: cups alone, and patches of every shape
 * with a permitted pressure. The loads go round a fixed set of random ones. Run as {@link
 * ScurvePlanBenchmark} says, with {@code WholeGrip -prof gc}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class WholeGripBenchmark {
  private static final int LOADS = 64;

  /** What is held. */
  @Param({"6 rings", "6 mixed", "36 rings"})
  public String grip = "6 rings";

  private HoldModel hold = new HoldModel(rings(6), List.of());
  private WholeGrip whole = new WholeGrip(rings(6), List.of(), List.of());
  private WholeGrip.Workspace ws = whole.workspace();
  private final double[] loads = new double[6 * LOADS];
  private final double[] scales = new double[LOADS];
  private int next;

  /** The grip and its loads. */
  @Setup
  public void prepare() {
    List<ContactPatch> patches =
        switch (grip) {
          case "6 mixed" -> mixed();
          case "36 rings" -> rings(36);
          default -> rings(6);
        };
    hold = new HoldModel(patches, List.of());
    whole = new WholeGrip(patches, List.of(), List.of());
    ws = whole.workspace();
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < LOADS; i++) {
      for (int k = 0; k < 6; k++) {
        loads[6 * i + k] = (random.nextDouble() - 0.5) * (k < 3 ? 60 : 4);
      }
      scales[i] = hold.firstSlip(Wrench.of(loads, 6 * i)).factor();
    }
  }

  private static List<ContactPatch> rings(int count) {
    List<ContactPatch> list = new ArrayList<>();
    int rows = count / 6;
    for (int i = 0; i < count; i++) {
      Vec3 at = new Vec3(0.06 * (i / rows % 6 - 2.5), 0.07 * (i % rows - (rows - 1) / 2.0), 0);
      list.add(patch("cup " + i, at, new PatchShape.Ring(0.02), Double.POSITIVE_INFINITY));
    }
    return list;
  }

  private static List<ContactPatch> mixed() {
    PatchShape[] shapes = {
      new PatchShape.Ring(0.02),
      new PatchShape.Disc(0.015),
      new PatchShape.Rectangle(0.03, 0.02),
      new PatchShape.Rectangle(0.05, 0.01),
      new PatchShape.Line(0.03),
      new PatchShape.Ring(0.03)
    };
    List<ContactPatch> list = new ArrayList<>();
    for (int i = 0; i < shapes.length; i++) {
      Vec3 at = new Vec3(0.1 * (i % 3 - 1), 0.12 * (i / 3 - 0.5), 0);
      list.add(patch("patch " + i, at, shapes[i], 3e5));
    }
    return list;
  }

  private static ContactPatch patch(String name, Vec3 at, PatchShape shape, double maxPressure) {
    return new ContactPatch(
        name,
        new Pose(at, Quaternion.IDENTITY),
        shape,
        0.5,
        60,
        60,
        PatchStiffness.ofNormal(5000),
        maxPressure,
        Double.POSITIVE_INFINITY,
        false);
  }

  /** One solve. */
  @Benchmark
  public double factor() {
    next = (next + 1) % LOADS;
    return whole.factor(loads, 6 * next, scales[next], ws);
  }
}
