package io.github.holdpath.dynamics.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.holdpath.dynamics.Expect;
import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Worked by hand: 400 N a jaw, the pads' middle 60 mm beyond the guides. */
class GuideLoadTest {
  private static final double FORCE = 400;

  private static JawGrip jaws(Optional<JawGuide> guide) {
    double none = Grips.NO_LIMIT;
    return new JawGrip(
        0.05,
        new PatchShape.Rectangle(0.04, 0.02),
        new Vec3(1, 0, 0),
        Optional.empty(),
        Mechanism.SYNCHRONISED,
        FORCE,
        0.3,
        Grips.SOFT,
        none,
        none,
        List.of(),
        guide);
  }

  private static List<GuideLoad> loads(GripModel grip, Wrench load) {
    List<ContactPatch> patches = grip.patches();
    List<Wrench> shares = HoldModel.of(grip).shares(load);
    return grip.guides().stream().map(g -> GuideLoad.of(g, patches, shares)).toList();
  }

  @Test
  void gripAloneBendsTheJawOpen() {
    // 400 N x 0.060 m = 24 N m about the axis across; half of what the rating of 48 N m allows.
    for (GuideLoad load : loads(jaws(Optional.of(Grips.GUIDE)), Wrench.ZERO)) {
      Expect.near(new Vec3(24, 0, 0), load.load().moment(), 24 * Expect.ALGEBRA);
      Expect.near(new Vec3(0, -FORCE, 0), load.load().force(), FORCE * Expect.ALGEBRA);
      assertEquals(0.5, load.use(), 10 * Expect.ALGEBRA);
    }
  }

  /**
   * 100 N sideways through the middle of the pads: 50 N a jaw, 3 N m about the closing axis and
   * nothing more about the others. Of the rating: 24/48 + 3/12 + 50/1000 = 0.8.
   */
  @Test
  void loadAcrossTurnsTheJawAboutItsClosingAxis() {
    Wrench load = new Wrench(new Vec3(100, 0, 0), Vec3.ZERO);
    List<GuideLoad> both = loads(jaws(Optional.of(Grips.GUIDE)), load);
    assertEquals(List.of("pad +y", "pad -y"), both.stream().map(g -> g.guide().name()).toList());
    Expect.near(new Vec3(24, 3, 0), both.get(0).load().moment(), 1e-9);
    Expect.near(new Vec3(24, -3, 0), both.get(1).load().moment(), 1e-9);
    assertEquals(0.8, both.get(0).use(), 1e-9);
    assertEquals(0.8, both.get(1).use(), 1e-9);
  }

  /** 100 N along z pulls straight at the guide: force alone. */
  @Test
  void loadAlongZPullsAtTheGuide() {
    Wrench load = new Wrench(new Vec3(0, 0, 100), Vec3.ZERO);
    for (GuideLoad g : loads(jaws(Optional.of(Grips.GUIDE)), load)) {
      Expect.near(new Vec3(24, 0, 0), g.load().moment(), 1e-9);
      assertEquals(0.55, g.use(), 1e-9);
    }
  }

  /** Centric jaws are alike: the same bending about each jaw's own axis across. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void eachCentricJawBendsAboutItsOwnAxis(boolean inside) {
    GripModel grip = Grips.centric(Mechanism.SYNCHRONISED, 3, inside, List.of());
    List<GuideLoad> loads = loads(grip, Wrench.ZERO);
    assertEquals(3, loads.size());
    for (GuideLoad load : loads) {
      Expect.near(new Vec3(12, 0, 0), load.load().moment(), 1e-9);
    }
  }

  @Test
  void bothFlanksOfAVeeLoadTheGuideOfTheirJaw() {
    GripModel grip = Grips.vee(Mechanism.INDEPENDENT, Math.toRadians(90), true);
    for (GuideLoad load : loads(grip, Wrench.ZERO)) {
      assertEquals(2, load.guide().patches().size());
      Expect.near(new Vec3(12, 0, 0), load.load().moment(), 1e-9);
      Expect.near(new Vec3(0, -200, 0), load.load().force(), 1e-9);
    }
  }

  @Test
  void whatIsNotRatedIsNotUsed() {
    double none = Grips.NO_LIMIT;
    JawGuide unrated = new JawGuide(0.06, new GuideRating(none, none, none, none));
    for (GuideLoad load : loads(jaws(Optional.of(unrated)), Wrench.ZERO)) {
      assertEquals(0, load.use());
    }
    assertEquals(List.of(), jaws(Optional.empty()).guides());
    assertEquals(List.of(), Grips.fourCups(List.of()).guides());
  }

  @Test
  void refusesWhatCannotBe() {
    Expect.refused("overhang must not be", () -> new JawGuide(-0.01, Grips.GUIDE.rating()));
    Expect.refused("ratings must be positive", () -> new GuideRating(1, 1, 0, 1));
    JawGrip grip = jaws(Optional.of(Grips.GUIDE));
    List<Wrench> one = Collections.singletonList(Wrench.ZERO);
    Expect.refused(
        "a share for each of 2", () -> GuideLoad.of(grip.guides().get(0), grip.patches(), one));
    Guide guide = grip.guides().get(0);
    Expect.refused(
        "at least one patch", () -> new Guide("jaw", List.of(), guide.pose(), guide.rating()));
  }
}
