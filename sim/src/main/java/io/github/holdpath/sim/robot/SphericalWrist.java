package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.robot.Reach.Cause;
import io.github.holdpath.sim.robot.Reach.Reached;
import io.github.holdpath.sim.robot.Reach.Unreachable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Up to eight postures, in closed form, of an arm with six turning joints of which the last three
 * meet in one point, the second and third are parallel and the first is square to them: most
 * industrial arms with six axes (theory, eq. 8.17 to 8.20). Axes are seen in the world with all
 * joints at 0.
 *
 * @see "Pieper: The kinematics of manipulators under computer control, thesis, Stanford 1968;
 *     Murray, Li, Sastry: A Mathematical Introduction to Robotic Manipulation, 1994, chapter 3
 *     (both from memory)"
 */
final class SphericalWrist {
  /** Angles (rad) and shares of the arm's length that count as none: files round them. */
  private static final double STRAIGHT = 1e-4;

  /** Share of the arm's length by which a stretched arm may seem too short from rounding. */
  private static final double ROUNDING = 1e-12;

  /** Sine below which the first and last wrist axes count as one. */
  private static final double IN_LINE = 1e-9;

  private final Vec3[] s = new Vec3[6];
  private final Vec3[] o = new Vec3[6];
  private final Pose flange;
  private final Vec3 wrist;
  private final double length;
  private double wristGap = Double.POSITIVE_INFINITY;

  private SphericalWrist(Chain chain, double length) {
    ChainMotion motion = new ChainMotion(chain);
    for (int i = 0; i < 6; i++) {
      s[i] = vec(motion.axis(i));
      o[i] = vec(motion.frame(i).p);
    }
    flange = motion.flangePose();
    wrist = meetingPoint(o[3], s[3], o[4], s[4]);
    this.length = length;
  }

  private static Vec3 vec(double[] x) {
    return new Vec3(x[0], x[1], x[2]);
  }

  /** The closed form, if the chain is such an arm. */
  static Optional<SphericalWrist> of(Chain chain, double length) {
    boolean six = chain.joints().size() == 6 && chain.drives().size() == 6;
    if (!six || !chain.joints().stream().allMatch(j -> j.kind().turns())) {
      return Optional.empty();
    }
    SphericalWrist arm = new SphericalWrist(chain, length);
    double slack = STRAIGHT * length;
    boolean fits =
        Math.abs(arm.s[0].dot(arm.s[1])) < STRAIGHT
            && arm.s[1].cross(arm.s[2]).norm() < STRAIGHT
            && arm.s[3].cross(arm.s[4]).norm() > 0.1
            && arm.s[4].cross(arm.s[5]).norm() > 0.1
            && offLine(arm.wrist, arm.o[3], arm.s[3]) < slack
            && offLine(arm.wrist, arm.o[4], arm.s[4]) < slack
            && offLine(arm.wrist, arm.o[5], arm.s[5]) < slack
            && offLine(arm.o[2], arm.o[1], arm.s[1]) > slack
            && offLine(arm.wrist, arm.o[2], arm.s[1]) > slack;
    return fits ? Optional.of(arm) : Optional.empty();
  }

  private static double offLine(Vec3 point, Vec3 origin, Vec3 axis) {
    return point.minus(origin).cross(axis).norm();
  }

  /** The point of the first line that is nearest the second; the first's origin if parallel. */
  private static Vec3 meetingPoint(Vec3 o1, Vec3 s1, Vec3 o2, Vec3 s2) {
    Vec3 n = s1.cross(s2);
    double square = n.dot(n);
    return square < 1e-12 ? o1 : o1.plus(s1.times(o2.minus(o1).cross(s2).dot(n) / square));
  }

  /** Postures for a pose of the flange. */
  Reach postures(Pose pose) {
    Vec3 target = pose.apply(flange.inverse().apply(wrist)).minus(o[0]);
    // Axes of the plane in which the arm moves with the first joint at 0.
    Vec3 up = s[0];
    Vec3 side = s[1].minus(up.times(up.dot(s[1]))).unit();
    Vec3 front = side.cross(up);
    double aside = wrist.minus(o[0]).dot(side);
    double px = target.dot(front);
    double py = target.dot(side);
    double square = (Math.hypot(px, py) - Math.abs(aside)) * (Math.hypot(px, py) + Math.abs(aside));
    if (square < -ROUNDING * length * length) {
      String words = "the wrist cannot come so near the first axis";
      return new Unreachable(Cause.TOO_NEAR, words, Math.abs(aside) - Math.hypot(px, py));
    }
    double ahead = Math.sqrt(Math.max(0, square));
    List<Posture> all = new ArrayList<>();
    Optional<Unreachable> fault = Optional.empty();
    for (int back = 0; back < 2; back++) {
      double x = back == 0 ? ahead : -ahead;
      double q1 = Math.atan2(py, px) - Math.atan2(aside, x);
      Optional<Unreachable> missed = elbows(pose, q1, x, target.dot(up), front, all);
      if (missed.isPresent()
          && (fault.isEmpty() || missed.get().measure() < fault.get().measure())) {
        fault = missed;
      }
    }
    if (!all.isEmpty()) {
      return new Reached(all);
    }
    String words = "the wrist does not bend so far that the tool leans like this";
    return fault.orElseGet(() -> new Unreachable(Cause.CANNOT_LEAN, words, wristGap));
  }

  /** Both elbows for a wrist at x to the front and z up, in the plane of the arm. */
  private Optional<Unreachable> elbows(
      Pose pose, double q1, double x, double z, Vec3 front, List<Posture> all) {
    Vec3 up = s[0];
    Vec3 shoulder = o[1].minus(o[0]);
    Vec3 upper = o[2].minus(o[1]);
    Vec3 fore = wrist.minus(o[2]);
    double ux = upper.dot(front);
    double uz = upper.dot(up);
    double fx = fore.dot(front);
    double fz = fore.dot(up);
    double dx = x - shoulder.dot(front);
    double dz = z - shoulder.dot(up);
    double l2 = Math.hypot(ux, uz);
    double l3 = Math.hypot(fx, fz);
    double d = Math.hypot(dx, dz);
    if (d > l2 + l3 + ROUNDING * length) {
      String words = "the arm stretched does not bring its wrist there";
      return Optional.of(new Unreachable(Cause.TOO_FAR, words, d - l2 - l3));
    }
    if (d < Math.abs(l2 - l3) - ROUNDING * length) {
      String words = "the arm does not fold so far that its wrist comes there";
      return Optional.of(new Unreachable(Cause.TOO_NEAR, words, Math.abs(l2 - l3) - d));
    }
    double sine =
        Math.sqrt(Math.max(0, (l2 + l3 - d) * (l2 + l3 + d) * (d - l2 + l3) * (d + l2 - l3)));
    double bend = Math.atan2(sine, d * d - l2 * l2 - l3 * l3);
    for (int k = 0; k < 2; k++) {
      // A positive turn about the side axis goes from up to front, clockwise in this plane.
      double b = k == 0 ? bend : -bend;
      double at = Math.atan2(dz, dx) + Math.atan2(l3 * Math.sin(b), l2 + l3 * Math.cos(b));
      double q2 = Math.atan2(uz, ux) - at;
      double q3 = b - (Math.atan2(uz, ux) - Math.atan2(fz, fx));
      double sign = s[1].dot(s[2]) > 0 ? 1 : -1;
      String words = x >= 0 ? "front" : "back";
      words += k == 0 == x >= 0 ? ", elbow up" : ", elbow down";
      wrists(pose, new double[] {q1, q2, sign * q3}, words, all);
    }
    return Optional.empty();
  }

  /** Both ways in which the wrist takes the rotation that is left. */
  private void wrists(Pose pose, double[] q, String words, List<Posture> all) {
    Quaternion arm = turn(s[0], q[0]).times(turn(s[1], q[1])).times(turn(s[2], q[2]));
    Quaternion left = arm.inverse().times(pose.rotation()).times(flange.rotation().inverse());
    Vec3 s6 = left.rotate(s[5]);
    // s4 . turn(s5, q5) s6 as A cos q5 + B sin q5 + C.
    double c = s[3].dot(s[4]) * s[4].dot(s[5]);
    double a = s[3].dot(s[5]) - c;
    double b = s[3].dot(s[4].cross(s[5]));
    double wanted = (s[3].dot(s6) - c) / Math.hypot(a, b);
    if (Math.abs(wanted) > 1 + 1e-6) {
      // In sines of the bend: near enough to the angle that is missing.
      wristGap = Math.min(wristGap, Math.abs(wanted) - 1);
      return;
    }
    double open = Math.acos(Math.max(-1, Math.min(1, wanted)));
    for (int k = 0; k < 2; k++) {
      double q5 = Math.atan2(b, a) + (k == 0 ? open : -open);
      Vec3 before = turn(s[4], q5).rotate(s[5]);
      double q4 = angle(s[3], before, s6);
      Quaternion last = turn(s[4], -q5).times(turn(s[3], -q4)).times(left);
      Vec3 mark = s[5].cross(s[4]);
      double q6 = angle(s[5], mark, last.rotate(mark));
      String branch = words + (k == 0 ? ", wrist one way" : ", wrist the other way");
      all.add(new Posture(branch, q[0], q[1], q[2], q4, q5, q6));
    }
  }

  private static Quaternion turn(Vec3 axis, double angle) {
    return Quaternion.ofAxisAngle(axis, angle);
  }

  /** Angle about an axis from one vector to another; 0 where either lies on the axis. */
  private static double angle(Vec3 axis, Vec3 from, Vec3 to) {
    Vec3 f = from.minus(axis.times(axis.dot(from)));
    Vec3 t = to.minus(axis.times(axis.dot(to)));
    if (Math.min(f.norm(), t.norm()) < IN_LINE) {
      return 0;
    }
    return Math.atan2(axis.dot(f.cross(t)), f.dot(t));
  }
}
