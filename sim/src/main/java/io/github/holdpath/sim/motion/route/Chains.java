package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.path.ChainOutcome;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Paths of stretches, as rounding corners takes its time. Those asked for last are kept for all
 * routes: one that only has other limits or another law goes the same ways. May be used from any
 * thread.
 */
final class Chains {
  private static final int KEPT = 64;

  private static final Map<Key, ChainOutcome> KNOWN =
      new LinkedHashMap<>(2 * KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, ChainOutcome> eldest) {
          return size() > KEPT;
        }
      };

  private Chains() {}

  /** All that a path depends on. */
  private record Key(Pose start, List<Leg> legs) {}

  private record Leg(Pose target, MoveShape shape, double blend) {}

  /** The path of a stretch, or the faults of its corners. */
  static ChainOutcome of(Stretch stretch) {
    Key key =
        new Key(
            stretch.start(),
            stretch.moves().stream()
                .map(move -> new Leg(move.target(), move.shape(), move.blend()))
                .toList());
    ChainOutcome known = known(key);
    if (known != null) {
      return known;
    }
    ChainOutcome made = stretch.chain();
    keep(key, made);
    return made;
  }

  private static synchronized @Nullable ChainOutcome known(Key key) {
    return KNOWN.get(key);
  }

  private static synchronized void keep(Key key, ChainOutcome made) {
    KNOWN.put(key, made);
  }
}
