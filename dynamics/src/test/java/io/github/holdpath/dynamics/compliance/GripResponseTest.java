package io.github.holdpath.dynamics.compliance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Draws;
import io.github.holdpath.dynamics.Expect;
import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class GripResponseTest {
  /** Roundings of a decomposition, relative to the load. */
  private static final double EXACT = 1e-10;

  /** A fine step of the fourth order at the 120 Hz or so of the quickest mode. */
  private static final double STEPPED = 1e-7;

  private static final int STRETCHES = 4;

  static ContactPatch cup(Draws draws) {
    return new ContactPatch(
        "cup",
        new Pose(draws.vector(0.15), draws.rotation()),
        new PatchShape.Ring(draws.number(0.01, 0.03)),
        0.5,
        50,
        50,
        new PatchStiffness(draws.number(2e3, 2e4), draws.number(1e3, 1e4)),
        Double.POSITIVE_INFINITY,
        Double.POSITIVE_INFINITY,
        false);
  }

  static GripStiffness cups(Draws draws) {
    List<ContactPatch> cups = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      cups.add(cup(draws));
    }
    return GripStiffness.of(cups, List.of(), new boolean[4]);
  }

  private static double[] load(Draws draws) {
    double[] load = new double[36];
    for (int k = 0; k < 36; k++) {
      load[k] = draws.number(-1, 1) * (k < 18 ? 20 : 1) / (1 + k % 6);
    }
    return load;
  }

  /** Value of the load at a place of its stretch. */
  static double[] value(double[] load, double s) {
    double[] w = new double[6];
    for (int i = 0; i < 6; i++) {
      for (int k = 5; k >= 0; k--) {
        w[i] = w[i] * s + load[6 * i + k];
      }
    }
    return w;
  }

  /** M x'' + D x' + K x = -w by small steps, with D of equal damping in every mode. */
  private static final class Stepped {
    final Matrix inverseMass;
    final Matrix damping;
    final Matrix stiffness;
    Matrix x;
    Matrix v = Matrix.zero(6, 1);

    Stepped(GripStiffness grip, GripModes modes, MassProperties body, AirLoad air, double zeta) {
      stiffness = Matrix.of(6, grip.matrix());
      inverseMass = Matrix.of(6, MassMatrix.of(body, air).data).inverse();
      Matrix sum = Matrix.zero(6, 6);
      for (int m = 0; m < 6; m++) {
        // D = sum of 2 zeta/w (K psi)(K psi)^T for psi^T K psi = 1.
        Matrix wrench = stiffness.mult(Matrix.column(shape(modes, m)));
        sum = sum.plus(wrench.mult(wrench.transpose()).scale(2 * zeta / modes.omega(m)));
      }
      damping = sum;
      x = Matrix.zero(6, 1);
    }

    static double[] shape(GripModes modes, int m) {
      SwingMode mode = modes.modes().get(m);
      Vec3 s = mode.shift();
      Vec3 t = mode.turn();
      return new double[] {s.x(), s.y(), s.z(), t.x(), t.y(), t.z()};
    }

    Matrix pull(double[] w, Matrix at, Matrix speed) {
      return inverseMass.mult(
          Matrix.column(w).plus(damping.mult(speed)).plus(stiffness.mult(at)).scale(-1));
    }

    void run(double[] load, double length, int steps) {
      double h = length / steps;
      for (int i = 0; i < steps; i++) {
        double[] a = value(load, (double) i / steps);
        double[] b = value(load, (i + 0.5) / steps);
        double[] c = value(load, (i + 1.0) / steps);
        Matrix a1 = pull(a, x, v);
        Matrix v2 = v.plus(a1.scale(h / 2));
        Matrix a2 = pull(b, x.plus(v.scale(h / 2)), v2);
        Matrix v3 = v.plus(a2.scale(h / 2));
        Matrix a3 = pull(b, x.plus(v2.scale(h / 2)), v3);
        Matrix v4 = v.plus(a3.scale(h));
        Matrix a4 = pull(c, x.plus(v3.scale(h)), v4);
        x = x.plus(v.plus(v2.scale(2)).plus(v3.scale(2)).plus(v4).scale(h / 6));
        v = v.plus(a1.plus(a2.scale(2)).plus(a3.scale(2)).plus(a4).scale(h / 6));
      }
    }

    Matrix wrench() {
      return stiffness.mult(x).plus(damping.mult(v)).scale(-1);
    }
  }

  @Test
  void agreesWithSmallStepsOfTheSixEquations() {
    Draws draws = new Draws();
    for (int n = 0; n < 3; n++) {
      GripStiffness grip = cups(draws);
      MassProperties body = draws.body();
      AirLoad air = new AirLoad(1.2, 0, 0.3, draws.vector(1));
      GripModes modes = GripModes.of(grip, body, air);
      double zeta = draws.number(0, 0.2);
      GripResponse response = new GripResponse(modes, zeta);
      Stepped stepped = new Stepped(grip, modes, body, air, zeta);
      double[] first = load(draws);
      response.rest(value(first, 0));
      stepped.x = stepped.stiffness.inverse().mult(Matrix.column(value(first, 0))).scale(-1);
      double[] load = first;
      for (int i = 0; i < STRETCHES; i++) {
        double length = draws.number(0.001, 0.05);
        response.enter(length, load);
        response.at(1);
        // A step of a 2000th of a radian of the quickest mode.
        int steps = (int) Math.ceil(length * modes.omega(5) * 40);
        stepped.run(load, length, steps);
        Matrix carried = stepped.wrench();
        for (int k = 0; k < 6; k++) {
          assertEquals(carried.get(k), response.wrench()[k], STEPPED * 100, "n " + n);
          assertEquals(stepped.x.get(k), response.shift()[k], STEPPED, "n " + n);
        }
        response.leave();
        load = load(draws);
      }
    }
  }

  @Test
  void answersAddUp() {
    Draws draws = new Draws();
    GripModes modes = GripModes.of(cups(draws), draws.body(), AirLoad.NONE);
    GripResponse one = new GripResponse(modes, 0.05);
    GripResponse two = new GripResponse(modes, 0.05);
    GripResponse both = new GripResponse(modes, 0.05);
    double[] a = load(draws);
    double[] b = load(draws);
    double[] sum = new double[36];
    for (int k = 0; k < 36; k++) {
      sum[k] = 2 * a[k] - 3 * b[k];
    }
    double[] none = new double[6];
    one.rest(none);
    two.rest(none);
    both.rest(none);
    one.enter(0.08, a);
    two.enter(0.08, b);
    both.enter(0.08, sum);
    one.at(0.7);
    two.at(0.7);
    both.at(0.7);
    for (int k = 0; k < 6; k++) {
      assertEquals(2 * one.wrench()[k] - 3 * two.wrench()[k], both.wrench()[k], EXACT * 100);
      assertEquals(2 * one.shift()[k] - 3 * two.shift()[k], both.shift()[k], EXACT);
    }
  }

  /** The part carries no energy in from outside once the tool stands still. */
  @Test
  void energyDies() {
    Draws draws = new Draws();
    for (int n = 0; n < 20; n++) {
      GripStiffness grip = cups(draws);
      MassProperties body = draws.body();
      GripModes modes = GripModes.of(grip, body, AirLoad.NONE);
      Matrix stiffness = Matrix.of(6, grip.matrix());
      Matrix mass = Matrix.of(6, MassMatrix.of(body, AirLoad.NONE).data);
      GripResponse response = new GripResponse(modes, 0.05);
      response.rest(value(load(draws), 0));
      double[] none = new double[36];
      double before = Double.POSITIVE_INFINITY;
      double first = 0;
      // Central differences of the exact way; their error is far below the energy lost in a step.
      double step = 0.05 / modes.omega(5);
      double d = 1e-3;
      for (int i = 0; i < 200; i++) {
        response.enter(step, none);
        response.at(0.5 - d);
        Matrix early = Matrix.column(response.shift().clone());
        response.at(0.5 + d);
        Matrix late = Matrix.column(response.shift().clone());
        Matrix speed = late.minus(early).scale(1 / (2 * d * step));
        Matrix mid = late.plus(early).scale(0.5);
        double energy = (mass.quadratic(speed) + stiffness.quadratic(mid)) / 2;
        assertTrue(energy <= before * (1 + 1e-9), "step " + i + ": " + energy + " after " + before);
        first = i == 0 ? energy : first;
        before = energy;
        response.leave();
      }
      assertTrue(before < 0.99 * first);
    }
  }

  @Test
  void shapesDiagonaliseMassAndStiffness() {
    Draws draws = new Draws();
    GripStiffness grip = cups(draws);
    MassProperties body = draws.body();
    GripModes modes = GripModes.of(grip, body, AirLoad.NONE);
    Matrix k = Matrix.of(6, grip.matrix());
    Matrix mass = Matrix.of(6, MassMatrix.of(body, AirLoad.NONE).data);
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        Matrix a = Matrix.column(Stepped.shape(modes, i));
        Matrix b = Matrix.column(Stepped.shape(modes, j));
        double one = i == j ? 1 : 0;
        assertEquals(one, a.transpose().mult(k).mult(b).get(0), EXACT);
        double square = modes.omega(i) * modes.omega(j);
        assertEquals(one, square * a.transpose().mult(mass).mult(b).get(0), EXACT * 1e3);
      }
    }
  }

  /** A body so heavy to turn that it only shifts: w^2 = k/(m + added). */
  @Test
  void carriedAirSlowsTheSwingAlongItsNormal() {
    Draws draws = new Draws();
    List<ContactPatch> cups = new ArrayList<>();
    for (Vec3 at : List.of(new Vec3(0.1, 0.1, 0), new Vec3(-0.1, 0.1, 0), new Vec3(0, -0.2, 0))) {
      cups.add(
          new ContactPatch(
              "cup",
              new Pose(at, Quaternion.IDENTITY),
              new PatchShape.Ring(0.02),
              0.5,
              50,
              50,
              new PatchStiffness(3000, 2000),
              Double.POSITIVE_INFINITY,
              Double.POSITIVE_INFINITY,
              false));
    }
    GripStiffness grip = GripStiffness.of(cups, List.of(), new boolean[3]);
    double inertia = draws.number(1, 2);
    MassProperties body =
        new MassProperties(0.5, Vec3.ZERO, new Inertia(inertia, inertia, inertia, 0, 0, 0));
    // A disc of 0.25 m radius carries 0.05 kg: Lamb, Hydrodynamics, (8/3) rho a^3.
    AirLoad air = new AirLoad(1.2, 0, 8.0 / 3 * 1.2 * Math.pow(0.25, 3), new Vec3(0, 0, 1));
    SwingMode bounce = along(GripModes.of(grip, body, air), "along z");
    assertEquals(Math.sqrt(9000 / 0.55) / (2 * Math.PI), bounce.frequency(), 1e-9);
    SwingMode aside = along(GripModes.of(grip, body, air), "along x");
    assertEquals(Math.sqrt(6000 / 0.5) / (2 * Math.PI), aside.frequency(), 0.02);
  }

  private static SwingMode along(GripModes modes, String direction) {
    return modes.modes().stream()
        .filter(m -> m.direction().startsWith(direction))
        .findFirst()
        .orElseThrow();
  }

  /** A part without inertia turns at once with its load. */
  @Test
  void aPointOfMassKeepsItsModesFinite() {
    Draws draws = new Draws();
    MassProperties point = new MassProperties(0.5, draws.vector(0.1), Inertia.POINT);
    GripStiffness grip = cups(draws);
    GripModes modes = GripModes.of(grip, point, AirLoad.NONE);
    assertTrue(Double.isFinite(modes.modes().get(2).frequency()));
    assertTrue(Double.isInfinite(modes.modes().get(3).frequency()));
    GripResponse response = new GripResponse(modes, 0.05);
    double[] load = load(draws);
    response.rest(value(load, 0));
    response.enter(0.01, load);
    response.at(0);
    assertArrayEquals(value(load, 0), response.wrench(), EXACT * 100);
  }

  @Test
  void refusesWhatCannotBe() {
    Draws draws = new Draws();
    GripModes modes = GripModes.of(cups(draws), draws.body(), AirLoad.NONE);
    Expect.refused("damping ratio must be", () -> new GripResponse(modes, 1));
    Expect.refused("longer than 0 s", () -> new GripResponse(modes, 0.1).enter(0, new double[36]));
  }
}
