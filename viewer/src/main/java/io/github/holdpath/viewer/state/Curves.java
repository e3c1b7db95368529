package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionSegment;
import io.github.holdpath.sim.study.FactorTrace;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * A job over time: margin, speed and acceleration of the grip frame's origin, and the stretches in
 * which it moves or waits. Samples in order of time; two share one where pieces meet.
 */
public final class Curves {
  /** Samples of a curve at most: more cannot be told apart on a screen. */
  private static final int MOST = 2400;

  private static final double SHORTEST = 1e-9;

  private final FactorTrace trace;
  private final Curve margin;
  private final Curve speed;
  private final Curve acceleration;
  private final List<Stretch> stretches;
  private final double duration;

  private Curves(FactorTrace trace, Motion motion) {
    this.duration = motion.duration();
    this.trace = trace;
    this.margin = curve(i -> trace.margin(i).orElse(Double.NaN));
    this.speed = curve(trace::speed);
    this.acceleration = curve(trace::acceleration);
    this.stretches = stretches(motion.segments(), duration);
  }

  /** Of what is shown. */
  public static Curves of(Stage stage) {
    return new Curves(stage.trace(), stage.scene().moved());
  }

  /**
   * A quantity over time.
   *
   * @param times s, not falling
   * @param values its unit; not a number where there is none
   */
  public record Curve(double[] times, double[] values) {
    /** Copies. */
    public Curve {
      times = times.clone();
      values = values.clone();
    }

    /** Copy of the times, s. */
    @Override
    public double[] times() {
      return times.clone();
    }

    /** Copy of the values. */
    @Override
    public double[] values() {
      return values.clone();
    }

    /** Largest value, 0 if there is none. */
    public double largest() {
      return Math.max(0, Arrays.stream(values).filter(v -> !Double.isNaN(v)).max().orElse(0));
    }
  }

  /**
   * A stretch of time.
   *
   * @param from s
   * @param to s
   * @param move the move, from 1; empty for a wait
   * @param name of the move, or {@code wait}
   */
  public record Stretch(double from, double to, OptionalInt move, String name) {}

  /** Margin; the least of each move is in it. */
  public Curve margin() {
    return margin;
  }

  /** Speed of the grip frame's origin, m/s. */
  public Curve speed() {
    return speed;
  }

  /** Size of the acceleration of the grip frame's origin, m/s^2. */
  public Curve acceleration() {
    return acceleration;
  }

  /** Moves and waits, in order, without gaps. */
  public List<Stretch> stretches() {
    return stretches;
  }

  /** Length of the motion, s. */
  public double duration() {
    return duration;
  }

  /** Times at which a move or wait begins or ends, s, rising. */
  public List<Double> stops() {
    List<Double> stops = new ArrayList<>();
    stops.add(0.0);
    stretches.forEach(s -> stops.add(s.to()));
    return stops;
  }

  /** The samples of position that belong to a move, world axes, m. */
  public List<Vec3> places(int move) {
    List<Vec3> places = new ArrayList<>();
    for (int i = 0; i < trace.size(); i++) {
      if (trace.segment(i) == move) {
        places.add(trace.position(i));
      }
    }
    return places;
  }

  /** For picking. */
  FactorTrace trace() {
    return trace;
  }

  /** All samples, or of each of many even groups the least and the largest. */
  private Curve curve(IntToDoubleFunction value) {
    int n = trace.size();
    int group = Math.max(1, (2 * n + MOST - 1) / MOST);
    int[] kept = group == 1 ? IntStream.range(0, n).toArray() : extremes(value, n, group);
    return new Curve(
        Arrays.stream(kept).mapToDouble(trace::time).toArray(),
        Arrays.stream(kept).mapToDouble(value).toArray());
  }

  private static int[] extremes(IntToDoubleFunction value, int n, int group) {
    IntStream.Builder kept = IntStream.builder();
    for (int from = 0; from < n; from += group) {
      int least = -1;
      int most = -1;
      int none = -1;
      for (int i = from; i < Math.min(n, from + group); i++) {
        double v = value.applyAsDouble(i);
        if (Double.isNaN(v)) {
          none = i;
        } else {
          least = least < 0 || v < value.applyAsDouble(least) ? i : least;
          most = most < 0 || v > value.applyAsDouble(most) ? i : most;
        }
      }
      // Not a number where the part is not held: that must be seen beside what it has where held.
      IntStream.of(least, most, none).filter(i -> i >= 0).sorted().distinct().forEach(kept::add);
    }
    return kept.build().toArray();
  }

  private static List<Stretch> stretches(List<MotionSegment> segments, double duration) {
    List<Stretch> all = new ArrayList<>();
    double at = 0;
    for (MotionSegment s : segments) {
      if (s.from() > at + SHORTEST) {
        all.add(new Stretch(at, s.from(), OptionalInt.empty(), "wait"));
      }
      if (s.to() > s.from()) {
        String name = s.name().isEmpty() ? "move " + s.index() : s.index() + " " + s.name();
        all.add(new Stretch(s.from(), s.to(), OptionalInt.of(s.index()), name));
      }
      at = Math.max(at, s.to());
    }
    if (duration > at + SHORTEST) {
      all.add(new Stretch(at, duration, OptionalInt.empty(), "wait"));
    }
    return List.copyOf(all);
  }
}
