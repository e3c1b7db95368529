package io.github.holdpath.sim.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.DemoScenes;
import io.github.holdpath.sim.Jobs;
import io.github.holdpath.sim.motion.MotionSegment;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JointUseTest {
  /** Peaks lie at breakpoints of the trapezoid, which are samples. */
  private static final double ALGEBRA = 1e-9;

  @TempDir Path folder;

  private static StudyResult run(Path scene, Map<String, String> set) {
    return HoldStudy.run(DemoScenes.readFile(scene, set).scene(), 2);
  }

  /** The shaft's job, lifted and lowered by a column of one joint. */
  private Path column(double effort) throws IOException {
    String urdf =
        """
        <robot name="column">
          <link name="foot"/>
          <link name="head">
            <inertial>
              <origin xyz="0.1 0 0"/>
              <mass value="10"/>
              <inertia ixx="1" iyy="1" izz="1" ixy="0" ixz="0" iyz="0"/>
            </inertial>
          </link>
          <link name="flange"/>
          <joint name="lift" type="prismatic">
            <parent link="foot"/>
            <child link="head"/>
            <axis xyz="0 0 1"/>
            <limit lower="0" upper="2" velocity="4" effort="EFFORT"/>
          </joint>
          <joint name="mount" type="fixed">
            <parent link="head"/>
            <child link="flange"/>
            <origin rpy="3.141592653589793 0 0"/>
          </joint>
        </robot>
        """;
    Files.writeString(
        folder.resolve("column.urdf"), urdf.replace("EFFORT", Double.toString(effort)));
    String scene = Files.readString(DemoScenes.file("shaft"));
    String robot = "\"robot\": { \"kind\": \"urdf\", \"file\": \"column.urdf\" },\n";
    int from = scene.indexOf("\"robot\"");
    String told = scene.substring(0, from) + robot + scene.substring(scene.indexOf("\"limits\""));
    int route = told.indexOf("\"route\"");
    String steps =
        """
        "route": [
          { "start": { "at": "0 0 0.2 m", "rpy": "180 0 0 deg" } },
          { "line": { "at": "0 0 0.9 m" }, "speed": "2 m/s", "acceleration": "80 %" },
          { "grip": "take", "wait": "0.2 s" },
          { "line": { "at": "0 0 0.2 m" }, "speed": "2 m/s", "acceleration": "50 %" }
        ],
        """;
    String all = told.substring(0, route) + steps + told.substring(told.indexOf("\"origins\""));
    return Files.writeString(folder.resolve("column.json"), all);
  }

  @Test
  void forceOfALiftIsThatOfAllItLifts() throws IOException {
    // By hand: 10 kg of link and 9 kg of tool up with 8 m/s^2, with 4.62 kg of shaft stopped
    // from below with 5 m/s^2: 338.3 N and 349.7 N.
    double empty = 19 * (Jobs.G + 8);
    double loaded = 23.62 * (Jobs.G + 5);
    JointUse use = run(column(400), Map.of()).joints().orElseThrow();
    JointUse.Peaks lift = use.joints().get(0);
    assertEquals(loaded, lift.torque().orElseThrow(), 1e-6);
    assertEquals(loaded / 400, lift.uses().torque().orElseThrow(), ALGEBRA);
    assertEquals(empty / 400, use.moves().get(0).orElseThrow().use(), ALGEBRA);
    assertEquals(JointUse.Limit.TORQUE, use.moves().get(0).orElseThrow().limit());
    assertEquals(0.39, lift.lowest(), ALGEBRA);
    assertEquals(1.09, lift.highest(), ALGEBRA);
    assertEquals(0.61, lift.uses().range().orElseThrow(), ALGEBRA);
    assertTrue(lift.uses().acceleration().isEmpty());
  }

  @Test
  void tooMuchForceIsAWarningAndSlowsNothing() throws IOException {
    StudyResult free = run(column(400), Map.of());
    StudyResult weak = run(column(300), Map.of());
    assertEquals(free.cycleTime(), weak.cycleTime());
    assertTrue(
        weak.warnings().stream()
            .anyMatch(w -> w.startsWith("Joint lift takes 116.6 % of its greatest force")),
        weak.warnings().toString());
    assertTrue(free.warnings().stream().noneMatch(w -> w.startsWith("Joint")));
  }

  @Test
  void aGantryAskedForTooMuchPlaysItsMovesSlowerAndJudgesThat() {
    StudyResult asked = run(DemoScenes.file("shaft"), Map.of());
    StudyResult slow = run(DemoScenes.file("shaft"), Map.of("robot/z/acceleration", "2.5 m/s^2"));
    MotionSegment lift = slow.segments().get(0).move();
    assertEquals(2.5, lift.peakAcceleration(), ALGEBRA);
    double k = 0.5;
    MotionSegment before = asked.segments().get(0).move();
    assertEquals((before.to() - before.from()) / k, lift.to() - lift.from(), ALGEBRA);
    // What it carries falls from m (g + 10) to m (g + 2.5), and the factor rises by as much.
    double rise = (Jobs.G + 10) / (Jobs.G + 2.5);
    assertEquals(
        asked.segments().get(0).worst().orElseThrow().first().factor() * rise,
        slow.segments().get(0).worst().orElseThrow().first().factor(),
        1e-9);
    assertEquals(1, slow.joints().orElseThrow().nearest().orElseThrow().use(), ALGEBRA);
    assertTrue(
        slow.assumptions().stream()
            .anyMatch(a -> a.startsWith("The robot plays move 1 (lift) at 50.0 % of its speed")),
        slow.assumptions().toString());
  }

  @Test
  void everyDemoRobotStaysInsideItsLimits() {
    DemoScenes.planned()
        .map(name -> run(DemoScenes.file(name), Map.of()))
        .flatMap(r -> r.joints().stream())
        .flatMap(j -> j.nearest().stream())
        .forEach(n -> assertTrue(n.use() <= 1 + 1e-6, n.toString()));
  }
}
