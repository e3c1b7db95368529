package io.github.holdpath.sim.motion.route;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.MotionSegment;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.path.BlendPath;
import io.github.holdpath.sim.path.ChainFault;
import io.github.holdpath.sim.path.LineCurve;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BlendedMotionTest {
  /** Algebra in doubles on numbers of about 1. */
  private static final double ALGEBRA = 1e-12;

  /** What is promised of limits, of themselves: bounds in blends are maxima that were searched. */
  private static final double LIMIT = 1e-6;

  /** What is promised of ends, m and rad. */
  private static final double END = 1e-9;

  /** Blends know their parameter to 1e-12 of their way; speeds are up to 4. */
  private static final double JOINT = 1e-9;

  /** Bends of up to a few hundred 1/m turn an error of the place into one of the acceleration. */
  private static final double SMOOTH = 1e-6;

  private static final int ROUTES_OF_EACH_LAW = 400;
  private static final int SAMPLES = 24;
  private static final double INF = Double.POSITIVE_INFINITY;
  private static final Quaternion DOWN = Quaternion.ofRpy(Math.PI, 0, 0);
  private static final Pose START = new Pose(new Vec3(0.9, -0.5, 0.4), DOWN);
  private static final MoveLimits LIMITS =
      new MoveLimits(1.8, 9, 90, Math.PI, 4 * Math.PI, 40 * Math.PI);

  @ParameterizedTest
  @EnumSource
  void drawnRoutesKeepTheirLimitsMeetTheirEndsAndDoNotJump(LawKind law) {
    SplittableRandom random = new SplittableRandom(61);
    for (int i = 0; i < ROUTES_OF_EACH_LAW; i++) {
      Route route = DrawnRoutes.draw(law, random);
      RouteMotion motion = RouteMotion.plan(route);
      String about = "route " + i + " of " + law;
      assertGoesOn(motion, law.boundsJerk(), about);
      for (MotionPiece piece : motion.pieces()) {
        MoveLimits l = move(route, piece.segment()).played();
        for (int k = 0; k <= SAMPLES; k++) {
          double t = k == SAMPLES ? piece.to() : piece.from() + k * length(piece) / SAMPLES;
          double[] s = state(piece, t);
          assertWithin(norm(s, MotionState.VELOCITY), l.speed(), about);
          assertWithin(norm(s, MotionState.ACCELERATION), l.acceleration(), about);
          assertWithin(norm(s, MotionState.ANGULAR_VELOCITY), l.turnSpeed(), about);
          assertWithin(norm(s, MotionState.ANGULAR_ACCELERATION), l.turnAcceleration(), about);
        }
      }
      for (MotionSegment s : motion.segments()) {
        MoveLimits l = move(route, s.index()).played();
        if (law.boundsJerk()) {
          assertWithin(s.peakJerk(), l.jerk(), about);
          assertWithin(s.peakTurnJerk(), l.turnJerk(), about);
        }
      }
      MotionPiece last = motion.pieces().get(motion.pieces().size() - 1);
      Pose end = move(route, route.steps().size()).target();
      double[] s = state(last, last.to());
      assertEquals(0, vec(s, MotionState.POSITION).minus(end.position()).norm(), END, about);
      assertEquals(0, rotation(s).angleTo(end.rotation()), END, about);
      assertEquals(0, norm(s, MotionState.VELOCITY), ALGEBRA, about);
    }
  }

  @ParameterizedTest
  @EnumSource
  void velocityIsTheDerivativeOfTheWayAndAccelerationThatOfVelocity(LawKind law) {
    SplittableRandom random = new SplittableRandom(62);
    for (int i = 0; i < 20; i++) {
      for (MotionPiece piece : RouteMotion.plan(DrawnRoutes.draw(law, random)).pieces()) {
        if (length(piece) < 5e-3) {
          continue; // differences of so short a time are rounding
        }
        double h = length(piece) / 400;
        double t = piece.from() + length(piece) * random.nextDouble(0.1, 0.9);
        double[] s = state(piece, t);
        double[] a = state(piece, t - h);
        double[] b = state(piece, t + h);
        double[] aa = state(piece, t - 2 * h);
        double[] bb = state(piece, t + 2 * h);
        for (int k = 0; k < 3; k++) {
          // Fourth-order differences over 1/400 of a smooth piece.
          int p = MotionState.POSITION + k;
          int v = MotionState.VELOCITY + k;
          double dp = (8 * (b[p] - a[p]) - (bb[p] - aa[p])) / (12 * h);
          double dv = (8 * (b[v] - a[v]) - (bb[v] - aa[v])) / (12 * h);
          double dw = (8 * (b[v + 3] - a[v + 3]) - (bb[v + 3] - aa[v + 3])) / (12 * h);
          assertEquals(s[v], dp, 1e-5);
          assertEquals(s[MotionState.ACCELERATION + k], dv, 1e-3);
          assertEquals(s[MotionState.ANGULAR_ACCELERATION + k], dw, 1e-3);
        }
      }
    }
  }

  @Test
  void statedPeaksAndWaysAreThoseOfTheStates() {
    SplittableRandom random = new SplittableRandom(63);
    for (int i = 0; i < 60; i++) {
      RouteMotion motion = RouteMotion.plan(DrawnRoutes.draw(LawKind.S_CURVE, random));
      for (MotionSegment s : motion.segments()) {
        assertPeak(s.peakSpeed(), motion, s, MotionState.VELOCITY);
        assertPeak(s.peakAcceleration(), motion, s, MotionState.ACCELERATION);
        assertPeak(s.peakTurnSpeed(), motion, s, MotionState.ANGULAR_VELOCITY);
        assertPeak(s.peakTurnAcceleration(), motion, s, MotionState.ANGULAR_ACCELERATION);
        List<MotionPiece> own =
            motion.pieces().stream().filter(p -> p.segment() == s.index()).toList();
        MotionPiece end = own.get(own.size() - 1);
        assertEquals(s.from(), own.get(0).from());
        assertEquals(s.to(), end.to());
        assertEquals(0, own.get(0).distance(s.from()), END);
        assertEquals(s.length(), end.distance(end.to()), END);
      }
    }
  }

  /** A right angle of two lines of 0.5 m within 3 m/s and 10 m/s^2, worked out by hand. */
  @Test
  void crossesARightAngleAtTheSpeedThatItsBendAllows() {
    Pose corner = START.times(Pose.at(0.5, 0, 0));
    Pose end = corner.times(Pose.at(0, 0.5, 0));
    MoveLimits limits = new MoveLimits(3, 10, INF, 1, 1, INF);
    Route route =
        new Route(
            START,
            LawKind.TRAPEZOID,
            List.of(move(corner, limits, 0.06, 1), move(end, limits, 0, 1)));
    RouteMotion motion = RouteMotion.plan(route);
    BlendPath blend =
        BlendPath.between(LineCurve.between(START, corner), LineCurve.between(corner, end), 0.06);
    // The theory's table, section 5.11: a right angle bends by 1.081/r.
    double v = Math.sqrt(10 * 0.06 / 1.081);
    double peak = Math.sqrt((2 * 10 * 0.44 + v * v) / 2);
    assertTrue(peak < 3);
    double byHand = 2 * (peak / 10 + (peak - v) / 10) + blend.length() / v;
    // Half of the last digit of 1.081, of which the time takes less than half.
    assertEquals(byHand, motion.duration(), 3e-4 * byHand);
    assertEquals(10, motion.segments().get(0).peakAcceleration(), 10 * 2e-6);
    assertEquals(peak, motion.segments().get(0).peakSpeed(), 1e-3);
    assertEquals(motion.duration() / 2, motion.segments().get(0).to(), ALGEBRA);
    double stopped = 4 * Math.sqrt(0.5 / 10);
    assertTrue(motion.duration() < stopped);
  }

  @Test
  void sharesTheAccelerationOfAnArcSoThatItIsShort() {
    // Half a circle of 0.4 m from rest to rest: with the share x across, v^2 = x a r, and the
    // rest sqrt(1 - x^2) a along; the least T over x, evaluated on a fine grid.
    double a = 10;
    double r = 0.4;
    double way = Math.PI * r;
    double least = INF;
    for (int i = 1; i < 10_000; i++) {
      double x = i / 1e4;
      double v = Math.sqrt(x * a * r);
      double along = a * Math.sqrt(1 - x * x);
      double t = v * v / along < way ? way / v + v / along : 2 * Math.sqrt(way / along);
      least = Math.min(least, t);
    }
    MoveShape shape =
        new MoveShape.ArcAbout(
            START.position().plus(new Vec3(0, r, 0)), new Vec3(0, 0, 1), Math.PI);
    Pose end = new Pose(START.position().plus(new Vec3(0, 2 * r, 0)), DOWN);
    MoveLimits limits = new MoveLimits(10, a, INF, 1, 1, INF);
    RouteStep arc = new RouteStep.Move("route/1", "", shape, end, limits, 0, 1);
    RouteMotion motion = RouteMotion.plan(new Route(START, LawKind.TRAPEZOID, List.of(arc)));
    // Shares are tried in steps of 1/32 about a flat least.
    assertEquals(least, motion.duration(), 2e-3 * least);
    assertTrue(motion.duration() >= least * (1 - ALGEBRA));
    assertEquals(way, motion.segments().get(0).length(), ALGEBRA);
    // With no more than a on the whole, no law is faster than the time-optimal one: half of
    // the circle speeds up, (r/2) (a r)^(-1/2) 2.622057554292 for pi r/4 (lemniscate constant).
    double optimal =
        r * Math.pow(a * r, -0.5) * 2.622057554292 + Math.PI * r / 2 / Math.sqrt(a * r);
    assertTrue(motion.duration() > optimal);
  }

  @ParameterizedTest
  @EnumSource
  void anOverridePlaysTheSameMotionSlower(LawKind law) {
    SplittableRandom random = new SplittableRandom(64);
    double k = 0.4;
    for (int i = 0; i < 20; i++) {
      Route route = DrawnRoutes.draw(law, random);
      Route slow =
          new Route(
              route.start(),
              law,
              route.steps().stream().map(s -> (RouteStep) slower((RouteStep.Move) s, k)).toList());
      RouteMotion fast = RouteMotion.plan(route);
      RouteMotion late = RouteMotion.plan(slow);
      assertEquals(fast.duration() / k, late.duration(), JOINT * late.duration());
      for (int n = 0; n < 20; n++) {
        double time = random.nextDouble() * fast.duration();
        double[] s = state(at(fast, time), time);
        double[] t = state(at(late, time / k), time / k);
        for (int e = 0; e < MotionState.SIZE; e++) {
          double scale = e < MotionState.VELOCITY ? 1 : e < MotionState.ACCELERATION ? k : k * k;
          assertEquals(s[e] * scale, t[e], SMOOTH);
        }
      }
    }
  }

  @Test
  void aZoneAsLargeAsTheFirstMoveIsEnteredFromRest() {
    Pose corner = START.times(Pose.at(0.1, 0, 0));
    Pose end = corner.times(Pose.at(0, 0.5, 0));
    Route route =
        new Route(
            START, LawKind.S_CURVE, List.of(move(corner, LIMITS, 0.1, 1), move(end, LIMITS, 0, 1)));
    RouteMotion motion = RouteMotion.plan(route);
    assertEquals(0, norm(state(motion.pieces().get(0), 0), MotionState.VELOCITY));
    for (MotionSegment s : motion.segments()) {
      assertWithin(s.peakAcceleration(), 9, "acceleration");
    }
  }

  @Test
  void aBlendAtAStopIsRefusedWithItsMove() {
    Route last = new Route(START, LawKind.S_CURVE, List.of(move(away(1), LIMITS, 0.1, 1)));
    refused("route/1: the path stops behind this move", last);
    Route wait =
        new Route(
            START,
            LawKind.S_CURVE,
            List.of(
                move(away(1), LIMITS, 0.1, 1),
                new RouteStep.Wait("route/2", 0),
                move(away(2), LIMITS, 0, 1)));
    refused("route/2: route/1: the path stops behind this move", wait);
  }

  @Test
  void aBlendThatDoesNotFitIsNamedWithTheLargestZone() {
    Pose corner = away(0.2);
    Route route =
        new Route(
            START,
            LawKind.S_CURVE,
            List.of(
                move(corner, LIMITS, 0.3, 1), move(corner.times(Pose.at(0, 1, 0)), LIMITS, 0, 1)));
    List<RouteCorners.Fault> faults = RouteCorners.faults(route);
    assertEquals(1, faults.size());
    assertEquals("route/1", faults.get(0).pointer());
    assertEquals(ChainFault.Kind.ZONE_BEYOND_MOVE, faults.get(0).fault().kind());
    assertEquals(0.2, faults.get(0).fault().largestZone(), END);
    refused("route/1: the blend of route/1: the zone of 300.0 mm", route);
  }

  private static void refused(String words, Route route) {
    String message =
        assertThrows(IllegalArgumentException.class, () -> RouteMotion.plan(route)).getMessage();
    assertTrue(message != null && message.startsWith(words), message);
  }

  private static Pose away(double x) {
    return START.times(Pose.at(x, 0, 0));
  }

  private static RouteStep.Move move(Pose target, MoveLimits limits, double blend, double k) {
    return new RouteStep.Move("route/1", "", MoveShape.LINE, target, limits, blend, k);
  }

  private static RouteStep.Move slower(RouteStep.Move m, double k) {
    return new RouteStep.Move(
        m.pointer(), m.name(), m.shape(), m.target(), m.limits(), m.blend(), m.override() * k);
  }

  private static RouteStep.Move move(Route route, int segment) {
    return (RouteStep.Move) route.steps().get(segment - 1);
  }

  private static void assertGoesOn(RouteMotion motion, boolean smoothly, String about) {
    double time = 0;
    int segment = 1;
    double[] last = state(motion.pieces().get(0), 0);
    for (MotionPiece piece : motion.pieces()) {
      assertEquals(time, piece.from(), about);
      assertTrue(piece.to() > piece.from(), about);
      assertTrue(piece.segment() == segment || piece.segment() == segment + 1, about);
      segment = piece.segment();
      double[] s = state(piece, piece.from());
      int entries = smoothly ? MotionState.SIZE : MotionState.ACCELERATION;
      for (int k = 0; k < entries; k++) {
        double tolerance = k < MotionState.ACCELERATION ? JOINT : SMOOTH;
        assertEquals(last[k], s[k], tolerance, about + ", entry " + k + " at " + time);
      }
      time = piece.to();
      last = state(piece, time);
    }
    assertEquals(motion.duration(), time, about);
  }

  private static void assertWithin(double value, double limit, String about) {
    assertTrue(value <= limit * (1 + LIMIT), () -> value + " over " + limit + " in " + about);
  }

  /** Peaks are searched for, so no sample is above; the nearest of 200 is hardly below. */
  private static void assertPeak(double stated, RouteMotion motion, MotionSegment of, int offset) {
    double seen = 0;
    for (MotionPiece piece : motion.pieces()) {
      for (int k = 0; piece.segment() == of.index() && k <= 200; k++) {
        double t = k == 200 ? piece.to() : piece.from() + k * length(piece) / 200;
        seen = Math.max(seen, norm(state(piece, t), offset));
      }
    }
    assertTrue(seen <= stated * (1 + JOINT), seen + " over " + stated);
    assertEquals(seen, stated, 5e-3 * stated);
  }

  private static MotionPiece at(RouteMotion motion, double time) {
    return motion.pieces().stream().filter(p -> time <= p.to()).findFirst().orElseThrow();
  }

  private static double length(MotionPiece piece) {
    return piece.to() - piece.from();
  }

  private static double[] state(MotionPiece piece, double time) {
    double[] state = new double[MotionState.SIZE];
    piece.state(time, state);
    return state;
  }

  private static Vec3 vec(double[] s, int at) {
    return new Vec3(s[at], s[at + 1], s[at + 2]);
  }

  private static Quaternion rotation(double[] s) {
    int q = MotionState.ROTATION;
    return new Quaternion(s[q], s[q + 1], s[q + 2], s[q + 3]);
  }

  private static double norm(double[] s, int at) {
    return vec(s, at).norm();
  }
}
