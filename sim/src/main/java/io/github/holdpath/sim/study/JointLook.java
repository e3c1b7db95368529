package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.joint.JointPast;
import io.github.holdpath.sim.motion.joint.JointTrack;
import io.github.holdpath.sim.robot.JointLimits;
import io.github.holdpath.sim.robot.JointTorques;
import io.github.holdpath.sim.robot.LinkBody;
import io.github.holdpath.sim.robot.RobotJoint;
import io.github.holdpath.sim.robot.SerialArm;
import io.github.holdpath.sim.scene.RobotCell;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.study.JointUse.Limit;
import io.github.holdpath.sim.study.JointUse.Nearest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Looks at the joints of the robot all along the motion. */
final class JointLook {
  /** A limit kept to rounding is not passed. */
  private static final double ROUNDING = 1e-6;

  private final RobotCell cell;
  private final List<RobotJoint> joints;
  private final Held held;
  private final Optional<Torques> torques;
  private final double[] lowest;
  private final double[] highest;
  private final double[] speed;
  private final double[] acceleration;
  private final double[] torque;
  private final @Nullable Nearest[][] uses;
  private final @Nullable Nearest[] moves;

  private JointLook(Scene scene, RobotCell cell, Motion motion) {
    this.cell = cell;
    this.joints = cell.robot().joints();
    this.held = new Held(motion);
    this.torques = Torques.of(scene, cell);
    int n = joints.size();
    lowest = filled(n, Double.POSITIVE_INFINITY);
    highest = filled(n, Double.NEGATIVE_INFINITY);
    speed = new double[n];
    acceleration = new double[n];
    torque = new double[n];
    uses = new Nearest[n][Limit.values().length];
    moves = new Nearest[motion.segments().size() + 1];
  }

  private static double[] filled(int n, double value) {
    double[] x = new double[n];
    Arrays.fill(x, value);
    return x;
  }

  /** What the motion asks of the joints; empty where there is no robot. */
  static Optional<JointUse> of(Scene scene, Motion motion) {
    return scene
        .robot()
        .map(
            cell -> {
              JointLook look = new JointLook(scene, cell, motion);
              cell.track().visit(look::at);
              return look.use();
            });
  }

  private void at(MotionPiece piece, double time, double[] q, double[] qd, double[] qdd) {
    double[] efforts =
        torques.map(t -> t.of(held.at(piece, time), q, qd, qdd)).orElse(new double[0]);
    for (int k = 0; k < q.length; k++) {
      JointLimits limits = joints.get(k).limits();
      lowest[k] = Math.min(lowest[k], q[k]);
      highest[k] = Math.max(highest[k], q[k]);
      speed[k] = Math.max(speed[k], Math.abs(qd[k]));
      acceleration[k] = Math.max(acceleration[k], Math.abs(qdd[k]));
      if (Double.isFinite(limits.upper() - limits.lower())) {
        offer(k, Limit.RANGE, 1 - limits.room(q[k]), piece, time);
      }
      offer(k, Limit.SPEED, Math.abs(qd[k]) / limits.speed(), piece, time);
      offer(k, Limit.ACCELERATION, Math.abs(qdd[k]) / limits.acceleration(), piece, time);
      if (efforts.length > 0) {
        torque[k] = Math.max(torque[k], Math.abs(efforts[k]));
        offer(k, Limit.TORQUE, Math.abs(efforts[k]) / limits.effort(), piece, time);
      }
    }
  }

  private void offer(int k, Limit limit, double use, MotionPiece piece, double time) {
    // Nothing per an infinite limit is 0, which tells of no limit.
    Nearest known = uses[k][limit.ordinal()];
    boolean bounded = limit == Limit.RANGE || bound(k, limit) < Double.POSITIVE_INFINITY;
    if (!bounded) {
      return;
    }
    int segment = piece.segment();
    if (known == null || use > known.use()) {
      uses[k][limit.ordinal()] = new Nearest(joints.get(k).name(), limit, use, segment, time);
    }
    Nearest inMove = moves[segment];
    if (inMove == null || use > inMove.use()) {
      moves[segment] = new Nearest(joints.get(k).name(), limit, use, segment, time);
    }
  }

  private double bound(int k, Limit limit) {
    JointLimits l = joints.get(k).limits();
    return switch (limit) {
      case RANGE -> l.upper() - l.lower();
      case SPEED -> l.speed();
      case ACCELERATION -> l.acceleration();
      case TORQUE -> l.effort();
    };
  }

  private JointUse use() {
    List<JointUse.Peaks> peaks = new ArrayList<>();
    for (int k = 0; k < joints.size(); k++) {
      Nearest nearest = null;
      for (Nearest one : uses[k]) {
        nearest = one != null && (nearest == null || one.use() > nearest.use()) ? one : nearest;
      }
      peaks.add(
          new JointUse.Peaks(
              joints.get(k).name(),
              joints.get(k).kind().turns(),
              lowest[k],
              highest[k],
              speed[k],
              acceleration[k],
              torques.isPresent() ? OptionalDouble.of(torque[k]) : OptionalDouble.empty(),
              new JointUse.Uses(
                  share(k, Limit.RANGE),
                  share(k, Limit.SPEED),
                  share(k, Limit.ACCELERATION),
                  share(k, Limit.TORQUE)),
              Optional.ofNullable(nearest)));
    }
    List<Optional<Nearest>> byMove = new ArrayList<>();
    for (int i = 1; i < moves.length; i++) {
      byMove.add(Optional.ofNullable(moves[i]));
    }
    return new JointUse(cell.kind(), peaks, byMove);
  }

  private OptionalDouble share(int k, Limit limit) {
    Nearest found = uses[k][limit.ordinal()];
    return found == null ? OptionalDouble.empty() : OptionalDouble.of(found.use());
  }

  /** What is past a limit: of a plan only torque can be, of a recording anything. */
  static List<String> warnings(JointUse use, JointTrack track) {
    List<String> list = new ArrayList<>();
    for (JointPast past : track.past()) {
      RobotJoint joint = track.robot().joints().get(past.joint());
      boolean turns = joint.kind().turns();
      list.add(
          text(
              "Joint %s was %.3g %s past its stop at %.3f s: look at the recording's units, at the"
                  + " robot and at its base.",
              joint.name(),
              turns ? Math.toDegrees(past.beyond()) : 1000 * past.beyond(),
              turns ? "deg" : "mm",
              past.time()));
    }
    for (JointUse.Peaks joint : use.joints()) {
      above(joint.name(), "speed", joint.uses().speed(), list);
      above(joint.name(), "acceleration", joint.uses().acceleration(), list);
      above(joint.name(), joint.turns() ? "torque" : "force", joint.uses().torque(), list);
    }
    return list;
  }

  private static void above(String joint, String limit, OptionalDouble use, List<String> list) {
    if (use.isPresent() && use.getAsDouble() > 1 + ROUNDING) {
      list.add(
          text(
              "Joint %s takes %.1f %% of its greatest %s; slow the motion, carry less, or look at"
                  + " what its data sheet says.",
              joint, 100 * use.getAsDouble(), limit));
    }
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  /** Torques of an arm whose links' bodies are known, with the tool and, while held, the part. */
  private static final class Torques {
    private final JointTorques empty;
    private final JointTorques loaded;
    private final double[] out;

    private Torques(JointTorques empty, JointTorques loaded, int drives) {
      this.empty = empty;
      this.loaded = loaded;
      this.out = new double[drives];
    }

    static Optional<Torques> of(Scene scene, RobotCell cell) {
      if (!(cell.robot() instanceof SerialArm arm)
          || arm.chain().joints().stream().allMatch(j -> j.body().mass() == 0)) {
        return Optional.empty();
      }
      LinkBody tool = scene.tool().map(t -> LinkBody.of(t.body())).orElse(LinkBody.NONE);
      Pose grip = cell.grip();
      LinkBody part = LinkBody.of(scene.part().body()).seenFrom(grip);
      return Optional.of(
          new Torques(
              arm.torques(scene.site().gravity(), tool),
              arm.torques(scene.site().gravity(), tool.plus(part)),
              arm.joints().size()));
    }

    double[] of(boolean held, double[] q, double[] qd, double[] qdd) {
      (held ? loaded : empty).of(q, qd, qdd, out);
      return out;
    }
  }
}
