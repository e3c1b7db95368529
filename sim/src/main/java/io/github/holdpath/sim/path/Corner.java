package io.github.holdpath.sim.path;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.OptionalDouble;

/**
 * The place where one move ends and the next begins, and how far each may be left inside a zone.
 * Distances are m, or rad where both moves only turn.
 */
final class Corner {
  /** Moves that miss each other by more do not meet, m and rad. */
  private static final double MEETS_WITHIN = 1e-9;

  /** Samples of a move on which its distance from the corner is followed. */
  private static final int SAMPLES = 256;

  private static final int HALVINGS = 60;

  /** A crest of the distance is at most this much above the sample beside it. */
  private static final double NEAR_CREST = 0.99;

  private final PathCurve before;
  private final PathCurve after;
  private final double[] end = new double[PathPoint.SIZE];
  private final double[] start = new double[PathPoint.SIZE];

  /**
   * The corner of two moves.
   *
   * @throws IllegalArgumentException if the second does not begin where the first ends
   */
  Corner(PathCurve before, PathCurve after) {
    this.before = before;
    this.after = after;
    before.at(before.length(), end);
    after.at(0, start);
    double gap = BlendShape.away(end, start, false);
    double twist = BlendShape.away(end, start, true);
    if (gap > MEETS_WITHIN || twist > MEETS_WITHIN) {
      throw new IllegalArgumentException(
          "after must begin where before ends, but is " + gap + " m and " + twist + " rad away");
    }
  }

  PathCurve before() {
    return before;
  }

  PathCurve after() {
    return after;
  }

  /** Place of the corner in the world, m. */
  Vec3 place() {
    return Flat.vec(end, PathPoint.POSITION);
  }

  /** Whether a path only turns at a place: its origin stands. */
  private static boolean turns(double[] point) {
    return Flat.norm(point, PathPoint.TANGENT) < 0.5;
  }

  /** Whether one of the moves only turns and the other does not. */
  boolean mixed() {
    return turns(end) != turns(start);
  }

  /** Whether both moves only turn. */
  boolean turns() {
    return turns(end) && turns(start);
  }

  /** Angle by which the direction changes, of the way or of the axis of turning, rad, 0 to pi. */
  double angle() {
    int at = turns() ? PathPoint.TURN : PathPoint.TANGENT;
    return Flat.angle(Flat.vec(end, at), Flat.vec(start, at));
  }

  /**
   * Distance from the corner at a way from it, back along the first move or on along the second.
   */
  private double away(boolean back, double way, double[] point) {
    if (back) {
      before.at(before.length() - way, point);
    } else {
      after.at(way, point);
    }
    return BlendShape.away(point, end, turns());
  }

  private double length(boolean back) {
    return back ? before.length() : after.length();
  }

  /**
   * How far from the corner a move first leaves the zone, as a way along it; at most where it is
   * still inside.
   *
   * @param back along the first move, else along the second
   * @return empty where it never does
   */
  OptionalDouble depth(boolean back, double zone) {
    double[] point = new double[PathPoint.SIZE];
    double step = length(back) / SAMPLES;
    // Half an ulp may lie between a move and a zone that is meant to hold all of it.
    double within = zone * (1 - 1e-12);
    double last = 0;
    for (int i = 1; i <= SAMPLES; i++) {
      double way = i == SAMPLES ? length(back) : i * step;
      double away = away(back, way, point);
      if (away >= within) {
        return OptionalDouble.of(
            i == SAMPLES && away <= zone ? way : bisect(back, zone, way - step, way));
      }
      if (away < last && last > zone * NEAR_CREST) {
        double from = (i - 2) * step;
        double crest = Search.crest(t -> away(back, t, point), from, way);
        if (away(back, crest, point) >= within) {
          return OptionalDouble.of(bisect(back, zone, from, crest));
        }
      }
      last = away;
    }
    return OptionalDouble.empty();
  }

  private double bisect(boolean back, double zone, double inside, double outside) {
    double[] point = new double[PathPoint.SIZE];
    double lo = inside;
    double hi = outside;
    for (int i = 0; i < HALVINGS; i++) {
      double mid = (lo + hi) / 2;
      if (away(back, mid, point) <= zone) {
        lo = mid;
      } else {
        hi = mid;
      }
    }
    return lo;
  }

  /**
   * Largest turn from the corner within a way from it, rad: up to a whole turn, as it is counted
   * along the move.
   */
  double turned(boolean back, double way) {
    double[] from = back ? end : start;
    double[] point = new double[PathPoint.SIZE];
    return Search.largest(
        t -> {
          away(back, t, point);
          double along = Flat.dot4(from, PathPoint.ROTATION, point, PathPoint.ROTATION);
          return 2 * Math.acos(Math.max(-1, Math.min(1, along)));
        },
        0,
        way,
        SAMPLES);
  }

  /** Largest distance from the corner that a move has within a way from it: the largest zone. */
  double farthest(boolean back, double way) {
    if (!(way > 0)) {
      return 0;
    }
    double[] point = new double[PathPoint.SIZE];
    return Search.largest(t -> away(back, t, point), 0, way, SAMPLES);
  }
}
