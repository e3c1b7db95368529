package io.github.holdpath.dynamics.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Expect;
import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class PatchGripTest {
  private static final List<ContactPatch> JAWS =
      Grips.jaws(Mechanism.SYNCHRONISED, List.of(Grips.SHELF)).patches();
  private static final List<Vec3> UP = List.of(new Vec3(0, 0, 1));

  @Test
  void keepsWhatItIsGiven() {
    Drive drive = new Drive(List.of(1), List.of(new Vec3(0, 1, 0)));
    Drive closure = new Drive(List.of(0), List.of(new Vec3(0, -1, 0)));
    PatchGrip grip = new PatchGrip(JAWS, List.of(drive), List.of(closure));
    assertEquals(JAWS, grip.patches());
    assertEquals(List.of(drive), grip.drives());
    assertEquals(List.of(closure), grip.closures());
  }

  @Test
  void refusesPatchesThatCannotBeToldApart() {
    List<ContactPatch> twice = List.of(JAWS.get(0), JAWS.get(0));
    Expect.refused("two patches are called pad +y", () -> grip(twice, List.of()));
    Expect.refused("at least one patch", () -> grip(List.of(), List.of()));
  }

  @Test
  void refusesFormFitBeforeOthers() {
    List<ContactPatch> turned = new ArrayList<>(JAWS);
    Collections.reverse(turned);
    Expect.refused("form fit comes last, but pad -y follows", () -> grip(turned, List.of()));
  }

  @Test
  void refusesDrivesOfWhatCannotMove() {
    Expect.refused("no patch 3", () -> grip(JAWS, List.of(new Drive(List.of(3), UP))));
    Expect.refused("no patch -1", () -> grip(JAWS, List.of(new Drive(List.of(-1), UP))));
    Expect.refused("shelf is form fit", () -> grip(JAWS, List.of(new Drive(List.of(2), UP))));
    Drive one = new Drive(List.of(0), UP);
    Expect.refused("pad +y is moved twice", () -> grip(JAWS, List.of(one, one)));
    Expect.refused("pad +y is moved twice", () -> new PatchGrip(JAWS, List.of(one), List.of(one)));
  }

  private static PatchGrip grip(List<ContactPatch> patches, List<Drive> drives) {
    return new PatchGrip(patches, drives, List.of());
  }

  @Test
  void balanceTellsWhatIsLeftOver() {
    assertTrue(PreloadBalance.rest(JAWS).isEmpty());
    // 200 N of the one pad along -y, 20 mm along y from the origin: no moment.
    Wrench rest = PreloadBalance.rest(JAWS.subList(0, 1)).orElseThrow();
    Expect.near(new Vec3(0, -200, 0), rest.force(), 200 * Expect.ALGEBRA);
    Expect.near(Vec3.ZERO, rest.moment(), 200 * Expect.ALGEBRA);
  }

  @Test
  void aNormalAloneLaysXOfTheGripIntoThePatch() {
    Quaternion q = Ledge.facing(new Vec3(0, -2, 2));
    double h = Math.sqrt(0.5);
    Expect.near(new Vec3(0, -h, h), q.rotate(new Vec3(0, 0, 1)), Expect.ALGEBRA);
    Expect.near(new Vec3(1, 0, 0), q.rotate(new Vec3(1, 0, 0)), Expect.ALGEBRA);
    Expect.near(
        new Vec3(0, 0, 1),
        Ledge.facing(new Vec3(-1, 0, 0)).rotate(new Vec3(1, 0, 0)),
        Expect.ALGEBRA);
  }
}
