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
  }
}
