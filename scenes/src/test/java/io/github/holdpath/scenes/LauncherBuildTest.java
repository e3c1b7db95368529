package io.github.holdpath.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * When the launcher builds, in a small checkout whose Maven and Java are scripts: Maven notes its
 * call and makes the jars, Java prints its arguments.
 */
class LauncherBuildTest {
  private static final Path LAUNCHER =
      Path.of(System.getProperty("user.dir")).toAbsolutePath().resolveSibling("sim/holdpath");

  /** Far above the second or two that a start with scripts takes. */
  private static final long PATIENCE_SECONDS = 60;

  private static final List<String> TOOLS =
      List.of("cat find mkdir mv readlink rm rmdir sed seq sleep tail touch".split(" "));

  private static final String MAVEN =
      """
      #!/bin/sh
      echo "$@" >>"$CALLS"
      echo "output of Maven"
      sleep "${MAVEN_SLEEPS:-0}"
      [ -z "${MAVEN_FAILS:-}" ] || { seq 1 40; exit 1; }
      case " $* " in
        *" -pl viewer "*)
          mkdir -p viewer/target/app
          : >viewer/target/holdpath-viewer-$VERSION.jar
          : >viewer/target/app/holdpath-dynamics-$VERSION.jar ;;
      esac
      mkdir -p sim/target/app
      : >sim/target/holdpath-sim-$VERSION.jar
      : >sim/target/app/holdpath-dynamics-$VERSION.jar
      """;

  private static final String JAVA =
      """
      #!/bin/sh
      case $1 in
        -XX:ArchiveClassesAtExit=*)
          echo "output of the training run"
          echo "trained by $*" >>"$CALLS.trained"
          echo x >"${1#*=}" ;;
        *) printf '[%s]\\n' "$@" ;;
      esac
      """;

  @TempDir Path folder = Path.of("");
  private Path root = Path.of("");
  private Path calls = Path.of("");

  @BeforeEach
  void makeCheckout() throws IOException {
    assumeFalse(
        System.getProperty("os.name").startsWith("Windows"),
        "sim/holdpath is a Unix shell script; Windows has sim/holdpath.cmd");
    root = folder.toRealPath().resolve("check out");
    calls = root.resolve("calls");
    for (String module : List.of("dynamics", "sim", "viewer")) {
      Files.createDirectories(root.resolve(module).resolve("src/main/java"));
      Files.createFile(root.resolve(module).resolve("pom.xml"));
      Files.createFile(root.resolve(module).resolve("src/main/java/A.java"));
    }
    Files.createFile(root.resolve("pom.xml"));
    Files.createFile(calls);
    Files.copy(LAUNCHER, root.resolve("sim/holdpath"), StandardCopyOption.COPY_ATTRIBUTES);
    script(root.resolve("jdk/bin/java"), JAVA);
    script(root.resolve("jdk/bin/javac"), "#!/bin/sh\n");
    script(root.resolve("tools/mvn"), MAVEN);
    makeTools();
    Files.writeString(root.resolve("jdk/release"), "JAVA_VERSION=\"17.0.1\"\n");
  }

  @Test
  void firstStartBuildsOnceAndTheNextIsStraight() throws Exception {
    Outcome first = start("check", "a.json");
    assertEquals("holdpath: building, first use (about a minute) ...\n", first.err());
    assertEquals(0, first.status());
    assertFalse(first.out().contains("output of"), first.out());
    assertTrue(Files.readString(root.resolve("sim/target/build.log")).contains("output of Maven"));
    Outcome second = start("check", "a.json");
    assertEquals("", second.err());
    assertEquals(first.out(), second.out());
    assertEquals(1, builds());
  }

  @Test
  void passesArgumentsUnchanged() throws Exception {
    Outcome outcome = start("check", "two words", "", "*", "it's \"so\"");
    String tail = "[check]\n[two words]\n[]\n[*]\n[it's \"so\"]\n";
    assertTrue(outcome.out().endsWith(tail), outcome.out());
  }

  @Test
  void leavesTheSecondCompilerOnForLongCommandsAlone() throws Exception {
    assertTrue(start("check").out().contains("[-XX:TieredStopAtLevel=1]"));
    assertTrue(start("explain").out().contains("[-XX:TieredStopAtLevel=1]"));
    assertFalse(start("sweep").out().contains("[-XX:TieredStopAtLevel=1]"));
    String first = "[-XX:TieredStopAtLevel=1]";
    assertTrue(start("view", "a.json", "--picture", "a.png").out().contains(first));
    assertFalse(start("view", "a.json").out().contains(first));
    assertFalse(start("view", "a.json", "--glb=a", "--animation=b").out().contains(first));
  }

  @Test
  void startsWithTheArchiveOfTheTrainingRun() throws Exception {
    Path archive = root.resolve("sim/target/holdpath.jsa");
    assertTrue(start("check").out().contains("[-XX:SharedArchiveFile=" + archive + "]"));
    assertTrue(Files.exists(archive));
    // Another JDK makes an archive of its own.
    Files.writeString(archive, "old");
    Files.writeString(root.resolve("jdk/release"), "JAVA_VERSION=\"21.0.2\"\n");
    start("check");
    assertEquals("x\n", Files.readString(archive));
  }

  @Test
  void viewHasABuildAClassPathAndAnArchiveOfItsOwn() throws Exception {
    String out = start("--debug", "view", "a.json").out();
    assertTrue(out.contains("viewer/target/holdpath-viewer-" + version() + ".jar:"), out);
    Path archive = root.resolve("viewer/target/holdpath.jsa");
    assertTrue(out.contains("[-XX:SharedArchiveFile=" + archive + "]"), out);
    assertTrue(out.endsWith("[--debug]\n[view]\n[a.json]\n"), out);
    assertTrue(Files.readString(calls).contains("-pl viewer -am package"));
    assertFalse(start("check", "view").out().contains("holdpath-viewer"));
  }

  @Test
  void trainsTheViewerWithAPictureAndTheRestWithACheck() throws Exception {
    start("view", "a.json");
    start("check", "a.json");
    List<String> runs = Files.readAllLines(root.resolve("calls.trained"));
    assertEquals(2, runs.size());
    assertTrue(runs.get(0).contains(" view scenes/cartons.json --picture "), runs.get(0));
    assertTrue(runs.get(1).contains(" check scenes/cartons.json --json -"), runs.get(1));
  }

  @Test
  void startsWithoutAnArchiveWhereNoneCanBeMade() throws Exception {
    script(root.resolve("jdk/bin/java"), JAVA.replace("echo x >\"${1#*=}\"", "exit 1"));
    for (int i = 0; i < 2; i++) {
      Outcome outcome = start("check");
      assertEquals(0, outcome.status(), outcome.err());
      assertFalse(outcome.out().contains("SharedArchiveFile"), outcome.out());
    }
  }

  @Test
  void buildsAgainWhereAFileHasChangedOrGone() throws Exception {
    start("check");
    ageEverything();
    assertEquals("", start("check").err());
    Files.writeString(root.resolve("dynamics/src/main/java/A.java"), "changed");
    assertEquals("holdpath: sources changed, building ...\n", start("check").err());
    assertEquals(2, builds());
    ageEverything();
    Files.delete(root.resolve("sim/src/main/java/A.java"));
    assertEquals("holdpath: sources changed, building ...\n", start("check").err());
    assertEquals("", start("check").err());
    assertEquals(3, builds());
  }

  @Test
  void anEditDuringTheBuildCountsAsNewer() throws Exception {
    // Pauses, so that the edit lies between start and jar even where times are coarse.
    String edit = "sleep 1\ntouch sim/src/main/java/A.java\nsleep 1\n";
    script(root.resolve("tools/mvn"), MAVEN.replace("mkdir", edit + "mkdir"));
    start("check");
    assertEquals("holdpath: sources changed, building ...\n", start("check").err());
  }

  @Test
  void showsTheEndOfTheLogWhereTheBuildFails() throws Exception {
    Outcome outcome = start(List.of("MAVEN_FAILS=yes"), "check");
    assertEquals(70, outcome.status());
    assertEquals("", outcome.out());
    assertTrue(outcome.err().contains("\n21\n22\n"), outcome.err());
    assertFalse(outcome.err().contains("\n20\n"), outcome.err());
    assertTrue(outcome.err().contains("is in " + root + "/sim/target/build.log\n"), outcome.err());
    assertEquals(0, start("check").status());
  }

  @Test
  void saysWhatToInstallWhereMavenIsMissing() throws Exception {
    Files.delete(root.resolve("tools/mvn"));
    Outcome outcome = start("check");
    assertEquals(2, outcome.status());
    assertTrue(outcome.err().contains("found no Maven; install Maven 3.8"), outcome.err());
    assertEquals(1, outcome.err().lines().count(), outcome.err());
  }

  @Test
  void twoFirstStartsAtOnceBuildOnce() throws Exception {
    Process one = launch("1", List.of("MAVEN_SLEEPS=2"), "check");
    Process two = launch("2", List.of("MAVEN_SLEEPS=2"), "check");
    assertEquals(0, await("1", one).status());
    assertEquals(0, await("2", two).status());
    assertEquals(1, builds());
    assertFalse(Files.exists(root.resolve("sim/target/launcher.lock")));
  }

  @Test
  void takesOverTheLockOfAProcessThatIsGone() throws Exception {
    Process gone = new ProcessBuilder("true").start();
    assertTrue(gone.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS));
    Path lock = Files.createDirectories(root.resolve("sim/target/launcher.lock"));
    Files.writeString(lock.resolve("pid"), gone.pid() + "\n");
    assertEquals(0, start("check").status());
    assertEquals(1, builds());
  }

  private long builds() throws IOException {
    try (var lines = Files.lines(calls)) {
      return lines.count();
    }
  }

  /** Sets all times back, those of the build after those of the sources. */
  private void ageEverything() throws IOException {
    Instant now = Instant.now();
    try (var files = Files.walk(root)) {
      for (Path file : files.toList()) {
        boolean built = file.startsWith(root.resolve("sim/target"));
        Files.setLastModifiedTime(file, FileTime.from(now.minusSeconds(built ? 50 : 100)));
      }
    }
  }

  private static void script(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    assertTrue(file.toFile().setExecutable(true));
  }

  private record Outcome(int status, String out, String err) {}

  private Outcome start(String... arguments) throws Exception {
    return start(List.of(), arguments);
  }

  private Outcome start(List<String> settings, String... arguments) throws Exception {
    return await("0", launch("0", settings, arguments));
  }

  private Process launch(String number, List<String> settings, String... arguments)
      throws IOException {
    List<String> command = new ArrayList<>(List.of(root.resolve("sim/holdpath").toString()));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command);
    var environment = builder.environment();
    environment.put("JAVA_HOME", root.resolve("jdk").toString());
    environment.put("PATH", root.resolve("tools").toString());
    environment.put("CALLS", calls.toString());
    environment.put("VERSION", version());
    for (String setting : settings) {
      int equals = setting.indexOf('=');
      environment.put(setting.substring(0, equals), setting.substring(equals + 1));
    }
    builder.redirectOutput(folder.resolve("out" + number).toFile());
    builder.redirectError(folder.resolve("err" + number).toFile());
    return builder.start();
  }

  /** The tools that the scripts use and nothing else, so that no other Maven is met. */
  private void makeTools() throws IOException {
    for (String tool : TOOLS) {
      Path place = Path.of(Files.exists(Path.of("/usr/bin", tool)) ? "/usr/bin" : "/bin", tool);
      script(root.resolve("tools").resolve(tool), "#!/bin/sh\nexec " + place + " \"$@\"\n");
    }
  }

  private static String version() throws IOException {
    return Files.readAllLines(LAUNCHER).stream()
        .filter(line -> line.startsWith("version="))
        .findFirst()
        .orElseThrow()
        .substring("version=".length());
  }

  private Outcome await(String number, Process process) throws Exception {
    assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), "did not end in time");
    return new Outcome(
        process.exitValue(),
        Files.readString(folder.resolve("out" + number)),
        Files.readString(folder.resolve("err" + number)));
  }
}
