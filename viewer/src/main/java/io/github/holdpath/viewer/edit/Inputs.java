package io.github.holdpath.viewer.edit;

import io.github.holdpath.sim.motion.route.MoveShape;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.motion.route.RouteStep;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;

/** Which values of a scene matter for its hold and may be changed by hand. */
public final class Inputs {
  /** Turns below this do not ask for limits of turning, rad. */
  private static final double TURN = 1e-6;

  private final Draft draft;
  private final Scene scene;
  private final InputRow rows;

  private Inputs(Draft draft, Scene scene) {
    this.draft = draft;
    this.scene = scene;
    this.rows = new InputRow(draft);
  }

  /**
   * Those of a scene, in the order in which they are shown.
   *
   * @param draft whose values are shown
   * @param scene as last read from it; where the draft has faults, that of the draft before
   */
  public static List<Input> of(Draft draft, Scene scene) {
    Inputs inputs = new Inputs(draft, scene);
    if (scene.motion() instanceof Route route) {
      inputs.motion(route);
      inputs.moves(route);
    }
    new GripInputs(draft, scene, inputs.rows).add();
    inputs.rows.given(Input.Group.PART, "part/mass", "Mass", Inputs::tenfold);
    inputs.rows.given(
        Input.Group.REQUIRED,
        "grip/requiredSafety",
        "Required safety",
        s -> Scale.linear(1, Math.max(4, Math.min(100, 2 * s)), 0.1));
    return inputs.rows.rows();
  }

  private void motion(Route route) {
    Input.Group group = Input.Group.MOTION;
    boolean jerk = route.law().boundsJerk();
    limit("speed", "Speed");
    limit("acceleration", "Acceleration");
    if (jerk) {
      limit("jerk", "Jerk");
    }
    if (turns(route)) {
      limit("turnSpeed", "Turning speed");
      limit("turnAcceleration", "Turning acceleration");
      if (jerk) {
        limit("turnJerk", "Turning jerk");
      }
    }
    rows.choice(
        group, "law", "Motion law", Stream.of(LawKind.values()).map(LawKind::label).toList());
    rows.add(group, "override", 0, "Override of all moves", "100 %", s -> percent());
  }

  /** A limit of the scene; not below what a single move asks for, which would be a fault. */
  private void limit(String name, String label) {
    String pointer = "limits/" + name;
    DoubleFunction<Scale> scale =
        s -> {
          Scale wide = Scale.log(s / 10, 4 * s);
          double most = mostOfMoves(name, pointer);
          return most > wide.least() && most < wide.most() ? Scale.log(most, wide.most()) : wide;
        };
    rows.given(Input.Group.MOTION, pointer, label, scale);
  }

  private double mostOfMoves(String name, String limit) {
    String unit = InputRow.quantity(draft.value(limit).orElse("")).map(q -> q.unit()).orElse("");
    double most = 0;
    for (RouteStep.Move move : movesOf(((Route) scene.motion()))) {
      most =
          Math.max(
              most,
              InputRow.quantity(draft.value(move.pointer() + "/" + name).orElse(""))
                  .filter(q -> q.unit().equals(unit) && !q.numbers().isEmpty())
                  .map(q -> q.numbers().get(0))
                  .orElse(0.0));
    }
    return most;
  }

  private void moves(Route route) {
    int number = 0;
    for (RouteStep.Move move : movesOf(route)) {
      number++;
      String name = move.name().isEmpty() ? "move " + number : move.name();
      ofMove(move, "speed", name + ": speed");
      ofMove(move, "acceleration", name + ": acceleration");
      if (draft.value(move.pointer() + "/jerk").isPresent() && route.law().boundsJerk()) {
        ofMove(move, "jerk", name + ": jerk");
      }
      rows.add(
          Input.Group.MOVES,
          move.pointer() + "/override",
          0,
          name + ": override",
          "100 %",
          s -> percent());
    }
  }

  private void ofMove(RouteStep.Move move, String field, String label) {
    String pointer = move.pointer() + "/" + field;
    boolean limited = draft.value("limits/" + field).isPresent();
    boolean percent = draft.value(pointer).map(t -> t.strip().endsWith("%")).orElse(true);
    if (!limited && percent) {
      return;
    }
    String unit = InputRow.quantity(draft.value(pointer).orElse("")).map(q -> q.unit()).orElse("");
    double most =
        InputRow.quantity(draft.value("limits/" + field).orElse(""))
            .filter(q -> q.unit().equals(unit) && !q.numbers().isEmpty())
            .map(q -> q.numbers().get(0))
            .orElse(Double.POSITIVE_INFINITY);
    DoubleFunction<Scale> scale = s -> Scale.log(s / 10, Math.max(s, Math.min(most, 10 * s)));
    rows.add(
        Input.Group.MOVES,
        pointer,
        0,
        label,
        limited ? "100 %" : "",
        percent ? s -> percent() : scale);
  }

  private static List<RouteStep.Move> movesOf(Route route) {
    return route.steps().stream()
        .filter(RouteStep.Move.class::isInstance)
        .map(RouteStep.Move.class::cast)
        .toList();
  }

  private static boolean turns(Route route) {
    var from = route.start().rotation();
    for (RouteStep.Move move : movesOf(route)) {
      var to = move.target().rotation();
      double dot =
          Math.abs(from.w() * to.w() + from.x() * to.x() + from.y() * to.y() + from.z() * to.z());
      if (2 * Math.acos(Math.min(1, dot)) > TURN || move.shape() instanceof MoveShape.Joints) {
        return true;
      }
      from = to;
    }
    return false;
  }

  static Scale percent() {
    return Scale.linear(5, 100, 1);
  }

  /** From a tenth to ten times. */
  static Scale tenfold(double value) {
    return value > 0 ? Scale.log(value / 10, value * 10) : Scale.linear(0, 1, 0.01);
  }
}
