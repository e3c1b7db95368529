package io.github.holdpath.dynamics.margin;

import org.dyn4j.dynamics.Body;
import org.dyn4j.dynamics.BodyFixture;
import org.dyn4j.dynamics.joint.PrismaticJoint;
import org.dyn4j.geometry.Geometry;
import org.dyn4j.geometry.MassType;
import org.dyn4j.geometry.Vector2;
import org.dyn4j.world.World;

/**
 * Blocks in the plane, stepped by dyn4j 5 (BSD licence): a rigid body engine that knows impulses
 * and friction, but none of our limits. A force or an acceleration grows slowly until the block
 * moves.
 */
final class PlaneEngine {
  private static final double STEP = 1e-3;
  private static final double MOVES = 1e-4;
  private static final double TURNS = 5e-4;
  private static final double SETTLE = 0.2;
  private static final double FROM = 0.9;
  private static final double RAMP = 0.2;

  private PlaneEngine() {}

  private static World<Body> world(double gravity) {
    World<Body> world = new World<>();
    world.setGravity(0, -gravity);
    world.getSettings().setStepFrequency(STEP);
    world.getSettings().setAtRestDetectionEnabled(false);
    world.getSettings().setVelocityConstraintSolverIterations(60);
    return world;
  }

  private static Body box(double width, double height, double mass, double mu, double x, double y) {
    Body body = new Body();
    BodyFixture fixture = body.addFixture(Geometry.createRectangle(width, height));
    fixture.setFriction(mu);
    fixture.setRestitution(0);
    fixture.setDensity(mass / (width * height));
    body.setMass(mass > 0 ? MassType.NORMAL : MassType.INFINITE);
    body.translate(x, y);
    body.setAtRestDetectionEnabled(false);
    body.setLinearDamping(0);
    body.setAngularDamping(0);
    return body;
  }

  /**
   * A block that stands on the ground is pushed at half its height.
   *
   * @param guess size of the force around which to look, N
   * @return force at which it slides or tips, N
   */
  static double pushed(
      double width, double height, double mass, double mu, double g, double guess) {
    World<Body> world = world(g);
    world.addBody(box(10, 1, 0, mu, 0, -0.5));
    Body block = box(width, height, mass, mu, 0, height / 2);
    world.addBody(block);
    settle(world);
    for (double t = 0; t < 2 / RAMP; t += STEP) {
      double force = guess * (FROM + RAMP * t);
      block.applyForce(new Vector2(force, 0));
      world.step(1, STEP);
      if (moves(block, 0)) {
        return force;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** A block stands on a plate whose acceleration grows; m/s^2 at which it no longer follows. */
  static double carried(
      double width, double height, double mass, double mu, double g, double guess) {
    World<Body> world = world(g);
    Body plate = box(40, 1, 0, mu, 0, -0.5);
    Body block = box(width, height, mass, mu, 0, height / 2);
    world.addBody(plate);
    world.addBody(block);
    settle(world);
    double speed = 0;
    for (double t = 0; t < 2 / RAMP; t += STEP) {
      double acceleration = guess * (FROM + RAMP * t);
      speed += acceleration * STEP;
      plate.setLinearVelocity(speed, 0);
      world.step(1, STEP);
      if (moves(block, speed)) {
        return acceleration;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /**
   * A weightless block between a wall and a pad that presses it, pulled along both faces.
   *
   * @return pull at which it slides, N
   */
  static double pinched(double press, double mu, double guess) {
    World<Body> world = world(0);
    world.addBody(box(1, 10, 0, mu, -0.5, 0));
    Body block = box(0.04, 0.04, 1, mu, 0.02, 0);
    Body pad = box(0.02, 0.04, 1, mu, 0.05, 0);
    world.addBody(block);
    world.addBody(pad);
    world.addJoint(
        new PrismaticJoint<>(world.getBody(0), pad, new Vector2(0.05, 0), new Vector2(1, 0)));
    double settled = SETTLE;
    for (double t = -settled; t < 2 / RAMP; t += STEP) {
      double force = t < 0 ? 0 : guess * (FROM + RAMP * t);
      pad.applyForce(new Vector2(-press, 0));
      block.applyForce(new Vector2(0, force));
      world.step(1, STEP);
      if (t > 0 && Math.abs(block.getLinearVelocity().y) > MOVES) {
        return force;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private static void settle(World<Body> world) {
    for (double t = 0; t < SETTLE; t += STEP) {
      world.step(1, STEP);
    }
  }

  private static boolean moves(Body block, double speed) {
    return Math.abs(block.getLinearVelocity().x - speed) > MOVES
        || Math.abs(block.getAngularVelocity()) > TURNS;
  }
}
