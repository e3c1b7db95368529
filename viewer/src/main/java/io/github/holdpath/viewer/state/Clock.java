package io.github.holdpath.viewer.state;

import java.util.List;
import java.util.function.LongSupplier;

/**
 * The time that is shown: plays, pauses, steps, runs slower or faster than the job. It has no timer
 * of its own; whoever shows asks for {@link #time} as often as wanted. For one thread.
 */
public final class Clock {
  /** Speeds to choose from, times real time, rising. */
  public static final List<Double> SPEEDS =
      List.of(0.05, 0.1, 0.2, 0.25, 0.5, 1.0, 1.5, 2.0, 3.0, 4.0);

  private static final double NANO = 1e-9;

  private final LongSupplier nanos;
  private double duration;
  private double base;
  private long since;
  private double speed = 1;
  private boolean playing;
  private boolean loop;

  /**
   * Stands at 0.
   *
   * @param nanos source of real time, ns, never falling
   */
  public Clock(LongSupplier nanos) {
    this.nanos = nanos;
  }

  /**
   * Sets how long the job takes; a time beyond its end becomes the end.
   *
   * @param seconds s, not negative
   */
  public void duration(double seconds) {
    if (!(seconds >= 0) || Double.isInfinite(seconds)) {
      throw new IllegalArgumentException("duration must not be negative, but was " + seconds);
    }
    double now = time();
    duration = seconds;
    begin(Math.min(now, seconds));
  }

  /** How long the job takes, s. */
  public double duration() {
    return duration;
  }

  /** Time of the job, s, from 0 to its duration. At the end it stops, or begins again. */
  public double time() {
    if (!playing) {
      return base;
    }
    double t = base + (nanos.getAsLong() - since) * NANO * speed;
    if (t < duration) {
      return t;
    }
    if (loop && duration > 0) {
      begin(t % duration);
    } else {
      playing = false;
      base = duration;
    }
    return base;
  }

  /** Whether it runs. */
  public boolean playing() {
    time();
    return playing;
  }

  /** Runs from where it stands, from the start if that is the end. */
  public void play() {
    if (!playing()) {
      playing = duration > 0;
      begin(base >= duration ? 0 : base);
    }
  }

  /** Stands still. */
  public void pause() {
    base = time();
    playing = false;
  }

  /** Goes to a time, taken as the nearer end where it lies outside; keeps on playing or not. */
  public void seek(double seconds) {
    begin(Math.max(0, Math.min(duration, seconds)));
  }

  /**
   * Stands still a step further, or back.
   *
   * @param seconds length of the step, s, negative for back
   */
  public void step(double seconds) {
    pause();
    seek(base + seconds);
  }

  /**
   * Stands still at the next of some times.
   *
   * @param stops s, rising
   * @param forward whether later; else earlier
   */
  public void toNext(List<Double> stops, boolean forward) {
    pause();
    double least = 1e-6;
    double to = forward ? duration : 0;
    for (double stop : stops) {
      if (forward && stop > base + least) {
        to = Math.min(to, stop);
      } else if (!forward && stop < base - least) {
        to = Math.max(to, stop);
      }
    }
    seek(to);
  }

  /** Speed, times real time. */
  public double speed() {
    return speed;
  }

  /**
   * Sets the speed; the time shown does not jump.
   *
   * @param times real time, positive
   */
  public void speed(double times) {
    if (!(times > 0) || Double.isInfinite(times)) {
      throw new IllegalArgumentException("speed must be positive, but was " + times);
    }
    begin(time());
    speed = times;
  }

  /** The next of {@link #SPEEDS}. */
  public void changeSpeed(boolean faster) {
    double next = speed;
    for (double s : SPEEDS) {
      if (faster && s > speed) {
        speed(s);
        return;
      }
      next = !faster && s < speed ? s : next;
    }
    speed(next);
  }

  /** Whether it begins again at the end. */
  public boolean loop() {
    return loop;
  }

  /** Sets whether it begins again at the end. */
  public void loop(boolean again) {
    begin(time());
    loop = again;
  }

  private void begin(double at) {
    base = at;
    since = nanos.getAsLong();
  }
}
