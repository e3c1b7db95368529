package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.report.Headline;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.study.FactorTrace;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.sim.study.Playback;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.sim.study.Worst;
import io.github.holdpath.viewer.colour.MarginStep;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.mesh.LineData;
import io.github.holdpath.viewer.mesh.MeshData;
import io.github.holdpath.viewer.mesh.TubeMesh;
import java.util.ArrayList;
import java.util.List;

/**
 * All that is shown of a result: what stays while time goes on (floor, shadow and the path over
 * everything), and what moves along it.
 *
 * @param ground lines of the floor, of the axes and of the path's shadow
 * @param links the path in short links
 * @param path its tubes
 * @param waypoints places with their names
 * @param floor numbers along the grid
 * @param axes ends of the world axes, x, y, z; empty where the origin is not in sight
 * @param worst where the least factor is, world axes, m
 * @param worstTime when that is, s
 * @param worstStep colour of the least margin
 * @param headline words
 * @param fit points that the view must show
 * @param actors what moves
 * @param playback how it moves
 */
public record Stage(
    List<LineData> ground,
    List<PathRuns.Link> links,
    MeshData path,
    List<Waypoint> waypoints,
    List<FloorMark> floor,
    List<Vec3> axes,
    Vec3 worst,
    double worstTime,
    MarginStep worstStep,
    Headline headline,
    List<Vec3> fit,
    Actors actors,
    Playback playback) {
  /** Radius of the path per the extent of what is shown. */
  private static final double RADIUS = 0.0058;

  /** Length of a link in radii of the path. */
  private static final double LINK = 0.5;

  /** Factor where the part is held nowhere or meets no limit. */
  private static final double NO_LIMIT = Double.MAX_VALUE;

  /** Samples of a motion at most, so that a long recording does not swell. */
  private static final double MOST_SAMPLES = 200_000;

  /** Copies the lists. */
  public Stage {
    ground = List.copyOf(ground);
    links = List.copyOf(links);
    waypoints = List.copyOf(waypoints);
    floor = List.copyOf(floor);
    axes = List.copyOf(axes);
    fit = List.copyOf(fit);
  }

  /**
   * A number along the floor's grid.
   *
   * @param one end of its line, world axes, m
   * @param other end
   * @param text as {@code x 0.5 m}
   */
  public record FloorMark(Vec3 one, Vec3 other, String text) {}

  /** Of a result. */
  public static Stage of(StudyResult result) {
    return of(result, List.of());
  }

  /**
   * Of a result, in the place of another stage.
   *
   * @param result of a study
   * @param keep points that the view showed before; they stay if nothing lies beyond them
   */
  public static Stage of(StudyResult result, List<Vec3> keep) {
    FactorTrace trace = FactorTrace.of(result, step(result.cycleTime()));
    Worst worst = result.worst();
    return of(
        new Seen(result.scene(), result.motion(), result.requiredSafety(), trace),
        worst.state().pose(),
        worst.time(),
        result.margin(),
        Headline.of(result),
        keep);
  }

  /**
   * Of a scene that is still being judged: coloured by its samples, without a verdict.
   *
   * @param scene as read
   * @param safety required safety S
   * @param trace its samples
   * @param keep points that the view showed before; they stay if nothing lies beyond them
   */
  public static Stage of(Scene scene, double safety, FactorTrace trace, List<Vec3> keep) {
    int tight = tightest(trace);
    double least = trace.factor(tight).orElse(NO_LIMIT);
    Pose grip = new Playback(scene, safety).at(trace.time(tight)).state().pose();
    return of(
        new Seen(scene, scene.moved(), safety, trace),
        grip,
        trace.time(tight),
        least / safety,
        Headline.judging(scene, safety, least),
        keep);
  }

  /** Spacing of the samples of a motion, s. */
  public static double step(double duration) {
    return Math.max(HoldStudy.STEP, duration / MOST_SAMPLES);
  }

  private static int tightest(FactorTrace trace) {
    int tight = 0;
    for (int i = 1; i < trace.size(); i++) {
      double here = trace.factor(i).orElse(Double.POSITIVE_INFINITY);
      if (here < trace.factor(tight).orElse(Double.POSITIVE_INFINITY)) {
        tight = i;
      }
    }
    return tight;
  }

  private record Seen(Scene scene, Motion motion, double safety, FactorTrace trace) {}

  private static Stage of(
      Seen seen, Pose grip, double worstTime, double margin, Headline headline, List<Vec3> keep) {
    FactorTrace trace = seen.trace();
    Actors actors = new Actors(seen.scene());
    List<Waypoint> waypoints = Waypoint.of(seen.scene(), seen.motion(), trace);
    List<Vec3> fit = new ArrayList<>(actors.reach(grip));
    waypoints.forEach(w -> fit.add(w.place()));
    for (int i = 0; i < trace.size(); i++) {
      if (i % 8 == 0) {
        fit.add(trace.position(i));
      }
    }
    if (Extent.of(keep).contains(Extent.of(fit))) {
      fit.clear();
      fit.addAll(keep);
    }
    Floor floor = Floor.below(fit);
    double radius = RADIUS * Extent.of(fit).size();
    List<PathRuns.Link> links = PathRuns.links(trace, LINK * radius);
    List<Vec3> axes =
        floor.contains(Vec3.ZERO)
            ? List.of(
                new Vec3(floor.step(), 0, 0),
                new Vec3(0, floor.step(), 0),
                new Vec3(0, 0, floor.step()))
            : List.of();
    fit.addAll(waypoints.stream().map(w -> onFloor(w.place(), floor)).toList());
    return new Stage(
        ground(floor, links, waypoints, axes),
        links,
        TubeMesh.of(PathRuns.runs(links, radius)),
        waypoints,
        marks(floor),
        axes,
        grip.position(),
        worstTime,
        MarginStep.of(margin),
        headline,
        fit,
        actors,
        new Playback(seen.scene(), seen.safety()));
  }

  /**
   * Everything at one instant.
   *
   * @param now of this stage's playback
   */
  public List<Item> at(Playback.Instant now) {
    List<Item> items = new ArrayList<>();
    ground.forEach(lines -> items.add(new Item.Lines(lines, Pose.IDENTITY, Layer.GROUND)));
    items.addAll(actors.at(now));
    items.add(new Item.Body(path, Pose.IDENTITY, Layer.PATH, Item.Body.WHITE, 1, false));
    return items;
  }

  private static List<LineData> ground(
      Floor floor, List<PathRuns.Link> links, List<Waypoint> waypoints, List<Vec3> axes) {
    List<Vec3> shadow = new ArrayList<>();
    for (PathRuns.Link link : links) {
      shadow.add(onFloor(link.from(), floor));
      shadow.add(onFloor(link.to(), floor));
    }
    for (Waypoint w : waypoints) {
      shadow.add(w.place());
      shadow.add(onFloor(w.place(), floor));
    }
    List<Vec3> lines = new ArrayList<>();
    axes.forEach(
        end -> {
          lines.add(Vec3.ZERO);
          lines.add(end);
        });
    return List.of(
        LineData.of(floor.lines(), Tones.GRID),
        LineData.of(shadow, Tones.SHADOW),
        LineData.of(lines, Tones.AXIS));
  }

  private static Vec3 onFloor(Vec3 p, Floor floor) {
    return new Vec3(p.x(), p.y(), floor.z());
  }

  private static List<FloorMark> marks(Floor floor) {
    List<FloorMark> marks = new ArrayList<>();
    for (double x : floor.ticks(floor.x0(), floor.x1())) {
      marks.add(
          new FloorMark(
              new Vec3(x, floor.y0(), floor.z()),
              new Vec3(x, floor.y1(), floor.z()),
              "x " + metres(x)));
    }
    for (double y : floor.ticks(floor.y0(), floor.y1())) {
      marks.add(
          new FloorMark(
              new Vec3(floor.x0(), y, floor.z()),
              new Vec3(floor.x1(), y, floor.z()),
              "y " + metres(y)));
    }
    return marks;
  }

  private static String metres(double v) {
    double rounded = Math.rint(v * 1e4) / 1e4;
    String text = Double.toString(rounded == 0 ? 0 : rounded);
    return (text.endsWith(".0") ? text.substring(0, text.length() - 2) : text) + " m";
  }
}
