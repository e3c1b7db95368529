package io.github.holdpath.sim.motion.joint;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.MotionSegment;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.motion.route.RouteStep;
import io.github.holdpath.sim.robot.Gantry;
import io.github.holdpath.sim.robot.JointLimits;
import io.github.holdpath.sim.robot.Robot;
import io.github.holdpath.sim.robot.RobotMotion;
import io.github.holdpath.sim.robot.Scara;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class JointTrackTest {
  private static final Quaternion DOWN = Robot.HANGING.rotation();
  private static final Pose GRIP = Pose.at(0.01, 0.02, 0.15);
  private static final double FREE = Double.POSITIVE_INFINITY;
  private static final MoveLimits LIMITS = new MoveLimits(2, 10, 200, 6, 40, 900);

  /** What a sum of a few roundings leaves. */
  private static final double ALGEBRA = 1e-12;

  /** Iterations end at 1e-9 of the pose; ten times that, in values of about 1. */
  private static final double ITERATED = 1e-8;

  private static JointLimits limits(double speed, double acceleration) {
    return new JointLimits(-3, 3, speed, acceleration, FREE);
  }

  private static Gantry gantry(double speedX, double accelerationX) {
    return new Gantry(
        Optional.of(limits(speedX, accelerationX)),
        Optional.of(limits(FREE, FREE)),
        Optional.of(limits(FREE, FREE)),
        Optional.of(limits(FREE, FREE)),
        Robot.HANGING,
        Pose.IDENTITY,
        OptionalDouble.empty());
  }

  private static Scara scara(double speed, double acceleration) {
    JointLimits l = limits(speed, acceleration);
    return new Scara(0.5, 0.4, l, l, l, l, Robot.HANGING, Pose.at(0, 0, 0.2), OptionalDouble.of(5));
  }

  private static Pose down(double x, double y, double z, double yaw) {
    return new Pose(new Vec3(x, y, z), Quaternion.ofRpy(0, 0, yaw).times(DOWN));
  }

  private static RouteStep.Move to(int i, Pose pose) {
    return new RouteStep.Move("route/" + i, i == 3 ? "across" : "", pose, LIMITS);
  }

  /** Lifts, goes across while turning, waits and lowers. */
  private static Motion motion(LawKind law) {
    return new Route(
            down(0.5, -0.4, 0.3, 0),
            law,
            List.of(
                new RouteStep.Take("route/1", 0.2),
                to(2, down(0.5, -0.4, 0.5, 0)),
                to(3, down(0.6, 0.5, 0.5, 1)),
                new RouteStep.Wait("route/4", 0.1),
                to(5, down(0.6, 0.5, 0.3, 1)),
                new RouteStep.Release("route/6", 0.15)))
        .motion();
  }

  private static JointTrack track(Robot robot, Motion motion) {
    JointOutcome outcome = JointTrack.follow(robot, GRIP, motion, JointStart.any(robot), false);
    return assertInstanceOf(JointTrack.class, outcome, outcome.toString());
  }

  @Test
  void jointsMakeTheMotionOfTheGrip() {
    for (Robot robot : List.of(gantry(FREE, FREE), scara(FREE, FREE))) {
      Motion motion = motion(LawKind.S_CURVE);
      JointTrack track = track(robot, motion);
      assertSame(motion, track.motion());
      RobotMotion flange = robot.motion();
      double[] made = new double[MotionState.SIZE];
      double[] asked = new double[MotionState.SIZE];
      int[] samples = {0};
      track.visit(
          (piece, time, q, qd, qdd) -> {
            assertTrue(flange.move(q, qd, qdd));
            flange.flange(made);
            piece.state(time, asked);
            MotionState grip = MotionState.of(asked);
            Pose wanted = grip.pose().times(GRIP.inverse());
            Vec3 arm = grip.pose().rotation().rotate(GRIP.inverse().position());
            Vec3 w = grip.angularVelocity();
            Vec3 a =
                grip.acceleration()
                    .plus(grip.angularAcceleration().cross(arm))
                    .plus(w.cross(w.cross(arm)));
            MotionState there = MotionState.of(made);
            assertEquals(0, wanted.position().minus(there.pose().position()).norm(), ITERATED);
            assertEquals(0, a.minus(there.acceleration()).norm(), ITERATED);
            assertEquals(0, w.minus(there.angularVelocity()).norm(), ITERATED);
            samples[0]++;
          });
      assertTrue(samples[0] > 1000 * (motion.duration() - 0.5), "too few: " + samples[0]);
    }
  }

  @Test
  void slowsAStretchByExactlyWhatAnAxisAsksFor() {
    // Across goes 0.1 m along x of 0.906 m in all: x has 0.1/0.906 of its 2 m/s and 10 m/s^2.
    Motion motion = motion(LawKind.TRAPEZOID);
    double share = motion.segments().get(1).peakAcceleration() * 0.1 / Math.hypot(0.1, 0.9);
    JointTrack free = track(gantry(FREE, FREE), motion);
    assertEquals(0, free.slowings().size());
    // The turning grip is 10 and 20 mm beside the flange, so the axis itself is asked.
    double[] most = {0};
    free.visit((piece, time, q, qd, qdd) -> most[0] = Math.max(most[0], Math.abs(qdd[0])));
    assertTrue(Math.abs(most[0] / share - 1) < 0.5);
    JointTrack slow = track(gantry(FREE, most[0] / 4), motion);
    assertEquals(1, slow.slowings().size());
    JointSlowing s = slow.slowings().get(0);
    assertEquals(2, s.fromSegment());
    assertEquals(2, s.toSegment());
    assertEquals("x", s.joint());
    // The largest acceleration lies between samples: the search beside them ends at 1e-6 or so.
    assertEquals(0.5, s.factor(), 1e-4);
    MotionSegment was = motion.segments().get(1);
    MotionSegment is = slow.motion().segments().get(1);
    double k = s.factor();
    assertEquals((was.to() - was.from()) / k, is.to() - is.from(), ALGEBRA);
    assertEquals(k * was.peakSpeed(), is.peakSpeed(), ALGEBRA);
    assertEquals(k * k * was.peakAcceleration(), is.peakAcceleration(), ALGEBRA);
    MotionSegment lowered = motion.segments().get(2);
    assertEquals(
        lowered.to() - lowered.from(),
        slow.motion().segments().get(2).to() - slow.motion().segments().get(2).from(),
        ALGEBRA);
    double longer = (was.to() - was.from()) * (1 / k - 1);
    assertEquals(motion.duration() + longer, slow.motion().duration(), ALGEBRA);
    assertEquals(motion.heldFrom(), slow.motion().heldFrom(), ALGEBRA);
    assertEquals(motion.heldTo() + longer, slow.motion().heldTo(), ALGEBRA);
    assertTrue(
        slow.motion().notes().get(0).contains("move 2 (across) at 50 %")
            || slow.motion().notes().get(0).contains("move 2 (across) at 50.0 %"),
        slow.motion().notes().toString());
  }

  @Test
  void keepsEveryLimitOfTheJoints() {
    double speed = 1.5;
    double acceleration = 6;
    JointTrack track = track(scara(speed, acceleration), motion(LawKind.S_CURVE));
    assertTrue(track.slowings().size() >= 1);
    double[] most = {0, 0};
    track.visit(
        (piece, time, q, qd, qdd) -> {
          for (int k = 0; k < 4; k++) {
            most[0] = Math.max(most[0], Math.abs(qd[k]) / speed);
            most[1] = Math.max(most[1], Math.abs(qdd[k]) / acceleration);
          }
        });
    // Samples of the slowed motion lie elsewhere than those that were searched.
    assertTrue(most[0] <= 1 + 1e-6 && most[1] <= 1 + 1e-6, most[0] + " " + most[1]);
    assertTrue(Math.max(most[0], most[1]) > 1 - 1e-3, "slower than need be");
  }

  @Test
  void valuesToShowAreThoseOfTheWalk() {
    // Samples 1 ms apart (slowed ones less often) of joints below some 100 rad/s^2: 1e-4 / 8.
    double between = 2e-5;
    Motion motion = motion(LawKind.S_CURVE);
    for (JointTrack track : List.of(track(scara(FREE, FREE), motion), track(scara(1, 4), motion))) {
      List<MotionPiece> pieces = track.motion().pieces();
      track.visit(
          (piece, time, q, qd, qdd) ->
              assertArrayEquals(q, track.values(pieces.indexOf(piece), time), between));
      MotionPiece last = pieces.get(pieces.size() - 1);
      assertArrayEquals(
          track.values(pieces.size() - 1, last.to()),
          track.values(pieces.size() - 1, last.to() + 1),
          0);
    }
  }

  @Test
  void slowedStatesAreDerivativesOfEachOther() {
    Motion motion = track(scara(1, 4), motion(LawKind.S_CURVE)).motion();
    assertInstanceOf(SlowedMotion.class, motion);
    double h = 1e-4;
    double[] before = new double[MotionState.SIZE];
    double[] at = new double[MotionState.SIZE];
    double[] after = new double[MotionState.SIZE];
    for (MotionPiece piece : motion.pieces()) {
      double t = (piece.from() + piece.to()) / 2;
      if (piece.to() - piece.from() < 4 * h) {
        continue;
      }
      piece.state(t - h, before);
      piece.state(t, at);
      piece.state(t + h, after);
      for (int k = 0; k < 3; k++) {
        // Central differences err by h^2/6 times the third derivative, about 1e3 at most here.
        assertEquals((after[k] - before[k]) / (2 * h), at[MotionState.VELOCITY + k], 1e-5);
        assertEquals(
            (after[MotionState.VELOCITY + k] - before[MotionState.VELOCITY + k]) / (2 * h),
            at[MotionState.ACCELERATION + k],
            1e-5);
      }
    }
  }

  @Test
  void beginsNearWhatIsSaid() {
    Robot robot = scara(FREE, FREE);
    Motion motion = motion(LawKind.S_CURVE);
    for (double elbow : new double[] {-1, 1}) {
      JointStart start =
          new JointStart(
              List.of(
                  OptionalDouble.empty(),
                  OptionalDouble.of(elbow),
                  OptionalDouble.empty(),
                  OptionalDouble.empty()));
      JointOutcome outcome = JointTrack.follow(robot, GRIP, motion, start, true);
      double[] begun = assertInstanceOf(JointTrack.class, outcome, outcome.toString()).start();
      assertEquals(elbow, Math.signum(begun[1]));
      double[] again = ((JointTrack) outcome).start();
      assertArrayEquals(begun, again);
    }
  }

  @Test
  void aStopIsAFaultOfAPlanAndAFactOfARecording() {
    JointLimits narrow = new JointLimits(-3, 0.45, FREE, FREE, FREE);
    Gantry robot =
        new Gantry(
            Optional.of(limits(FREE, FREE)),
            Optional.of(limits(FREE, FREE)),
            Optional.of(narrow),
            Optional.of(limits(FREE, FREE)),
            Robot.HANGING,
            Pose.IDENTITY,
            OptionalDouble.empty());
    Motion motion = motion(LawKind.S_CURVE);
    JointStart any = JointStart.any(robot);
    JointFault fault =
        assertInstanceOf(JointFault.class, JointTrack.follow(robot, GRIP, motion, any, false));
    assertEquals("route/2", fault.pointer());
    assertTrue(fault.words().contains("joint z passes its upper stop of 450 mm"), fault.words());
    // The flange is 150 mm above the grip: it rises from 0.45 m, so at once.
    assertEquals(motion.segments().get(0).from(), fault.time(), 0.01);
    JointTrack track =
        assertInstanceOf(JointTrack.class, JointTrack.follow(robot, GRIP, motion, any, true));
    assertEquals(1, track.past().size());
    assertEquals(0.2, track.past().get(0).beyond(), ITERATED);
  }

  @Test
  void tellsWhatIsOutOfReachAndByHowMuch() {
    Scara robot = scara(FREE, FREE);
    Motion far =
        new Route(
                down(0.5, 0.1, 0.3, 0),
                LawKind.TRAPEZOID,
                List.of(to(1, down(1.2, 0.1, 0.3, 0)), new RouteStep.Wait("route/2", 1)))
            .motion();
    JointFault fault =
        assertInstanceOf(
            JointFault.class,
            JointTrack.follow(robot, Pose.IDENTITY, far, JointStart.any(robot), false));
    assertEquals("route/1", fault.pointer());
    double beyond = 1000 * (Math.hypot(1.2, 0.1) - 0.9);
    assertTrue(fault.words().contains("by " + Math.round(beyond) + " mm at most"), fault.words());
  }
}
