package io.github.holdpath.sim.scene.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.recorded.RecordedMotion;
import io.github.holdpath.sim.motion.recorded.Recording;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a table that can be used is read as. */
class RecordingReaderTest extends RecordingTables {
  @Test
  void timesCountFromTheFirstRowAndAllOfItIsHeld() throws Exception {
    Recording r = read(spec(), table(100));
    assertEquals(100, r.times().size());
    assertEquals(0, r.times().get(0));
    assertEquals(0.198, r.times().get(99), PRINTED);
    assertEquals(0, r.heldFrom());
    assertEquals(0.198, r.heldTo(), PRINTED);
    assertEquals(40, r.cutoff());
    assertEquals(x(7), r.poses().get(7).position().x(), PRINTED);
    assertEquals(0, r.poses().get(7).rotation().angleTo(Quaternion.ofRpy(0, 0, angle(7))), PRINTED);
  }

  @Test
  void heldAndCutoffAreTaken() throws Exception {
    Recording r = read(held(0.05, 0.15, 30), table(100));
    assertEquals(0.05, r.heldFrom());
    assertEquals(0.15, r.heldTo());
    assertEquals(30, r.cutoff());
  }

  @Test
  void flangePosesAreCarriedToTheGrip() throws Exception {
    Pose flangeToGrip = new Pose(new Vec3(0.1, 0, 0.2), Quaternion.ofRpy(0, 0.5, 0));
    Recording plain = read(spec(), table(20));
    Recording r = read(frame(RecordingFrame.FLANGE, flangeToGrip), table(20));
    Pose expected = plain.poses().get(9).times(flangeToGrip);
    assertEquals(0, expected.position().minus(r.poses().get(9).position()).norm(), PRINTED);
    assertEquals(0, expected.rotation().angleTo(r.poses().get(9).rotation()), PRINTED);
  }

  @Test
  void theFlangeToGripIsLeftOutForGripPoses() throws Exception {
    assertSame(
        read(spec(), table(20)), read(frame(RecordingFrame.GRIP, Pose.at(1, 2, 3)), table(20)));
  }

  @Test
  void decimalCommasBetweenSemicolonsAndTabsReadTheSame() throws Exception {
    Recording plain = read(spec(), table(50));
    List<String> commas =
        table(50).stream().map(l -> l.replace(',', ';').replace('.', ',')).toList();
    List<String> tabs = table(50).stream().map(l -> l.replace(',', '\t')).toList();
    assertSame(plain, read(text(';', true), commas));
    assertSame(plain, read(text('\t', false), tabs));
  }

  @Test
  void otherUnitsReadTheSame() throws Exception {
    List<String> lines = new ArrayList<>();
    lines.add("yaw,t,remark,x,y,z,roll,pitch");
    for (int i = 0; i < 50; i++) {
      lines.add(
          String.join(
              ",",
              number(Math.toDegrees(angle(i))),
              number(5000 + 2 * i),
              "\"a, b\"",
              number(1000 * x(i)),
              number(-100),
              number(200),
              "0",
              "0"));
    }
    RecordingUnits units =
        new RecordingUnits(
            RecordingUnits.TIME.getOrDefault("ms", 1.0),
            RecordingUnits.LENGTH.getOrDefault("mm", 1.0),
            RecordingUnits.ANGLE.getOrDefault("deg", 1.0));
    assertSame(read(spec(), table(50)), read(columns(ANGLES, units), lines));
  }

  @Test
  void markOfByteOrderBlankLinesAndWindowsLineEndsAreNoMatter() throws Exception {
    Recording plain = read(spec(), table(30));
    Files.writeString(
        folder.resolve("log.csv"), "\uFEFF" + String.join("\r\n\r\n", table(30)) + "\r\n,,\r\n");
    assertSame(plain, RecordingReader.read(spec(), beside(), RecordingReaderTest::scene));
  }

  @Test
  void quaternionsAreScaledAndMayChangeSign() throws Exception {
    List<String> lines = table(50);
    replace(lines, 30, 4, number(-1.0005 * Math.cos(angle(28) / 2)));
    replace(lines, 30, 7, number(-1.0005 * Math.sin(angle(28) / 2)));
    assertSame(read(spec(), table(50)), read(spec(), lines));
  }

  @Test
  void whatIsReadCanBeFitted() throws Exception {
    RecordedMotion motion = RecordedMotion.fit(read(spec(), table(200)));
    assertEquals(0.398, motion.duration(), PRINTED);
  }
}
