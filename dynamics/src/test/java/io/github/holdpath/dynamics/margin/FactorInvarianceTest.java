package io.github.holdpath.dynamics.margin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Draws;
import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.Drive;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The factors belong to the grip and its load, not to how they are written down: another frame,
 * another order of the patches and other units leave them alone.
 */
class FactorInvarianceTest {
  private static final int GRIPS = 90;

  /** Closed forms over a matrix that is solved again in the other frame. */
  private static final double FIRST = 1e-10;

  /** Pure change of scale. */
  private static final double SCALED = 1e-12;

  /** An iterative solve that goes on until rounding stops it. */
  private static final double WHOLE = 1e-10;

  /** Patches and drives in a frame, with a load. */
  private record Case(
      List<ContactPatch> patches, List<Drive> drives, List<Drive> closures, Wrench load) {
    FirstSlip first() {
      return new HoldModel(patches, drives).firstSlip(load);
    }

    double whole() {
      double scale = Math.max(1e-3, first().factor());
      return new WholeGrip(patches, drives, closures).factor(load, scale).factor();
    }

    double opening() {
      return new HoldModel(patches, drives).opening(load);
    }
  }

  /** Draws grips: cups in a plane, tilted cups, or two pads with one of the mechanisms. */
  private static List<Case> drawn() {
    Draws draws = new Draws();
    List<Case> cases = new ArrayList<>();
    for (int i = 0; i < GRIPS; i++) {
      cases.add(i % 3 == 0 ? jaws(draws, i / 3 % 2 == 0) : cups(draws, i % 3 == 1));
    }
    return cases;
  }

  private static Case cups(Draws draws, boolean flat) {
    List<ContactPatch> patches = new ArrayList<>();
    int count = 1 + (int) draws.number(0, 6);
    for (int i = 0; i < count; i++) {
      Vec3 at = new Vec3(draws.number(-0.2, 0.2), draws.number(-0.2, 0.2), 0);
      Quaternion tilt =
          flat
              ? Quaternion.IDENTITY
              : Quaternion.ofRpy(draws.number(-0.4, 0.4), draws.number(-0.4, 0.4), 0);
      double pull = draws.number(40, 120);
      patches.add(
          patch("cup " + i, new Pose(at, tilt), new PatchShape.Ring(0.02), 0.5, pull, pull, draws));
    }
    return new Case(patches, List.of(), List.of(), load(draws));
  }

  private static Case jaws(Draws draws, boolean together) {
    List<ContactPatch> patches = new ArrayList<>();
    List<Vec3> closing = List.of(new Vec3(0, -1, 0), new Vec3(0, 1, 0));
    double force = draws.number(100, 300);
    double a = draws.number(0.01, 0.05);
    double b = draws.number(0.01, 0.05);
    for (int i = 0; i < 2; i++) {
      Pose at =
          new Pose(
              closing.get(i).times(-0.03), Quaternion.ofAxes(closing.get(i), new Vec3(1, 0, 0)));
      patches.add(patch("pad " + i, at, new PatchShape.Rectangle(a, b), 0.4, force, 0, draws));
    }
    List<Drive> drives = List.of(new Drive(List.of(0, 1), closing));
    return new Case(
        patches, together ? drives : List.of(), together ? List.of() : drives, load(draws));
  }

  private static ContactPatch patch(
      String name, Pose at, PatchShape shape, double mu, double preload, double pull, Draws draws) {
    PatchStiffness soft = new PatchStiffness(draws.number(2e3, 2e4), draws.number(1e3, 1e4));
    double inf = Double.POSITIVE_INFINITY;
    return new ContactPatch(name, at, shape, mu, preload, pull, soft, 4e5, inf, false);
  }

  private static Wrench load(Draws draws) {
    return new Wrench(draws.vector(30), draws.vector(1.5));
  }

  /** The same seen from another frame, up to a metre away and turned any way. */
  private static Case seenFrom(Pose frame, Case c) {
    List<ContactPatch> patches =
        c.patches().stream().map(p -> at(p, frame.times(p.pose()))).toList();
    return new Case(
        patches,
        turned(frame.rotation(), c.drives()),
        turned(frame.rotation(), c.closures()),
        c.load().seenFrom(frame));
  }

  private static ContactPatch at(ContactPatch p, Pose pose) {
    return new ContactPatch(
        p.name(),
        pose,
        p.shape(),
        p.friction(),
        p.preload(),
        p.pull(),
        p.stiffness(),
        p.maxPressure(),
        p.maxPeakPressure(),
        p.ledge());
  }

  private static List<Drive> turned(Quaternion turn, List<Drive> drives) {
    return drives.stream()
        .map(d -> new Drive(d.patches(), d.directions().stream().map(turn::rotate).toList()))
        .toList();
  }

  @Test
  void anotherFrameGivesTheSameFactors() {
    Draws draws = new Draws();
    int telling = 0;
    for (Case c : drawn()) {
      Case moved = seenFrom(draws.pose(), c);
      double first = c.first().factor();
      assertEquals(first, moved.first().factor(), FIRST * first);
      assertEquals(c.opening(), moved.opening(), FIRST * c.opening());
      double whole = c.whole();
      assertEquals(whole, moved.whole(), WHOLE * whole, c.toString());
      telling += first > 0.05 && first < 50 ? 1 : 0;
    }
    assertTrue(telling > GRIPS * 0.8, "cases that tell something: " + telling);
  }

  @Test
  void anotherOrderOfPatchesGivesTheSameFactorsAndThePatchByName() {
    for (Case c : drawn()) {
      if (c.patches().get(0).shape().sealed()) {
        List<ContactPatch> back = new ArrayList<>(c.patches());
        Collections.reverse(back);
        Case other = new Case(back, List.of(), List.of(), c.load());
        FirstSlip first = c.first();
        assertEquals(first.factor(), other.first().factor(), FIRST * first.factor());
        assertEquals(first.patchName(), other.first().patchName());
        assertEquals(first.mode(), other.first().mode());
        assertEquals(c.whole(), other.whole(), WHOLE * c.whole());
      }
    }
  }

  /** Another naming of the pads: the drive's list follows. */
  @Test
  void padsNamedTheOtherWayRoundHoldTheSame() {
    for (Case c : drawn()) {
      if (!c.patches().get(0).shape().sealed()) {
        List<ContactPatch> back = new ArrayList<>(c.patches());
        Collections.reverse(back);
        Case other = new Case(back, swapped(c.drives()), swapped(c.closures()), c.load());
        assertEquals(c.first().factor(), other.first().factor(), FIRST * c.first().factor());
        assertEquals(c.whole(), other.whole(), WHOLE * c.whole());
      }
    }
  }

  private static List<Drive> swapped(List<Drive> drives) {
    return drives.stream()
        .map(d -> new Drive(d.patches().stream().map(i -> 1 - i).toList(), d.directions()))
        .toList();
  }

  /** All forces twice as large, loads and permitted pressure too. */
  @Test
  void twiceTheForcesUnderTwiceTheLoadHoldTheSame() {
    for (Case c : drawn()) {
      assertScaled(c, scaled(c, 2, 1));
    }
  }

  /** All lengths twice as large at the same forces: moments double, pressures are a quarter. */
  @Test
  void twiceTheLengthsUnderTwiceTheMomentsHoldTheSame() {
    for (Case c : drawn()) {
      assertScaled(c, scaled(c, 1, 2));
    }
  }

  /** Twice the pulls and pad forces under the same load: twice the factor. */
  @Test
  void twiceThePreloadCarriesTwiceTheLoad() {
    for (Case c : drawn()) {
      Case strong = scaled(c, 2, 1);
      Case same = new Case(strong.patches(), strong.drives(), strong.closures(), c.load());
      double first = c.first().factor();
      assertEquals(2 * first, same.first().factor(), 2 * SCALED * first);
      assertEquals(2 * c.whole(), same.whole(), 2 * WHOLE * c.whole());
    }
  }

  private static void assertScaled(Case one, Case other) {
    double first = one.first().factor();
    assertEquals(first, other.first().factor(), SCALED * first);
    assertEquals(one.first().mode(), other.first().mode());
    assertEquals(one.whole(), other.whole(), WHOLE * one.whole());
  }

  private static Case scaled(Case c, double force, double length) {
    List<ContactPatch> patches = new ArrayList<>();
    for (ContactPatch p : c.patches()) {
      PatchShape shape =
          p.shape() instanceof PatchShape.Rectangle r
              ? new PatchShape.Rectangle(length * r.a(), length * r.b())
              : new PatchShape.Ring(length * ((PatchShape.Ring) p.shape()).radius());
      patches.add(
          new ContactPatch(
              p.name(),
              new Pose(p.pose().position().times(length), p.pose().rotation()),
              shape,
              p.friction(),
              force * p.preload(),
              force * p.pull(),
              p.stiffness(),
              p.maxPressure() * force / (length * length),
              p.maxPeakPressure(),
              false));
    }
    Wrench load =
        new Wrench(c.load().force().times(force), c.load().moment().times(force * length));
    return new Case(patches, c.drives(), c.closures(), load);
  }
}
