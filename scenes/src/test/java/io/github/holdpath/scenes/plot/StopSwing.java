package io.github.holdpath.scenes.plot;

import io.github.holdpath.dynamics.compliance.GripModes;
import io.github.holdpath.dynamics.compliance.GripResponse;
import io.github.holdpath.dynamics.compliance.GripStiffness;
import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.timelaw.LawPhase;
import io.github.holdpath.sim.timelaw.LawProfile;
import java.util.List;

/**
 * What a part of 1 kg on springs still swings when a move has ended. Its own frequency is 1 Hz, and
 * the move is stretched in time instead: only frequency times duration counts.
 */
final class StopSwing {
  /** Damping ratio, dimensionless. */
  static final double DAMPING = 0.05;

  private static final double OMEGA = 2 * Math.PI;
  private static final int NODES = GripResponse.COEFFICIENTS;

  /** Stretches in the duration of a law; six nodes in each leave 1e-9 of a sine's peak. */
  private static final int STRETCHES = 24;

  private static final double[] REST = new double[6];

  private final GripResponse response;
  private final double[] values = new double[NODES];
  private final double[] load = new double[6 * NODES];

  StopSwing() {
    double stiffness = OMEGA * OMEGA;
    ContactPatch pad =
        new ContactPatch(
            "pad",
            Pose.IDENTITY,
            new PatchShape.Disc(0.1),
            0.5,
            0,
            0,
            new PatchStiffness(stiffness, stiffness),
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            false);
    MassProperties part = new MassProperties(1, Vec3.ZERO, Inertia.POINT);
    GripStiffness grip = GripStiffness.of(List.of(pad), List.of(), new boolean[1]);
    response = new GripResponse(GripModes.of(grip, part, AirLoad.NONE), DAMPING);
  }

  /**
   * Size of the swing at the end of a move.
   *
   * @param law its shape; its duration and way do not matter
   * @param cycles natural frequency times duration of the move, dimensionless
   * @return the acceleration that the swing is worth, its size times the square of the angular
   *     frequency, m/s^2, for a move of 1 m in 1 s
   */
  double after(LawProfile law, double cycles) {
    double slower = cycles / law.duration();
    double scale = 1 / (slower * slower * law.distance());
    response.rest(REST);
    for (LawPhase phase : law.phases()) {
      int pieces = (int) Math.ceil(STRETCHES * phase.duration() / law.duration());
      double piece = phase.duration() / pieces;
      for (int i = 0; i < pieces; i++) {
        put(phase, phase.from() + i * piece, piece, scale);
        response.enter(piece * slower, load);
        response.leave();
      }
    }
    double swing = response.freeSwing(REST, Vec3.ZERO).bound(0);
    double omega = OMEGA * cycles;
    return swing * omega * omega;
  }

  /** The load along x as the polynomial through even nodes: Newton's form, then powers. */
  private void put(LawPhase phase, double from, double length, double scale) {
    for (int k = 0; k < NODES; k++) {
      double time = Math.min(phase.to(), from + k * length / (NODES - 1));
      values[k] = scale * phase.accelerationAt(time);
    }
    for (int order = 1; order < NODES; order++) {
      for (int k = NODES - 1; k >= order; k--) {
        values[k] = (values[k] - values[k - 1]) * (NODES - 1) / order;
      }
    }
    for (int k = 0; k < NODES; k++) {
      load[k] = 0;
    }
    for (int order = NODES - 1; order >= 0; order--) {
      double node = (double) order / (NODES - 1);
      for (int k = NODES - 1; k > 0; k--) {
        load[k] = load[k - 1] - node * load[k];
      }
      load[0] = values[order] - node * load[0];
    }
  }
}
