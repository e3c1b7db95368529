package io.github.holdpath.sim.scene.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.grip.Cup;
import io.github.holdpath.dynamics.grip.SuctionGrip;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.Scene;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Cups of the kinds that differ from round ones in a grid. */
class SuctionSceneTest {
  private static final double VACUUM = 35_000;
  private static final double RELATIVE = 1e-12;

  private static Scene with(String cups) {
    return SceneFiles.read(
            SceneFiles.GOOD.resolve("suction.json"),
            Map.of(
                "grip/cups",
                cups,
                "grip/supply",
                "{\"vacuum\":\"35 kPa\"}",
                "grip/ledges",
                "[{\"name\":\"rail\",\"at\":\"-200 0 50 mm\",\"normal\":\"1 0 0\","
                    + "\"size\":\"60 200 mm\",\"stiffness\":5}]",
                "part/shapeAt",
                "0 0 130 mm"))
        .scene();
  }

  private static SuctionGrip grip(String cups) {
    return (SuctionGrip) with(cups).grip();
  }

  @Test
  void mixesSizesInAList() {
    SuctionGrip grip =
        grip(
            "{\"list\":[{\"at\":\"-80 0 mm\"},{\"at\":\"0 0 mm\",\"diameter\":\"30 mm\"},"
                + "{\"name\":\"long\",\"at\":\"80 0 mm\",\"size\":\"30 80 mm\"}],\"diameter\":\"50 mm\"}");
    assertEquals(List.of("cup 1", "cup 2", "long"), grip.cups().stream().map(Cup::name).toList());
    assertEquals(List.of(0.05, 0.03, 0.03), grip.cups().stream().map(Cup::diameter).toList());
    double small = VACUUM * Math.PI * 0.03 * 0.03 / 4;
    assertEquals(small, grip.cups().get(1).pull(), RELATIVE * small);
    double oval = VACUUM * Math.PI * 0.03 * 0.08 / 4;
    assertEquals(oval, grip.cups().get(2).pull(), RELATIVE * oval);
  }

  @Test
  void ovalLipIsJudgedByTheCircleInsideIt() {
    SuctionGrip grip = grip("{\"grid\":[2,1],\"spacing\":\"100 30 mm\",\"size\":\"80 30 mm\"}");
    Cup cup = grip.cups().get(1);
    assertEquals(0.08, cup.length());
    assertEquals(0.03, cup.width());
    assertEquals(new PatchShape.Ring(0.015), grip.patches().get(1).shape());
    assertEquals(cup.pull(), grip.patches().get(1).preload());
  }

  /**
   * By hand: 20 by 14 cells 30 by 28.57 mm apart, of 20 mm; on a face of 400 by 300 mm lie those
   * with their middles within 190 by 140 mm of the centre, 12 by 10.
   */
  @Test
  void cellsOffThePartDoNotPull() {
    SuctionGrip grip =
        grip(
            "{\"pad\":{\"shape\":\"rectangular\",\"size\":\"600 400 mm\",\"cells\":[20,14]},"
                + "\"diameter\":\"20 mm\",\"off\":[\"cell 10,7\"]}");
    assertEquals(119, grip.cups().size());
    assertEquals(160, grip.idleCells());
    assertEquals("cell 5,3", grip.cups().get(0).name());
    Vec3 first = grip.cups().get(0).position();
    assertEquals(-0.165, first.x(), RELATIVE);
    assertEquals(-4.5 * 0.4 / 14, first.y(), RELATIVE);
  }

  /** By hand: 3 by 3 cells of 20 mm, 30 mm apart; the corners reach 52 mm, beyond 50 mm. */
  @Test
  void roundPadHasNoCornerCells() {
    SuctionGrip grip =
        grip(
            "{\"pad\":{\"shape\":\"round\",\"size\":\"100 mm\",\"spacing\":\"30 30 mm\"},"
                + "\"diameter\":\"20 mm\"}");
    assertEquals(
        List.of("cell 1,2", "cell 2,1", "cell 2,2", "cell 2,3", "cell 3,2"),
        grip.cups().stream().map(Cup::name).toList());
    assertEquals(0, grip.idleCells());
  }

  /**
   * By hand: rows at y = 12.5 mm, where lips in an oval with half axes 90 and 15 reach x = 50 mm.
   */
  @Test
  void ovalPadFollowsItsSides() {
    SuctionGrip grip =
        grip(
            "{\"pad\":{\"shape\":\"oval\",\"size\":\"200 50 mm\",\"spacing\":\"30 25 mm\"},"
                + "\"diameter\":\"20 mm\"}");
    assertEquals(
        List.of("cell 3,1", "cell 3,2", "cell 4,1", "cell 4,2", "cell 5,1", "cell 5,2"),
        grip.cups().stream().map(Cup::name).toList());
  }

  @Test
  void padOnAPartWithoutShapeIsShownAsAssumed() {
    Scene scene =
        SceneFiles.read(
                SceneFiles.GOOD.resolve("suction.json"),
                Map.of(
                    "part",
                    "{\"mass\":\"2 kg\",\"centreOfMass\":\"0 0 0 mm\",\"inertia\":\"1 1 1 0 0 0 kg*m^2\"}",
                    "origins",
                    "{}",
                    "grip/cups",
                    "{\"pad\":{\"shape\":\"rectangular\",\"size\":\"60 40 mm\",\"cells\":[3,2]},"
                        + "\"diameter\":\"20 mm\"}",
                    "grip/ledges/0/stiffness",
                    "5"))
            .scene();
    assertEquals(6, ((SuctionGrip) scene.grip()).cups().size());
    assertTrue(
        scene.inputs().stream()
            .anyMatch(
                n ->
                    n.pointer().equals("grip/cups/pad")
                        && n.text().startsWith("6 cells, all taken as on the part")));
  }

  @Test
  void bellowsWithBothStiffnessesAreTaken() {
    SuctionGrip grip =
        grip(
            "{\"grid\":[1,1],\"diameter\":\"50 mm\",\"form\":\"bellows\",\"stiffness\":"
                + "{\"normal\":\"3 N/mm\",\"shear\":\"0.8 N/mm\"}}");
    assertEquals(800, grip.cups().get(0).stiffness().shear());
  }
}
