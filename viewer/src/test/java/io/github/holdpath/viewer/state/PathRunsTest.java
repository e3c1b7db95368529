package io.github.holdpath.viewer.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.read.SceneReader;
import io.github.holdpath.sim.study.FactorTrace;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.viewer.Demo;
import io.github.holdpath.viewer.colour.MarginStep;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.mesh.TubeRun;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PathRunsTest {
  private static final String STILL =
      "\"route\": [{\"start\": {\"at\": \"1 2 3 m\", \"rpy\": \"180 0 0 deg\"}},"
          + " {\"grip\": \"take\", \"wait\": \"1 s\"}, {\"wait\": \"1 s\"}]";

  private static final double SPACING = 5e-3;

  private static List<PathRuns.Link> links(StudyResult result) {
    return PathRuns.links(FactorTrace.of(result, 1e-3), SPACING);
  }

  @ParameterizedTest
  @ValueSource(strings = {"cartons", "shaft", "peaches", "arm-log"})
  void theLeastMarginOfTheResultIsOnTheLinks(String name) {
    StudyResult result = Demo.judged(name);
    double least = Double.POSITIVE_INFINITY;
    for (PathRuns.Link link : links(result)) {
      least = Math.min(least, link.margin().orElse(least));
    }
    assertEquals(result.margin(), least, 1e-12 * least);
  }

  @Test
  void linksFollowEachOtherAndTheWholeWay() {
    StudyResult result = Demo.judged("cartons");
    List<PathRuns.Link> links = links(result);
    double way = 0;
    for (int i = 0; i < links.size(); i++) {
      way += links.get(i).to().minus(links.get(i).from()).norm();
      if (i > 0) {
        // What is cut where grip and release stand is shorter than the shortest link.
        assertTrue(
            links.get(i).from().minus(links.get(i - 1).to()).norm() <= 0.02 * SPACING, "gap " + i);
      }
    }
    double length = result.motion().segments().stream().mapToDouble(s -> s.length()).sum();
    // Chords of the rounded corners are shorter than their arcs, by less than this.
    assertEquals(length, way, 2e-3);
  }

  @Test
  void tubesAreThickAndRibbedBelowOneAndThinWhereNotHeld() {
    List<TubeRun> runs = PathRuns.runs(links(Demo.judged("cartons")), 1);
    boolean seen = false;
    for (TubeRun run : runs) {
      if (run.rgb() == Tones.NOT_HELD) {
        seen = true;
        assertTrue(run.radius() < 0.6 && !run.ribbed());
      } else if (run.rgb() == MarginStep.FAR_BELOW.rgb()) {
        assertTrue(run.radius() > 1.3 && run.ribbed());
      } else if (run.rgb() == MarginStep.FAR_ABOVE.rgb()) {
        assertTrue(run.radius() <= 1 && run.radius() > 0.8);
        assertFalse(run.ribbed());
      }
    }
    assertTrue(seen);
  }

  /** On straight ways few rings do; on none is the tube aside by what could be seen. */
  @ParameterizedTest
  @ValueSource(strings = {"cartons", "shaft", "glass-sheet"})
  void tubesLeaveOutWhatIsStraight(String name) {
    List<PathRuns.Link> links = links(Demo.judged(name));
    double radius = 2 * SPACING;
    int points = 0;
    for (TubeRun run : PathRuns.runs(links, radius)) {
      points += run.points().size();
      for (PathRuns.Link link : links) {
        if (link.rgb() == run.rgb() && run.points().contains(link.from())) {
          assertTrue(distance(run.points(), link.to()) < 0.021 * radius || isEnd(run, link));
        }
      }
    }
    assertTrue(points < 0.7 * links.size(), points + " points of " + links.size());
  }

  private static boolean isEnd(TubeRun run, PathRuns.Link link) {
    return run.points().get(run.points().size() - 1).equals(link.from());
  }

  private static double distance(List<Vec3> line, Vec3 p) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < line.size(); i++) {
      Vec3 way = line.get(i).minus(line.get(i - 1));
      double share = p.minus(line.get(i - 1)).dot(way) / way.dot(way);
      Vec3 foot = line.get(i - 1).plus(way.times(Math.max(0, Math.min(1, share))));
      least = Math.min(least, p.minus(foot).norm());
    }
    return least;
  }

  @Test
  void aPathWithoutLengthIsOneBall(@TempDir Path folder) throws Exception {
    String text = Files.readString(Demo.file("cartons"));
    Path file = folder.resolve("still.json");
    Files.writeString(
        file,
        text.replaceAll("(?s)\"route\": .*\"origins\"", STILL + ", \"origins\"")
            .replaceAll("\"robot\": .*", ""));
    Scene scene = SceneReader.read(file, Map.of()).scene();
    StudyResult still = HoldStudy.run(scene, 2);
    List<TubeRun> runs = PathRuns.runs(links(still), 1);
    assertEquals(1, runs.size());
    assertEquals(1, runs.get(0).points().size());
    assertEquals(MarginStep.of(still.margin()).rgb(), runs.get(0).rgb());
  }
}
