package io.github.holdpath.sim.timelaw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One law over a chain of zones between two stops (theory, section 5.8): from rest at 0 to rest at
 * the sum of the lengths, each zone within its own limits.
 *
 * <p>Trapezoid and S-curve: acceleration is 0 wherever two zones meet, so that each zone's phases
 * are its own; a steady zone is crossed at constant speed, never waiting. Limits are kept exactly.
 * It is not the fastest law there is: a zone border costs the time of taking acceleration to 0. So
 * neighbours with equal limits should be one zone; the caller joins them.
 *
 * <p>Cam laws: one shape over the whole length, in the least time in which each zone keeps its
 * limits. The speed changes all along, in a steady zone too: limits given for such a zone must
 * leave room for that.
 */
public final class ChainLaw {
  private final List<LawZone> zones;
  private final List<LawPhase> phases;
  private final int[] first;
  private final double distance;

  private ChainLaw(List<LawZone> zones, PhaseList list) {
    this.zones = zones;
    this.phases = List.copyOf(list.phases);
    this.first = list.first;
    this.distance = list.distance;
  }

  /**
   * Plans the law. One zone alone that is not steady gets the law of {@link RestToRest}.
   *
   * @param law {@link LawKind#TRAPEZOID} leaves the limits of jerk out of account
   * @param zones at least one, in order; with a trapezoid or S-curve neither the first nor the last
   *     is steady, as the law rests at both ends
   * @throws IllegalArgumentException if there is no zone, a steady one at an end, or nothing bounds
   *     the time from below
   */
  public static ChainLaw plan(LawKind law, List<LawZone> zones) {
    List<LawZone> all = List.copyOf(zones);
    if (all.isEmpty()) {
      throw new IllegalArgumentException("zones must not be empty");
    }
    PhaseList list = new PhaseList(all);
    Optional<CamLaw> cam = CamLaw.of(law);
    LawZone only = all.get(0);
    if (all.size() == 1 && (cam.isPresent() || !only.steady())) {
      list.begin(0);
      RestToRest.plan(law, only.limits(), only.length()).phases().forEach(list::put);
    } else if (cam.isPresent()) {
      ChainCam.fill(list, cam.get(), all);
    } else {
      ChainRamps.fill(list, law, all);
    }
    return new ChainLaw(all, list);
  }

  /** The zones that it was planned over. */
  public List<LawZone> zones() {
    return zones;
  }

  /**
   * Phases in order of time without gaps, positions counted from the start of the chain; the first
   * begins at 0. Each belongs to one zone, and each zone has one at least.
   */
  public List<LawPhase> phases() {
    return phases;
  }

  /** Index of the first phase of a zone. */
  public int firstPhase(int zone) {
    return first[zone];
  }

  /** Index of the zone of a phase. */
  public int zoneOf(int phase) {
    int zone = first.length - 1;
    while (first[zone] > phase) {
      zone--;
    }
    return zone;
  }

  /** Time at which a zone is entered, s. */
  public double entered(int zone) {
    return phases.get(first[zone]).from();
  }

  /** Time at which a zone is left, s. */
  public double left(int zone) {
    return zone + 1 < first.length ? entered(zone + 1) : duration();
  }

  /** The phase in which a time lies, the earlier one where two meet; times outside are clamped. */
  public LawPhase phaseAt(double time) {
    int i = 0;
    while (i < phases.size() - 1 && time > phases.get(i).to()) {
      i++;
    }
    return phases.get(i);
  }

  /** Time from rest to rest, s. */
  public double duration() {
    return phases.get(phases.size() - 1).to();
  }

  /** Way from rest to rest, the sum of the lengths. */
  public double distance() {
    return distance;
  }

  /** Phases under construction. */
  static final class PhaseList {
    private final List<LawPhase> phases = new ArrayList<>();
    private final int[] first;
    private final double distance;

    PhaseList(List<LawZone> zones) {
      this.first = new int[zones.size()];
      double sum = 0;
      for (LawZone zone : zones) {
        sum += zone.length();
      }
      this.distance = sum;
    }

    /** Sum of the lengths, added in order. */
    double distance() {
      return distance;
    }

    /** The next phases belong to this zone. */
    void begin(int zone) {
      first[zone] = phases.size();
    }

    /** Puts a phase behind the others. */
    void put(LawPhase phase) {
      phases.add(phase);
    }

    /** End of the last phase, s. */
    double end() {
      return phases.isEmpty() ? 0 : phases.get(phases.size() - 1).to();
    }
  }
}
