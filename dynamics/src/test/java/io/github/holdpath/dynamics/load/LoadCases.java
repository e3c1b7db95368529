package io.github.holdpath.dynamics.load;

import io.github.holdpath.dynamics.Reference;
import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/** The states of motion of {@code reference/required-wrench.json}. */
public final class LoadCases {
  private static final Vec3 GRAVITY = new Vec3(0, 0, -9.80665);

  private LoadCases() {}

  /** All cases, in the order of the file. */
  public static Stream<JsonNode> all() {
    return Reference.rows("required-wrench.json", "cases");
  }

  /** The part of a case in still or moving air. */
  public static LoadModel model(JsonNode c, AirLoad air) {
    double[] i = Reference.numbers(c.get("I"));
    MassProperties body =
        new MassProperties(
            c.get("m").doubleValue(),
            Reference.vector(c.get("com")),
            new Inertia(i[0], i[4], i[8], i[1], i[2], i[5]));
    return new LoadModel(body, GRAVITY, air);
  }

  /** What the air does in a case. */
  public static AirLoad air(JsonNode c) {
    Vec3 broadside = new Vec3(0, 0, 1);
    return new AirLoad(c.get("rho").doubleValue(), c.get("CdA").doubleValue(), 0, broadside);
  }

  /** The motion of a case. */
  public static MotionState state(JsonNode c) {
    double[] rpy = Reference.numbers(c.get("rpyDeg"));
    Quaternion rotation =
        Quaternion.ofRpy(Math.toRadians(rpy[0]), Math.toRadians(rpy[1]), Math.toRadians(rpy[2]));
    return new MotionState(
        new Pose(Vec3.ZERO, rotation),
        Reference.vector(c.get("vel")),
        Reference.vector(c.get("omega")),
        Reference.vector(c.get("acc")),
        Reference.vector(c.get("alpha")));
  }
}
