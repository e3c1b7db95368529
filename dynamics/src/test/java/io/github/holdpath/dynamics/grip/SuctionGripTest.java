package io.github.holdpath.dynamics.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Expect;
import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SuctionGripTest {
  @Test
  void pullIsPressureTimesArea() {
    // 60 kPa on a lip of 40 mm: 60000 Pa times 12.5664 cm^2
    assertEquals(75.3982, Cup.pull(60_000, 0.04, 1), 5e-5);
    assertEquals(0.8 * Cup.pull(60_000, 0.04, 1), Cup.pull(60_000, 0.04, 0.8), 1e-12);
    assertEquals(4 * Cup.pull(60_000, 0.02, 1), Cup.pull(60_000, 0.04, 1), 1e-12);
    assertEquals(0, Cup.pull(0, 0.04, 1));
  }

  @Test
  void everyCupIsASealedRingWhereItSits() {
    SuctionGrip grip = Grips.fourCups(List.of());
    List<ContactPatch> patches = grip.patches();
    assertEquals(4, patches.size());
    for (int i = 0; i < 4; i++) {
      Cup cup = grip.cups().get(i);
      ContactPatch patch = patches.get(i);
      assertEquals(cup.name(), patch.name());
      assertEquals(cup.position(), patch.pose().position());
      assertEquals(Quaternion.IDENTITY, patch.pose().rotation());
      assertEquals(new PatchShape.Ring(0.02), patch.shape());
      assertTrue(patch.shape().sealed());
      assertEquals(0.5, patch.friction());
      assertEquals(cup.stiffness(), patch.stiffness());
      assertFalse(patch.ledge());
    }
  }

  @Test
  void vacuumPressesTheLipAsHardAsItPulls() {
    for (ContactPatch patch : Grips.fourCups(List.of()).patches()) {
      assertEquals(patch.pull(), patch.preload());
      assertTrue(patch.pull() > 0);
    }
  }

  @Test
  void permittedPressureBoundsTheMeanAlone() {
    ContactPatch patch = Grips.fourCups(List.of()).patches().get(0);
    assertEquals(2e5 * Math.PI * 0.02 * 0.02, patch.maxNormal(), 1e-9);
    assertEquals(Double.POSITIVE_INFINITY, patch.maxPeakPressure());
  }

  @Test
  void nothingMovesInASuctionGrip() {
    assertEquals(List.of(), Grips.fourCups(List.of(Grips.SHELF)).drives());
  }

  @Test
  void ledgeLooksWhereItPushes() {
    ContactPatch shelf = Grips.fourCups(List.of(Grips.SHELF)).patches().get(4);
    assertEquals("shelf", shelf.name());
    assertTrue(shelf.ledge());
    assertEquals(new PatchShape.Rectangle(0.04, 0.02), shelf.shape());
    assertEquals(1e6, shelf.stiffness().normal());
    Quaternion q = shelf.pose().rotation();
    Expect.near(new Vec3(0, 0, -1), q.rotate(new Vec3(0, 0, 1)), Expect.ALGEBRA);
    Expect.near(new Vec3(1, 0, 0), q.rotate(new Vec3(1, 0, 0)), Expect.ALGEBRA);
  }

  @Test
  void ledgeThatLooksAlongXLaysItsFirstSideAlongZ() {
    Ledge stop = new Ledge("stop", Vec3.ZERO, new Vec3(3, 0, 0), 0.04, 0.02, 1e6);
    Quaternion q = Grips.fourCups(List.of(stop)).patches().get(4).pose().rotation();
    Expect.near(new Vec3(1, 0, 0), q.rotate(new Vec3(0, 0, 1)), Expect.ALGEBRA);
    Expect.near(new Vec3(0, 0, 1), q.rotate(new Vec3(1, 0, 0)), Expect.ALGEBRA);
  }

  @Test
  void ledgeWithoutDirectionIsRefused() {
    Ledge lost = new Ledge("lost", Vec3.ZERO, Vec3.ZERO, 0.04, 0.02, 1e6);
    SuctionGrip grip = Grips.fourCups(List.of(lost));
    Expect.refused("no direction", grip::patches);
  }

  @Test
  void refusesAGripWithoutCups() {
    Expect.refused("at least one cup", () -> new SuctionGrip(List.of(), List.of(), 0.5, 1e5));
  }

  @Test
  void laterChangesToTheGivenListDoNotReachTheGrip() {
    List<Cup> cups = new ArrayList<>(Grips.fourCups(List.of()).cups());
    SuctionGrip grip = new SuctionGrip(cups, List.of(), 0.5, 1e5);
    cups.clear();
    assertEquals(4, grip.cups().size());
  }
}
