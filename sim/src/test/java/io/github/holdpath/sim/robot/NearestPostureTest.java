package io.github.holdpath.sim.robot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.holdpath.dynamics.spatial.Pose;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class NearestPostureTest {
  private static final double FREE = Double.POSITIVE_INFINITY;
  private static final double TURN = 2 * Math.PI;

  /** Whole turns are sums of a few roundings. */
  private static final double ALGEBRA = 1e-14;

  /** A robot 0.5 m long whose last axis turns within a range. */
  private static Scara robot(double turnRange) {
    JointLimits arm = new JointLimits(-2, 2, FREE, FREE);
    return new Scara(
        0.3,
        0.2,
        arm,
        arm,
        new JointLimits(-0.4, 0, FREE, FREE),
        new JointLimits(-turnRange, turnRange, FREE, FREE),
        Pose.IDENTITY,
        Pose.IDENTITY,
        OptionalDouble.empty());
  }

  private static double[] of(double turnRange, double[] from, double[]... postures) {
    List<Posture> list = Arrays.stream(postures).map(q -> new Posture("", q)).toList();
    return NearestPosture.of(robot(turnRange), list, from);
  }

  @Test
  void takesTheLeastLargestChange() {
    double[] from = {0, 0, 0, 0};
    double[] far = {0.9, 0, 0, 0};
    double[] near = {0.8, -0.8, -0.3, 0.8};
    assertArrayEquals(near, of(FREE, from, far, near), ALGEBRA);
  }

  @Test
  void slidesCountInUnitsOfTheRobotsLength() {
    double length = robot(FREE).length();
    double[] from = {0, 0, 0, 0};
    double[] slides = {0, 0, -0.4, 0};
    double[] less = {0.39 / length, 0, 0, 0};
    double[] more = {0.41 / length, 0, 0, 0};
    assertArrayEquals(less, of(FREE, from, slides, less), ALGEBRA);
    assertArrayEquals(slides, of(FREE, from, more, slides), ALGEBRA);
  }

  @Test
  void turnsTheShorterWayRoundAndStaysInsideItsRange() {
    double[] from = {0, 0, 0, 3};
    double[] to = {0, 0, 0, -3};
    assertArrayEquals(new double[] {0, 0, 0, TURN - 3}, of(FREE, from, to), ALGEBRA);
    assertArrayEquals(new double[] {0, 0, 0, TURN - 3}, of(4, from, to), ALGEBRA);
    assertArrayEquals(to, of(3.1, from, to), ALGEBRA);
    double[] turnedOften = {0, 0, 0, 5 * TURN};
    double[] quarter = {0, 0, 0, 5.25 * TURN};
    assertArrayEquals(quarter, of(FREE, turnedOften, new double[] {0, 0, 0, 1.25 * TURN}), 1e-12);
  }

  @Test
  void postureInsideTheRangesGoesBeforeANearerOneOutside() {
    double[] from = {1.9, 0, 0, 0};
    double[] outside = {2.1, 0, 0, 0};
    double[] inside = {-1, 0, 0, 0};
    assertArrayEquals(inside, of(FREE, from, outside, inside), ALGEBRA);
    assertArrayEquals(inside, of(FREE, from, inside, outside), ALGEBRA);
    assertArrayEquals(outside, of(FREE, from, outside), ALGEBRA);
  }

  @Test
  void refusesNoPosture() {
    assertThrows(IllegalArgumentException.class, () -> of(FREE, new double[4]));
  }
}
