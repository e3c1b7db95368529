package io.github.holdpath.sim.report;

import io.github.holdpath.dynamics.margin.FailureMode;
import io.github.holdpath.dynamics.margin.FirstSlip;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.study.Drop;
import io.github.holdpath.sim.study.Playback;

/** One instant of a result, and a drop, in one line each, for pictures. */
public final class InstantLine {
  private InstantLine() {}

  /**
   * Time, move, factor, margin and what would happen first.
   *
   * @param scene that is shown
   * @param safety required safety S
   * @param now an instant of its motion
   */
  public static String of(Scene scene, double safety, Playback.Instant now) {
    String place =
        Text.fixed(now.time(), 3) + " s, " + Words.segment(scene.moved(), now.segment()) + ": ";
    if (now.first().isEmpty()) {
      return place + "not held";
    }
    FirstSlip first = now.first().get();
    if (first.mode() == FailureMode.NONE) {
      return place + Words.happens(first);
    }
    return place
        + "factor "
        + CheckReport.figure(first.factor(), safety)
        + ", margin "
        + CheckReport.figure(first.factor() / safety, 1)
        + ", "
        + Words.happens(first);
  }

  /** The same after the part has left the grip in an illustration. */
  public static String gone(Scene scene, Playback.Instant now) {
    return Text.fixed(now.time(), 3)
        + " s, "
        + Words.segment(scene.moved(), now.segment())
        + ": the part has left the grip";
  }

  /** Why and how the part flies, and what the illustration is not. */
  public static String of(Drop drop) {
    String why =
        drop.cause() == Drop.Cause.CHOSEN
            ? "supply lost at " + Text.fixed(drop.leaves(), 3) + " s"
            : "factor below 1 at " + Text.fixed(drop.leaves(), 3) + " s";
    return "Illustration: "
        + why
        + ", leaves with "
        + speed(drop.leavingSpeed())
        + " and "
        + energy(drop.leavingEnergy())
        + ", lands "
        + Text.number(drop.reach(), 2)
        + " m further with "
        + speed(drop.landingSpeed())
        + " and "
        + energy(drop.landingEnergy())
        + ". Slip before it, air and what it strikes are left out: no safety distance."
        + " Keep people away.";
  }

  private static String speed(double v) {
    return Text.number(v, 2) + " m/s";
  }

  private static String energy(double e) {
    return Text.number(e, 2) + " J";
  }
}
