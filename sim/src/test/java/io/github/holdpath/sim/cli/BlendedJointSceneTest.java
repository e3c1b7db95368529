package io.github.holdpath.sim.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.DemoScenes;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole scenes with blends at moves along the joints; their demo grips do not hold: status 1. */
class BlendedJointSceneTest {
  @TempDir private Path folder;

  private String check(int status, String text) throws IOException {
    Path file = Files.writeString(folder.resolve("scene.json"), text);
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console = new Console(new PrintWriter(out), new PrintWriter(err), false);
    int actual = Main.run(console, "check", file.toString());
    assertEquals(status, actual, out.toString() + err);
    return status == 2 ? err.toString() : out.toString();
  }

  private static double cycle(String table) {
    String after = table.substring(table.indexOf("Cycle ") + 6);
    return Double.parseDouble(after.substring(0, after.indexOf(' ')));
  }

  private static String along(String text) {
    return text.replace("\"back\", \"line\"", "\"back\", \"joint\"");
  }

  /** Between the zones the way of the arm is that of its joints; the empty way back is quicker. */
  @Test
  void anArmGoesBackAlongItsJointsWithoutAStop() throws IOException {
    Path arm = DemoScenes.file("cartons").resolveSibling("pallet-arm.urdf");
    Files.copy(arm, folder.resolve("pallet-arm.urdf"));
    String blended = along(Files.readString(DemoScenes.file("cartons")));
    String stopped =
        blended
            .replace(
                "0.95 m\" }, \"blend\": \"60 mm\" },\n    { \"name\": \"back\"",
                "0.95 m\" } },\n    { \"name\": \"back\"")
            .replace(
                "0.95 m\" }, \"blend\": \"60 mm\" },\n    { \"name\": \"reach\"",
                "0.95 m\" } },\n    { \"name\": \"reach\"");
    String table = check(1, blended);
    assertTrue(table.contains("joint move"), table);
    assertTrue(table.contains("blend 60 mm"), table);
    assertTrue(cycle(table) < cycle(check(1, stopped)), table);
  }

  @Test
  void aScaraGoesBackAlongItsJointsWithoutAStop() throws IOException {
    String stopped = along(Files.readString(DemoScenes.file("peaches")));
    String blended =
        stopped
            .replace(
                "0.3 0.2 m\" } },\n    { \"name\": \"back\"",
                "0.3 0.2 m\" }, \"blend\": \"30 mm\" },\n    { \"name\": \"back\"")
            .replace(
                "0.2 m\" } },\n    { \"name\": \"reach\"",
                "0.2 m\" }, \"blend\": \"30 mm\" },\n    { \"name\": \"reach\"");
    String table = check(1, blended);
    assertTrue(table.contains("blend 30 mm"), table);
    assertTrue(cycle(table) < cycle(check(1, stopped)), table);
  }

  @Test
  void tellsTheLargestZoneBesideAMoveAlongTheJoints() throws IOException {
    String text =
        along(Files.readString(DemoScenes.file("peaches")))
            .replace(
                "0.3 0.2 m\" } },\n    { \"name\": \"back\"",
                "0.3 0.2 m\" }, \"blend\": \"300 mm\" },\n    { \"name\": \"back\"");
    String words = check(2, text);
    assertTrue(words.contains("write \"120 mm\" or less"), words);
    String both =
        text.replace(
            "0.2 m\" } },\n    { \"name\": \"reach\"",
            "0.2 m\" }, \"blend\": \"400 mm\" },\n    { \"name\": \"reach\"");
    String all = check(2, both);
    assertTrue(all.contains("write \"120 mm\" or less"), all);
    assertTrue(all.contains("the zone of 400.0 mm"), all);
  }
}
