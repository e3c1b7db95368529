package io.github.holdpath.sim.path;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * A corner between two moves, rounded inside a zone about it (theory, section 5.11). It leaves the
 * first move and enters the second one where they cross the zone's border; position and orientation
 * go on there with the same first and second derivatives, so curvature has no jump and jerk stays
 * finite. It never leaves the zone.
 *
 * <p>The parameter is the length of the origin's way; where both moves only turn about one place it
 * is the angle turned, and the zone is an angle too. Immutable; the workspace inside is lent to one
 * caller at a time, a second one at the same time makes its own.
 */
public final class BlendPath implements PathCurve {
  private final Corner corner;
  private final double zone;
  private final BlendShape shape;
  private final WayTable way;
  private final double depthBefore;
  private final double depthAfter;
  private final double missed;
  private final double reach;
  private final AtomicReference<double @Nullable []> spare = new AtomicReference<>();

  private BlendPath(
      Corner corner, double zone, BlendShape shape, double depthBefore, double depthAfter) {
    this.corner = corner;
    this.zone = zone;
    this.shape = shape;
    this.depthBefore = depthBefore;
    this.depthAfter = depthAfter;
    double far = shape.turns() ? 1 : Flat.norm(shape.corner(), PathPoint.POSITION);
    way = new WayTable(byParameter(shape), far);
    missed = -BlendCheck.farthest(shape, -1);
    reach = BlendCheck.farthest(shape, 1);
  }

  /**
   * Rounds the corner between two moves. {@link PathChain#build} tells as values what is refused
   * here.
   *
   * @param before the move that ends in the corner
   * @param after the move that begins there
   * @param zone radius of the zone about the corner, m, or rad where both moves only turn
   * @throws IllegalArgumentException if the moves do not meet or no blend fits, with the reason
   */
  public static BlendPath between(PathCurve before, PathCurve after, double zone) {
    Corner corner = new Corner(before, after);
    BlendCheck check = new BlendCheck(0, corner, zone);
    check
        .fault(before.length(), after.length())
        .ifPresent(
            fault -> {
              throw new IllegalArgumentException(fault.message());
            });
    return of(
        corner,
        zone,
        corner.depth(true, zone).orElseThrow(),
        corner.depth(false, zone).orElseThrow());
  }

  /** The blend between two ways from the corner, already checked. */
  static BlendPath of(Corner corner, double zone, double depthBefore, double depthAfter) {
    BlendShape shape = BlendCheck.shape(corner, zone, depthBefore, depthAfter);
    return new BlendPath(corner, zone, shape, depthBefore, depthAfter);
  }

  private static ParameterCurve byParameter(BlendShape shape) {
    double[] work = new double[BlendShape.WORK];
    return new ParameterCurve() {
      @Override
      public void at(double u, double[] out) {
        shape.at(u, work, out);
      }

      @Override
      public boolean onlyTurns() {
        return shape.turns();
      }
    };
  }

  @Override
  public double length() {
    return way.length();
  }

  @Override
  public void at(double s, double[] out) {
    double[] lent = spare.getAndSet(null);
    double[] work = lent == null ? new double[BlendShape.WORK] : lent;
    shape.at(way.parameter(s), work, out);
    spare.set(work);
    shape.byLength(out);
  }

  /** The corner, in the world, m. */
  public Vec3 corner() {
    return corner.place();
  }

  /** Radius of the zone as given, m, or rad where it only turns. */
  public double zone() {
    return zone;
  }

  /** How near the blend comes to the corner: by so much it is missed; m or rad. */
  public double missed() {
    return missed;
  }

  /** How far the blend goes from the corner, at most {@link #zone}; m or rad. */
  public double reach() {
    return reach;
  }

  /** How much of the first move's way the blend replaces. */
  public double depthBefore() {
    return depthBefore;
  }

  /** How much of the second move's way the blend replaces. */
  public double depthAfter() {
    return depthAfter;
  }

  /** Sign of the quaternion at the end against that of the second move. */
  double signAfter() {
    return shape.signAfter();
  }

  /** Bounds of a stretch; samples are as close as the blend bends. */
  @Override
  public CurveBounds bounds(double from, double to) {
    return CurveBounds.of(this, way.places(from, to));
  }

  @Override
  public boolean even() {
    return false;
  }
}
