package io.github.holdpath.sim.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import org.junit.jupiter.api.Test;

class FreeFlightTest {
  private static final Vec3 GRAVITY = new Vec3(0, 0, -9.81);
  private static final double ALGEBRA = 1e-12;
  private static final Pose ASLANT = new Pose(new Vec3(0.3, -1, 2), Quaternion.ofRpy(0.4, -1.1, 2));

  private static MotionState moving(Pose pose, Vec3 v, Vec3 w) {
    return new MotionState(pose, v, w, Vec3.ZERO, Vec3.ZERO);
  }

  @Test
  void centreOfMassFliesAParabola() {
    Vec3 centre = new Vec3(0.1, 0.02, -0.05);
    MassProperties body = new MassProperties(3, centre, Inertia.solidBox(3, new Vec3(1, 0.4, 0.2)));
    Vec3 v = new Vec3(1.5, -0.5, 2);
    Vec3 w = new Vec3(2, 1, -3);
    FreeFlight flight = new FreeFlight(body, moving(ASLANT, v, w), GRAVITY);
    Vec3 arm = ASLANT.rotation().rotate(centre);
    Vec3 v0 = v.plus(w.cross(arm));
    flight.to(0.731);
    Vec3 expected =
        ASLANT.apply(centre).plus(v0.times(0.731)).plus(GRAVITY.times(0.731 * 0.731 / 2));
    assertEquals(0, flight.pose().apply(centre).minus(expected).norm(), ALGEBRA * 10);
  }

  @Test
  void keepsEnergyOfTurningAndAngularMomentum() {
    Inertia inertia = Inertia.solidBox(2, new Vec3(0.6, 0.3, 0.1));
    MassProperties body = new MassProperties(2, new Vec3(0, 0, 0.1), inertia);
    // About the middle axis, where free turning is unsteady and tumbles.
    Vec3 w = ASLANT.rotation().rotate(new Vec3(0.02, 8, 0.01));
    FreeFlight flight = new FreeFlight(body, moving(ASLANT, Vec3.ZERO, w), GRAVITY);
    double energy = flight.turningEnergy();
    Vec3 momentum = flight.momentum();
    for (double t = 0.1; t < 10; t += 0.1) {
      flight.to(t);
      assertEquals(energy, flight.turningEnergy(), FreeFlight.TOLERANCE * energy);
      assertEquals(0, flight.momentum().minus(momentum).norm(), 1e-11 * momentum.norm());
    }
  }

  @Test
  void energyOfTheWholeGrowsByWhatGravityGives() {
    MassProperties body =
        new MassProperties(2, new Vec3(0, 0.2, 0), Inertia.solidBox(2, new Vec3(0.6, 0.3, 0.1)));
    FreeFlight flight =
        new FreeFlight(body, moving(ASLANT, new Vec3(1, 2, 3), new Vec3(3, 2, 1)), GRAVITY);
    double before = flight.energy();
    double height = flight.centre(0).z();
    flight.to(1.5);
    double fallen = 2 * 9.81 * (height - flight.centre(1.5).z());
    assertEquals(before + fallen, flight.energy(), 1e-9 * flight.energy());
  }

  /**
   * A body alike about an axis turns that axis about the angular momentum at the rate L / A, A the
   * inertia across (Goldstein, Poole, Safko: Classical Mechanics, chapter 5, from memory).
   */
  @Test
  void axisOfASymmetricBodyPrecessesAtItsClosedFormRate() {
    double across = 0.02;
    double along = 0.005;
    MassProperties body =
        new MassProperties(1, Vec3.ZERO, new Inertia(across, across, along, 0, 0, 0));
    Vec3 w = new Vec3(2, 0, 9);
    FreeFlight flight = new FreeFlight(body, moving(Pose.IDENTITY, Vec3.ZERO, w), Vec3.ZERO);
    Vec3 momentum = new Vec3(across * 2, 0, along * 9);
    double rate = momentum.norm() / across;
    Vec3 about = momentum.unit();
    for (double t : new double[] {0.1, 0.5, 2.0}) {
      flight.to(t);
      Vec3 expected = Quaternion.ofAxisAngle(about, rate * t).rotate(new Vec3(0, 0, 1));
      Vec3 axis = flight.pose().rotation().rotate(new Vec3(0, 0, 1));
      // The steps' error of about 1e-10 a turn, over 20 rad.
      assertEquals(0, axis.minus(expected).norm(), 1e-8);
    }
  }

  @Test
  void aPointMassKeepsTurningAsItWas() {
    MassProperties body = new MassProperties(1, Vec3.ZERO, Inertia.POINT);
    FreeFlight flight =
        new FreeFlight(body, moving(Pose.IDENTITY, Vec3.ZERO, new Vec3(0, 0, 2)), GRAVITY);
    flight.to(0.5);
    double angle = flight.pose().rotation().angleTo(Quaternion.IDENTITY);
    assertEquals(1, angle, 1e-9);
  }
}
