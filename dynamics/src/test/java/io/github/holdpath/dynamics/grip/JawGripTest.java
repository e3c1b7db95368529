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
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class JawGripTest {
  private static final Vec3 X = new Vec3(1, 0, 0);
  private static final Vec3 Y = new Vec3(0, 1, 0);
  private static final Vec3 MINUS_Y = new Vec3(0, -1, 0);
  private static final Vec3 Z = new Vec3(0, 0, 1);

  @Test
  void padsStandHalfTheOpeningAwayAndLookAtEachOther() {
    List<ContactPatch> patches = Grips.jaws(Mechanism.SYNCHRONISED, List.of()).patches();
    assertEquals(List.of("pad +y", "pad -y"), patches.stream().map(ContactPatch::name).toList());
    Expect.near(new Vec3(0, 0.02, 0), patches.get(0).pose().position(), Expect.ALGEBRA);
    Expect.near(new Vec3(0, -0.02, 0), patches.get(1).pose().position(), Expect.ALGEBRA);
    Expect.near(MINUS_Y, patches.get(0).pose().rotation().rotate(Z), Expect.ALGEBRA);
    Expect.near(Y, patches.get(1).pose().rotation().rotate(Z), Expect.ALGEBRA);
  }

  @Test
  void bothPadsLieAlongTheGivenDirection() {
    for (ContactPatch patch : Grips.jaws(Mechanism.SYNCHRONISED, List.of()).patches()) {
      Expect.near(Z, patch.pose().rotation().rotate(X), Expect.ALGEBRA);
    }
  }

  @Test
  void eachPadPressesWithTheForceOfItsJawAndPullsNothing() {
    for (ContactPatch patch : Grips.jaws(Mechanism.INDEPENDENT, List.of()).patches()) {
      assertEquals(200, patch.preload());
      assertEquals(0, patch.pull());
      assertEquals(0.3, patch.friction());
      assertEquals(new PatchShape.Rectangle(0.03, 0.015), patch.shape());
      assertEquals(Grips.SOFT, patch.stiffness());
      assertEquals(3e6 * 0.03 * 0.015, patch.maxNormal(), 1e-9);
      assertEquals(6e6, patch.maxPeakPressure());
    }
  }

  @Test
  void oneDriveMovesSynchronisedJaws() {
    List<Drive> drives = Grips.jaws(Mechanism.SYNCHRONISED, List.of()).drives();
    assertEquals(List.of(new Drive(List.of(0, 1), List.of(MINUS_Y, Y))), drives);
  }

  @Test
  void eachIndependentJawHasItsDrive() {
    List<Drive> drives = Grips.jaws(Mechanism.INDEPENDENT, List.of()).drives();
    assertEquals(
        List.of(new Drive(List.of(0), List.of(MINUS_Y)), new Drive(List.of(1), List.of(Y))),
        drives);
  }

  @Test
  void selfLockingJawsStandLikeWalls() {
    assertEquals(List.of(), Grips.jaws(Mechanism.SELF_LOCKING, List.of()).drives());
  }

  @ParameterizedTest
  @EnumSource
  void ledgesAreNeverDriven(Mechanism mechanism) {
    JawGrip grip = Grips.jaws(mechanism, List.of(Grips.SHELF));
    assertEquals(3, grip.patches().size());
    assertTrue(grip.patches().get(2).ledge());
    assertEquals(Grips.jaws(mechanism, List.of()).drives(), grip.drives());
  }

  @Test
  void padAlongXIsLaidIntoTheFace() {
    JawGrip grip = withAlong(new Vec3(2, 0.5, 0));
    Expect.near(X, grip.patches().get(0).pose().rotation().rotate(X), Expect.ALGEBRA);
    JawGrip across = withAlong(Y);
    Expect.refused("parallel", across::patches);
  }

  private static JawGrip withAlong(Vec3 along) {
    PatchShape line = new PatchShape.Line(0.03);
    double none = Grips.NO_LIMIT;
    return new JawGrip(
        0.04, line, along, Mechanism.INDEPENDENT, 200, 0.3, Grips.SOFT, none, none, List.of());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.01, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesAnOpeningThatIsNotPositive(double opening) {
    PatchShape line = new PatchShape.Line(0.03);
    double none = Grips.NO_LIMIT;
    Expect.refused(
        "opening must be positive",
        () ->
            new JawGrip(
                opening,
                line,
                Z,
                Mechanism.INDEPENDENT,
                1,
                0.3,
                Grips.SOFT,
                none,
                none,
                List.of()));
  }

  @Test
  void driveRefusesListsOfDifferentLength() {
    Expect.refused("one direction for each", () -> new Drive(List.of(0, 1), List.of(Y)));
    Expect.refused("one direction for each", () -> new Drive(List.of(), List.of()));
  }

  @Test
  void mechanismsHaveTheNamesOfTheSceneFile() {
    assertEquals("synchronised", Mechanism.SYNCHRONISED.label());
    assertEquals("independent", Mechanism.INDEPENDENT.label());
    assertEquals("self-locking", Mechanism.SELF_LOCKING.label());
  }
}
