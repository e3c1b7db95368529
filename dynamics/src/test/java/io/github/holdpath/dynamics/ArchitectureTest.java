package io.github.holdpath.dynamics;

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
import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.time.Clock;
import java.util.Random;
import java.util.concurrent.ThreadLocalRandom;

/** Holds the direction inside the mechanics and what mechanics must not know. */
@AnalyzeClasses(
    packages = "io.github.holdpath.dynamics",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  private static final String BASE = "io.github.holdpath.dynamics";

  @ArchTest
  static void theRulesSeeTheModule(JavaClasses classes) {
    assertTrue(classes.contain(Vec3.class) && classes.contain(LoadModel.class));
  }

  @ArchTest
  static final ArchRule mechanicsStandsAlone =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("io.github.holdpath.sim..", "io.github.holdpath.viewer..")
          .because("mechanics can be used as a library without scenes and studies");

  @ArchTest
  static final ArchRule dependenciesPointOneWay =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .withOptionalLayers(true)
          .layer("spatial")
          .definedBy(BASE + ".spatial..")
          .layer("inertia")
          .definedBy(BASE + ".inertia..")
          .layer("load")
          .definedBy(BASE + ".load..")
          .layer("contact")
          .definedBy(BASE + ".contact..")
          .layer("grip")
          .definedBy(BASE + ".grip..")
          .layer("margin")
          .definedBy(BASE + ".margin..")
          .layer("compliance")
          .definedBy(BASE + ".compliance..")
          .layer("supply")
          .definedBy(BASE + ".supply..")
          .whereLayer("spatial")
          .mayNotAccessAnyLayer()
          .whereLayer("inertia")
          .mayOnlyAccessLayers("spatial")
          .whereLayer("load")
          .mayOnlyAccessLayers("spatial", "inertia")
          .whereLayer("contact")
          .mayOnlyAccessLayers("spatial")
          .whereLayer("grip")
          .mayOnlyAccessLayers("spatial", "contact")
          .whereLayer("margin")
          .mayOnlyAccessLayers("spatial", "load", "contact", "grip")
          .whereLayer("compliance")
          .mayOnlyAccessLayers("spatial", "inertia", "load", "contact", "grip")
          .whereLayer("supply")
          .mayNotAccessAnyLayer()
          .ensureAllClassesAreContainedInArchitectureIgnoring(BASE)
          .because("a reader meets each idea before the one that needs it, and load knows no grip");

  @ArchTest
  static final ArchRule packagesHaveNoCycles =
      slices()
          .matching(BASE + ".(*)..")
          .should()
          .beFreeOfCycles()
          .because("each package must be readable and usable by itself");

  @ArchTest
  static final ArchRule readsAndWritesNoFiles =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.io..", "java.nio..", "java.net..")
          .because("mechanics is given numbers; files belong to the packages that name their form");

  @ArchTest
  static final ArchRule knowsNoJson =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("tools.jackson..", "com.fasterxml..", "com.networknt..")
          .because("a change of the scene format must not reach the mechanics");

  @ArchTest
  static final ArchRule printsNothing =
      noClasses()
          .should(ACCESS_STANDARD_STREAMS)
          .orShould()
          .callMethod(System.class, "exit", int.class)
          .because("a library answers by values");

  @ArchTest
  static final ArchRule hasNoMutableStatics =
      fields()
          .that()
          .areStatic()
          .should()
          .beFinal()
          .because("the same input must give the same result with any number of threads");

  @ArchTest
  static final ArchRule asksNeitherClockNorChance =
      noClasses()
          .should()
          .dependOnClassesThat()
          .belongToAnyOf(Random.class, ThreadLocalRandom.class, Clock.class)
          .orShould()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .callMethod(Math.class, "random")
          .because("the same input must give the same result at any time");
}
