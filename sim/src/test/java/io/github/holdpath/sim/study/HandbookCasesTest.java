package io.github.holdpath.sim.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.holdpath.dynamics.grip.Cup;
import io.github.holdpath.dynamics.grip.GripModel;
import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.Jobs;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.timelaw.LawKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Formulas of the trade (common practice, no source), which the whole study must give back: two
 * jaws {@code F = m (g + a) S / (2 mu)}; cups hung and lifted {@code P = m (g + a) S}, hung and
 * moved sideways {@code P = m (g + a/mu) S}, cups upright on a wall {@code P = m (g + a) S / mu}.
 * The cups' cases want the centre of mass in the plane of the lip.
 */
class HandbookCasesTest {
  /** Algebra. */
  private static final double RELATIVE = 1e-12;

  private static final double G = Jobs.G;

  @ParameterizedTest
  @EnumSource(names = {"TRAPEZOID", "S_CURVE"})
  void twoJawsHoldTwiceFrictionTimesForce(LawKind law) {
    GripModel jaws = Jobs.jaws(Mechanism.SYNCHRONISED, 100, 0.2);
    // The known figure of this case is 2.70149.
    double expected = 2 * 0.2 * 100 / (1 * (G + 5));
    assertEquals(2.70149, expected, 5e-6);
    assertFactor(expected, jaws, 1, law, 5, Jobs.START, new Vec3(0, 0, 0.8));
  }

  @ParameterizedTest
  @EnumSource(names = {"TRAPEZOID", "S_CURVE"})
  void oneCupLiftedHoldsPressureTimesArea(LawKind law) {
    double pull = Cup.pull(60_000, 0.04, 1);
    assertEquals(60_000 * Math.PI * 0.02 * 0.02, pull, RELATIVE * pull);
    double expected = pull / (2 * (G + 4));
    assertFactor(
        expected, Jobs.cups(pull, 0.5, Vec3.ZERO), 2, law, 4, Jobs.START, new Vec3(0, 0, 0.8));
  }

  @Test
  void cupHungAndMovedSideways() {
    double expected = 100 / (2 * (G + 4 / 0.5));
    assertEquals(35.6133, 100 / expected, 5e-5);
    GripModel cup = Jobs.cups(100, 0.5, Vec3.ZERO);
    assertFactor(expected, cup, 2, LawKind.TRAPEZOID, 4, Jobs.START, new Vec3(0.8, 0, 0));
  }

  @Test
  void cupOnAWallLifted() {
    double expected = 100 / (2 / 0.5 * (G + 4));
    assertEquals(55.2266, 100 / expected, 5e-5);
    Pose wall = new Pose(Vec3.ZERO, Quaternion.ofRpy(Math.PI / 2, 0, 0));
    GripModel cup = Jobs.cups(100, 0.5, Vec3.ZERO);
    assertFactor(expected, cup, 2, LawKind.TRAPEZOID, 4, wall, new Vec3(0, 0, 0.8));
  }

  @Test
  void fourCupsShareALoadThroughTheirMiddle() {
    GripModel cups =
        Jobs.cups(
            25,
            0.5,
            new Vec3(0.1, 0.1, 0),
            new Vec3(-0.1, 0.1, 0),
            new Vec3(0.1, -0.1, 0),
            new Vec3(-0.1, -0.1, 0));
    double expected = 100 / (2 * (G + 4 / 0.5));
    assertFactor(expected, cups, 2, LawKind.TRAPEZOID, 4, Jobs.START, new Vec3(0.8, 0, 0));
  }

  /**
   * Where acceleration decides the time of a cam law, its peak is the limit between two samples.
   */
  @ParameterizedTest
  @EnumSource(names = {"QUINTIC", "MODIFIED_SINE", "CYCLOIDAL"})
  void camLawsReachTheLimitOfAccelerationToo(LawKind law) {
    double expected = 100 / (2 * (G + 4));
    GripModel cup = Jobs.cups(100, 0.5, Vec3.ZERO);
    MoveLimits limits = new MoveLimits(10, 4, 1000, 1, 1, 1);
    Route route = Jobs.route(law, limits, Jobs.START, Jobs.by(0, 0, 0.8));
    StudyResult result = HoldStudy.run(Jobs.scene(Jobs.point(2, Vec3.ZERO), cup, route), 2);
    assertEquals(expected, result.factor(), RELATIVE * expected);
  }

  private static void assertFactor(
      double expected,
      GripModel grip,
      double mass,
      LawKind law,
      double acceleration,
      Pose start,
      Vec3 way) {
    MoveLimits limits = new MoveLimits(1, acceleration, 100, 1, 1, 1);
    Pose target = new Pose(start.position().plus(way), start.rotation());
    Route route = Jobs.route(law, limits, start, target);
    StudyResult result = HoldStudy.run(Jobs.scene(Jobs.point(mass, Vec3.ZERO), grip, route), 2);
    assertEquals(expected, result.factor(), RELATIVE * expected);
    assertEquals(expected / 2, result.margin(), RELATIVE * expected);
  }
}
