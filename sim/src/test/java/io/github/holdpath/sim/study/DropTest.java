package io.github.holdpath.sim.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class DropTest {
  /** The instants of leaving and landing are narrowed to 1e-9 s; speeds are a few m/s. */
  private static final double FOUND = 1e-7;

  private static Scene scene(String name, String... changes) {
    try {
      Map<String, String> set = new java.util.LinkedHashMap<>();
      for (int i = 0; i < changes.length; i += 2) {
        set.put(changes[i], changes[i + 1]);
      }
      return SceneReader.read(Path.of("../scenes/" + name + ".json"), set).scene();
    } catch (SceneException e) {
      throw new IllegalStateException(e.getMessage(), e);
    }
  }

  @Test
  void withoutTurningLandsWhereTheParabolaDoes() {
    Scene scene = scene("cartons");
    Vec3 v = new Vec3(1.2, -0.7, 0.4);
    Pose pose =
        new Pose(
            new Vec3(0.1, 0.2, 1.5),
            io.github.holdpath.dynamics.spatial.Quaternion.ofRpy(Math.PI, 0, 0));
    MotionState state = new MotionState(pose, v, Vec3.ZERO, Vec3.ZERO, Vec3.ZERO);
    Drop drop = Drop.from(Drop.Cause.CHOSEN, scene, state, 2.5, 0).orElseThrow();
    Scene.Part part = scene.part();
    Vec3 down = pose.rotation().rotateBack(new Vec3(0, 0, -1));
    double height = pose.apply(part.shapeCentre()).z() - part.shape().orElseThrow().reach(down);
    double g = -scene.site().gravity().z();
    double time = (v.z() + Math.sqrt(v.z() * v.z() + 2 * g * height)) / g;
    assertEquals(2.5 + time, drop.lands(), FOUND);
    assertEquals(Math.hypot(v.x(), v.y()) * time, drop.reach(), FOUND);
    assertEquals(v.norm(), drop.leavingSpeed(), 1e-12);
    double fast = Math.sqrt(v.dot(v) + 2 * g * height);
    assertEquals(fast, drop.landingSpeed(), FOUND * 10);
    assertEquals(part.body().mass() * fast * fast / 2, drop.landingEnergy(), 1e-4);
  }

  @Test
  void landsWithItsLowestCornerOnTheFloor() {
    Scene scene = scene("cartons");
    Drop drop = Drop.at(scene, scene.moved().heldTo() / 2, -0.5).orElseThrow();
    Scene.Part part = scene.part();
    Pose pose = drop.pose(drop.lands());
    double lowest = Double.POSITIVE_INFINITY;
    Vec3 half = part.shape().orElseThrow().extent().times(0.5);
    for (int i = 0; i < 8; i++) {
      Vec3 corner =
          part.shapeCentre()
              .plus(
                  new Vec3(
                      (i & 1) == 0 ? half.x() : -half.x(),
                      (i & 2) == 0 ? half.y() : -half.y(),
                      (i & 4) == 0 ? half.z() : -half.z()));
      lowest = Math.min(lowest, pose.apply(corner).z());
    }
    // Within the last step the turning is taken as even, which is good to 1e-6 of a part's size.
    assertEquals(-0.5, lowest, 1e-6);
    assertEquals(0, drop.centre(drop.lands()).minus(drop.landing()).norm(), 1e-12);
  }

  @Test
  void leavesAsTheGripMovesAndFliesOnWithoutAJump() {
    Scene scene = scene("cartons");
    double time = 0.6 * scene.moved().heldTo();
    Drop drop = Drop.at(scene, time, -0.5).orElseThrow();
    Playback playback = new Playback(scene, 1);
    Playback.Instant now = playback.at(time);
    assertEquals(0, drop.pose(time).position().minus(now.state().pose().position()).norm(), 1e-12);
    assertEquals(now.forces().velocity().norm(), drop.leavingSpeed(), 1e-12);
    double dt = 1e-5;
    Vec3 moved = drop.centre(time + dt).minus(drop.centre(time)).times(1 / dt);
    // A difference over 10 us under gravity is off by half that time's speed.
    assertEquals(0, moved.minus(now.forces().velocity()).norm(), 1e-4);
  }

  @Test
  void firstLeavesWhereTheFactorFallsBelowOne() {
    Scene scene = scene("cartons", "grip/friction", "0.12");
    OptionalDouble time = Drop.firstBelowOne(scene);
    assertTrue(time.isPresent());
    Playback playback = new Playback(scene, 1);
    double factor = playback.at(time.getAsDouble()).first().orElseThrow().factor();
    assertTrue(factor <= 1 + 1e-6, "factor " + factor);
    for (double t = 0; t < time.getAsDouble() - 1e-3; t += 0.01) {
      assertTrue(
          playback.at(t).first().map(f -> f.factor() >= 1).orElse(true), "already below 1 at " + t);
    }
    Drop drop = Drop.first(scene, -1).orElseThrow();
    assertEquals(time.getAsDouble(), drop.leaves());
    assertEquals(Drop.Cause.FACTOR_BELOW_ONE, drop.cause());
  }

  @Test
  void nothingLeavesAGripThatHoldsOrDoesNotHoldThePart() {
    Scene scene = scene("cartons");
    assertEquals(Optional.empty(), Drop.first(scene, 0));
    assertTrue(scene.moved().heldTo() < scene.moved().duration());
    assertEquals(Optional.empty(), Drop.at(scene, scene.moved().duration(), 0));
    assertThrows(IllegalArgumentException.class, () -> Drop.at(scene, Double.NaN, 0));
  }

  @Test
  void aPartThatTouchesTheFloorDoesNotFly() {
    Scene scene = scene("cartons");
    Drop drop = Drop.at(scene, scene.moved().heldTo() / 2, 10).orElseThrow();
    assertEquals(drop.leaves(), drop.lands());
    assertEquals(0, drop.reach());
  }
}
