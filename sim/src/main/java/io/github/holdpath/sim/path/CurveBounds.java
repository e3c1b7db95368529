package io.github.holdpath.sim.path;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * Largest sizes of the derivatives of a path over a stretch of it. At constant path speed v the
 * origin's acceleration is {@code v^2 maxCurvature}, the angular velocity {@code v maxTurn} and the
 * angular acceleration {@code v^2 maxTurnSecond} at their largest.
 *
 * <p>They are exact for lines and arcs. Elsewhere they are maxima that were searched for: dense
 * samples, then the golden section about every crest that comes near the largest. A crest narrower
 * than the samples would be missed; blends are sampled as finely as they bend.
 *
 * @param maxTangent largest {@code |p'|}: 1, or 0 where the path only turns
 * @param maxCurvature largest {@code |p''|}, 1/m
 * @param maxTurn largest {@code |w|}, rad/m, or 1 where the path only turns
 * @param maxTurnSecond largest {@code |w'|}, rad/m^2, or 1/rad where the path only turns
 */
public record CurveBounds(
    double maxTangent, double maxCurvature, double maxTurn, double maxTurnSecond) {
  private static final int SAMPLES = 128;

  /** What is bounded, in the order of the components. */
  private static final int[] OFFSETS = {
    PathPoint.TANGENT, PathPoint.SECOND, PathPoint.TURN, PathPoint.TURN_SECOND
  };

  /** Crests below this share of the largest sample are not searched. */
  private static final double NEAR_LARGEST = 0.9;

  /** Values that differ by less than this share are a plateau. */
  private static final double FLAT = 1e-12;

  /** Bounds of a stretch of a curve, from even samples of it. */
  public static CurveBounds of(PathCurve curve, double from, double to) {
    double[] places = new double[SAMPLES + 1];
    for (int i = 0; i <= SAMPLES; i++) {
      places[i] = from + i * (to - from) / SAMPLES;
    }
    return of(curve, places);
  }

  /** Bounds of a stretch of a curve, from samples at places that ascend. */
  static CurveBounds of(PathCurve curve, double[] places) {
    double[] point = new double[PathPoint.SIZE];
    double[][] sizes = new double[OFFSETS.length][places.length];
    for (int i = 0; i < places.length; i++) {
      curve.at(places[i], point);
      for (int k = 0; k < OFFSETS.length; k++) {
        sizes[k][i] = Flat.norm(point, OFFSETS[k]);
      }
    }
    double[] best = new double[OFFSETS.length];
    for (int k = 0; k < OFFSETS.length; k++) {
      int offset = OFFSETS[k];
      best[k] = largest(s -> size(curve, s, offset, point), sizes[k], places);
    }
    return new CurveBounds(best[0], best[1], best[2], best[3]);
  }

  private static double largest(DoubleUnaryOperator f, double[] sizes, double[] places) {
    double best = Arrays.stream(sizes).max().orElse(0);
    double least = Arrays.stream(sizes).min().orElse(0);
    if (best - least <= FLAT * best) {
      return best;
    }
    double worth = NEAR_LARGEST * best;
    for (int i = 0; i < places.length; i++) {
      int before = Math.max(0, i - 1);
      int after = Math.min(places.length - 1, i + 1);
      if (sizes[i] >= worth && sizes[i] >= sizes[before] && sizes[i] >= sizes[after]) {
        best = Math.max(best, Search.golden(f, places[before], places[after]));
      }
    }
    return best;
  }

  private static double size(PathCurve curve, double s, int offset, double[] point) {
    curve.at(s, point);
    return Flat.norm(point, offset);
  }
}
