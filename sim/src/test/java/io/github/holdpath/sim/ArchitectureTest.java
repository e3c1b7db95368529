package io.github.holdpath.sim;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionSource;
import io.github.holdpath.sim.motion.recorded.Recording;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.scene.Scene;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.concurrent.ThreadLocalRandom;

/** Holds the direction from motion to command line, and who may read, print and ask the clock. */
@AnalyzeClasses(
    packages = "io.github.holdpath.sim",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  private static final String BASE = "io.github.holdpath.sim";
  private static final String SCENE = BASE + ".scene..";
  private static final String REPORT = BASE + ".report..";
  private static final String CLI = BASE + ".cli..";

  @ArchTest
  static void theRulesSeeTheModule(JavaClasses classes) {
    assertTrue(classes.contain(Scene.class) && classes.contain(Motion.class));
  }

  @ArchTest
  static final ArchRule knowsNoWindow =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("io.github.holdpath.viewer..", "java.awt..", "javax.swing..")
          .because("a study runs on machines without a screen");

  @ArchTest
  static final ArchRule dependenciesPointOneWay =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .withOptionalLayers(true)
          .layer("path")
          .definedBy(BASE + ".path..")
          .layer("timelaw")
          .definedBy(BASE + ".timelaw..")
          .layer("timing")
          .definedBy(BASE + ".timing..")
          .layer("robot")
          .definedBy(BASE + ".robot..")
          .layer("motion")
          .definedBy(BASE + ".motion..")
          .layer("surface")
          .definedBy(BASE + ".surface..")
          .layer("scene")
          .definedBy(SCENE)
          .layer("study")
          .definedBy(BASE + ".study..")
          .layer("report")
          .definedBy(REPORT)
          .layer("cli")
          .definedBy(CLI)
          .whereLayer("path")
          .mayNotAccessAnyLayer()
          .whereLayer("timelaw")
          .mayNotAccessAnyLayer()
          .whereLayer("timing")
          .mayOnlyAccessLayers("path", "timelaw")
          .whereLayer("robot")
          .mayOnlyAccessLayers("path")
          .whereLayer("surface")
          .mayNotAccessAnyLayer()
          .whereLayer("motion")
          .mayOnlyAccessLayers("path", "timelaw", "robot")
          .whereLayer("scene")
          .mayOnlyAccessLayers("path", "timelaw", "robot", "motion", "surface")
          .whereLayer("study")
          .mayOnlyAccessLayers("path", "timelaw", "robot", "motion", "surface", "scene")
          .whereLayer("report")
          .mayOnlyAccessLayers("path", "timelaw", "robot", "motion", "surface", "scene", "study")
          .ensureAllClassesAreContainedInArchitectureIgnoring(BASE)
          .because("data flows from the scene to the report, and no later step reaches back");

  @ArchTest
  static final ArchRule scenePackagesPointOneWay =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("quantity")
          .definedBy(BASE + ".scene.quantity")
          .layer("values")
          .definedBy(BASE + ".scene")
          .layer("json")
          .definedBy(BASE + ".scene.json")
          .layer("field")
          .definedBy(BASE + ".scene.field")
          .layer("grip")
          .definedBy(BASE + ".scene.grip")
          .layer("recording")
          .definedBy(BASE + ".scene.recording")
          .layer("route")
          .definedBy(BASE + ".scene.route")
          .layer("read")
          .definedBy(BASE + ".scene.read")
          .whereLayer("quantity")
          .mayNotAccessAnyLayer()
          .whereLayer("values")
          .mayOnlyAccessLayers("quantity")
          .whereLayer("json")
          .mayOnlyAccessLayers("values")
          .whereLayer("field")
          .mayOnlyAccessLayers("quantity", "values", "json")
          .whereLayer("grip")
          .mayOnlyAccessLayers("quantity", "values", "json", "field")
          .whereLayer("recording")
          .mayOnlyAccessLayers("quantity", "values", "json", "field")
          .whereLayer("route")
          .mayOnlyAccessLayers("quantity", "values", "json", "field", "recording")
          .layer("robot")
          .definedBy(BASE + ".scene.robot")
          .whereLayer("robot")
          .mayOnlyAccessLayers("quantity", "values", "json", "field", "route")
          .whereLayer("read")
          .mayNotBeAccessedByAnyLayer()
          .because("text becomes nodes, nodes fields and fields values; each step is tested alone");

  @ArchTest
  static final ArchRule motionPackagesPointOneWay =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("motion")
          .definedBy(BASE + ".motion")
          .layer("recorded")
          .definedBy(BASE + ".motion.recorded")
          .layer("joint")
          .definedBy(BASE + ".motion.joint")
          .layer("route")
          .definedBy(BASE + ".motion.route")
          .whereLayer("motion")
          .mayNotAccessAnyLayer()
          .whereLayer("recorded")
          .mayOnlyAccessLayers("motion")
          .whereLayer("joint")
          .mayOnlyAccessLayers("motion")
          .whereLayer("route")
          .mayOnlyAccessLayers("motion", "joint")
          .because("joints follow any motion; only a route is planned along them");

  @ArchTest
  static final ArchRule motionsComeFromRoutesAndRecordings =
      classes()
          .that()
          .implement(MotionSource.class)
          .should()
          .be(Route.class)
          .orShould()
          .be(Recording.class)
          .because("whoever asks which of the two it is would take a third for a recording");

  @ArchTest
  static final ArchRule othersEnterTheSceneByItsDoors =
      noClasses()
          .that()
          .resideOutsideOfPackage(SCENE)
          .should()
          .dependOnClassesThat(
              resideInAPackage(SCENE)
                  .and(not(resideInAnyPackage(BASE + ".scene", BASE + ".scene.read"))))
          .because("whoever uses a scene takes its values and its reader, never fields or nodes");

  @ArchTest
  static final ArchRule inTheSceneTextMeetsJsonAtTwoPlaces =
      noClasses()
          .that()
          .resideInAPackage(SCENE)
          .and()
          .resideOutsideOfPackages(BASE + ".scene.json", BASE + ".scene.read")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("tools.jackson..")
          .because("the parser is in json and the schema's writer in read; between them are nodes");

  @ArchTest
  static final ArchRule packagesHaveNoCycles =
      slices()
          .matching(BASE + ".(*)..")
          .should()
          .beFreeOfCycles()
          .because("each step must be usable alone as a library");

  @ArchTest
  static final ArchRule onlySceneAndReportKnowJson =
      noClasses()
          .that()
          .resideOutsideOfPackages(SCENE, REPORT)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("tools.jackson..", "com.fasterxml..", "com.networknt..")
          .allowEmptyShould(true)
          .because("the scene reads JSON, the report writes it; between them are values");

  @ArchTest
  static final ArchRule reportOnlyWritesJson =
      noClasses()
          .that()
          .resideInAPackage(REPORT)
          .should()
          .dependOnClassesThat(
              resideInAnyPackage("tools.jackson.databind..", "com.networknt..")
                  .or(nameMatching("tools\\.jackson\\.core\\.JsonParser.*")))
          .allowEmptyShould(true)
          .because("every fault of a file is found and placed in the scene's packages");

  @ArchTest
  static final ArchRule onlyTheCommandLinePrintsAndExits =
      noClasses()
          .that()
          .resideOutsideOfPackage(CLI)
          .should(ACCESS_STANDARD_STREAMS)
          .orShould()
          .callMethod(System.class, "exit", int.class)
          .orShould()
          .callMethod(Runtime.class, "exit", int.class)
          .orShould()
          .callMethod(Runtime.class, "halt", int.class)
          .allowEmptyShould(true)
          .because("whoever calls a study as a library keeps the screen and the process");

  @ArchTest
  static final ArchRule onlyTheCommandLineKnowsItsParser =
      noClasses()
          .that()
          .resideOutsideOfPackage(CLI)
          .should()
          .dependOnClassesThat()
          .resideInAPackage("picocli..")
          .allowEmptyShould(true)
          .because("options are words of the command line, studies take values");

  @ArchTest
  static final ArchRule hasNoMutableStatics =
      fields()
          .that()
          .areStatic()
          .should()
          .beFinal()
          .because("the same scene must give the same bytes with any number of threads");

  @ArchTest
  static final ArchRule asksNeitherClockNorChance =
      noClasses()
          .that()
          .resideOutsideOfPackage(CLI)
          .should()
          .dependOnClassesThat()
          .belongToAnyOf(Random.class, ThreadLocalRandom.class, SecureRandom.class, Clock.class)
          .orShould()
          .callConstructor(SplittableRandom.class)
          .orShould()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .callMethod(Instant.class, "now")
          .orShould()
          .callMethod(Math.class, "random")
          .allowEmptyShould(true)
          .because(
              "the same scene must give the same bytes at any time; progress alone may tell it");
}
