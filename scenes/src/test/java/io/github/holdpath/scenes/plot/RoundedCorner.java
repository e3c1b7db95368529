package io.github.holdpath.scenes.plot;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.path.BlendPath;
import io.github.holdpath.sim.path.LineCurve;
import io.github.holdpath.sim.path.PathChain;
import io.github.holdpath.sim.path.PathPiece;
import io.github.holdpath.sim.path.PathPoint;
import io.github.holdpath.sim.timelaw.ChainLaw;
import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawLimits;
import io.github.holdpath.sim.timelaw.LawProfile;
import io.github.holdpath.sim.timelaw.LawZone;
import io.github.holdpath.sim.timelaw.RestToRest;
import java.util.List;

/** Half a metre along x, half a metre along y, the corner at the origin. */
final class RoundedCorner {
  static final double LEG = 0.5;

  /** Places where the largest jerk is looked for: enough for the digits shown. */
  private static final int SAMPLES = 2000;

  private final PathChain chain;
  private final ChainLaw law;
  private final double curvature;

  /** The corner with a zone, m. */
  RoundedCorner(double zone) {
    LineCurve in = LineCurve.between(Pose.at(-LEG, 0, 0), Pose.IDENTITY);
    LineCurve out = LineCurve.between(Pose.IDENTITY, Pose.at(0, LEG, 0));
    if (!(PathChain.build(List.of(in, out), zone) instanceof PathChain rounded)) {
      throw new IllegalArgumentException("zone must fit, but was " + zone);
    }
    chain = rounded;
    curvature =
        chain.pieces().stream().mapToDouble(p -> p.bounds().maxCurvature()).max().orElseThrow();
    law =
        ChainLaw.plan(LawKind.S_CURVE, List.of(zone(first()), bend(), zone(chain.pieces().get(3))));
  }

  private PathPiece first() {
    return chain.pieces().get(0);
  }

  private static LawZone zone(PathPiece line) {
    return new LawZone(line.length(), Laws.LIMITS, false);
  }

  /** At constant speed across the way is all acceleration there is, section 5.12. */
  private LawZone bend() {
    double speed = Math.min(Laws.LIMITS.speed(), Math.sqrt(Laws.LIMITS.acceleration() / curvature));
    LawLimits slow = LawLimits.symmetric(speed, Laws.LIMITS.acceleration(), Laws.LIMITS.jerk());
    return new LawZone(blend().length(), slow, true);
  }

  BlendPath blend() {
    return chain.blends().get(0);
  }

  PathChain chain() {
    return chain;
  }

  /** Law over line, blend and line. */
  ChainLaw law() {
    return law;
  }

  /** Largest curvature, 1/m. */
  double curvature() {
    return curvature;
  }

  /** Speed in the blend, m/s. */
  double bendSpeed() {
    return law.zones().get(1).limits().speed();
  }

  /**
   * Largest jerk in the blend, m/s^3: at constant speed its cube times the third derivative of the
   * position by the way.
   */
  double bendJerk() {
    double[] point = new double[PathPoint.SIZE];
    double most = 0;
    for (int i = 0; i <= SAMPLES; i++) {
      blend().at(blend().length() * i / SAMPLES, point);
      int k = PathPoint.THIRD;
      most = Math.max(most, new Vec3(point[k], point[k + 1], point[k + 2]).norm());
    }
    return most * Math.pow(bendSpeed(), 3);
  }

  /** One of the two legs with a stop at its end. */
  static LawProfile leg() {
    return RestToRest.plan(LawKind.S_CURVE, Laws.LIMITS, LEG);
  }

  /** Place and curvature: x (m), y (m), curvature (1/m). */
  double[] at(double s) {
    double[] point = new double[PathPoint.SIZE];
    chain.at(s, point);
    double cx = point[PathPoint.SECOND];
    double cy = point[PathPoint.SECOND + 1];
    return new double[] {
      point[PathPoint.POSITION], point[PathPoint.POSITION + 1], Math.hypot(cx, cy)
    };
  }
}
