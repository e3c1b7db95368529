package io.github.holdpath.dynamics.compliance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Draws;
import io.github.holdpath.dynamics.Expect;
import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class FreeSwingTest {
  private static FreeSwing one(double damping) {
    FreeSwing swing = new FreeSwing(damping);
    swing.add(40, new Vec3(0, 0.002, 0), 1, -damping);
    return swing;
  }

  /** Let go at 2 mm with zero speed, 5 %: the crests fall by exp(-pi zeta/sqrt(1 - zeta^2)). */
  @Test
  void settlesAfterTheLastCrestAboveTheBound() {
    double damping = 0.05;
    double root = Math.sqrt(1 - damping * damping);
    FreeSwing swing = new FreeSwing(damping);
    swing.add(40, new Vec3(0, 0.002, 0), 1, 0);
    double fall = Math.exp(-Math.PI * damping / root);
    double half = Math.PI / (40 * root);
    // A bound just above the fifth crest: the fourth is the last that passes it.
    double bound = 0.002 * Math.pow(fall, 4) * 1.01;
    double settled = swing.settled(bound).orElseThrow();
    assertTrue(settled > 3 * half && settled < 3.5 * half);
    assertEquals(bound, swing.at(settled), 1e-9);
    // A bound just below it: the fifth passes it too.
    settled = swing.settled(0.002 * Math.pow(fall, 4) * 0.99).orElseThrow();
    assertTrue(settled > 4 * half && settled < 4.5 * half);
  }

  @Test
  void staysWithinFromThenOn() {
    Draws draws = new Draws();
    for (int n = 0; n < 50; n++) {
      FreeSwing swing = new FreeSwing(draws.number(0.01, 0.3));
      for (int m = 0; m < 4; m++) {
        swing.add(draws.number(20, 300), draws.vector(1e-3), draws.number(-1, 1), 0.2);
      }
      double bound = draws.number(1e-5, 1e-3);
      double settled = swing.settled(bound).orElseThrow();
      for (int i = 1; i < 2000; i++) {
        // A crest between the samples of the search may pass by half a percent.
        assertTrue(swing.at(settled + i * 1e-4) <= bound * 1.005);
      }
      assertTrue(settled == 0 || Math.abs(swing.at(settled) - bound) < 1e-6 * bound + 1e-9);
    }
  }

  @Test
  void neverSettlesUndamped() {
    assertEquals(OptionalDouble.empty(), one(0).settled(1e-4));
    assertEquals(OptionalDouble.of(0), one(0).settled(0.01));
    Expect.refused("bound must be positive", () -> one(0.1).settled(0));
  }

  @Test
  void largestIsTheSizeOfOneUndampedMode() {
    assertEquals(0.002, one(0).largest(), 1e-9);
    assertEquals(0, new FreeSwing(0.1).largest());
  }

  @Test
  void followsTheResponseOfTheWholeGrip() {
    Draws draws = new Draws();
    GripModes modes = GripModes.of(GripResponseTest.cups(draws), draws.body(), AirLoad.NONE);
    GripResponse response = new GripResponse(modes, 0.07);
    response.rest(new double[] {10, -5, 20, 1, 0.5, -1});
    double[] load = new double[36];
    load[0] = 4;
    load[7] = -9;
    response.enter(0.03, load);
    response.leave();
    double[] still = {2, 1, -8, 0.1, 0.2, 0.3};
    Vec3 point = draws.vector(0.1);
    FreeSwing swing = response.freeSwing(still, point);
    GripResponse rest = new GripResponse(modes, 0.07);
    rest.rest(still);
    double[] constant = new double[36];
    for (int k = 0; k < 6; k++) {
      constant[6 * k] = still[k];
    }
    rest.enter(1, constant);
    rest.at(1);
    Vec3 end = place(rest.shift(), point);
    response.enter(0.2, constant);
    for (double s : new double[] {0, 0.3, 1}) {
      response.at(s);
      assertEquals(place(response.shift(), point).minus(end).norm(), swing.at(0.2 * s), 1e-12);
    }
  }

  private static Vec3 place(double[] x, Vec3 point) {
    return new Vec3(x[0], x[1], x[2]).plus(new Vec3(x[3], x[4], x[5]).cross(point));
  }
}
