package io.github.holdpath.sim.timelaw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class StateToStateTest {
  private static final int DRAWS = 20_000;

  /** Limits kept and ends met, as a part of each quantity's scale. */
  private static final double PROMISED = 1e-9;

  /** Two ways of planning one move; each finds its roots to rounding. */
  private static final double SAME = 1e-9;

  private static final int BRACKET = 60;

  private final AxisLimits limits = new AxisLimits(-1, 1.5, -5, 4, 40);

  @Test
  void keepsLimitsMeetsEndsAndIsNeverSlowerThanASimpleBracket() {
    long slow =
        IntStream.range(0, DRAWS)
            .parallel()
            .filter(
                i -> {
                  SplittableRandom random = new SplittableRandom(7000 + i);
                  AxisLimits l = drawLimits(random);
                  AxisState from = drawState(random, l, 0);
                  AxisState to = drawState(random, l, random.nextInt(3) == 0 ? 0.05 : 2);
                  AxisMove move = StateToState.plan(from, to, l);
                  assertSound(move, from, to, l, "draw " + i);
                  assertEquals(0, move.recovery());
                  double bracket = bracket(from, to, l);
                  assertTrue(move.duration() <= bracket * (1 + SAME), "draw " + i);
                  return bracket > move.duration() * 1.001;
                })
            .count();
    // A bracket of few speeds is mostly slower: the comparison is not with the planner itself.
    assertTrue(slow > DRAWS / 4, "brackets that are slower: " + slow);
  }

  @Test
  void takesTheSameTimeBackwards() {
    IntStream.range(0, DRAWS / 4)
        .parallel()
        .forEach(
            i -> {
              SplittableRandom random = new SplittableRandom(90_000 + i);
              AxisLimits l = drawLimits(random);
              AxisState from = drawState(random, l, 0);
              AxisState to = drawState(random, l, random.nextInt(3) == 0 ? 0.05 : 2);
              AxisLimits back =
                  new AxisLimits(
                      -l.maxSpeed(),
                      -l.minSpeed(),
                      l.minAcceleration(),
                      l.maxAcceleration(),
                      l.jerk());
              double forth = StateToState.plan(from, to, l).duration();
              double returned = StateToState.plan(turned(to), turned(from), back).duration();
              assertEquals(forth, returned, SAME * (1 + forth), "draw " + i);
            });
  }

  private static AxisState turned(AxisState s) {
    return new AxisState(s.position(), -s.speed(), s.acceleration());
  }

  @Test
  void fromRestToRestItIsTheSCurve() {
    SplittableRandom random = new SplittableRandom(51);
    for (int i = 0; i < 500; i++) {
      AxisLimits l = drawLimits(random);
      double way = random.nextDouble(0.01, 3);
      AxisState zero = new AxisState(0, 0, 0);
      LawLimits same =
          new LawLimits(l.maxSpeed(), l.maxAcceleration(), -l.minAcceleration(), l.jerk());
      double expected = RestToRest.plan(LawKind.S_CURVE, same, way).duration();
      AxisMove move = StateToState.plan(zero, new AxisState(way, 0, 0), l);
      assertEquals(expected, move.duration(), SAME * expected);
    }
  }

  @Test
  void startsBeyondALimitRecoverFirst() {
    int recovered = 0;
    for (int i = 0; i < 2000; i++) {
      SplittableRandom random = new SplittableRandom(60_000 + i);
      AxisLimits l = drawLimits(random);
      AxisState in = drawState(random, l, 0);
      AxisState from = new AxisState(0, 1.5 * in.speed(), 1.2 * in.acceleration());
      AxisState to = drawState(random, l, 2);
      AxisMove move;
      try {
        move = StateToState.plan(from, to, l);
      } catch (IllegalArgumentException e) {
        assertTrue(e.toString().contains("recovers past the opposite limit"), e.toString());
        continue;
      }
      assertSound(move, from, to, l, "draw " + i);
      recovered += move.recovery() > 0 ? 1 : 0;
    }
    assertTrue(recovered > 500, "starts beyond a limit: " + recovered);
  }

  @Test
  void findsThePhaseOfATime() {
    AxisMove move = StateToState.plan(new AxisState(0, 0, 0), new AxisState(1, 0.5, 0), limits);
    List<LawPhase> phases = move.phases();
    for (LawPhase p : phases) {
      assertEquals(p, move.phaseAt(p.to()));
      assertEquals(p, move.phaseAt((p.from() + p.to()) / 2));
    }
    assertEquals(phases.get(0), move.phaseAt(-1));
    assertEquals(phases.get(phases.size() - 1), move.phaseAt(99));
  }

  @Test
  void nothingToDoIsOnePhaseWithoutTime() {
    AxisState there = new AxisState(0.3, 1, 0);
    AxisMove move = StateToState.plan(there, there, limits);
    assertEquals(0, move.duration());
    assertEquals(1, move.phases().size());
    assertEquals(0.3, move.phaseAt(0).positionAt(0));
  }

  @Test
  void refusesEndsAndStartsThatNoMoveKeeps() {
    AxisState rest = new AxisState(0, 0, 0);
    refused("the end", () -> StateToState.plan(rest, new AxisState(1, 1.6, 0), limits));
    refused("the end", () -> StateToState.plan(rest, new AxisState(1, 0, 4.1), limits));
    refused("the end", () -> StateToState.plan(rest, new AxisState(1, -0.95, 3.9), limits));
    refused("the end", () -> StateToState.plan(rest, new AxisState(1, 1.45, -3.9), limits));
    // Back at -0.63 with 5.61, whose end drives the speed to -0.63 + 5.61^2/(2 x 4.5) = 2.87.
    AxisLimits tight = new AxisLimits(-0.63, 1.63, -9.88, 5.61, 4.5);
    AxisState hard = new AxisState(0, -0.608, -6.416);
    refused("recovers past", () -> StateToState.plan(hard, rest, tight));
  }

  @Test
  void refusesNumbersThatAreNone() {
    refused("maxSpeed", () -> new AxisLimits(-1, 0, -1, 1, 1));
    refused("minSpeed", () -> new AxisLimits(1, 1, -1, 1, 1));
    refused("maxAcceleration", () -> new AxisLimits(-1, 1, -1, Double.NaN, 1));
    refused("minAcceleration", () -> new AxisLimits(-1, 1, 0, 1, 1));
    refused("jerk", () -> new AxisLimits(-1, 1, -1, 1, Double.POSITIVE_INFINITY));
    refused("position", () -> new AxisState(Double.NaN, 0, 0));
    refused("speed", () -> new AxisState(0, Double.POSITIVE_INFINITY, 0));
    refused("acceleration", () -> new AxisState(0, 0, Double.NaN));
  }

  private static void refused(String words, Executable call) {
    String message = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(message != null && message.contains(words), message);
  }

  /** Phases join, ends are met, and limits hold from the end of the recovery on. */
  static void assertSound(AxisMove move, AxisState from, AxisState to, AxisLimits l, String what) {
    double farthest = Math.abs(to.position());
    for (LawPhase p : move.phases()) {
      farthest = Math.max(farthest, Math.abs(p.positionAt(p.to())));
    }
    double speeds = l.maxSpeed() - l.minSpeed();
    double accelerations = l.maxAcceleration() - l.minAcceleration();
    double slack = PROMISED * (1 + farthest);
    double slackSpeed = PROMISED * speeds;
    double slackA = PROMISED * accelerations;
    double time = 0;
    AxisState at = from;
    for (LawPhase p : move.phases()) {
      assertEquals(time, p.from(), what);
      assertState(at, p, time, slack, slackSpeed, slackA, what);
      assertTrue(Math.abs(p.jerkAt(time)) <= l.jerk(), what);
      time = p.to();
      at = state(p, time);
      for (int k = 0; k <= 8 && p.from() >= move.recovery() - PROMISED; k++) {
        AxisState s = state(p, p.from() + p.duration() * k / 8);
        assertTrue(s.speed() <= l.maxSpeed() + slackSpeed, what);
        assertTrue(s.speed() >= l.minSpeed() - slackSpeed, what);
        assertTrue(s.acceleration() <= l.maxAcceleration() + slackA, what);
        assertTrue(s.acceleration() >= l.minAcceleration() - slackA, what);
      }
    }
    assertEquals(time, move.duration(), what);
    assertState(to, move.phaseAt(time), time, slack, slackSpeed, slackA, what);
  }

  private static AxisState state(LawPhase p, double t) {
    return new AxisState(p.positionAt(t), p.speedAt(t), p.accelerationAt(t));
  }

  private static void assertState(
      AxisState expected,
      LawPhase p,
      double t,
      double slack,
      double slackSpeed,
      double slackA,
      String what) {
    assertEquals(expected.position(), p.positionAt(t), slack, what);
    assertEquals(expected.speed(), p.speedAt(t), slackSpeed, what);
    assertEquals(expected.acceleration(), p.accelerationAt(t), slackA, what);
  }

  /**
   * The shortest of the moves that stop accelerating at one of some speeds, cruise there and change
   * to the end's speed: acceleration to 0 at full jerk, then the two ramps of eq. 5.2. All of them
   * are admissible where the speeds at which acceleration reaches 0 are.
   */
  private static double bracket(AxisState from, AxisState to, AxisLimits l) {
    double best = Double.POSITIVE_INFINITY;
    for (int k = 0; k <= BRACKET; k++) {
      double speed = l.minSpeed() + (l.maxSpeed() - l.minSpeed()) * k / BRACKET;
      double[] there = ramp(from.speed(), from.acceleration(), speed, l, 1);
      double[] on = ramp(to.speed(), to.acceleration(), speed, l, -1);
      double left = to.position() - from.position() - there[1] - on[1];
      if (left / speed >= 0) {
        best = Math.min(best, there[0] + on[0] + left / speed);
      }
    }
    return best;
  }

  /** Time and way from a state to a speed without acceleration, or the same backwards. */
  private static double[] ramp(
      double v, double acceleration, double speed, AxisLimits l, int direction) {
    double a = direction * acceleration;
    double relax = Math.abs(a) / l.jerk();
    double level = v + a * relax / 2;
    double way = relax * (v + a * relax / 3);
    boolean up = (speed > level) == (direction > 0);
    double most = up ? l.maxAcceleration() : -l.minAcceleration();
    double gain = Math.abs(speed - level);
    double time = gain > 0 ? Ramp.duration(gain, most, l.jerk()) : 0;
    return new double[] {relax + time, way + time * (level + speed) / 2};
  }

  static AxisLimits drawLimits(SplittableRandom random) {
    return new AxisLimits(
        -random.nextDouble(0.3, 3),
        random.nextDouble(0.3, 3),
        -random.nextDouble(1, 15),
        random.nextDouble(1, 15),
        Math.exp(random.nextDouble(Math.log(2), Math.log(300))));
  }

  /** A state that keeps the limits, can go on to and can have come from within them. */
  static AxisState drawState(SplittableRandom random, AxisLimits l, double span) {
    double position = span > 0 ? random.nextDouble(-span, span) : 0;
    while (true) {
      double v = random.nextInt(4) == 0 ? 0 : random.nextDouble(l.minSpeed(), l.maxSpeed());
      double a =
          random.nextInt(4) == 0 ? 0 : random.nextDouble(l.minAcceleration(), l.maxAcceleration());
      double change = a * a / (2 * l.jerk());
      if (v + change <= l.maxSpeed() && v - change >= l.minSpeed()) {
        return new AxisState(position, v, a);
      }
    }
  }
}
