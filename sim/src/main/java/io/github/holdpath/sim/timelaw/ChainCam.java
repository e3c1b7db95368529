package io.github.holdpath.sim.timelaw;

import java.util.List;

/** A cam law over a chain of zones (theory, eq. 5.24). */
final class ChainCam {
  private final CamLaw law;
  private final List<LawZone> zones;
  private final double distance;

  /** Where the zones begin and end, as parts of the duration; any duration has the same. */
  private final double[] places;

  private ChainCam(CamLaw law, List<LawZone> zones, double distance) {
    this.law = law;
    this.zones = zones;
    this.distance = distance;
    this.places = new double[zones.size() + 1];
    double start = 0;
    for (int i = 1; i < zones.size(); i++) {
      start += zones.get(i - 1).length();
      places[i] = Math.max(places[i - 1], place(start / distance));
    }
    places[zones.size()] = 1;
  }

  static void fill(ChainLaw.PhaseList list, CamLaw law, List<LawZone> zones) {
    new ChainCam(law, zones, list.distance()).phases(list);
  }

  /** The part of the duration after which a part of the way is done. */
  private double place(double part) {
    boolean late = part > 0.5;
    double rest = late ? 1 - part : part;
    double low = 0;
    double high = 0.5;
    double middle = 0.25;
    while (middle > low && middle < high) {
      if (law.curveAt(middle).position(middle) <= rest) {
        low = middle;
      } else {
        high = middle;
      }
      middle = (low + high) / 2;
    }
    return late ? 1 - low : low;
  }

  /** Eq. 5.24: the least time in which each zone keeps its limits. */
  private double duration() {
    double least = 0;
    for (int i = 0; i < zones.size(); i++) {
      LawLimits l = zones.get(i).limits();
      double from = places[i];
      double to = places[i + 1];
      least = Math.max(least, peakSpeed(from, to) * distance / l.speed());
      double up = peakAcceleration(from, to) / l.acceleration();
      double down = peakAcceleration(1 - to, 1 - from) / l.deceleration();
      least = Math.max(least, Math.sqrt(Math.max(up, down) * distance));
      least = Math.max(least, Math.cbrt(peakJerk(from, to) * distance / l.jerk()));
    }
    if (!(least > 0)) {
      throw new IllegalArgumentException(
          law.name() + " needs a finite limit of speed, acceleration or jerk in a zone");
    }
    return least;
  }

  /** Largest first derivative between two places: it grows up to the middle. */
  private double peakSpeed(double from, double to) {
    if (from <= 0.5 && to >= 0.5) {
      return law.speed();
    }
    double tau = to < 0.5 ? to : 1 - from;
    return law.curveAt(tau).speed(tau);
  }

  /** Largest second derivative between two places; 0 where it is negative all along. */
  private double peakAcceleration(double from, double to) {
    if (from <= law.crest() && to >= law.crest()) {
      return law.acceleration();
    }
    double tau = Math.min(0.5, to < law.crest() ? to : from);
    return law.curveAt(tau).acceleration(tau);
  }

  /**
   * Largest amount of the third derivative: it falls from an end to 0, then grows to the middle.
   */
  private double peakJerk(double from, double to) {
    double peak = Math.max(jerk(from), jerk(to));
    return from <= 0.5 && to >= 0.5 ? Math.max(peak, jerk(0.5)) : peak;
  }

  private double jerk(double place) {
    double tau = Math.min(place, 1 - place);
    return Math.abs(law.curveAt(tau).jerk(tau));
  }

  /** The law's own phases, cut where zones meet. */
  private void phases(ChainLaw.PhaseList list) {
    double duration = duration();
    List<CamPhase> whole = CamProfile.chain(law, distance, duration);
    int k = 0;
    for (int i = 0; i < zones.size(); i++) {
      list.begin(i);
      double end = i + 1 < zones.size() ? places[i + 1] * duration : duration;
      double start = list.end();
      while (k < whole.size() - 1 && whole.get(k).to() < end) {
        CamPhase p = whole.get(k++);
        list.put(p.part(start, p.to()));
        start = p.to();
      }
      list.put(whole.get(k).part(start, end));
    }
  }
}
