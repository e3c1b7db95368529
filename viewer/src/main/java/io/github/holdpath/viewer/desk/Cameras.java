package io.github.holdpath.viewer.desk;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.viewer.panel.StageView;
import io.github.holdpath.viewer.state.Orbit;
import io.github.holdpath.viewer.state.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** The cameras of the views: one for all while they are linked. */
final class Cameras {
  private final List<StageView> views;
  private boolean linked = true;

  /**
   * Of some views.
   *
   * @param views of which the visible ones are moved
   */
  Cameras(List<StageView> views) {
    this.views = views;
  }

  boolean linked() {
    return linked;
  }

  void changeLink() {
    linked = !linked;
    if (linked) {
      Orbit first = views.get(0).orbit();
      if (first != null) {
        turned(views.get(0), first);
      }
    }
  }

  /** The user moved the camera of one view. */
  void turned(StageView view, Orbit orbit) {
    for (StageView v : views) {
      if (v == view || linked) {
        v.look(orbit);
      }
    }
  }

  /** Moves the camera of every view. */
  void move(UnaryOperator<Orbit> how) {
    for (StageView v : views) {
      Orbit orbit = v.orbit();
      if (orbit != null) {
        v.look(how.apply(orbit));
      }
    }
  }

  void preset(Orbit.Preset preset) {
    frame((v, s) -> Orbit.fitted(preset, points(v, s), v.area(), v.imageWidth(), v.imageHeight()));
  }

  /** All in sight from where the camera stands. */
  void fit() {
    for (StageView v : views) {
      Orbit orbit = v.orbit();
      if (orbit != null) {
        v.frame(
            (view, s) ->
                orbit.refitted(
                    points(view, s), view.area(), view.imageWidth(), view.imageHeight()));
      }
    }
  }

  /** From behind the part, along the move with the least margin. */
  void alongWorst() {
    frame(
        (v, s) -> {
          List<Vec3> places = new ArrayList<>(s.curves().places(s.stage().worst().segment()));
          Vec3 way =
              places.isEmpty() ? Vec3.ZERO : places.get(places.size() - 1).minus(places.get(0));
          boolean level = Math.hypot(way.x(), way.y()) > 1e-6;
          places.add(s.stage().worst().grip().position());
          places.addAll(s.stage().actors().reach(s.stage().worst().grip()));
          return Orbit.along(
              level ? way : new Vec3(0, 1, 0), places, v.area(), v.imageWidth(), v.imageHeight());
        });
  }

  private void frame(StageView.Framing how) {
    views.forEach(v -> v.frame(how));
  }

  /** What must be in sight: of all views while they are linked, so that both are seen alike. */
  private List<Vec3> points(StageView of, Shown one) {
    if (!linked) {
      return of.fit(one);
    }
    List<Vec3> all = new ArrayList<>();
    for (StageView v : views) {
      Shown s = v.shown();
      if (s != null) {
        all.addAll(v.fit(s));
      }
    }
    return all.isEmpty() ? of.fit(one) : all;
  }
}
