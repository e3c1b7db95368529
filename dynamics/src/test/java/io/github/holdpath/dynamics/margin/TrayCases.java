package io.github.holdpath.dynamics.margin;

import io.github.holdpath.dynamics.Reference;
import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.List;
import tools.jackson.databind.JsonNode;

/**
 * Objects that stand loose on a level tray. The tray is the grip: one patch, the object's base,
 * with z up. Its weight pulls the object onto the tray as a magnet would, so it stands as pull and
 * preload of the patch; what the tray's motion asks is the load.
 */
final class TrayCases {
  static final double G = 9.80665;

  private TrayCases() {}

  /** An object on a tray, centre of mass in the frame of its base, m, and mass, kg. */
  record Standing(String name, PatchShape base, double mu, double mass, Vec3 com, JsonNode row) {
    ContactPatch patch() {
      return new ContactPatch(
          "base",
          Pose.IDENTITY,
          base,
          mu,
          mass * G,
          mass * G,
          PatchStiffness.ALIKE,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          false);
    }

    HoldModel hold() {
      return new HoldModel(List.of(patch()), List.of());
    }

    /** Load of a weight that acts off the middle of the base: the pull acts in the middle. */
    Wrench offset() {
      Vec3 weight = new Vec3(0, 0, mass * G);
      return new Wrench(Vec3.ZERO, com.cross(weight));
    }

    /** Load of one m/s^2 along a unit direction. */
    Wrench perAcceleration(Vec3 way) {
      Vec3 force = way.times(mass);
      return new Wrench(force, com.cross(force));
    }

    /** Sideways acceleration at which the object slides or tips, m/s^2. */
    double limit(Vec3 way) {
      double[] both = new double[12];
      System.arraycopy(offset().toArray(), 0, both, 0, 6);
      System.arraycopy(perAcceleration(way).toArray(), 0, both, 6, 6);
      HoldModel hold = hold();
      double k = new SpeedHeadroom(hold, 1, hold.workspace()).of(both);
      return k * k;
    }

    /** What goes first along a direction. */
    FailureMode mode(Vec3 way) {
      Vec3 by = way.times(limit(way));
      return hold().firstSlip(offset().plus(perAcceleration(by))).mode();
    }

    /** The same object on another surface. */
    Standing with(double other) {
      return new Standing(name, base, other, mass, com, row);
    }

    @Override
    public String toString() {
      return name;
    }
  }

  static List<Standing> objects() {
    return Reference.rows("tray-objects.json", "objects").map(TrayCases::object).toList();
  }

  static List<Standing> boxes() {
    return Reference.rows("tray-objects.json", "boxes").map(TrayCases::box).toList();
  }

  private static Standing object(JsonNode row) {
    double[] base = Reference.numbers(row.get("base"));
    double inset = row.get("inset").doubleValue();
    double x = base[0] - 2 * inset;
    double y = base[1] - 2 * inset;
    PatchShape shape =
        row.get("shape").stringValue().equals("cylinder")
            ? new PatchShape.Disc(x / 2)
            : new PatchShape.Rectangle(x, y);
    return new Standing(
        row.get("object").stringValue() + " on " + row.get("surface").stringValue(),
        shape,
        row.get("mu").doubleValue(),
        row.get("mass").doubleValue(),
        new Vec3(0, 0, row.get("comHeight").doubleValue()),
        row);
  }

  private static Standing box(JsonNode row) {
    double[] base = Reference.numbers(row.get("base"));
    return new Standing(
        row.get("box").stringValue(),
        new PatchShape.Rectangle(base[0], base[1]),
        row.get("muPlanned").doubleValue(),
        row.get("mass").doubleValue(),
        Reference.vector(row.get("com")),
        row);
  }
}
