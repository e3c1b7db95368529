package io.github.holdpath.viewer.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.study.Drop;
import io.github.holdpath.sim.study.PartForces;
import io.github.holdpath.sim.study.Playback;
import io.github.holdpath.viewer.Demo;
import io.github.holdpath.viewer.colour.MarginStep;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.mesh.MeshData;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StageTest {
  private final Stage stage = Stage.of(Demo.judged("shaft"));
  private final Playback.Instant worst = stage.playback().at(stage.worst().time());

  private static long bodies(List<Item> items, Layer layer) {
    return items.stream().filter(i -> i instanceof Item.Body && i.layer() == layer).count();
  }

  @Test
  void everySwitchTakesItsOwnAway() {
    long machine = bodies(stage.at(worst), Layer.MACHINE);
    int bones = worst.robot().orElseThrow().bones().size();
    assertEquals(
        machine - bones, bodies(stage.at(worst, Show.DEFAULT.withRobot(false)), Layer.MACHINE));
    assertEquals(machine - 1, bodies(stage.at(worst, Show.DEFAULT.withTool(false)), Layer.MACHINE));
    assertEquals(1, bodies(stage.at(worst), Layer.PART));
    assertEquals(0, bodies(stage.at(worst, Show.DEFAULT.withPart(false)), Layer.PART));
    assertTrue(bodies(stage.at(worst), Layer.FORCE) >= 3);
    assertEquals(0, bodies(stage.at(worst, Show.DEFAULT.withForces(false)), Layer.FORCE));
  }

  @ParameterizedTest
  @ValueSource(strings = {"shaft", "shaft-arm", "chocolates", "circuit-board", "arm-log"})
  void bodiesOfTheMachineAreOnlyMoved(String name) {
    Stage one = Stage.of(Demo.judged(name));
    List<MeshData> first = machine(one, 0);
    for (double share = 0.1; share < 1; share += 0.2) {
      List<MeshData> later = machine(one, share);
      assertEquals(first.size(), later.size());
      for (int i = 0; i < first.size(); i++) {
        assertSame(first.get(i), later.get(i), name + " at " + share);
      }
    }
  }

  private static List<MeshData> machine(Stage stage, double share) {
    List<MeshData> meshes = new ArrayList<>();
    for (Item item : stage.at(stage.playback().at(share * stage.playback().duration()))) {
      if (item instanceof Item.Body b && b.layer() == Layer.MACHINE) {
        meshes.add(b.mesh());
      }
    }
    return meshes;
  }

  @Test
  void contactsHaveTheToolsColourWithoutTheirOwn() {
    Set<Integer> own = tints(Show.DEFAULT);
    own.remove(Item.Body.WHITE);
    assertTrue(own.stream().allMatch(c -> steps().contains(c)), own.toString());
    Set<Integer> none = tints(Show.DEFAULT.withContacts(false));
    none.remove(Item.Body.WHITE);
    assertEquals(Set.of(Tones.TOOL), none);
  }

  private Set<Integer> tints(Show show) {
    Set<Integer> tints = new HashSet<>();
    for (Item item : stage.at(worst, show)) {
      if (item instanceof Item.Body b && b.layer() == Layer.MACHINE) {
        tints.add(b.tint());
      }
    }
    return tints;
  }

  private static Set<Integer> steps() {
    Set<Integer> colours = new HashSet<>();
    for (MarginStep step : MarginStep.values()) {
      colours.add(step.rgb());
    }
    return colours;
  }

  @Test
  void arrowsAreToOneScale() {
    PartForces f = worst.forces();
    for (ForceArrows.Arrow a : stage.arrows().arrows(f)) {
      Vec3 way = a.to().minus(a.from());
      if (a.kind() != ForceKind.MOMENT) {
        assertEquals(a.value() / stage.arrows().newtons(), way.norm(), 1e-12);
      }
      if (a.kind() == ForceKind.GRAVITY) {
        assertEquals(f.gravity().norm(), a.value());
        assertEquals(0, way.unit().plus(new Vec3(0, 0, 1)).norm(), 1e-9);
      }
    }
  }

  @Test
  void coloursOfForcesAreApartFromThoseOfMargins() {
    for (ForceKind kind : ForceKind.values()) {
      for (MarginStep step : MarginStep.values()) {
        assertTrue(distance(kind.rgb(), step.rgb()) > 60, kind + " and " + step);
      }
    }
  }

  private static double distance(int a, int b) {
    double r = (a >> 16 & 255) - (b >> 16 & 255);
    double g = (a >> 8 & 255) - (b >> 8 & 255);
    double v = (a & 255) - (b & 255);
    return Math.sqrt(r * r + g * g + v * v);
  }

  @Test
  void roundScalesUpToOneTwoFive() {
    assertEquals(1, ForceArrows.roundUp(0.7), 1e-12);
    assertEquals(200, ForceArrows.roundUp(101), 1e-9);
    assertEquals(0.5, ForceArrows.roundUp(0.5), 1e-12);
  }

  @Test
  void partLeavesTheGripWhereTheFactorFallsBelowOneOrWhereTold() {
    Drop first = stage.flight().orElseThrow().drop();
    assertEquals(Drop.Cause.FACTOR_BELOW_ONE, first.cause());
    double time = 0.5 * stage.playback().duration();
    Stage told = stage.withDropAt(time);
    Drop drop = told.flight().orElseThrow().drop();
    assertEquals(time, drop.leaves());
    Show show = Show.DEFAULT.withDrop(true);
    Playback.Instant after = told.playback().at((drop.leaves() + drop.lands()) / 2);
    assertTrue(told.flies(after, show));
    assertFalse(told.flies(after, Show.DEFAULT));
    assertEquals(0, bodies(told.at(after, show.withDrop(false).withForces(false)), Layer.FORCE));
    // Beads alone, as no force of the grip acts any more; the part, and its ghost where it lands.
    assertEquals(1, bodies(told.at(after, show), Layer.FORCE));
    assertEquals(2, bodies(told.at(after, show), Layer.PART));
    Item part =
        told.at(after, show).stream()
            .filter(i -> i.layer() == Layer.PART)
            .findFirst()
            .orElseThrow();
    assertEquals(drop.pose(after.time()), part.pose());
  }

  @Test
  void pathAsItWasLiesThinBesideThePathOnlyWhereItDiffers() {
    Stage first = Stage.of(Demo.judged("cartons"));
    assertTrue(first.beside(Stage.of(Demo.judged("cartons"))).twin().isEmpty());
    MeshData twin = first.beside(Stage.of(Demo.judged("shaft"))).twin().orElseThrow();
    assertTrue(twin.size() > 0);
  }

  /** From every side: a path that lay behind the other could not be seen. */
  @Test
  void pathAsItWasIsSeenBesideThePathFromEverywhere() {
    Stage stage = Stage.of(Demo.judged("cartons")).beside(Stage.of(Demo.judged("shaft")));
    MeshData twin = stage.twin().orElseThrow();
    Playback.Instant now = stage.playback().at(0);
    for (int bearing = -180; bearing < 180; bearing += 30) {
      View view =
          new Orbit(Vec3.ZERO, Math.toRadians(bearing), Math.toRadians(35), 2)
              .view(List.of(), 640, 400);
      Item thin =
          stage.at(now, Show.DEFAULT, view).stream()
              .filter(i -> i instanceof Item.Body b && b.mesh() == twin)
              .findFirst()
              .orElseThrow();
      Vec3 aside = thin.pose().position();
      assertEquals(0, aside.dot(view.forward()), 1e-12);
      assertTrue(aside.norm() > 0);
    }
    Show without = Show.DEFAULT.withAsItWas(false);
    View any = new Orbit(Vec3.ZERO, 0, 0, 1).view(List.of(), 640, 400);
    assertEquals(stage.at(now, without).size(), stage.at(now, without, any).size());
  }
}
