package io.github.holdpath.sim.scene.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.RecordedMotion;
import io.github.holdpath.sim.motion.Recording;
import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.SceneException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordingReaderTest {
  private static final RecordingColumns QUATERNION =
      new RecordingColumns("t", List.of("x", "y", "z"), List.of("qw", "qx", "qy", "qz"));
  private static final RecordingColumns ANGLES =
      new RecordingColumns("t", List.of("x", "y", "z"), List.of("roll", "pitch", "yaw"));
  private static final RecordingUnits SI = new RecordingUnits(1, 1, 1);
  private static final String HEADER = "t,x,y,z,qw,qx,qy,qz";

  /** Numbers are printed to 12 digits. */
  private static final double PRINTED = 1e-11;

  @TempDir Path folder;

  private RecordingSpec spec() {
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

  private RecordingSpec text(char separator, boolean decimalComma) {
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

  private RecordingSpec frame(RecordingFrame frame, Pose flangeToGrip) {
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

  private RecordingSpec columns(RecordingColumns columns, RecordingUnits units) {
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

  private RecordingSpec held(double from, double to, double cutoff) {
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

  private RecordingSpec named(String file) {
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

  private static double angle(int i) {
    return 0.01 * i;
  }

  private static double x(int i) {
    return 0.3 * Math.sin(0.02 * i);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.12f", value);
  }

  /** A row at 500 Hz that begins at 5 s, with the given factors on time, length and angle. */
  private static String row(int i, double time, double length) {
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

  private static List<String> table(int rows) {
    List<String> lines = new ArrayList<>();
    lines.add(HEADER);
    for (int i = 0; i < rows; i++) {
      lines.add(row(i, 1, 1));
    }
    return lines;
  }

  private static void replace(List<String> lines, int line, int field, String text) {
    String[] fields = lines.get(line - 1).split(",", -1);
    fields[field] = text;
    lines.set(line - 1, String.join(",", fields));
  }

  private Recording read(RecordingSpec spec, List<String> lines)
      throws IOException, SceneException {
    Files.writeString(folder.resolve("log.csv"), String.join("\n", lines));
    return RecordingReader.read(spec, RecordingReaderTest::scene);
  }

  private static Fault scene(String pointer, String message) {
    return new Fault("scene.json", 12, 3, pointer, message);
  }

  private List<Fault> faults(RecordingSpec spec, List<String> lines) {
    return assertThrows(SceneException.class, () -> read(spec, lines)).faults();
  }

  private void assertFault(List<Fault> faults, int line, String... words) {
    assertEquals(1, faults.size(), faults.toString());
    assertEquals("log.csv", faults.get(0).file());
    assertEquals(line, faults.get(0).line());
    for (String word : words) {
      assertTrue(faults.get(0).message().contains(word), faults.get(0).message());
    }
  }

  private void assertSceneFault(List<Fault> faults, String pointer, String word) {
    assertEquals(1, faults.size(), faults.toString());
    assertEquals("scene.json", faults.get(0).file());
    assertEquals(pointer, faults.get(0).pointer());
    assertTrue(faults.get(0).message().contains(word), faults.get(0).message());
  }

  private static void assertSame(Recording expected, Recording actual) {
    assertEquals(expected.times().size(), actual.times().size());
    for (int i = 0; i < expected.times().size(); i++) {
      assertEquals(expected.times().get(i), actual.times().get(i), PRINTED);
      Pose a = expected.poses().get(i);
      Pose b = actual.poses().get(i);
      assertEquals(0, a.position().minus(b.position()).norm(), PRINTED);
      assertEquals(0, a.rotation().angleTo(b.rotation()), PRINTED);
    }
  }

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
    assertSame(plain, RecordingReader.read(spec(), RecordingReaderTest::scene));
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

  @Test
  void aMissingColumnNamesTheNearest() {
    List<String> lines = table(20);
    lines.set(0, "time,x,y,z,qw,qx,q_y,qz");
    List<Fault> faults = faults(spec(), lines);
    assertEquals(2, faults.size());
    assertEquals(1, faults.get(0).line());
    assertTrue(faults.get(1).message().contains("\"qy\""), faults.toString());
    assertTrue(faults.get(1).message().contains("nearest is \"q_y\""), faults.toString());
  }

  @Test
  void aWrongSeparatorIsNamed() {
    assertFault(faults(text(';', false), table(20)), 1, "no semicolon", "is the separator a comma");
  }

  @Test
  void aHeaderOfNumbersIsNamed() {
    List<Fault> faults = faults(spec(), table(20).subList(1, 20));
    assertTrue(faults.get(0).message().contains("must name the columns"), faults.toString());
  }

  @Test
  void aDoubledColumnIsNamed() {
    List<String> lines = table(20);
    lines.set(0, "t,x,x,z,qw,qx,qy,qz,y");
    assertTrue(faults(spec(), lines).toString().contains("\"x\" is there twice"));
  }

  @Test
  void aDecimalCommaIsRecognised() {
    List<String> lines = table(20);
    replace(lines, 5, 1, "\"0;5\"");
    assertFault(faults(spec(), lines), 5, "x is \"0;5\", not a number");
    List<String> semicolons = table(20).stream().map(l -> l.replace(',', ';')).toList();
    List<String> mixed = new ArrayList<>(semicolons);
    mixed.set(4, mixed.get(4).replaceFirst(";0\\.", ";0,"));
    assertFault(faults(text(';', false), mixed), 5, "looks like a decimal comma");
    assertTrue(faults(text(';', true), semicolons).toString().contains("with a decimal point"));
  }

  @Test
  void aNumberThatIsNotFiniteIsRefused() {
    List<String> lines = table(20);
    replace(lines, 3, 3, "NaN");
    replace(lines, 4, 3, "-inf");
    replace(lines, 5, 3, "1e999");
    replace(lines, 6, 3, "");
    List<Fault> faults = faults(spec(), lines);
    assertEquals(List.of(3, 4, 5, 6), faults.stream().map(Fault::line).toList());
    assertTrue(faults.get(0).message().contains("not a finite number"));
    assertTrue(faults.get(2).message().contains("too large"));
    assertTrue(faults.get(3).message().contains("is empty"));
  }

  @Test
  void tooFewAndTooManyFieldsAreRefused() {
    List<String> lines = table(20);
    lines.set(8, "5.014,1,2");
    lines.set(9, lines.get(9) + ",7");
    List<Fault> faults = faults(spec(), lines);
    assertEquals(List.of(9, 10), faults.stream().map(Fault::line).toList());
    assertTrue(faults.get(0).message().contains("3 fields, but the first line names 8"));
  }

  @Test
  void timesThatRepeatOrFallNameBothLines() {
    List<String> lines = table(20);
    replace(lines, 7, 0, "5.008");
    assertFault(faults(spec(), lines), 7, "time 5.008 is not after 5.008", "in line 6");
  }

  @Test
  void aGapIsRefusedAndJitterIsNot() throws Exception {
    List<String> lines = table(60);
    lines.subList(20, 30).clear();
    assertEquals(50, read(spec(), lines).times().size());
    lines.subList(20, 25).clear();
    assertFault(faults(spec(), lines), 21, "gap of 0.032 s since line 20", "0.025 s");
  }

  @Test
  void aQuaternionFarFromUnitLengthIsRefused() {
    List<String> lines = table(20);
    replace(lines, 11, 4, "0.9");
    assertFault(faults(spec(), lines), 11, "length 0.9");
  }

  @Test
  void aJumpOfRotationIsRefused() {
    List<String> lines = table(20);
    replace(lines, 21, 4, "0");
    replace(lines, 21, 7, "1");
    assertFault(faults(spec(), lines), 21, "turns by 169", "since line 20");
  }

  @Test
  void turningTooFastForTheCutoffIsRefused() {
    List<String> lines = new ArrayList<>();
    lines.add(HEADER);
    for (int i = 0; i < 400; i++) {
      double half = 2 * Math.sin(0.25 * i);
      lines.add(
          String.join(
              ",",
              number(0.002 * i),
              "0,0,0",
              number(Math.cos(half)),
              "0,0",
              number(Math.sin(half))));
    }
    List<Fault> faults = faults(held(0, 0.5, 4), lines);
    assertTrue(faults.get(0).message().contains("raise the cutoff"), faults.toString());
  }

  @Test
  void millimetresTakenForMetresAreSuspected() {
    List<String> lines = new ArrayList<>();
    lines.add(HEADER);
    for (int i = 0; i < 20; i++) {
      lines.add(row(i, 1, 1000));
    }
    List<Fault> faults = faults(spec(), lines);
    assertTrue(faults.get(0).message().contains("mm taken for m"), faults.toString());
  }

  @Test
  void fewerThanEightRowsAreRefused() {
    assertFault(faults(spec(), table(7)), 0, "7 rows", "at least 8");
    assertFault(faults(spec(), table(0)), 0, "0 rows");
  }

  @Test
  void emptyAndBlankFilesAreRefused() {
    assertFault(faults(spec(), List.of()), 0, "empty");
    assertFault(faults(spec(), List.of("", "")), 0, "no line of text");
  }

  @Test
  void onlyTextInUtf8IsRead() throws IOException {
    Files.write(folder.resolve("log.csv"), new byte[] {(byte) 0xff, (byte) 0xfe, 't', 0, ',', 0});
    assertFault(readFaults(), 0, "UTF-8");
    Files.write(folder.resolve("log.csv"), new byte[] {'t', ',', 0, 1, 2, 0, '\n', 0});
    assertFault(readFaults(), 1, "UTF-8");
    List<String> lines = table(9);
    replace(lines, 4, 2, "\u00b5");
    Files.write(
        folder.resolve("log.csv"), String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1));
    assertTrue(readFaults().get(0).message().contains("UTF-8"));
  }

  private List<Fault> readFaults() {
    return assertThrows(
            SceneException.class, () -> RecordingReader.read(spec(), RecordingReaderTest::scene))
        .faults();
  }

  @Test
  void aQuoteThatDoesNotEndIsRefused() {
    List<String> lines = table(20);
    replace(lines, 6, 3, "\"0.2");
    List<Fault> faults = faults(spec(), lines);
    assertEquals(1, faults.size());
    assertTrue(faults.get(0).message().contains("quoted field"), faults.toString());
  }

  @Test
  void filesThatAreNotThereAreFaultsOfTheScene() throws IOException {
    assertSceneFault(faults(named("none.csv"), table(9)), "route/recording/file", "no file");
    assertSceneFault(faults(named(" "), table(9)), "route/recording/file", "is empty");
    assertSceneFault(faults(named("a\0b"), table(9)), "route/recording/file", "cannot be the name");
    Files.createDirectory(folder.resolve("sub"));
    assertSceneFault(faults(named("sub"), table(9)), "route/recording/file", "folder");
  }

  @Test
  void aCutoffAtHalfTheSampleRateIsRefusedWithAGoodOne() {
    assertSceneFault(faults(held(0, 0.1, 250), table(100)), "route/recording/cutoff", "\"100 Hz\"");
    assertSceneFault(faults(held(0, 0.1, -1), table(100)), "route/recording/cutoff", "above 0");
  }

  @Test
  void aHeldTimeOutsideTheRecordingIsRefused() {
    assertSceneFault(
        faults(held(0, 0.3, 40), table(100)), "route/recording/held/to", "from 0 to 0.198 s");
    assertSceneFault(
        faults(held(-0.1, 0.1, 40), table(100)), "route/recording/held/from", "first row");
    assertSceneFault(faults(held(0.1, 0.1, 40), table(100)), "route/recording/held", "before");
  }

  @Test
  void aDecimalCommaBetweenCommasIsRefused() {
    assertSceneFault(
        faults(text(',', true), table(9)), "route/recording/decimalComma", "another separator");
    assertSceneFault(faults(text('|', false), table(9)), "route/recording/separator", "tab");
  }

  @Test
  void manyFaultsAreCounted() {
    List<String> lines = table(100);
    for (int line = 100; line > 50; line--) {
      replace(lines, line, 1, "oops");
    }
    List<Fault> faults = faults(spec(), lines);
    assertEquals(21, faults.size());
    assertEquals(51, faults.get(0).line());
    assertEquals("and 30 more faults", faults.get(20).message());
  }

  @Test
  void faultsOfRowsAndOfTheirOrderComeTogetherByLine() {
    List<String> lines = table(20);
    replace(lines, 15, 1, "oops");
    replace(lines, 7, 0, "5");
    assertEquals(List.of(7, 15), faults(spec(), lines).stream().map(Fault::line).toList());
  }

  @Test
  void numbersOutOfAllProportionAreFaultsToo() {
    List<String> lines = table(20);
    replace(lines, 4, 1, "1e300");
    replace(lines, 5, 4, "1e308");
    replace(lines, 6, 0, "1e308");
    assertEquals(List.of(4, 5), faults(spec(), lines).stream().map(Fault::line).limit(2).toList());
  }

  @Test
  void aSpecRefusesWhatIsNotFinite() {
    assertThrows(IllegalArgumentException.class, () -> held(0, Double.NaN, 40));
    assertThrows(IllegalArgumentException.class, () -> held(0, 1, Double.POSITIVE_INFINITY));
  }
}
