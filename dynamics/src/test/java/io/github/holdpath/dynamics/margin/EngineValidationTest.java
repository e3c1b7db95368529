package io.github.holdpath.dynamics.margin;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Where a block begins to slide or tip, by two rigid body engines that step through time: dyn4j 5
 * in the plane and ode4j 0.5 in space (both BSD licence). They know nothing of factors and limits.
 */
class EngineValidationTest {
  /**
   * The load grows by 20 % a second, and a block counts as moving at 0.1 mm/s: by then it is 0.4 %
   * beyond its limit. The rest is the engines' own error.
   */
  private static final double ONSET = 0.01;

  static List<EngineCases.Case> cases() {
    return EngineCases.all();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void engineMeetsTheLimitWithinAPercent(EngineCases.Case c) {
    assertEquals(c.ours(), c.theirs(), ONSET * c.ours());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void tallBlocksTipAndTheOthersSlide(EngineCases.Case c) {
    boolean tall = c.name().startsWith("tall");
    assertEquals(tall ? FailureMode.TIP : FailureMode.SLIP, c.mode());
  }

  @Test
  void enginesRepeatTheirAnswerBitByBit() {
    List<EngineCases.Case> cases = cases();
    for (int i : new int[] {0, cases.size() - 1}) {
      assertEquals(cases.get(i).theirs(), cases.get(i).theirs(), 0, cases.get(i).name());
    }
  }
}
