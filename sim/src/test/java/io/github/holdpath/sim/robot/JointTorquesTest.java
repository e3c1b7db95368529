package io.github.holdpath.sim.robot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class JointTorquesTest {
  /** Algebra on torques up to some hundreds of N m. */
  private static final double EXACT = 1e-10;

  /** Work and energy of the order of 100 J; the quadrature itself is exact to 1e-10. */
  private static final double ENERGY = 1e-8;

  private static final Vec3 GRAVITY = new Vec3(0.4, -0.3, -9.80665);

  /** A level beam of 2 kg with its middle 0.5 m out, and 3 kg at 1 m: handbook statics. */
  @Test
  void levelBeamWeighsWhatStaticsSays() {
    Joint beam =
        Joint.driven(
            "beam",
            JointKind.REVOLUTE,
            Pose.IDENTITY,
            new Vec3(0, -1, 0),
            JointLimits.NONE,
            new LinkBody(2, new Vec3(0.5, 0, 0), Inertia.POINT));
    LinkBody payload = LinkBody.of(new MassProperties(3, Vec3.ZERO, Inertia.POINT));
    JointTorques torques =
        new JointTorques(
            new Chain(List.of(beam), Pose.at(1, 0, 0)), new Vec3(0, 0, -9.81), payload);
    double[] tau = new double[1];
    double[] still = new double[1];
    torques.of(still, still, still, tau);
    assertEquals((2 * 0.5 + 3) * 9.81, tau[0], EXACT);
    torques.of(still, still, new double[] {2}, tau);
    assertEquals((2 * 0.5 + 3) * 9.81 + (2 * 0.25 + 3) * 2, tau[0], EXACT);
    torques.of(still, still, still, new double[] {0, 0, 10, 0, 0, 0}, tau);
    assertEquals((2 * 0.5 + 3) * 9.81 + 10, tau[0], EXACT);
  }

  @Test
  void liftOnASlideIsWeightAndInertia() {
    Joint lift =
        Joint.driven(
            "lift",
            JointKind.PRISMATIC,
            Pose.IDENTITY,
            new Vec3(0, 0, 1),
            JointLimits.NONE,
            new LinkBody(4, new Vec3(0.3, 0.2, 0), Inertia.POINT));
    JointTorques torques =
        new JointTorques(
            new Chain(List.of(lift), Pose.IDENTITY), new Vec3(0, 0, -9.81), LinkBody.NONE);
    double[] force = new double[1];
    torques.of(new double[1], new double[1], new double[] {1.5}, force);
    assertEquals(4 * (9.81 + 1.5), force[0], EXACT);
  }

  /** A payload and a heavier last link are the same. */
  @Test
  void payloadIsPartOfTheLastLink() {
    SplittableRandom random = new SplittableRandom(21);
    for (int draw = 0; draw < 50; draw++) {
      Chain arm = Arms.drawn(random);
      LinkBody payload = Arms.body(random);
      int last = arm.joints().size() - 1;
      Joint j = arm.joints().get(last);
      List<Joint> joints = new ArrayList<>(arm.joints());
      joints.set(
          last,
          new Joint(
              j.name(),
              j.kind(),
              j.origin(),
              j.axis(),
              j.limits(),
              j.body().plus(payload.seenFrom(arm.flange())),
              j.mimic()));
      double[] q = Arms.draw(random, 4, 2);
      double[] qd = Arms.draw(random, 4, 2);
      double[] qdd = Arms.draw(random, 4, 5);
      double[] carried = new double[4];
      double[] merged = new double[4];
      new JointTorques(arm, GRAVITY, payload).of(q, qd, qdd, carried);
      new JointTorques(new Chain(joints, arm.flange()), GRAVITY, LinkBody.NONE)
          .of(q, qd, qdd, merged);
      assertArrayEquals(merged, carried, EXACT);
    }
  }

  /** Virtual work: a load at the flange costs J^T times it. */
  @Test
  void loadAtTheFlangeCostsTheTransposedJacobian() {
    SplittableRandom random = new SplittableRandom(22);
    for (int draw = 0; draw < 50; draw++) {
      Chain arm = Arms.drawn(random);
      double[] q = Arms.draw(random, 4, 2);
      double[] zero = new double[4];
      double[] load = Arms.draw(random, 6, 20);
      double[] with = new double[4];
      JointTorques torques = new JointTorques(arm, Vec3.ZERO, LinkBody.NONE);
      torques.of(q, zero, zero, load, with);
      ChainMotion motion = new ChainMotion(arm);
      motion.moveTo(q);
      double[] jacobian = new double[24];
      motion.jacobian(jacobian);
      Quaternion turn = motion.flangePose().rotation();
      Vec3 f = turn.rotate(new Vec3(load[0], load[1], load[2]));
      Vec3 m = turn.rotate(new Vec3(load[3], load[4], load[5]));
      double[] w = {f.x(), f.y(), f.z(), m.x(), m.y(), m.z()};
      for (int k = 0; k < 4; k++) {
        double sum = 0;
        for (int row = 0; row < 6; row++) {
          sum += jacobian[4 * row + k] * w[row];
        }
        assertEquals(sum, with[k], EXACT);
      }
    }
  }

  @Test
  void inertiaMatrixIsEvenAndGivesKineticEnergy() {
    SplittableRandom random = new SplittableRandom(23);
    for (int draw = 0; draw < 50; draw++) {
      Chain arm = Arms.drawn(random);
      LinkBody payload = Arms.body(random);
      double[] q = Arms.draw(random, 4, 2);
      double[] qd = Arms.draw(random, 4, 2);
      double[] h = new double[16];
      new JointTorques(arm, GRAVITY, payload).inertia(q, h);
      double twice = 0;
      for (int i = 0; i < 4; i++) {
        for (int j = 0; j < 4; j++) {
          assertEquals(h[4 * i + j], h[4 * j + i], EXACT);
          twice += qd[i] * h[4 * i + j] * qd[j];
        }
      }
      assertEquals(energy(arm, payload, q, qd, Vec3.ZERO), twice / 2, EXACT);
    }
  }

  /** What the drives put in over a motion is what the links hold more at its end. */
  @Test
  void workIsTheChangeOfEnergy() throws IOException {
    SplittableRandom random = new SplittableRandom(24);
    for (int draw = 0; draw < 12; draw++) {
      Chain arm = draw < 2 ? Arms.published() : Arms.drawn(random);
      LinkBody payload = Arms.body(random);
      Swing swing = new Swing(random, arm.drives().size());
      JointTorques torques = new JointTorques(arm, GRAVITY, payload);
      double before = energy(arm, payload, swing.q(0), swing.qd(0), GRAVITY);
      double after = energy(arm, payload, swing.q(1), swing.qd(1), GRAVITY);
      double work = swing.work(torques);
      assertEquals(after - before, work, ENERGY);
      assertTrue(Math.abs(work) > 0.01, "the motion must do work, but did " + work);
    }
  }

  /** A second of motion, each joint on a sine of its own. */
  private static final class Swing {
    /** Abscissae and weights of Gauss-Legendre quadrature with three points. */
    private static final double[] X = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};

    private static final double[] W = {5.0 / 9, 8.0 / 9, 5.0 / 9};
    private static final int CELLS = 400;

    private final double[] amplitude;
    private final double[] frequency;
    private final double[] phase;

    Swing(SplittableRandom random, int n) {
      amplitude = Arms.draw(random, n, 1);
      frequency = Arms.draw(random, n, 6);
      phase = Arms.draw(random, n, 3);
    }

    private double[] value(double t, int rate) {
      double[] x = new double[amplitude.length];
      for (int i = 0; i < x.length; i++) {
        double angle = frequency[i] * t + phase[i] + rate * Math.PI / 2;
        x[i] = amplitude[i] * Math.pow(frequency[i], rate) * Math.sin(angle);
      }
      return x;
    }

    double[] q(double t) {
      return value(t, 0);
    }

    double[] qd(double t) {
      return value(t, 1);
    }

    double work(JointTorques torques) {
      double sum = 0;
      double[] tau = new double[amplitude.length];
      for (int cell = 0; cell < CELLS; cell++) {
        for (int k = 0; k < X.length; k++) {
          double t = (cell + 0.5 + X[k] / 2) / CELLS;
          double[] qd = qd(t);
          torques.of(q(t), qd, value(t, 2), tau);
          for (int i = 0; i < tau.length; i++) {
            sum += W[k] / (2 * CELLS) * tau[i] * qd[i];
          }
        }
      }
      return sum;
    }
  }

  /** Kinetic and potential energy, link by link, each as the flange of a shorter chain. */
  private static double energy(Chain arm, LinkBody payload, double[] q, double[] qd, Vec3 gravity) {
    double sum = energyOf(arm, payload, q, qd, gravity);
    for (int i = 0; i < arm.joints().size(); i++) {
      Chain part = new Chain(arm.joints().subList(0, i + 1), Pose.IDENTITY);
      int n = part.drives().size();
      sum +=
          energyOf(
              part, arm.joints().get(i).body(), Arrays.copyOf(q, n), Arrays.copyOf(qd, n), gravity);
    }
    return sum;
  }

  private static double energyOf(
      Chain chain, LinkBody body, double[] q, double[] qd, Vec3 gravity) {
    ChainMotion motion = new ChainMotion(chain);
    motion.move(q, qd, new double[q.length]);
    double[] flat = new double[MotionState.SIZE];
    motion.flange(flat);
    MotionState s = MotionState.of(flat);
    Vec3 centre = s.pose().rotation().rotate(body.centreOfMass());
    Vec3 v = s.velocity().plus(s.angularVelocity().cross(centre));
    Vec3 w = s.pose().rotation().rotateBack(s.angularVelocity());
    return body.mass() * v.dot(v) / 2
        + w.dot(body.inertia().times(w)) / 2
        - body.mass() * gravity.dot(s.pose().position().plus(centre));
  }

  @Test
  void refusesArraysOfTheWrongLength() throws IOException {
    JointTorques torques = new JointTorques(Arms.published(), GRAVITY, LinkBody.NONE);
    double[] q = new double[6];
    assertThrows(IllegalArgumentException.class, () -> torques.of(q, q, q, new double[5]));
    assertThrows(
        IllegalArgumentException.class, () -> torques.of(q, q, q, new double[3], new double[6]));
    assertThrows(IllegalArgumentException.class, () -> torques.inertia(q, new double[6]));
  }
}
