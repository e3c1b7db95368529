package io.github.holdpath.sim.robot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UrdfReaderTest {
  private static final double EXACT = 1e-12;

  /** A hostile file is refused in a blink; this leaves room for a busy machine. */
  private static final Duration QUICK = Duration.ofSeconds(10);

  private static final String INERTIAL =
      """
      <inertial><origin xyz="0.1 0 0" rpy="0 0 1.5707963267948966"/><mass value="2"/>
        <inertia ixx="0.01" iyy="0.02" izz="0.025" ixy="0" ixz="0" iyz="0"/></inertial>""";

  private static final String LIMIT =
      "<limit lower=\"-1\" upper=\"2\" velocity=\"3\" effort=\"40\"/>";

  private static String link(String name) {
    return "<link name=\"" + name + "\">" + INERTIAL + "</link>\n";
  }

  private static String joint(String name, String type, String parent, String child, String more) {
    return "<joint name=\"%s\" type=\"%s\"><parent link=\"%s\"/><child link=\"%s\"/>%s</joint>\n"
        .formatted(name, type, parent, child, more);
  }

  private static String robot(String... parts) {
    return "<robot name=\"r\">\n" + String.join("", parts) + "</robot>\n";
  }

  private static String fault(String text) {
    String message =
        assertThrows(UrdfException.class, () -> UrdfReader.read("a.urdf", text)).getMessage();
    return String.valueOf(message);
  }

  private static String chainFault(String text, String root, String tip) throws UrdfException {
    UrdfTree tree = UrdfReader.read("a.urdf", text);
    return String.valueOf(
        assertThrows(UrdfException.class, () -> tree.chain(root, tip)).getMessage());
  }

  private static void assertStarts(String start, String message) {
    assertTrue(message.startsWith(start), message);
    assertFalse(message.contains("\n"), message);
  }

  private static final String ARM =
      robot(
          "<material name=\"grey\"><color rgba=\"1 1 1 1\"/></material>\n",
          "<link name=\"base\"/>\n",
          link("one"),
          link("cover"),
          link("two"),
          link("tool"),
          link("gripper"),
          joint(
              "a",
              "revolute",
              "base",
              "one",
              "<origin xyz=\"0 0 0.3\" rpy=\"0.1 0.2 0.3\"/><axis xyz=\"0 0 2\"/>" + LIMIT),
          joint("c", "fixed", "one", "cover", "<origin xyz=\"0 0.2 0\"/>"),
          joint("b", "prismatic", "one", "two", "<mimic joint=\"a\" multiplier=\"-2\"/>" + LIMIT),
          joint("f", "fixed", "two", "tool", "<origin xyz=\"0 0 0.1\" rpy=\"0 1 0\"/>"),
          joint("g", "fixed", "tool", "gripper", ""),
          "<transmission name=\"t\"><joint name=\"a\"/></transmission>\n",
          "<gazebo><plugin:deep/></gazebo>\n");

  @Test
  void readsJointsLimitsMimicAndBodies() throws UrdfException {
    UrdfChain read = UrdfReader.read("a.urdf", ARM).chain("base", "tool");
    Joint a = read.chain().joints().get(0);
    assertEquals(JointKind.REVOLUTE, a.kind());
    assertEquals(new Vec3(0, 0, 1), a.axis());
    assertEquals(new Pose(new Vec3(0, 0, 0.3), Quaternion.ofRpy(0.1, 0.2, 0.3)), a.origin());
    assertEquals(new JointLimits(-1, 2, 3, 40), a.limits());
    assertEquals(4, a.body().mass());
    assertEquals(0, a.body().centreOfMass().minus(new Vec3(0.1, 0.1, 0)).norm(), EXACT);
    // A quarter turn about z swaps the moments about x and y; the cover lies 0.2 m along y:
    // each of the two bodies adds 2 kg (0.1 m)^2 about x.
    assertEquals(2 * 0.02 + 2 * 2 * 0.01, a.body().inertia().xx(), EXACT);
    assertEquals(2 * 0.01, a.body().inertia().yy(), EXACT);
    Joint b = read.chain().joints().get(1);
    assertEquals(JointKind.PRISMATIC, b.kind());
    assertEquals(new Vec3(1, 0, 0), b.axis());
    assertEquals(new Mimic("a", -2, 0), b.mimic().orElseThrow());
    assertEquals(4, b.body().mass());
    assertEquals(new Pose(new Vec3(0, 0, 0.1), Quaternion.ofRpy(0, 1, 0)), read.chain().flange());
    assertEquals(
        "[What hangs from link \"tool\" by joint \"g\" is left out: its mass is not in the torques.]",
        read.notes().toString());
  }

  @Test
  void passesOverAByteOrderMark() throws UrdfException {
    assertEquals(
        1, UrdfReader.read("a.urdf", "\uFEFF" + ARM).chain("base", "one").chain().joints().size());
  }

  @Test
  void fixedJointsBeforeTheFirstMovingOneShiftIt() throws UrdfException {
    String text =
        robot(
            link("world"),
            link("base"),
            "<link name=\"one\"/>",
            joint("m", "fixed", "world", "base", "<origin xyz=\"1 0 0\"/>"),
            joint("a", "continuous", "base", "one", "<origin xyz=\"0 0 1\"/>"));
    UrdfChain read = UrdfReader.read("a.urdf", text).chain("world", "one");
    assertEquals(Pose.at(1, 0, 1), read.chain().joints().get(0).origin());
    assertEquals(JointLimits.NONE, read.chain().limits(0));
    assertTrue(read.notes().get(0).startsWith("Link \"one\" has no <inertial>"));
  }

  /** The arm of the joint log, written as URDF: the same poses as from its table. */
  @Test
  void loggedArmComesBackFromUrdf() throws IOException, UrdfException {
    StringBuilder text = new StringBuilder("<robot name=\"r\"><link name=\"base_link\"/>");
    for (Map<String, String> row : Arms.table("/reference/robot/arm-kinematics.csv")) {
      text.append("<link name=\"").append(row.get("child")).append("\"/>");
      boolean fixed = "fixed".equals(row.get("type"));
      String more =
          "<origin xyz=\"%s %s %s\" rpy=\"%s %s %s\"/>"
              .formatted(
                  row.get("x_m"),
                  row.get("y_m"),
                  row.get("z_m"),
                  row.get("roll_rad"),
                  row.get("pitch_rad"),
                  row.get("yaw_rad"));
      more +=
          fixed
              ? ""
              : "<axis xyz=\"0 0 1\"/><limit lower=\"%s\" upper=\"%s\" velocity=\"%s\" effort=\"1\"/>"
                  .formatted(row.get("lower"), row.get("upper"), row.get("speed_limit"));
      text.append(
          joint(
              String.valueOf(row.get("name")),
              String.valueOf(row.get("type")),
              String.valueOf(row.get("parent")),
              String.valueOf(row.get("child")),
              more));
    }
    Chain ours = UrdfReader.read("a.urdf", text + "</robot>").chain("base_link", "flange").chain();
    Chain table = Arms.logged();
    double[] q = Arms.draw(new SplittableRandom(31), 6, 2);
    assertEquals(table.flangeAt(q), ours.flangeAt(q));
    for (int k = 0; k < 6; k++) {
      assertEquals(table.limits(k).upper(), ours.limits(k).upper());
    }
  }

  @Test
  void refusesAMissingLink() {
    assertStarts(
        "a.urdf:3: joint \"a\" names link \"on\", which the file lacks; it has \"base\"",
        fault(robot("<link name=\"base\"/>\n", joint("a", "fixed", "base", "on", ""))));
  }

  @Test
  void refusesARing() {
    String text =
        robot(
            link("a"),
            link("b"),
            joint("ab", "fixed", "a", "b", ""),
            joint("ba", "fixed", "b", "a", ""));
    assertTrue(fault(text).contains("links hang from each other in a ring: \"a\", \"b\""));
  }

  @Test
  void refusesTwoRoots() {
    assertStarts(
        "a.urdf: has 2 links that hang from no joint: \"a\", \"b\"",
        fault(robot(link("a"), link("b"))));
    assertStarts("a.urdf: has no <link>", fault(robot()));
  }

  @Test
  void refusesALinkWithTwoParents() {
    String text =
        robot(
            link("a"),
            link("b"),
            joint("x", "fixed", "a", "b", ""),
            joint("y", "fixed", "a", "b", ""));
    assertTrue(fault(text).contains("link \"b\" is the child of two joints, \"x\" and \"y\""));
  }

  @Test
  void tellsWhatToDoWithXacro() {
    String text =
        "<robot xmlns:xacro=\"http://www.ros.org/wiki/xacro\">\n<xacro:include filename=\"x\"/></robot>";
    assertStarts("a.urdf:2: <xacro:include> is xacro", fault(text));
    assertTrue(fault(text).contains("run xacro on the file"));
    assertTrue(fault(robot(link("a").replace("0.025", "${mass*2}"))).contains("${...} is xacro"));
  }

  @Test
  void refusesAnUnknownType() {
    String text = robot(link("a"), link("b"), joint("x", "hinge", "a", "b", ""));
    assertTrue(fault(text).contains("joint \"x\": type \"hinge\" is not known; URDF has revolute"));
  }

  @Test
  void refusesBrokenNumbersAndMissingAttributesAllAtOnce() {
    String text =
        robot(
            link("a").replace("value=\"2\"", "value=\"NaN\""),
            "<link/>",
            link("b").replace("0.1 0 0", "0.1 0"),
            joint("x", "revolute", "a", "b", "<limit lower=\"1e31\" upper=\"1\" effort=\"2\"/>"),
            joint("y", "revolute", "a", "c", "<mimic joint=\"x\" multiplier=\"0\"/>"));
    String message = fault(text);
    assertTrue(
        message.contains("<mass> value must be a number up to 1e30, but is \"NaN\""), message);
    assertTrue(message.contains("<link> needs name="), message);
    assertTrue(message.contains("<origin> xyz must be three numbers, but is \"0.1 0\""), message);
    assertTrue(
        message.contains("<limit> lower must be a number up to 1e30, but is \"1e31\""), message);
    assertTrue(message.contains("<limit> needs velocity="), message);
    assertTrue(message.contains("multiplier must not be 0"), message);
    assertTrue(message.contains("names link \"c\""), message);
    String poor =
        robot(
            "<link name=\"a\"><inertial><mass value=\"1\"/></inertial></link>",
            "<joint name=\"j\" type=\"fixed\"/>",
            link("a"),
            joint("j", "fixed", "a", "a", ""));
    assertTrue(fault(poor).contains("<inertial> needs <mass value=> and <inertia"));
    assertTrue(fault(poor).contains("joint \"j\" needs <parent link=> and <child link=>"));
    assertTrue(fault(poor).contains("link \"a\" comes twice"));
    assertTrue(fault(poor).contains("joint \"j\" comes twice"));
  }

  @Test
  void refusesWhatIsNoUrdf() {
    assertStarts("a.urdf:1: begins with <sdf>, but URDF", fault("<sdf/>"));
    assertStarts("a.urdf:1: is not well-formed XML: ", fault(""));
    assertStarts("a.urdf:2: is not well-formed XML: ", fault("<robot>\n<link></robot>"));
  }

  @Test
  void opensNoOtherFile(@TempDir Path folder) throws IOException {
    Path secret = folder.resolve("secret.txt");
    Files.writeString(secret, "secret");
    String text =
        "<!DOCTYPE robot [<!ENTITY x SYSTEM \""
            + secret.toUri()
            + "\">]>\n"
            + "<robot><link name=\"&x;\"/></robot>";
    assertStarts("a.urdf:1: has a <!DOCTYPE>, which is not read", fault(text));
    assertTrue(fault("<robot><link name=\"&x;\"/></robot>").contains("not well-formed"));
  }

  @Test
  void refusesBombsQuickly() {
    StringBuilder bomb = new StringBuilder("<!DOCTYPE robot [<!ENTITY e0 \"boom\">");
    for (int i = 1; i < 40; i++) {
      bomb.append("<!ENTITY e").append(i).append(" \"");
      bomb.append(("&e" + (i - 1) + ";").repeat(10)).append("\">");
    }
    bomb.append("]><robot><link name=\"&e39;\"/></robot>");
    assertTimeoutPreemptively(
        QUICK, () -> assertTrue(fault(bomb.toString()).contains("has a <!DOCTYPE>")));
    String deep = "<robot>" + "<a>".repeat(300_000) + "</a>".repeat(300_000) + "</robot>";
    assertTimeoutPreemptively(QUICK, () -> assertFalse(fault(deep).isEmpty()));
    String longest = " ".repeat(20_000_001);
    assertTimeoutPreemptively(
        QUICK, () -> assertTrue(fault(longest).contains("is longer than 20000000")));
  }

  @Test
  void refusesRootsAndTipsThatMakeNoChain() throws UrdfException {
    assertStarts("a.urdf: has no link \"foot\"; it has \"base\"", chainFault(ARM, "foot", "tool"));
    assertStarts(
        "a.urdf: link \"base\" does not hang from link \"tool\"", chainFault(ARM, "tool", "base"));
    assertStarts("a.urdf: no joint moves between", chainFault(ARM, "base", "base"));
  }

  private static String two(String type, String more) {
    return robot(link("base"), link("one"), joint("a", type, "base", "one", more));
  }

  @Test
  void refusesJointsThatAreNoneOfAChain() throws UrdfException {
    assertTrue(chainFault(two("floating", ""), "base", "one").contains("is floating"));
    assertTrue(chainFault(two("planar", ""), "base", "one").contains("is planar"));
    assertTrue(chainFault(two("revolute", ""), "base", "one").contains("needs <limit"));
    assertTrue(
        chainFault(two("revolute", LIMIT + "<axis xyz=\"0 0 0\"/>"), "base", "one")
            .contains("axis must not be 0 0 0"));
    assertTrue(
        chainFault(two("revolute", LIMIT.replace("-1", "5")), "base", "one")
            .contains("lower 5.0 is above upper 2.0"));
    assertTrue(
        chainFault(two("revolute", LIMIT.replace("\"3\"", "\"0\"")), "base", "one")
            .contains("velocity must be above 0"));
    assertTrue(
        chainFault(two("continuous", LIMIT.replace("\"40\"", "\"0\"")), "base", "one")
            .contains("effort must be above 0"));
    assertTrue(
        chainFault(two("revolute", LIMIT + "<mimic joint=\"z\"/>"), "base", "one")
            .contains("mimics \"z\", which is no joint"));
  }

  @Test
  void refusesBodiesThatCannotBe() throws UrdfException {
    String text = two("revolute", LIMIT);
    assertTrue(
        chainFault(text.replace("value=\"2\"", "value=\"-2\""), "base", "one")
            .contains("link \"one\" mass must not be negative"));
    assertTrue(
        chainFault(text.replace("value=\"2\"", "value=\"0\""), "base", "one")
            .contains("has an inertia without a mass"));
    assertTrue(
        chainFault(text.replace("0.025", "0.25"), "base", "one")
            .contains("breaks the triangle rule"));
  }

  /** Torn files: every prefix is refused or read, never a crash of another kind. */
  @Test
  void prefixesOfAFileAreRefused() {
    int refused = 0;
    for (int end = 0; end < ARM.length() - 1; end += 7) {
      String torn = ARM.substring(0, end);
      assertThrows(UrdfException.class, () -> UrdfReader.read("a.urdf", torn));
      refused++;
    }
    assertTrue(refused > 100);
  }

  @Test
  void faultsAreSortedByLine() {
    UrdfException e =
        assertThrows(
            UrdfException.class,
            () ->
                UrdfReader.read(
                    "a.urdf",
                    robot(
                        joint("x", "fixed", "p", "q", "\n\n"),
                        "<link/>\n",
                        joint("y", "fixed", "r", "s", ""))));
    int[] lines = e.faults().stream().mapToInt(UrdfFault::line).toArray();
    int[] sorted = lines.clone();
    Arrays.sort(sorted);
    assertArrayEquals(sorted, lines);
    assertEquals(5, lines.length);
  }
}
