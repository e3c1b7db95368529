package io.github.holdpath.sim.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.RobotCell;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlaybackTest {
  private static Scene scene(String name) {
    try {
      return SceneReader.read(Path.of("../scenes/" + name + ".json"), Map.of()).scene();
    } catch (SceneException e) {
      throw new IllegalStateException(name, e);
    }
  }

  /**
   * Interpolation over 1 ms misses a joint by its acceleration times 1e-6 s^2 / 8; half a micron is
   * 4 rad/s^2 on a metre, and the chocolates' arms have a hundred times that.
   */
  @ParameterizedTest
  @ValueSource(strings = {"cartons", "shaft-arm", "paint-tin", "circuit-board", "chocolates"})
  void theRobotsFlangeCarriesTheGrip(String name) {
    Scene scene = scene(name);
    RobotCell cell = scene.robot().orElseThrow();
    Playback playback = new Playback(scene, 1);
    for (double share = 0; share <= 1; share += 0.0137) {
      Playback.Instant now = playback.at(share * playback.duration());
      Pose flange = now.state().pose().times(cell.grip().inverse());
      Vec3 shown = now.robot().orElseThrow().flange();
      assertEquals(0, shown.minus(flange.position()).norm(), 1e-4, name + " at " + now.time());
    }
  }

  @Test
  void showsNoRobotWhereThereIsNone() {
    Playback playback = new Playback(scene("glass-sheet"), 1);
    assertTrue(playback.at(playback.duration() / 2).robot().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(strings = {"cartons", "glass-sheet", "shaft"})
  void forcesOnThePartAddUpToNothing(String name) {
    Scene scene = scene(name);
    double mass = scene.part().body().mass();
    Playback playback = new Playback(scene, 1);
    for (double share = 0; share <= 1; share += 0.05) {
      Playback.Instant now = playback.at(share * playback.duration());
      PartForces f = now.forces();
      Vec3 weight = scene.site().gravity().times(mass);
      assertEquals(0, f.gravity().minus(weight).norm(), 1e-9 * weight.norm());
      Vec3 sum = f.gravity().plus(f.inertia()).plus(f.air()).plus(f.force());
      assertEquals(0, sum.norm(), 1e-9 * weight.norm());
      Pose grip = now.state().pose();
      Vec3 force = grip.rotation().rotate(now.load().total().force());
      assertEquals(0, f.force().minus(force).norm(), 1e-12 * weight.norm());
      Vec3 centre = grip.apply(scene.part().body().centreOfMass());
      assertEquals(0, f.centre().minus(centre).norm(), 1e-12);
      if (scene.part().air().dragArea() == 0 && scene.part().air().addedMass() == 0) {
        assertEquals(0, f.air().norm(), 1e-9 * weight.norm());
      }
    }
  }

  @Test
  void thePartLiesWhereItIsTakenAndWhereItIsLeft() {
    Scene scene = scene("cartons");
    Playback playback = new Playback(scene, 1);
    double from = scene.moved().heldFrom();
    double to = scene.moved().heldTo();
    assertTrue(from > 0 && to < playback.duration(), "not held at either end");
    Pose taken = playback.at(from).state().pose();
    Pose left = playback.at(to).state().pose();
    same(taken, playback.at(0).part());
    same(left, playback.at(playback.duration()).part());
    same(left, playback.at((to + playback.duration()) / 2).part());
    Playback.Instant between = playback.at((from + to) / 2);
    assertEquals(between.state().pose(), between.part());
  }

  /** But for rounding: where two pieces meet each computes the place in its own way. */
  private static void same(Pose expected, Pose found) {
    assertEquals(0, found.position().minus(expected.position()).norm(), 1e-12);
    assertEquals(0, found.rotation().angleTo(expected.rotation()), 1e-7);
  }
}
