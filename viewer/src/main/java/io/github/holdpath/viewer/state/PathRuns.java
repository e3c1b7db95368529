package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.study.FactorTrace;
import io.github.holdpath.viewer.colour.MarginStep;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.mesh.TubeRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The path cut into short links, each with the least margin of the samples on it, and joined again
 * to runs of one colour.
 */
public final class PathRuns {
  /** Links shorter than this part of the wanted length are joined to the next. */
  private static final double SHORTEST = 0.02;

  /** Directions further apart than this cosine make a corner. */
  private static final double CORNER = 0.9;

  /** Radius where the part is not held, so that a held stretch on the same line hides it. */
  private static final double THIN = 0.55;

  /** Radius below a margin of 1; ribs come on top. */
  private static final double THICK = 1.5;

  /** By how much a better step is thinner, so that the worse one of two on one line is seen. */
  private static final double STEP_DOWN = 0.04;

  /** How far a tube may run beside its path, in radii: not to be seen. */
  private static final double STRAIGHT = 0.02;

  /** Points left out one after the other at most, as each is looked at for all behind it. */
  private static final int MOST_LEFT_OUT = 24;

  private final FactorTrace trace;
  private final double spacing;
  private final List<Link> links = new ArrayList<>();

  private PathRuns(FactorTrace trace, double spacing) {
    this.trace = trace;
    this.spacing = spacing;
  }

  /**
   * A short stretch of path.
   *
   * @param from its start, world axes, m
   * @param to its end
   * @param margin least margin of the samples on it; empty where the part is not held
   */
  public record Link(Vec3 from, Vec3 to, Optional<Double> margin) {
    /** Step of the margin; empty where the part is not held. */
    public Optional<MarginStep> step() {
      return margin.map(MarginStep::of);
    }

    /** Colour of this link. */
    public int rgb() {
      return step().map(MarginStep::rgb).orElse(Tones.NOT_HELD);
    }
  }

  /**
   * Links along a path, in order. Standing still counts to the link that follows it, or to the one
   * before at the end; where nothing moves at all there is one link without length.
   *
   * @param trace samples of the motion, at least one
   * @param spacing length of a link, m, positive
   */
  public static List<Link> links(FactorTrace trace, double spacing) {
    if (!(spacing > 0)) {
      throw new IllegalArgumentException("spacing must be positive, but was " + spacing);
    }
    PathRuns runs = new PathRuns(trace, spacing);
    runs.walk();
    return List.copyOf(runs.links);
  }

  private void walk() {
    Vec3 from = trace.position(0);
    @Nullable Double least = null;
    boolean held = trace.margin(0).isPresent();
    for (int i = 0; i < trace.size(); i++) {
      Vec3 here = trace.position(i);
      Optional<Double> margin = trace.margin(i);
      if (margin.isPresent() != held) {
        close(from, trace.position(Math.max(0, i - 1)), least, held);
        from = trace.position(i);
        least = null;
        held = margin.isPresent();
      }
      least = lesser(least, margin);
      double way = here.minus(from).norm();
      boolean moveEnds = i + 1 < trace.size() && trace.segment(i + 1) != trace.segment(i);
      if (way >= spacing || (moveEnds && way > SHORTEST * spacing)) {
        links.add(new Link(from, here, Optional.ofNullable(least)));
        from = here;
        least = lesser(null, margin);
      }
    }
    close(from, trace.position(trace.size() - 1), least, held);
  }

  private static @Nullable Double lesser(@Nullable Double least, Optional<Double> margin) {
    return least == null
        ? margin.orElse(null)
        : Double.valueOf(Math.min(least, margin.orElse(least)));
  }

  /** Ends the links of a stretch that is held all along, or nowhere. */
  private void close(Vec3 from, Vec3 to, @Nullable Double least, boolean held) {
    if (to.minus(from).norm() > SHORTEST * spacing) {
      links.add(new Link(from, to, Optional.ofNullable(least)));
      return;
    }
    if (!held || least == null) {
      return;
    }
    int last = links.size() - 1;
    if (last >= 0 && links.get(last).margin().isPresent()) {
      Link before = links.get(last);
      links.set(
          last,
          new Link(
              before.from(), before.to(), Optional.ofNullable(lesser(least, before.margin()))));
    } else {
      links.add(new Link(from, from, Optional.of(least)));
    }
  }

  /**
   * Links joined to tubes: worse steps thicker, ribbed below a margin of 1, thin where the part is
   * not held.
   *
   * @param links along a path, in order
   * @param radius of a tube at a margin of 1, m
   */
  public static List<TubeRun> runs(List<Link> links, double radius) {
    List<TubeRun> runs = new ArrayList<>();
    int first = 0;
    boolean roundStart = true;
    for (int i = 1; i <= links.size(); i++) {
      boolean ends = i == links.size();
      boolean corner = ends || corner(links.get(i - 1), links.get(i));
      if (corner || links.get(i).rgb() != links.get(first).rgb()) {
        runs.add(run(links.subList(first, i), radius, roundStart, corner));
        first = i;
        roundStart = corner;
      }
    }
    return runs;
  }

  private static boolean corner(Link a, Link b) {
    Vec3 before = a.to().minus(a.from());
    Vec3 after = b.to().minus(b.from());
    double lengths = before.norm() * after.norm();
    return !a.to().equals(b.from()) || lengths == 0 || before.dot(after) < CORNER * lengths;
  }

  private static TubeRun run(
      List<Link> links, double radius, boolean roundStart, boolean roundEnd) {
    List<Vec3> points = new ArrayList<>();
    points.add(links.get(0).from());
    for (Link link : links) {
      if (!link.to().equals(link.from())) {
        points.add(link.to());
      }
    }
    Link one = links.get(0);
    boolean ribbed = one.step().isPresent() && !one.step().get().passes();
    return new TubeRun(
        // Ribs need a ring wherever they swell.
        ribbed ? points : fewer(points, STRAIGHT * radius),
        one.rgb(),
        radius * thickness(one.step()),
        ribbed,
        roundStart,
        roundEnd);
  }

  /** Leaves points out from which the straight way between their neighbours is not far. */
  private static List<Vec3> fewer(List<Vec3> points, double near) {
    List<Vec3> kept = new ArrayList<>();
    int last = 0;
    for (int i = 0; i < points.size(); i++) {
      boolean end = i == 0 || i == points.size() - 1;
      if (end || i - last > MOST_LEFT_OUT || !straight(points, last, i + 1, near)) {
        kept.add(points.get(i));
        last = i;
      }
    }
    return kept;
  }

  private static boolean straight(List<Vec3> points, int from, int to, double near) {
    Vec3 start = points.get(from);
    Vec3 way = points.get(to).minus(start).unit();
    for (int i = from + 1; i < to; i++) {
      Vec3 off = points.get(i).minus(start);
      if (off.minus(way.times(off.dot(way))).norm() > near) {
        return false;
      }
    }
    return true;
  }

  private static double thickness(Optional<MarginStep> step) {
    if (step.isEmpty()) {
      return THIN;
    }
    int better = step.get().ordinal();
    return step.get().passes()
        ? 1 - STEP_DOWN * (better - MarginStep.JUST_ABOVE.ordinal())
        : THICK - STEP_DOWN * better;
  }
}
