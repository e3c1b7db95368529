package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.path.Flat;
import io.github.holdpath.sim.scene.Scene;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/** Largest grip and flange loads over a motion (theory, eq. 1.5). */
final class PeakLoads {
  private double force;
  private double moment;
  private double flangeForce;
  private double flangeMoment;
  private double standingForce;
  private double standingMoment;
  private final Scene scene;

  private PeakLoads(Scene scene) {
    this.scene = scene;
  }

  static PeakLoads of(Scene scene, Motion motion, double step) {
    LoadModel part = new LoadModel(scene.part().body(), scene.site().gravity(), scene.part().air());
    PeakLoads peaks = new PeakLoads(scene);
    double[] state = new double[MotionState.SIZE];
    double[] load = new double[LoadModel.SIZE];
    double[] toolLoad = new double[LoadModel.SIZE];
    double[] scratch = new double[9];
    double[] sum = new double[6];
    double[] still = new double[6];
    Held held = new Held(motion);
    // The tool rides on the grip frame too; norms do not care about the flange's axes.
    LoadModel tool =
        scene
            .tool()
            .map(
                t ->
                    new LoadModel(
                        t.body().seenFrom(t.flangeToGrip().inverse()),
                        scene.site().gravity(),
                        AirLoad.NONE))
            .orElse(null);
    Vec3 arm =
        scene
            .tool()
            .map(t -> t.flangeToGrip().rotation().rotateBack(t.flangeToGrip().position()))
            .orElse(Vec3.ZERO);
    Sampler.visit(
        motion,
        step,
        (piece, time) -> {
          boolean isHeld = held.at(piece, time);
          if (!isHeld && tool == null) {
            return;
          }
          piece.state(time, state);
          Arrays.fill(sum, 0);
          Arrays.fill(still, 0);
          if (isHeld) {
            part.required(state, load, scratch);
            add(load, 0, still);
            add(load, 0, sum);
            add(load, 6, sum);
            peaks.force = Math.max(peaks.force, Flat.norm(sum, 0));
            peaks.moment = Math.max(peaks.moment, Flat.norm(sum, 3));
          }
          if (tool != null) {
            tool.required(state, toolLoad, scratch);
            add(toolLoad, 0, still);
            add(toolLoad, 0, sum);
            add(toolLoad, 6, sum);
            peaks.flangeForce = Math.max(peaks.flangeForce, Flat.norm(sum, 0));
            peaks.flangeMoment = Math.max(peaks.flangeMoment, momentAt(arm, sum));
            peaks.standingForce = Math.max(peaks.standingForce, Flat.norm(still, 0));
            peaks.standingMoment = Math.max(peaks.standingMoment, momentAt(arm, still));
          }
        });
    return peaks;
  }

  /** Largest loads, on the flange too where there is a tool. */
  Peaks peaks() {
    boolean withTool = scene.tool().isPresent();
    return new Peaks(
        force,
        moment,
        withTool ? OptionalDouble.of(flangeForce) : OptionalDouble.empty(),
        withTool ? OptionalDouble.of(flangeMoment) : OptionalDouble.empty());
  }

  /** What the flange carries; empty where there is no tool. */
  Optional<Payload> payload() {
    return Payload.of(scene, standingForce, standingMoment);
  }

  private static void add(double[] load, int from, double[] sum) {
    for (int k = 0; k < 6; k++) {
      sum[k] += load[from + k];
    }
  }

  /** Length of the moment about a point, given the wrench about another one {@code arm} from it. */
  private static double momentAt(Vec3 arm, double[] w) {
    double x = w[3] + arm.y() * w[2] - arm.z() * w[1];
    double y = w[4] + arm.z() * w[0] - arm.x() * w[2];
    double z = w[5] + arm.x() * w[1] - arm.y() * w[0];
    return Math.sqrt(x * x + y * y + z * z);
  }
}
