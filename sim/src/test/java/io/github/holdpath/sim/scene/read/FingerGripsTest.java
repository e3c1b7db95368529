package io.github.holdpath.sim.scene.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.CentricGrip;
import io.github.holdpath.dynamics.grip.GuideRating;
import io.github.holdpath.dynamics.grip.JawGrip;
import io.github.holdpath.dynamics.grip.JawGuide;
import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.dynamics.grip.SoftGrip;
import io.github.holdpath.dynamics.grip.Vee;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.study.HoldStudy;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Grips that clamp with fingers, as scene files give them. */
class FingerGripsTest {
  /** Products and quotients of a few doubles. */
  private static final double RELATIVE = 1e-12;

  private static final double NONE = Double.POSITIVE_INFINITY;
  private static final Path VEE = SceneFiles.GOOD.resolve("vee.json");
  private static final Path CENTRIC = SceneFiles.GOOD.resolve("centric.json");

  @TempDir Path folder;

  @Test
  void readsEveryFieldOfVeeJaws() {
    JawGrip grip = assertInstanceOf(JawGrip.class, SceneFiles.good("vee.json").grip());
    assertEquals(Optional.of(new Vee(Math.toRadians(120))), grip.vee());
    // The bar is 25 mm long, shorter than the pad.
    assertEquals(new PatchShape.Line(0.025), grip.padShape());
    assertEquals(new Vec3(1, 0, 0), grip.padAlong());
    assertEquals(Mechanism.SELF_LOCKING, grip.mechanism());
    assertEquals(PatchStiffness.ofNormal(50_000), grip.stiffness());
    assertEquals(200_000, grip.ledges().get(0).normalStiffness());
    assertEquals(Optional.of(new JawGuide(0.06, new GuideRating(48, 12, 30, 1000))), grip.guide());
    assertEquals(
        List.of("pad +y flank +z", "pad +y flank -z", "pad -y flank +z", "pad -y flank -z", "stop"),
        grip.patches().stream().map(ContactPatch::name).toList());
    assertEquals(400 / Math.sqrt(3), grip.patches().get(0).preload(), 400 * RELATIVE);
  }

  @Test
  void aBarLiesInTheVeeAlongItsAxis() {
    Map<String, String> set =
        Map.of(
            "part/cylinder",
            "40 15 mm z",
            "grip/pads/vee/along",
            "z",
            "grip/pads/size",
            "30 18 mm");
    JawGrip grip = (JawGrip) SceneFiles.read(VEE, set).scene().grip();
    assertEquals(new PatchShape.Line(0.015), grip.padShape());
    assertEquals(new Vec3(0, 0, 1), grip.padAlong());
    assertEquals("pad +y flank +x", grip.patches().get(0).name());
  }

  @Test
  void aBarOfUnknownShapeLiesWhereTheVeeSays() {
    String text =
        SceneFiles.text(VEE)
            .replace("\"cylinder\": \"40 25 mm x\", ", "")
            .replace("uniform cylinder", "0.01 0.01 0.01 0 0 0 kg*m^2")
            .replace("\"along\": \"x\"", "\"along\": \"z\"");
    Path file = SceneFiles.write(folder.resolve("bar.json"), text);
    JawGrip grip = (JawGrip) SceneFiles.read(file, Map.of()).scene().grip();
    assertEquals(new PatchShape.Line(0.02), grip.padShape());
    assertEquals(new Vec3(0, 0, 1), grip.padAlong());
  }

  @Test
  void readsEveryFieldOfACentricGrip() {
    Scene scene = SceneFiles.good("centric.json");
    CentricGrip grip = assertInstanceOf(CentricGrip.class, scene.grip());
    assertEquals(3, grip.count());
    assertEquals(0.08, grip.diameter());
    assertTrue(grip.inside());
    assertEquals(new PatchShape.Rectangle(0.012, 0.02), grip.padShape());
    assertFalse(grip.padUpright());
    assertEquals(Mechanism.SYNCHRONISED, grip.mechanism());
    assertEquals(500, grip.force());
    assertEquals(20 * Math.PI, grip.spin().orElseThrow().speed(), 20 * Math.PI * RELATIVE);
    assertEquals(0.5, grip.spin().orElseThrow().jawMass());
    assertEquals(0.06, grip.spin().orElseThrow().jawRadius());
    assertEquals(new PatchStiffness(300_000, 150_000), grip.stiffness());
    assertEquals(4e6, grip.maxPressure());
    assertEquals(9e6, grip.maxPeakPressure());
    assertEquals(Optional.of(new JawGuide(0.04, new GuideRating(30, 20, 25, NONE))), grip.guide());
    assertEquals(Vec3.ZERO, scene.part().shapeCentre());
    assertEquals("250 N, 500.0 N without the safety of 2.0 in it", text(scene, "grip/force"));
    assertEquals("600 1/min", text(scene, "grip/spin/speed"));
  }

  @Test
  void flatCentricPadsTouchABarInLines() {
    CentricGrip grip =
        (CentricGrip)
            SceneFiles.read(
                    CENTRIC, Map.of("grip/pads/contact", "line", "part/tube", "120 80 15 mm z"))
                .scene()
                .grip();
    assertEquals(new PatchShape.Line(0.015), grip.padShape());
    assertTrue(grip.padUpright());
  }

  @Test
  void readsEveryFieldOfASoftGrip() {
    Scene scene = SceneFiles.good("soft.json");
    SoftGrip grip = assertInstanceOf(SoftGrip.class, scene.grip());
    assertEquals(4, grip.count());
    assertEquals(0.07, grip.diameter());
    assertEquals(0.015, grip.sizeAcross());
    assertEquals(0.03, grip.sizeAlong());
    assertEquals(Mechanism.INDEPENDENT, grip.mechanism());
    assertEquals(6, grip.force());
    assertEquals(18, grip.maxForce());
    assertEquals(new PatchStiffness(1500, 600), grip.stiffness());
    // 60 kPa on 450 mm^2 are 27 N: the 18 N count.
    assertEquals(18, grip.patches().get(0).maxNormal(), 18 * RELATIVE);
    assertEquals("18 N", text(scene, "grip/maxForce"));
    assertEquals(Vec3.ZERO, scene.part().shapeCentre());
  }

  @ParameterizedTest
  @CsvSource({"40 60 mm", "20 40 mm"})
  void theEndsOfTheRangeAreReached(String range) {
    Scene scene = SceneFiles.read(VEE, Map.of("grip/range", range)).scene();
    assertEquals(0.04, ((JawGrip) scene.grip()).opening());
  }

  /** The whole way from file to verdict, without a warning but for lines of contact. */
  @ParameterizedTest
  @ValueSource(strings = {"vee.json", "centric.json", "soft.json"})
  void isJudged(String file) {
    var result = HoldStudy.run(SceneFiles.good(file), 2);
    assertTrue(result.factor() > 0, file);
    assertTrue(
        result.warnings().stream()
            .allMatch(w -> w.contains("line of contact") || w.contains("does not return")),
        result.warnings().toString());
  }

  private static String text(Scene scene, String pointer) {
    return scene.inputs().stream()
        .filter(n -> n.pointer().equals(pointer))
        .findFirst()
        .orElseThrow()
        .text();
  }
}
