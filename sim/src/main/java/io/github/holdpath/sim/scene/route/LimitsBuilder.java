package io.github.holdpath.sim.scene.route;

import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.scene.field.FieldSpec;
import io.github.holdpath.sim.scene.field.ObjectType;
import io.github.holdpath.sim.scene.field.QuantityType;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.json.JsonNode;
import io.github.holdpath.sim.scene.quantity.Amount;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Limits of the scene and of each move. */
public final class LimitsBuilder {
  private final Values scene;
  private final MoveLimits most;
  private final boolean jerkMatters;
  private final Faults faults;
  private final Set<String> reported = new HashSet<>();

  /**
   * Begins with the limits of the scene.
   *
   * @param scene checked fields of the file
   * @param jerkMatters whether the law bounds the jerk
   */
  LimitsBuilder(Values scene, boolean jerkMatters, Faults faults) {
    this.scene = scene;
    this.most = ofScene(scene);
    this.jerkMatters = jerkMatters;
    this.faults = faults;
  }

  /** Limits of the scene; infinite where none is given. */
  public static MoveLimits ofScene(Values scene) {
    Optional<Values> limits = scene.group("limits");
    return new MoveLimits(
        given(limits, "speed"),
        given(limits, "acceleration"),
        given(limits, "jerk"),
        given(limits, "turnSpeed"),
        given(limits, "turnAcceleration"),
        given(limits, "turnJerk"));
  }

  private static double given(Optional<Values> limits, String name) {
    return limits
        .map(l -> l.number(name).orElse(Double.POSITIVE_INFINITY))
        .orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * Limits of one move.
   *
   * @param move checked fields
   * @param length of its way, m
   * @param angle of its turn, rad
   */
  MoveLimits of(Values move, double length, double angle) {
    double[] v = pair(move, "speed", most.speed(), "turnSpeed", most.turnSpeed());
    double[] a =
        pair(
            move, "acceleration", most.acceleration(), "turnAcceleration", most.turnAcceleration());
    double[] j = pair(move, "jerk", most.jerk(), "turnJerk", most.turnJerk());
    if (length > 0) {
      needed(move, "speed", v[0]);
      needed(move, "acceleration", a[0]);
      neededJerk(move, "jerk", j[0]);
    }
    if (angle > 0) {
      needed(move, "turnSpeed", v[1]);
      needed(move, "turnAcceleration", a[1]);
      neededJerk(move, "turnJerk", j[1]);
    }
    return new MoveLimits(v[0], a[0], j[0], v[1], a[1], j[1]);
  }

  private double[] pair(Values move, String name, double way, String turnName, double turn) {
    Optional<Amount> given = move.amount(name);
    double[] pair = {way, turn};
    if (given.isPresent() && given.get().percent()) {
      if (Double.isInfinite(way) && Double.isInfinite(turn)) {
        ofNothing(move, name);
      }
      pair[0] = way * given.get().first();
      pair[1] = turn * given.get().first();
    } else if (given.isPresent()) {
      pair[0] = value(move, name, given.get().first(), way);
    }
    Optional<Amount> turning = move.amount(turnName);
    if (turning.isPresent() && turning.get().percent()) {
      if (Double.isInfinite(turn)) {
        ofNothing(move, turnName);
      }
      pair[1] = turn * turning.get().first();
    } else if (turning.isPresent()) {
      pair[1] = value(move, turnName, turning.get().first(), turn);
    }
    return pair;
  }

  private double value(Values move, String name, double value, double most) {
    if (value > most) {
      faults.add(
          move.place(name),
          "is more than limits/"
              + name
              + " allows ("
              + written(name)
              + "); write at most that, or"
              + " raise the limit");
    }
    return value;
  }

  private String written(String name) {
    return scene.group("limits").flatMap(l -> l.amount(name)).map(Amount::text).orElse("none");
  }

  private void ofNothing(Values move, String name) {
    reported.add(name);
    faults.add(
        move.place(name),
        "is a percentage of limits/"
            + name
            + ", which is missing; give it, "
            + field(name).right());
  }

  private void neededJerk(Values move, String name, double value) {
    if (jerkMatters) {
      needed(move, name, value);
    }
  }

  private void needed(Values move, String name, double value) {
    boolean unreadable =
        isUnreadable(move, name)
            || scene.group("limits").filter(l -> isUnreadable(l, name)).isPresent()
            || (scene.isThere("limits") && scene.group("limits").isEmpty());
    if (Double.isInfinite(value) && !unreadable && reported.add(name)) {
      JsonNode.Place place =
          scene
              .group("limits")
              .map(l -> l.place(name))
              .orElse(scene.place().child("limits").child(name));
      faults.add(
          place,
          "is missing: "
              + move.place().pointer()
              + " needs "
              + ((QuantityType) field(name).type()).dimension().words()
              + "; "
              + field(name).right());
    }
  }

  private static boolean isUnreadable(Values owner, String name) {
    return owner.isThere(name) && owner.amount(name).isEmpty();
  }

  private FieldSpec field(String name) {
    ObjectType limits = (ObjectType) scene.spec().field("limits").orElseThrow().type();
    return limits.spec().field(name).orElseThrow();
  }
}
