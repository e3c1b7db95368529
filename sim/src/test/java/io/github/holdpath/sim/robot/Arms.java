package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SplittableRandom;

/** Arms and tables that the tests of this package share. */
final class Arms {
  private static final JointLimits FREE = JointLimits.NONE;

  private Arms() {}

  /** Rows of a comma separated resource, by the names in its header. */
  static List<Map<String, String>> table(String resource) throws IOException {
    try (InputStream in =
        Objects.requireNonNull(Arms.class.getResourceAsStream(resource), resource)) {
      List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
      String[] names = lines.get(0).split(",", -1);
      List<Map<String, String>> rows = new ArrayList<>();
      for (String line : lines.subList(1, lines.size())) {
        String[] cells = line.split(",", -1);
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < names.length; i++) {
          row.put(names[i], cells[i]);
        }
        rows.add(row);
      }
      return rows;
    }
  }

  static double number(Map<String, String> row, String name) {
    return Double.parseDouble(Objects.requireNonNull(row.get(name), name));
  }

  static double[] numbers(Map<String, String> row, String... names) {
    double[] x = new double[names.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = number(row, names[i]);
    }
    return x;
  }

  private static Pose origin(Map<String, String> row) {
    double[] x = numbers(row, "x_m", "y_m", "z_m", "roll_rad", "pitch_rad", "yaw_rad");
    return new Pose(new Vec3(x[0], x[1], x[2]), Quaternion.ofRpy(x[3], x[4], x[5]));
  }

  private static Vec3 axis(Map<String, String> row) {
    double[] x = numbers(row, "axis_x", "axis_y", "axis_z");
    return new Vec3(x[0], x[1], x[2]);
  }

  /** The industrial arm of the joint log. */
  static Chain logged() throws IOException {
    List<Joint> joints = new ArrayList<>();
    Pose flange = Pose.IDENTITY;
    for (Map<String, String> row : table("/reference/robot/arm-kinematics.csv")) {
      String name = Objects.requireNonNull(row.get("name"));
      if ("fixed".equals(row.get("type"))) {
        flange = origin(row);
        continue;
      }
      double[] limits = numbers(row, "lower", "upper", "speed_limit");
      joints.add(
          Joint.driven(
              name,
              JointKind.REVOLUTE,
              origin(row),
              axis(row),
              new JointLimits(limits[0], limits[1], limits[2], Double.POSITIVE_INFINITY),
              LinkBody.NONE));
    }
    return new Chain(joints, flange);
  }

  /** The six-axis arm with published dynamics; its flange is the frame of link 6. */
  static Chain published() throws IOException {
    List<Joint> joints = new ArrayList<>();
    for (Map<String, String> row : table("/reference/robot/six-axis-published-chain.csv")) {
      double[] c = numbers(row, "cx_m", "cy_m", "cz_m");
      double[] i =
          numbers(row, "ixx_kgm2", "iyy_kgm2", "izz_kgm2", "ixy_kgm2", "ixz_kgm2", "iyz_kgm2");
      joints.add(
          Joint.driven(
              Objects.requireNonNull(row.get("joint")),
              JointKind.REVOLUTE,
              origin(row),
              axis(row),
              FREE,
              new LinkBody(
                  number(row, "mass_kg"),
                  new Vec3(c[0], c[1], c[2]),
                  new Inertia(i[0], i[1], i[2], i[3], i[4], i[5]))));
    }
    return new Chain(joints, Pose.IDENTITY);
  }

  /** A drawn arm of turning, sliding and mimicking joints with bodies off their axes. */
  static Chain drawn(SplittableRandom random) {
    JointKind[] kinds = {
      JointKind.REVOLUTE, JointKind.PRISMATIC, JointKind.CONTINUOUS,
      JointKind.PRISMATIC, JointKind.REVOLUTE, JointKind.REVOLUTE
    };
    List<Joint> joints = new ArrayList<>();
    for (int i = 0; i < kinds.length; i++) {
      Optional<Mimic> mimic =
          i == 3 || i == 4
              ? Optional.of(new Mimic("j" + (i - 2), i == 3 ? 0.7 : -1.3, 0.2))
              : Optional.empty();
      joints.add(
          new Joint("j" + i, kinds[i], pose(random), vec(random), FREE, body(random), mimic));
    }
    return new Chain(joints, pose(random));
  }

  static LinkBody body(SplittableRandom random) {
    Inertia box =
        Inertia.solidBox(
            3,
            new Vec3(
                random.nextDouble(0.05, 0.4),
                random.nextDouble(0.05, 0.4),
                random.nextDouble(0.05, 0.4)));
    return new LinkBody(
        random.nextDouble(0.5, 5), vec(random).times(0.2), box.rotated(pose(random).rotation()));
  }

  static Pose pose(SplittableRandom random) {
    return new Pose(
        vec(random).times(0.4),
        Quaternion.ofRpy(
            random.nextDouble(-3, 3), random.nextDouble(-1.5, 1.5), random.nextDouble(-3, 3)));
  }

  static Vec3 vec(SplittableRandom random) {
    return new Vec3(random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(0.1, 1));
  }

  static double[] draw(SplittableRandom random, int n, double range) {
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = random.nextDouble(-range, range);
    }
    return x;
  }
}
