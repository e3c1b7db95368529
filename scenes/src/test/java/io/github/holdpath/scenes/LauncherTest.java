package io.github.holdpath.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The launcher of Unix-like systems, run as a user runs it. */
class LauncherTest {
  private static final Path MODULE = Path.of(System.getProperty("user.dir")).toAbsolutePath();
  private static final Path LAUNCHER = MODULE.resolveSibling("sim").resolve("holdpath");
  private static final String JDK = System.getProperty("java.home");

  /** Far above the seconds that a start takes, even with a first class-data archive. */
  private static final long PATIENCE_SECONDS = 120;

  @TempDir Path folder = Path.of("");

  @BeforeEach
  void onlyWhereItCanRun() {
    assumeFalse(
        System.getProperty("os.name").startsWith("Windows"),
        "sim/holdpath is a Unix shell script; Windows has sim/holdpath.cmd");
    assumeTrue(
        System.getProperty("java.class.path").contains("holdpath-sim-"),
        "'mvn verify' packages sim before this test, 'mvn test' does not");
  }

  @Test
  void printsItsVersionWithoutBuildingAgain() throws Exception {
    Outcome outcome = run(MODULE, LAUNCHER, Map.of("JAVA_HOME", JDK), "--version");
    assertEquals(0, outcome.status(), outcome.err());
    assertTrue(outcome.out().contains(version()), outcome.out());
    assertEquals("", outcome.err());
  }

  @Test
  void printsHelp() throws Exception {
    Outcome outcome = run(MODULE, LAUNCHER, Map.of("JAVA_HOME", JDK), "--help");
    assertEquals(0, outcome.status(), outcome.err());
    assertTrue(outcome.out().contains("holdpath"), outcome.out());
  }

  @Test
  void findsJavaOnThePath() throws Exception {
    Outcome outcome =
        run(MODULE, LAUNCHER, Map.of("PATH", JDK + "/bin:/usr/bin:/bin"), "--version");
    assertEquals(0, outcome.status(), outcome.err());
  }

  @Test
  void startsFromAnotherFolderThroughALinkWithASpaceInItsName() throws Exception {
    Path spaced = Files.createDirectory(folder.resolve("my tools"));
    Path link = Files.createSymbolicLink(spaced.resolve("hold path"), LAUNCHER);
    Path chain = Files.createSymbolicLink(folder.resolve("chain"), Path.of("my tools/hold path"));
    for (Path start : List.of(link, chain)) {
      Outcome outcome = run(folder, start, Map.of("JAVA_HOME", JDK), "--version");
      assertEquals(0, outcome.status(), start + ": " + outcome.err());
    }
    Files.delete(chain);
    Files.delete(link);
  }

  @Test
  void saysWhatToInstallWhereJavaIsMissing() throws Exception {
    Path tools = Files.createDirectory(folder.resolve("tools"));
    for (String tool : List.of("cat", "find", "mkdir", "readlink", "rm", "sleep", "tail")) {
      Path place = Path.of(Files.exists(Path.of("/usr/bin", tool)) ? "/usr/bin" : "/bin", tool);
      script(tools.resolve(tool), "exec " + place + " \"$@\"");
    }
    Outcome outcome = run(MODULE, LAUNCHER, Map.of("PATH", tools.toString()), "--version");
    assertRefused(outcome, "needs Java 17 or newer and found none; install a JDK");
  }

  @Test
  void refusesAJavaThatIsTooOldAndNamesIt() throws Exception {
    Path old = fakeJdk("exit 9");
    Files.writeString(old.resolve("release"), "IMPLEMENTOR=\"x\"\nJAVA_VERSION=\"11.0.2\"\n");
    Outcome outcome = run(MODULE, LAUNCHER, Map.of("JAVA_HOME", old.toString()), "--version");
    assertRefused(outcome, "needs Java 17 or newer, but " + old + "/bin/java is 11.0.2;");
  }

  @Test
  void asksJavaItselfWhereNoReleaseFileSaysTheVersion() throws Exception {
    Path old = fakeJdk("echo 'java version \"1.8.0_202\"' >&2");
    Outcome outcome = run(MODULE, LAUNCHER, Map.of("JAVA_HOME", old.toString()), "--version");
    assertRefused(outcome, "is 1.8.0_202;");
  }

  @Test
  void refusesAJavaHomeWithoutJava() throws Exception {
    Outcome outcome = run(MODULE, LAUNCHER, Map.of("JAVA_HOME", folder.toString()), "--version");
    assertRefused(outcome, "JAVA_HOME is " + folder + ", but there is no bin/java in it");
  }

  @Test
  void bothLaunchersNameTheVersionOfTheProject() throws Exception {
    String unix = Files.readString(LAUNCHER);
    String windows = Files.readString(LAUNCHER.resolveSibling("holdpath.cmd"));
    assertTrue(unix.contains("\nversion=" + version() + "\n"));
    assertTrue(windows.contains("\"hp_version=" + version() + "\""));
  }

  /** Version of the project; the launchers name it too. */
  private static String version() throws IOException {
    Matcher matcher =
        Pattern.compile("<version>([^<]+)</version>")
            .matcher(Files.readString(MODULE.resolve("pom.xml")));
    assertTrue(matcher.find());
    return matcher.group(1);
  }

  private Path fakeJdk(String script) throws IOException {
    Path jdk = Files.createDirectory(folder.resolve("jdk")).toRealPath();
    script(Files.createDirectory(jdk.resolve("bin")).resolve("java"), script);
    return jdk;
  }

  private static void script(Path file, String text) throws IOException {
    Files.writeString(file, "#!/bin/sh\n" + text + "\n");
    assertTrue(file.toFile().setExecutable(true));
  }

  private static void assertRefused(Outcome outcome, String words) {
    assertEquals(2, outcome.status(), outcome.err());
    assertEquals("", outcome.out());
    assertEquals(1, outcome.err().lines().count(), outcome.err());
    assertTrue(outcome.err().startsWith("holdpath: "), outcome.err());
    assertTrue(outcome.err().contains(words), outcome.err());
  }

  private record Outcome(int status, String out, String err) {}

  /** Runs a start with an environment in which Java is found as told and in no other way. */
  private Outcome run(Path from, Path start, Map<String, String> environment, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(start.toString()));
    command.addAll(List.of(arguments));
    Path out = folder.resolve("out.txt");
    Path err = folder.resolve("err.txt");
    ProcessBuilder builder = new ProcessBuilder(command).directory(from.toFile());
    List.of("JAVA_HOME", "JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS")
        .forEach(builder.environment()::remove);
    builder.environment().putAll(environment);
    builder.redirectOutput(out.toFile()).redirectError(err.toFile());
    Process process = builder.start();
    assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), "did not end in time");
    return new Outcome(
        process.exitValue(),
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }
}
