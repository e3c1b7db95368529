package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.MotionSegment;
import io.github.holdpath.sim.study.FactorTrace;
import io.github.holdpath.sim.study.StudyResult;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/**
 * A result over time: margin, speed and acceleration of the grip frame's origin, and the stretches
 * in which it moves or waits. Samples in order of time; two share one where pieces meet.
 */
public final class Curves {
  /** Samples wanted over the whole motion. */
  private static final double WANTED = 3000;

  private static final double SHORTEST = 1e-9;

  private final FactorTrace trace;
  private final Curve margin;
  private final Curve speed;
  private final Curve acceleration;
  private final List<Stretch> stretches;
  private final double duration;

  private Curves(StudyResult result) {
    this.duration = result.cycleTime();
    double step = Math.max(duration / WANTED, 1e-6);
    this.trace = FactorTrace.of(result, step);
    this.margin = margins(trace);
    List<double[]> samples = new ArrayList<>();
    for (MotionPiece piece : result.motion().pieces()) {
      sample(piece, step, samples);
    }
    this.speed = curve(samples, 1);
    this.acceleration = curve(samples, 2);
    this.stretches = stretches(result.motion().segments(), duration);
  }

  /** Of a result. */
  public static Curves of(StudyResult result) {
    return new Curves(result);
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

  private static Curve margins(FactorTrace trace) {
    double[] times = new double[trace.size()];
    double[] values = new double[trace.size()];
    for (int i = 0; i < times.length; i++) {
      times[i] = trace.time(i);
      values[i] = trace.margin(i).orElse(Double.NaN);
    }
    return new Curve(times, values);
  }

  private static void sample(MotionPiece piece, double step, List<double[]> into) {
    double[] out = new double[MotionState.SIZE];
    int n = (int) Math.max(1, Math.ceil((piece.to() - piece.from()) / step));
    for (int i = 0; i <= n; i++) {
      double t = piece.from() + (piece.to() - piece.from()) * i / n;
      piece.state(t, out);
      MotionState state = MotionState.of(out);
      into.add(new double[] {t, state.velocity().norm(), state.acceleration().norm()});
    }
  }

  private static Curve curve(List<double[]> samples, int column) {
    return new Curve(
        samples.stream().mapToDouble(s -> s[0]).toArray(),
        samples.stream().mapToDouble(s -> s[column]).toArray());
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
