package io.github.holdpath.sim.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.margin.FailureMode;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.Jobs;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.motion.route.RouteStep;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HoldStudyTest {
  /** Algebra on loads of some ten newtons. */
  private static final double ALGEBRA = 1e-9;

  private static final LawKind TRAPEZOID = LawKind.TRAPEZOID;
  private static final Route LIFT =
      Jobs.route(TRAPEZOID, Jobs.LIMITS, Jobs.START, Jobs.by(0, 0, 0.5));

  @Test
  void liftAsksForWeightAndAcceleration() {
    StudyResult result = study(oneCup(200, 0.03), LIFT);
    assertEquals(2 * (Jobs.G + 5), result.peaks().gripForce(), ALGEBRA);
    assertEquals(0, result.peaks().gripMoment(), ALGEBRA);
    assertTrue(result.peaks().flangeForce().isEmpty());
    assertTrue(result.peaks().flangeMoment().isEmpty());
  }

  @Test
  void flangeCarriesToolAndPart() {
    // Sideways along x at 5 m/s^2. Flange 0.2 m above the grip, tool's centre 0.05 m below it.
    Route route = Jobs.route(TRAPEZOID, Jobs.LIMITS, Jobs.START, Jobs.by(0.8, 0, 0));
    Scene.Tool tool =
        new Scene.Tool(Jobs.point(3, new Vec3(0, 0, 0.05)), Pose.at(0, 0, 0.2), Optional.empty());
    Scene scene = Jobs.with(oneCup(200, 0.03), tool);
    Peaks peaks = study(scene, route).peaks();
    assertEquals(5 * Math.hypot(Jobs.G, 5), peaks.flangeForce().orElseThrow(), ALGEBRA);
    double moment = 5 * (2 * (0.2 + 0.03) + 3 * 0.05);
    assertEquals(moment, peaks.flangeMoment().orElseThrow(), ALGEBRA);
    assertEquals(2 * 5 * 0.03, peaks.gripMoment(), ALGEBRA);
  }

  @Test
  void flangeCarriesTheToolAloneBeforeThePartIsTaken() {
    // The tool alone is thrown about faster than tool and part.
    RouteStep approach = new RouteStep.Move("route/1", "", Jobs.by(0, 0, 0.3), Jobs.LIMITS);
    RouteStep still = new RouteStep.Take("route/2", 0.1);
    Route route = new Route(Jobs.START, TRAPEZOID, List.of(approach, still));
    Scene.Tool tool =
        new Scene.Tool(Jobs.point(9, Vec3.ZERO), Pose.at(0, 0, 0.2), Optional.empty());
    Scene scene = Jobs.with(oneCup(200, 0.03), tool);
    Peaks peaks = study(scene, route).peaks();
    assertEquals(9 * (Jobs.G + 5), peaks.flangeForce().orElseThrow(), ALGEBRA);
    assertEquals(2 * Jobs.G, peaks.gripForce(), ALGEBRA);
  }

  @Test
  void onlyHeldMovesHaveAFactor() {
    Route route =
        new Route(
            Jobs.START,
            TRAPEZOID,
            List.of(
                new RouteStep.Move("route/1", "", Jobs.by(0, 0, 0.3), Jobs.LIMITS),
                new RouteStep.Take("route/2", 0.2),
                new RouteStep.Move("route/3", "", Jobs.by(0.5, 0, 0.3), Jobs.LIMITS),
                new RouteStep.Release("route/4", 0.2),
                new RouteStep.Move("route/5", "", Jobs.START, Jobs.LIMITS)));
    StudyResult result = study(oneCup(200, 0), route);
    List<SegmentResult> s = result.segments();
    assertFalse(s.get(0).held());
    assertTrue(s.get(1).held());
    assertFalse(s.get(2).held());
    assertEquals(100, s.get(0).speedHeadroom());
    assertEquals(result.worst(), s.get(1).worst().orElseThrow());
    double held = s.get(1).move().to() - s.get(1).move().from();
    assertEquals(held, result.heldTime(), ALGEBRA);
    assertEquals(result.motion().duration(), result.cycleTime());
    assertEquals(3600 / result.cycleTime(), result.partsPerHour());
  }

  @Test
  void aTakeWithoutPauseLeavesTheMoveBeforeItUnheld() {
    // The approach brakes at 5 m/s^2 up to the instant at which the part is taken.
    Route route =
        new Route(
            Jobs.START,
            TRAPEZOID,
            List.of(
                new RouteStep.Move("route/1", "", Jobs.by(0, 0, -0.3), Jobs.LIMITS),
                new RouteStep.Take("route/2", 0),
                new RouteStep.Wait("route/3", 0.1),
                new RouteStep.Release("route/4", 0),
                new RouteStep.Move("route/5", "", Jobs.START, Jobs.LIMITS)));
    Scene scene = oneCup(200, 0);
    StudyResult result = study(scene, route);
    double atRest = 200 / (2 * Jobs.G);
    assertEquals(atRest, result.factor(), ALGEBRA);
    assertEquals(2 * Jobs.G, result.peaks().gripForce(), ALGEBRA);
    // Held in the wait alone, which belongs to the move before it.
    assertTrue(result.segments().get(0).held());
    assertFalse(result.segments().get(1).held());
    Scene whole = Jobs.with(scene, scene.part(), route);
    for (double time : new double[] {result.motion().heldFrom(), result.motion().heldTo()}) {
      Explanation told = Explanation.at(whole, 2, time);
      assertTrue(told.held());
      assertEquals(atRest, told.first().factor(), ALGEBRA);
    }
    new SampleTable(result, 1e-3)
        .forEach(
            row -> row.hold().ifPresent(first -> assertEquals(atRest, first.factor(), ALGEBRA)));
  }

  @Test
  void standingStillIsJudgedWithoutAnyMove() {
    Route standing =
        new Route(
            Jobs.START,
            TRAPEZOID,
            List.of(new RouteStep.Take("route/1", 0.1), new RouteStep.Wait("route/2", 1)));
    StudyResult result = study(oneCup(200, 0), standing);
    assertEquals(200 / (2 * Jobs.G), result.factor(), ALGEBRA);
    // The motion adds nothing, so no speed is too much.
    assertEquals(100, result.speedHeadroom());
    assertEquals(0, result.worst().segment());
    assertTrue(result.segments().isEmpty());
  }

  @Test
  void preloadUseIsThatOfTheFullestPatch() {
    // 200 N on 30 x 15 mm is 0.444 MPa of 2 MPa.
    PatchShape pad = new PatchShape.Rectangle(0.03, 0.015);
    Scene scene =
        Jobs.scene(
            Jobs.point(1, Vec3.ZERO), Jobs.jaws(pad, Mechanism.SYNCHRONISED, 200, 0.4, 2e6), LIFT);
    PreloadUse use = study(scene, LIFT).preload().orElseThrow();
    assertEquals("pad +y", use.patch());
    assertEquals(200, use.preload());
    assertEquals(900, use.permitted(), ALGEBRA);
    assertEquals(2.0 / 9, use.ratio(), ALGEBRA);
    assertTrue(study(oneCup(200, 0), LIFT).preload().isEmpty());
  }

  @Test
  void partCrushedAtRestHasNoFactorAtAll() {
    PatchShape pad = new PatchShape.Rectangle(0.03, 0.015);
    Scene scene =
        Jobs.scene(
            Jobs.point(1, Vec3.ZERO), Jobs.jaws(pad, Mechanism.SYNCHRONISED, 200, 0.4, 4e5), LIFT);
    StudyResult result = study(scene, LIFT);
    assertEquals(0, result.factor());
    assertEquals(FailureMode.CRUSH, result.worst().first().mode());
    assertEquals(0, result.speedHeadroom());
    assertEquals(Verdict.DOES_NOT_HOLD, result.verdict());
    assertTrue(result.preload().orElseThrow().ratio() > 1);
  }

  @Test
  void fingersThatFloatCarryNothingAlongTheirClosingAxis() {
    Scene scene =
        Jobs.scene(Jobs.point(1, Vec3.ZERO), Jobs.jaws(Mechanism.INDEPENDENT, 200, 0.4), LIFT);
    Route along = Jobs.route(TRAPEZOID, Jobs.LIMITS, Jobs.START, Jobs.by(0, 0.5, 0));
    StudyResult result = study(scene, along);
    assertEquals(0, result.factor());
    assertEquals(FailureMode.FLOATS, result.worst().first().mode());
    assertTrue(study(scene, LIFT).factor() > 2);
  }

  @Test
  void verdictComparesTheFactorWithTheRequiredSafety() {
    Scene scene = oneCup(2 * (Jobs.G + 5) * 3, 0);
    double factor = study(scene, LIFT).factor();
    assertEquals(3, factor, ALGEBRA);
    Scene job = Jobs.with(scene, scene.part(), LIFT);
    assertEquals(Verdict.HOLDS, HoldStudy.run(job, factor).verdict());
    assertEquals(Verdict.DOES_NOT_HOLD, HoldStudy.run(job, Math.nextUp(factor)).verdict());
    assertEquals(1, HoldStudy.run(job, factor).margin());
  }

  /** Samples at 0.3 s fall on a whole step but for rounding; the peak beside it must be found. */
  @Test
  void findsAPeakBesideABreakpointOnAWholeStep() {
    Inertia box = Inertia.solidBox(2, new Vec3(0.3, 0.2, 0.1));
    MassProperties body = new MassProperties(2, new Vec3(0.1, 0.05, 0.1), box);
    Pose turned = new Pose(Jobs.START.position(), Jobs.DOWN.times(Quaternion.ofRpy(1.2, 0.5, 0)));
    for (double pause : new double[] {0.3, 0.6, 0.7, 1.1}) {
      Route route =
          new Route(
              Jobs.START,
              LawKind.S_CURVE,
              List.of(
                  new RouteStep.Take("route/1", pause),
                  new RouteStep.Move("route/2", "", turned, Jobs.LIMITS)));
      Scene scene = Jobs.scene(body, Jobs.cups(300, 0.5, new Vec3(0.05, 0, 0)), route);
      StudyResult late = study(scene, route);
      Route early =
          new Route(
              Jobs.START,
              LawKind.S_CURVE,
              List.of(
                  new RouteStep.Take("route/1", 0),
                  new RouteStep.Move("route/2", "", turned, Jobs.LIMITS)));
      assertEquals(study(scene, early).factor(), late.factor(), ALGEBRA);
    }
  }

  /** Part of 2 kg under one cup with mu 0.5, its centre so far below the lip. */
  private static Scene oneCup(double pull, double below) {
    return Jobs.scene(Jobs.point(2, new Vec3(0, 0, below)), Jobs.cups(pull, 0.5, Vec3.ZERO), LIFT);
  }

  private static StudyResult study(Scene scene, Route route) {
    return HoldStudy.run(Jobs.with(scene, scene.part(), route), 2);
  }
}
