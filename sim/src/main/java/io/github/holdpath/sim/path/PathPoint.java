package io.github.holdpath.sim.path;

/**
 * Flat form of a place on a path: pose of the grip frame in the world and its derivatives by the
 * path parameter s to third order. The turning is given by the rotation rate w of dR/ds = [w] R,
 * seen in world axes, so that angular velocity is w ds/dt.
 *
 * <p>Lengths in m, angles in rad, s in the unit of the path (m along the way of the origin, rad
 * where a path only turns).
 */
public final class PathPoint {
  /** Offset of the position. */
  public static final int POSITION = 0;

  /** Offset of the unit quaternion w, x, y, z. */
  public static final int ROTATION = 3;

  /** Offset of the first derivative of the position. */
  public static final int TANGENT = 7;

  /** Offset of the rotation rate by s. */
  public static final int TURN = 10;

  /** Offset of the second derivative of the position. */
  public static final int SECOND = 13;

  /** Offset of the first derivative of the rotation rate. */
  public static final int TURN_SECOND = 16;

  /** Offset of the third derivative of the position. */
  public static final int THIRD = 19;

  /** Offset of the second derivative of the rotation rate. */
  public static final int TURN_THIRD = 22;

  /** Length of the flat form. */
  public static final int SIZE = 25;

  private PathPoint() {}
}
