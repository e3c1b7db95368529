package io.github.holdpath.sim.timing;

import io.github.holdpath.sim.timelaw.AxisLimits;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The paths of reference/path-timing.json and grip-timing.json; see the note beside them. */
final class TimingCases {
  private TimingCases() {}

  /** All cases of a file. */
  static List<JsonNode> read(String file) {
    try (InputStream in =
        Objects.requireNonNull(TimingCases.class.getResourceAsStream("/reference/" + file), file)) {
      List<JsonNode> cases = new ArrayList<>();
      new ObjectMapper().readTree(in).forEach(cases::add);
      return cases;
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** One case of a file. */
  static JsonNode read(String file, String name) {
    return read(file).stream()
        .filter(c -> c.get("case").asString().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** The curve of F6 to F10. */
  static JointCurve curve(JsonNode c) {
    if (c.has("coefficients_ascending")) {
      return new PolynomialCurve(
          matrix(c.get("coefficients_ascending")), c.get("s_range").get(1).asDouble());
    }
    return new SplineCurve(
        numbers(c.get("knots")),
        matrix(c.get("waypoints")),
        c.get("end_condition").asString().equals("natural"));
  }

  /** The joint limits of F2 and F6 to F10; there is no limit of jerk. */
  static List<AxisLimits> limits(JsonNode c) {
    double[] speed = numbers(c.get("vmax"));
    double[] most = numbers(c.get("amax"));
    List<AxisLimits> limits = new ArrayList<>();
    for (int j = 0; j < speed.length; j++) {
      double least = c.has("amin") ? c.get("amin").get(j).asDouble() : -most[j];
      limits.add(new AxisLimits(-speed[j], speed[j], least, most[j], 1));
    }
    return limits;
  }

  static JointRows rows(String name) {
    JsonNode c = read("path-timing.json", name);
    return new JointRows(curve(c), limits(c));
  }

  static double[] numbers(JsonNode list) {
    double[] values = new double[list.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = list.get(i).asDouble();
    }
    return values;
  }

  static double[][] matrix(JsonNode list) {
    double[][] values = new double[list.size()][];
    for (int i = 0; i < values.length; i++) {
      values[i] = numbers(list.get(i));
    }
    return values;
  }

  /** Polynomials of s, coefficients from the constant up. */
  record PolynomialCurve(double[][] coefficients, double length) implements JointCurve {
    @Override
    public int joints() {
      return coefficients.length;
    }

    @Override
    public int pieces() {
      return 1;
    }

    @Override
    public double start(int piece) {
      return 0;
    }

    @Override
    public void at(int piece, double s, double[] q, double[] dq, double[] ddq) {
      for (int j = 0; j < coefficients.length; j++) {
        double p = 0;
        double d = 0;
        double dd = 0;
        for (int k = coefficients[j].length - 1; k >= 0; k--) {
          dd = dd * s + 2 * d;
          d = d * s + p;
          p = p * s + coefficients[j][k];
        }
        q[j] = p;
        dq[j] = d;
        ddq[j] = dd;
      }
    }

    @Override
    public boolean third(int piece, double s, double[] dddq) {
      for (int j = 0; j < coefficients.length; j++) {
        double ddd = 0;
        for (int k = coefficients[j].length - 1; k >= 3; k--) {
          ddd = ddd * s + k * (k - 1) * (k - 2) * coefficients[j][k];
        }
        dddq[j] = ddd;
      }
      return true;
    }
  }
}
