package io.github.holdpath.sim;

import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.Cup;
import io.github.holdpath.dynamics.grip.GripModel;
import io.github.holdpath.dynamics.grip.JawGrip;
import io.github.holdpath.dynamics.grip.Ledge;
import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.dynamics.grip.SuctionGrip;
import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.motion.route.RouteStep;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Drawn jobs: any grip on any route of any law, with a fixed start value. */
public final class DrawnJobs {
  private final SplittableRandom random;

  /** With a start value. */
  public DrawnJobs(long start) {
    this.random = new SplittableRandom(start);
  }

  /** One job; {@code index} walks through the kinds of grip and the two fastest laws. */
  public Scene next(int index) {
    return next(index, index % 2 == 0 ? LawKind.TRAPEZOID : LawKind.S_CURVE);
  }

  /** One job under a law; {@code index} walks through the kinds of grip. */
  public Scene next(int index, LawKind law) {
    int kind = index / 2 % 5;
    boolean upright = kind == 2;
    Route route = route(law, upright);
    return Jobs.scene(body(), grip(kind), route);
  }

  private double number(double low, double high) {
    return random.nextDouble(low, high);
  }

  private Vec3 vector(double size) {
    return new Vec3(number(-size, size), number(-size, size), number(-size, size));
  }

  private MassProperties body() {
    double mass = number(0.5, 3);
    Vec3 size = new Vec3(number(0.05, 0.3), number(0.05, 0.3), number(0.05, 0.3));
    Vec3 centre = new Vec3(number(-0.02, 0.02), number(-0.02, 0.02), number(0, 0.06));
    return new MassProperties(mass, centre, Inertia.solidBox(mass, size));
  }

  private GripModel grip(int kind) {
    if (kind == 0 || kind == 4) {
      return suction();
    }
    return new JawGrip(
        0.05,
        random.nextBoolean() ? new PatchShape.Rectangle(0.04, 0.03) : new PatchShape.Line(0.05),
        new Vec3(1, 0, 0),
        Mechanism.values()[kind - 1],
        number(100, 500),
        number(0.2, 0.6),
        PatchStiffness.ofNormal(2e4),
        3e6,
        8e6,
        ledges());
  }

  private GripModel suction() {
    int count = random.nextInt(1, 7);
    List<Cup> cups = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Vec3 at = new Vec3(0.08 * (i % 3 - 1) + number(-0.01, 0.01), 0.09 * (i / 3) - 0.045, 0);
      PatchStiffness soft = new PatchStiffness(number(2e3, 8e3), number(1e3, 5e3));
      cups.add(new Cup("cup " + (i + 1), at, number(0.03, 0.05), number(40, 120), soft));
    }
    return new SuctionGrip(cups, ledges(), number(0.3, 0.8), 3e5);
  }

  private List<Ledge> ledges() {
    List<Ledge> ledges = new ArrayList<>();
    for (int i = random.nextInt(0, 5); i > 2; i--) {
      ledges.add(new Ledge("ledge " + i, vector(0.05), vector(1), 0.03, 0.02, number(1e3, 1e5)));
    }
    return ledges;
  }

  private Route route(LawKind law, boolean upright) {
    Pose at = Jobs.START;
    List<RouteStep> steps = new ArrayList<>();
    steps.add(new RouteStep.Take("route/1", number(0, 0.1)));
    int moves = random.nextInt(1, 4);
    for (int i = 0; i < moves; i++) {
      Quaternion turn = Quaternion.ofRpy(number(-0.8, 0.8), number(-0.8, 0.8), number(-1.5, 1.5));
      // Independent fingers carry nothing along y: such jobs stay in the xz plane.
      Vec3 way = upright ? new Vec3(number(-0.5, 0.5), 0, number(-0.3, 0.3)) : vector(0.6);
      boolean turns = !upright && random.nextInt(3) > 0;
      at = new Pose(at.position().plus(way), turns ? at.rotation().times(turn) : at.rotation());
      steps.add(new RouteStep.Move("route/" + (steps.size() + 1), "", at, limits()));
      if (random.nextBoolean()) {
        steps.add(new RouteStep.Wait("route/" + (steps.size() + 1), number(0, 0.05)));
      }
    }
    return new Route(Jobs.START, law, steps);
  }

  private MoveLimits limits() {
    return new MoveLimits(
        number(0.5, 2),
        number(2, 8),
        number(20, 200),
        number(1, 4),
        number(4, 20),
        number(40, 300));
  }
}
