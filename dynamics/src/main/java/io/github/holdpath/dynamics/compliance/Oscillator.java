package io.github.holdpath.dynamics.compliance;

/**
 * One mode under a load that is a polynomial between knots, solved exactly (theory, eqs. 7.6 to
 * 7.9): {@code q'' + 2 zeta w q' + w^2 q = -w^2 p}. What it hands on to the grip is {@code r = -(q
 * + 2 zeta q'/w)}, which is p when all is at rest.
 *
 * <p>Inside a stretch of time h everything is written in s = t/h from 0 to 1.
 */
final class Oscillator {
  /** Numbers of a polynomial of the load: degree 5. */
  static final int LOAD = 6;

  /** Below this angle a power series is exact, while the closed form would cancel its digits. */
  private static final double SMALL_ANGLE = 0.5;

  /** The next term of the series at {@link #SMALL_ANGLE} is below 1e-16 of the first. */
  private static final int TERMS = 17;

  private final double omega;
  private final double zeta;
  private final double[] way = new double[TERMS];
  private final double[] carried = new double[TERMS];

  /** Way at the start of the stretch. */
  private double q;

  /** Speed per w there. */
  private double rate;

  private double theta;
  private double decay;
  private double angle;
  private double cosWay;
  private double sinWay;
  private double cosCarried;
  private double sinCarried;
  private int terms;

  /** Way after the last {@link #at}. */
  double lastWay;

  /**
   * A mode.
   *
   * @param omega undamped angular frequency, rad/s; infinite for one that follows at once
   * @param zeta damping ratio, 0 to below 1
   */
  Oscillator(double omega, double zeta) {
    this.omega = omega;
    this.zeta = zeta;
  }

  /** At rest under a load. */
  void rest(double load) {
    q = -load;
    rate = 0;
  }

  /**
   * Begins a stretch where the one before ended.
   *
   * @param h its length, s, positive
   * @param p six numbers of the load as a polynomial in s, read
   */
  void enter(double h, double[] p) {
    theta = omega * h;
    if (Double.isInfinite(theta)) {
      follow(p);
    } else if (theta <= SMALL_ANGLE) {
      series(p);
    } else {
      closed(p);
    }
  }

  private void follow(double[] p) {
    terms = LOAD;
    ringless();
    for (int k = 0; k < LOAD; k++) {
      way[k] = -p[k];
      carried[k] = p[k];
    }
  }

  private void ringless() {
    decay = 0;
    angle = 0;
    cosWay = 0;
    sinWay = 0;
    cosCarried = 0;
    sinCarried = 0;
  }

  private void series(double[] p) {
    terms = TERMS;
    ringless();
    way[0] = q;
    way[1] = theta * rate;
    for (int k = 0; k + 2 < TERMS; k++) {
      double load = k < LOAD ? p[k] : 0;
      double pull = -theta * theta * (load + way[k]) - 2 * zeta * theta * (k + 1) * way[k + 1];
      way[k + 2] = pull / ((k + 1) * (k + 2));
    }
    for (int k = 0; k < TERMS; k++) {
      double slope = k + 1 < TERMS ? (k + 1) * way[k + 1] / theta : 0;
      carried[k] = -(way[k] + 2 * zeta * slope);
    }
  }

  private void closed(double[] p) {
    terms = LOAD;
    for (int k = LOAD - 1; k >= 0; k--) {
      double slope = k + 1 < LOAD ? (k + 1) * way[k + 1] / theta : 0;
      double bend = k + 2 < LOAD ? (k + 1) * (k + 2) * way[k + 2] / (theta * theta) : 0;
      way[k] = -p[k] - 2 * zeta * slope - bend;
      carried[k] = -(way[k] + 2 * zeta * slope);
    }
    double root = Math.sqrt(1 - zeta * zeta);
    decay = zeta * theta;
    angle = root * theta;
    cosWay = q - way[0];
    sinWay = (rate - way[1] / theta + zeta * cosWay) / root;
    // r = -(q + 2 zeta q'/w) of the free part, whose q'/w turns by the damped angle.
    cosCarried = -(cosWay + 2 * zeta * (root * sinWay - zeta * cosWay));
    sinCarried = -(sinWay - 2 * zeta * (root * cosWay + zeta * sinWay));
  }

  /**
   * What the mode hands on at a place s of the stretch; leaves the way in {@link #lastWay}.
   *
   * @param s 0 to 1
   */
  double at(double s) {
    double sumWay = 0;
    double sum = 0;
    for (int k = terms - 1; k >= 0; k--) {
      sumWay = sumWay * s + way[k];
      sum = sum * s + carried[k];
    }
    if (angle > 0) {
      double fading = Math.exp(-decay * s);
      double cos = fading * Math.cos(angle * s);
      double sin = fading * Math.sin(angle * s);
      sumWay += cosWay * cos + sinWay * sin;
      sum += cosCarried * cos + sinCarried * sin;
    }
    lastWay = sumWay;
    return sum;
  }

  /** Ends the stretch: the next one begins here. */
  void leave() {
    at(1);
    q = lastWay;
    rate = 0;
    if (Double.isInfinite(omega)) {
      return;
    }
    for (int k = terms - 1; k > 0; k--) {
      rate += k * way[k] / theta;
    }
    if (angle > 0) {
      double root = Math.sqrt(1 - zeta * zeta);
      double fading = Math.exp(-decay);
      rate += fading * Math.cos(angle) * (root * sinWay - zeta * cosWay);
      rate -= fading * Math.sin(angle) * (root * cosWay + zeta * sinWay);
    }
  }

  /** How much of what is handed on rings freely at the start of the stretch, same unit as p. */
  double ringing() {
    return Math.sqrt(cosCarried * cosCarried + sinCarried * sinCarried);
  }

  /** Way from where a load would hold it at rest. */
  double offset(double load) {
    return q + load;
  }

  /** Speed per w. */
  double rate() {
    return rate;
  }
}
