package io.github.holdpath.dynamics.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Expect;
import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class CentricGripTest {
  private static final Vec3 X = new Vec3(1, 0, 0);
  private static final Vec3 Z = new Vec3(0, 0, 1);

  /** A jaw of 0.5 kg, 60 mm off the axis, at 600 1/min: 0.5 x 0.06 x (20 pi)^2 = 118.435 N. */
  private static final Spin SPIN = new Spin(20 * Math.PI, 0.5, 0.06);

  @Test
  void firstPadPressesInwardFromPlusX() {
    List<ContactPatch> patches =
        Grips.centric(Mechanism.SYNCHRONISED, 3, false, List.of()).patches();
    assertEquals(
        List.of("pad 1", "pad 2", "pad 3"), patches.stream().map(ContactPatch::name).toList());
    Expect.near(new Vec3(0.04, 0, 0), patches.get(0).pose().position(), Expect.ALGEBRA);
    Expect.near(X.times(-1), patches.get(0).pose().rotation().rotate(Z), Expect.ALGEBRA);
    double side = 0.04 * Math.sqrt(3) / 2;
    Expect.near(new Vec3(-0.02, side, 0), patches.get(1).pose().position(), Expect.ALGEBRA);
    Expect.near(new Vec3(-0.02, -side, 0), patches.get(2).pose().position(), Expect.ALGEBRA);
  }

  @Test
  void insideJawsPressOutwardFromTheSamePlaces() {
    List<ContactPatch> out = Grips.centric(Mechanism.INDEPENDENT, 4, false, List.of()).patches();
    List<ContactPatch> in = Grips.centric(Mechanism.INDEPENDENT, 4, true, List.of()).patches();
    for (int i = 0; i < 4; i++) {
      Expect.near(out.get(i).pose().position(), in.get(i).pose().position(), Expect.ALGEBRA);
      Vec3 inward = out.get(i).pose().rotation().rotate(Z);
      Expect.near(inward.times(-1), in.get(i).pose().rotation().rotate(Z), Expect.ALGEBRA);
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void padsLieAcrossUnlessUpright(boolean inside) {
    ContactPatch across =
        Grips.centric(Mechanism.INDEPENDENT, 3, inside, List.of()).patches().get(0);
    assertEquals(0, across.pose().rotation().rotate(X).dot(Z), Expect.ALGEBRA);
    assertEquals(0, across.pose().rotation().rotate(X).dot(X), Expect.ALGEBRA);
    CentricGrip line = upright(inside);
    for (ContactPatch patch : line.patches()) {
      Expect.near(Z, patch.pose().rotation().rotate(X), Expect.ALGEBRA);
    }
  }

  private static CentricGrip upright(boolean inside) {
    double none = Grips.NO_LIMIT;
    return new CentricGrip(
        3,
        0.05,
        inside,
        new PatchShape.Line(0.02),
        true,
        Mechanism.SELF_LOCKING,
        100,
        Optional.empty(),
        0.2,
        Grips.SOFT,
        none,
        none,
        List.of(),
        Optional.empty());
  }

  @Test
  void mechanismTiesTheJaws() {
    CentricGrip one = Grips.centric(Mechanism.SYNCHRONISED, 3, false, List.of());
    assertEquals(List.of(List.of(0, 1, 2)), one.drives().stream().map(Drive::patches).toList());
    assertEquals(List.of(), one.closures());
    CentricGrip each = Grips.centric(Mechanism.INDEPENDENT, 3, false, List.of());
    assertEquals(
        List.of(List.of(0), List.of(1), List.of(2)),
        each.drives().stream().map(Drive::patches).toList());
    CentricGrip locked = Grips.centric(Mechanism.SELF_LOCKING, 3, false, List.of(Grips.SHELF));
    assertEquals(List.of(), locked.drives());
    assertEquals(one.drives(), locked.closures());
  }

  @ParameterizedTest
  @EnumSource
  void spinTakesFromAnInwardGripAndAddsToAnOutwardOne(Mechanism mechanism) {
    assertEquals(118.435, SPIN.outward(), 5e-4);
    double outward = held(Grips.centric(mechanism, 3, true, Optional.of(SPIN), List.of()));
    double inward = held(Grips.centric(mechanism, 3, false, Optional.of(SPIN), List.of()));
    assertEquals(200 + 118.435, outward, 5e-4);
    assertEquals(200 - 118.435, inward, 5e-4);
  }

  private static double held(CentricGrip grip) {
    assertTrue(
        grip.patches().stream().allMatch(p -> p.preload() == grip.patches().get(0).preload()));
    return grip.patches().get(0).preload();
  }

  @Test
  void tellsWhatTheSpinTakes() {
    String told =
        Grips.centric(Mechanism.SYNCHRONISED, 3, false, Optional.of(SPIN), List.of())
            .assumptions()
            .get(0);
    assertTrue(told.startsWith("The jaws press with 81.6 N each at speed, 118.4 N less"), told);
    assertEquals(
        List.of(), Grips.centric(Mechanism.SYNCHRONISED, 3, false, List.of()).assumptions());
  }

  @Test
  void refusesAGripThatTheSpinOpens() {
    Optional<Spin> twice = Optional.of(new Spin(SPIN.speed() * 1.3, 0.5, 0.06));
    Expect.refused(
        "force must be left at speed",
        () -> Grips.centric(Mechanism.SYNCHRONISED, 3, false, twice, List.of()));
    assertTrue(held(Grips.centric(Mechanism.SYNCHRONISED, 3, true, twice, List.of())) > 400);
  }

  @Test
  void refusesTwoJawsAndASpinOfNothing() {
    Expect.refused(
        "needs 3 jaws", () -> Grips.centric(Mechanism.SYNCHRONISED, 2, false, List.of()));
    Expect.refused("must be positive", () -> new Spin(0, 1, 1));
    Expect.refused("must be positive", () -> new Spin(1, Double.NaN, 1));
    Expect.refused("must be positive", () -> new Spin(1e200, 1, 1));
  }
}
