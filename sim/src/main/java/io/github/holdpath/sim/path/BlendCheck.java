package io.github.holdpath.sim.path;

import io.github.holdpath.sim.path.ChainFault.Kind;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoublePredicate;

/** What may stand in the way of a blend, and which weights it takes. */
final class BlendCheck {
  /** Turning back by more than this is a reversal, rad: the blend would bend without bound. */
  static final double REVERSAL = Math.toRadians(179);

  /** Least speed along a blend against the deeper of its ends; at 179 degrees it is 0.025. */
  private static final double LEAST_SPEED = 0.01;

  /**
   * Most by which a move that is neither line nor arc may turn from the corner in its zone, rad:
   * quaternions of half a turn have no mean.
   */
  private static final double MOST_TURN = Math.toRadians(150);

  /** A mean of quaternions shorter than this turns too suddenly; the other weights are taken. */
  private static final double LEAST_QUATERNION = 0.1;

  /** Ways that agree to this share fit each other. */
  static final double FITS = 1e-9;

  private static final int SAMPLES = 128;
  private static final int HALVINGS = 40;

  private final int index;
  private final Corner corner;
  private final double zone;

  BlendCheck(int index, Corner corner, double zone) {
    this.index = index;
    this.corner = corner;
    this.zone = zone;
  }

  /**
   * Why the blend does not fit.
   *
   * @param free how much of the first move's way is free, from the corner back
   * @param next the same of the second move, from the corner on
   */
  Optional<ChainFault> fault(double free, double next) {
    if (!(zone > 0) || !Double.isFinite(zone)) {
      return fault(
          Kind.NO_ZONE,
          largest(free, next),
          "the path does not stop here, so its corner needs a zone above 0 to be rounded in");
    }
    if (corner.mixed()) {
      return fault(
          Kind.MOVES_AND_TURNS,
          0,
          "one move goes on and the other only turns in place; no zone rounds that, so stop here");
    }
    if (corner.angle() > REVERSAL) {
      return fault(
          Kind.REVERSAL,
          0,
          String.format(
              Locale.ROOT,
              "the path turns back by %.1f degrees, and from 179 on no zone rounds it;"
                  + " stop here or put a point between",
              Math.toDegrees(corner.angle())));
    }
    double largest = largest(free, next);
    for (boolean back : new boolean[] {true, false}) {
      double length = back ? corner.before().length() : corner.after().length();
      double room = back ? free : next;
      double depth = corner.depth(back, zone).orElse(Double.POSITIVE_INFINITY);
      if (depth > length) {
        String which = back ? "before" : "after";
        return fault(
            Kind.ZONE_BEYOND_MOVE,
            largest,
            String.format(
                Locale.ROOT,
                "the zone of %s is larger than the move %s it, which goes no farther than %s from"
                    + " the corner",
                size(zone),
                which,
                size(corner.farthest(back, length))));
      }
      if (depth > room + FITS * length) {
        return fault(
            Kind.ZONES_OVERLAP,
            largest,
            String.format(
                Locale.ROOT,
                "the zone of %s overlaps the one before it: their move is %s long, of which the"
                    + " one before leaves %s; both alike may have %s",
                size(zone),
                size(length),
                size(room),
                size(corner.farthest(back, length / 2))));
      }
    }
    Optional<ChainFault> turned = turned();
    return turned.isPresent() ? turned : folds();
  }

  /** Lines and arcs turn by less than half a turn; other moves may turn by more. */
  private Optional<ChainFault> turned() {
    if (!turnsTooFar(zone)) {
      return Optional.empty();
    }
    return fault(
        Kind.TURNS_TOO_FAR,
        largestWithout(this::turnsTooFar),
        String.format(
            Locale.ROOT,
            "inside the zone of %s a move turns by more than %.0f degrees, too far to be blended",
            size(zone),
            Math.toDegrees(MOST_TURN)));
  }

  private boolean turnsTooFar(double radius) {
    for (boolean back : new boolean[] {true, false}) {
      PathCurve move = back ? corner.before() : corner.after();
      if (!move.even()
          && corner.turned(back, corner.depth(back, radius).orElse(move.length())) > MOST_TURN) {
        return true;
      }
    }
    return false;
  }

  /** Largest radius below the zone's of which something is not true. */
  private double largestWithout(DoublePredicate bad) {
    double fits = 0;
    double tooLarge = zone;
    for (int i = 0; i < HALVINGS; i++) {
      double mid = (fits + tooLarge) / 2;
      if (bad.test(mid)) {
        tooLarge = mid;
      } else {
        fits = mid;
      }
    }
    return fits;
  }

  /** Largest zone that both moves have room for. */
  double largest(double free, double next) {
    return Math.min(corner.farthest(true, free), corner.farthest(false, next));
  }

  private Optional<ChainFault> folds() {
    if (!folds(zone)) {
      return Optional.empty();
    }
    return fault(
        Kind.FOLDS,
        largestWithout(this::folds),
        "inside the zone of "
            + size(zone)
            + " the two moves lead back on each other, so that a blend would stand still");
  }

  /** Whether the blend of a zone that fits would come almost to rest by its own parameter. */
  private boolean folds(double radius) {
    double depthBefore = corner.depth(true, radius).orElseThrow();
    double depthAfter = corner.depth(false, radius).orElseThrow();
    BlendShape shape = shape(corner, radius, depthBefore, depthAfter);
    double[] work = new double[BlendShape.WORK];
    double[] point = new double[PathPoint.SIZE];
    double least =
        -Search.largest(
            u -> {
              shape.at(u, work, point);
              return -shape.speed(point);
            },
            0,
            1,
            SAMPLES);
    return least < LEAST_SPEED * Math.max(depthBefore, depthAfter);
  }

  /**
   * The blend with the weights of eq. 5.44 for the angle of its corner, or with those that sum to 1
   * should the former leave the zone or turn too suddenly, which they do not between lines and
   * arcs.
   */
  static BlendShape shape(Corner corner, double zone, double depthBefore, double depthAfter) {
    double c = (1 + Math.cos(corner.angle())) / 2;
    double roundness = Math.max(0, Math.min(1, 1.6 * c - 0.1));
    BlendShape shape = weighted(corner, depthBefore, depthAfter, roundness);
    boolean even = corner.before().even() && corner.after().even();
    return farthest(shape, 1) <= zone * (1 + FITS)
            && (even || leastQuaternion(shape) > LEAST_QUATERNION)
        ? shape
        : weighted(corner, depthBefore, depthAfter, 1);
  }

  private static double leastQuaternion(BlendShape shape) {
    double[] work = new double[BlendShape.WORK];
    double[] point = new double[PathPoint.SIZE];
    return -Search.largest(
        u -> {
          shape.at(u, work, point);
          return -BlendShape.quaternion(work);
        },
        0,
        1,
        SAMPLES);
  }

  private static BlendShape weighted(
      Corner corner, double depthBefore, double depthAfter, double roundness) {
    return new BlendShape(
        corner.before(), depthBefore, corner.after(), depthAfter, corner.turns(), roundness);
  }

  /** Largest distance from the corner, or with sign -1 the least one, negative. */
  static double farthest(BlendShape shape, double sign) {
    double[] work = new double[BlendShape.WORK];
    double[] point = new double[PathPoint.SIZE];
    return Search.largest(
        u -> {
          shape.at(u, work, point);
          return sign * shape.away(point);
        },
        0,
        1,
        SAMPLES);
  }

  private Optional<ChainFault> fault(Kind kind, double largest, String words) {
    String fits =
        largest > 0 && kind != Kind.NO_ZONE ? "; the largest that fits is " + size(largest) : "";
    return Optional.of(new ChainFault(index, corner.place(), kind, largest, words + fits));
  }

  private String size(double value) {
    return corner.turns()
        ? String.format(Locale.ROOT, "%.4g degrees", Math.toDegrees(value))
        : String.format(Locale.ROOT, "%.4g mm", 1e3 * value);
  }
}
