package io.github.holdpath.dynamics;

import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.SplittableRandom;

/** Drawn inputs with a fixed start value, so that every run tests the same ones. */
public final class Draws {
  private static final long START = 20170825;

  private final SplittableRandom random = new SplittableRandom(START);

  /** A number in [low, high). */
  public double number(double low, double high) {
    return random.nextDouble(low, high);
  }

  /** A vector with each component in [-size, size). */
  public Vec3 vector(double size) {
    return new Vec3(number(-size, size), number(-size, size), number(-size, size));
  }

  /** A rotation, any. */
  public Quaternion rotation() {
    return Quaternion.ofRpy(
        number(-Math.PI, Math.PI), number(-Math.PI / 2, Math.PI / 2), number(-Math.PI, Math.PI));
  }

  /** A pose up to 1 m away along each axis. */
  public Pose pose() {
    return new Pose(vector(1), rotation());
  }

  /** A turned box of 0.2 to 5 kg, its centre of mass up to 0.3 m away along each axis. */
  public MassProperties body() {
    double mass = number(0.2, 5);
    Vec3 size = new Vec3(number(0.02, 0.4), number(0.02, 0.4), number(0.02, 0.4));
    return new MassProperties(mass, vector(0.3), Inertia.solidBox(mass, size).rotated(rotation()));
  }

  /** A state of motion as a fast robot reaches it. */
  public MotionState motion() {
    return new MotionState(pose(), vector(3), vector(6), vector(20), vector(40));
  }
}
