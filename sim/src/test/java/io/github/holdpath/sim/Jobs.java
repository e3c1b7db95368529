package io.github.holdpath.sim;

import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.Cup;
import io.github.holdpath.dynamics.grip.GripModel;
import io.github.holdpath.dynamics.grip.JawGrip;
import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.dynamics.grip.SuctionGrip;
import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.MotionSource;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.motion.route.RouteStep;
import io.github.holdpath.sim.scene.PartShape;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Small jobs for tests, made without files. */
public final class Jobs {
  /** Standard gravity, m/s^2. */
  public static final double G = 9.80665;

  /** No limit of a quantity. */
  public static final double NONE = Double.POSITIVE_INFINITY;

  /** The grip looks down: T's z axis along gravity. */
  public static final Quaternion DOWN = Quaternion.ofRpy(Math.PI, 0, 0);

  /** Where the jobs begin. */
  public static final Pose START = new Pose(new Vec3(0.9, -0.5, 0.4), DOWN);

  /** Quick limits, 2 m/s, 5 m/s^2, 60 m/s^3 and about as much in turning. */
  public static final MoveLimits LIMITS = new MoveLimits(2, 5, 60, 3, 12, 120);

  private Jobs() {}

  /** A scene with the defaults of every test here: no shape, no tool, no notes. */
  public static Scene scene(MassProperties body, GripModel grip, MotionSource motion) {
    return new Scene(
        "A job",
        new Scene.Site(0, 293.15, new Vec3(0, 0, -G), 101_325, 1.2),
        new Scene.Part("part", body, AirLoad.NONE, Optional.empty(), Vec3.ZERO, ""),
        grip,
        2,
        Optional.empty(),
        LIMITS,
        motion,
        List.of());
  }

  /** The scene with a shape of its part, middle at {@code centre} in the grip frame. */
  public static Scene shaped(Scene s, PartShape shape, Vec3 centre) {
    Scene.Part p = s.part();
    return with(
        s,
        new Scene.Part(p.name(), p.body(), p.air(), Optional.of(shape), centre, p.material()),
        s.motion());
  }

  /** The scene with another part and motion. */
  public static Scene with(Scene s, Scene.Part part, MotionSource motion) {
    return new Scene(
        s.title(),
        s.site(),
        part,
        s.grip(),
        s.requiredSafety(),
        s.tool(),
        s.limits(),
        motion,
        s.inputs(),
        s.give());
  }

  /** The scene with a tool. */
  public static Scene with(Scene s, Scene.Tool tool) {
    return new Scene(
        s.title(),
        s.site(),
        s.part(),
        s.grip(),
        s.requiredSafety(),
        Optional.of(tool),
        s.limits(),
        s.motion(),
        s.inputs(),
        s.give());
  }

  /** The scene with notes on its inputs. */
  public static Scene with(Scene s, List<Scene.InputNote> inputs) {
    return new Scene(
        s.title(),
        s.site(),
        s.part(),
        s.grip(),
        s.requiredSafety(),
        s.tool(),
        s.limits(),
        s.motion(),
        inputs,
        s.give());
  }

  /** A mass without inertia, its centre at a place in the grip frame. */
  public static MassProperties point(double mass, Vec3 centre) {
    return new MassProperties(mass, centre, Inertia.POINT);
  }

  /** Cups of 40 mm diameter with lips at the given places. */
  public static SuctionGrip cups(double pull, double friction, Vec3... places) {
    List<Cup> cups = new ArrayList<>();
    for (Vec3 place : places) {
      String name = "cup " + (cups.size() + 1);
      cups.add(new Cup(name, place, 0.04, pull, PatchStiffness.ALIKE));
    }
    return new SuctionGrip(cups, List.of(), friction, NONE);
  }

  /** Jaws with faces of 30 by 15 mm, 40 mm apart. */
  public static JawGrip jaws(Mechanism mechanism, double force, double friction) {
    return jaws(new PatchShape.Rectangle(0.03, 0.015), mechanism, force, friction, NONE);
  }

  /** Jaws 40 mm apart. */
  public static JawGrip jaws(
      PatchShape pad, Mechanism mechanism, double force, double friction, double maxPressure) {
    return new JawGrip(
        0.04,
        pad,
        new Vec3(1, 0, 0),
        mechanism,
        force,
        friction,
        PatchStiffness.ALIKE,
        maxPressure,
        NONE,
        List.of());
  }

  /** Takes at once, moves by each step in turn, and keeps the part. */
  public static Route route(LawKind law, MoveLimits limits, Pose start, Pose... targets) {
    List<RouteStep> steps = new ArrayList<>();
    steps.add(new RouteStep.Take("route/1", 0.25));
    for (Pose target : targets) {
      String pointer = "route/" + (steps.size() + 1);
      steps.add(new RouteStep.Move(pointer, "", target, limits));
    }
    return new Route(start, law, steps);
  }

  /** A pose beside {@link #START}, turned the same. */
  public static Pose by(double x, double y, double z) {
    return new Pose(START.position().plus(new Vec3(x, y, z)), DOWN);
  }

  /** The same route with limits at which each move runs k times as fast. */
  public static Route faster(Route route, double k) {
    return new Route(
        route.start(), route.law(), route.steps().stream().map(s -> faster(s, k)).toList());
  }

  private static RouteStep faster(RouteStep step, double k) {
    if (!(step instanceof RouteStep.Move m)) {
      return step;
    }
    MoveLimits l = m.limits();
    MoveLimits quick =
        new MoveLimits(
            l.speed() * k,
            l.acceleration() * k * k,
            l.jerk() * k * k * k,
            l.turnSpeed() * k,
            l.turnAcceleration() * k * k,
            l.turnJerk() * k * k * k);
    return new RouteStep.Move(m.pointer(), m.name(), m.target(), quick);
  }
}
