package io.github.holdpath.dynamics.margin;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.Drive;
import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.load.RequiredWrench;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The patch sets under load of {@code reference/grip-factors.json}. */
final class ReferenceCases {
  private ReferenceCases() {}

  /** One patch set under one load with what the other program found. */
  record Case(
      String id,
      List<ContactPatch> patches,
      List<Drive> drives,
      List<Drive> closures,
      RequiredWrench load,
      JsonNode expected) {
    HoldModel hold() {
      return new HoldModel(patches, drives);
    }

    @Override
    public String toString() {
      return id;
    }
  }

  static List<Case> all() {
    try (InputStream in =
        Objects.requireNonNull(
            ReferenceCases.class.getResourceAsStream("/reference/grip-factors.json"))) {
      List<Case> cases = new ArrayList<>();
      for (JsonNode node : new ObjectMapper().readTree(in).get("cases")) {
        cases.add(read(node));
      }
      return cases;
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static Case read(JsonNode node) {
    List<ContactPatch> patches = new ArrayList<>();
    int index = 0;
    for (JsonNode p : node.get("patches")) {
      patches.add(patch("patch " + index++, p));
    }
    List<Drive> drives = new ArrayList<>();
    String mechanism = node.path("drive").asString("");
    if (node.has("drives")) {
      for (JsonNode d : node.get("drives")) {
        List<Integer> moved = new ArrayList<>();
        List<Vec3> directions = new ArrayList<>();
        for (String key : d.propertyNames()) {
          moved.add(Integer.valueOf(key));
          directions.add(vec(d.get(key)));
        }
        drives.add(new Drive(moved, directions));
      }
    }
    // A locking finger has no drive that gives way; its closing relation holds forces per
    // stiffness.
    boolean locking = mechanism.equals("locking");
    return new Case(
        node.get("id").asString(),
        patches,
        locking ? List.of() : drives,
        locking ? drives : List.of(),
        load(node.get("load")),
        node.get("expect"));
  }

  private static ContactPatch patch(String name, JsonNode p) {
    double a = p.get("a").asDouble();
    PatchShape shape =
        switch (p.get("shape").asString()) {
          case "ring" -> new PatchShape.Ring(a);
          case "disc" -> new PatchShape.Disc(a);
          case "rect" -> new PatchShape.Rectangle(a, p.get("b").asDouble());
          default -> throw new AssertionError("unknown shape " + p.get("shape"));
        };
    double kn = p.get("kn").asDouble();
    return new ContactPatch(
        name,
        new Pose(vec(p.get("at")), rpy(p.get("rpyDeg"))),
        shape,
        p.get("mu").asDouble(),
        p.get("N0").asDouble(),
        p.path("P").asDouble(0),
        new PatchStiffness(kn, p.path("ks").asDouble(PatchStiffness.SHEAR_PER_NORMAL * kn)),
        p.has("nMax") ? p.get("nMax").asDouble() / shape.area() : Double.POSITIVE_INFINITY,
        Double.POSITIVE_INFINITY,
        p.path("ledge").asBoolean(false));
  }

  private static RequiredWrench load(JsonNode l) {
    JsonNode i = l.get("I");
    LoadModel model =
        new LoadModel(
            new MassProperties(
                l.get("m").asDouble(),
                vec(l.get("com")),
                new Inertia(
                    i.get(0).asDouble(), i.get(1).asDouble(), i.get(2).asDouble(), 0, 0, 0)),
            new Vec3(0, 0, -9.80665),
            AirLoad.NONE);
    return model.required(
        new MotionState(
            new Pose(Vec3.ZERO, rpy(l.get("rpyDeg"))),
            Vec3.ZERO,
            vec(l.get("omega")),
            vec(l.get("acc")),
            vec(l.get("alpha"))));
  }

  private static Vec3 vec(JsonNode n) {
    return new Vec3(n.get(0).asDouble(), n.get(1).asDouble(), n.get(2).asDouble());
  }

  private static Quaternion rpy(JsonNode n) {
    return Quaternion.ofRpy(
        Math.toRadians(n.get(0).asDouble()),
        Math.toRadians(n.get(1).asDouble()),
        Math.toRadians(n.get(2).asDouble()));
  }
}
