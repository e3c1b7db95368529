package io.github.holdpath.viewer.export;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.study.Playback;
import io.github.holdpath.viewer.state.Item;
import io.github.holdpath.viewer.state.Show;
import io.github.holdpath.viewer.state.Stage;
import java.util.ArrayList;
import java.util.List;

/**
 * Items along one cycle: those of one instant, and for each the poses at all times. Where other
 * items come and go on the way nothing moves, and the one instant is all there is.
 *
 * @param items at the tightest instant
 * @param times s, ascending; empty where nothing moves
 * @param poses of each item at each time; empty where nothing moves
 * @param grip poses of the grip frame; empty where nothing moves
 */
record Cycle(List<Item> items, double[] times, List<List<Pose>> poses, List<Pose> grip) {
  /** Between two samples of the motion, s. */
  private static final double STEP = 1.0 / 30;

  /** Samples of one cycle at most: a longer one is sampled less often. */
  private static final int MOST = 3600;

  /** Times nearer than this are one, s: single precision must tell them apart. */
  private static final double SAME = 1e-4;

  /** Arrows change their shape all the time: they cannot come along. */
  private static final Show SHOW = Show.DEFAULT.withForces(false);

  static Cycle of(Stage stage) {
    Playback playback = stage.playback();
    List<Item> items = stage.at(playback.at(stage.worst().time()), SHOW);
    double[] times = times(playback);
    List<List<Pose>> poses = new ArrayList<>();
    items.forEach(item -> poses.add(new ArrayList<>()));
    List<Pose> grip = new ArrayList<>();
    for (double t : times) {
      Playback.Instant now = playback.at(t);
      List<Item> there = stage.at(now, SHOW);
      if (!alike(items, there)) {
        return new Cycle(items, new double[0], List.of(), List.of());
      }
      for (int i = 0; i < items.size(); i++) {
        poses.get(i).add(there.get(i).pose());
      }
      grip.add(now.state().pose());
    }
    return new Cycle(items, times, poses, grip);
  }

  /** Every thirtieth of a second, and wherever the motion goes from one piece to the next. */
  private static double[] times(Playback playback) {
    double end = playback.duration();
    double step = Math.max(STEP, end / MOST);
    List<Double> all = new ArrayList<>(playback.pieceStarts());
    for (int i = 0; i * step < end; i++) {
      all.add(i * step);
    }
    all.add(end);
    all.sort(null);
    List<Double> apart = new ArrayList<>();
    for (double t : all) {
      if (apart.isEmpty() || t - apart.get(apart.size() - 1) > SAME) {
        apart.add(t);
      }
    }
    return apart.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static boolean alike(List<Item> one, List<Item> other) {
    if (one.size() != other.size()) {
      return false;
    }
    for (int i = 0; i < one.size(); i++) {
      if (shape(one.get(i)) != shape(other.get(i))) {
        return false;
      }
    }
    return true;
  }

  /** The object that stands for the shape of an item. */
  static Object shape(Item item) {
    return item instanceof Item.Body body ? body.mesh() : ((Item.Lines) item).lines();
  }

  /** Whether an item changes its pose on the way. */
  boolean moves(int item) {
    return !poses.isEmpty()
        && poses.get(item).stream().anyMatch(p -> !p.equals(poses.get(item).get(0)));
  }
}
