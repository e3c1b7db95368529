package io.github.holdpath.sim.scene.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.MotionSegment;
import io.github.holdpath.sim.motion.route.MoveShape;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.motion.route.RouteStep;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Blends, arcs and overrides as they are written. */
class RouteSceneTest {
  private static final double ALGEBRA = 1e-12;

  private static final String START =
      "{ \"start\": { \"at\": \"0.9 0 0.4 m\", \"rpy\": \"180 0 0 deg\" } },"
          + " { \"grip\": \"take\", \"wait\": \"0.25 s\" }, ";

  private static Route route(Map<String, String> set, String... moves) {
    Map<String, String> all = new HashMap<>(set);
    all.put("route", "[" + START + String.join(", ", moves) + "]");
    return (Route) SceneFiles.read(SceneFiles.GOOD.resolve("suction.json"), all).scene().motion();
  }

  private static RouteStep.Move move(Route route, int index) {
    return (RouteStep.Move) route.steps().get(index);
  }

  @Test
  void readsAnArcThroughAPoint() {
    Route route =
        route(
            Map.of(),
            "{ \"name\": \"round\", \"arc\": { \"via\": { \"at\": \"0.7 0.2 0.4 m\" },"
                + " \"at\": \"0.5 0 0.4 m\", \"rpy\": \"180 0 90 deg\" }, \"speed\": \"50 %\" }");
    RouteStep.Move arc = move(route, 1);
    assertEquals(new MoveShape.ArcThrough(new Vec3(0.7, 0.2, 0.4)), arc.shape());
    assertEquals(new Vec3(0.5, 0, 0.4), arc.target().position());
    Quaternion turned = Quaternion.ofRpy(Math.PI, 0, Math.PI / 2);
    assertEquals(0, arc.target().rotation().angleTo(turned), ALGEBRA);
    assertEquals(0.9, arc.limits().speed());
    // Half of a circle of 0.2 m.
    assertEquals(0.2 * Math.PI, route.motion().segments().get(0).length(), ALGEBRA);
  }

  @Test
  void readsAnArcAboutAnAxis() {
    Route route =
        route(
            Map.of(),
            "{ \"arc\": { \"centre\": \"0.5 0 1 m\", \"axis\": \"0 0 2\", \"angle\": \"-90 deg\" } }");
    RouteStep.Move arc = move(route, 1);
    assertEquals(0, arc.target().position().minus(new Vec3(0.5, -0.4, 0.4)).norm(), ALGEBRA);
    Quaternion down = Quaternion.ofRpy(Math.PI, 0, 0);
    assertEquals(0, arc.target().rotation().angleTo(down), ALGEBRA);
    assertEquals(0.2 * Math.PI, route.motion().segments().get(0).length(), ALGEBRA);
  }

  @Test
  void readsBlendsAndGoesOnWithoutAStop() {
    Route route =
        route(
            Map.of(),
            "{ \"line\": { \"at\": \"0.9 0 0.8 m\" }, \"blend\": \"60 mm\" }",
            "{ \"line\": { \"at\": \"0.9 0.9 0.8 m\" } }");
    assertEquals(0.06, move(route, 1).blend());
    assertEquals(0, move(route, 2).blend());
    List<MotionSegment> moves = route.motion().segments();
    double way = moves.get(0).length() + moves.get(1).length();
    // A right angle inside a zone: shorter than its two sides, longer than the straight cut.
    assertEquals(1.3 - 0.12 + 0.06 * (2 + Math.sqrt(2)) / 2, way, 0.06 * (2 - Math.sqrt(2)) / 2);
  }

  @Test
  void overridesOfTheSceneAndOfAMoveMultiply() {
    String line = "{ \"line\": { \"at\": \"0.9 0 0.8 m\" }, \"override\": \"50 %\" }";
    Route plain = route(Map.of(), line.replace(", \"override\": \"50 %\"", ""));
    Route slow = route(Map.of("override", "40 %"), line);
    RouteStep.Move move = move(slow, 1);
    assertEquals(0.2, move.override(), ALGEBRA);
    assertEquals(1.8, move.limits().speed());
    assertEquals(0.2 * 1.8, move.played().speed(), ALGEBRA);
    double stopped = 0.25;
    assertEquals(
        (plain.motion().duration() - stopped) / 0.2 + stopped,
        slow.motion().duration(),
        ALGEBRA * 10);
  }
}
