package io.github.holdpath.sim.motion.route;

import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.joint.JointWalk;
import io.github.holdpath.sim.path.Search;
import io.github.holdpath.sim.robot.JointLimits;
import io.github.holdpath.sim.robot.RobotJoint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * What the limits of joints leave the law on each piece of a chain (theory, eq. 5.77 and 5.78):
 * from the largest first and second derivatives of each joint by the way, which are searched for.
 */
final class JointBounds {
  /** Second derivatives that cost less of a limit at full speed are rounding. */
  private static final double STRAIGHT = 1e-6;

  /** Crests below this share of the largest sample are not searched, nor more than so many. */
  private static final double NEAR_LARGEST = 0.9;

  private static final int MOST_CRESTS = 4;

  /** Values that differ by less than this share are a plateau. */
  private static final double FLAT = 1e-9;

  private final List<RobotJoint> joints;
  private final List<Rates> pieces = new ArrayList<>();

  /** Largest derivatives of each joint on a piece, and the share of its limits that counts. */
  private record Rates(double[] first, double[] second, double override) {}

  /** For a robot with these joints; pieces are added in the order of the chain. */
  JointBounds(List<RobotJoint> joints) {
    this.joints = joints;
  }

  /**
   * Adds a piece that was walked through last.
   *
   * @param rate speed by which it was walked through, along the chain, 1/s
   * @param override share of full speed at which the joints' limits count, above 0 up to 1
   */
  void add(JointWalk walk, MotionPiece piece, double rate, double override) {
    int n = joints.size();
    double[] first = new double[n];
    double[] second = new double[n];
    double[] x = new double[n];
    double[] xd = new double[n];
    double[] xdd = new double[n];
    for (int k = 0; k < n; k++) {
      int joint = k;
      double[] speeds = new double[walk.size()];
      double[] accelerations = new double[walk.size()];
      for (int i = 0; i < walk.size(); i++) {
        speeds[i] = Math.abs(walk.qd(i)[k]);
        accelerations[i] = Math.abs(walk.qdd(i)[k]);
      }
      first[k] = largest(walk, speeds, t -> look(walk, piece, t, x, xd, xdd) * Math.abs(xd[joint]));
      second[k] =
          largest(
              walk, accelerations, t -> look(walk, piece, t, x, xd, xdd) * Math.abs(xdd[joint]));
      first[k] *= ChainZones.SEARCHED / rate;
      second[k] *= ChainZones.SEARCHED / (rate * rate);
    }
    pieces.add(new Rates(first, second, override));
  }

  /** 1 with the joints in the arrays, 0 where they were not found. */
  private static double look(
      JointWalk walk, MotionPiece piece, double time, double[] x, double[] xd, double[] xdd) {
    int near = 0;
    for (int i = 1; i < walk.size(); i++) {
      near = walk.time(i) <= time ? i : near;
    }
    return walk.at(piece, near, time, x, xd, xdd) ? 1 : 0;
  }

  private static double largest(JointWalk walk, double[] sizes, DoubleUnaryOperator f) {
    double best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (double size : sizes) {
      best = Math.max(best, size);
      least = Math.min(least, size);
    }
    if (best - least <= FLAT * best) {
      return best;
    }
    List<Integer> crests = new ArrayList<>();
    int last = sizes.length - 1;
    for (int i = 0; i <= last; i++) {
      boolean rises = sizes[i] >= sizes[Math.max(0, i - 1)];
      boolean falls = i == last || sizes[i] > sizes[i + 1];
      if (rises && falls && sizes[i] >= NEAR_LARGEST * best) {
        crests.add(i);
      }
    }
    crests.sort(Comparator.comparingDouble(i -> -sizes[i]));
    for (int i : crests.subList(0, Math.min(MOST_CRESTS, crests.size()))) {
      double from = walk.time(Math.max(0, i - 1));
      double to = walk.time(Math.min(last, i + 1));
      best = Math.max(best, Search.largest(f, from, to, 2));
    }
    return best;
  }

  /** Whether second derivatives count on a piece. */
  boolean bent(int piece) {
    if (joints.isEmpty()) {
      return false;
    }
    double speed = speed(piece, Double.POSITIVE_INFINITY);
    Rates r = pieces.get(piece);
    for (int k = 0; k < joints.size(); k++) {
      double most = joints.get(k).limits().acceleration();
      if (speed * speed * r.second[k] > STRAIGHT * most * r.override * r.override) {
        return true;
      }
    }
    return false;
  }

  /**
   * Largest speed along the chain on a piece.
   *
   * @param share of the acceleration for second derivatives
   */
  double speed(int piece, double share) {
    double speed = Double.POSITIVE_INFINITY;
    for (int k = 0; k < joints.size(); k++) {
      Rates r = pieces.get(piece);
      JointLimits own = joints.get(k).limits();
      speed = Math.min(speed, own.speed() * r.override / r.first[k]);
      double most = own.acceleration() * r.override * r.override;
      speed = Math.min(speed, Math.sqrt(share * most / r.second[k]));
    }
    return speed;
  }

  /** Largest acceleration along the chain on a piece that speed leaves. */
  double along(int piece, double speed) {
    double along = Double.POSITIVE_INFINITY;
    for (int k = 0; k < joints.size(); k++) {
      Rates r = pieces.get(piece);
      double most = joints.get(k).limits().acceleration() * r.override * r.override;
      if (most < Double.POSITIVE_INFINITY && r.first[k] > 0) {
        along = Math.min(along, (most - speed * speed * r.second[k]) / r.first[k]);
      }
    }
    return along;
  }
}
