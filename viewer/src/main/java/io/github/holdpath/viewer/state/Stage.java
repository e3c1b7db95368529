package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.report.Headline;
import io.github.holdpath.sim.robot.RobotFigure;
import io.github.holdpath.sim.study.Drop;
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
import java.util.Optional;

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
 * @param result what is shown
 * @param arrows scale of the forces
 * @param flight of the part where it leaves the grip; empty where it does not
 * @param floorHeight world z, m
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
    Playback playback,
    StudyResult result,
    ForceArrows arrows,
    Optional<Flight> flight,
    double floorHeight) {
  /** Radius of the path per the extent of what is shown. */
  private static final double RADIUS = 0.0058;

  /** By how much the robot may make what is shown larger. */
  private static final double LARGEST = 1.9;

  /** Length of a link in radii of the path. */
  private static final double LINK = 0.5;

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
    double step = Math.max(HoldStudy.STEP, result.cycleTime() / MOST_SAMPLES);
    FactorTrace trace = FactorTrace.of(result, step);
    Worst worst = result.worst();
    Pose grip = worst.state().pose();
    Actors actors = new Actors(result.scene());
    List<Waypoint> waypoints = Waypoint.of(result.scene(), result.motion(), trace);
    List<Vec3> fit = new ArrayList<>(actors.reach(grip));
    waypoints.forEach(w -> fit.add(w.place()));
    for (int i = 0; i < trace.size(); i++) {
      if (i % 8 == 0) {
        fit.add(trace.position(i));
      }
    }
    Floor floor = Floor.below(fit);
    fit.addAll(actors.toolReach(grip));
    Playback playback = new Playback(result.scene(), result.requiredSafety());
    // Where the robot begins will do: where it is later needs a walk along all of the motion.
    result
        .scene()
        .robot()
        .flatMap(cell -> cell.robot().figure(cell.track().start()))
        .ifPresent(f -> fit.addAll(near(f, extent(fit), fit)));
    double extent = extent(fit);
    double radius = RADIUS * extent;
    ForceArrows arrows = ForceArrows.of(result.peaks(), extent);
    // Room for the largest force, which mostly points up.
    double longest = result.peaks().gripForce() / arrows.newtons();
    fit.add(grip.position().plus(new Vec3(0, 0, longest)));
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
        worst.time(),
        MarginStep.of(result.margin()),
        Headline.of(result),
        fit,
        actors,
        playback,
        result,
        arrows,
        firstDrop(result, floor).map(d -> Flight.of(d, radius)),
        floor.z());
  }

  /**
   * The same with the part leaving the grip at a chosen instant, as where the supply is lost; the
   * flight is empty if the part is not held then.
   *
   * @param time s
   */
  public Stage withDropAt(double time) {
    Optional<Flight> chosen =
        Drop.at(result.scene(), time, floorHeight).map(d -> Flight.of(d, RADIUS * extent(fit)));
    return new Stage(
        ground,
        links,
        path,
        waypoints,
        floor,
        axes,
        worst,
        worstTime,
        worstStep,
        headline,
        fit,
        actors,
        playback,
        result,
        arrows,
        chosen,
        floorHeight);
  }

  /** Only where the least factor is below 1 there is something to look for. */
  private static Optional<Drop> firstDrop(StudyResult result, Floor floor) {
    return result.factor() < 1 ? Drop.first(result.scene(), floor.z()) : Optional.empty();
  }

  /** Points of a robot that a view shows too: all of it, unless that makes the path small. */
  private static List<Vec3> near(RobotFigure robot, double extent, List<Vec3> fit) {
    List<Vec3> points = new ArrayList<>();
    for (RobotFigure.Bone b : robot.bones()) {
      points.add(b.from());
      points.add(b.to());
    }
    List<Vec3> all = new ArrayList<>(fit);
    all.addAll(points);
    return extent(all) <= LARGEST * extent ? points : List.of();
  }

  /**
   * Points that a view must show.
   *
   * @param show what is shown besides the path
   */
  public List<Vec3> fit(Show show) {
    List<Vec3> points = new ArrayList<>(fit);
    if (show.drop()) {
      flight.ifPresent(f -> points.addAll(f.reach()));
    }
    return points;
  }

  /** Everything at one instant, as usually shown. */
  public List<Item> at(Playback.Instant now) {
    return at(now, Show.DEFAULT);
  }

  /**
   * Everything at one instant.
   *
   * @param now of this stage's playback
   * @param show what is shown besides the path
   */
  public List<Item> at(Playback.Instant now, Show show) {
    List<Item> items = new ArrayList<>();
    ground.forEach(lines -> items.add(new Item.Lines(lines, Pose.IDENTITY, Layer.GROUND)));
    items.addAll(actors.at(now, show, flight));
    if (forces(now, show)) {
      items.addAll(arrows.items(now.forces()));
    }
    items.add(new Item.Body(path, Pose.IDENTITY, Layer.PATH, Item.Body.WHITE, 1, false));
    return items;
  }

  /** Whether arrows are drawn: while the part is held, and has not left the grip. */
  public boolean forces(Playback.Instant now, Show show) {
    return show.forces() && now.held() && !flies(now, show);
  }

  /** Whether the part is shown after it has left the grip. */
  public boolean flies(Playback.Instant now, Show show) {
    return show.drop() && flight.map(f -> now.time() > f.drop().leaves()).orElse(false);
  }

  private static double extent(List<Vec3> points) {
    double[] lo = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    double[] hi = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    for (Vec3 p : points) {
      double[] v = {p.x(), p.y(), p.z()};
      for (int k = 0; k < 3; k++) {
        lo[k] = Math.min(lo[k], v[k]);
        hi[k] = Math.max(hi[k], v[k]);
      }
    }
    return Math.max(1e-3, new Vec3(hi[0] - lo[0], hi[1] - lo[1], hi[2] - lo[2]).norm());
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
