package io.github.holdpath.sim.motion.route;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.JointedPiece;
import io.github.holdpath.sim.motion.KnownJoints;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.joint.JointFault;
import io.github.holdpath.sim.motion.joint.JointWalk;
import io.github.holdpath.sim.path.ChainFaults;
import io.github.holdpath.sim.path.ChainOutcome;
import io.github.holdpath.sim.path.Flat;
import io.github.holdpath.sim.path.PathChain;
import io.github.holdpath.sim.path.PathCurve;
import io.github.holdpath.sim.path.PathPiece;
import io.github.holdpath.sim.path.PathPoint;
import io.github.holdpath.sim.robot.Robot;
import io.github.holdpath.sim.timelaw.ChainLaw;
import io.github.holdpath.sim.timelaw.LawKind;
import io.github.holdpath.sim.timelaw.LawPhase;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Plans the moves between two stops where some go along the joints and blends join them (theory,
 * section 5.18). Where such a move begins, the joints stand as if the move before it had no blend;
 * the chain is then walked through with the joints, which must arrive on the line of each.
 */
final class JointChain {
  /** The joints must meet the line of a move along them to this, rad or m. */
  private static final double SAME_POSTURE = 1e-6;

  /** Joints that six coordinates of a pose can tell. */
  private static final int MOST_JOINTS = 6;

  private final JointMoves joints;
  private final Stretch stretch;
  private final LawKind law;
  private final double time;

  /**
   * Begins.
   *
   * @param joints where the joints stand at the start of the stretch, and how moves go along them
   * @param time at which the stretch begins, s
   */
  JointChain(JointMoves joints, Stretch stretch, LawKind law, double time) {
    this.joints = joints;
    this.stretch = stretch;
    this.law = law;
    this.time = time;
  }

  /** Answer: the path with its law, or why there is none. */
  sealed interface Planned permits Found, Refused {}

  /** The path and the law along it. */
  record Found(PathChain chain, ChainLaw law) implements Planned {}

  /** There is none. */
  record Refused(JointFault fault) implements Planned {}

  /** A fault on the way to a plan. */
  private static final class Stuck extends Exception {
    private static final long serialVersionUID = 1;
    private final transient JointFault fault;

    Stuck(JointFault fault) {
      super(fault.words());
      this.fault = fault;
    }
  }

  Planned plan() {
    try {
      List<PathCurve> curves = curves();
      ChainOutcome outcome = PathChain.build(curves, stretch.zones());
      requireCorners(curves, outcome);
      PathChain chain = (PathChain) outcome;
      return new Found(chain, ChainZones.plan(chain, stretch.moves(), law, bounds(chain)));
    } catch (Stuck stuck) {
      return new Refused(stuck.fault);
    }
  }

  /**
   * Refuses all corners that cannot be rounded at once, among them those between moves that both
   * only turn: a zone is a length.
   */
  private void requireCorners(List<PathCurve> curves, ChainOutcome outcome) throws Stuck {
    Map<Integer, String> words = new TreeMap<>();
    if (outcome instanceof ChainFaults faults) {
      faults.faults().forEach(fault -> words.put(fault.corner(), RouteCorners.words(fault)));
    }
    for (int i = 0; i + 1 < curves.size(); i++) {
      if (turns(curves.get(i)) && turns(curves.get(i + 1))) {
        words.put(i, JointMoveWords.ONLY_TURNS);
      }
    }
    if (!words.isEmpty()) {
      List<JointFault> all = new ArrayList<>();
      words.forEach((corner, text) -> all.add(blend(corner, text).fault));
      JointFault first = all.get(0);
      List<JointFault> further = all.subList(1, all.size());
      throw new Stuck(new JointFault(first.pointer(), first.time(), first.words(), further));
    }
  }

  private static boolean turns(PathCurve curve) {
    double[] point = new double[PathPoint.SIZE];
    curve.at(0, point);
    return Flat.norm(point, PathPoint.TANGENT) == 0;
  }

  private Stuck blend(int corner, String words) {
    String place = stretch.moves().get(corner).pointer() + "/blend";
    return new Stuck(new JointFault(place, time, words));
  }

  /** The moves without their blends, and where the joints stand between them. */
  private List<PathCurve> curves() throws Stuck {
    if (joints.robot().joints().size() > MOST_JOINTS) {
      throw blend(0, JointMoveWords.SPARE);
    }
    List<PathCurve> curves = new ArrayList<>();
    double[] q = joints.standing();
    Pose pose = stretch.start();
    int lastJoint = lastJoint();
    for (int m = 0; m < stretch.moves().size(); m++) {
      RouteStep.Move move = stretch.moves().get(m);
      PathCurve curve;
      if (move.shape() instanceof MoveShape.Joints) {
        JointLine line = line(m, q, pose);
        line.joints(line.length(), 0, 0, q, q.clone(), q.clone());
        curve = line;
      } else {
        curve = Stretch.curve(move, pose);
        q = m < lastJoint ? walked(move, curve, q) : q;
      }
      curves.add(curve);
      pose = Stretch.end(curve, move);
    }
    return curves;
  }

  private int lastJoint() {
    int last = 0;
    for (int m = 0; m < stretch.moves().size(); m++) {
      last = stretch.moves().get(m).shape() instanceof MoveShape.Joints ? m : last;
    }
    return last;
  }

  private JointLine line(int m, double[] q, Pose pose) throws Stuck {
    RouteStep.Move move = stretch.moves().get(m);
    JointMoves.Planned planned = joints.plan(q, pose, move, law, time);
    if (planned instanceof JointMoves.Refused refused) {
      throw new Stuck(refused.fault());
    }
    JointWay way = ((JointMoves.Way) planned).way();
    if (JointLine.stands(way)) {
      throw blend(move.blend() > 0 ? m : m - 1, JointMoveWords.STANDS);
    }
    return JointLine.of(way);
  }

  /** Joint values at the end of a line or arc whose corner a move along the joints begins in. */
  private double[] walked(RouteStep.Move move, PathCurve curve, double[] q) throws Stuck {
    PathChain alone = (PathChain) PathChain.build(List.of(curve));
    JointWalk walk = new JointWalk(joints.robot(), joints.grip(), q);
    EvenPiece piece = new EvenPiece(new ChainStates(alone), 0, 0, alone.length());
    if (!walk.go(piece)) {
      throw new Stuck(
          new JointFault(
              move.pointer(),
              time,
              JointMoveWords.noWay(joints, piece, walk, "on its way to its end")));
    }
    return walk.standing();
  }

  /** Walks through the chain, and keeps what its joints do on each piece. */
  private JointBounds bounds(PathChain chain) throws Stuck {
    Robot robot = joints.robot();
    JointBounds bounds = new JointBounds(robot.joints());
    JointWalk walk = new JointWalk(robot, joints.grip(), joints.standing());
    ChainStates states = new ChainStates(chain);
    List<PathPiece> pieces = chain.pieces();
    for (int i = 0; i < pieces.size(); i++) {
      PathPiece part = pieces.get(i);
      RouteStep.Move move = stretch.moves().get(part.move());
      EvenPiece even = new EvenPiece(states, i, part.start(), part.end());
      MotionPiece piece = even;
      if (part.curve() instanceof JointLine line) {
        double offset = part.from() - part.start();
        KnownJoints known =
            new KnownJoints(
                even,
                true,
                (time, q, qd, qdd) ->
                    line.joints(offset + even.way(time), even.rate(), 0, q, qd, qdd));
        if (i > 0) {
          requireMet(part.move() - 1, walk.standing(), known);
        }
        piece = known;
      }
      if (!walk.go(piece)) {
        String where = part.blend() ? "in its blend" : "on its way";
        String words = JointMoveWords.noWay(joints, even, walk, where);
        throw part.blend()
            ? blend(chain.blends().indexOf(part.curve()), words)
            : new Stuck(new JointFault(move.pointer(), time, words));
      }
      boolean along = move.shape() instanceof MoveShape.Joints;
      bounds.add(walk, piece, even.rate(), along ? move.override() : 1);
    }
    return bounds;
  }

  /**
   * Refuses a blend that leads the joints past another posture than that in which a line begins.
   */
  private void requireMet(int corner, double[] at, JointedPiece next) throws Stuck {
    double[] q = at.clone();
    next.joints(next.from(), q, q.clone(), q.clone());
    for (int k = 0; k < q.length; k++) {
      if (Math.abs(q[k] - at[k]) > SAME_POSTURE) {
        throw blend(corner, JointMoveWords.otherPosture(joints.robot().joints().get(k)));
      }
    }
  }

  /**
   * The piece of a move in the motion, for a phase of the law. On what blends leave of a move along
   * the joints these go exactly on their straight line.
   */
  static MotionPiece piece(ChainPiece piece, PathPiece part) {
    if (!(part.curve() instanceof JointLine line)) {
      return piece;
    }
    LawPhase phase = piece.phase();
    double offset = part.from() - part.start();
    return new KnownJoints(
        piece,
        true,
        (time, q, qd, qdd) -> {
          double s = offset + piece.way(time);
          line.joints(s, phase.speedAt(time), phase.accelerationAt(time), q, qd, qdd);
        });
  }
}
