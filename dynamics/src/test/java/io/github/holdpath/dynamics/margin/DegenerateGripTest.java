package io.github.holdpath.dynamics.margin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Expect;
import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.Drive;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Grips that miss something: the answer is a limit or a refusal, never a wrong "no limit". */
class DegenerateGripTest {
  private static final double INF = Double.POSITIVE_INFINITY;
  private static final double EXACT = 1e-12;

  /** Two tiny cups 100 mm apart differ from two points by their size over the distance. */
  private static final double POINTS = 1e-7;

  private static final PatchShape CUP = new PatchShape.Ring(0.02);
  private static final PatchShape POINT = new PatchShape.Ring(1e-9);
  private static final PatchShape LINE = new PatchShape.Line(0.02);
  private static final Vec3 X = new Vec3(1, 0, 0);
  private static final Vec3 Y = new Vec3(0, 1, 0);
  private static final Vec3 Z = new Vec3(0, 0, 1);
  private static final List<Vec3> CLOSING = List.of(Y.times(-1), Y);

  private static ContactPatch cup(PatchShape shape, Vec3 at, double mu) {
    return patch(shape, new Pose(at, Quaternion.IDENTITY), mu, 50, 50);
  }

  private static ContactPatch patch(PatchShape s, Pose at, double mu, double n0, double pull) {
    PatchStiffness soft = PatchStiffness.ofNormal(1e4);
    return new ContactPatch("patch", at, s, mu, n0, pull, soft, INF, INF, false);
  }

  private static HoldModel hold(ContactPatch... patches) {
    return new HoldModel(List.of(patches), List.of());
  }

  private static HoldModel jaws(PatchShape pad, double mu) {
    List<ContactPatch> pads = new ArrayList<>();
    for (Vec3 closing : CLOSING) {
      Pose at = new Pose(closing.times(-0.02), Quaternion.ofAxes(closing, X));
      pads.add(patch(pad, at, mu, 100, 0));
    }
    return new HoldModel(pads, List.of(new Drive(List.of(0, 1), CLOSING)));
  }

  private static Wrench force(Vec3 f) {
    return new Wrench(f, Vec3.ZERO);
  }

  private static Wrench moment(Vec3 m) {
    return new Wrench(Vec3.ZERO, m);
  }

  /** Nothing carries the load: factor 0, and what is lost is told. */
  private static void floats(HoldModel hold, Wrench load, Wrench lost) {
    FirstSlip first = hold.firstSlip(load);
    assertEquals(0, first.factor());
    assertEquals(FailureMode.FLOATS, first.mode());
    assertEquals(-1, first.patch());
    assertEquals(0, hold.careful(load).factor());
    Expect.near(lost, hold.uncarried(load), 1e-9, "lost");
  }

  @Test
  void withoutFrictionACupCarriesNothingSideways() {
    HoldModel hold = hold(cup(CUP, Vec3.ZERO, 0));
    for (Wrench load : List.of(force(X), force(Y), moment(Z), force(new Vec3(1e-3, 0, -1)))) {
      assertEquals(0, hold.firstSlip(load).factor());
      assertEquals(0, hold.careful(load).factor());
    }
    FailureMode mode = hold.firstSlip(moment(Z)).mode();
    assertEquals(FailureMode.TWIST, mode);
    FirstSlip pulled = hold.firstSlip(force(Z.times(-1)));
    assertEquals(50, pulled.factor(), 50 * EXACT);
    assertEquals(FailureMode.RELEASE, pulled.mode());
    assertTrue(hold.firstSlip(force(Z)).unlimited());
  }

  /** Pads without friction still close: along their axis they release, as if they had some. */
  @Test
  void withoutFrictionJawsHoldAlongTheirAxisAlone() {
    HoldModel hold = jaws(new PatchShape.Rectangle(0.02, 0.02), 0);
    FirstSlip along = hold.firstSlip(force(Y));
    assertEquals(200, along.factor(), 200 * EXACT);
    assertEquals(FailureMode.RELEASE, along.mode());
    assertEquals(200, hold.careful(force(Y)).factor(), 200 * EXACT);
    assertEquals(0, hold.firstSlip(force(X)).factor());
    assertEquals(0, hold.firstSlip(force(Z)).factor());
  }

  /** One point holds force, and against a moment nothing but its tiny radius. */
  @Test
  void aPointCupCarriesNextToNoMoment() {
    HoldModel hold = hold(cup(POINT, Vec3.ZERO, 0.5));
    assertEquals(25, hold.firstSlip(force(X)).factor(), 25 * EXACT);
    assertEquals(50 * 1e-9 / 2, hold.firstSlip(moment(X)).factor(), 1e-20);
    assertEquals(0.5 * 50 * 1e-9, hold.firstSlip(moment(Z)).factor(), 1e-20);
  }

  @Test
  void aLineTurnsFreelyAboutItself() {
    floats(hold(cup(LINE, Vec3.ZERO, 0.5)), moment(X), moment(X));
    assertEquals(0.5, hold(cup(LINE, Vec3.ZERO, 0.5)).firstSlip(moment(Y)).factor(), EXACT);
  }

  @Test
  void linesInOneLineTurnFreelyAboutIt() {
    HoldModel hold = hold(cup(LINE, Vec3.ZERO, 0.5), cup(LINE, X.times(0.1), 0.5));
    floats(hold, moment(X), moment(X));
    floats(hold, new Wrench(Z, X), moment(X));
    assertEquals(50, hold.firstSlip(force(X)).factor(), 50 * EXACT);
  }

  /** Two points carry a moment across their line by a pair of forces, and none about it. */
  @Test
  void pointCupsInOneLineCarryNoMomentAboutIt() {
    HoldModel hold = hold(cup(POINT, Vec3.ZERO, 0.5), cup(POINT, X.times(0.1), 0.5));
    floats(hold, moment(X), moment(X));
    assertEquals(5, hold.firstSlip(moment(Y)).factor(), POINTS * 50);
    assertEquals(2.5, hold.firstSlip(moment(Z)).factor(), POINTS * 25);
  }

  /** Beyond the digits of a double a moment on a cup far off must not look carried. */
  @ParameterizedTest
  @ValueSource(doubles = {1e3, 1e5, 1e7, 1e9})
  void aMomentOnACupFarOffIsNotLost(double away) {
    HoldModel hold = hold(cup(CUP, X.times(away), 0.5));
    for (Wrench load : List.of(moment(X), moment(Y), moment(Z))) {
      // Alone, the cup peels at N r/2 and twists at mu N r, or the model says that it floats.
      assertTrue(hold.firstSlip(load).factor() <= 0.5 + 1e-3, hold.firstSlip(load).toString());
    }
  }

  @Test
  void twoCupsInOnePlaceShareAlike() {
    HoldModel hold = hold(cup(CUP, Vec3.ZERO, 0.5), cup(CUP, Vec3.ZERO, 0.5));
    assertEquals(50, hold.firstSlip(force(X)).factor(), 50 * EXACT);
    assertEquals(1, hold.firstSlip(moment(X)).factor(), EXACT);
  }

  @Test
  void aPadThatNothingPressesHoldsNothing() {
    HoldModel hold = hold(patch(CUP, Pose.IDENTITY, 0.5, 0, 0));
    for (Wrench load : List.of(force(X), force(Z.times(-1)), moment(X), moment(Z))) {
      assertEquals(0, hold.firstSlip(load).factor());
    }
  }

  /** Form fit without a grip that presses: nothing keeps the part on it. */
  @Test
  void aLedgeAloneHoldsNothing() {
    PatchShape face = new PatchShape.Rectangle(0.02, 0.02);
    HoldModel hold =
        hold(
            new ContactPatch(
                "ledge", Pose.IDENTITY, face, 0.5, 0, 0, PatchStiffness.ALIKE, INF, INF, true));
    floats(hold, force(X), force(X));
    floats(hold, force(Z.times(-1)), force(Z.times(-1)));
    floats(hold, moment(Y), moment(Y));
  }

  @Test
  void noLoadIsNoLimit() {
    assertTrue(hold(cup(CUP, Vec3.ZERO, 0)).firstSlip(Wrench.ZERO).unlimited());
    assertTrue(hold(cup(LINE, Vec3.ZERO, 0.5)).firstSlip(Wrench.ZERO).unlimited());
  }

  @Test
  void sizesBeyondADoublesReachAreRefusedByName() {
    for (double size : new double[] {0, 1e-200, 1e-10, 1e4, 1e200, INF, Double.NaN}) {
      Expect.refused("radius must be positive", () -> new PatchShape.Ring(size));
      Expect.refused("radius must be positive", () -> new PatchShape.Disc(size));
      Expect.refused("length must be positive", () -> new PatchShape.Line(size));
      Expect.refused("b must be positive", () -> new PatchShape.Rectangle(0.02, size));
    }
  }

  /** The thinnest strip that is taken has the torsion radius of a line, a/4. */
  @Test
  void aThinStripIsALine() {
    assertEquals(0.005, new PatchShape.Rectangle(0.02, 1e-9).torsionRadius(), 0.005 * 1e-6);
    assertEquals(0.005, new PatchShape.Rectangle(1e-9, 0.02).torsionRadius(), 0.005 * 1e-6);
    assertEquals(250, new PatchShape.Rectangle(1000, 1e-9).torsionRadius(), 250 * 1e-6);
  }

  @Test
  void aLoadThatIsNoNumberIsRefused() {
    HoldModel hold = hold(cup(CUP, Vec3.ZERO, 0.5));
    for (double bad : new double[] {Double.NaN, INF, -INF}) {
      double[] w = {1, 0, bad, 0, 0, 0};
      Expect.refused("a load must be finite", () -> hold.use(w, 0, hold.workspace()));
    }
  }

  @Test
  void aDriveOfAPatchThatIsNotThereIsRefused() {
    List<ContactPatch> one = List.of(cup(CUP, Vec3.ZERO, 0.5));
    Drive drive = new Drive(List.of(5), List.of(Z));
    Expect.refused("a drive names patch 5", () -> new HoldModel(one, List.of(drive)));
  }
}
