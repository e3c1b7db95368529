package io.github.holdpath.dynamics.margin;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.ArrayList;
import java.util.List;

/**
 * The limits of one patch, each as "use per load": how much of it one times the load takes (theory,
 * eqs. 2.1 to 2.5 and 3.4). Patch axes; shares come on top of the preload.
 */
final class PatchLimits {
  /** Limits that are met within this relative distance count as met together. */
  static final double TIE = 1e-9;

  private static final double NEGLIGIBLE = 1e-12;
  private static final double NEARLY_RELEASED = 0.02;

  private final PatchShape shape;
  private final boolean ledge;
  private final boolean round;
  private final double mu;
  private final double preload;
  private final double perTorsionRadius;
  private final double twiceCrossX;
  private final double twiceCrossY;
  private final double failX;
  private final double failY;
  private final double area;
  private final double perSectionX;
  private final double perSectionY;
  private final double maxNormal;
  private final double maxPeakPressure;

  private final double perFriction;
  private final double perTiltX;
  private final double perTiltY;
  private final double perPreload;
  private final double perCrush;
  private final double perPeak;
  private final boolean crushedAtRest;

  PatchLimits(ContactPatch patch) {
    shape = patch.shape();
    ledge = patch.ledge();
    round = shape.round();
    mu = patch.friction();
    preload = patch.preload();
    perTorsionRadius = 1 / shape.torsionRadius();
    twiceCrossX = 2 * shape.crossX();
    twiceCrossY = 2 * shape.crossY();
    failX = shape.sealed() ? shape.kernX() : shape.edgeX();
    failY = shape.sealed() ? shape.kernY() : shape.edgeY();
    area = shape.area();
    // Elastic section moduli: a b^2/6 of a rectangle is area times kern.
    perSectionX = area > 0 ? 1 / (area * shape.kernX()) : 0;
    perSectionY = area > 0 ? 1 / (area * shape.kernY()) : 0;
    maxNormal = patch.maxNormal();
    maxPeakPressure = area > 0 ? patch.maxPeakPressure() : Double.POSITIVE_INFINITY;
    perFriction = 1 / (mu * preload);
    perTiltX = 1 / (failX * preload);
    perTiltY = 1 / (failY * preload);
    perPreload = 1 / preload;
    perCrush = 1 / (maxNormal - preload);
    double meanPressure = area > 0 ? preload / area : 0;
    perPeak = 1 / (maxPeakPressure - meanPressure);
    crushedAtRest = maxNormal < preload || maxPeakPressure < meanPressure;
  }

  /**
   * Largest use of a failing limit under a share in patch axes; 1/H1 of this patch.
   *
   * @param floor what is of no interest: where no use is above it, any number up to it is returned,
   *     which spares the roots of most patches
   */
  double use(double fx, double fy, double n, double mx, double my, double mz, double floor) {
    double crush = crushUse(n, mx, my);
    if (ledge) {
      return crush;
    }
    if (preload == 0) {
      return fx == 0 && fy == 0 && n >= 0 && mx == 0 && my == 0 && mz == 0
          ? crush
          : Double.POSITIVE_INFINITY;
    }
    double worst = Math.max(crush, -n * perPreload);
    if (!round) {
      return flatUse(fx, fy, n, mx, my, mz, worst);
    }
    double bound = Math.max(worst, floor) * preload + n;
    double torsion = mz * perTorsionRadius;
    // 2 c f M <= c (f^2 + M^2): no root is needed where this bound stays below.
    double most = (1 + twiceCrossX / 2) * (fx * fx + fy * fy + torsion * torsion);
    if (!within(most, mu * bound)) {
      worst = Math.max(worst, slipUse(fx, fy, n, mz));
    }
    double tilt = mx * mx + my * my;
    if (!within(tilt, failX * bound)) {
      worst = Math.max(worst, (Math.sqrt(tilt) - failX * n) * perTiltX);
    }
    return worst;
  }

  private double flatUse(
      double fx, double fy, double n, double mx, double my, double mz, double least) {
    double worst = Math.max(least, slipUse(fx, fy, n, mz));
    if (perTiltX > 0) {
      worst = Math.max(worst, (Math.abs(mx) - failX * n) * perTiltX);
    }
    return Math.max(worst, (Math.abs(my) - failY * n) * perTiltY);
  }

  /** Whether the root of a square stays below a number. */
  private static boolean within(double square, double limit) {
    return limit > 0 && square <= limit * limit;
  }

  private double slipUse(double fx, double fy, double n, double mz) {
    double taken = slipTaken(fx, fy, n, mz);
    return taken == 0 ? 0 : taken * perFriction;
  }

  /** Whether a patch without friction is asked for some, beyond what rounding leaves. */
  private boolean rubs(double friction, double n) {
    return friction > NEGLIGIBLE * (Math.abs(n) + preload);
  }

  private double crushUse(double n, double mx, double my) {
    if (crushedAtRest) {
      return Double.POSITIVE_INFINITY;
    }
    double mean = n > 0 ? n * perCrush : 0;
    if (maxPeakPressure == Double.POSITIVE_INFINITY) {
      return mean;
    }
    double peak = peakDemand(n, mx, my);
    return peak > 0 ? Math.max(mean, peak * perPeak) : mean;
  }

  private double peakDemand(double n, double mx, double my) {
    return n / area + Math.abs(mx) * perSectionX + Math.abs(my) * perSectionY;
  }

  /** G of the limit surface (eq. 2.1), N. */
  private double slipDemand(double fx, double fy, double mz) {
    double m = Math.abs(mz) * perTorsionRadius;
    double f2 = fx * fx + fy * fy;
    double cross =
        round
            ? twiceCrossX * Math.sqrt(f2)
            : twiceCrossX * Math.abs(fx) + twiceCrossY * Math.abs(fy);
    return Math.sqrt(f2 + cross * m + m * m);
  }

  /**
   * Whether the slip limit about the pressure centre holds at a multiple of a share (theory, eqs.
   * 3.9 to 3.11): a tilted pressure shortens the torsion radius and moves the point about which the
   * patch turns.
   *
   * @param share array with the share in patch axes, read
   * @param at index of its first number
   * @param factor on the share
   */
  boolean holdsCarefully(double[] share, int at, double factor) {
    if (ledge) {
      return true;
    }
    double fx = factor * share[at];
    double fy = factor * share[at + 1];
    double n = preload + factor * share[at + 2];
    double mx = factor * share[at + 3];
    double my = factor * share[at + 4];
    double mz = factor * share[at + 5];
    if (n <= 0) {
      return fx == 0 && fy == 0 && mz == 0 && n == 0;
    }
    double kern = kernMoment(mx, my) / n;
    double within = Math.min(kern, 1);
    double tip = shape.tipPerKern();
    double left = Math.max(0.001, (tip - Math.max(kern, 1)) / (tip - 1));
    double shrunk = (1 - 0.18 * within - 0.05 * within * within) * left;
    double about = mz + (mx * fx + my * fy) / n;
    double turning = Math.max(Math.abs(mz), Math.abs(about)) / shrunk;
    double friction = slipDemand(fx, fy, turning);
    return mu == 0 ? !rubs(friction, n) : friction <= mu * n;
  }

  /** Normal force at which the tilting moments just fill the kern, N. */
  private double kernMoment(double mx, double my) {
    return round
        ? Math.hypot(mx, my) / shape.kernX()
        : Math.abs(mx) / shape.kernX() + Math.abs(my) / shape.kernY();
  }

  /** Mode of the limit that is met first under a share. */
  FailureMode firstMode(Wrench share) {
    LimitUse first = null;
    for (LimitUse l : all(share)) {
      if (l.failing()
          && l.factor() < HoldModel.NO_LIMIT
          && (first == null || l.factor() < first.factor() * (1 - TIE))) {
        first = l;
      }
    }
    if (first == null) {
      return FailureMode.NONE;
    }
    double atLimit = preload + first.factor() * share.force().z();
    if (first.mode() != FailureMode.CRUSH && atLimit < NEARLY_RELEASED * preload) {
      return FailureMode.RELEASE;
    }
    return first.mode();
  }

  /** Every limit under a share, in the order slip, peel or tip, release, crush, opening. */
  List<LimitUse> all(Wrench share) {
    double fx = share.force().x();
    double fy = share.force().y();
    double n = share.force().z();
    double mx = share.moment().x();
    double my = share.moment().y();
    double mz = share.moment().z();
    List<LimitUse> list = new ArrayList<>();
    if (!ledge) {
      boolean twists = Math.abs(mz) * perTorsionRadius > Math.hypot(fx, fy);
      FailureMode sliding = twists ? FailureMode.TWIST : FailureMode.SLIP;
      list.add(
          new LimitUse(sliding, true, sliding.label(), mu * preload, slipTaken(fx, fy, n, mz)));
      addTilt(list, n, mx, my);
      list.add(new LimitUse(FailureMode.RELEASE, true, "release", preload, -n));
    }
    if (maxNormal < Double.POSITIVE_INFINITY) {
      list.add(new LimitUse(FailureMode.CRUSH, true, "crush", maxNormal - preload, n));
    }
    if (maxPeakPressure < Double.POSITIVE_INFINITY) {
      list.add(
          new LimitUse(
              FailureMode.CRUSH,
              true,
              "crush at the edge",
              maxPeakPressure * area - preload,
              peakDemand(n, mx, my) * area));
    }
    if (!ledge && !shape.sealed()) {
      addOpening(list, n, mx, my);
    }
    return list;
  }

  /** What a share takes of the friction, N. */
  private double slipTaken(double fx, double fy, double n, double mz) {
    double friction = slipDemand(fx, fy, mz);
    return mu == 0 && !rubs(friction, n) ? 0 : friction - mu * n;
  }

  private void addTilt(List<LimitUse> list, double n, double mx, double my) {
    FailureMode mode = shape.sealed() ? FailureMode.PEEL : FailureMode.TIP;
    if (round) {
      list.add(
          new LimitUse(mode, true, mode.label(), failX * preload, Math.hypot(mx, my) - failX * n));
      return;
    }
    if (failX < Double.POSITIVE_INFINITY) {
      list.add(
          new LimitUse(
              mode, true, mode.label() + " about x", failX * preload, Math.abs(mx) - failX * n));
    }
    list.add(
        new LimitUse(
            mode, true, mode.label() + " about y", failY * preload, Math.abs(my) - failY * n));
  }

  private void addOpening(List<LimitUse> list, double n, double mx, double my) {
    list.add(
        new LimitUse(FailureMode.TIP, false, "opens at an edge", preload, kernMoment(mx, my) - n));
  }
}
