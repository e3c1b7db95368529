package io.github.holdpath.sim.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.DemoScenes;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {
  private static final String CARTONS = DemoScenes.file("cartons").toString();
  private static final String BLANK = DemoScenes.file("gear-blank").toString();
  private static final String STRONG = "grip/force=700 N";

  @TempDir private Path folder;

  /** What a run left behind. */
  private record Run(int status, String out, String err) {}

  private static Run run(String... args) {
    return run(false, args);
  }

  private static Run run(boolean colour, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status = Main.run(new Console(new PrintWriter(out), new PrintWriter(err), colour), args);
    return new Run(status, out.toString(), err.toString());
  }

  @BeforeEach
  void folderIsEmpty() {
    assertEquals(List.of(), files());
  }

  private List<String> files() {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(p -> p.getFileName().toString()).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String in(String name) {
    return folder.resolve(name).toString();
  }

  private String text(String name) throws IOException {
    return Files.readString(folder.resolve(name));
  }

  /** The call is refused with these words, and nothing is printed or written. */
  private void assertRefused(String words, String... args) {
    List<String> before = files();
    Run run = run(args);
    assertEquals(2, run.status(), run.err());
    assertTrue(run.err().contains(words), run.err());
    assertTrue(run.err().contains("othing was written."), run.err());
    assertFalse(run.err().contains("\tat "), run.err());
    assertTrue(run.err().lines().count() <= 2, run.err());
    assertEquals("", run.out());
    assertEquals(before, files());
  }

  @Test
  void statusTellsWhetherItHolds() {
    Run fails = run("check", CARTONS);
    assertEquals(1, fails.status());
    assertTrue(fails.out().contains("DOES NOT HOLD"));
    assertEquals("", fails.err());
    Run holds = run("check", BLANK, "--set", STRONG);
    assertEquals(0, holds.status(), holds.out());
    assertTrue(holds.out().contains("\nHOLDS: "));
  }

  /** From the file to every output; the jerk counts, so it is shown. */
  @ParameterizedTest
  @ValueSource(strings = {"quintic", "modified-sine", "cycloidal"})
  void camLawsGoAllTheWay(String law) throws IOException {
    Run run =
        run("check", CARTONS, "--set", "law=" + law, "--json", in("r.json"), "--csv", in("s.csv"));
    assertTrue(run.status() < 2, run.err());
    assertTrue(run.out().contains(", jerk 100"), run.out());
    assertTrue(text("r.json").contains("\"peakJerk\""), text("r.json"));
    assertTrue(text("s.csv").lines().count() > 1000);
    assertFalse(text("s.csv").contains("NaN"));
    Run explained = run("explain", CARTONS, "--set", "law=" + law);
    assertEquals(0, explained.status(), explained.err());
  }

  @Test
  void requiredSafetyOfTheCallCounts() {
    assertEquals(0, run("check", BLANK, "--require", "1.6").status());
    assertEquals(1, run("check", BLANK, "--require", "1.7").status());
    assertTrue(run("check", BLANK, "--require", "1.6").out().contains("required safety 1.6"));
  }

  @Test
  void swingOnTheGripCountsForTheVerdict() {
    Run swings = run("check", CARTONS, "--require", "1.05");
    assertEquals(1, swings.status());
    assertTrue(swings.out().contains("while rigid on its grip"), swings.out());
    assertTrue(swings.out().contains("Swinging on its grip"), swings.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.9", "NaN", "101", "-2", "Infinity"})
  void refusesARequiredSafetyThatIsNone(String value) {
    assertRefused("give a number from 1 to 100", "check", CARTONS, "--require", value);
  }

  @Test
  void refusesARequiredSafetyThatIsNoNumber() {
    assertRefused("--require", "check", CARTONS, "--require", "twice");
  }

  @Test
  void faultsOfASceneAreListedAndNothingIsWritten() throws IOException {
    String json = in("r.json");
    Run run =
        run(
            "check",
            CARTONS,
            "--set",
            "grip/friction=-0.5",
            "--set",
            "part/mass=12 N",
            "--json",
            json);
    assertEquals(2, run.status());
    assertEquals("", run.out());
    assertTrue(run.err().contains("grip/friction") && run.err().contains("part/mass"), run.err());
    assertTrue(run.err().endsWith("holdpath: 2 faults to mend; nothing was written.\n"));
    assertEquals(List.of(), files());
  }

  @Test
  void sceneThatIsNotThereIsTold() {
    Run run = run("check", in("none.json"));
    assertEquals(2, run.status());
    assertTrue(run.err().contains("there is no such file"), run.err());
    assertEquals("", run.out());
  }

  @Test
  void writesResultAndSamplesBesideTheTable() throws IOException {
    Run run = run("check", CARTONS, "--json", in("r.json"), "--csv", in("s.csv"));
    assertEquals(1, run.status());
    assertTrue(run.out().contains("DOES NOT HOLD"));
    assertEquals(List.of("r.json", "s.csv"), files());
    assertTrue(text("r.json").startsWith("{\n  \"format\" : \"holdpath-result/1\""));
    assertTrue(text("s.csv").startsWith("time,segment,s,"));
  }

  @Test
  void dashIsStandardOutputInPlaceOfTheTable() throws IOException {
    run("check", CARTONS, "--json", in("r.json"), "--csv", in("s.csv"), "--quiet");
    assertEquals(text("r.json"), run("check", CARTONS, "--json", "-").out());
    assertEquals(text("s.csv"), run("check", CARTONS, "--csv", "-", "--quiet").out());
    Run both = run("check", CARTONS, "--json", "-", "--csv", in("t.csv"));
    assertEquals(text("r.json"), both.out());
    assertEquals(text("s.csv"), text("t.csv"));
    Run other = run("check", CARTONS, "--json", in("u.json"), "--csv", "-");
    assertEquals(text("s.csv"), other.out());
    assertEquals(text("r.json"), text("u.json"));
    assertEquals(1, both.status());
  }

  @Test
  void quietPrintsNoTable() {
    assertEquals(new Run(1, "", ""), run("check", CARTONS, "--quiet"));
  }

  @Test
  void twoOutputsNeverShareAPlace() {
    assertRefused("name a file", "check", CARTONS, "--json", "-", "--csv", "-");
    String same = in("x");
    String around = folder.resolve("../" + folder.getFileName() + "/x").toString();
    assertRefused("two outputs", "check", CARTONS, "--json", same, "--csv", around);
  }

  @Test
  void theSceneIsNeverWrittenOver() throws IOException {
    Path free = Path.of(CARTONS).resolveSibling("steel-sheet.json");
    Path scene = Files.copy(free, folder.resolve("mine.json"));
    String before = Files.readString(scene);
    assertRefused("the scene itself", "check", scene.toString(), "--json", scene.toString());
    assertEquals(before, Files.readString(scene));
  }

  @Test
  void anOldFileIsReplacedWhole() throws IOException {
    Files.writeString(folder.resolve("r.json"), "old ".repeat(10_000));
    assertEquals(1, run("check", CARTONS, "--json", in("r.json")).status());
    assertEquals(List.of("r.json"), files());
    assertTrue(text("r.json").startsWith("{") && text("r.json").endsWith("}\n"));
  }

  @Test
  void filesGetThePermissionsOfAnyNewFile() throws IOException {
    if (!FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
      return; // permissions of this kind exist on such systems alone
    }
    run("check", CARTONS, "--json", in("r.json"));
    Path plain = Files.writeString(folder.resolve("plain"), "");
    assertEquals(
        Files.getPosixFilePermissions(plain),
        Files.getPosixFilePermissions(folder.resolve("r.json")));
  }

  @Test
  void refusesPlacesThatCannotBeWritten() {
    assertRefused("does not exist", "check", CARTONS, "--json", in("none/r.json"));
    assertRefused("is a folder", "check", CARTONS, "--csv", folder.toString());
    // The first could be written, the second not: then neither is.
    assertRefused(
        "does not exist", "check", CARTONS, "--json", in("r.json"), "--csv", in("none/s.csv"));
    assertRefused("is not a file name", "check", CARTONS, "--json", folder + "/a\0b");
  }

  @Test
  void samplesAreSpacedAsTold() throws IOException {
    run("check", CARTONS, "--csv", in("s.csv"), "--samples", "5ms", "--quiet");
    run("check", CARTONS, "--csv", in("t.csv"), "--samples", "0.01 s", "--quiet");
    List<String> five = text("s.csv").lines().map(l -> l.split(",")[0]).toList();
    assertTrue(five.contains("0.005") && !five.contains("0.001") && !five.contains("0.004"));
    assertTrue(text("t.csv").lines().count() < five.size());
  }

  @ParameterizedTest
  @CsvSource({
    "5, time with its unit",
    "0ms, at least 0.01ms",
    "-1ms, time with its unit",
    "1m, time with its unit",
    "fast, time with its unit",
    "NaN s, time with its unit",
    "0.001ms, at least 0.01ms"
  })
  void refusesBadSpacings(String spacing, String words) {
    assertRefused(words, "check", CARTONS, "--csv", in("s.csv"), "--samples", spacing);
  }

  @Test
  void unknownWordsGetOneHelpfulLine() {
    assertRefused("there is no command \"chekc\"; give one of check, explain, new", "chekc");
    assertRefused("'--jsno'", "check", CARTONS, "--jsno", in("r.json"));
    assertRefused("SCENE", "check");
    assertRefused("Unknown option: '--frobnicate'", "--frobnicate");
    assertRefused("other.json", "check", CARTONS, "other.json");
  }

  @Test
  void setNeedsAPlaceAndAValueOnce() {
    assertRefused("give a place and a value", "check", CARTONS, "--set", "grip/friction");
    assertRefused("give a place and a value", "check", CARTONS, "--set", "=0.3");
    String[] twice = {"check", CARTONS, "--set", "grip/friction=1", "--set", "grip/friction=2"};
    assertRefused("is set twice", twice);
  }

  @Test
  void setPlaceThatDoesNotExistIsAFault() {
    Run run = run("check", CARTONS, "--set", "grip/frictoin=0.3");
    assertEquals(2, run.status());
    assertTrue(run.err().contains("frictoin") && run.err().contains("friction"), run.err());
  }

  @Test
  void setValueMayHoldAnEqualsSign() {
    Run run = run("check", CARTONS, "--set", "title=a=b");
    assertTrue(run.out().startsWith("a=b\n"), run.out());
  }

  @Test
  void explainsTheWorstInstantUnlessToldOtherwise() {
    Run worst = run("explain", CARTONS);
    assertEquals(0, worst.status());
    assertEquals(worst, run("explain", CARTONS, "--at", "worst"));
    assertTrue(worst.out().contains("At 0.8778 s, move 2, part held."), worst.out());
    assertTrue(run("explain", CARTONS, "--at", "0.5s").out().contains("At 0.5000 s, move 1"));
    assertTrue(run("explain", CARTONS, "--at", "0s").out().contains("before the first move"));
    assertTrue(run("explain", CARTONS, "--at", "4500ms").out().contains("is not held here"));
  }

  @Test
  void explainsTheLastInstantThatItNames() {
    Run beyond = run("explain", CARTONS, "--at", "99s");
    assertEquals(2, beyond.status());
    String end = beyond.err().replaceAll("(?s).*ends at ([0-9.]+s);.*", "$1");
    assertEquals(0, run("explain", CARTONS, "--at", end).status());
  }

  @Test
  void refusesInstantsThatAreNone() {
    assertRefused("the motion ends at ", "explain", CARTONS, "--at", "99s");
    assertRefused("1.23s or worst", "explain", CARTONS, "--at", "yesterday");
    assertRefused("1.23s or worst", "explain", CARTONS, "--at", "0.5");
    assertRefused("1.23s or worst", "explain", CARTONS, "--at", "-1s");
  }

  @ParameterizedTest
  @ValueSource(strings = {"suction", "jaws", "centric", "soft", "magnet", "patches"})
  void newSceneCanBeChecked(String kind) throws IOException {
    Run printed = run("new", kind);
    assertEquals(0, printed.status());
    Run written = run("new", kind, "--out", in("new.json"));
    assertEquals(0, written.status());
    assertEquals(printed.out(), text("new.json"));
    assertTrue(written.out().startsWith("Wrote "), written.out());
    Run check = run("check", in("new.json"));
    assertTrue(check.status() <= 1, check.err());
    assertEquals("", check.err());
  }

  @Test
  void newSceneNeverReplacesAFile() throws IOException {
    Files.writeString(folder.resolve("new.json"), "mine");
    assertRefused("exists and is kept", "new", "suction", "--out", in("new.json"));
    assertEquals("mine", text("new.json"));
    assertRefused(
        "give one of suction, jaws, centric, soft, magnet, patches, recording",
        "new",
        "tentacles",
        "--out",
        in("other.json"));
    assertRefused("KIND", "new");
  }

  @Test
  void colourOnlyWhereTheConsoleHasIt() {
    assertFalse(run("check", CARTONS).out().contains("\u001b"));
    assertTrue(run(true, "check", CARTONS).out().contains("\u001b"));
    assertFalse(run(true, "check", CARTONS, "--no-colour").out().contains("\u001b"));
  }

  @Test
  void helpAndVersionAreNoFaults() {
    for (String[] args :
        new String[][] {{}, {"--help"}, {"check", "--help"}, {"new", "--help"}, {"--version"}}) {
      Run run = run(args);
      assertEquals(0, run.status());
      assertEquals("", run.err());
      assertTrue(run.out().contains("holdpath"), run.out());
    }
    for (String command : List.of("check", "explain", "new")) {
      assertTrue(run(command, "--help").out().contains("Example: holdpath " + command));
    }
  }
}
