package io.github.holdpath.dynamics.compliance;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The dying swing of one point of the part while the tool stands still (theory, eq. 7.10). Times
 * count from its start. Got from {@link GripResponse#freeSwing}.
 */
public final class FreeSwing {
  /** Samples in the shortest period when the last crest above a bound is looked for. */
  private static final int PER_PERIOD = 32;

  /** Part of a bound below which a mode does not decide how finely is looked. */
  private static final double SMALL = 1e-3;

  /** Instants found are right to this, s. */
  private static final double INSTANT = 1e-9;

  private final double damping;
  private final List<Part> parts = new ArrayList<>();

  /** One mode: {@code size e^(-zeta w t) cos(wd t - late)} times a direction of length 1. */
  private record Part(double omega, Vec3 direction, double size, double late) {}

  FreeSwing(double damping) {
    this.damping = damping;
  }

  void add(double omega, Vec3 perUnit, double offset, double rate) {
    double sine = (rate + damping * offset) / Math.sqrt(1 - damping * damping);
    double reach = perUnit.norm();
    double size = Math.hypot(offset, sine) * reach;
    if (size > 0) {
      parts.add(new Part(omega, perUnit.times(1 / reach), size, Math.atan2(sine, offset)));
    }
  }

  /** Distance of the point from where it comes to rest, m. */
  public double at(double time) {
    double x = 0;
    double y = 0;
    double z = 0;
    for (Part p : parts) {
      double turned = Math.sqrt(1 - damping * damping) * p.omega * time - p.late;
      double way = p.size * Math.exp(-damping * p.omega * time) * Math.cos(turned);
      x += way * p.direction.x();
      y += way * p.direction.y();
      z += way * p.direction.z();
    }
    return Math.sqrt(x * x + y * y + z * z);
  }

  /** What the distance cannot pass from a time on: the modes' sizes together, m. */
  public double bound(double time) {
    double sum = 0;
    for (Part p : parts) {
      sum += p.size * Math.exp(-damping * p.omega * time);
    }
    return sum;
  }

  /** The largest distance within the first period of the slowest mode that swings, m. */
  public double largest() {
    double until = 0;
    for (Part p : parts) {
      until = p.size > SMALL * bound(0) ? Math.max(until, 2 * Math.PI / p.omega) : until;
    }
    double step = step(bound(0));
    double most = at(0);
    for (double t = 0; t < until; t += step) {
      most = Math.max(most, at(t));
    }
    return most;
  }

  private double step(double bound) {
    double fastest = 0;
    for (Part p : parts) {
      fastest = p.size > SMALL * bound ? Math.max(fastest, p.omega) : fastest;
    }
    return 2 * Math.PI / fastest / PER_PERIOD;
  }

  /**
   * Time after which the distance stays within a bound.
   *
   * @param bound m, positive
   * @return s; 0 where it never passes the bound; empty where nothing damps it and it passes
   */
  public OptionalDouble settled(double bound) {
    if (!(bound > 0)) {
      throw new IllegalArgumentException("the bound must be positive, but was " + bound);
    }
    if (bound(0) <= bound) {
      return OptionalDouble.of(0);
    }
    if (damping == 0) {
      return OptionalDouble.empty();
    }
    double late = 0;
    double step = step(bound);
    double safe = step;
    while (bound(safe) > bound) {
      late = safe;
      safe *= 2;
    }
    while (safe - late > step) {
      double mid = (safe + late) / 2;
      if (bound(mid) > bound) {
        late = mid;
      } else {
        safe = mid;
      }
    }
    double in = safe;
    while (in > 0 && at(Math.max(0, in - step)) <= bound) {
      in -= step;
    }
    return OptionalDouble.of(in <= 0 ? 0 : crossing(in - step, in, bound));
  }

  private double crossing(double outside, double inside, double bound) {
    double out = Math.max(0, outside);
    double in = inside;
    if (at(out) <= bound) {
      return 0;
    }
    while (in - out > INSTANT) {
      double mid = (out + in) / 2;
      if (at(mid) > bound) {
        out = mid;
      } else {
        in = mid;
      }
    }
    return in;
  }
}
