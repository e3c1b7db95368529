package io.github.holdpath.dynamics.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Expect;
import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class MagnetGripTest {
  private static final PatchShape DISC = new PatchShape.Disc(0.025);

  @Test
  void everyFacePressesAsHardAsItPulls() {
    MagnetGrip grip = Grips.magnets(DISC, List.of());
    assertEquals(2, grip.patches().size());
    for (int i = 0; i < 2; i++) {
      MagnetFace face = grip.faces().get(i);
      ContactPatch patch = grip.patches().get(i);
      assertEquals(face.name(), patch.name());
      assertEquals(face.position(), patch.pose().position());
      assertEquals(Quaternion.IDENTITY, patch.pose().rotation());
      assertEquals(240, patch.pull());
      assertEquals(240, patch.preload());
      assertEquals(face.stiffness(), patch.stiffness());
      assertEquals(0.15, patch.friction());
    }
  }

  @Test
  void facesHaveNoSealToPeel() {
    for (PatchShape shape : List.of(DISC, new PatchShape.Rectangle(0.06, 0.04))) {
      ContactPatch patch = Grips.magnets(shape, List.of()).patches().get(0);
      assertEquals(shape, patch.shape());
      assertFalse(patch.shape().sealed());
      assertEquals(2e6 * shape.area(), patch.maxNormal(), 1e-9);
    }
  }

  @Test
  void ledgesFollowTheFaces() {
    ContactPatch shelf = Grips.magnets(DISC, List.of(Grips.SHELF)).patches().get(2);
    assertTrue(shelf.ledge());
    assertEquals("shelf", shelf.name());
    assertEquals(List.of(), Grips.magnets(DISC, List.of(Grips.SHELF)).drives());
  }

  @Test
  void electromagnetsAloneLetGoWithoutPower() {
    assertEquals(
        List.of(MagnetType.ELECTROMAGNET),
        Stream.of(MagnetType.values()).filter(t -> !t.keepsWithoutPower()).toList());
    assertEquals("switched permanent", MagnetType.SWITCHED.label());
  }

  @Test
  void refusesFacesThatAreNone() {
    for (PatchShape shape : List.of(new PatchShape.Ring(0.02), new PatchShape.Line(0.02))) {
      Expect.refused(
          "a disc or a rectangle", () -> new MagnetFace("face", Vec3.ZERO, shape, 240, Grips.SOFT));
    }
    Expect.refused(
        "at least one face",
        () -> new MagnetGrip(List.of(), MagnetType.PERMANENT, List.of(), 0.15, 1e6));
  }
}
