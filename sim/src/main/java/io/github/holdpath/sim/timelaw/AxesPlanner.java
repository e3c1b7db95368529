package io.github.holdpath.sim.timelaw;

import java.util.ArrayList;
import java.util.List;

/**
 * Plans moves of several axes that begin and end together, in the least time that all of them can
 * last, and samples them (theory, section 5.15). Makes no objects while planning; not for several
 * threads at once. Each axis has its own unit.
 */
public final class AxesPlanner {
  private final List<JerkChain> chains = new ArrayList<>();
  private final List<TimedAxis> timed = new ArrayList<>();
  private final double[] recovery;
  private double duration;

  /** A planner for a number of axes, at least one. */
  public AxesPlanner(int axes) {
    if (axes < 1) {
      throw new IllegalArgumentException("axes must be at least 1, but was " + axes);
    }
    for (int i = 0; i < axes; i++) {
      chains.add(new JerkChain());
      timed.add(new TimedAxis());
    }
    recovery = new double[axes];
  }

  /**
   * Plans. Longer is not always possible for an axis that ends in motion, so the least common time
   * may be longer than that of each axis alone.
   *
   * @param start position, speed, acceleration of the first axis, then of the next; may be beyond
   *     the limits of speed and acceleration
   * @param end likewise
   * @param limits one per axis
   * @throws IllegalArgumentException if lengths do not fit, an end cannot be reached within the
   *     limits, or a recovery runs past the opposite limit of speed
   */
  public void plan(double[] start, double[] end, List<AxisLimits> limits) {
    int n = chains.size();
    if (start.length != 3 * n || end.length != 3 * n || limits.size() != n) {
      throw new IllegalArgumentException(
          "start and end must have 3 numbers and limits one entry for each of " + n + " axes");
    }
    duration = 0;
    for (int i = 0; i < n; i++) {
      AxisLimits l = limits.get(i);
      JerkChain chain = chains.get(i);
      chain.begin(start[3 * i], start[3 * i + 1], start[3 * i + 2]);
      double v1 = end[3 * i + 1];
      double a1 = end[3 * i + 2];
      AxisPlanner.prepare(chain, end[3 * i], v1, a1, l);
      recovery[i] = chain.duration();
      double way = end[3 * i] - chain.position();
      double scale = AxisPlanner.scale(chain.position(), end[3 * i], l);
      timed.get(i).begin(chain.speed(), chain.acceleration(), v1, a1, way, scale, l);
    }
    agree();
    for (int i = 0; i < n; i++) {
      timed.get(i).append(chains.get(i), duration - recovery[i]);
    }
  }

  /** Raises the duration until every axis can last it. */
  private void agree() {
    int agreed = 0;
    for (int i = 0; agreed < timed.size(); i = (i + 1) % timed.size()) {
      double possible = recovery[i] + timed.get(i).possible(duration - recovery[i]);
      // A root found again differs by rounding; the axis stretches to it.
      agreed = possible > duration ? 1 : agreed + 1;
      duration = Math.max(duration, possible);
    }
  }

  /** Common duration, s. */
  public double duration() {
    return duration;
  }

  /**
   * Samples one axis.
   *
   * @param axis index
   * @param time s; clamped to the move
   * @param out gets position, speed, acceleration and jerk
   */
  public void at(int axis, double time, double[] out) {
    chains.get(axis).at(time, out);
  }

  /** The move of one axis as a value of its own. */
  public AxisMove move(int axis) {
    return new AxisMove(chains.get(axis).phases(), recovery[axis]);
  }
}
