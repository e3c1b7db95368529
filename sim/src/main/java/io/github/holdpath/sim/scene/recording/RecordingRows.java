package io.github.holdpath.sim.scene.recording;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.robot.Robot;
import io.github.holdpath.sim.robot.RobotJoint;
import io.github.holdpath.sim.robot.RobotMotion;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Rows of a recording as they are read: those without a fault are kept with their line. */
final class RecordingRows {
  /** Further from 1 than this, four numbers are not a rounded unit quaternion. */
  private static final double QUATERNION_TOLERANCE = 1e-3;

  /** Farther away no digit of a log would tell a motion, m. */
  private static final double FARTHEST = 1e6;

  private final RecordingSpec spec;
  private final int[] places;
  private final int width;
  private final RecordingFaults faults;
  private final double[] values;

  /** Of the robot, where the rows are joint values. */
  private final Optional<RobotMotion> motion;

  private final boolean[] turns;

  private final List<Pose> poses = new ArrayList<>();
  private final List<List<Double>> joints = new ArrayList<>();
  private double[] times = new double[1024];
  private long[] lines = new long[1024];
  private int[] rows = new int[1024];
  private int seen;

  /**
   * Without rows.
   *
   * @param spec columns and units
   * @param places of the columns in a row
   * @param width fields of the header
   * @param faults of the rows are added here
   */
  RecordingRows(RecordingSpec spec, int[] places, int width, RecordingFaults faults) {
    this.spec = spec;
    this.places = places;
    this.width = width;
    this.faults = faults;
    this.values = new double[places.length];
    Optional<Robot> robot = spec.columns().joints() ? spec.robot() : Optional.empty();
    this.motion = robot.map(Robot::motion);
    List<RobotJoint> all = robot.map(Robot::joints).orElse(List.of());
    this.turns = new boolean[all.size()];
    for (int k = 0; k < turns.length; k++) {
      turns[k] = all.get(k).kind().turns();
    }
  }

  /** Takes the fields of one row, or notes what is wrong with them. */
  void add(List<String> fields, long line) {
    int row = seen++;
    if (fitsHeader(fields, line) && numbers(fields, line) && near(line)) {
      keep(row, line);
    }
  }

  private boolean fitsHeader(List<String> fields, long line) {
    boolean more = fields.stream().skip(width).anyMatch(f -> !f.isBlank());
    if (fields.size() >= width && !more) {
      return true;
    }
    String hint = more && spec.separator() == ',' ? "; are these decimal commas?" : "";
    faults.at(
        line, fields.size() + " fields, but the first line names " + width + " columns" + hint);
    return false;
  }

  private boolean numbers(List<String> fields, long line) {
    boolean good = true;
    for (int i = 0; i < places.length; i++) {
      String text = fields.get(places[i]).strip();
      values[i] = RecordingText.parse(text, spec.decimalComma());
      if (Double.isNaN(values[i])) {
        String name = RecordingText.quote(spec.columns().names().get(i));
        faults.at(line, name + " " + RecordingText.complaint(text, spec.decimalComma()));
        good = false;
      }
    }
    return good;
  }

  private boolean near(long line) {
    if (spec.columns().joints()) {
      return true;
    }
    for (int i = 1; i <= 3; i++) {
      if (Math.abs(values[i]) * spec.units().length() > FARTHEST) {
        faults.at(
            line,
            RecordingText.text(
                "%s is more than %s m from the origin; is units/length right?",
                RecordingText.quote(spec.columns().names().get(i)), RecordingText.plain(FARTHEST)));
        return false;
      }
    }
    return true;
  }

  private void keepJoints(int row, long line) {
    double[] q = new double[values.length - 1];
    List<Double> kept = new ArrayList<>();
    for (int k = 0; k < q.length; k++) {
      q[k] = values[k + 1] * (turns[k] ? spec.units().angle() : spec.units().length());
      kept.add(q[k]);
    }
    if (motion.filter(m -> m.moveTo(q)).isEmpty()) {
      faults.at(line, "no pose of the robot fits these joint values; are the columns right?");
      return;
    }
    Pose flange = motion.get().flangePose();
    put(row, line, flange.position(), flange.rotation());
    joints.add(kept);
  }

  private void keep(int row, long line) {
    if (spec.columns().joints()) {
      keepJoints(row, line);
      return;
    }
    double m = spec.units().length();
    Vec3 position = new Vec3(values[1] * m, values[2] * m, values[3] * m);
    if (spec.columns().quaternion()) {
      double n = Math.hypot(Math.hypot(values[4], values[5]), Math.hypot(values[6], values[7]));
      if (!(Math.abs(n - 1) <= QUATERNION_TOLERANCE)) {
        faults.at(
            line,
            RecordingText.text(
                "quaternion has length %s; it must be 1 to within %s; are the columns right?",
                RecordingText.plain(n), QUATERNION_TOLERANCE));
        return;
      }
      put(
          row,
          line,
          position,
          new Quaternion(values[4] / n, values[5] / n, values[6] / n, values[7] / n));
    } else {
      double a = spec.units().angle();
      put(row, line, position, Quaternion.ofRpy(values[4] * a, values[5] * a, values[6] * a));
    }
  }

  private void put(int row, long line, Vec3 position, Quaternion rotation) {
    Pose pose = new Pose(position, rotation);
    int at = poses.size();
    if (at == times.length) {
      times = Arrays.copyOf(times, 2 * at);
      lines = Arrays.copyOf(lines, 2 * at);
      rows = Arrays.copyOf(rows, 2 * at);
    }
    times[at] = values[0];
    lines[at] = line;
    rows[at] = row;
    poses.add(spec.frame() != RecordingFrame.GRIP ? pose.times(spec.flangeToGrip()) : pose);
  }

  /** Rows of the file so far, the faulty ones too. */
  int seen() {
    return seen;
  }

  /** Rows kept. */
  int size() {
    return poses.size();
  }

  /** Time of a kept row as the file writes it, in its own unit and from its own zero. */
  double written(int i) {
    return times[i];
  }

  /** Time of a kept row from the first one, s. */
  double time(int i) {
    return (times[i] - times[0]) * spec.units().time();
  }

  /** Line of a kept row. */
  long line(int i) {
    return lines[i];
  }

  /** Grip pose of a kept row. */
  Pose pose(int i) {
    return poses.get(i);
  }

  /** Joint values of all kept rows, rad or m; empty for a recording of poses. */
  List<List<Double>> joints() {
    return joints;
  }

  /** Whether nothing was left out between a kept row and the one before it. */
  boolean followsOn(int i) {
    return rows[i] == rows[i - 1] + 1;
  }
}
