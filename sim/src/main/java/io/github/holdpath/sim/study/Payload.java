package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.sim.scene.Scene;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the flange of the robot carries, for the payload entry of its controller and for its rating.
 *
 * <p>Everything is in the flange frame F of {@code tool/flangeToGrip}: centres of mass from its
 * origin, inertias along its axes (theory, eqs. 1.6 and 1.7). A controller that counts from another
 * frame, such as that of the tool's tip, needs other numbers.
 *
 * @param withPart tool and part as one body, frame F
 * @param toolAlone the tool without a part, frame F
 * @param standingForce largest force of gravity alone over the poses of the motion, N
 * @param standingMoment largest moment of gravity alone about F's origin over those poses, N m
 * @param rated mass that the robot may carry, kg; empty where it is not told
 */
public record Payload(
    MassProperties withPart,
    MassProperties toolAlone,
    double standingForce,
    double standingMoment,
    OptionalDouble rated) {
  /** The payload of a scene; empty where it has no tool. Forces and moments as above. */
  static Optional<Payload> of(Scene scene, double standingForce, double standingMoment) {
    return scene
        .tool()
        .map(
            tool ->
                new Payload(
                    tool.body().plus(scene.part().body().seenFrom(tool.flangeToGrip())),
                    tool.body(),
                    standingForce,
                    standingMoment,
                    rated(scene)));
  }

  /**
   * Inertia of a body about F's origin, axes of F, kg m^2 (eq. 1.7).
   *
   * @param body in frame F
   */
  public static Inertia aboutFlange(MassProperties body) {
    return body.inertia().plus(Inertia.ofPointAt(body.mass(), body.centreOfMass()));
  }

  private static OptionalDouble rated(Scene scene) {
    return scene.robot().map(r -> r.robot().ratedPayload()).orElse(OptionalDouble.empty());
  }

  /** Part of the rated payload that tool and part take up, dimensionless; above 1 is overload. */
  public OptionalDouble use() {
    return rated.isPresent()
        ? OptionalDouble.of(withPart.mass() / rated.getAsDouble())
        : OptionalDouble.empty();
  }

  /** One sentence where tool and part are above the rated payload, with what to do; else empty. */
  Optional<String> warning() {
    if (use().orElse(0) <= 1) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            "Tool and part weigh %.4g kg, %.1f %% of the rated payload of %.4g kg: take a lighter"
                + " tool or a stronger robot; an overloaded robot may miss its path and its stops.",
            withPart.mass(),
            100 * use().getAsDouble(),
            rated.getAsDouble()));
  }
}
