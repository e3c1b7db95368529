package io.github.holdpath.sim.scene;

import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;
import java.util.OptionalDouble;

/** Outer shape of a part, axes parallel to the grip frame. */
public sealed interface PartShape {
  /** Least cosine of a direction that counts as along an axis. */
  double ALONG = 0.999;

  /** Greatest cosine of a direction that counts as square to an axis. */
  double ACROSS = 1e-3;

  /** The axes of the grip frame. */
  List<Vec3> AXES = List.of(new Vec3(1, 0, 0), new Vec3(0, 1, 0), new Vec3(0, 0, 1));

  /** Inertia about its own middle for a uniform density. */
  Inertia inertia(double mass);

  /** Extent along x, y and z, m. */
  Vec3 extent();

  /** Content, m^3. */
  double volume();

  /** Name in scene files. */
  String label();

  /** Whether the face that is seen along a unit direction is flat. */
  boolean flatAlong(Vec3 direction);

  /** Whether neither a flat face nor the round of the shape faces a unit direction. */
  boolean aslantTo(Vec3 direction);

  /** Distance from its middle to the wall of its hole along a unit direction, m, if it has one. */
  default OptionalDouble hole(Vec3 direction) {
    return OptionalDouble.empty();
  }

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
   * @param direction unit vector, not aslant
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
    public double volume() {
      return size.x() * size.y() * size.z();
    }

    @Override
    public String label() {
      return "box";
    }

    @Override
    public boolean flatAlong(Vec3 direction) {
      return !aslantTo(direction);
    }

    @Override
    public boolean aslantTo(Vec3 direction) {
      double most = Math.max(Math.abs(direction.x()), Math.abs(direction.y()));
      return Math.max(most, Math.abs(direction.z())) < ALONG;
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
      return beyond(point, direction, this);
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
    public double volume() {
      return Math.PI * (diameter * diameter - innerDiameter * innerDiameter) / 4 * length;
    }

    @Override
    public String label() {
      return innerDiameter > 0 ? "tube" : "cylinder";
    }

    @Override
    public boolean flatAlong(Vec3 direction) {
      return Math.abs(component(direction, axis)) > ALONG;
    }

    @Override
    public boolean aslantTo(Vec3 direction) {
      return !flatAlong(direction) && !squareTo(direction);
    }

    private boolean squareTo(Vec3 direction) {
      return Math.abs(component(direction, axis)) < ACROSS;
    }

    @Override
    public double reach(Vec3 direction) {
      double along = Math.abs(component(direction, axis));
      return (along * length + Math.sqrt(Math.max(0, 1 - along * along)) * diameter) / 2;
    }

    @Override
    public OptionalDouble hole(Vec3 direction) {
      return innerDiameter > 0 && squareTo(direction)
          ? OptionalDouble.of(innerDiameter / 2)
          : OptionalDouble.empty();
    }

    @Override
    public double outside(Vec3 point, Vec3 direction) {
      if (!flatAlong(direction)) {
        return beyond(point, direction, this);
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
    public double volume() {
      return Math.PI * diameter * diameter * diameter / 6;
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
    public boolean aslantTo(Vec3 direction) {
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

  /** How far a point lies outside the sides of the outline that is seen along a direction. */
  private static double beyond(Vec3 point, Vec3 direction, PartShape shape) {
    double most = 0;
    for (Vec3 axis : AXES) {
      Vec3 inPlane = axis.minus(direction.times(direction.dot(axis)));
      if (inPlane.norm() > 0.5) {
        Vec3 side = inPlane.unit();
        Vec3 other = direction.cross(side);
        most = Math.max(most, Math.abs(point.dot(side)) - shape.reach(side));
        most = Math.max(most, Math.abs(point.dot(other)) - shape.reach(other));
      }
    }
    return most;
  }
}
