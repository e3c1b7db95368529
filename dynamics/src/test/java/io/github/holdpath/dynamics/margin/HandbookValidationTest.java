package io.github.holdpath.dynamics.margin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.Cup;
import io.github.holdpath.dynamics.grip.JawGrip;
import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.dynamics.grip.SuctionGrip;
import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.load.RequiredWrench;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Formulas that the trade works with, and worked cases of mechanisms. The jaw and suction formulas
 * are common practice without a source; the plate between two pads and the mechanism table are
 * derived in the theory page and were computed a second time in another language.
 */
class HandbookValidationTest {
  static final double G = 9.80665;

  /** Algebra in doubles. */
  private static final double EXACT = 1e-12;

  /** Half the last of six printed digits. */
  private static final double SIX_DIGITS = 5e-6;

  static final Quaternion HUNG = Quaternion.ofRpy(Math.PI, 0, 0);
  static final Quaternion LEVEL = Quaternion.ofRpy(-Math.PI / 2, 0, 0);

  static JawGrip jaws(double force, double mu, Mechanism mechanism, PatchShape pad) {
    return new JawGrip(
        0.04,
        pad,
        new Vec3(1, 0, 0),
        mechanism,
        force,
        mu,
        PatchStiffness.ofNormal(1e5),
        Double.POSITIVE_INFINITY,
        Double.POSITIVE_INFINITY,
        List.of());
  }

  static SuctionGrip cup(double radius, double pull, double mu) {
    return new SuctionGrip(
        List.of(new Cup("cup", Vec3.ZERO, 2 * radius, pull, PatchStiffness.ofNormal(1e4))),
        List.of(),
        mu,
        Double.POSITIVE_INFINITY);
  }

  static RequiredWrench load(double mass, Vec3 com, Quaternion pose, Vec3 acceleration) {
    return new LoadModel(
            new MassProperties(mass, com, Inertia.POINT), new Vec3(0, 0, -G), AirLoad.NONE)
        .required(
            new MotionState(
                new Pose(Vec3.ZERO, pose), Vec3.ZERO, Vec3.ZERO, acceleration, Vec3.ZERO));
  }

  /** F = m (g + a) S/(2 mu), turned round: common practice, no source. */
  @ParameterizedTest
  @CsvSource({"1, 5, 0.2, 100", "2, 3, 0.15, 60.3711", "4.62, 10, 0.12, 1500"})
  void twoJawsWithACentralLoadMeetTheHandbookFormula(double m, double a, double mu, double force) {
    HoldModel hold =
        HoldModel.of(jaws(force, mu, Mechanism.SYNCHRONISED, new PatchShape.Rectangle(0.02, 0.02)));
    Wrench w = load(m, Vec3.ZERO, HUNG, new Vec3(0, 0, a)).total();
    double expected = 2 * mu * force / (m * (G + a));
    assertEquals(expected, hold.firstSlip(w).factor(), EXACT * expected);
  }

  @Test
  void twoJawsPrintedCase() {
    // m 1 kg, a 5 m/s^2, mu 0.2, F 100 N: 2.70149
    HoldModel hold =
        HoldModel.of(jaws(100, 0.2, Mechanism.SYNCHRONISED, new PatchShape.Rectangle(0.02, 0.02)));
    Wrench w = load(1, Vec3.ZERO, HUNG, new Vec3(0, 0, 5)).total();
    assertEquals(2.70149, hold.firstSlip(w).factor(), SIX_DIGITS);
  }

  @Test
  void oneCupPulledStraightHoldsPressureTimesArea() {
    double pull = Cup.pull(60e3, 0.05, 1);
    assertEquals(60e3 * Math.PI * 0.025 * 0.025, pull, EXACT * pull);
    FirstSlip first =
        HoldModel.of(cup(0.025, pull, 0.5)).firstSlip(new Wrench(new Vec3(0, 0, -1), Vec3.ZERO));
    assertEquals(pull, first.factor(), EXACT * pull);
    assertEquals(FailureMode.RELEASE, first.mode());
  }

  /** Suction with the load in the lip's plane: common practice, no source. m 2, a 4, mu 0.5. */
  @ParameterizedTest
  @CsvSource({"lifted, 27.6133", "sideways, 35.6133", "vertical, 55.2266"})
  void suctionFormulasHoldWithTheLoadInTheLipsPlane(String how, double pull) {
    HoldModel hold = HoldModel.of(cup(0.05, pull, 0.5));
    Wrench w =
        switch (how) {
          case "lifted" -> load(2, Vec3.ZERO, HUNG, new Vec3(0, 0, 4)).total();
          case "sideways" -> load(2, Vec3.ZERO, HUNG, new Vec3(4, 0, 0)).total();
          default -> load(2, Vec3.ZERO, LEVEL, new Vec3(0, 0, 4)).total();
        };
    assertEquals(1, hold.firstSlip(w).factor(), SIX_DIGITS);
  }

  /** r 12.5 mm, mu 0.3, P 22 N, 0.551 kg hung: sideways limit mu (P/m - g). */
  @Test
  void oneCupAtItsSidewaysLimit() {
    double a = 0.3 * (22 / 0.551 - G);
    assertEquals(9.03623, a, SIX_DIGITS);
    HoldModel hold = HoldModel.of(cup(0.0125, 22, 0.3));
    Wrench w = load(0.551, Vec3.ZERO, HUNG, new Vec3(a, 0, 0)).total();
    assertEquals(1, hold.firstSlip(w).factor(), EXACT * 10);
  }

  /** Same cup, r 20 mm, 1 kg, centre 30 mm below, sideways at 6 m/s^2: peels at 2.71152. */
  @Test
  void aCupPeelsUnderALoadBelowIt() {
    HoldModel hold = HoldModel.of(cup(0.02, 75.3982, 0.5));
    FirstSlip first =
        hold.firstSlip(load(1, new Vec3(0, 0, 0.03), HUNG, new Vec3(6, 0, 0)).total());
    assertEquals(2.71152, first.factor(), SIX_DIGITS);
    assertEquals(FailureMode.PEEL, first.mode());
  }

  /** A plate turned between two pads: 1 kg, 100 N, mu 0.3 at 0, 45, 73.3008 and 90 degrees. */
  @ParameterizedTest
  @CsvSource({"0, 20.3943", "45, 6.65583", "73.30076, 5.86027", "90, 6.11830"})
  void aPlateTurnedBetweenPadsIsWorstBeforeItIsUpright(double angle, double expected) {
    HoldModel hold =
        HoldModel.of(jaws(100, 0.3, Mechanism.SYNCHRONISED, new PatchShape.Rectangle(0.03, 0.03)));
    double phi = Math.toRadians(angle);
    Wrench w = new Wrench(new Vec3(G * Math.sin(phi), G * Math.cos(phi), 0), Vec3.ZERO);
    assertEquals(expected, hold.firstSlip(w).factor(), expected * SIX_DIGITS);
  }

  /** 80 N along the closing axis, 20 N across, 100 N a jaw, mu 0.3, pads alike. */
  @ParameterizedTest
  @CsvSource({"SYNCHRONISED, 1.36364", "INDEPENDENT, 0", "SELF_LOCKING, 1.36364"})
  void theMechanismChangesTheAnswer(Mechanism mechanism, double expected) {
    HoldModel hold = HoldModel.of(jaws(100, 0.3, mechanism, new PatchShape.Rectangle(0.02, 0.02)));
    FirstSlip first = hold.firstSlip(new Wrench(new Vec3(20, 80, 0), Vec3.ZERO));
    assertEquals(expected, first.factor(), SIX_DIGITS);
    assertEquals(mechanism == Mechanism.INDEPENDENT, first.mode() == FailureMode.FLOATS);
  }

  /** The same load up to the last hold: 2.5 by release, nothing, and 2.5 for a locked closure. */
  @ParameterizedTest
  @CsvSource({"SYNCHRONISED, 2.5", "INDEPENDENT, 0", "SELF_LOCKING, 2.5"})
  void theMechanismChangesTheLastHold(Mechanism mechanism, double expected) {
    JawGrip grip = jaws(100, 0.3, mechanism, new PatchShape.Rectangle(0.02, 0.02));
    WholeGripFactor whole =
        WholeGrip.of(grip).factor(new Wrench(new Vec3(20, 80, 0), Vec3.ZERO), 1.36364);
    assertEquals(expected, whole.factor(), SIX_DIGITS);
  }

  /** Four cups r 20 mm, 75.3982 N each, mu 0.5: 1.48482 by slip of the fourth, headroom 1.38595. */
  @Test
  void fourCupsUnderAnOffsetLoad() {
    List<Cup> cups = new java.util.ArrayList<>();
    for (double x : new double[] {-0.1, 0.1}) {
      for (double y : new double[] {-0.08, 0.08}) {
        cups.add(
            new Cup("c" + cups.size(), new Vec3(x, y, 0), 0.04, 75.3982, PatchStiffness.ALIKE));
      }
    }
    HoldModel hold = HoldModel.of(new SuctionGrip(cups, List.of(), 0.5, Double.POSITIVE_INFINITY));
    RequiredWrench load =
        new LoadModel(
                new MassProperties(
                    6, new Vec3(0.04, 0.02, 0.06), new Inertia(0.02, 0.03, 0.04, 0, 0, 0)),
                new Vec3(0, 0, -G),
                AirLoad.NONE)
            .required(
                new MotionState(
                    new Pose(Vec3.ZERO, HUNG),
                    Vec3.ZERO,
                    Vec3.ZERO,
                    new Vec3(5, 0, 2),
                    new Vec3(0, 0, 4)));
    FirstSlip first = hold.firstSlip(load.total());
    assertEquals(1.48482, first.factor(), 2e-5);
    assertEquals(FailureMode.SLIP, first.mode());
    double[] both = new double[12];
    System.arraycopy(load.gravity().toArray(), 0, both, 0, 6);
    System.arraycopy(load.motion().toArray(), 0, both, 6, 6);
    double k = new SpeedHeadroom(hold, 1, hold.workspace()).of(both);
    assertEquals(1.38595, k, 2e-5);
  }

  /** One cup, load in its plane: headroom 1.86723 at S = 1, 1.13036 (its square) at S = 2. */
  @Test
  void speedHeadroomOfOneCupIsClosed() {
    HoldModel hold = HoldModel.of(cup(0.02, 75.3982, 0.5));
    RequiredWrench load = load(2, Vec3.ZERO, HUNG, new Vec3(4, 0, 0));
    double[] both = new double[12];
    System.arraycopy(load.gravity().toArray(), 0, both, 0, 6);
    System.arraycopy(load.motion().toArray(), 0, both, 6, 6);
    double one = new SpeedHeadroom(hold, 1, hold.workspace()).of(both);
    double two = new SpeedHeadroom(hold, 2, hold.workspace()).of(both);
    assertEquals(1.86723, one, SIX_DIGITS);
    assertEquals(1.13036, two * two, SIX_DIGITS);
    double closed = 0.5 * (75.3982 - 2 * G) / (2 * 4);
    assertEquals(closed, one * one, EXACT * closed * 10);
  }

  /**
   * Pads 30 x 15 mm, 200 N, mu 0.3, 1 kg 50 mm off, square to the force of m(g+3): 1.63087 along
   * the long side, 1.57338 across, both by twist.
   */
  @ParameterizedTest
  @CsvSource({"along, 1.63087", "across, 1.57338"})
  void overhangTwistsThePads(String how, double expected) {
    HoldModel hold =
        HoldModel.of(jaws(200, 0.3, Mechanism.SYNCHRONISED, new PatchShape.Rectangle(0.03, 0.015)));
    double f = G + 3;
    Wrench w =
        how.equals("along")
            ? new Wrench(new Vec3(f, 0, 0), new Vec3(0, 0.05 * f, 0))
            : new Wrench(new Vec3(0, 0, f), new Vec3(0, 0.05 * f, 0));
    FirstSlip first = hold.firstSlip(w);
    assertEquals(expected, first.factor(), SIX_DIGITS);
    assertEquals(FailureMode.TWIST, first.mode());
  }

  /**
   * Lengths and forces twice as large: the factor under twice the force and four times the moment.
   */
  @Test
  void aLargerCopyOfAGripHoldsInProportion() {
    Wrench w = new Wrench(new Vec3(3, 1, -2), new Vec3(0.02, -0.03, 0.01));
    Wrench wide = new Wrench(w.force(), w.moment().times(2));
    double one = HoldModel.of(cup(0.02, 50, 0.4)).firstSlip(w).factor();
    double two = HoldModel.of(cup(0.04, 50, 0.4)).firstSlip(wide).factor();
    double strong = HoldModel.of(cup(0.02, 100, 0.4)).firstSlip(w).factor();
    assertEquals(one, two, EXACT * one);
    assertEquals(2 * one, strong, EXACT * 2 * one);
    assertTrue(one > 0);
  }
}
