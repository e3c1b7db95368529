package io.github.holdpath.viewer.overlay;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds room for labels: keeps what is taken, and tries places about a point. */
final class Placer {
  private final Rectangle2D page;
  private final List<Rectangle2D> taken = new ArrayList<>();

  Placer(double width, double height) {
    this.page = new Rectangle2D.Double(0, 0, width, height);
  }

  /** Takes a place for good. */
  void take(Rectangle2D place) {
    taken.add(place);
  }

  /** Whether a place is on the page and free. */
  boolean free(Rectangle2D place) {
    return page.contains(place) && taken.stream().noneMatch(t -> t.intersects(place));
  }

  /**
   * The nearest free place beside a point, taken; empty where all are full.
   *
   * @param x of the point, pixels
   * @param y of the point, pixels
   * @param width of the label
   * @param height of the label
   * @param gap between point and label
   * @param rings how many times the gap grows before giving up
   */
  Optional<Rectangle2D> beside(
      double x, double y, double width, double height, double gap, int rings) {
    for (int ring = 0; ring < rings; ring++) {
      double d = gap * (1 + 1.6 * ring);
      double[][] corners = {
        {x + d, y - d - height},
        {x + d, y + d},
        {x - d - width, y - d - height},
        {x - d - width, y + d},
        {x + d, y - height / 2},
        {x - d - width, y - height / 2},
        {x - width / 2, y - d - height},
        {x - width / 2, y + d},
      };
      for (double[] c : corners) {
        Rectangle2D place = new Rectangle2D.Double(c[0], c[1], width, height);
        if (free(place)) {
          take(place);
          return Optional.of(place);
        }
      }
    }
    return Optional.empty();
  }
}
