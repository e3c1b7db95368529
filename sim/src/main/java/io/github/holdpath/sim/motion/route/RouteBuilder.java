package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.MotionSegment;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.motion.joint.JointFault;
import io.github.holdpath.sim.path.ChainFault;
import io.github.holdpath.sim.path.ChainFaults;
import io.github.holdpath.sim.path.ChainOutcome;
import io.github.holdpath.sim.path.LinePath;
import io.github.holdpath.sim.path.PathChain;
import io.github.holdpath.sim.path.PathPiece;
import io.github.holdpath.sim.timelaw.ChainLaw;
import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawLimits;
import io.github.holdpath.sim.timelaw.LawPhase;
import io.github.holdpath.sim.timelaw.LawProfile;
import io.github.holdpath.sim.timelaw.RestToRest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Walks along a route step by step and gathers the pieces of its motion. */
final class RouteBuilder {
  private final Route route;
  private final LawKind law;
  private final Optional<JointMoves> joints;
  private final List<MotionPiece> pieces = new ArrayList<>();
  private final List<MotionSegment> segments = new ArrayList<>();
  private final List<RouteStep.Move> open = new ArrayList<>();
  private Pose pose;
  private double time;
  private double covered;
  private boolean taken;
  private boolean released;
  private double heldFrom;
  private double heldTo;
  private boolean lost;
  private Optional<JointFault> fault = Optional.empty();

  /**
   * Begins.
   *
   * @param route of which the steps will be added
   * @param joints of the robot that makes it; empty if none is known
   */
  RouteBuilder(Route route, Optional<JointMoves> joints) {
    this.route = route;
    this.pose = route.start();
    this.law = route.law();
    this.joints = joints;
  }

  void add(RouteStep step) {
    if (step instanceof RouteStep.Move move) {
      open.add(move);
      if (move.blend() == 0) {
        Stretch stretch = new Stretch(pose, open);
        open.clear();
        stretch(stretch);
      }
      return;
    }
    RouteCorners.requireStopped(open);
    if (step instanceof RouteStep.Wait wait) {
      pause(wait.duration());
    } else if (step instanceof RouteStep.Take take) {
      take(take);
    } else if (step instanceof RouteStep.Release release) {
      release(release);
    }
  }

  RouteMotion build() {
    RouteCorners.requireStopped(open);
    if (pieces.isEmpty()) {
      pieces.add(new StillPiece(0, 0, 0, 0, pose));
    }
    return new RouteMotion(pieces, segments, time, heldFrom, released ? heldTo : time);
  }

  /** Why a move along the joints cannot be made; nothing may be added then. */
  Optional<JointFault> fault() {
    return fault;
  }

  /** Whether the joints could not follow as far as a move along them; nothing may be added then. */
  boolean lost() {
    return lost;
  }

  private void joints(Stretch stretch) {
    JointMoves robot =
        joints.orElseThrow(
            () -> new IllegalArgumentException("a move along the joints needs a robot"));
    lost = !robot.follow(pieces);
    if (lost) {
      return;
    }
    if (stretch.moves().size() > 1) {
      JointChain.Planned planned = new JointChain(robot, stretch, law, time).plan();
      if (planned instanceof JointChain.Refused refused) {
        fault = Optional.of(refused.fault());
      } else if (planned instanceof JointChain.Found found) {
        chain(stretch, found.chain(), found.law());
      }
      return;
    }
    RouteStep.Move move = stretch.moves().get(0);
    JointMoves.Planned planned = robot.plan(pose, move, law, time);
    if (planned instanceof JointMoves.Refused refused) {
      fault = Optional.of(refused.fault());
    } else if (planned instanceof JointMoves.Way found) {
      along(move, found.way(), found.law().plan(move.override()));
    }
  }

  private void along(RouteStep.Move move, JointWay way, LawProfile profile) {
    double start = time;
    int index = segments.size() + 1;
    for (LawPhase phase : profile.phases()) {
      pieces.add(new JointPiece(way, phase.later(start), index, law, move.limits()));
    }
    time = start + profile.duration();
    covered = way.distance(1);
    pose = way.states().pose(1);
    segments.add(JointPeaks.of(way, law, profile).segment(index, move, start, time, way));
  }

  private void take(RouteStep.Take take) {
    if (taken) {
      throw new IllegalArgumentException("a route takes the part once; leave out the second take");
    }
    pause(take.pause());
    taken = true;
    heldFrom = time;
  }

  private void release(RouteStep.Release release) {
    if (!taken || released) {
      throw new IllegalArgumentException(
          released ? "a route releases the part once" : "a release needs a take before it");
    }
    released = true;
    heldTo = time;
    pause(release.pause());
  }

  private void pause(double duration) {
    if (!(duration >= 0) || Double.isInfinite(duration)) {
      throw new IllegalArgumentException(
          "a pause must be finite and not negative, but was " + duration + " s");
    }
    double end = time + duration;
    if (end > time) {
      pieces.add(new StillPiece(time, end, segments.size(), covered, pose));
    }
    time = end;
  }

  private void stretch(Stretch stretch) {
    if (stretch.line()) {
      line(stretch.moves().get(0));
      return;
    }
    if (stretch.joints()) {
      joints(stretch);
      return;
    }
    ChainOutcome outcome = Chains.of(stretch);
    if (outcome instanceof PathChain chain) {
      chain(stretch, chain, ChainZones.plan(chain, stretch.moves(), law));
    } else if (outcome instanceof ChainFaults faults) {
      ChainFault fault = faults.faults().get(0);
      throw new IllegalArgumentException(
          "the blend of " + stretch.moves().get(fault.corner()).pointer() + ": " + fault.message());
    }
  }

  private void chain(Stretch stretch, PathChain chain, ChainLaw planned) {
    ChainStates states = new ChainStates(chain);
    List<PathPiece> parts = chain.pieces();
    double start = time;
    int before = segments.size();
    int zone = 0;
    for (int m = 0; m < stretch.moves().size(); m++) {
      double from = time;
      double origin = parts.get(zone).start();
      ChainSegment segment = new ChainSegment(law);
      for (; zone < parts.size() && parts.get(zone).move() == m; zone++) {
        PathPiece part = parts.get(zone);
        segment.piece(part);
        int end = zone + 1 < parts.size() ? planned.firstPhase(zone + 1) : planned.phases().size();
        for (int k = planned.firstPhase(zone); k < end; k++) {
          LawPhase phase = planned.phases().get(k).later(start);
          if (phase.to() > phase.from()) {
            ChainPiece piece =
                new ChainPiece(
                    states,
                    zone,
                    part.start(),
                    part.end(),
                    phase,
                    origin,
                    before + m + 1,
                    law,
                    stretch.moves().get(m).limits());
            pieces.add(JointChain.piece(piece, part));
            segment.phase(piece, part);
            time = phase.to();
          }
        }
      }
      covered = parts.get(zone - 1).end() - origin;
      segments.add(segment.segment(before + m + 1, stretch.moves().get(m), from, time));
    }
    pose = stretch.end(chain);
  }

  private void line(RouteStep.Move move) {
    LinePath path = LinePath.between(pose, move.target());
    LawProfile profile = RestToRest.plan(law, parameterLimits(move.played(), path), 1);
    double start = time;
    int index = segments.size() + 1;
    for (LawPhase phase : profile.phases()) {
      pieces.add(new LinePiece(path, phase.later(start), index, law, move.limits()));
    }
    time = start + profile.duration();
    covered = path.length() > 0 ? path.length() : path.angle();
    pose = path.to();
    segments.add(segment(index, move, start, path, profile));
  }

  /** Limits of the path parameter, eq. 5.13. What a path does not do divides to infinity. */
  private static LawLimits parameterLimits(MoveLimits limits, LinePath path) {
    double length = path.length();
    double angle = path.angle();
    return LawLimits.symmetric(
        Math.min(limits.speed() / length, limits.turnSpeed() / angle),
        Math.min(limits.acceleration() / length, limits.turnAcceleration() / angle),
        Math.min(limits.jerk() / length, limits.turnJerk() / angle));
  }

  private MotionSegment segment(
      int index, RouteStep.Move move, double start, LinePath path, LawProfile profile) {
    double speed = profile.peakSpeed();
    double acceleration = Math.max(profile.peakAcceleration(), profile.peakDeceleration());
    double jerk = profile.peakJerk();
    return new MotionSegment(
        index,
        move.pointer(),
        move.name(),
        start,
        time,
        path.length(),
        path.angle(),
        peak(speed, path.length()),
        peak(acceleration, path.length()),
        peak(jerk, path.length()),
        peak(speed, path.angle()),
        peak(acceleration, path.angle()),
        peak(jerk, path.angle()));
  }

  /** Eq. 5.14; a way of 0 has no peak even where the law's is infinite. */
  private static double peak(double rate, double way) {
    return way > 0 ? rate * way : 0;
  }
}
