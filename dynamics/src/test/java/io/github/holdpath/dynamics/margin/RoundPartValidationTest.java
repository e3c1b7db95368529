package io.github.holdpath.dynamics.margin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Expect;
import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.CentricGrip;
import io.github.holdpath.dynamics.grip.Drive;
import io.github.holdpath.dynamics.grip.GripModel;
import io.github.holdpath.dynamics.grip.JawGrip;
import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.dynamics.grip.SoftGrip;
import io.github.holdpath.dynamics.grip.Vee;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Grips of round parts. The formulas are common practice without a source, derived in each test;
 * the patch sets come from the independent program of {@code reference/README.md}.
 */
class RoundPartValidationTest {
  private static final double G = 9.80665;
  private static final double NONE = Double.POSITIVE_INFINITY;

  /** Algebra in doubles. */
  private static final double EXACT = 1e-12;

  /** Half the last of six printed digits. */
  private static final double PRINTED_SIX = 5e-6;

  /** The file prints directions and places with eleven digits. */
  private static final double PRINTED = 1e-10;

  /** The file prints factors with ten digits; stiffness 2/3 kn with nine. */
  private static final double FACTOR = 1e-8;

  private static JawGrip vee(
      PatchShape flank,
      boolean alongX,
      double degrees,
      double diameter,
      double force,
      double mu,
      double stiffness) {
    return new JawGrip(
        diameter,
        flank,
        alongX ? new Vec3(1, 0, 0) : new Vec3(0, 0, 1),
        Optional.of(new Vee(Math.toRadians(degrees))),
        Mechanism.SYNCHRONISED,
        force,
        mu,
        PatchStiffness.ofNormal(stiffness),
        NONE,
        NONE,
        List.of(),
        Optional.empty());
  }

  private static CentricGrip centric(
      int count, double diameter, Mechanism mechanism, double force, double mu, double stiffness) {
    PatchShape face = new PatchShape.Rectangle(0.02, 0.012);
    return centric(face, count, diameter, mechanism, force, mu, stiffness);
  }

  private static CentricGrip centric(
      PatchShape pad,
      int count,
      double diameter,
      Mechanism mechanism,
      double force,
      double mu,
      double stiffness) {
    return new CentricGrip(
        count,
        diameter,
        false,
        pad,
        true,
        mechanism,
        force,
        Optional.empty(),
        mu,
        PatchStiffness.ofNormal(stiffness),
        NONE,
        NONE,
        List.of(),
        Optional.empty());
  }

  /**
   * A bar along its axis in two vee jaws: four flanks with {@code F/(2 sin(angle/2))} each, so
   * {@code F = m (g + a) sin(angle/2)/(2 mu)}. m 2 kg, a 3 m/s^2, mu 0.15, 90 degrees: 60.3711 N.
   */
  @ParameterizedTest
  @CsvSource({"90, true, 60.3711", "90, false, 60.3711", "60, true, 42.6888", "120, true, 73.9392"})
  void veeJawsHoldABarAlongItsAxis(double degrees, boolean alongX, double expected) {
    double need = 2 * (G + 3) * Math.sin(Math.toRadians(degrees / 2)) / (2 * 0.15);
    assertEquals(expected, need, expected * PRINTED_SIX);
    GripModel grip = vee(new PatchShape.Line(0.03), alongX, degrees, 0.05, need, 0.15, 1e5);
    double load = 2 * (G + 3);
    Vec3 along = alongX ? new Vec3(load, 0, 0) : new Vec3(0, 0, load);
    FirstSlip first = HoldModel.of(grip).firstSlip(new Wrench(along, Vec3.ZERO));
    assertEquals(1, first.factor(), EXACT);
    assertEquals(FailureMode.SLIP, first.mode());
  }

  /** Three centric jaws, {@code F = m (g + a)/(3 mu)}; m 2 kg, a 3 m/s^2, mu 0.15: 56.9184 N. */
  @ParameterizedTest
  @CsvSource({"3, 56.9184", "4, 42.6888", "6, 28.4592"})
  void centricJawsHoldAPartAlongTheAxis(int count, double expected) {
    double need = 2 * (G + 3) / (count * 0.15);
    assertEquals(expected, need, expected * PRINTED_SIX);
    HoldModel hold = HoldModel.of(centric(count, 0.05, Mechanism.SYNCHRONISED, need, 0.15, 1e5));
    Wrench w = new Wrench(new Vec3(0, 0, 2 * (G + 3)), Vec3.ZERO);
    assertEquals(1, hold.firstSlip(w).factor(), EXACT);
  }

  /**
   * Torque about the axis of a bar in flat pads, {@code M = n mu F d/2}: chuck formula, common
   * practice, no source. A face would bear a little of it by its width.
   */
  @ParameterizedTest
  @ValueSource(ints = {3, 4})
  void centricJawsHoldATorqueAboutTheAxis(int count) {
    PatchShape line = new PatchShape.Line(0.02);
    HoldModel hold =
        HoldModel.of(centric(line, count, 0.08, Mechanism.SYNCHRONISED, 500, 0.2, 1e5));
    double most = count * 0.2 * 500 * 0.04;
    FirstSlip first = hold.firstSlip(new Wrench(Vec3.ZERO, new Vec3(0, 0, most)));
    assertEquals(1, first.factor(), EXACT);
  }

  /** Soft fingers with a load along z through the middle: {@code F = m (g + a)/(n mu)}. */
  @Test
  void softFingersHoldAPartAlongTheAxis() {
    SoftGrip grip =
        new SoftGrip(
            4,
            0.06,
            0.02,
            0.03,
            Mechanism.INDEPENDENT,
            5,
            NONE,
            0.6,
            PatchStiffness.ofNormal(1e3),
            NONE,
            NONE,
            List.of());
    FirstSlip first =
        HoldModel.of(grip).firstSlip(new Wrench(new Vec3(0, 0, 0.5 * (G + 4)), Vec3.ZERO));
    double expected = 4 * 0.6 * 5 / (0.5 * (G + 4));
    assertEquals(1.73829, expected, 1.73829 * PRINTED_SIX);
    assertEquals(expected, first.factor(), EXACT * expected);
  }

  static Stream<ReferenceCases.Case> centricCases() {
    return ReferenceCases.all().stream().filter(c -> c.id().startsWith("g-centric"));
  }

  static Stream<ReferenceCases.Case> veeCases() {
    return ReferenceCases.all().stream().filter(c -> c.id().startsWith("g-v-jaw"));
  }

  @Test
  void theCasesAreThere() {
    assertEquals(6, centricCases().count());
    assertEquals(4, veeCases().count());
  }

  @ParameterizedTest
  @MethodSource("centricCases")
  void centricJawsGiveTheOtherProgramsPatchesAndFactors(ReferenceCases.Case c) {
    ContactPatch first = c.patches().get(0);
    CentricGrip grip =
        centric(
            c.patches().size(),
            2 * first.pose().position().x(),
            c.drives().isEmpty() ? Mechanism.SELF_LOCKING : Mechanism.SYNCHRONISED,
            first.preload(),
            first.friction(),
            first.stiffness().normal());
    assertSame(c, grip, grip.patches());
  }

  /** The file has narrow faces for flanks, begins with the jaw at -y and with the flank at -z. */
  @ParameterizedTest
  @MethodSource("veeCases")
  void veeJawsGiveTheOtherProgramsPatchesAndFactors(ReferenceCases.Case c) {
    ContactPatch first = c.patches().get(0);
    Vec3 at = first.pose().position();
    double half = Math.atan2(-at.y(), -at.z());
    double force = 2 * first.preload() * Math.sin(half);
    JawGrip grip =
        vee(
            first.shape(),
            true,
            Math.toDegrees(2 * half),
            2 * at.norm(),
            force,
            first.friction(),
            first.stiffness().normal());
    List<ContactPatch> own = grip.patches();
    assertSame(c, grip, List.of(own.get(3), own.get(2), own.get(1), own.get(0)));
  }

  private static void assertSame(
      ReferenceCases.Case c, GripModel grip, List<ContactPatch> inTheirOrder) {
    for (int i = 0; i < inTheirOrder.size(); i++) {
      ContactPatch own = inTheirOrder.get(i);
      ContactPatch their = c.patches().get(i);
      Expect.near(their.pose().position(), own.pose().position(), PRINTED);
      assertEquals(0, their.pose().rotation().angleTo(own.pose().rotation()), 1e-7, own.name());
      assertEquals(their.shape(), own.shape());
      assertEquals(their.preload(), own.preload(), PRINTED * their.preload());
    }
    assertDirections(c, grip);
    Wrench load = c.load().total();
    FirstSlip first = HoldModel.of(grip).firstSlip(load);
    double slip = c.expected().get("H1").asDouble();
    assertEquals(slip, first.factor(), FACTOR * slip, "H1");
    double careful = c.expected().get("H1e").asDouble();
    assertEquals(careful, HoldModel.of(grip).careful(load).factor(), FACTOR * careful, "H1e");
    double whole = c.expected().get("H2").asDouble();
    // The other program's cone solver stops at about 1e-7.
    assertEquals(whole, WholeGrip.of(grip).factor(load, slip).factor(), 1e-6 * whole, "H2");
  }

  /** The other program gives the way in which the finger opens; which way counts for nothing. */
  private static void assertDirections(ReferenceCases.Case c, GripModel grip) {
    List<Drive> own = new ArrayList<>(grip.drives());
    own.addAll(grip.closures());
    List<Drive> theirs = new ArrayList<>(c.drives());
    theirs.addAll(c.closures());
    assertEquals(theirs.size(), own.size());
    for (int d = 0; d < own.size(); d++) {
      assertEquals(theirs.get(d).patches().size(), own.get(d).patches().size());
      for (Vec3 direction : theirs.get(d).directions()) {
        assertTrue(
            own.get(d).directions().stream().anyMatch(v -> v.minus(direction).norm() < PRINTED),
            "no finger closes along " + direction);
      }
    }
  }
}
