package io.github.holdpath.sim.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.DemoScenes;
import io.github.holdpath.sim.Jobs;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.motion.recorded.Recording;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.motion.route.RouteStep;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LawAtTest {
  /** Sums of a few phases, relative. */
  private static final double ALGEBRA = 1e-11;

  private static Motion motion(LawKind law, MoveLimits limits, Pose target) {
    return new Route(
            Jobs.START,
            law,
            List.of(
                new RouteStep.Take("route/1", 0.1),
                new RouteStep.Move("route/2", "", target, limits)))
        .motion();
  }

  private static LawAt.Planned planned(Motion motion, int piece) {
    return assertInstanceOf(LawAt.Planned.class, LawAt.of(motion, motion.pieces().get(piece)));
  }

  @Test
  void trapezoidHasTheThreePhasesOfTheHandSum() {
    // 1 m at 2 m/s and 5 m/s^2: 0.4 s and 0.4 m up and down, 0.1 s across the rest.
    Motion motion = motion(LawKind.TRAPEZOID, Jobs.LIMITS, Jobs.by(0, 1, 0));
    LawAt.Planned law = planned(motion, 2);
    assertEquals(3, law.phases().size());
    assertEquals(1, law.current());
    double[][] expected = {
      {0.1, 0.5, 0, 2, 5, 5}, {0.5, 0.6, 2, 2, 0, 0}, {0.6, 1.0, 2, 0, -5, -5}
    };
    for (int i = 0; i < 3; i++) {
      LawAt.Phase p = law.phases().get(i);
      double[] found = {
        p.from(), p.to(), p.startSpeed(), p.endSpeed(), p.startAcceleration(), p.endAcceleration()
      };
      for (int k = 0; k < 6; k++) {
        assertEquals(expected[i][k], found[k], ALGEBRA);
      }
    }
    assertEquals(
        List.of("speed", "acceleration"),
        law.limitsReached().stream().map(LawAt.LimitReached::quantity).toList());
    assertTrue(law.limitsReached().stream().allMatch(LawAt.LimitReached::governs));
  }

  @Test
  void shortTripsDoNotReachTheirSpeed() {
    LawAt.Planned law = planned(motion(LawKind.TRAPEZOID, Jobs.LIMITS, Jobs.by(0.2, 0, 0)), 1);
    LawAt.LimitReached speed = law.limitsReached().get(0);
    assertEquals(1, speed.peak(), ALGEBRA);
    assertFalse(speed.governs());
    assertTrue(law.limitsReached().get(1).governs());
  }

  @Test
  void turnThatTakesLongerThanTheWayGoverns() {
    Pose target =
        new Pose(Jobs.by(0.1, 0, 0).position(), Jobs.DOWN.times(Quaternion.ofRpy(0, 0, 2)));
    LawAt.Planned law = planned(motion(LawKind.S_CURVE, Jobs.LIMITS, target), 1);
    assertEquals(6, law.limitsReached().size());
    for (LawAt.LimitReached l : law.limitsReached()) {
      assertEquals(l.quantity().startsWith("turn"), l.unit().startsWith("rad"), l.quantity());
      assertFalse(l.governs() && !l.quantity().startsWith("turn"), l.quantity());
    }
    assertTrue(law.limitsReached().stream().anyMatch(LawAt.LimitReached::governs));
  }

  @ParameterizedTest
  @EnumSource(LawKind.class)
  void someLimitGovernsAndNoneIsPassed(LawKind kind) {
    SplittableRandom random = new SplittableRandom(17);
    for (int i = 0; i < 200; i++) {
      MoveLimits limits =
          new MoveLimits(
              random.nextDouble(0.1, 3),
              random.nextDouble(1, 10),
              random.nextDouble(10, 200),
              random.nextDouble(0.3, 4),
              random.nextDouble(2, 20),
              random.nextDouble(20, 400));
      double way = i % 3 == 0 ? 0 : random.nextDouble(0.01, 1);
      double turn = i % 3 == 1 ? 0 : random.nextDouble(0.1, 3);
      Pose target =
          new Pose(
              Jobs.START.position().plus(new Vec3(way, 0, 0)),
              Jobs.DOWN.times(Quaternion.ofRpy(0, 0, turn)));
      LawAt.Planned law = planned(motion(kind, limits, target), 1);
      assertTrue(law.limitsReached().stream().anyMatch(LawAt.LimitReached::governs));
      for (LawAt.LimitReached l : law.limitsReached()) {
        assertTrue(l.peak() <= l.limit() * (1 + ALGEBRA), l.toString());
      }
    }
  }

  @Test
  void phasesOfConstantJerkAddUpToTheWayAndMeet() {
    SplittableRandom random = new SplittableRandom(18);
    for (int i = 0; i < 100; i++) {
      boolean turnsOnly = i % 2 == 0;
      double size = random.nextDouble(0.05, 2);
      Pose target =
          turnsOnly
              ? new Pose(Jobs.START.position(), Jobs.DOWN.times(Quaternion.ofRpy(0, size, 0)))
              : Jobs.by(0, size, 0);
      LawAt.Planned law = planned(motion(LawKind.S_CURVE, Jobs.LIMITS, target), 1);
      double way = 0;
      LawAt.Phase last = law.phases().get(0);
      assertEquals(0, last.startSpeed(), ALGEBRA);
      for (LawAt.Phase p : law.phases()) {
        double t = p.to() - p.from();
        way += t * (p.startSpeed() + p.endSpeed()) / 2;
        way -= t * t * (p.endAcceleration() - p.startAcceleration()) / 12;
        if (p != last) {
          assertEquals(last.to(), p.from(), 0);
          assertEquals(last.endSpeed(), p.startSpeed(), ALGEBRA * 10);
        }
        last = p;
      }
      assertEquals(0, last.endSpeed(), ALGEBRA);
      assertEquals(size, way, ALGEBRA * 10);
    }
  }

  @Test
  void phasesAreThoseOfTheMotion() {
    Motion motion = DemoScenes.read("cartons", Map.of("law", "s-curve")).scene().motion().motion();
    double[] state = new double[MotionState.SIZE];
    for (MotionPiece piece : motion.pieces()) {
      if (LawAt.of(motion, piece) instanceof LawAt.Planned law) {
        LawAt.Phase p = law.phases().get(law.current());
        piece.state(piece.to(), state);
        MotionState end = MotionState.of(state);
        assertEquals(piece.to(), p.to(), 0);
        double speed = end.velocity().norm();
        assertEquals(speed, p.endSpeed(), ALGEBRA);
        // In a blend the acceleration is across the path as well; the law is along it.
        double along = speed > ALGEBRA ? end.acceleration().dot(end.velocity()) / speed : 0;
        assertEquals(along, p.endAcceleration(), ALGEBRA * 10);
      } else {
        assertTrue(piece.still());
      }
    }
  }

  @Test
  void recordingsAndWaitsFollowNoLaw() {
    List<Double> times = IntStream.range(0, 50).mapToObj(i -> i * 0.01).toList();
    List<Pose> poses = times.stream().map(t -> Jobs.by(0.2 * t * t, 0, 0)).toList();
    Motion log = new Recording("log.csv", times, poses, 0, 0.4, 20).motion();
    assertEquals(new LawAt.Recorded(), LawAt.of(log, log.pieces().get(0)));
    Motion motion = motion(LawKind.TRAPEZOID, Jobs.LIMITS, Jobs.by(0, 1, 0));
    assertEquals(new LawAt.Still(), LawAt.of(motion, motion.pieces().get(0)));
  }
}
