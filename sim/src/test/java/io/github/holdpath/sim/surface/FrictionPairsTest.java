package io.github.holdpath.sim.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FrictionPairsTest {
  private final FrictionPairs pairs = FrictionPairs.load();

  @Test
  void findsAPairInAnyOrderAndLetters() {
    FrictionRange range = pairs.find("Steel", "ALUMINIUM", SurfaceState.OILY).orElseThrow();
    assertEquals(0.10, range.low());
    assertEquals(0.15, range.high());
    assertEquals("common practice, no source", range.source());
    assertEquals(range, pairs.find("aluminium", "steel", SurfaceState.OILY).orElseThrow());
  }

  @Test
  void saysWhatIsNotKnown() {
    assertTrue(pairs.find("rubber", "cardboard", SurfaceState.WET).isEmpty());
    assertEquals(List.of(SurfaceState.DRY), pairs.states("cardboard", "rubber"));
    assertEquals(List.of(), pairs.states("cardboard", "steel"));
    assertEquals(List.of("cardboard", "concrete", "stone"), pairs.partners("Rubber"));
  }

  /** Every row has a source, a range that can be, and no twin. */
  @Test
  void everyRowIsWhole() {
    Set<String> seen = new HashSet<>();
    for (FrictionRange r : pairs.all()) {
      assertFalse(r.source().isBlank(), r.pair());
      assertTrue(r.low() > 0 && r.high() <= 1.2, r.toString());
      assertTrue(seen.add(r.pair() + r.state()), r.toString());
      assertTrue(
          r.one().equals(r.other())
              || pairs.find(r.other(), r.one(), r.state()).orElseThrow().equals(r));
    }
    assertTrue(pairs.all().size() > 70);
  }

  /** What is oily or wet does not grip better than what is dry. */
  @Test
  void lubricatedPairsDoNotGripBetterThanDryOnes() {
    for (FrictionRange r : pairs.all()) {
      FrictionRange dry = pairs.find(r.one(), r.other(), SurfaceState.DRY).orElseThrow();
      assertTrue(r.low() <= dry.low() && r.high() <= dry.high(), r.toString());
    }
  }

  @Test
  void namesNeitherPairsNorDensitiesThatCannotBe() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new FrictionRange("a", "b", SurfaceState.DRY, 0.5, 0.4, ""));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Material("a", List.of(), 0, 10, false, false, ""));
  }

  @Test
  void materialsAreFoundInFreeText() {
    Materials materials = Materials.load();
    assertEquals("glass", materials.named("float Glass, clean").orElseThrow().name());
    assertEquals(
        "austenitic stainless steel",
        materials.named("austenitic stainless steel 1.4301").orElseThrow().name());
    assertTrue(materials.named("stainless steel").isEmpty(), "some are magnetic, some are not");
    assertTrue(materials.named("steelworks").isEmpty());
    assertTrue(materials.named("steel").orElseThrow().magnetic());
    assertFalse(materials.named("copper").orElseThrow().magnetic());
    assertTrue(materials.named("corrugated board").orElseThrow().wraps());
    assertEquals("austenitic stainless steel", materials.named("V2A").orElseThrow().name());
  }

  @Test
  void wordsSettleWhetherAMagnetHoldsOrDoNot() {
    Materials materials = Materials.load();
    assertEquals(Optional.of(true), materials.magnetic("deep-drawn steel sheet"));
    assertEquals(Optional.of(true), materials.magnetic("ferritic stainless steel"));
    assertEquals(Optional.of(false), materials.magnetic("stainless steel 1.4301"));
    assertEquals(Optional.of(false), materials.magnetic("Aluminium EN AW-5754"));
    assertEquals(Optional.empty(), materials.magnetic("stainless steel"));
    assertEquals(Optional.empty(), materials.magnetic("steel with a coat of rubber"));
    assertEquals(Optional.empty(), materials.magnetic("unobtainium"));
  }
}
