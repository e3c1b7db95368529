package io.github.holdpath.sim.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import io.github.holdpath.sim.Jobs;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.motion.route.RouteStep;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PayloadTest {
  /** A few sums of numbers of size 1. */
  private static final double ALGEBRA = 1e-12;

  private static final Vec3 BOX = new Vec3(0.2, 0.3, 0.1);
  private static final MassProperties PART =
      new MassProperties(6, new Vec3(0, 0, 0.05), Inertia.solidBox(6, BOX));
  private static final MassProperties HAND =
      new MassProperties(3, new Vec3(0, 0, 0.1), Inertia.solidBox(3, new Vec3(0.1, 0.1, 0.2)));

  private static Scene scene(Pose flangeToGrip) {
    Route route =
        new Route(
            Jobs.START,
            LawKind.TRAPEZOID,
            List.of(
                new RouteStep.Move("route/1", "", Jobs.by(0.2, 0, 0), Jobs.LIMITS),
                new RouteStep.Take("route/2", 0.1),
                new RouteStep.Move(
                    "route/3",
                    "",
                    new Pose(
                        new Vec3(0.7, 0.3, 0.6), Jobs.DOWN.times(Quaternion.ofRpy(1.2, -0.4, 0.7))),
                    Jobs.LIMITS),
                new RouteStep.Release("route/4", 0.1),
                new RouteStep.Move("route/5", "", Jobs.START, Jobs.LIMITS)));
    Scene job = Jobs.scene(PART, Jobs.cups(900, 0.5, new Vec3(0, 0, 0)), route);
    return Jobs.with(job, new Scene.Tool(HAND, flangeToGrip, Optional.empty()));
  }

  private static Payload payload(Scene scene) {
    Motion motion = scene.motion().motion();
    return PeakLoads.of(scene, motion, HoldStudy.STEP).payload().orElseThrow();
  }

  @Test
  void twoBoxesAddUpAsByHand() {
    // The grip a quarter turn about the flange's z: the part's x edge lies along the flange's y.
    Pose grip = new Pose(new Vec3(0.04, 0, 0.2), Quaternion.ofRpy(0, 0, Math.PI / 2));
    Payload p = payload(scene(grip));
    assertEquals(9, p.withPart().mass(), ALGEBRA);
    // Part at (0.04, 0, 0.25), hand at (0, 0, 0.1).
    Vec3 c = p.withPart().centreOfMass();
    assertEquals(6 * 0.04 / 9, c.x(), ALGEBRA);
    assertEquals(0, c.y(), ALGEBRA);
    assertEquals((6 * 0.25 + 3 * 0.1) / 9, c.z(), ALGEBRA);
    // About the flange, each box by the theorem of parallel axes.
    Inertia about = Payload.aboutFlange(p.withPart());
    double partXx = 0.5 * (0.04 + 0.01) + 6 * 0.0625;
    double partYy = 0.5 * (0.09 + 0.01) + 6 * (0.0016 + 0.0625);
    double partZz = 0.5 * (0.04 + 0.09) + 6 * 0.0016;
    double handXx = 0.25 * (0.01 + 0.04) + 3 * 0.01;
    double handZz = 0.25 * (0.01 + 0.01);
    assertEquals(partXx + handXx, about.xx(), ALGEBRA);
    assertEquals(partYy + handXx, about.yy(), ALGEBRA);
    assertEquals(partZz + handZz, about.zz(), ALGEBRA);
    assertEquals(-6 * 0.04 * 0.25, about.xz(), ALGEBRA);
    assertEquals(0, about.xy(), ALGEBRA);
    assertEquals(0, about.yz(), ALGEBRA);
    // About the common centre: two point masses 2 kg (reduced) at their distance, and both boxes.
    double reduced = 6 * 3 / 9.0;
    double apart = 0.15;
    double yy = 0.05 + 0.0125 + reduced * (apart * apart + 0.04 * 0.04);
    assertEquals(yy, p.withPart().inertia().yy(), ALGEBRA);
    assertEquals(-reduced * 0.04 * apart, p.withPart().inertia().xz(), ALGEBRA);
    assertEquals(HAND, p.toolAlone());
  }

  @Test
  void agreesWithTheLoadModel() {
    SplittableRandom random = new SplittableRandom(91);
    for (int i = 0; i < 50; i++) {
      Pose grip = new Pose(draw(random, 0.3), Quaternion.ofRpy(random.nextDouble(), i, 0.4));
      MassProperties both = payload(scene(grip)).withPart();
      MotionState flange =
          new MotionState(
              new Pose(draw(random, 1), Quaternion.ofRpy(i, random.nextDouble(), 2)),
              draw(random, 1),
              draw(random, 3),
              draw(random, 5),
              draw(random, 9));
      Vec3 gravity = new Vec3(0, 0, -Jobs.G);
      Wrench whole = new LoadModel(both, gravity, AirLoad.NONE).required(flange).total();
      // Tool and part apart: the part in the grip frame of the flange.
      Wrench apart =
          new LoadModel(HAND, gravity, AirLoad.NONE)
              .required(flange)
              .total()
              .plus(
                  new LoadModel(PART.seenFrom(grip), gravity, AirLoad.NONE)
                      .required(flange)
                      .total());
      for (int k = 0; k < 6; k++) {
        assertEquals(apart.toArray()[k], whole.toArray()[k], 1e-12 * 500);
      }
      // Turning about the flange's origin alone: the moment is I_F alpha + omega x I_F omega.
      Quaternion r = flange.pose().rotation();
      Vec3 omega = r.rotateBack(flange.angularVelocity());
      Vec3 alpha = r.rotateBack(flange.angularAcceleration());
      Inertia about = Payload.aboutFlange(both);
      MotionState turning =
          new MotionState(
              flange.pose(),
              Vec3.ZERO,
              flange.angularVelocity(),
              Vec3.ZERO,
              flange.angularAcceleration());
      Vec3 moment = new LoadModel(both, Vec3.ZERO, AirLoad.NONE).required(turning).total().moment();
      Vec3 expected = about.times(alpha).plus(omega.cross(about.times(omega)));
      assertEquals(0, expected.minus(moment).norm(), 1e-12 * 100);
    }
  }

  private static Vec3 draw(SplittableRandom random, double size) {
    return new Vec3(
        random.nextDouble(-size, size),
        random.nextDouble(-size, size),
        random.nextDouble(-size, size));
  }

  @Test
  void standingLoadIsThatOfTheWeightInThePosesOfTheRoute() {
    Pose grip = new Pose(new Vec3(0.1, 0.05, 0.2), Quaternion.ofRpy(0.3, 0, 0.5));
    Scene scene = scene(grip);
    Payload p = payload(scene);
    assertEquals(9 * Jobs.G, p.standingForce(), 1e-12 * 90);
    Motion motion = scene.motion().motion();
    double largest = 0;
    double[] state = new double[MotionState.SIZE];
    for (MotionPiece piece : motion.pieces()) {
      boolean held = piece.from() >= motion.heldFrom() && piece.to() <= motion.heldTo();
      MassProperties body = held ? p.withPart() : p.toolAlone();
      for (int i = 0; i <= 1000; i++) {
        piece.state(piece.from() + (piece.to() - piece.from()) * i / 1000, state);
        Pose flange = MotionState.of(state).pose().times(grip.inverse());
        Vec3 arm = flange.rotation().rotate(body.centreOfMass());
        largest = Math.max(largest, Jobs.G * body.mass() * Math.hypot(arm.x(), arm.y()));
      }
    }
    // The samples differ by a step: of the moment that is its square.
    assertEquals(largest, p.standingMoment(), 1e-5 * largest);
    assertTrue(p.standingMoment() < p.standingForce() * p.withPart().centreOfMass().norm());
  }

  @Test
  void sharesOfARatingAndWarnsAboveIt() {
    Payload p = payload(scene(Pose.at(0, 0, 0.2)));
    assertTrue(p.use().isEmpty() && p.warning().isEmpty());
    assertEquals(0.9, rated(p, 10).use().orElseThrow(), ALGEBRA);
    assertTrue(rated(p, 10).warning().isEmpty());
    assertTrue(rated(p, 9).warning().isEmpty());
    String warning = rated(p, 8).warning().orElseThrow();
    assertTrue(warning.contains("9.000 kg, 112.5 % of the rated payload of 8.000 kg"), warning);
  }

  private static Payload rated(Payload p, double kg) {
    return new Payload(
        p.withPart(), p.toolAlone(), p.standingForce(), p.standingMoment(), OptionalDouble.of(kg));
  }

  @Test
  void sceneWithoutAToolHasNone() {
    Scene scene = scene(Pose.at(0, 0, 0.2));
    Scene bare = Jobs.scene(PART, Jobs.cups(900, 0.5, new Vec3(0, 0, 0)), scene.motion());
    assertTrue(PeakLoads.of(bare, bare.motion().motion(), HoldStudy.STEP).payload().isEmpty());
  }
}
