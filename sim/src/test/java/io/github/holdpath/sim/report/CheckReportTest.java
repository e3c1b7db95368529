package io.github.holdpath.sim.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.Cup;
import io.github.holdpath.dynamics.grip.SuctionGrip;
import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.DemoScenes;
import io.github.holdpath.sim.DrawnJobs;
import io.github.holdpath.sim.Jobs;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.motion.route.RouteStep;
import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.sim.study.SegmentResult;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.sim.timelaw.LawKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CheckReportTest {
  private static final Pattern SLOWED =
      Pattern.compile("To slow moves? [0-9, ]+ (alone until it holds|until each holds):\n");

  private static final Pattern OPTION = Pattern.compile("--set \"([^=\"]+)=([^\"]+)\"");

  /** Three digits rounded down at three places give away at most this. */
  private static final double GIVEN_AWAY = 1.02;

  static List<String> tables() {
    List<String> tables = new ArrayList<>();
    for (String name : DemoScenes.planned().toList()) {
      tables.add(CheckReport.text(demo(name, Map.of()), Ink.PLAIN));
      tables.add(CheckReport.text(demo(name, Map.of("grip/friction", "0.05")), Ink.PLAIN));
    }
    for (int i = 0; i < 10; i++) {
      tables.add(CheckReport.text(HoldStudy.run(new DrawnJobs(90 + i).next(i), 2), Ink.PLAIN));
    }
    tables.add(CheckReport.text(silly("W".repeat(300)), Ink.PLAIN));
    tables.add(CheckReport.text(silly("word ".repeat(60).strip()), Ink.PLAIN));
    return tables;
  }

  @ParameterizedTest
  @MethodSource("tables")
  void linesFitEightyColumns(String table) {
    for (String line : table.split("\n")) {
      assertTrue(line.length() <= 80, line.length() + ": " + line);
      assertEquals(line.stripTrailing(), line);
    }
    assertFalse(table.contains("NaN") || table.contains("Infinity"), table);
  }

  /** Everything that a user can name is silly, and moves and cups are many. */
  private static StudyResult silly(String name) {
    List<Cup> cups = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      cups.add(
          new Cup(name + i, new Vec3(0.05 * i, 0, 0), 0.04, 20, PatchStiffness.ofNormal(1000)));
    }
    List<RouteStep> steps = new ArrayList<>();
    steps.add(new RouteStep.Take("route/1", 0.2));
    for (int i = 0; i < 120; i++) {
      var target = Jobs.by(0, 0, i % 2 == 0 ? 0.4 : 0);
      steps.add(new RouteStep.Move("route/" + (i + 2), name, target, Jobs.LIMITS));
    }
    Scene s =
        Jobs.scene(
            Jobs.point(7, new Vec3(0, 0.02, 0.1)),
            new SuctionGrip(cups, List.of(), 0.5, 2e5),
            new Route(Jobs.START, LawKind.S_CURVE, steps));
    Scene.Part part =
        new Scene.Part(name, s.part().body(), AirLoad.NONE, Optional.empty(), Vec3.ZERO, name);
    Scene named =
        new Scene(
            name,
            s.site(),
            part,
            s.grip(),
            2,
            Optional.empty(),
            s.limits(),
            s.motion(),
            List.of(new Scene.InputNote("grip/friction", name, Scene.Origin.ASSUMED)));
    return HoldStudy.run(named, 2);
  }

  @Test
  void failuresWithTheLongestWordsKeepThePatchesName() {
    // release cup 2,1 is the longest that a grid of cups asks for.
    String table = CheckReport.text(demo("glass-sheet", Map.of()), Ink.PLAIN);
    assertTrue(table.contains("  release cup 4,1\n"), table);
  }

  @Test
  void neverShowsMoreThanThereIs() {
    double pull = 2 * (Jobs.G + 5) * 2 * (1 - 1e-4);
    Route lift = Jobs.route(LawKind.TRAPEZOID, Jobs.LIMITS, Jobs.START, Jobs.by(0, 0, 0.5));
    Scene scene = Jobs.scene(Jobs.point(2, Vec3.ZERO), Jobs.cups(pull, 0.5, Vec3.ZERO), lift);
    String table = CheckReport.text(HoldStudy.run(scene, 2), Ink.PLAIN);
    assertTrue(table.contains("DOES NOT HOLD: least factor 1.99 is below"), table);
    assertTrue(table.contains("(margin 0.99)"), table);
  }

  @Test
  void colourIsNotTheOnlySign() {
    StudyResult result = demo("cartons", Map.of());
    String plain = CheckReport.text(result, Ink.PLAIN);
    String coloured = CheckReport.text(result, Ink.ANSI);
    assertFalse(plain.contains("\u001b"));
    assertTrue(coloured.contains("\u001b["));
    assertEquals(plain, coloured.replaceAll("\u001b\\[[0-9;]*m", ""));
    assertTrue(plain.contains("0.54!"));
  }

  @Test
  void movesWithoutSceneLimitsHaveNoPercentages() {
    Scene s = new DrawnJobs(3).next(0);
    MoveLimits none =
        new MoveLimits(Jobs.NONE, Jobs.NONE, Jobs.NONE, Jobs.NONE, Jobs.NONE, Jobs.NONE);
    Scene bare =
        new Scene(
            s.title(), s.site(), s.part(), s.grip(), 2, s.tool(), none, s.motion(), s.inputs());
    StudyResult result = HoldStudy.run(bare, 2);
    RouteStep.Move move = Settings.moves(bare.motion()).get(0);
    String line = Settings.line(bare, move, 1, 1, 1);
    assertTrue(line.contains("speed ") && !line.contains("%"), line);
    for (String option : Settings.slowed(bare, move, 1, 0, 0.8)) {
      assertFalse(option.contains("%"), option);
      assertTrue(option.contains("m/s"), option);
    }
    assertFalse(CheckReport.text(result, Ink.PLAIN).contains("(0 %)"));
  }

  @Test
  void payloadEntryStandsWhereThereIsATool() {
    String text = CheckReport.text(demo("cartons", Map.of()), Ink.PLAIN);
    assertTrue(text.contains("\n  tool and part  18 kg at 13.33 0 233.3 mm\n"), text);
    assertTrue(text.contains("Ixx 1.317       Iyy 1.392       Izz 0.2548\n"), text);
    assertTrue(text.contains("tool/inertia is not told"), text);
    assertTrue(text.contains("6 screws M8 on a pitch circle of 100 mm."), text);
    Map<String, String> told =
        Map.of("tool/inertia", "0.02 0.03 0.04 0 0 0 kg*m^2", "tool/flange", "ISO 9409-1-90-5-M8");
    String other = CheckReport.text(demo("cartons", told), Ink.PLAIN);
    assertFalse(other.contains("tool/inertia is not told"), other);
    assertTrue(other.contains("Ixx 0.02        Iyy 0.03        Izz 0.04\n"), other);
    assertTrue(other.contains("ISO 9409-1-90-5-M8 is not one of the patterns often met"), other);
    String bare = CheckReport.text(HoldStudy.run(new DrawnJobs(3).next(0), 2), Ink.PLAIN);
    assertFalse(bare.contains("Payload entry"), bare);
  }

  @Test
  void standingLoadIsNeverRoundedDown() {
    // 18 kg weigh 176.5197 N.
    String text = CheckReport.text(demo("cartons", Map.of()), Ink.PLAIN);
    assertTrue(text.contains("standing: at most 176.6 N"), text);
  }

  @Test
  void peaksOfTurningAndJerkAreListedWhereThereAreSome() {
    assertFalse(CheckReport.text(demo("cartons", Map.of()), Ink.PLAIN).contains("Peaks of jerk"));
    String turns = CheckReport.text(demo("glass-sheet", Map.of()), Ink.PLAIN);
    assertTrue(
        turns.contains("  2 turn          turn speed 90 deg/s, turn acceleration 300 "), turns);
    String smooth = CheckReport.text(demo("cartons", Map.of("law", "s-curve")), Ink.PLAIN);
    assertTrue(smooth.contains("  1 lift          jerk 100 m/s^3\n"), smooth);
  }

  @Test
  void cartonsMoveSlowedAsToldJustHolds() {
    assertSlowedMoveHolds(DemoScenes.file("cartons"), Map.of(), 2);
  }

  @Test
  void cartonsMoveWithJerkSlowedAsToldJustHolds() {
    assertSlowedMoveHolds(DemoScenes.file("cartons"), Map.of("law", "s-curve"), 2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", ", \"speed\": \"1.3 m/s\"", ", \"acceleration\": \"90 %\""})
  void turningMoveSlowedAsToldJustHolds(String own, @TempDir Path folder) throws IOException {
    String text =
        Files.readString(DemoScenes.file("cartons"))
            .replace("\"trapezoid\"", "\"s-curve\"")
            .replace(", \"blend\": \"60 mm\"", "") // exact for a move between stops
            .replace("\"urdf\", \"file\": \"pallet-arm.urdf\", \"payload\": \"60 kg\"", "\"free\"")
            .replace(
                "\"across\", \"line\": { \"at\": \"0.9 0.9 0.95 m\" }",
                "\"across\", \"line\": { \"at\": \"0.5 0.9 0.95 m\", \"rpy\": \"180 0 70 deg\" }"
                    + own);
    Path file = Files.writeString(folder.resolve("turning.json"), text);
    assertSlowedMoveHolds(file, Map.of(), 2);
  }

  @Test
  void moveAlongTheJointsSlowedByItsOverrideJustHolds(@TempDir Path folder) throws IOException {
    String text =
        Files.readString(DemoScenes.file("chocolates"))
            .replace("\"across\", \"line\"", "\"across\", \"joint\"");
    Path file = Files.writeString(folder.resolve("joint.json"), text);
    assertSlowedMoveHolds(file, Map.of(), 2);
    String table =
        CheckReport.text(HoldStudy.run(DemoScenes.readFile(file, Map.of()).scene(), 2), Ink.PLAIN);
    assertTrue(table.contains("--set \"route/3/override="), table);
    assertTrue(table.contains("  2 across        joint move, speed 5 m/s"), table);
    // The override of all moves counts beside that of the move, and only once.
    assertSlowedMoveHolds(file, Map.of("override", "97 %"), 2);
  }

  private static void assertSlowedMoveHolds(Path file, Map<String, String> set, int index) {
    LoadedScene loaded = DemoScenes.readFile(file, set);
    StudyResult before = HoldStudy.run(loaded.scene(), 2);
    assertTrue(margin(before, index) < 1, "the move must fail first");
    String table = CheckReport.text(before, Ink.PLAIN);
    Matcher start = SLOWED.matcher(table);
    assertTrue(start.find() && start.group().contains(Integer.toString(index)), table);
    Map<String, String> slowed = new LinkedHashMap<>(set);
    for (String line : table.substring(start.end()).split("\n")) {
      Matcher option = OPTION.matcher(line);
      if (!option.find()) {
        break;
      }
      slowed.put(option.group(1), option.group(2));
    }
    double after = margin(HoldStudy.run(DemoScenes.readFile(file, slowed).scene(), 2), index);
    assertTrue(after >= 1 && after < GIVEN_AWAY, "margin " + after + " with " + slowed);
  }

  private static double margin(StudyResult result, int index) {
    SegmentResult segment = result.segments().get(index - 1);
    return segment.worst().orElseThrow().first().factor() / result.requiredSafety();
  }

  private static StudyResult demo(String name, Map<String, String> set) {
    return HoldStudy.run(DemoScenes.read(name, set).scene(), 2);
  }
}
