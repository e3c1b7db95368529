package io.github.holdpath.sim.scene;

import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.spatial.Vec3;

/** Outer shape of a part, axes parallel to the grip frame. */
public sealed interface PartShape {
  /** Inertia about its own middle for a uniform density. */
  Inertia inertia(double mass);

  /** Extent along x, y and z, m. */
  Vec3 extent();

  /** Name in scene files. */
  String label();

  /** Whether the face that is seen along a unit direction is flat. */
  boolean flatAlong(Vec3 direction);

  /**
   * How far the shape reaches from its middle along a direction: a face that touches it from there
   * lies at this distance.
   *
   * @param direction unit vector
   * @return m
   */
  double reach(Vec3 direction);

  /**
   * How far a point lies outside the outline that is seen along a direction.
   *
   * @param point from the shape's middle, m
   * @param direction unit vector along one of the axes
   * @return m, 0 inside
   */
  double outside(Vec3 point, Vec3 direction);

  /**
   * A box.
   *
   * @param size along x, y, z, m
   */
  record Box(Vec3 size) implements PartShape {
    @Override
    public Inertia inertia(double mass) {
      return Inertia.solidBox(mass, size);
    }

    @Override
    public Vec3 extent() {
      return size;
    }

    @Override
    public String label() {
      return "box";
    }

    @Override
    public boolean flatAlong(Vec3 direction) {
      return true;
    }

    @Override
    public double reach(Vec3 direction) {
      return (Math.abs(direction.x()) * size.x()
              + Math.abs(direction.y()) * size.y()
              + Math.abs(direction.z()) * size.z())
          / 2;
    }

    @Override
    public double outside(Vec3 point, Vec3 direction) {
      return beyond(point, direction, size);
    }
  }

  /**
   * A cylinder, or a tube where the inner diameter is above 0.
   *
   * @param diameter outer, m
   * @param innerDiameter m, 0 for a solid
   * @param length m
   * @param axis 0, 1 or 2: along x, y or z
   */
  record Cylinder(double diameter, double innerDiameter, double length, int axis)
      implements PartShape {
    @Override
    public Inertia inertia(double mass) {
      return Inertia.tube(mass, diameter / 2, innerDiameter / 2, length, axis);
    }

    @Override
    public Vec3 extent() {
      return new Vec3(
          axis == 0 ? length : diameter,
          axis == 1 ? length : diameter,
          axis == 2 ? length : diameter);
    }

    @Override
    public String label() {
      return innerDiameter > 0 ? "tube" : "cylinder";
    }

    @Override
    public boolean flatAlong(Vec3 direction) {
      return Math.abs(component(direction, axis)) > 0.999;
    }

    @Override
    public double reach(Vec3 direction) {
      double along = Math.abs(component(direction, axis));
      double across = Math.sqrt(Math.max(0, 1 - along * along));
      return (along * length + across * diameter) / 2;
    }

    @Override
    public double outside(Vec3 point, Vec3 direction) {
      if (!flatAlong(direction)) {
        return beyond(point, direction, extent());
      }
      double along = component(point, axis);
      double radius = Math.sqrt(Math.max(0, point.dot(point) - along * along));
      return Math.max(0, Math.max(radius - diameter / 2, innerDiameter / 2 - radius));
    }
  }

  /**
   * A sphere.
   *
   * @param diameter m
   */
  record Sphere(double diameter) implements PartShape {
    @Override
    public Inertia inertia(double mass) {
      return Inertia.solidSphere(mass, diameter / 2);
    }

    @Override
    public Vec3 extent() {
      return new Vec3(diameter, diameter, diameter);
    }

    @Override
    public String label() {
      return "sphere";
    }

    @Override
    public boolean flatAlong(Vec3 direction) {
      return false;
    }

    @Override
    public double reach(Vec3 direction) {
      return diameter / 2;
    }

    @Override
    public double outside(Vec3 point, Vec3 direction) {
      double along = point.dot(direction);
      return Math.max(0, Math.sqrt(Math.max(0, point.dot(point) - along * along)) - diameter / 2);
    }
  }

  private static double component(Vec3 v, int axis) {
    return axis == 0 ? v.x() : axis == 1 ? v.y() : v.z();
  }

  /** How far a point lies outside a box in the two axes square to a direction. */
  private static double beyond(Vec3 point, Vec3 direction, Vec3 size) {
    double most = 0;
    for (int axis = 0; axis < 3; axis++) {
      if (Math.abs(component(direction, axis)) < 0.5) {
        most = Math.max(most, Math.abs(component(point, axis)) - component(size, axis) / 2);
      }
    }
    return most;
  }
}
