package io.github.holdpath.viewer.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ClockTest {
  /** s: whole nanoseconds and one rounding. */
  private static final double EXACT = 1e-9;

  private final AtomicLong nanos = new AtomicLong(77);
  private final Clock clock = new Clock(nanos::get);

  @BeforeEach
  void lastsFourSeconds() {
    clock.duration(4);
  }

  private void pass(double seconds) {
    nanos.addAndGet(Math.round(seconds * 1e9));
  }

  @Test
  void standsUntilItIsStarted() {
    pass(3);
    assertEquals(0, clock.time(), EXACT);
    clock.play();
    pass(1.5);
    assertEquals(1.5, clock.time(), EXACT);
    clock.pause();
    pass(1);
    assertEquals(1.5, clock.time(), EXACT);
    assertFalse(clock.playing());
  }

  @Test
  void runsSlowlyAndChangesSpeedWithoutAJump() {
    clock.speed(0.05);
    clock.play();
    pass(2);
    assertEquals(0.1, clock.time(), EXACT);
    clock.speed(4);
    assertEquals(0.1, clock.time(), EXACT);
    pass(0.5);
    assertEquals(2.1, clock.time(), EXACT);
  }

  @Test
  void stopsAtTheEndAndBeginsAgainWhenPlayed() {
    clock.play();
    pass(9);
    assertEquals(4, clock.time(), 0);
    assertFalse(clock.playing());
    clock.play();
    pass(1);
    assertEquals(1, clock.time(), EXACT);
  }

  @Test
  void loopsAgainAndAgain() {
    clock.loop(true);
    clock.play();
    pass(9);
    assertEquals(1, clock.time(), EXACT);
    pass(1);
    assertEquals(2, clock.time(), EXACT);
    assertTrue(clock.playing());
  }

  @Test
  void stepsStandStillAndStayInside() {
    clock.play();
    pass(1);
    clock.step(0.001);
    assertEquals(1.001, clock.time(), EXACT);
    pass(1);
    assertEquals(1.001, clock.time(), EXACT);
    clock.step(-5);
    assertEquals(0, clock.time(), 0);
    clock.step(100);
    assertEquals(4, clock.time(), 0);
  }

  @Test
  void seekingKeepsItRunning() {
    clock.play();
    pass(1);
    clock.seek(2.5);
    pass(0.5);
    assertEquals(3, clock.time(), EXACT);
  }

  @Test
  void goesFromStopToStop() {
    List<Double> stops = List.of(0.0, 1.0, 2.5, 4.0);
    clock.toNext(stops, true);
    assertEquals(1, clock.time(), EXACT);
    clock.toNext(stops, true);
    assertEquals(2.5, clock.time(), EXACT);
    clock.step(0.2);
    clock.toNext(stops, false);
    assertEquals(2.5, clock.time(), EXACT);
    clock.toNext(stops, false);
    assertEquals(1, clock.time(), EXACT);
    clock.toNext(List.of(), false);
    assertEquals(0, clock.time(), 0);
    clock.toNext(List.of(), true);
    assertEquals(4, clock.time(), 0);
  }

  @Test
  void aShorterJobEndsSooner() {
    clock.seek(3.5);
    clock.duration(2);
    assertEquals(2, clock.time(), 0);
    clock.duration(4);
    assertEquals(2, clock.time(), 0);
  }

  @Test
  void speedsGoFromOneTwentiethToFourAndNoFurther() {
    for (int i = 0; i < 20; i++) {
      clock.changeSpeed(false);
    }
    assertEquals(0.05, clock.speed(), 0);
    clock.changeSpeed(true);
    assertEquals(0.1, clock.speed(), 0);
    for (int i = 0; i < 20; i++) {
      clock.changeSpeed(true);
    }
    assertEquals(4, clock.speed(), 0);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesWhatIsNoSpeed(double speed) {
    assertThrows(IllegalArgumentException.class, () -> clock.speed(speed));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesWhatIsNoDuration(double duration) {
    assertThrows(IllegalArgumentException.class, () -> clock.duration(duration));
  }
}
