package io.github.holdpath.dynamics.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.Expect;
import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every kind of grip must keep, so that later steps need to know patches and drives alone. */
class GripModelContractTest {
  /** As the theory asks of a preload that balances by itself. */
  private static final double BALANCE = 1e-9;

  static Stream<GripModel> grips() {
    return Grips.all().stream();
  }

  @Test
  void everyPermittedKindHasASample() {
    Set<Class<?>> sampled = Grips.all().stream().map(Object::getClass).collect(Collectors.toSet());
    assertEquals(Set.copyOf(Arrays.asList(GripModel.class.getPermittedSubclasses())), sampled);
  }

  @Test
  void everyKindHasItsOwnName() {
    Set<String> names = grips().map(GripModel::kind).collect(Collectors.toSet());
    assertEquals(GripModel.class.getPermittedSubclasses().length, names.size());
    assertFalse(names.contains(""));
  }

  @ParameterizedTest
  @MethodSource("grips")
  void patchNamesTellThemApart(GripModel grip) {
    Set<String> names = new HashSet<>();
    for (ContactPatch patch : grip.patches()) {
      assertFalse(patch.name().isBlank());
      assertTrue(names.add(patch.name()), patch.name() + " comes twice");
    }
    assertFalse(names.isEmpty(), "a grip touches the part");
  }

  /** Without load the contact forces must leave the part alone. */
  @ParameterizedTest
  @MethodSource("grips")
  void preloadBalancesByItself(GripModel grip) {
    Wrench sum = Wrench.ZERO;
    double largest = 0;
    for (ContactPatch p : grip.patches()) {
      Wrench push = new Wrench(new Vec3(0, 0, p.preload() - p.pull()), Vec3.ZERO);
      Wrench seen = push.seenFrom(p.pose());
      sum = sum.plus(seen);
      largest = Math.max(largest, Expect.largest(seen.toArray()));
    }
    assertTrue(Expect.largest(sum.toArray()) <= BALANCE * largest, sum.toString());
  }

  @ParameterizedTest
  @MethodSource("grips")
  void somethingHoldsThePartBeforeItIsLoaded(GripModel grip) {
    assertTrue(grip.patches().stream().anyMatch(p -> p.preload() > 0));
  }

  /** A closing finger moves into the part: along +z of its own patch. */
  @ParameterizedTest
  @MethodSource("grips")
  void drivesPushTheirPatchesIntoThePart(GripModel grip) {
    List<ContactPatch> patches = grip.patches();
    for (Drive drive : grip.drives()) {
      for (int i = 0; i < drive.patches().size(); i++) {
        ContactPatch patch = patches.get(drive.patches().get(i));
        Vec3 into = patch.pose().rotation().rotate(new Vec3(0, 0, 1));
        Vec3 closing = drive.directions().get(i);
        assertEquals(1, closing.norm(), Expect.ALGEBRA);
        assertTrue(closing.dot(into) > 0, patch.name() + " closes out of the part");
        assertFalse(patch.ledge(), patch.name() + " cannot be driven");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("grips")
  void noPatchHasTwoDrives(GripModel grip) {
    Set<Integer> driven = new HashSet<>();
    for (Drive drive : grip.drives()) {
      drive.patches().forEach(i -> assertTrue(driven.add(i), "patch " + i + " is driven twice"));
    }
  }

  @ParameterizedTest
  @MethodSource("grips")
  void formFitComesLastAndOnlyPushes(GripModel grip) {
    List<Boolean> ledges = grip.patches().stream().map(ContactPatch::ledge).toList();
    assertEquals(ledges.stream().sorted().toList(), ledges);
    for (ContactPatch p : grip.patches()) {
      assertTrue(!p.ledge() || (p.preload() == 0 && p.pull() == 0), p.name());
    }
  }

  @ParameterizedTest
  @MethodSource("grips")
  void answersAreTheSameEachTimeAndCannotBeChanged(GripModel grip) {
    assertEquals(grip.patches(), grip.patches());
    assertEquals(grip.drives(), grip.drives());
    assertThrows(UnsupportedOperationException.class, () -> grip.patches().remove(0));
  }
}
