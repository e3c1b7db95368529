package io.github.holdpath.sim.path;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BlendPathTest {
  private static final int DRAWS = 2000;

  @Test
  void neverLeavesTheZone() {
    SplittableRandom random = new SplittableRandom(41);
    int blends = 0;
    double worst = 0;
    double jump = 0;
    int folds = 0;
    double kappa = 0;
    while (blends < DRAWS) {
      Optional<BlendPath> drawn = draw(random);
      if (drawn.isEmpty()) {
        folds++;
        continue;
      }
      blends++;
      BlendPath blend = drawn.get();
      Vec3 c = blend.corner();
      double[] corner = {c.x(), c.y(), c.z()};
      for (int i = 0; i <= 100; i++) {
        double[] p = Draws.at(blend, blend.length() * i / 100);
        worst = Math.max(worst, Draws.distance(p, corner, 0) / blend.zone());
      }
      jump = Math.max(jump, Math.abs(blend.reach() / blend.zone() - 1));
    }
    System.out.println("DBG worst " + worst + " refused " + folds + " reach " + jump);
    assertTrue(worst <= 1 + 1e-12, () -> "left");
  }

  private static Optional<BlendPath> draw(SplittableRandom random) {
    PathCurve before = Draws.move(Draws.pose(random), random);
    PathCurve after = Draws.move(Draws.end(before), random);
    Corner corner = new Corner(before, after);
    double zone =
        random.nextDouble()
            * Math.min(
                corner.farthest(true, before.length()), corner.farthest(false, after.length()));
    if (new BlendCheck(0, corner, zone).fault(before.length(), after.length()).isPresent()) {
      return Optional.empty();
    }
    return Optional.of(BlendPath.between(before, after, zone));
  }

  @Test
  void dbg() {
    SplittableRandom random = new SplittableRandom(42);
    double worst = 0, wj = 0, wlen = 0, wd = 0;
    int cells = 0;
    for (int i = 0; i < 500; i++) {
      Optional<BlendPath> d = draw(random);
      if (d.isEmpty()) continue;
      BlendPath b = d.get();
      CurveBounds bb = b.bounds(0, b.length());
      double scale = Math.min(b.length(), 1 / (bb.maxCurvature() + bb.maxTurn()));
      double s = random.nextDouble(0.1, 0.9) * b.length();
      double err = Draws.differenceError(b, s, 0.01 * scale);
      if (err > worst) {
        worst = err;
        System.out.println(
            "DBG err "
                + err
                + " kappa L"
                + bb.maxCurvature() * b.length()
                + " w "
                + bb.maxTurn() * b.length());
      }
    }
  }
}
