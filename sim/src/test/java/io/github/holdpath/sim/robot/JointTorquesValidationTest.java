package io.github.holdpath.sim.robot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The arm of Armstrong, Khatib and Burdick (1986), with published torques, and with torques from a
 * second program that agrees with Orocos KDL 1.5.1. Origin and attribution:
 * reference/robot/README.md.
 */
class JointTorquesValidationTest {
  /** Published numbers have four decimals or more: half the last of four, and rounding. */
  private static final double PRINTED = 5.01e-5;

  /** Computed values: the table rounds pi to 12 digits, which moves them by 2.5e-10. */
  private static final double COMPUTED = 1e-9;

  private static double[] six(Map<String, String> row, String prefix) {
    return IntStream.rangeClosed(1, 6).mapToDouble(i -> Arms.number(row, prefix + i)).toArray();
  }

  private static double[] torques(Map<String, String> row) throws IOException {
    double[] g = Arms.numbers(row, "gx", "gy", "gz");
    JointTorques torques =
        new JointTorques(Arms.published(), new Vec3(g[0], g[1], g[2]), LinkBody.NONE);
    double[] tau = new double[6];
    double[] load = Arms.numbers(row, "fx", "fy", "fz", "mx", "my", "mz");
    torques.of(six(row, "q"), six(row, "qd"), six(row, "qdd"), load, tau);
    String includes = Objects.requireNonNull(row.get("includes"));
    if (includes.contains("rotor")) {
      addDrives(row, includes.contains("friction"), tau);
    }
    return tau;
  }

  /** Rotor inertia and friction of the published drives, which the chain does not know. */
  private static void addDrives(Map<String, String> row, boolean friction, double[] tau)
      throws IOException {
    List<Map<String, String>> links = Arms.table("/reference/robot/six-axis-published.csv");
    double[] qd = six(row, "qd");
    double[] qdd = six(row, "qdd");
    for (int i = 0; i < 6; i++) {
      Map<String, String> link = links.get(i);
      double gear = Math.abs(Arms.number(link, "gear_ratio"));
      tau[i] += gear * gear * Arms.number(link, "rotor_inertia_kgm2") * qdd[i];
      if (friction) {
        tau[i] += gear * gear * Arms.number(link, "motor_viscous_Nms") * qd[i];
        double coulomb =
            Arms.number(link, qd[i] > 0 ? "motor_coulomb_pos_Nm" : "motor_coulomb_neg_Nm");
        tau[i] += qd[i] == 0 ? 0 : gear * coulomb;
      }
    }
  }

  private static List<Map<String, String>> cases(String origin) throws IOException {
    return Arms.table("/reference/robot/six-axis-published-torques.csv").stream()
        .filter(row -> origin.equals(row.get("origin")))
        .toList();
  }

  @Test
  void sevenPublishedCasesToTheirPrintedDigits() throws IOException {
    List<Map<String, String>> rows = cases("published");
    for (Map<String, String> row : rows) {
      double[] theirs = six(row, "tau");
      double[] ours = torques(row);
      for (int i = 0; i < 6; i++) {
        assertEquals(theirs[i], ours[i], PRINTED, row.get("case") + " joint " + (i + 1));
      }
    }
    assertEquals(7, rows.size());
  }

  @Test
  void twentyCasesOfASecondProgram() throws IOException {
    List<Map<String, String>> rows = cases("computed");
    for (Map<String, String> row : rows) {
      assertArrayEquals(six(row, "tau"), torques(row), COMPUTED, row.get("case"));
    }
    assertEquals(20, rows.size());
  }

  @Test
  void inertiaMatrixIsThePublishedAndTheComputedOne() throws IOException {
    double[] n = {0, 0.785398163397, 3.14159265359, 0, 0.785398163397, 0};
    double[] h = new double[36];
    new JointTorques(Arms.published(), Vec3.ZERO, LinkBody.NONE).inertia(n, h);
    List<Map<String, String>> links = Arms.table("/reference/robot/six-axis-published.csv");
    List<Map<String, String>> rows = Arms.table("/reference/robot/six-axis-published-inertia.csv");
    for (Map<String, String> row : rows) {
      boolean computed = "computed_rigid_at_n".equals(row.get("matrix"));
      int i = (int) Arms.number(row, "row") - 1;
      for (int j = 0; j < 6; j++) {
        Map<String, String> link = links.get(i);
        double gear = Arms.number(link, "gear_ratio");
        double rotor =
            computed || i != j ? 0 : gear * gear * Arms.number(link, "rotor_inertia_kgm2");
        double digit = computed ? COMPUTED : PRINTED;
        assertEquals(Arms.number(row, "c" + (j + 1)), h[6 * i + j] + rotor, digit);
      }
    }
    assertEquals(12, rows.size());
  }
}
