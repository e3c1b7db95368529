package io.github.holdpath.viewer;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import io.github.holdpath.viewer.convert.ToEngine;
import io.github.holdpath.viewer.shot.Studio;
import java.nio.FloatBuffer;

/** Holds who knows the engine, and that nothing here computes mechanics. */
@AnalyzeClasses(
    packages = "io.github.holdpath.viewer",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  private static final String BASE = "io.github.holdpath.viewer";

  @ArchTest
  static void theRulesSeeTheModule(JavaClasses classes) {
    assertTrue(classes.contain(ToEngine.class) && classes.contain(Studio.class));
  }

  @ArchTest
  static final ArchRule dependenciesPointOneWay =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("colour")
          .definedBy(BASE + ".colour")
          .layer("mesh")
          .definedBy(BASE + ".mesh")
          .layer("state")
          .definedBy(BASE + ".state")
          .layer("convert")
          .definedBy(BASE + ".convert")
          .layer("overlay")
          .definedBy(BASE + ".overlay")
          .layer("export")
          .definedBy(BASE + ".export")
          .layer("shot")
          .definedBy(BASE + ".shot")
          .layer("edit")
          .definedBy(BASE + ".edit")
          .layer("panel")
          .definedBy(BASE + ".panel")
          .layer("desk")
          .definedBy(BASE + ".desk")
          .layer("app")
          .definedBy(BASE + ".app")
          .whereLayer("colour")
          .mayNotAccessAnyLayer()
          .whereLayer("mesh")
          .mayOnlyAccessLayers("colour")
          .whereLayer("state")
          .mayOnlyAccessLayers("colour", "mesh")
          .whereLayer("convert")
          .mayOnlyAccessLayers("mesh", "state")
          .whereLayer("overlay")
          .mayOnlyAccessLayers("colour", "state")
          .whereLayer("export")
          .mayOnlyAccessLayers("colour", "mesh", "state")
          .whereLayer("shot")
          .mayOnlyAccessLayers("colour", "mesh", "state", "convert", "overlay", "export")
          .whereLayer("edit")
          .mayOnlyAccessLayers("state")
          .whereLayer("panel")
          .mayOnlyAccessLayers("colour", "state", "overlay", "shot", "edit")
          .whereLayer("desk")
          .mayOnlyAccessLayers("colour", "state", "export", "shot", "edit", "panel")
          .whereLayer("app")
          .mayNotBeAccessedByAnyLayer()
          .ensureAllClassesAreContainedInArchitectureIgnoring(BASE)
          .because("a result becomes shapes, shapes become the engine's, and words come on top");

  @ArchTest
  static final ArchRule onlyConvertMakesTheEnginesNumbers =
      noClasses()
          .that()
          .resideOutsideOfPackage(BASE + ".convert")
          .should()
          .dependOnClassesThat()
          .belongToAnyOf(
              com.jme3.math.Vector3f.class, com.jme3.math.Quaternion.class, FloatBuffer.class)
          .because("doubles become floats and Z-up becomes Y-up at one place");

  @ArchTest
  static final ArchRule onlyPartsOfTheWindowKnowSwing =
      noClasses()
          .that()
          .resideOutsideOfPackages(BASE + ".panel", BASE + ".desk")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javax.swing..", "com.formdev..")
          .because("what is shown is tested without a display");

  @ArchTest
  static final ArchRule stateKnowsNoDesktop =
      noClasses()
          .that()
          .resideInAnyPackage(BASE + ".colour", BASE + ".mesh", BASE + ".state", BASE + ".convert")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.awt..")
          .because("clock, camera and curves are numbers");

  @ArchTest
  static final ArchRule onlyConvertAndShotKnowTheEngine =
      noClasses()
          .that()
          .resideOutsideOfPackages(BASE + ".convert", BASE + ".shot")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("com.jme3..", "org.lwjgl..")
          .because("what is shown and how it is worded is tested without a graphics library");

  @ArchTest
  static final ArchRule filesOfSpaceKnowNoImages =
      noClasses()
          .that()
          .resideInAPackage(BASE + ".export")
          .and()
          .haveSimpleNameNotStartingWith("Apng")
          .and()
          .haveSimpleNameNotStartingWith("Png")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.awt..", "javax.swing..", "javax.imageio..")
          .because("a 3D file is written where no desktop and no font is installed");

  @ArchTest
  static final ArchRule changingASceneNeedsNoWindow =
      noClasses()
          .that()
          .resideInAPackage(BASE + ".edit")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.awt..", "javax.swing..")
          .because("drafts, history and judging are tested without a display");

  @ArchTest
  static final ArchRule computesNoMechanics =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "io.github.holdpath.dynamics.load..",
              "io.github.holdpath.dynamics.inertia..",
              "io.github.holdpath.dynamics.compliance..",
              "io.github.holdpath.dynamics.supply..")
          .orShould()
          .dependOnClassesThat()
          .haveFullyQualifiedName("io.github.holdpath.dynamics.margin.HoldModel")
          .because("a picture shows a result and has no opinion of its own");

  @ArchTest
  static final ArchRule onlyTheCommandKnowsTheParser =
      noClasses()
          .that()
          .resideOutsideOfPackage(BASE + ".app")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("picocli..", "io.github.holdpath.sim.cli..")
          .because("the core serves others than the command line");

  @ArchTest
  static final ArchRule printsAndExitsNowhere =
      noClasses()
          .should(ACCESS_STANDARD_STREAMS)
          .orShould()
          .callMethod(System.class, "exit", int.class)
          .because("whoever starts it keeps the screen and the process");

  @ArchTest
  static final ArchRule hasNoMutableStatics =
      fields().that().areStatic().should().beFinal().because("pictures do not know of each other");
}
