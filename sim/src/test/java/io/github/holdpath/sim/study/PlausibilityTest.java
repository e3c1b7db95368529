package io.github.holdpath.sim.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.CentricGrip;
import io.github.holdpath.dynamics.grip.Cup;
import io.github.holdpath.dynamics.grip.GripModel;
import io.github.holdpath.dynamics.grip.JawGrip;
import io.github.holdpath.dynamics.grip.Ledge;
import io.github.holdpath.dynamics.grip.MagnetFace;
import io.github.holdpath.dynamics.grip.MagnetGrip;
import io.github.holdpath.dynamics.grip.MagnetType;
import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.dynamics.grip.PatchGrip;
import io.github.holdpath.dynamics.grip.SoftGrip;
import io.github.holdpath.dynamics.grip.SuctionGrip;
import io.github.holdpath.dynamics.grip.Vee;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.Jobs;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.scene.PartShape;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PlausibilityTest {
  private static final Route THERE_AND_BACK =
      Jobs.route(LawKind.TRAPEZOID, Jobs.LIMITS, Jobs.START, Jobs.by(0.4, 0, 0), Jobs.START);
  private static final PartShape BOX = new PartShape.Box(new Vec3(0.3, 0.2, 0.1));
  private static final Vec3 BELOW = new Vec3(0, 0, 0.05);
  private static final GripModel TWO_CUPS =
      Jobs.cups(100, 0.5, new Vec3(0.1, 0, 0), new Vec3(-0.1, 0, 0));

  @Test
  void cleanScenesHaveNone() {
    assertEquals(List.of(), warnings(TWO_CUPS, BOX, BELOW, BELOW));
    GripModel jaws = Jobs.jaws(Mechanism.SYNCHRONISED, 100, 0.2);
    PartShape bar = new PartShape.Box(new Vec3(0.1, 0.04, 0.03));
    assertEquals(List.of(), warnings(jaws, bar, Vec3.ZERO, Vec3.ZERO));
  }

  @Test
  void cupOffThePartIsNamedWithItsOverhang() {
    GripModel cups = Jobs.cups(100, 0.5, new Vec3(0.135, 0, 0), new Vec3(-0.1, 0, 0));
    String warning = only(warnings(cups, BOX, BELOW, BELOW));
    assertTrue(warning.startsWith("Cup 1 reaches 5.0 mm off the part"), warning);
  }

  @Test
  void cupOverTheHoleOfATubeIsOffThePart() {
    PartShape tube = new PartShape.Cylinder(0.3, 0.1, 0.1, 2);
    GripModel cups = Jobs.cups(100, 0.5, new Vec3(0.065, 0, 0), new Vec3(-0.1, 0, 0));
    String warning = only(warnings(cups, tube, BELOW, BELOW));
    assertTrue(warning.startsWith("Cup 1 reaches 5.0 mm off the part"), warning);
  }

  @Test
  void padOffThePartIsNamed() {
    GripModel jaws = Jobs.jaws(Mechanism.SYNCHRONISED, 100, 0.2);
    PartShape bar = new PartShape.Box(new Vec3(0.02, 0.04, 0.03));
    List<String> warnings = warnings(jaws, bar, Vec3.ZERO, Vec3.ZERO);
    assertEquals(2, warnings.size());
    assertTrue(warnings.get(0).startsWith("Pad +y reaches 5.0 mm off the part"), warnings.get(0));
  }

  @Test
  void ovalCupIsSeenInItsWholeLength() {
    Cup cup = new Cup("cup", new Vec3(0.1, 0, 0), 0.11, 0.03, 100, PatchStiffness.ALIKE);
    GripModel grip = new SuctionGrip(List.of(cup), List.of(), 0.5, Jobs.NONE);
    String warning = only(warnings(grip, BOX, BELOW, BELOW));
    assertTrue(warning.startsWith("Cup reaches 5.0 mm off the part"), warning);
    Cup across = new Cup("cup", new Vec3(0.1, 0, 0), 0.03, 0.11, 100, PatchStiffness.ALIKE);
    GripModel turned = new SuctionGrip(List.of(across), List.of(), 0.5, Jobs.NONE);
    assertEquals(List.of(), warnings(turned, BOX, BELOW, BELOW));
  }

  @Test
  void cellsThatDoNotPullAreCounted() {
    SuctionGrip two = (SuctionGrip) TWO_CUPS;
    GripModel grip = new SuctionGrip(two.cups(), List.of(), 0.5, Jobs.NONE, 3);
    String warning = only(warnings(grip, BOX, BELOW, BELOW));
    assertTrue(warning.startsWith("3 of 5 cells of the pad lie off the part"), warning);
  }

  @Test
  void magnetFacesAreLookedAtLikeCups() {
    GripModel magnet = magnet(new PatchShape.Rectangle(0.08, 0.04), new Vec3(0.12, 0, 0));
    String warning = only(warnings(magnet, BOX, BELOW, BELOW));
    assertTrue(warning.startsWith("Face reaches 10.0 mm off the part"), warning);
  }

  @Test
  void flatMagnetOnACurvedSideLosesItsPull() {
    PartShape pipe = new PartShape.Cylinder(0.1, 0, 0.3, 0);
    GripModel magnet = magnet(new PatchShape.Disc(0.02), Vec3.ZERO);
    String warning = only(warnings(magnet, pipe, BELOW, BELOW));
    assertTrue(warning.startsWith("Face lies flat on the curved side of a cylinder"), warning);
  }

  private static GripModel magnet(PatchShape shape, Vec3 at) {
    MagnetFace face = new MagnetFace("face", at, shape, 240, PatchStiffness.ALIKE);
    return new MagnetGrip(List.of(face), MagnetType.ELECTROMAGNET, List.of(), 0.15, Jobs.NONE);
  }

  @Test
  void electromagnetIsToldToLetGo() {
    Scene scene =
        Jobs.scene(
            Jobs.point(1, BELOW), magnet(new PatchShape.Disc(0.02), Vec3.ZERO), THERE_AND_BACK);
    List<String> all = HoldStudy.run(scene, 2).assumptions();
    assertEquals(1, count(all, "An electromagnet lets go when its power fails"));
    assertEquals(1, count(all, "One sheet hangs on the magnets"));
  }

  /** Flanks of a V touch a bar of 40 mm at its radius, wherever they look from. */
  @Test
  void slantedPatchesTouchARoundBarAtItsRadius() {
    PartShape bar = new PartShape.Cylinder(0.04, 0, 0.2, 0);
    assertEquals(List.of(), warnings(flanks(0.02), bar, Vec3.ZERO, Vec3.ZERO));
    List<String> away = warnings(flanks(0.023), bar, Vec3.ZERO, Vec3.ZERO);
    assertEquals(2, away.size());
    assertTrue(away.get(0).startsWith("Upper is 3.0 mm away from the part's face"), away.get(0));
  }

  private static GripModel flanks(double distance) {
    List<ContactPatch> patches = new ArrayList<>();
    for (double side : new double[] {1, -1}) {
      Vec3 normal = new Vec3(0, side, -side).unit();
      patches.add(
          new ContactPatch(
              side > 0 ? "upper" : "lower",
              new Pose(normal.times(-distance), Ledge.facing(normal)),
              new PatchShape.Rectangle(0.03, 0.01),
              0.2,
              100,
              0,
              PatchStiffness.ALIKE,
              Jobs.NONE,
              Jobs.NONE,
              false));
    }
    return new PatchGrip(patches, List.of(), List.of());
  }

  @Test
  void thinSheetBendsBetweenItsCups() {
    PartShape sheet = new PartShape.Box(new Vec3(0.3, 0.2, 0.0015));
    Vec3 middle = new Vec3(0, 0, 0.00075);
    String warning = only(warnings(TWO_CUPS, sheet, middle, middle));
    assertTrue(warning.contains("1.5 mm thick between cups 200 mm apart"), warning);
    PartShape board = new PartShape.Box(new Vec3(0.3, 0.2, 0.0021));
    Vec3 its = new Vec3(0, 0, 0.00105);
    assertEquals(List.of(), warnings(TWO_CUPS, board, its, its));
  }

  @Test
  void roundPartInFlatPadsIsJudgedAsALine() {
    GripModel jaws =
        Jobs.jaws(new PatchShape.Line(0.03), Mechanism.SYNCHRONISED, 100, 0.2, Jobs.NONE);
    PartShape shaft = new PartShape.Cylinder(0.04, 0, 0.2, 0);
    String warning = only(warnings(jaws, shaft, Vec3.ZERO, Vec3.ZERO));
    assertTrue(warning.contains("line of contact"), warning);
  }

  @Test
  void routeThatEndsElsewhereDoesNotReturn() {
    Route away = Jobs.route(LawKind.TRAPEZOID, Jobs.LIMITS, Jobs.START, Jobs.by(0.4, 0, 0));
    Scene scene = Jobs.scene(Jobs.point(1, BELOW), TWO_CUPS, away);
    String warning = only(HoldStudy.run(scene, 2).warnings());
    assertTrue(warning.contains("does not return to its start"), warning);
  }

  @Test
  void centreOfMassOutsideThePartIsToldByHowMuch() {
    String warning = only(warnings(TWO_CUPS, BOX, BELOW, new Vec3(0, 0.1125, 0.05)));
    assertTrue(warning.startsWith("The centre of mass lies 12.5 mm outside"), warning);
  }

  @Test
  void faceBesideThePadsIsToldAwayOrInside() {
    String away = warnings(TWO_CUPS, BOX, new Vec3(0, 0, 0.07), BELOW).get(0);
    assertTrue(away.startsWith("Cup 1 is 20.0 mm away from the part's face"), away);
    String inside = warnings(TWO_CUPS, BOX, new Vec3(0, 0, 0.04), BELOW).get(0);
    assertTrue(inside.startsWith("Cup 1 is 10.0 mm inside the part's face"), inside);
  }

  @Test
  void padThatDoesNotTouchIsTold() {
    GripModel jaws = Jobs.jaws(Mechanism.SYNCHRONISED, 100, 0.2);
    PartShape narrow = new PartShape.Box(new Vec3(0.1, 0.03, 0.03));
    List<String> warnings = warnings(jaws, narrow, Vec3.ZERO, Vec3.ZERO);
    assertEquals(2, warnings.size());
    assertTrue(warnings.get(1).startsWith("Pad -y is 5.0 mm away"), warnings.get(1));
  }

  private static CentricGrip centric(int count, double diameter, boolean inside, PatchShape pad) {
    return new CentricGrip(
        count,
        diameter,
        inside,
        pad,
        pad instanceof PatchShape.Line,
        Mechanism.SYNCHRONISED,
        300,
        Optional.empty(),
        0.2,
        PatchStiffness.ALIKE,
        Jobs.NONE,
        Jobs.NONE,
        List.of(),
        Optional.empty());
  }

  private static final PatchShape PAD = new PatchShape.Rectangle(0.012, 0.02);
  private static final PartShape RING = new PartShape.Cylinder(0.08, 0.05, 0.03, 2);

  @Test
  void centricPadsOnARingAreClean() {
    assertEquals(List.of(), warnings(centric(3, 0.08, false, PAD), RING, Vec3.ZERO, Vec3.ZERO));
    assertEquals(List.of(), warnings(centric(5, 0.05, true, PAD), RING, Vec3.ZERO, Vec3.ZERO));
  }

  @Test
  void centricPadsThatDoNotTouchAreTold() {
    List<String> wide = warnings(centric(3, 0.09, false, PAD), RING, Vec3.ZERO, Vec3.ZERO);
    assertEquals(3, wide.size());
    assertTrue(wide.get(1).startsWith("Pad 2 is 5.0 mm away from the part's face"), wide.get(1));
    List<String> narrow = warnings(centric(3, 0.04, true, PAD), RING, Vec3.ZERO, Vec3.ZERO);
    assertEquals(3, narrow.size());
    assertTrue(narrow.get(2).startsWith("Pad 3 is 5.0 mm away"), narrow.get(2));
    List<String> deep = warnings(centric(3, 0.06, true, PAD), RING, Vec3.ZERO, Vec3.ZERO);
    assertTrue(deep.get(2).startsWith("Pad 3 is 5.0 mm inside"), deep.get(2));
  }

  @Test
  void centricPadOffTheEndOfARingIsTold() {
    PartShape thin = new PartShape.Cylinder(0.08, 0.05, 0.012, 2);
    List<String> warnings = warnings(centric(3, 0.08, false, PAD), thin, Vec3.ZERO, Vec3.ZERO);
    assertEquals(3, warnings.size());
    assertTrue(warnings.get(1).startsWith("Pad 2 reaches 4.0 mm off the part"), warnings.get(1));
  }

  @Test
  void jawsInAPartWithoutAHoleAreTold() {
    PartShape solid = new PartShape.Cylinder(0.08, 0, 0.03, 2);
    List<String> warnings = warnings(centric(3, 0.05, true, PAD), solid, Vec3.ZERO, Vec3.ZERO);
    assertEquals(3, warnings.size());
    assertTrue(warnings.get(0).startsWith("Pad 1 presses outward, but the part's cylinder has no"));
  }

  @Test
  void threeJawsOnABoxMeetItAslant() {
    PartShape box = new PartShape.Box(new Vec3(0.08, 0.08, 0.03));
    List<String> warnings = warnings(centric(3, 0.08, false, PAD), box, Vec3.ZERO, Vec3.ZERO);
    assertEquals(2, warnings.size());
    assertTrue(warnings.get(0).startsWith("Pad 2 meets the part's box aslant"), warnings.get(0));
    assertEquals(List.of(), warnings(centric(4, 0.08, false, PAD), box, Vec3.ZERO, Vec3.ZERO));
  }

  @Test
  void flatCentricPadsOnABarAreJudgedAsLines() {
    GripModel grip = centric(3, 0.08, false, new PatchShape.Line(0.02));
    String warning = only(warnings(grip, RING, Vec3.ZERO, Vec3.ZERO));
    assertTrue(warning.contains("line of contact"), warning);
  }

  @Test
  void softFingersRoundABallAreClean() {
    GripModel grip = soft(0.07);
    PartShape ball = new PartShape.Sphere(0.07);
    assertEquals(List.of(), warnings(grip, ball, Vec3.ZERO, Vec3.ZERO));
    List<String> high = warnings(grip, ball, new Vec3(0, 0, 0.04), new Vec3(0, 0, 0.04));
    assertTrue(high.get(0).startsWith("Finger 1 reaches "), high.get(0));
    List<String> deep = warnings(soft(0.06), ball, Vec3.ZERO, Vec3.ZERO);
    assertTrue(deep.get(2).startsWith("Finger 3 is 5.0 mm inside"), deep.get(2));
  }

  private static SoftGrip soft(double diameter) {
    PatchStiffness give = new PatchStiffness(1500, 600);
    return new SoftGrip(
        3,
        diameter,
        0.015,
        0.03,
        Mechanism.INDEPENDENT,
        6,
        Jobs.NONE,
        0.7,
        give,
        Jobs.NONE,
        Jobs.NONE,
        List.of());
  }

  @Test
  void veePadsRoundABarOfTheirSizeAreJudgedAsLines() {
    GripModel grip = vee();
    PartShape bar = new PartShape.Cylinder(0.04, 0, 0.2, 0);
    String warning = only(warnings(grip, bar, Vec3.ZERO, Vec3.ZERO));
    assertTrue(warning.contains("line of contact"), warning);
    PartShape thin = new PartShape.Cylinder(0.03, 0, 0.2, 0);
    List<String> away = warnings(grip, thin, Vec3.ZERO, Vec3.ZERO);
    assertEquals(5, away.size());
    assertTrue(away.get(3).startsWith("Pad -y flank -z is 5.0 mm away"), away.get(3));
    PartShape brief = new PartShape.Cylinder(0.04, 0, 0.02, 0);
    List<String> off = warnings(grip, brief, Vec3.ZERO, Vec3.ZERO);
    assertTrue(off.get(0).startsWith("Pad +y flank +z reaches 5.0 mm off"), off.get(0));
  }

  private static JawGrip vee() {
    return new JawGrip(
        0.04,
        new PatchShape.Line(0.03),
        new Vec3(1, 0, 0),
        Optional.of(new Vee(Math.toRadians(120))),
        Mechanism.SYNCHRONISED,
        300,
        0.2,
        PatchStiffness.ALIKE,
        Jobs.NONE,
        Jobs.NONE,
        List.of(),
        Optional.empty());
  }

  @Test
  void restsOnWhatTheGripTakesForGranted() {
    Scene scene = Jobs.scene(Jobs.point(0.2, Vec3.ZERO), soft(0.07), THERE_AND_BACK);
    assertEquals(1, count(HoldStudy.run(scene, 2).assumptions(), "Soft fingers wrap round"));
  }

  @Test
  void curvedFaceUnderACupMustSeal() {
    PartShape pipe = new PartShape.Cylinder(0.1, 0, 0.3, 0);
    List<String> warnings = warnings(TWO_CUPS, pipe, BELOW, BELOW);
    assertEquals(2, warnings.size());
    assertTrue(warnings.get(0).startsWith("Cup 1 sits on the curved side of a cylinder"));
  }

  @Test
  void restsOnWhatNobodyGave() {
    Scene scene =
        Jobs.with(
            Jobs.scene(Jobs.point(1, BELOW), TWO_CUPS, THERE_AND_BACK),
            List.of(
                new Scene.InputNote("grip/friction", "0.5", Scene.Origin.ASSUMED),
                new Scene.InputNote("part/mass", "1 kg", Scene.Origin.MEASURED),
                new Scene.InputNote("grip/force", "9 N", Scene.Origin.NOT_STATED)));
    List<String> all = HoldStudy.run(scene, 2).assumptions();
    assertTrue(all.get(0).startsWith("grip/friction 0.5: assumed; "), all.get(0));
    assertTrue(all.get(1).startsWith("part/mass 1 kg: measured; "), all.get(1));
    assertTrue(all.get(2).startsWith("grip/force 9 N: origin not stated; "), all.get(2));
    assertEquals(1, count(all, "No stiffness is given"));
    assertEquals(1, count(all, "Crush is not checked"));
    assertEquals(all.size(), all.stream().distinct().count());
  }

  @Test
  void restsOnNeitherWhereBothAreGiven() {
    Cup cup = new Cup("cup", Vec3.ZERO, 0.04, 100, PatchStiffness.ofNormal(6000));
    GripModel grip = new SuctionGrip(List.of(cup), List.of(), 0.5, 3e5);
    List<String> all =
        HoldStudy.run(Jobs.scene(Jobs.point(1, BELOW), grip, THERE_AND_BACK), 2).assumptions();
    assertEquals(0, count(all, "No stiffness is given"));
    assertEquals(0, count(all, "Crush is not checked"));
  }

  private static long count(List<String> sentences, String start) {
    return sentences.stream().filter(s -> s.startsWith(start)).count();
  }

  private static String only(List<String> warnings) {
    assertEquals(1, warnings.size(), warnings.toString());
    return warnings.get(0);
  }

  private static List<String> warnings(
      GripModel grip, PartShape shape, Vec3 middle, Vec3 centreOfMass) {
    Scene scene = Jobs.scene(Jobs.point(1, centreOfMass), grip, THERE_AND_BACK);
    return HoldStudy.run(Jobs.shaped(scene, shape, middle), 2).warnings();
  }
}
