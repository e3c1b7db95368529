package io.github.holdpath.sim.scene.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.robot.Robot;
import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.RobotCell;
import io.github.holdpath.sim.scene.Scene;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Joints of a scara that swing slowly, written in degrees and millimetres. */
class JointRecordingTest {
  private static final int ROWS = 1001;

  /** A fit at 40 Hz takes less than 1e-8 of a swing of 1 Hz, and the rows have 1e-6 deg. */
  private static final double FITTED = 1e-6;

  @TempDir Path folder;

  private static double[] joints(double t) {
    double s = Math.sin(2 * Math.PI * t);
    double c = 1 - Math.cos(2 * Math.PI * t);
    return new double[] {0.4 * s, 1 + 0.3 * c, -0.1 - 0.05 * c, 0.5 * s};
  }

  private Scene scene(String extra, double wrapAt) {
    return SceneFiles.read(file(extra, wrapAt), Map.of()).scene();
  }

  private Path file(String axes, double wrapAt) {
    StringBuilder rows = new StringBuilder("t;A1;A2;A3;A4\n");
    for (int i = 0; i < ROWS; i++) {
      double[] q = joints(0.002 * i);
      double turned = 0.002 * i > wrapAt ? 360 : 0;
      rows.append(
          String.format(
              Locale.ROOT,
              "%.3f;%.6f;%.6f;%.6f;%.6f%n",
              0.002 * i,
              Math.toDegrees(q[0]),
              Math.toDegrees(q[1]),
              1000 * q[2],
              Math.toDegrees(q[3]) - turned));
    }
    SceneFiles.write(folder.resolve("log.csv"), rows.toString());
    String text =
        SceneFiles.text(SceneFiles.GOOD.resolve("jaws.json"))
            .replaceAll("(?s)\"law\".*?\"route\": \\[.*?\\n  \\]", "ROUTE")
            .replaceAll("(?s)\\s*\"robot\": \\{[^}]*\\},", "");
    assertTrue(text.contains("ROUTE"), text);
    String route =
        "\"robot\": { \"kind\": \"scara\", \"upperArm\": \"325 mm\", \"foreArm\": \"275 mm\", \"base\":"
            + " { \"at\": \"0 0 0.5 m\" }"
            + axes
            + " }, \"route\": { \"recording\": { \"file\": \"log.csv\", \"frame\": \"joints\","
            + " \"separator\": \";\", \"columns\": { \"time\": \"t\", \"joints\": [\"A1\", \"A2\","
            + " \"A3\", \"A4\"] }, \"units\": { \"time\": \"s\", \"length\": \"mm\", \"angle\":"
            + " \"deg\" } } }";
    return SceneFiles.write(folder.resolve("scene.json"), text.replace("ROUTE", route));
  }

  @Test
  void movesTheGripAsTheRobotMovesIt() {
    Scene scene = scene("", 9);
    RobotCell cell = scene.robot().orElseThrow();
    Robot robot = cell.robot();
    Motion motion = scene.moved();
    MotionPiece piece = motion.pieces().get(0);
    double[] state = new double[MotionState.SIZE];
    double[] before = new double[MotionState.SIZE];
    double[] after = new double[MotionState.SIZE];
    double h = 1e-4;
    for (double t = 0.3; t < 1.7; t += 0.1) {
      piece.state(t, state);
      Pose wanted = robot.flangeAt(joints(t)).orElseThrow().times(cell.grip());
      Pose is = MotionState.of(state).pose();
      assertEquals(0, wanted.position().minus(is.position()).norm(), FITTED);
      assertEquals(0, wanted.rotation().angleTo(is.rotation()), FITTED);
      piece.state(t - h, before);
      piece.state(t + h, after);
      for (int k = 0; k < 3; k++) {
        double v = (after[k] - before[k]) / (2 * h);
        double a = (after[MotionState.VELOCITY + k] - before[MotionState.VELOCITY + k]) / (2 * h);
        // Central differences err by h^2/6 times the next derivatives, about 1e3 here.
        assertEquals(v, state[MotionState.VELOCITY + k], 1e-5);
        assertEquals(a, state[MotionState.ACCELERATION + k], 1e-5);
      }
    }
  }

  @Test
  void tracksTheRecordedJointsAndNotAnotherBranch() {
    RobotCell cell = scene("", 9).robot().orElseThrow();
    double[] worst = {0};
    cell.track()
        .visit(
            (piece, time, q, qd, qdd) -> {
              double[] wanted = joints(time);
              for (int k = 0; k < 4; k++) {
                boolean inside = time > 0.1 && time < 1.9;
                worst[0] = Math.max(worst[0], inside ? Math.abs(q[k] - wanted[k]) : 0);
              }
            });
    assertTrue(worst[0] < FITTED, "off by " + worst[0]);
  }

  @Test
  void aJointPastItsStopIsNoFaultOfARecording() {
    RobotCell cell = scene(", \"elbow\": { \"range\": \"0 85 deg\" }", 9).robot().orElseThrow();
    assertEquals(1, cell.track().past().size());
    double beyond = 1.6 - Math.toRadians(85);
    assertEquals(beyond, cell.track().past().get(0).beyond(), FITTED);
    assertEquals(0, cell.track().slowings().size());
  }

  @Test
  void refusesAnAngleThatBeginsAnew() {
    List<Fault> faults = SceneFiles.faults(file("", 1), Map.of());
    assertEquals(1, faults.size(), faults.toString());
    assertTrue(faults.get(0).message().contains("joint 4 goes by"), faults.toString());
    assertEquals(503, faults.get(0).line(), faults.toString());
  }
}
