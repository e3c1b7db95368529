package io.github.holdpath.dynamics.spatial;

/**
 * Force and moment about a stated point, in stated axes. {@code F_part_T}: on the part, about the
 * grip frame's origin, in its axes.
 *
 * @param force N
 * @param moment N m
 */
public record Wrench(Vec3 force, Vec3 moment) {
  /** No load. */
  public static final Wrench ZERO = new Wrench(Vec3.ZERO, Vec3.ZERO);

  /** From six numbers (fx, fy, fz, mx, my, mz) that begin at {@code offset}. */
  public static Wrench of(double[] w, int offset) {
    return new Wrench(
        new Vec3(w[offset], w[offset + 1], w[offset + 2]),
        new Vec3(w[offset + 3], w[offset + 4], w[offset + 5]));
  }

  /** Sum of two wrenches about the same point in the same axes. */
  public Wrench plus(Wrench o) {
    return new Wrench(force.plus(o.force), moment.plus(o.moment));
  }

  /** This less another wrench about the same point in the same axes. */
  public Wrench minus(Wrench o) {
    return new Wrench(force.minus(o.force), moment.minus(o.moment));
  }

  /** Every component times {@code s}. */
  public Wrench times(double s) {
    return new Wrench(force.times(s), moment.times(s));
  }

  /**
   * The same wrench, given in frame B, about the origin and in the axes of frame A.
   *
   * @param pose {@code X_AB}
   */
  public Wrench seenFrom(Pose pose) {
    Vec3 f = pose.rotation().rotate(force);
    return new Wrench(f, pose.rotation().rotate(moment).plus(pose.position().cross(f)));
  }

  /** The six numbers (fx, fy, fz, mx, my, mz), N and N m. */
  public double[] toArray() {
    return new double[] {force.x(), force.y(), force.z(), moment.x(), moment.y(), moment.z()};
  }
}
