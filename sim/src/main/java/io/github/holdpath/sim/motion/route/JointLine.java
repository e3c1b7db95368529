package io.github.holdpath.sim.motion.route;

import io.github.holdpath.sim.path.CurveBounds;
import io.github.holdpath.sim.path.ParameterCurve;
import io.github.holdpath.sim.path.PathCurve;
import io.github.holdpath.sim.path.PathPoint;
import io.github.holdpath.sim.path.WayCurve;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * The path of a move along the joints by the way of the grip's origin, or by the angle turned where
 * the origin stands: what a chain joins to other moves (theory, section 5.18). The joints go on
 * their straight line by {@code u(s)}. The workspace inside is lent to one caller at a time.
 */
final class JointLine implements PathCurve {
  private final JointWay way;
  private final WayCurve curve;
  private final AtomicReference<double @Nullable []> spare = new AtomicReference<>();

  /** The same way by u; a path that only turns has no rounding of an origin that moves. */
  private record ByParameter(JointStates states, boolean onlyTurns) implements ParameterCurve {
    @Override
    public void at(double u, double[] out) {
      states.path(u, out);
      if (onlyTurns) {
        Arrays.fill(out, PathPoint.TANGENT, PathPoint.TANGENT + 3, 0);
        Arrays.fill(out, PathPoint.SECOND, PathPoint.SECOND + 3, 0);
        Arrays.fill(out, PathPoint.THIRD, PathPoint.THIRD + 3, 0);
      }
    }
  }

  private JointLine(JointWay way) {
    this.way = way;
    curve = WayCurve.of(byParameter(way));
  }

  private static ParameterCurve byParameter(JointWay way) {
    return new ByParameter(way.states(), way.length() == 0);
  }

  /** Whether the grip's origin, or its turning, all but stands still on the way (eq. 5.75). */
  static boolean stands(JointWay way) {
    return !(WayCurve.leastSpeed(byParameter(way)) >= WayCurve.LEAST_SPEED);
  }

  /** By the length of a way that does not stand still. */
  static JointLine of(JointWay way) {
    return new JointLine(way);
  }

  JointWay way() {
    return way;
  }

  @Override
  public double length() {
    return curve.length();
  }

  @Override
  public void at(double s, double[] out) {
    curve.at(s, out);
  }

  @Override
  public CurveBounds bounds(double from, double to) {
    return curve.bounds(from, to);
  }

  @Override
  public boolean even() {
    return false;
  }

  /** Joint values and their rates, by a place s on the way and its rates (theory, eq. 5.76). */
  void joints(double s, double ds, double dds, double[] q, double[] qd, double[] qdd) {
    double[] lent = spare.getAndSet(null);
    double[] work = lent == null ? new double[PathPoint.SIZE + 3] : lent;
    curve.parameter(s, work);
    double u1 = work[PathPoint.SIZE + 1];
    double u2 = work[PathPoint.SIZE + 2];
    way.states().joints(work[PathPoint.SIZE], u1 * ds, u1 * dds + u2 * ds * ds, q, qd, qdd);
    spare.set(work);
  }
}
