package io.github.holdpath.dynamics.compliance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Draws;
import io.github.holdpath.dynamics.Expect;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.JawGrip;
import io.github.holdpath.dynamics.grip.Ledge;
import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class GripStiffnessTest {
  private static final double STIFF = 2e5;

  private static JawGrip jaws(Mechanism mechanism, List<Ledge> ledges) {
    return new JawGrip(
        0.04,
        new PatchShape.Rectangle(0.03, 0.02),
        new Vec3(1, 0, 0),
        mechanism,
        100,
        0.3,
        PatchStiffness.ofNormal(STIFF),
        Double.POSITIVE_INFINITY,
        Double.POSITIVE_INFINITY,
        ledges);
  }

  private static GripStiffness of(JawGrip grip, boolean ledges) {
    boolean[] standing = new boolean[grip.patches().size()];
    for (int i = 0; i < standing.length; i++) {
      standing[i] = ledges && grip.patches().get(i).ledge();
    }
    return GripStiffness.of(grip.patches(), grip.drives(), standing);
  }

  /** Two pads of kn on each side: their drive leaves the sum of their forces alone. */
  @Test
  void aSynchronisedDriveKeepsTheStiffnessAlongClosing() {
    double[] k = of(jaws(Mechanism.SYNCHRONISED, List.of()), false).matrix();
    assertEquals(2 * STIFF, k[7], 1e-6 * STIFF);
    assertEquals(4.0 / 3 * STIFF, k[0], 1e-6 * STIFF);
  }

  @Test
  void namesTheDirectionThatIndependentFingersLeaveFree() {
    GripStiffness free = of(jaws(Mechanism.INDEPENDENT, List.of()), false);
    assertEquals(Optional.of("along y"), free.freeDirection());
    Draws draws = new Draws();
    Expect.refused("but has none along y", () -> GripModes.of(free, draws.body(), AirLoad.NONE));
  }

  @Test
  void aLedgeAddsItsStiffnessWhileItPushes() {
    List<Ledge> ledges =
        List.of(new Ledge("rim", new Vec3(0, 0, 0.02), new Vec3(0, 0, -1), 0.02, 0.02, 5e5));
    JawGrip grip = jaws(Mechanism.SYNCHRONISED, ledges);
    double with = of(grip, true).matrix()[14];
    double without = of(grip, false).matrix()[14];
    assertEquals(5e5, with - without, 1e-6 * STIFF);
  }

  /** Both come from the same springs: the shift under a load is the matrix undone. */
  @Test
  void agreesWithTheGiveOfTheHoldModel() {
    Draws draws = new Draws();
    for (Mechanism mechanism : List.of(Mechanism.SYNCHRONISED, Mechanism.SELF_LOCKING)) {
      JawGrip grip = jaws(mechanism, List.of());
      assertTrue(of(grip, false).freeDirection().isEmpty());
      Matrix k = Matrix.of(6, of(grip, false).matrix());
      Wrench load = new Wrench(draws.vector(20), draws.vector(1));
      Matrix shift = k.inverse().mult(Matrix.column(load.toArray()));
      double[] give = HoldModel.of(grip).give(load);
      double[] six = new double[6];
      System.arraycopy(give, 0, six, 0, 6);
      assertArrayEquals(shift.of().getColumn(0), six, 1e-9);
    }
  }
}
