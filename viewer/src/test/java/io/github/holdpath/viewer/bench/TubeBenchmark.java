package io.github.holdpath.viewer.bench;

import com.jme3.scene.Mesh;
import com.jme3.util.BufferAllocatorFactory;
import com.jme3.util.PrimitiveAllocator;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.viewer.colour.MarginStep;
import io.github.holdpath.viewer.convert.ToEngine;
import io.github.holdpath.viewer.mesh.MeshData;
import io.github.holdpath.viewer.mesh.TubeMesh;
import io.github.holdpath.viewer.mesh.TubeRun;
import java.nio.ByteBuffer;
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
 * A path of about 50,000 vertices: made, handed to the engine, and only its colours. The demo
 * scenes have 5,000 to 22,000.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class TubeBenchmark {
  private static final int RUNS = 40;
  private static final int POINTS = 103;

  private final List<TubeRun> runs = runs();
  private final MeshData data = TubeMesh.of(runs);

  /** The engine's memory as the viewer takes it. */
  public TubeBenchmark() {
    System.setProperty(
        BufferAllocatorFactory.PROPERTY_BUFFER_ALLOCATOR_IMPLEMENTATION,
        PrimitiveAllocator.class.getName());
  }

  private static List<TubeRun> runs() {
    List<TubeRun> all = new ArrayList<>();
    MarginStep[] steps = MarginStep.values();
    for (int r = 0; r < RUNS; r++) {
      List<Vec3> points = new ArrayList<>();
      for (int i = 0; i < POINTS; i++) {
        double a = 1e-3 * (r * (POINTS - 1) + i);
        points.add(new Vec3(Math.cos(3 * a), Math.sin(5 * a), a));
      }
      MarginStep step = steps[r % steps.length];
      all.add(new TubeRun(points, step.rgb(), 0.006, !step.passes(), r == 0, r == RUNS - 1));
    }
    return all;
  }

  /** The surface of the path. */
  @Benchmark
  public MeshData tube() {
    return TubeMesh.of(runs);
  }

  /** All of it handed to the engine: places, normals, colours, triangles, bounds. */
  @Benchmark
  public Mesh toEngine() {
    return ToEngine.mesh(data);
  }

  /** Its colours alone handed to the engine. */
  @Benchmark
  public ByteBuffer colours() {
    return ToEngine.colours(data.colours());
  }
}
