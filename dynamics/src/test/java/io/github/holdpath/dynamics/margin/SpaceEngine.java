package io.github.holdpath.dynamics.margin;

import org.ode4j.math.DVector3C;
import org.ode4j.ode.DBody;
import org.ode4j.ode.DBox;
import org.ode4j.ode.DContact;
import org.ode4j.ode.DContactBuffer;
import org.ode4j.ode.DContactJoint;
import org.ode4j.ode.DGeom;
import org.ode4j.ode.DJointGroup;
import org.ode4j.ode.DMass;
import org.ode4j.ode.DSpace;
import org.ode4j.ode.DWorld;
import org.ode4j.ode.OdeConstants;
import org.ode4j.ode.OdeHelper;

/**
 * A block on a plate in space, stepped by ode4j 0.5 (BSD licence): a complementarity solver over
 * the corner contacts. Its friction is a pyramid, so forces act along its first direction.
 */
final class SpaceEngine implements AutoCloseable {
  private static final double STEP = 1e-3;
  private static final double MOVES = 1e-4;
  private static final double SETTLE = 0.2;
  private static final double FROM = 0.9;
  private static final double RAMP = 0.2;
  private static final int MOST_CONTACTS = 8;

  private final DWorld world = OdeHelper.createWorld();
  private final DSpace space = OdeHelper.createSimpleSpace(null);
  private final DJointGroup contacts = OdeHelper.createJointGroup();
  private final DBody block = OdeHelper.createBody(world);
  private final DBody ground = OdeHelper.createBody(world);
  private final double mu;
  private double plateSpeed;

  SpaceEngine(double x, double y, double z, double mass, double mu, double gravity) {
    this.mu = mu;
    world.setGravity(0, 0, -gravity);
    world.setERP(0.2);
    world.setCFM(1e-9);
    DMass inertia = OdeHelper.createMass();
    inertia.setBoxTotal(mass, x, y, z);
    block.setMass(inertia);
    block.setPosition(0, 0, z / 2);
    OdeHelper.createBox(space, x, y, z).setBody(block);
    DBox plate = OdeHelper.createBox(space, 100, 100, 1);
    // A body that is moved from outside, so that the contacts know its speed.
    ground.setKinematic();
    plate.setBody(ground);
    ground.setPosition(0, 0, -0.5);
  }

  /** Force through the middle along x at which the block slides or tips, N. */
  double pushed(double guess) {
    settle();
    for (double t = 0; t < 2 / RAMP; t += STEP) {
      double force = guess * (FROM + RAMP * t);
      block.addForce(force, 0, 0);
      step();
      if (moves()) {
        return force;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** Acceleration of the plate along x with which the block no longer keeps up, m/s^2. */
  double carried(double guess) {
    settle();
    for (double t = 0; t < 2 / RAMP; t += STEP) {
      double acceleration = guess * (FROM + RAMP * t);
      plateSpeed += acceleration * STEP;
      ground.setLinearVel(plateSpeed, 0, 0);
      step();
      if (moves()) {
        return acceleration;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private void settle() {
    for (double t = 0; t < SETTLE; t += STEP) {
      step();
    }
  }

  private boolean moves() {
    DVector3C v = block.getLinearVel();
    return Math.abs(v.get0() - plateSpeed) > MOVES || block.getAngularVel().length() > MOVES * 5;
  }

  private void step() {
    OdeHelper.spaceCollide(space, null, this::near);
    world.step(STEP);
    contacts.empty();
  }

  private void near(Object data, DGeom a, DGeom b) {
    DContactBuffer buffer = new DContactBuffer(MOST_CONTACTS);
    int n = OdeHelper.collide(a, b, MOST_CONTACTS, buffer.getGeomBuffer());
    for (int i = 0; i < n; i++) {
      DContact contact = buffer.get(i);
      contact.surface.mode = OdeConstants.dContactApprox1 | OdeConstants.dContactFDir1;
      contact.surface.mu = mu;
      contact.fdir1.set(1, 0, 0);
      DContactJoint joint = OdeHelper.createContactJoint(world, contacts, contact);
      joint.attach(contact.geom.g1.getBody(), contact.geom.g2.getBody());
    }
  }

  @Override
  public void close() {
    contacts.destroy();
    space.destroy();
    world.destroy();
  }
}
