package io.github.holdpath.sim.timing;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/**
 * Source: reference/grip-timing.json, the fastest motion that one suction cup holds, by closed
 * forms, quadrature and a fine grid apart from this code; see the note beside the file.
 */
class GripTimingValidationTest {
  private static final String FILE = "grip-timing.json";
  private static final double GRAVITY = 9.80665;

  @ParameterizedTest
  @ValueSource(strings = {"P1", "P2", "P3", "P4", "P8", "P9"})
  void straightMoves(String name) {
    JsonNode c = TimingCases.read(FILE, name);
    double pull = number(c, "pull_N") / number(c, "safety");
    double mass = number(c, "mass_kg");
    double mu = number(c, "friction");
    double hung = (pull - mass * GRAVITY) / mass;
    double up;
    double down;
    switch (name) {
      case "P3" -> {
        up = Math.min(hung, number(c, "drive_amax"));
        down = number(c, "drive_amax");
      }
      case "P4" -> {
        double arm = number(c, "lip_radius_m") / (2 * number(c, "com_depth_m"));
        up = Math.min(mu, arm) * hung;
        down = up;
      }
      case "P8" -> {
        up = Math.sqrt(mu * pull * mu * pull - mass * GRAVITY * mass * GRAVITY) / mass;
        down = up;
      }
      case "P9" -> {
        up = Math.min(pull / mass - GRAVITY / mu, number(c, "drive_amax"));
        down = number(c, "drive_amax");
      }
      default -> {
        up = mu * hung;
        down = up;
      }
    }
    PathTimingValidationTest.near(
        c, RowsOf.straight(number(c, "length_m"), up, down, number(c, "vmax")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"P5"})
  void halfCircle(String name) {
    JsonNode c = TimingCases.read(FILE, name);
    double radius = number(c, "radius_m");
    double a = number(c, "friction") * (number(c, "pull_N") / number(c, "mass_kg") - GRAVITY);
    PathTimingValidationTest.near(
        c, PathTimingValidationTest.circle(Math.PI * radius, radius, a, number(c, "vmax")));
  }

  /** f^2 + 2 x f M + M^2 on a ray of (alpha, omega^2) grows with the square of its length. */
  @ParameterizedTest
  @ValueSource(strings = {"P6", "P7"})
  void carriedRoundAnAxis(String name) {
    JsonNode c = TimingCases.read(FILE, name);
    double arm = number(c, "mass_kg") * number(c, "arm_radius_m");
    double turn = number(c, "inertia_about_cup_axis") / number(c, "lip_radius_m");
    int chords = 400;
    double[] u = new double[chords + 1];
    double[] x = new double[chords + 1];
    for (int k = 0; k <= chords; k++) {
      double angle = Math.PI * ((double) k / chords - 0.5);
      double twist = turn * Math.abs(Math.sin(angle));
      double size =
          Math.sqrt(arm * arm + 2 * number(c, "cross_term") * arm * twist + twist * twist);
      u[k] = number(c, "C") / size * Math.sin(angle);
      x[k] = number(c, "C") / size * Math.cos(angle);
    }
    double speed = c.get("turn_speed_max").isNull() ? 1e3 : number(c, "turn_speed_max");
    PathTimingValidationTest.near(
        c, RowsOf.region(Math.toRadians(number(c, "angle_deg")), u, x, speed));
  }

  /** Along the level line the tool's axis z turns from down towards the direction of motion. */
  @ParameterizedTest
  @ValueSource(strings = {"P10", "P11"})
  void pitchesOnTheWay(String name) {
    JsonNode c = TimingCases.read(FILE, name);
    double length = number(c, "length_m");
    double turn = Math.toRadians(number(c, "pitch_total_deg")) / length;
    double depth = number(c, "com_depth_m");
    double m = number(c, "mass_kg") * number(c, "safety");
    double inertia = number(c, "inertia_about_pitch_axis") * number(c, "safety");
    double half = number(c, "lip_radius_m") / 2;
    double mu = number(c, "friction");
    double pull = number(c, "pull_N");
    PathTimingValidationTest.near(
        c,
        new RowsOf(
            length,
            new double[] {0},
            4,
            (piece, s, a, b, bound, o) -> {
              double cos = Math.cos(turn * s);
              double sin = Math.sin(turn * s);
              // Required force across the lip and along the axis; moment about the lip.
              double acrossU = m * (cos + depth * turn);
              double across0 = m * GRAVITY * sin;
              double pressU = m * sin;
              double pressX = -m * depth * turn * turn;
              double press0 = pull - m * GRAVITY * cos;
              double momentU = depth * acrossU + inertia * turn;
              double moment0 = depth * across0;
              for (int k = 0; k < 2; k++) {
                int sign = 1 - 2 * k;
                RowsOf.set(
                    a,
                    b,
                    bound,
                    o + k,
                    sign * acrossU - mu * pressU,
                    -mu * pressX,
                    mu * press0 - sign * across0);
                RowsOf.set(
                    a,
                    b,
                    bound,
                    o + 2 + k,
                    sign * momentU - half * pressU,
                    -half * pressX,
                    half * press0 - sign * moment0);
              }
              return number(c, "vmax") * number(c, "vmax");
            }));
  }

  private static double number(JsonNode c, String field) {
    return c.get(field).asDouble();
  }
}
