package io.github.holdpath.dynamics.spatial;

/**
 * Pose of one frame in another: {@code X_AB} carries components and points of B into A.
 *
 * @param position origin of B in A, m
 * @param rotation rotation of B in A
 */
public record Pose(Vec3 position, Quaternion rotation) {
  /** The two frames are one. */
  public static final Pose IDENTITY = new Pose(Vec3.ZERO, Quaternion.IDENTITY);

  /** A pose without rotation, position in m. */
  public static Pose at(double x, double y, double z) {
    return new Pose(new Vec3(x, y, z), Quaternion.IDENTITY);
  }

  /** {@code X_AC = X_AB.times(X_BC)}. */
  public Pose times(Pose o) {
    return new Pose(position.plus(rotation.rotate(o.position)), rotation.times(o.rotation));
  }

  /** {@code X_BA} of this {@code X_AB}. */
  public Pose inverse() {
    Quaternion back = rotation.inverse();
    return new Pose(back.rotate(position).times(-1), back);
  }

  /** Carries a point of B into A, m. */
  public Vec3 apply(Vec3 point) {
    return position.plus(rotation.rotate(point));
  }
}
