package io.github.holdpath.dynamics.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.holdpath.dynamics.Expect;
import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class VeeTest {
  private static final Vec3 X = new Vec3(1, 0, 0);
  private static final Vec3 Z = new Vec3(0, 0, 1);

  @Test
  void aBarTouchesTwoFlanksOfEachJaw() {
    List<ContactPatch> patches =
        Grips.vee(Mechanism.SYNCHRONISED, Math.toRadians(90), true).patches();
    assertEquals(
        List.of("pad +y flank +z", "pad +y flank -z", "pad -y flank +z", "pad -y flank -z"),
        patches.stream().map(ContactPatch::name).toList());
    double h = 0.02 * Math.sqrt(0.5);
    Expect.near(new Vec3(0, h, h), patches.get(0).pose().position(), Expect.ALGEBRA);
    Expect.near(new Vec3(0, h, -h), patches.get(1).pose().position(), Expect.ALGEBRA);
    Expect.near(new Vec3(0, -h, h), patches.get(2).pose().position(), Expect.ALGEBRA);
    for (ContactPatch patch : patches) {
      Expect.near(X, patch.pose().rotation().rotate(X), Expect.ALGEBRA);
      Vec3 inward = patch.pose().position().unit().times(-1);
      Expect.near(inward, patch.pose().rotation().rotate(Z), Expect.ALGEBRA);
    }
  }

  @Test
  void aBarAlongZHasItsFlanksTowardsX() {
    List<ContactPatch> patches =
        Grips.vee(Mechanism.INDEPENDENT, Math.toRadians(120), false).patches();
    assertEquals("pad -y flank -x", patches.get(3).name());
    double y = 0.02 * Math.sin(Math.toRadians(60));
    Expect.near(new Vec3(-0.01, -y, 0), patches.get(3).pose().position(), Expect.ALGEBRA);
    Expect.near(Z, patches.get(3).pose().rotation().rotate(X), Expect.ALGEBRA);
  }

  /** The flanks of a jaw together press along the closing axis with the jaw's force. */
  @ParameterizedTest
  @ValueSource(doubles = {20, 60, 90, 120, 179})
  void flanksAddUpToTheForceOfTheJaw(double degrees) {
    JawGrip grip = Grips.vee(Mechanism.SYNCHRONISED, Math.toRadians(degrees), true);
    Vec3 sum = Vec3.ZERO;
    for (ContactPatch patch : grip.patches().subList(0, 2)) {
      sum = sum.plus(patch.pose().rotation().rotate(Z).times(patch.preload()));
    }
    Expect.near(new Vec3(0, -200, 0), sum, 200 * 10 * Expect.ALGEBRA);
  }

  /** F/(2 sin(angle/2)): common practice, no source. */
  @ParameterizedTest
  @CsvSource({"60, 1", "90, 0.707107", "120, 0.577350"})
  void flankForceByAngle(double degrees, double expected) {
    assertEquals(expected, new Vee(Math.toRadians(degrees)).flankPerForce(), 5e-7);
  }

  @Test
  void bothFlanksOfAJawFollowItsDrive() {
    JawGrip one = Grips.vee(Mechanism.SYNCHRONISED, 1.5, true);
    assertEquals(List.of(List.of(0, 1, 2, 3)), one.drives().stream().map(Drive::patches).toList());
    Vec3 down = new Vec3(0, -1, 0);
    JawGrip each = Grips.vee(Mechanism.INDEPENDENT, 1.5, true);
    assertEquals(new Drive(List.of(0, 1), List.of(down, down)), each.drives().get(0));
    assertEquals(List.of(2, 3), each.drives().get(1).patches());
    assertEquals(one.drives(), Grips.vee(Mechanism.SELF_LOCKING, 1.5, true).closures());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Math.PI, Double.NaN})
  void refusesAnAngleThatMakesNoGroove(double angle) {
    Expect.refused("angle must lie between", () -> new Vee(angle));
  }

  @Test
  void refusesABarThatLiesAskew() {
    PatchShape line = new PatchShape.Line(0.03);
    double none = Grips.NO_LIMIT;
    Expect.refused(
        "must be the x or z axis",
        () ->
            new JawGrip(
                0.04,
                line,
                new Vec3(1, 0, 1),
                Optional.of(new Vee(1)),
                Mechanism.INDEPENDENT,
                1,
                0.3,
                Grips.SOFT,
                none,
                none,
                List.of(),
                Optional.empty()));
  }
}
