package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;

/**
 * A rigid body thrown through empty space: its centre of mass on a parabola, its turning free of
 * any moment (theory, eq. 9.1 to 9.3). The angular momentum is a constant of the equations, so it
 * is kept exactly; the steps are so short that the energy of the turning is kept to {@link
 * #TOLERANCE}.
 *
 * @see "Goldstein, Poole, Safko: Classical Mechanics, 3rd ed. 2002, chapter 5 (from memory)"
 */
final class FreeFlight {
  /** Relative change of the energy of turning that the steps may cause, within 20 turns. */
  static final double TOLERANCE = 1e-9;

  /** Turn in one step, rad: the error of a step goes by its fifth power. */
  private static final double TURN = 0.01;

  /** Below this share of the greatest principal inertia a body counts as thin as a line. */
  private static final double FLAT = 1e-9;

  private final double mass;
  private final Vec3 centreInBody;
  private final Vec3 start;
  private final Vec3 velocity;
  private final Vec3 gravity;
  private final Vec3 momentum;
  private final Inertia inertia;
  private final double[] inverse;
  private final boolean steadySpin;
  private final Vec3 firstSpin;
  private final double step;
  private double time;
  private Quaternion rotation;

  /**
   * Begins at time 0 with the body as a frame carries it.
   *
   * @param body in that frame
   * @param state of the frame, world axes
   * @param gravity world axes, m/s^2
   */
  FreeFlight(MassProperties body, MotionState state, Vec3 gravity) {
    this.mass = body.mass();
    this.centreInBody = body.centreOfMass();
    this.gravity = gravity;
    this.inertia = body.inertia();
    this.rotation = state.pose().rotation();
    Vec3 arm = rotation.rotate(centreInBody);
    this.start = state.pose().position().plus(arm);
    this.velocity = state.velocity().plus(state.angularVelocity().cross(arm));
    this.firstSpin = state.angularVelocity();
    this.momentum = rotation.rotate(inertia.times(rotation.rotateBack(firstSpin)));
    double[] principal = inertia.principal();
    double least = Math.min(principal[0], Math.min(principal[1], principal[2]));
    double most = Math.max(principal[0], Math.max(principal[1], principal[2]));
    // A point or a line has no turning about itself that could change anything.
    this.steadySpin = !(least > FLAT * most);
    this.inverse = steadySpin ? new double[9] : inverse(inertia);
    double fastest = steadySpin ? firstSpin.norm() : momentum.norm() / least;
    this.step = Math.min(1e-3, fastest > 0 ? TURN / fastest : 1e-3);
  }

  private static double[] inverse(Inertia i) {
    double a = i.yy() * i.zz() - i.yz() * i.yz();
    double b = i.xz() * i.yz() - i.xy() * i.zz();
    double c = i.xy() * i.yz() - i.xz() * i.yy();
    double d = i.xx() * i.zz() - i.xz() * i.xz();
    double e = i.xy() * i.xz() - i.xx() * i.yz();
    double f = i.xx() * i.yy() - i.xy() * i.xy();
    double det = i.xx() * a + i.xy() * b + i.xz() * c;
    double[] m = {a, b, c, b, d, e, c, e, f};
    for (int k = 0; k < m.length; k++) {
      m[k] /= det;
    }
    return m;
  }

  /** Goes on to a time not before the last one, s. */
  void to(double until) {
    while (time < until) {
      double h = Math.min(step, until - time);
      rotation = steadySpin ? turned(rotation, firstSpin, h) : stepped(h);
      time = until - time <= step ? until : time + h;
    }
  }

  /** One step of Runge and Kutta's fourth order in {@code q' = omega q / 2}. */
  private Quaternion stepped(double h) {
    double[] q = {rotation.w(), rotation.x(), rotation.y(), rotation.z()};
    double[] k1 = rate(q);
    double[] k2 = rate(moved(q, k1, h / 2));
    double[] k3 = rate(moved(q, k2, h / 2));
    double[] k4 = rate(moved(q, k3, h));
    for (int i = 0; i < 4; i++) {
      q[i] += h / 6 * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]);
    }
    return unit(q);
  }

  private static double[] moved(double[] q, double[] rate, double h) {
    double[] out = new double[4];
    for (int i = 0; i < 4; i++) {
      out[i] = q[i] + h * rate[i];
    }
    return out;
  }

  private double[] rate(double[] q) {
    Vec3 w = spin(unit(q)).times(0.5);
    return new double[] {
      -w.x() * q[1] - w.y() * q[2] - w.z() * q[3],
      w.x() * q[0] + w.y() * q[3] - w.z() * q[2],
      w.y() * q[0] + w.z() * q[1] - w.x() * q[3],
      w.z() * q[0] + w.x() * q[2] - w.y() * q[1]
    };
  }

  private static Quaternion unit(double[] q) {
    double n = Math.sqrt(q[0] * q[0] + q[1] * q[1] + q[2] * q[2] + q[3] * q[3]);
    return new Quaternion(q[0] / n, q[1] / n, q[2] / n, q[3] / n);
  }

  private static Quaternion turned(Quaternion q, Vec3 w, double h) {
    double angle = w.norm() * h;
    return angle == 0 ? q : Quaternion.ofAxisAngle(w.unit(), angle).times(q);
  }

  private Vec3 spin(Quaternion q) {
    Vec3 l = q.rotateBack(momentum);
    double[] m = inverse;
    return q.rotate(
        new Vec3(
            m[0] * l.x() + m[1] * l.y() + m[2] * l.z(),
            m[3] * l.x() + m[4] * l.y() + m[5] * l.z(),
            m[6] * l.x() + m[7] * l.y() + m[8] * l.z()));
  }

  /** Angular velocity now, world axes, rad/s. */
  Vec3 spin() {
    return steadySpin ? firstSpin : spin(rotation);
  }

  /** Angular momentum about the centre of mass now, from turning and spin, N m s. */
  Vec3 momentum() {
    return rotation.rotate(inertia.times(rotation.rotateBack(spin())));
  }

  /** Centre of mass at any time, world axes, m. */
  Vec3 centre(double t) {
    return start.plus(velocity.times(t)).plus(gravity.times(t * t / 2));
  }

  /** Velocity of the centre of mass at any time, world axes, m/s. */
  Vec3 velocity(double t) {
    return velocity.plus(gravity.times(t));
  }

  /** The frame that carried the body, now. */
  Pose pose() {
    return poseWith(rotation, time);
  }

  /** The same with another turning, at any time. */
  Pose poseWith(Quaternion turned, double t) {
    return new Pose(centre(t).minus(turned.rotate(centreInBody)), turned);
  }

  /** Energy of the turning now, J. */
  double turningEnergy() {
    return spin().dot(momentum()) / 2;
  }

  /** Energy of motion now, J. */
  double energy() {
    Vec3 v = velocity(time);
    return mass * v.dot(v) / 2 + turningEnergy();
  }

  /** s. */
  double time() {
    return time;
  }
}
