package io.github.holdpath.viewer.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ViewTest {
  private static final View.Area AREA = new View.Area(180, 140, 1150, 700);

  /** Pixels; the fit is an iteration. */
  private static final double PIXEL = 0.5;

  @Test
  void pointsOfAnySizeFillTheArea() {
    SplittableRandom random = new SplittableRandom(3);
    for (double size : new double[] {1e-3, 1, 300}) {
      List<Vec3> points = new ArrayList<>();
      for (int i = 0; i < 20; i++) {
        points.add(
            new Vec3(random.nextDouble(), random.nextDouble(), random.nextDouble())
                .times(size)
                .plus(new Vec3(7, -3, 2)));
      }
      View view = View.fitted(points, AREA, 1280, 800);
      double left = 1e9;
      double right = -1e9;
      double top = 1e9;
      double bottom = -1e9;
      for (Vec3 p : points) {
        View.Spot s = view.project(p);
        assertTrue(s.depth() > 0);
        left = Math.min(left, s.x());
        right = Math.max(right, s.x());
        top = Math.min(top, s.y());
        bottom = Math.max(bottom, s.y());
      }
      assertTrue(left > AREA.left() - PIXEL && right < AREA.right() + PIXEL, left + " " + right);
      assertTrue(top > AREA.top() - PIXEL && bottom < AREA.bottom() + PIXEL, top + " " + bottom);
      double fill =
          Math.max(
              (right - left) / (AREA.right() - AREA.left()),
              (bottom - top) / (AREA.bottom() - AREA.top()));
      assertEquals(1, fill, 0.01);
    }
  }

  @Test
  void onePointStandsInTheMiddle() {
    View view = View.fitted(List.of(new Vec3(1, 2, 3)), AREA, 1280, 800);
    View.Spot s = view.project(new Vec3(1, 2, 3));
    assertEquals((180 + 1150) / 2.0, s.x(), PIXEL);
    assertEquals((140 + 700) / 2.0, s.y(), PIXEL);
  }

  @Test
  void upInTheWorldIsUpInTheImage() {
    View view = View.fitted(List.of(Vec3.ZERO, new Vec3(1, 1, 1)), AREA, 1280, 800);
    assertTrue(view.project(new Vec3(0, 0, 1)).y() < view.project(Vec3.ZERO).y(), "z points down");
  }
}
