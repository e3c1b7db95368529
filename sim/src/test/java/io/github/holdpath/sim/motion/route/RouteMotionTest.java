package io.github.holdpath.sim.motion.route;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.MotionSegment;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RouteMotionTest {
  /** Algebra in doubles on numbers of about 1. */
  private static final double ALGEBRA = 1e-12;

  /** Where phases meet, time rounds; accelerations are up to 20 and jerks to 200 here. */
  private static final double JOINT = 1e-11;

  private static final double INF = Double.POSITIVE_INFINITY;
  private static final Quaternion DOWN = Quaternion.ofRpy(Math.PI, 0, 0);
  private static final Pose START = new Pose(new Vec3(0.9, -0.5, 0.4), DOWN);
  private static final MoveLimits LIMITS =
      new MoveLimits(1.8, 9, 90, Math.PI, 4 * Math.PI, 40 * Math.PI);

  @ParameterizedTest
  @EnumSource
  void piecesJoinWithoutGaps(LawKind law) {
    SplittableRandom random = new SplittableRandom(31);
    for (int i = 0; i < 100; i++) {
      RouteMotion motion = RouteMotion.plan(draw(law, random));
      double time = 0;
      double[] last = MotionState.atRest(START).toArray();
      int smooth = law.boundsJerk() ? MotionState.SIZE : MotionState.ACCELERATION;
      for (MotionPiece piece : motion.pieces()) {
        assertEquals(time, piece.from());
        assertTrue(piece.to() > piece.from());
        double[] state = state(piece, piece.from());
        for (int k = 0; k < smooth; k++) {
          assertEquals(last[k], state[k], JOINT, "entry " + k + " at " + time + " s");
        }
        time = piece.to();
        last = state(piece, time);
      }
      assertEquals(time, motion.duration());
      assertTrue(motion.notes().isEmpty());
    }
  }

  @ParameterizedTest
  @EnumSource
  void accelerationIntegratedTwiceLeadsFromPoseToPose(LawKind law) {
    SplittableRandom random = new SplittableRandom(32);
    for (int i = 0; i < 50; i++) {
      Route route = draw(law, random);
      RouteMotion motion = RouteMotion.plan(route);
      Pose from = route.start();
      for (MotionSegment segment : motion.segments()) {
        Pose to = move(route, segment.index()).target();
        Vec3 way = twice(motion, segment, MotionState.ACCELERATION);
        Vec3 turn = twice(motion, segment, MotionState.ANGULAR_ACCELERATION);
        assertEquals(0, from.position().plus(way).minus(to.position()).norm(), ALGEBRA);
        double angle = turn.norm();
        Quaternion end =
            angle > 0
                ? Quaternion.ofAxisAngle(turn.unit(), angle).times(from.rotation())
                : from.rotation();
        assertEquals(0, end.angleTo(to.rotation()), ALGEBRA);
        assertEquals(way.norm(), segment.length(), ALGEBRA);
        assertEquals(angle, segment.turn(), ALGEBRA);
        from = to;
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void keepsLimitsAndReachesOneOfThem(LawKind law) {
    SplittableRandom random = new SplittableRandom(33);
    for (int i = 0; i < 100; i++) {
      Route route = draw(law, random);
      for (MotionSegment s : RouteMotion.plan(route).segments()) {
        MoveLimits l = move(route, s.index()).limits();
        assertWithin(s.peakSpeed(), l.speed());
        assertWithin(s.peakAcceleration(), l.acceleration());
        assertWithin(s.peakTurnSpeed(), l.turnSpeed());
        assertWithin(s.peakTurnAcceleration(), l.turnAcceleration());
        if (law.boundsJerk()) {
          assertWithin(s.peakJerk(), l.jerk());
          assertWithin(s.peakTurnJerk(), l.turnJerk());
        }
        double bySpeed = Math.max(s.peakSpeed() / l.speed(), s.peakTurnSpeed() / l.turnSpeed());
        double byAcceleration =
            Math.max(
                s.peakAcceleration() / l.acceleration(),
                s.peakTurnAcceleration() / l.turnAcceleration());
        double byJerk = Math.max(s.peakJerk() / l.jerk(), s.peakTurnJerk() / l.turnJerk());
        double reached =
            switch (law) {
              case TRAPEZOID -> byAcceleration;
              case S_CURVE -> byJerk;
              case QUINTIC, MODIFIED_SINE, CYCLOIDAL ->
                  Math.max(bySpeed, Math.max(byAcceleration, byJerk));
            };
        assertEquals(1, reached, ALGEBRA);
      }
    }
  }

  @Test
  void statedPeaksAreThoseOfTheStates() {
    SplittableRandom random = new SplittableRandom(34);
    for (int i = 0; i < 50; i++) {
      RouteMotion motion = RouteMotion.plan(draw(LawKind.S_CURVE, random));
      for (MotionSegment s : motion.segments()) {
        assertEquals(s.peakSpeed(), peak(motion, s, MotionState.VELOCITY), JOINT);
        assertEquals(s.peakAcceleration(), peak(motion, s, MotionState.ACCELERATION), JOINT);
        assertEquals(s.peakTurnSpeed(), peak(motion, s, MotionState.ANGULAR_VELOCITY), JOINT);
        double turning = peak(motion, s, MotionState.ANGULAR_ACCELERATION);
        assertEquals(s.peakTurnAcceleration(), turning, JOINT);
      }
    }
  }

  @Test
  void aCamLawTakesItsPeakFactorsTimesWayOverLimit() {
    // 1.2 m within 1.8 m/s, 9 m/s^2, 90 m/s^3: the speed decides, T = Cv L/v, by hand.
    Pose end = START.times(Pose.at(1.2, 0, 0));
    MotionSegment quintic = only(LawKind.QUINTIC, end, LIMITS);
    assertEquals(1.875 * 1.2 / 1.8, quintic.to(), ALGEBRA);
    assertEquals(1.8, quintic.peakSpeed(), ALGEBRA);
    assertEquals(10 / Math.sqrt(3) * 1.2 / (1.25 * 1.25), quintic.peakAcceleration(), ALGEBRA * 10);
    assertEquals(2 * 1.2 / 1.8, only(LawKind.CYCLOIDAL, end, LIMITS).to(), ALGEBRA);
    double cv = 4 * Math.PI / (4 + Math.PI);
    assertEquals(cv * 1.2 / 1.8, only(LawKind.MODIFIED_SINE, end, LIMITS).to(), ALGEBRA);
  }

  @Test
  void countsTheTimeOfAKnownMove() {
    // The reference move S01: 1.2 m within 1.8 m/s, 9 m/s^2, 90 m/s^3 takes 29/30 s.
    MotionSegment s = only(LawKind.S_CURVE, START.times(Pose.at(1.2, 0, 0)), LIMITS);
    assertEquals(29.0 / 30, s.to() - s.from(), ALGEBRA);
    assertEquals(1.8, s.peakSpeed(), ALGEBRA);
    assertEquals(9, s.peakAcceleration(), ALGEBRA);
    assertEquals(90, s.peakJerk(), ALGEBRA * 100);
    assertEquals(0, s.peakTurnSpeed());
    assertEquals(0, s.peakTurnJerk());
  }

  @Test
  void turnGovernsWhereItIsTheTighterLimit() {
    // Reference move S13: 90 degrees within 180 deg/s, 720 deg/s^2, 7200 deg/s^3 takes 0.85 s.
    Pose turned =
        new Pose(START.position().plus(new Vec3(0.01, 0, 0)), DOWN.times(yaw(Math.PI / 2)));
    MotionSegment s = only(LawKind.S_CURVE, turned, LIMITS);
    assertEquals(0.85, s.to(), ALGEBRA);
    assertEquals(Math.PI, s.peakTurnSpeed(), ALGEBRA);
    assertEquals(0.02, s.peakSpeed(), ALGEBRA);
  }

  @Test
  void trapezoidHasNoBoundOfJerkWhereItMoves() {
    Pose turned = new Pose(START.position(), DOWN.times(yaw(1)));
    MotionSegment turn = only(LawKind.TRAPEZOID, turned, LIMITS);
    assertEquals(INF, turn.peakTurnJerk());
    assertEquals(0, turn.peakJerk());
    MotionSegment line = only(LawKind.TRAPEZOID, START.times(Pose.at(1, 0, 0)), LIMITS);
    assertEquals(INF, line.peakJerk());
    assertEquals(0, line.peakTurnJerk());
  }

  @Test
  void unboundedLimitOfWhatIsNotDoneDoesNoHarm() {
    MoveLimits only = new MoveLimits(1.8, 9, 90, INF, INF, INF);
    Pose end = START.times(Pose.at(1.2, 0, 0));
    assertEquals(29.0 / 30, only(LawKind.S_CURVE, end, only).to(), ALGEBRA);
  }

  @Test
  void partIsHeldFromEndOfTakeToStartOfRelease() {
    RouteStep.Move lift = move("route/2", START.times(Pose.at(0, 0, -0.3)));
    RouteStep.Move lower = move("route/4", START);
    RouteMotion motion =
        plan(
            new RouteStep.Take("route/1", 0.25),
            lift,
            new RouteStep.Wait("route/3", 0.5),
            lower,
            new RouteStep.Release("route/5", 0.15));
    assertEquals(0.25, motion.heldFrom());
    assertEquals(motion.duration() - 0.15, motion.heldTo(), ALGEBRA);
    assertEquals(motion.segments().get(1).to(), motion.heldTo());
    MotionSegment first = motion.segments().get(0);
    MotionSegment second = motion.segments().get(1);
    assertEquals(0.25, first.from());
    assertEquals(0.5, second.from() - first.to(), ALGEBRA);
    assertEquals("route/4", second.pointer());
    assertEquals(2, second.index());
  }

  @Test
  void withoutReleaseThePartIsHeldToTheEnd() {
    RouteMotion motion =
        plan(
            move("route/1", START.times(Pose.at(0, 0, 0.1))),
            new RouteStep.Take("route/2", 0.25),
            move("route/3", START));
    assertEquals(motion.segments().get(1).from(), motion.heldFrom());
    assertEquals(motion.duration(), motion.heldTo());
  }

  @Test
  void withoutTakeThePartIsHeldAllAlong() {
    RouteMotion motion = plan(move("route/1", START.times(Pose.at(0, 0, 0.1))));
    assertEquals(0, motion.heldFrom());
    assertEquals(motion.duration(), motion.heldTo());
  }

  @Test
  void takenLastThePartIsNeverHeld() {
    RouteMotion motion =
        plan(move("route/1", START.times(Pose.at(0, 0, 0.1))), new RouteStep.Take("route/2", 0.25));
    assertFalse(motion.heldFrom() < motion.heldTo());
  }

  @Test
  void waitsBelongToTheMoveBefore() {
    RouteMotion motion =
        plan(
            new RouteStep.Wait("route/1", 0.1),
            move("route/2", START.times(Pose.at(0, 0, 0.3))),
            new RouteStep.Wait("route/3", 0.2));
    List<MotionPiece> pieces = motion.pieces();
    MotionPiece before = pieces.get(0);
    MotionPiece after = pieces.get(pieces.size() - 1);
    assertEquals(0, before.segment());
    assertTrue(before.still());
    assertEquals(0, before.distance(0.05));
    assertArrayEquals(MotionState.atRest(START).toArray(), state(before, 0.05));
    assertEquals(1, after.segment());
    assertTrue(after.still());
    assertEquals(0.3, after.distance(after.to()), ALGEBRA);
    assertEquals(0.2, after.to() - after.from(), ALGEBRA);
    MotionPiece moving = pieces.get(1);
    assertFalse(moving.still());
    assertEquals(0, moving.distance(moving.from()));
    MotionPiece last = pieces.get(pieces.size() - 2);
    assertEquals(0.3, last.distance(last.to()), ALGEBRA);
  }

  @Test
  void distanceOfAPureTurnIsItsAngle() {
    RouteMotion motion = plan(move("route/1", new Pose(START.position(), DOWN.times(yaw(0.7)))));
    List<MotionPiece> pieces = motion.pieces();
    MotionPiece last = pieces.get(pieces.size() - 1);
    assertEquals(0.7, last.distance(last.to()), ALGEBRA);
  }

  @Test
  void aRouteWithoutTimeIsOneInstant() {
    RouteMotion motion = plan(new RouteStep.Wait("route/1", 0));
    assertEquals(1, motion.pieces().size());
    assertEquals(0, motion.duration());
    MotionPiece piece = motion.pieces().get(0);
    assertArrayEquals(MotionState.atRest(START).toArray(), state(piece, 0));
  }

  @Test
  void refusesWithThePlaceOfTheStep() {
    refused("route/1: a path needs two poses that differ", move("route/1", START));
    Pose half = new Pose(START.position(), DOWN.times(yaw(Math.PI)));
    refused("route/1: a turn of 180 degrees", move("route/1", half));
    refused("route/1: a pause must be", new RouteStep.Wait("route/1", -0.1));
    refused("route/1: a pause must be", new RouteStep.Take("route/1", Double.NaN));
    refused("route/1: a release needs", new RouteStep.Release("route/1", 0.1));
    RouteStep take = new RouteStep.Take("route/1", 0.1);
    refused("route/2: a route takes the part once", take, new RouteStep.Take("route/2", 0.1));
    RouteStep release = new RouteStep.Release("route/2", 0.1);
    refused("route/3: a route releases", take, release, new RouteStep.Release("route/3", 0.1));
    MoveLimits none = new MoveLimits(1, INF, INF, 1, 1, 1);
    Pose end = START.times(Pose.at(1, 0, 0));
    refused("route/1: an s-curve needs", new RouteStep.Move("route/1", "", end, none));
  }

  private static void refused(String words, RouteStep... steps) {
    String message = assertThrows(IllegalArgumentException.class, () -> plan(steps)).getMessage();
    assertTrue(message != null && message.startsWith(words), message);
  }

  private static RouteMotion plan(RouteStep... steps) {
    return RouteMotion.plan(new Route(START, LawKind.S_CURVE, List.of(steps)));
  }

  private static MotionSegment only(LawKind law, Pose target, MoveLimits limits) {
    RouteStep move = new RouteStep.Move("route/1", "", target, limits);
    return RouteMotion.plan(new Route(START, law, List.of(move))).segments().get(0);
  }

  private static RouteStep.Move move(String pointer, Pose target) {
    return new RouteStep.Move(pointer, "", target, LIMITS);
  }

  private static Quaternion yaw(double angle) {
    return Quaternion.ofRpy(0, 0, angle);
  }

  /** Moves that go and turn, only go, or only turn, with waits between. */
  private static Route draw(LawKind law, SplittableRandom random) {
    List<RouteStep> steps = new ArrayList<>();
    Pose pose = START;
    for (int i = 0; i < 6; i++) {
      int kind = random.nextInt(3);
      Vec3 step =
          new Vec3(random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(-1, 1));
      Quaternion turn =
          Quaternion.ofRpy(
              random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(-3, 3));
      Vec3 position = kind == 2 ? pose.position() : pose.position().plus(step);
      Quaternion rotation = kind == 1 ? pose.rotation() : pose.rotation().times(turn).negated();
      pose = new Pose(position, rotation);
      steps.add(new RouteStep.Move("route/" + (2 * i + 1), "", pose, drawLimits(random)));
      steps.add(new RouteStep.Wait("route/" + (2 * i + 2), random.nextInt(2) * 0.2));
    }
    return new Route(START, law, steps);
  }

  private static MoveLimits drawLimits(SplittableRandom random) {
    return new MoveLimits(
        random.nextDouble(0.2, 3),
        random.nextDouble(2, 20),
        random.nextDouble(10, 200),
        random.nextDouble(0.5, 4),
        random.nextDouble(2, 20),
        random.nextDouble(10, 200));
  }

  private static RouteStep.Move move(Route route, int index) {
    return (RouteStep.Move) route.steps().get(2 * (index - 1));
  }

  private static void assertWithin(double value, double limit) {
    assertTrue(value <= limit * (1 + ALGEBRA), value + " over " + limit);
  }

  private static double[] state(MotionPiece piece, double time) {
    double[] state = new double[MotionState.SIZE];
    piece.state(time, state);
    return state;
  }

  private static double peak(RouteMotion motion, MotionSegment segment, int at) {
    double peak = 0;
    for (MotionPiece piece : motion.pieces()) {
      if (piece.segment() == segment.index()) {
        for (int i = 0; i <= 8; i++) {
          double[] s = state(piece, piece.from() + (piece.to() - piece.from()) * i / 8);
          peak = Math.max(peak, new Vec3(s[at], s[at + 1], s[at + 2]).norm());
        }
      }
    }
    return peak;
  }

  /**
   * Way from rest by the repeated integral {@code (end - t) a(t) dt}, to rounding for each phase.
   */
  private static Vec3 twice(RouteMotion motion, MotionSegment segment, int at) {
    return new Vec3(
        twiceOf(motion, segment, at),
        twiceOf(motion, segment, at + 1),
        twiceOf(motion, segment, at + 2));
  }

  private static double twiceOf(RouteMotion motion, MotionSegment segment, int entry) {
    double sum = 0;
    for (MotionPiece piece : motion.pieces()) {
      if (piece.segment() == segment.index() && !piece.still()) {
        DoubleUnaryOperator f = t -> (segment.to() - t) * state(piece, t)[entry];
        GaussIntegrator rule = new GaussIntegratorFactory().legendre(12, piece.from(), piece.to());
        sum += rule.integrate(f::applyAsDouble);
      }
    }
    return sum;
  }
}
