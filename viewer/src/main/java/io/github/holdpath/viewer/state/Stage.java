package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.report.Headline;
import io.github.holdpath.sim.robot.RobotFigure;
import io.github.holdpath.sim.scene.Scene;
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
 * All that is shown of a job: what stays while time goes on (floor, shadow and the path over
 * everything), and what moves along it.
 *
 * @param scene what is shown
 * @param safety required safety S
 * @param trace samples of the motion
 * @param ground lines of the floor, of the axes and of the path's shadow
 * @param links the path in short links
 * @param path its tubes
 * @param waypoints places with their names
 * @param marks numbers along the floor's grid
 * @param axes ends of the world axes, x, y, z; empty where the origin is not in sight
 * @param worst the instant with the least factor
 * @param worstStep colour of the least margin
 * @param headline words
 * @param fit points that the view must show
 * @param actors what moves
 * @param playback how it moves
 * @param arrows scale of the forces
 * @param flight of the part where it leaves the grip; empty where it does not
 * @param floor below everything
 * @param twin path as it was first, thin beside the path; empty where nothing has changed
 */
public record Stage(
    Scene scene,
    double safety,
    FactorTrace trace,
    List<LineData> ground,
    List<PathRuns.Link> links,
    MeshData path,
    List<Waypoint> waypoints,
    List<FloorMark> marks,
    List<Vec3> axes,
    Tight worst,
    MarginStep worstStep,
    Headline headline,
    List<Vec3> fit,
    Actors actors,
    Playback playback,
    ForceArrows arrows,
    Optional<Flight> flight,
    Floor floor,
    Optional<MeshData> twin) {
  /** Radius of the path per the extent of what is shown. */
  private static final double RADIUS = 0.0058;

  /** How far beside the path the path as it was is seen, and how thick, in radii of the path. */
  private static final double TWIN_AWAY = 4;

  private static final double TWIN_RADIUS = 0.42;

  /** Factor where no sample is held: no limit is met. */
  private static final double NO_LIMIT = Double.MAX_VALUE;

  /** By how much the robot may make what is shown larger. */
  private static final double LARGEST = 1.9;

  /** Points of the path that the view is fitted to, at most. */
  private static final int PATH_POINTS = 400;

  /** Length of a link in radii of the path. */
  private static final double LINK = 0.5;

  /** Samples of a motion at most, so that a long recording does not swell. */
  private static final double MOST_SAMPLES = 200_000;

  /** Copies the lists. */
  public Stage {
    ground = List.copyOf(ground);
    links = List.copyOf(links);
    waypoints = List.copyOf(waypoints);
    marks = List.copyOf(marks);
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

  /**
   * The tightest instant.
   *
   * @param time s
   * @param segment move, from 1; 0 where the motion has none
   * @param grip pose of the grip frame, {@code X_WT}
   * @param factor first-slip factor, dimensionless
   * @param force that the grip must put on the part at the most, N
   * @param moment that it must put on it at the most, N m
   */
  public record Tight(
      double time, int segment, Pose grip, double factor, double force, double moment) {}

  /** Of a result. */
  public static Stage of(StudyResult result) {
    return of(result, Optional.empty());
  }

  /**
   * Of a result, in the place of another stage.
   *
   * @param result of a study
   * @param before what was shown; floor, view and scale stay if nothing lies beyond them
   */
  public static Stage of(StudyResult result, Optional<Stage> before) {
    FactorTrace trace = FactorTrace.of(result, step(result.cycleTime()));
    Worst w = result.worst();
    Tight tight =
        new Tight(
            w.time(),
            w.segment(),
            w.state().pose(),
            w.first().factor(),
            result.peaks().gripForce(),
            result.peaks().gripMoment());
    Stage stage =
        of(result.scene(), result.requiredSafety(), trace, tight, Headline.of(result), before);
    // Only where the least factor is below 1 there is a fall to look for.
    return result.factor() < 1
        ? stage.with(stage.playback, stage.flightOf(Drop.first(result.scene(), stage.floor.z())))
        : stage;
  }

  /**
   * Of a scene that is still being judged: coloured by its samples, without a verdict.
   *
   * @param scene as read
   * @param safety required safety S
   * @param trace its samples
   * @param before what was shown; floor, view and scale stay if nothing lies beyond them
   */
  public static Stage of(Scene scene, double safety, FactorTrace trace, Optional<Stage> before) {
    int i = tightest(trace);
    double least = trace.factor(i).orElse(NO_LIMIT);
    Playback.Instant now = new Playback(scene, safety).at(trace.time(i));
    Tight tight =
        new Tight(
            now.time(),
            now.segment(),
            now.state().pose(),
            least,
            now.forces().force().norm(),
            now.forces().moment().norm());
    return of(scene, safety, trace, tight, Headline.judging(scene, safety, least), before);
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

  private static Stage of(
      Scene scene,
      double safety,
      FactorTrace trace,
      Tight tight,
      Headline headline,
      Optional<Stage> before) {
    Actors actors = new Actors(scene);
    List<Waypoint> waypoints = Waypoint.of(scene, scene.moved(), trace);
    List<Vec3> fit = new ArrayList<>(actors.reach(tight.grip()));
    for (Waypoint w : waypoints) {
      // The part at all places, so that the view stays where another one becomes the tightest.
      fit.addAll(actors.reach(new Pose(w.place(), tight.grip().rotation())));
      fit.add(w.place());
    }
    int stride = 1 + trace.size() / PATH_POINTS;
    for (int i = 0; i < trace.size(); i += stride) {
      fit.add(trace.position(i));
    }
    Extent needed = Extent.of(fit);
    Optional<Stage> kept = before.filter(b -> Extent.of(b.fit).contains(needed));
    Floor floor = kept.map(Stage::floor).orElseGet(() -> Floor.below(fit));
    if (kept.isPresent()) {
      fit.clear();
      fit.addAll(kept.get().fit);
    } else {
      widen(fit, scene, actors, tight, waypoints, floor);
    }
    double extent = Extent.of(fit).size();
    double radius = RADIUS * extent;
    ForceArrows arrows =
        kept.map(Stage::arrows)
            .orElseGet(() -> ForceArrows.of(tight.force(), tight.moment(), extent));
    List<PathRuns.Link> links = PathRuns.links(trace, LINK * radius);
    List<Vec3> axes =
        floor.contains(Vec3.ZERO)
            ? List.of(
                new Vec3(floor.step(), 0, 0),
                new Vec3(0, floor.step(), 0),
                new Vec3(0, 0, floor.step()))
            : List.of();
    return new Stage(
        scene,
        safety,
        trace,
        ground(floor, links, waypoints, axes),
        links,
        TubeMesh.of(PathRuns.runs(links, radius)),
        waypoints,
        marks(floor),
        axes,
        tight,
        MarginStep.of(tight.factor() / safety),
        headline,
        fit,
        actors,
        new Playback(scene, safety),
        arrows,
        Optional.empty(),
        floor,
        Optional.empty());
  }

  /** Adds what else must be in sight: tool, robot, the longest arrow, the places on the floor. */
  private static void widen(
      List<Vec3> fit,
      Scene scene,
      Actors actors,
      Tight tight,
      List<Waypoint> waypoints,
      Floor floor) {
    fit.addAll(actors.toolReach(tight.grip()));
    // Where the robot begins will do: more postures would make the path smaller still.
    fit.addAll(near(robot(new Playback(scene, 1).at(0)), fit));
    // Room for the largest force, which mostly points up.
    double longest =
        tight.force()
            / ForceArrows.of(tight.force(), tight.moment(), Extent.of(fit).size()).newtons();
    fit.add(tight.grip().position().plus(new Vec3(0, 0, longest)));
    waypoints.forEach(w -> fit.add(onFloor(w.place(), floor)));
  }

  /**
   * The same with the part leaving the grip at a chosen instant, as where the supply is lost; the
   * flight is empty if the part is not held then.
   *
   * @param time s
   */
  public Stage withDropAt(double time) {
    return with(playback, flightOf(Drop.at(scene, time, floor.z())));
  }

  /** The same with a playback of its own, to be used by another thread. */
  public Stage forAnotherThread() {
    return with(new Playback(scene, safety), flight);
  }

  private Optional<Flight> flightOf(Optional<Drop> drop) {
    return drop.map(d -> Flight.of(d, RADIUS * Extent.of(fit).size()));
  }

  /**
   * The same with the path of another stage thin beside its own, in that one's colours.
   *
   * @param first as it was
   */
  public Stage beside(Stage first) {
    if (links.equals(first.links)) {
      return this;
    }
    double radius = RADIUS * Extent.of(fit).size();
    MeshData thin = TubeMesh.of(PathRuns.runs(first.links, TWIN_RADIUS * radius));
    return with(playback, flight, Optional.of(thin));
  }

  private Stage with(Playback plays, Optional<Flight> flies) {
    return with(plays, flies, twin);
  }

  private Stage with(Playback plays, Optional<Flight> flies, Optional<MeshData> thin) {
    return new Stage(
        scene, safety, trace, ground, links, path, waypoints, marks, axes, worst, worstStep,
        headline, fit, actors, plays, arrows, flies, floor, thin);
  }

  /** The robot's highest and lowest points: above and below the ends of its bones. */
  private static List<Vec3> robot(Playback.Instant now) {
    List<Vec3> points = new ArrayList<>();
    for (RobotFigure.Bone b : now.robot().map(RobotFigure::bones).orElse(List.of())) {
      Vec3 girth = new Vec3(0, 0, b.radius());
      for (Vec3 end : List.of(b.from(), b.to())) {
        points.add(end.plus(girth));
        points.add(end.minus(girth));
      }
    }
    return points;
  }

  /** What a view shows too of a robot's points: all, unless that makes the path small. */
  private static List<Vec3> near(List<Vec3> robot, List<Vec3> fit) {
    List<Vec3> all = new ArrayList<>(fit);
    all.addAll(robot);
    return Extent.of(all).size() <= LARGEST * Extent.of(fit).size() ? robot : List.of();
  }

  /**
   * Points of the robot at an instant that a view shows too: all, unless that makes the path small.
   */
  public List<Vec3> robotReach(Playback.Instant now) {
    return near(robot(now), fit);
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
   * Everything at one instant but the path as it was.
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

  /**
   * Everything at one instant, with the path as it was beside the path as seen in a view.
   *
   * @param now of this stage's playback
   * @param show what is shown besides the path
   * @param view from where; another one sees the twin elsewhere
   */
  public List<Item> at(Playback.Instant now, Show show, View view) {
    List<Item> items = at(now, show);
    if (show.asItWas() && twin.isPresent()) {
      double away = TWIN_AWAY * RADIUS * Extent.of(fit).size();
      // Few ways are seen to lead so.
      Vec3 aside = view.right().times(0.6 * away).minus(view.up().times(0.8 * away));
      items.add(
          new Item.Body(
              twin.get(),
              new Pose(aside, Quaternion.IDENTITY),
              Layer.PATH,
              Item.Body.WHITE,
              1,
              false));
    }
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
