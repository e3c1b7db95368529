package io.github.holdpath.dynamics.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Expect;
import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SoftGripTest {
  private static final Vec3 X = new Vec3(1, 0, 0);

  private static SoftGrip limited(double maxForce, double maxPressure) {
    return new SoftGrip(
        3,
        0.06,
        0.02,
        0.03,
        Mechanism.INDEPENDENT,
        8,
        maxForce,
        0.6,
        Grips.SOFT,
        maxPressure,
        Grips.NO_LIMIT,
        List.of());
  }

  @Test
  void fingersPressInwardFacesOfTheirSize() {
    List<ContactPatch> patches = Grips.soft(Mechanism.SYNCHRONISED, 2, List.of()).patches();
    assertEquals(
        List.of("finger 1", "finger 2"), patches.stream().map(ContactPatch::name).toList());
    Expect.near(new Vec3(0.03, 0, 0), patches.get(0).pose().position(), Expect.ALGEBRA);
    Expect.near(new Vec3(-0.03, 0, 0), patches.get(1).pose().position(), Expect.ALGEBRA);
    for (ContactPatch patch : patches) {
      assertEquals(new PatchShape.Rectangle(0.02, 0.03), patch.shape());
      assertEquals(8, patch.preload());
      assertEquals(1, Math.abs(patch.pose().rotation().rotate(X).y()), Expect.ALGEBRA);
    }
  }

  /** Area 6 cm^2: 24 N are 40 kPa. */
  @ParameterizedTest
  @CsvSource({"24, 50e3, 24", "24, 30e3, 18", "24, Infinity, 24", "Infinity, 50e3, 30"})
  void theLowerLimitOfForceCounts(double maxForce, double maxPressure, double expected) {
    for (ContactPatch patch : limited(maxForce, maxPressure).patches()) {
      assertEquals(expected, patch.maxNormal(), 1e-12 * expected);
    }
  }

  @Test
  void noLimitWhereNoneIsGiven() {
    double none = Grips.NO_LIMIT;
    assertEquals(none, limited(none, none).patches().get(0).maxNormal());
  }

  @Test
  void mechanismTiesTheFingers() {
    SoftGrip one = Grips.soft(Mechanism.SYNCHRONISED, 4, List.of(Grips.SHELF));
    assertEquals(List.of(0, 1, 2, 3), one.drives().get(0).patches());
    assertEquals(4, Grips.soft(Mechanism.INDEPENDENT, 4, List.of()).drives().size());
    SoftGrip locked = Grips.soft(Mechanism.SELF_LOCKING, 4, List.of());
    assertEquals(List.of(), locked.drives());
    assertEquals(one.drives(), locked.closures());
  }

  @Test
  void saysThatAFingerWraps() {
    String told = Grips.soft(Mechanism.SYNCHRONISED, 2, List.of()).assumptions().get(0);
    assertTrue(told.startsWith("Soft fingers wrap round the part"), told);
  }

  @Test
  void refusesOneFingerAndNoRoomForForce() {
    Expect.refused("at least 2", () -> Grips.soft(Mechanism.SYNCHRONISED, 1, List.of()));
    Expect.refused("maxForce must be positive", () -> limited(0, 1e5));
    Expect.refused("maxForce must be positive", () -> limited(Double.NaN, 1e5));
  }
}
