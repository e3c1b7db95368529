package io.github.holdpath.viewer.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.study.Playback;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.viewer.Demo;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CurvesTest {
  private StudyResult result = Demo.judged("cartons");
  private Curves curves = Curves.of(Stage.of(result));

  @BeforeAll
  void holdsMoreThanAHandfulOfMoves() {
    assertTrue(result.segments().size() >= 4);
  }

  @Test
  void theLeastMarginIsThatOfTheVerdict() {
    double least =
        Arrays.stream(curves.margin().values()).filter(v -> !Double.isNaN(v)).min().orElseThrow();
    assertEquals(result.margin(), least, 1e-12 * result.margin());
  }

  @Test
  void whereThePartIsTakenBothAreKept() {
    // Longer than what is kept of each curve, and tightest at the instant at which it is taken.
    StudyResult gear = Demo.judged("gear-blank");
    Curves.Curve margin = Curves.of(Stage.of(gear)).margin();
    double[] times = margin.times();
    double[] there =
        java.util.stream.IntStream.range(0, times.length)
            .filter(i -> Math.abs(times[i] - gear.worst().time()) < 1e-7)
            .mapToDouble(i -> margin.values()[i])
            .toArray();
    assertTrue(Arrays.stream(there).anyMatch(Double::isNaN), "not held before");
    double least = Arrays.stream(there).filter(v -> !Double.isNaN(v)).min().orElseThrow();
    assertEquals(gear.margin(), least, 1e-12 * gear.margin());
  }

  @Test
  void peaksAreThoseOfTheMoves() {
    double speed =
        result.segments().stream().mapToDouble(s -> s.move().peakSpeed()).max().getAsDouble();
    // Between samples a ramp is straight: the peak is missed by less than one step of it.
    assertEquals(speed, curves.speed().largest(), 0.01 * speed);
  }

  @Test
  void stretchesFollowEachOtherFromStartToEnd() {
    double at = 0;
    for (Curves.Stretch s : curves.stretches()) {
      assertEquals(at, s.from(), 1e-9);
      assertTrue(s.to() > s.from(), s.name());
      at = s.to();
    }
    assertEquals(result.cycleTime(), at, 1e-9);
    long moves = curves.stretches().stream().filter(s -> s.move().isPresent()).count();
    assertEquals(result.segments().size(), moves);
    assertEquals(moves + 2, curves.stretches().size(), "waits to grip and to let go");
  }

  @Test
  void aPickOnThePathGivesTheTimeAtWhichItIsThere() {
    Playback playback = new Playback(result.scene(), result.requiredSafety());
    View view = View.fitted(places(), new View.Area(100, 50, 700, 550), 800, 600);
    for (double time : new double[] {0.4, 0.9, 1.4, 2.1}) {
      Vec3 there = playback.at(time).state().pose().position();
      View.Spot s = view.project(there);
      OptionalDouble picked = Pick.at(curves, view, s.x() + 2, s.y() - 1, 8, time - 0.3);
      View.Spot found = view.project(playback.at(picked.orElseThrow()).state().pose().position());
      // As far as the pick was off, and as far as spots that count as one.
      assertTrue(Math.hypot(found.x() - s.x(), found.y() - s.y()) < 4.5, time + " " + picked);
    }
  }

  @Test
  void aPickAgainGoesToTheNextTimeThatItPasses() {
    Vec3 start = places().get(0);
    View view = View.fitted(places(), new View.Area(100, 50, 700, 550), 800, 600);
    View.Spot s = view.project(start);
    double end = Pick.at(curves, view, s.x(), s.y(), 8, 1.0).orElseThrow();
    assertTrue(end > result.cycleTime() - 0.2, "comes back at the end, not at " + end);
    double again = Pick.at(curves, view, s.x(), s.y(), 8, result.cycleTime()).orElseThrow();
    assertTrue(again < 0.4, "and then from the start, not from " + again);
  }

  @Test
  void besideThePathNothingIsPicked() {
    View view = View.fitted(places(), new View.Area(100, 50, 700, 550), 800, 600);
    assertTrue(Pick.at(curves, view, 5, 5, 8, 0).isEmpty());
  }

  private List<Vec3> places() {
    return Stage.of(result).links().stream().map(PathRuns.Link::from).toList();
  }
}
