package io.github.holdpath.viewer.shot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AnimationTest {
  @ParameterizedTest
  @CsvSource({"4.5037, 1, 25", "4.5037, 0.25, 30", "0.31, 1, 60", "12.3456, 0.1, 7"})
  void playsAsLongAsTheCycleInSlowMotion(double cycle, double slow, double rate) {
    Animation animation = new Animation(cycle, slow, rate);
    long sum = 0;
    for (int i = 0; i < animation.frames(); i++) {
      sum += animation.delay(i);
      assertEquals(1000 / rate, animation.delay(i), 0.5 * 1000 / rate / animation.frames() + 1.5);
    }
    // Each delay is rounded, their sum is not: half a millisecond.
    assertEquals(1000 * cycle / slow, sum, 0.5);
    assertEquals(cycle / slow * rate, animation.frames(), 0.5);
  }

  @Test
  void beginsWithTheStartAndLeavesTheEndToTheNextRound() {
    Animation animation = new Animation(2, 1, 25);
    assertEquals(0, animation.time(0), 0);
    assertEquals(1.96, animation.time(animation.frames() - 1), 1e-12);
  }

  @Test
  void aMotionWithoutLengthIsOneFrame() {
    assertEquals(1, new Animation(0, 1, 25).frames());
    assertTrue(new Animation(0, 1, 25).delay(0) >= 1);
  }

  @Test
  void refusesNoSpeed() {
    assertThrows(IllegalArgumentException.class, () -> new Animation(1, 0, 25));
    assertThrows(IllegalArgumentException.class, () -> new Animation(1, 1.5, 25));
    assertThrows(IllegalArgumentException.class, () -> new Animation(1, 1, 0));
  }
}
