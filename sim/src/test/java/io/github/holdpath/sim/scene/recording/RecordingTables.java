package io.github.holdpath.sim.scene.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.recorded.Recording;
import io.github.holdpath.sim.scene.Beside;
import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.SceneException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.io.TempDir;

/** Tables of a known motion, whole or spoilt, and how they are read. */
abstract class RecordingTables {
  static final RecordingColumns QUATERNION =
      new RecordingColumns("t", List.of("x", "y", "z"), List.of("qw", "qx", "qy", "qz"));
  static final RecordingColumns ANGLES =
      new RecordingColumns("t", List.of("x", "y", "z"), List.of("roll", "pitch", "yaw"));
  static final RecordingUnits SI = new RecordingUnits(1, 1, 1);
  static final String HEADER = "t,x,y,z,qw,qx,qy,qz";

  /** Numbers are printed to 12 digits. */
  static final double PRINTED = 1e-11;

  @TempDir Path folder;

  RecordingSpec spec() {
    return new RecordingSpec(
        folder,
        "log.csv",
        RecordingFrame.GRIP,
        Pose.IDENTITY,
        ',',
        false,
        QUATERNION,
        SI,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        RecordingSpec.DEFAULT_CUTOFF);
  }

  RecordingSpec text(char separator, boolean decimalComma) {
    RecordingSpec s = spec();
    return new RecordingSpec(
        s.folder(),
        s.file(),
        s.frame(),
        s.flangeToGrip(),
        separator,
        decimalComma,
        s.columns(),
        s.units(),
        s.heldFrom(),
        s.heldTo(),
        s.cutoff());
  }

  RecordingSpec frame(RecordingFrame frame, Pose flangeToGrip) {
    return new RecordingSpec(
        folder,
        "log.csv",
        frame,
        flangeToGrip,
        ',',
        false,
        QUATERNION,
        SI,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        40);
  }

  RecordingSpec columns(RecordingColumns columns, RecordingUnits units) {
    return new RecordingSpec(
        folder,
        "log.csv",
        RecordingFrame.GRIP,
        Pose.IDENTITY,
        ',',
        false,
        columns,
        units,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        40);
  }

  RecordingSpec held(double from, double to, double cutoff) {
    return new RecordingSpec(
        folder,
        "log.csv",
        RecordingFrame.GRIP,
        Pose.IDENTITY,
        ',',
        false,
        QUATERNION,
        SI,
        OptionalDouble.of(from),
        OptionalDouble.of(to),
        cutoff);
  }

  RecordingSpec named(String file) {
    return new RecordingSpec(
        folder,
        file,
        RecordingFrame.GRIP,
        Pose.IDENTITY,
        ',',
        false,
        QUATERNION,
        SI,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        40);
  }

  static double angle(int i) {
    return 0.01 * i;
  }

  static double x(int i) {
    return 0.3 * Math.sin(0.02 * i);
  }

  static String number(double value) {
    return String.format(Locale.ROOT, "%.12f", value);
  }

  /** A row at 500 Hz that begins at 5 s, with the given factors on time, length and angle. */
  static String row(int i, double time, double length) {
    return String.join(
        ",",
        number((5 + 0.002 * i) * time),
        number(x(i) * length),
        number(-0.1 * length),
        number(0.2 * length),
        number(Math.cos(angle(i) / 2)),
        "0",
        "0",
        number(Math.sin(angle(i) / 2)));
  }

  static List<String> table(int rows) {
    List<String> lines = new ArrayList<>();
    lines.add(HEADER);
    for (int i = 0; i < rows; i++) {
      lines.add(row(i, 1, 1));
    }
    return lines;
  }

  static void replace(List<String> lines, int line, int field, String text) {
    String[] fields = lines.get(line - 1).split(",", -1);
    fields[field] = text;
    lines.set(line - 1, String.join(",", fields));
  }

  Recording read(RecordingSpec spec, List<String> lines) throws IOException, SceneException {
    Files.writeString(folder.resolve("log.csv"), String.join("\n", lines));
    return RecordingReader.read(spec, beside(), RecordingReaderTest::scene);
  }

  /** Keeps nothing from one reading to the next. */
  Beside beside() {
    return Beside.file(folder.resolve("scene.json"));
  }

  static Fault scene(String pointer, String message) {
    return new Fault("scene.json", 12, 3, pointer, message);
  }

  List<Fault> faults(RecordingSpec spec, List<String> lines) {
    return assertThrows(SceneException.class, () -> read(spec, lines)).faults();
  }

  void assertFault(List<Fault> faults, int line, String... words) {
    assertEquals(1, faults.size(), faults.toString());
    assertEquals("log.csv", faults.get(0).file());
    assertEquals(line, faults.get(0).line());
    for (String word : words) {
      assertTrue(faults.get(0).message().contains(word), faults.get(0).message());
    }
  }

  void assertSceneFault(List<Fault> faults, String pointer, String word) {
    assertEquals(1, faults.size(), faults.toString());
    assertEquals("scene.json", faults.get(0).file());
    assertEquals(pointer, faults.get(0).pointer());
    assertTrue(faults.get(0).message().contains(word), faults.get(0).message());
  }

  static void assertSame(Recording expected, Recording actual) {
    assertEquals(expected.times().size(), actual.times().size());
    for (int i = 0; i < expected.times().size(); i++) {
      assertEquals(expected.times().get(i), actual.times().get(i), PRINTED);
      Pose a = expected.poses().get(i);
      Pose b = actual.poses().get(i);
      assertEquals(0, a.position().minus(b.position()).norm(), PRINTED);
      assertEquals(0, a.rotation().angleTo(b.rotation()), PRINTED);
    }
  }
}
