package io.github.holdpath.viewer.desk;

import io.github.holdpath.viewer.state.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;
import javax.swing.Timer;

/** Runs the clock of the window and tells its time to all that show it. */
final class Player {
  /** Between two looks at the clock while it runs, ms: some 60 a second. */
  private static final int TICK = 15;

  private final Clock clock = new Clock(System::nanoTime);
  private final List<DoubleConsumer> listeners = new ArrayList<>();
  private final Timer timer = new Timer(TICK, e -> tell());
  private List<Double> stops = List.of();

  void listen(DoubleConsumer listener) {
    listeners.add(listener);
  }

  Clock clock() {
    return clock;
  }

  /** Sets how long the job takes and where moves meet, s. */
  void job(double duration, List<Double> meets) {
    stops = meets;
    clock.duration(duration);
    tell();
  }

  void playOrPause() {
    if (clock.playing()) {
      clock.pause();
    } else {
      clock.play();
    }
    tell();
  }

  void seek(double time) {
    clock.seek(time);
    tell();
  }

  void step(double seconds) {
    clock.step(seconds);
    tell();
  }

  void toNext(boolean forward) {
    clock.toNext(stops, forward);
    tell();
  }

  void close() {
    timer.stop();
  }

  /** Tells the time now, and goes on while the clock runs. */
  void tell() {
    double time = clock.time();
    if (clock.playing()) {
      timer.start();
    } else {
      timer.stop();
    }
    listeners.forEach(l -> l.accept(time));
  }
}
