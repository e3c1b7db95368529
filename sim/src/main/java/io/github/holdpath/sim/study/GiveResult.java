package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.compliance.SwingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a part swings on its grip along a motion, and what is then in hand. Swings are those of the
 * centre of mass against the tool, from where gravity alone would hold it.
 *
 * @param damping ratio of every mode
 * @param modes ways in which the part swings, the slowest first; those that move no mass left out
 * @param dynamicFactors peak of what the grip carries per peak of the required wrench, for the six
 *     components in the grip frame; empty where the load is negligible beside the others
 * @param worst least factor while the part is held, under what the grip carries; its load has that
 *     in place of the required wrench
 * @param segments the same for each move in order; empty where the part is not held
 * @param largestSwing m
 * @param largestSwingTime s
 * @param stops each stop while the part is held
 * @param swingAtRelease largest swing that is left where the part is let go, or the motion ends, m
 * @param notes what to know about these numbers, a sentence each
 */
public record GiveResult(
    double damping,
    List<SwingMode> modes,
    List<OptionalDouble> dynamicFactors,
    Worst worst,
    List<Optional<Worst>> segments,
    double largestSwing,
    double largestSwingTime,
    List<Stop> stops,
    double swingAtRelease,
    List<String> notes) {
  /** Copies the lists. */
  public GiveResult {
    modes = List.copyOf(modes);
    dynamicFactors = List.copyOf(dynamicFactors);
    segments = List.copyOf(segments);
    stops = List.copyOf(stops);
    notes = List.copyOf(notes);
  }

  /** Least first-slip factor, dimensionless. */
  public double factor() {
    return worst.first().factor();
  }

  /**
   * The swing after one stop.
   *
   * @param time at which the tool comes to rest, s
   * @param segment the move that ends there, from 1
   * @param rest until the tool moves on or lets go, s; 0 where it lets go at once
   * @param swing largest, m
   * @param settling until the swing stays within what counts as settled, if the tool rests that
   *     long, s; infinite where nothing damps it; empty where nobody asks
   */
  public record Stop(double time, int segment, double rest, double swing, OptionalDouble settling) {
    /** Whether the part has settled before the tool moves on or lets go; true where nobody asks. */
    public boolean settles() {
      return settling.isEmpty() || settling.getAsDouble() <= rest;
    }
  }
}
