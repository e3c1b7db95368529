package io.github.holdpath.sim.path;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.Arrays;

/**
 * A {@link LinePath} by the way along it: s is the distance from the first pose, or the angle
 * turned where the origin stands (theory, eq. 5.40). Immutable.
 */
public final class LineCurve implements PathCurve {
  private final LinePath line;
  private final double length;

  private LineCurve(LinePath line) {
    this.line = line;
    length = line.length() > 0 ? line.length() : line.angle();
  }

  /** The same line by another parameter. */
  public static LineCurve of(LinePath line) {
    return new LineCurve(line);
  }

  /**
   * The line between two poses.
   *
   * @throws IllegalArgumentException if the poses are the same, or half a turn apart
   */
  public static LineCurve between(Pose from, Pose to) {
    return new LineCurve(LinePath.between(from, to));
  }

  /** The line by the parameter from 0 to 1. */
  public LinePath line() {
    return line;
  }

  @Override
  public double length() {
    return length;
  }

  @Override
  public void at(double s, double[] out) {
    Vec3 p = line.from().position();
    Vec3 end = line.to().position();
    double u = s / length;
    double rate = 1 / length;
    Arrays.fill(out, PathPoint.TURN, PathPoint.SIZE, 0);
    if (line.length() > 0) {
      double tx = (end.x() - p.x()) * rate;
      double ty = (end.y() - p.y()) * rate;
      double tz = (end.z() - p.z()) * rate;
      Flat.put(p.x() + s * tx, p.y() + s * ty, p.z() + s * tz, out, PathPoint.POSITION);
      Flat.put(tx, ty, tz, out, PathPoint.TANGENT);
    } else {
      Flat.put(p.x(), p.y(), p.z(), out, PathPoint.POSITION);
      Flat.put(0, 0, 0, out, PathPoint.TANGENT);
    }
    line.turn().rotation(u, out, PathPoint.ROTATION);
    line.turn().turning(rate, out, PathPoint.TURN);
  }
}
