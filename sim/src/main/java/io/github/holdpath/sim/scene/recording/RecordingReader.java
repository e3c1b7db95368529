package io.github.holdpath.sim.scene.recording;

import static io.github.holdpath.sim.scene.recording.RecordingText.plain;
import static io.github.holdpath.sim.scene.recording.RecordingText.text;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.recorded.RecordedJoints;
import io.github.holdpath.sim.motion.recorded.RecordedMotion;
import io.github.holdpath.sim.motion.recorded.Recording;
import io.github.holdpath.sim.scene.Beside;
import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.SceneException;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a recording from a table of text: RFC 4180 with a comma, semicolon or tab between fields,
 * UTF-8, the first line naming the columns. Every fault of the file is found, by line.
 *
 * <p>Times may be uneven and begin anywhere: the first row becomes 0 s, and {@code held} counts
 * from there. Lines without text are passed over, further columns too.
 */
final class RecordingReader {
  /** Largest file that is read, bytes. */
  static final long LARGEST_FILE = 200L << 20;

  /** Most rows that are read. */
  static final int MOST_ROWS = 500_000;

  /** Room for the rounding of times, relative. */
  private static final double ROUNDING = 1e-6;

  private static final String FILE = "route/recording/file";
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  /** Gives a fault of the scene file its place. */
  @FunctionalInterface
  interface Place {
    /**
     * A fault of the scene.
     *
     * @param pointer to the field at fault, as {@code route/recording/cutoff}
     * @param message what is wrong and what would be right
     */
    Fault fault(String pointer, String message);
  }

  private final RecordingSpec spec;
  private final Beside beside;
  private final Place place;
  private final RecordingFaults faults;

  private RecordingReader(RecordingSpec spec, Beside beside, Place place) {
    this.spec = spec;
    this.beside = beside;
    this.place = place;
    this.faults = new RecordingFaults(spec.file());
  }

  /**
   * Reads the recording that a scene names.
   *
   * @param spec what the scene says about it
   * @param beside keeps the rows for the next time
   * @param place gives faults of the scene's own fields (file, cut-off, held) their place
   * @throws SceneException with every fault found, the first twenty of the table by line
   */
  static Recording read(RecordingSpec spec, Beside beside, Place place) throws SceneException {
    return new RecordingReader(spec, beside, place).read();
  }

  /** What the rows depend on. */
  private record Key(RecordingSpec spec, Beside.Stamp stamp) {}

  private Recording read() throws SceneException {
    checkSpec();
    Path path = path();
    faults.throwIfAny();
    RecordingRows rows = keptRows(path);
    new RecordingChecks(rows, spec.cutoff(), faults).run();
    faults.throwIfAny();
    return recording(rows);
  }

  private RecordingRows keptRows(Path path) throws SceneException {
    Optional<Key> key = beside.stamp(spec.file()).map(s -> new Key(spec.ofRows(), s));
    Optional<RecordingRows> kept = key.flatMap(k -> beside.kept(RecordingRows.class, k));
    if (kept.isPresent()) {
      return kept.get();
    }
    RecordingRows rows = rows(path);
    if (faults.isEmpty()) {
      key.ifPresent(k -> beside.keep(RecordingRows.class, k, rows));
    }
    return rows;
  }

  private void checkSpec() {
    if (!(spec.cutoff() > 0)) {
      scene("route/recording/cutoff", text("%s Hz must be above 0", plain(spec.cutoff())));
    }
    if (",;\t".indexOf(spec.separator()) < 0) {
      scene("route/recording/separator", "must be \",\", \";\" or a tab");
    }
    if (spec.decimalComma() && spec.separator() == ',') {
      scene(
          "route/recording/decimalComma",
          "a decimal comma needs another separator than the comma, as \";\"");
    }
  }

  private void scene(String pointer, String message) {
    faults.add(place.fault(pointer, message));
  }

  private Path path() throws SceneException {
    Path path = resolve();
    if (!Files.exists(path)) {
      scene(FILE, "no file \"" + named() + "\" in the scene's folder");
    } else if (!Files.isRegularFile(path)) {
      scene(FILE, "\"" + named() + "\" is not a file but a folder or a device");
    } else if (!Files.isReadable(path)) {
      scene(FILE, "\"" + named() + "\" may not be read; check its permissions");
    } else {
      checkSize(path);
    }
    return path;
  }

  private String named() {
    return RecordingText.quote(spec.file());
  }

  private Path resolve() throws SceneException {
    try {
      if (!spec.file().isBlank()) {
        return spec.folder().resolve(spec.file());
      }
      scene(FILE, "is empty; name the table, as \"log.csv\"");
    } catch (InvalidPathException e) {
      scene(FILE, "\"" + named() + "\" cannot be the name of a file");
    }
    faults.throwIfAny();
    throw new IllegalStateException("a fault was noted and not thrown");
  }

  private void checkSize(Path path) {
    try {
      long size = Files.size(path);
      if (size > LARGEST_FILE) {
        scene(FILE, text("\"%s\" has %d MB; at most 200 MB are read", named(), size >> 20));
      } else if (size == 0) {
        faults.whole("the file is empty; it needs a line of column names and rows");
      }
    } catch (IOException e) {
      scene(FILE, "\"" + named() + "\" cannot be read");
    }
  }

  private RecordingRows rows(Path path) throws SceneException {
    try (Reader reader = open(path);
        CSVParser parser =
            CSVParser.builder().setReader(withoutMark(reader)).setFormat(format()).get()) {
      return rows(parser);
    } catch (CharacterCodingException e) {
      faults.whole(notText());
    } catch (IOException e) {
      faults.whole("the file cannot be read to its end: " + e.getMessage());
    }
    faults.throwIfAny();
    throw new IllegalStateException("a fault was noted and not thrown");
  }

  private static String notText() {
    return "not a text in UTF-8; save the table as CSV in UTF-8 (ASCII is fine)";
  }

  private static Reader open(Path path) throws IOException {
    return new BufferedReader(
        new InputStreamReader(
            Files.newInputStream(path),
            StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)));
  }

  private static Reader withoutMark(Reader reader) throws IOException {
    reader.mark(1);
    if (reader.read() != BYTE_ORDER_MARK) {
      reader.reset();
    }
    return reader;
  }

  private CSVFormat format() {
    return CSVFormat.RFC4180
        .builder()
        .setDelimiter(spec.separator())
        .setIgnoreEmptyLines(true)
        .get();
  }

  private RecordingRows rows(CSVParser parser) throws SceneException, CharacterCodingException {
    try {
      Iterator<CSVRecord> records = parser.iterator();
      RecordingRows rows = header(parser, records);
      while (records.hasNext()) {
        List<String> fields = records.next().toList();
        if (fields.stream().allMatch(String::isBlank)) {
          continue;
        }
        if (rows.seen() == MOST_ROWS) {
          faults.whole(text("more than %d rows; cut or thin the recording", MOST_ROWS));
          break;
        }
        rows.add(fields, parser.getCurrentLineNumber());
      }
      return rows;
    } catch (UncheckedIOException e) {
      if (e.getCause() instanceof CharacterCodingException) {
        faults.at(parser.getCurrentLineNumber() + 1, notText());
      } else {
        faults.at(
            Math.max(1, parser.getCurrentLineNumber()),
            "a quoted field does not end, or text follows its closing quote");
      }
      faults.throwIfAny();
      throw e;
    }
  }

  private RecordingRows header(CSVParser parser, Iterator<CSVRecord> records)
      throws SceneException {
    if (!records.hasNext()) {
      faults.whole("the file holds no line of text; it needs column names and rows");
      faults.throwIfAny();
    }
    List<String> header = new ArrayList<>();
    records.next().forEach(name -> header.add(name.strip()));
    long line = parser.getCurrentLineNumber();
    if (header.stream().anyMatch(name -> name.indexOf('\0') >= 0)) {
      faults.at(line, notText());
      faults.throwIfAny();
    }
    int[] places = RecordingHeader.find(header, spec, faults, line);
    faults.throwIfAny();
    return new RecordingRows(spec, places, width(header), faults);
  }

  /** Fields a row must have; a separator at the end of the first line asks for nothing. */
  private static int width(List<String> header) {
    int width = header.size();
    while (width > 0 && header.get(width - 1).isEmpty()) {
      width--;
    }
    return width;
  }

  private Recording recording(RecordingRows rows) throws SceneException {
    List<Double> times = new ArrayList<>(rows.size());
    List<Pose> poses = new ArrayList<>(rows.size());
    double[] plain = new double[rows.size()];
    for (int i = 0; i < plain.length; i++) {
      plain[i] = rows.time(i);
      times.add(plain[i]);
      poses.add(rows.pose(i));
    }
    checkCutoff(RecordedMotion.medianPeriod(plain));
    double end = plain[plain.length - 1];
    double from = spec.heldFrom().orElse(0);
    double to = spec.heldTo().orElse(end);
    checkHeld(from, to, end);
    faults.throwIfAny();
    Optional<RecordedJoints> joints =
        spec.columns().joints()
            ? spec.robot().map(r -> new RecordedJoints(r, spec.flangeToGrip(), rows.joints()))
            : Optional.empty();
    return new Recording(spec.file(), times, poses, from, to, spec.cutoff(), joints);
  }

  private void checkCutoff(double period) {
    double rate = 1 / period;
    if (!(spec.cutoff() < rate / 2 * (1 - ROUNDING))) {
      scene(
          "route/recording/cutoff",
          text(
              "%s Hz is not below half the sample rate, %s Hz (rows are %s ms apart); a fifth of the"
                  + " rate is a good choice: \"cutoff\": \"%s Hz\"",
              plain(spec.cutoff()), plain(rate / 2), plain(1e3 * period), plain(rate / 5)));
    }
  }

  private void checkHeld(double from, double to, double end) {
    checkInside("route/recording/held/from", from, end);
    checkInside("route/recording/held/to", to, end);
    if (!(from < to)) {
      scene(
          "route/recording/held", text("from %s s must be before to %s s", plain(from), plain(to)));
    }
  }

  private void checkInside(String pointer, double time, double end) {
    if (!(time >= 0 && time <= end)) {
      scene(
          pointer,
          text(
              "%s s is outside the recording, which runs from 0 to %s s, counted from its first"
                  + " row",
              plain(time), plain(end)));
    }
  }
}
