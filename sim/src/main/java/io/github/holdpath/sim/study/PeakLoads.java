package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.scene.Scene;
import java.util.Arrays;
import java.util.OptionalDouble;

/** Largest grip and flange loads over a motion (theory, eq. 1.5). */
final class PeakLoads {
  private double force;
  private double moment;
  private double flangeForce;
  private double flangeMoment;

  private PeakLoads() {}

  static Peaks of(Scene scene, Motion motion, double step) {
    LoadModel part = new LoadModel(scene.part().body(), scene.site().gravity(), scene.part().air());
    PeakLoads peaks = new PeakLoads();
    double[] state = new double[MotionState.SIZE];
    double[] load = new double[LoadModel.SIZE];
    double[] toolLoad = new double[LoadModel.SIZE];
    double[] scratch = new double[9];
    double[] sum = new double[6];
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
          if (isHeld) {
            part.required(state, load, scratch);
            add(load, sum);
            peaks.force = Math.max(peaks.force, norm(sum, 0));
            peaks.moment = Math.max(peaks.moment, norm(sum, 3));
          }
          if (tool != null) {
            tool.required(state, toolLoad, scratch);
            add(toolLoad, sum);
            peaks.flangeForce = Math.max(peaks.flangeForce, norm(sum, 0));
            sum[3] += arm.y() * sum[2] - arm.z() * sum[1];
            sum[4] += arm.z() * sum[0] - arm.x() * sum[2];
            sum[5] += arm.x() * sum[1] - arm.y() * sum[0];
            peaks.flangeMoment = Math.max(peaks.flangeMoment, norm(sum, 3));
          }
        });
    boolean withTool = tool != null;
    return new Peaks(
        peaks.force,
        peaks.moment,
        withTool ? OptionalDouble.of(peaks.flangeForce) : OptionalDouble.empty(),
        withTool ? OptionalDouble.of(peaks.flangeMoment) : OptionalDouble.empty());
  }

  private static void add(double[] load, double[] sum) {
    for (int k = 0; k < 6; k++) {
      sum[k] += load[k] + load[6 + k];
    }
  }

  private static double norm(double[] v, int at) {
    return Math.sqrt(v[at] * v[at] + v[at + 1] * v[at + 1] + v[at + 2] * v[at + 2]);
  }
}
