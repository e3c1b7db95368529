package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.study.PartForces;
import io.github.holdpath.viewer.mesh.MeshData;
import io.github.holdpath.viewer.mesh.Shafts;
import java.util.ArrayList;
import java.util.List;

/**
 * Forces as arrows to one scale, which fits the largest of the whole motion. The moment is an arc
 * about the grip's origin: its length is to a scale of its own.
 *
 * @param newtons that an arrow of a metre stands for, N/m
 * @param newtonMetres that an arc of a metre stands for, N m/m
 * @param radius of a shaft, m
 * @param arc radius of the moment's arc, m
 */
public record ForceArrows(double newtons, double newtonMetres, double radius, double arc) {
  /** Longest arrow per the extent of what is shown. */
  private static final double LONGEST = 0.3;

  private static final double ARC = 0.055;
  private static final double RADIUS = 0.0036;

  /** Angle of the largest moment, rad. */
  private static final double WIDEST = Math.toRadians(300);

  /** Air below this share of the required force is left out. */
  private static final double LITTLE = 0.01;

  /**
   * An arrow.
   *
   * @param kind what it shows
   * @param from its tail, world axes, m
   * @param to its tip, world axes, m
   * @param value N or N m
   */
  public record Arrow(ForceKind kind, Vec3 from, Vec3 to, double value) {}

  /**
   * To the scale of a motion.
   *
   * @param largest force, N
   * @param moment the largest, N m
   * @param extent of what is shown, m
   */
  static ForceArrows of(double largest, double moment, double extent) {
    double force = Math.max(largest, 1e-9);
    double arc = ARC * extent;
    return new ForceArrows(
        roundUp(force / (LONGEST * extent)),
        roundUp(Math.max(moment, 1e-6 * force * extent) / (WIDEST * arc)),
        RADIUS * extent,
        arc);
  }

  /** The least of 1, 2, 5 times a power of ten that is not less. */
  static double roundUp(double v) {
    double ten = Math.pow(10, Math.floor(Math.log10(Math.max(v, 1e-12))));
    for (double m : new double[] {1, 2, 5}) {
      if (m * ten >= v * (1 - 1e-9)) {
        return m * ten;
      }
    }
    return 10 * ten;
  }

  /** All arrows that are long enough to be seen. */
  public List<Arrow> arrows(PartForces f) {
    List<Arrow> all = new ArrayList<>();
    add(all, ForceKind.GRAVITY, f.centre(), f.gravity());
    add(all, ForceKind.INERTIA, f.centre(), f.inertia());
    if (f.air().norm() > LITTLE * f.force().norm()) {
      add(all, ForceKind.AIR, f.centre(), f.air());
    }
    add(all, ForceKind.FORCE, f.grip(), f.force());
    if (f.moment().norm() / newtonMetres > radius) {
      List<Vec3> points = bend(f);
      all.add(
          new Arrow(
              ForceKind.MOMENT, points.get(0), points.get(points.size() - 1), f.moment().norm()));
    }
    return all;
  }

  private void add(List<Arrow> all, ForceKind kind, Vec3 at, Vec3 force) {
    if (force.norm() / newtons > 2 * radius) {
      all.add(new Arrow(kind, at, at.plus(force.times(1 / newtons)), force.norm()));
    }
  }

  private List<Vec3> bend(PartForces f) {
    double angle = f.moment().norm() / newtonMetres / arc;
    return Shafts.arc(f.grip(), f.moment(), arc, angle);
  }

  /** Their bodies. */
  List<Item> items(PartForces f) {
    List<Item> items = new ArrayList<>();
    for (Arrow a : arrows(f)) {
      MeshData mesh =
          a.kind() == ForceKind.MOMENT
              ? Shafts.bent(bend(f), 0.8 * radius, a.kind().rgb())
              : Shafts.arrow(
                  a.from(),
                  a.to(),
                  a.kind() == ForceKind.FORCE ? 1.35 * radius : radius,
                  a.kind().dashed(),
                  a.kind().rgb());
      items.add(new Item.Body(mesh, Pose.IDENTITY, Layer.FORCE, Item.Body.WHITE, 1, false));
    }
    return items;
  }
}
