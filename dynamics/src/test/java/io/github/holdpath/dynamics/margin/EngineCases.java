package io.github.holdpath.dynamics.margin;

import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.JawGrip;
import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.ode4j.ode.OdeHelper;
import tools.jackson.databind.node.MissingNode;

/** Single patches at their limit, by this code and by two rigid body engines. */
final class EngineCases {
  private static final double G = TrayCases.G;
  private static final double MASS = 2;
  private static final double DEPTH = 0.08;
  private static final Vec3 X = new Vec3(1, 0, 0);

  private EngineCases() {}

  /**
   * One limit.
   *
   * @param name of the case and its engine
   * @param ours force or acceleration at the limit by the first-slip factor
   * @param mode how it goes
   * @param engine the same by an engine that looks around a given size
   */
  record Case(String name, double ours, FailureMode mode, DoubleUnaryOperator engine) {
    double theirs() {
      return engine.applyAsDouble(ours);
    }

    @Override
    public String toString() {
      return name;
    }
  }

  static List<Case> all() {
    OdeHelper.initODE2(0);
    double flat = 0.04;
    double wide = 0.1;
    TrayCases.Standing low = block(wide, flat, 0.3);
    TrayCases.Standing rough = block(wide, flat, 0.8);
    TrayCases.Standing tall = block(0.04, 0.2, 0.5);
    return List.of(
        pushed("low block pushed, plane engine", low, wide, flat, 0.3),
        pushed("rough block pushed, plane engine", rough, wide, flat, 0.8),
        pushed("tall block pushed, plane engine", tall, 0.04, 0.2, 0.5),
        carried("low block on a quick plate, plane engine", low, wide, flat, 0.3),
        carried("tall block on a quick plate, plane engine", tall, 0.04, 0.2, 0.5),
        pinched("block between jaws, plane engine", 100, 0.3),
        inSpace("low block pushed, space engine", low, wide, flat, 0.3, true),
        inSpace("tall block pushed, space engine", tall, 0.04, 0.2, 0.5, true),
        inSpace("low block on a quick plate, space engine", low, wide, flat, 0.3, false),
        inSpace("tall block on a quick plate, space engine", tall, 0.04, 0.2, 0.5, false));
  }

  private static TrayCases.Standing block(double width, double height, double mu) {
    return new TrayCases.Standing(
        "block",
        new PatchShape.Rectangle(width, DEPTH),
        mu,
        MASS,
        new Vec3(0, 0, height / 2),
        MissingNode.getInstance());
  }

  private static Case pushed(String name, TrayCases.Standing s, double w, double h, double mu) {
    return new Case(
        name, MASS * s.limit(X), s.mode(X), guess -> PlaneEngine.pushed(w, h, MASS, mu, G, guess));
  }

  private static Case carried(String name, TrayCases.Standing s, double w, double h, double mu) {
    return new Case(
        name, s.limit(X), s.mode(X), guess -> PlaneEngine.carried(w, h, MASS, mu, G, guess));
  }

  private static Case inSpace(
      String name, TrayCases.Standing s, double w, double h, double mu, boolean pushed) {
    return new Case(
        name,
        s.limit(X) * (pushed ? MASS : 1),
        s.mode(X),
        guess -> {
          try (SpaceEngine engine = new SpaceEngine(w, DEPTH, h, MASS, mu, G)) {
            return pushed ? engine.pushed(guess) : engine.carried(guess);
          }
        });
  }

  private static Case pinched(String name, double press, double mu) {
    JawGrip jaws =
        new JawGrip(
            0.04,
            new PatchShape.Rectangle(0.04, 0.04),
            X,
            Mechanism.SYNCHRONISED,
            press,
            mu,
            PatchStiffness.ALIKE,
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            List.of());
    FirstSlip first = HoldModel.of(jaws).firstSlip(new Wrench(new Vec3(0, 0, 1), Vec3.ZERO));
    return new Case(
        name, first.factor(), first.mode(), guess -> PlaneEngine.pinched(press, mu, guess));
  }
}
