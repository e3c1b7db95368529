package io.github.holdpath.sim.scene.route;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.motion.route.MoveShape;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.motion.route.RouteStep;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Builds a planned route. */
public final class RouteBuilder {
  /** Ways and turns below these count as none, m and rad. */
  private static final double NOWHERE = 1e-9;

  /** A turn nearer than this to half a circle has no shortest arc that rounding leaves alone. */
  private static final double HALF_TURN_TOLERANCE = 1e-6;

  private final Values scene;
  private final Faults faults;
  private final Optional<LawKind> law;
  private final LimitsBuilder limits;
  private final BlendBuilder blends;
  private final List<RouteStep> steps = new ArrayList<>();
  private Optional<Pose> start = Optional.empty();
  private Optional<Pose> at = Optional.empty();
  private String taken = "";
  private String released = "";

  /**
   * Begins.
   *
   * @param scene checked fields of the file
   * @param faults takes what is wrong
   */
  public RouteBuilder(Values scene, Faults faults) {
    this.scene = scene;
    this.faults = faults;
    this.law = law();
    this.blends = new BlendBuilder(faults);
    this.limits = new LimitsBuilder(scene, law.map(LawKind::boundsJerk).orElse(false), faults);
  }

  private Optional<LawKind> law() {
    if (!scene.isThere("law")) {
      faults.add(
          scene.place("law"),
          "is missing: the motion law of every move; write "
              + Stream.of(LawKind.values())
                  .map(k -> "\"" + k.label() + "\"")
                  .collect(Collectors.joining(" or ")));
    }
    return scene
        .text("law")
        .flatMap(t -> Stream.of(LawKind.values()).filter(k -> k.label().equals(t)).findFirst());
  }

  /**
   * Builds the route.
   *
   * @return empty if faults were noted
   */
  public Optional<Route> build() {
    int before = faults.count();
    List<Values> items = scene.groups("route");
    boolean whole =
        scene.node("route").orElseThrow() instanceof JsonNode.Items all
            && all.items().size() == items.size();
    for (int i = 0; i < items.size(); i++) {
      step(items.get(i), i, whole);
    }
    blends.stop("the end of the route");
    if (whole && !items.isEmpty() && taken.isEmpty()) {
      faults.add(
          scene.place("route"),
          "the part is never taken, so nothing can be judged; add { \"grip\": \"take\", \"wait\":"
              + " \"0.25 s\" }");
    }
    if (faults.count() > before || start.isEmpty() || law.isEmpty()) {
      return Optional.empty();
    }
    Route route = new Route(start.get(), law.get(), steps, allOverride());
    blends.check(route);
    return faults.count() > before ? Optional.empty() : Optional.of(route);
  }

  private void step(Values step, int index, boolean whole) {
    ObjectSpec kind = step.spec();
    if (whole && (index == 0) != (kind == RouteSpec.START)) {
      faults.add(
          step.place(),
          index == 0
              ? "a route begins with its start; write { \"start\": { \"at\": \"0.9 0 0.4 m\","
                  + " \"rpy\": \"180 0 0 deg\" } } before this step"
              : "a start stands only at the beginning; for a move write { \"line\": { \"at\":"
                  + " \"0.9 0 0.8 m\" } }");
    }
    if (kind == RouteSpec.START) {
      start(step);
    } else if (kind == RouteSpec.GRIP) {
      blends.stop("the grip step after it");
      grip(step);
    } else if (kind == RouteSpec.LINE) {
      move(step);
    } else if (kind == RouteSpec.ARC) {
      arc(step);
    } else if (kind == RouteSpec.JOINT) {
      joint(step);
    } else {
      blends.stop("the wait after it");
      step.number("wait").ifPresent(t -> steps.add(new RouteStep.Wait(step.place().pointer(), t)));
    }
  }

  private void start(Values step) {
    Optional<Values> pose = step.group("start");
    if (pose.isPresent() && !PoseBuilder.hasRotation(pose.get())) {
      faults.add(
          pose.get().place("rpy"),
          "is missing: how the grip is turned at the start; for example \"180 0 0 deg\", which"
              + " looks down");
    } else {
      start = pose.flatMap(p -> PoseBuilder.build(p, Quaternion.IDENTITY, faults));
      at = start;
    }
  }

  private void grip(Values step) {
    String pointer = step.place().pointer();
    Optional<String> word = step.text("grip");
    if (word.isEmpty()) {
      taken = taken.isEmpty() ? pointer : taken;
      return;
    }
    boolean take = word.get().equals("take");
    String wrong = take ? takeFault() : releaseFault();
    if (!wrong.isEmpty()) {
      faults.add(step.place("grip"), wrong);
    }
    if (take && taken.isEmpty()) {
      taken = pointer;
    } else if (!take && released.isEmpty()) {
      released = pointer;
    }
    step.number("wait")
        .ifPresent(
            t ->
                steps.add(
                    take ? new RouteStep.Take(pointer, t) : new RouteStep.Release(pointer, t)));
  }

  private String takeFault() {
    return taken.isEmpty()
        ? ""
        : "the part was taken in " + taken + " already; a route takes it once: take this step out";
  }

  private String releaseFault() {
    if (taken.isEmpty()) {
      return "nothing is held here; put a { \"grip\": \"take\" } before it";
    }
    return released.isEmpty()
        ? ""
        : "the part was released in " + released + " already; take this step out";
  }

  private void move(Values step) {
    Optional<Pose> from = at;
    Quaternion turned = from.map(Pose::rotation).orElse(Quaternion.IDENTITY);
    Optional<Values> pose = step.group("line");
    Optional<Pose> to = pose.flatMap(p -> PoseBuilder.build(p, turned, faults));
    boolean known = pose.filter(PoseBuilder::hasRotation).isPresent() || from.isPresent();
    at = known ? to : Optional.empty();
    if (from.isEmpty() || to.isEmpty()) {
      return;
    }
    double length = to.get().position().minus(from.get().position()).norm();
    double angle = turned.angleTo(to.get().rotation());
    geometry(step, length, angle);
    add(step, MoveShape.LINE, to.get(), length, angle);
  }

  /** Whether the robot reaches it, and how it gets there, is seen when it follows. */
  private void joint(Values step) {
    Optional<Pose> from = at;
    Quaternion turned = from.map(Pose::rotation).orElse(Quaternion.IDENTITY);
    Optional<Values> pose = step.group("joint");
    Optional<Pose> to = pose.flatMap(p -> PoseBuilder.build(p, turned, faults));
    boolean known = pose.filter(PoseBuilder::hasRotation).isPresent() || from.isPresent();
    at = known ? to : Optional.empty();
    int before = faults.count();
    MoveLimits own = limits.of(step, 0, 0);
    blends.move(step, false);
    if (from.isPresent() && to.isPresent() && faults.count() == before) {
      double length = to.get().position().minus(from.get().position()).norm();
      nowhere(step, "joint", length, turned.angleTo(to.get().rotation()));
      steps.add(
          new RouteStep.Move(
              step.place().pointer(),
              step.text("name").orElse(""),
              MoveShape.JOINTS,
              to.get(),
              own,
              step.number("blend").orElse(0),
              override(step)));
    }
  }

  private double override(Values step) {
    return step.number("override").orElse(1) * allOverride();
  }

  private double allOverride() {
    return scene.number("override").orElse(1);
  }

  private void arc(Values step) {
    Optional<Pose> from = at;
    at = Optional.empty();
    if (from.isEmpty()) {
      return;
    }
    Optional<ArcBuilder.Arc> arc =
        step.group("arc").flatMap(a -> new ArcBuilder(a, faults).build(from.get()));
    at = arc.map(ArcBuilder.Arc::end);
    arc.ifPresent(
        a ->
            add(
                step,
                a.shape(),
                a.end(),
                a.length(),
                from.get().rotation().angleTo(a.end().rotation())));
  }

  private void add(Values step, MoveShape shape, Pose to, double length, double angle) {
    int before = faults.count();
    MoveLimits own = limits.of(step, length > NOWHERE ? length : 0, angle > NOWHERE ? angle : 0);
    blends.move(step, length <= NOWHERE);
    if (faults.count() == before) {
      steps.add(
          new RouteStep.Move(
              step.place().pointer(),
              step.text("name").orElse(""),
              shape,
              to,
              own,
              step.number("blend").orElse(0),
              override(step)));
    }
  }

  private void nowhere(Values step, String name, double length, double angle) {
    if (length <= NOWHERE && angle <= NOWHERE) {
      faults.add(
          step.place(name),
          "the grip is there already; take this move out, or write { \"wait\": \"0.5 s\" } to stand"
              + " still");
    }
  }

  private void geometry(Values step, double length, double angle) {
    nowhere(step, "line", length, angle);
    if (angle >= Math.PI - HALF_TURN_TOLERANCE) {
      faults.add(
          step.place("line"),
          "a turn of 180 degrees may go either way round; put a move with half of the turn before"
              + " it");
    }
  }
}
