package io.github.holdpath.dynamics.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Expect;
import io.github.holdpath.dynamics.Reference;
import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/**
 * Forty states of motion against an independent program in another language.
 *
 * @see "Lynch, Park: Modern Robotics, Cambridge University Press, 2017, chapter 8"
 */
class LoadModelValidationTest {
  /** As the file states it, relative to the largest component of the whole wrench. */
  private static final double FILE = 1e-9;

  /** Drag and carried air are worked out to their printed digits. */
  private static final double HALF_LAST_DIGIT = 0.0005;

  private static final Vec3 GRAVITY = new Vec3(0, 0, -9.80665);
  private static final Vec3 BROADSIDE = new Vec3(0, 0, 1);

  static Stream<JsonNode> cases() {
    return LoadCases.all();
  }

  @Test
  void fileHoldsFortyCasesTenWithDrag() {
    assertEquals(40, cases().count());
    assertEquals(10, cases().filter(c -> c.get("CdA").doubleValue() > 0).count());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void requiredWrenchEqualsThatOfTheOtherProgram(JsonNode c) {
    String id = c.get("id").stringValue();
    AirLoad air = LoadCases.air(c);
    RequiredWrench required = LoadCases.model(c, air).required(LoadCases.state(c));
    RequiredWrench without = LoadCases.model(c, AirLoad.NONE).required(LoadCases.state(c));
    JsonNode expected = c.get("expect");
    double[] whole = Reference.numbers(expected.get("w"));
    double tolerance = FILE * Expect.largest(whole);
    Wrench drag = required.motion().minus(without.motion());
    Expect.near(whole, required.total().toArray(), tolerance, id + " whole");
    double[] gravity = Reference.numbers(expected.get("wg"));
    Expect.near(gravity, required.gravity().toArray(), tolerance, id + " gravity");
    double[] air6 = Reference.numbers(expected.get("drag"));
    Expect.near(air6, drag.toArray(), tolerance, id + " drag");
  }

  /** Plate of 2 m^2, drag coefficient 1.17 (from memory), 2 m/s: 0.5 rho Cd A v^2 by hand. */
  @Test
  void dragOfAPlateIsThatOfTheFormula() {
    AirLoad air = new AirLoad(1.2, 1.17 * 2, 0, BROADSIDE);
    Wrench w = motion(air, new Vec3(0, 0, 2), Vec3.ZERO);
    Expect.near(new Vec3(0, 0, 5.616), w.force(), HALF_LAST_DIGIT);
    assertTrue(w.force().z() > 0, "the grip pushes the part against the air");
  }

  /** Lamb, Hydrodynamics: a disc of radius a moved broadside carries (8/3) rho a^3 of fluid. */
  @Test
  void discCarriesTheAirThatLambGives() {
    double carried = 8.0 / 3 * 1.2 * 0.25 * 0.25 * 0.25;
    assertEquals(0.05, carried, HALF_LAST_DIGIT);
    AirLoad air = new AirLoad(1.2, 0, carried, BROADSIDE);
    Wrench with = motion(air, Vec3.ZERO, new Vec3(3, 0, 4));
    Wrench without = motion(AirLoad.NONE, Vec3.ZERO, new Vec3(3, 0, 4));
    // 0.05 kg times the 4 m/s^2 broadside; edge on, nothing.
    Expect.near(new Vec3(0, 0, 0.2), with.minus(without).force(), HALF_LAST_DIGIT);
  }

  /** Sheet of 1 x 2 m: K rho (pi/4) a^2 b with K = 0.757, solved by panels to 0.001. */
  @Test
  void sheetOfTwoSquareMetresCarriesMoreThanAKilogramOfAir() {
    double carried = 0.757 * 1.2 * Math.PI / 4 * 2;
    assertEquals(1.427, carried, HALF_LAST_DIGIT);
    AirLoad air = new AirLoad(1.2, 0, carried, BROADSIDE);
    Wrench with = motion(air, Vec3.ZERO, new Vec3(0, 0, 5));
    Wrench without = motion(AirLoad.NONE, Vec3.ZERO, new Vec3(0, 0, 5));
    Expect.near(new Vec3(0, 0, 7.135), with.minus(without).force(), 5 * HALF_LAST_DIGIT);
  }

  private static Wrench motion(AirLoad air, Vec3 velocity, Vec3 acceleration) {
    MassProperties point = new MassProperties(1, new Vec3(0, 0, 0.1), Inertia.POINT);
    MotionState state =
        new MotionState(Pose.IDENTITY, velocity, Vec3.ZERO, acceleration, Vec3.ZERO);
    return new LoadModel(point, GRAVITY, air).required(state).motion();
  }
}
