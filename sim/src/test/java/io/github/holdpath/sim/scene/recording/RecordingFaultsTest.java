package io.github.holdpath.sim.scene.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.SceneException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said of a table that cannot be used. */
class RecordingFaultsTest extends RecordingTables {
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
            SceneException.class,
            () -> RecordingReader.read(spec(), beside(), RecordingReaderTest::scene))
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
