package io.github.holdpath.dynamics.grip;

/**
 * What a jaw's guide bears, each load by itself, as data sheets state it. Infinite where nothing is
 * stated.
 *
 * @param aboutAcross moment about the axis square to closing and to z of the grip frame, N m
 * @param aboutClosing moment about the axis in which the jaw closes, N m
 * @param aboutZ moment about z of the grip frame, N m
 * @param force square to the closing axis, N
 */
public record GuideRating(double aboutAcross, double aboutClosing, double aboutZ, double force) {
  /** Refuses ratings that are not positive. */
  public GuideRating {
    if (!(aboutAcross > 0 && aboutClosing > 0 && aboutZ > 0 && force > 0)) {
      throw new IllegalArgumentException(
          "ratings must be positive, but were "
              + aboutAcross
              + ", "
              + aboutClosing
              + ", "
              + aboutZ
              + ", "
              + force);
    }
  }
}
