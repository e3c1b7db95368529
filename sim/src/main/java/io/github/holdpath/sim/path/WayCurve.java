package io.github.holdpath.sim.path;

/**
 * A curve by the length s of its way: of the origin, or the angle turned where it only turns
 * (theory, eq. 5.47 and 5.48). The way is exact to 1e-12 of the whole. Immutable.
 */
public final class WayCurve implements PathCurve {
  /**
   * Least speed by u against the greatest: below, the way all but stands still for an instant, and
   * the curvature of what follows has no bound.
   */
  public static final double LEAST_SPEED = 0.01;

  private static final int SAMPLES = 512;

  private final ParameterCurve curve;
  private final boolean turns;
  private final WayTable way;

  private WayCurve(ParameterCurve curve) {
    this.curve = curve;
    turns = curve.onlyTurns();
    double[] start = new double[PathPoint.SIZE];
    curve.at(0, start);
    way = new WayTable(curve, turns ? 1 : Flat.norm(start, PathPoint.POSITION));
  }

  /**
   * Changes the parameter of a curve.
   *
   * @throws IllegalArgumentException if it all but stands still on its way
   */
  public static WayCurve of(ParameterCurve curve) {
    double least = leastSpeed(curve);
    if (!(least >= LEAST_SPEED)) {
      throw new IllegalArgumentException(
          "the curve must not stand still on its way, but its least speed is "
              + least
              + " of the greatest");
    }
    return new WayCurve(curve);
  }

  /** Least speed by u against the greatest, 0 to 1; 0 where it does not move at all. */
  public static double leastSpeed(ParameterCurve curve) {
    double[] p = new double[PathPoint.SIZE];
    boolean turns = curve.onlyTurns();
    double most = Search.largest(u -> speed(curve, u, turns, p), 0, 1, SAMPLES);
    double least = -Search.largest(u -> -speed(curve, u, turns, p), 0, 1, SAMPLES);
    return most > 0 ? least / most : 0;
  }

  private static double speed(ParameterCurve curve, double u, boolean turns, double[] p) {
    curve.at(u, p);
    return ByWay.speed(p, turns);
  }

  @Override
  public double length() {
    return way.length();
  }

  @Override
  public void at(double s, double[] out) {
    curve.at(way.parameter(s), out);
    ByWay.change(out, turns);
  }

  @Override
  public CurveBounds bounds(double from, double to) {
    return CurveBounds.of(this, way.places(from, to));
  }

  @Override
  public boolean even() {
    return false;
  }

  /**
   * The parameter and its derivatives at a place.
   *
   * @param s 0 to {@link #length}
   * @param out a place of the curve by u, flat form of {@link PathPoint}, and behind it u, du/ds
   *     and d2u/ds2; overwritten
   */
  public void parameter(double s, double[] out) {
    double u = way.parameter(s);
    curve.at(u, out);
    out[PathPoint.SIZE] = u;
    out[PathPoint.SIZE + 1] = 1 / ByWay.speed(out, turns);
    out[PathPoint.SIZE + 2] = ByWay.bend(out, turns);
  }
}
