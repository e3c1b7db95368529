package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.robot.RobotFigure.Bone;
import io.github.holdpath.sim.robot.RobotFigure.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Builds the figures of robots. All proportions are parts of the robot's size. */
final class Figures {
  private static final double THICK = 0.044;
  private static final double THIN = 0.012;

  /** Half the length of a joint's housing per its radius. */
  private static final double HOUSING = 1.25;

  /** How much thinner the last link of an arm is than the first. */
  private static final double TAPER = 0.5;

  /** Up to this many sizes above the world's floor a base stands on it. */
  private static final double STANDS = 1.5;

  /** Bodies shorter than this part of the size are left out. */
  private static final double NOTHING = 1e-9;

  private final double size;
  private final Pose base;
  private final List<Bone> bones = new ArrayList<>();

  private Figures(double size, Pose base) {
    this.size = size;
    this.base = base;
  }

  static Optional<RobotFigure> arm(SerialArm robot, double[] q) {
    ChainMotion motion = robot.motion();
    motion.moveTo(q);
    Figures f = new Figures(robot.length(), robot.base());
    List<Joint> joints = robot.chain().joints();
    int[] drives = robot.chain().driveOfEach();
    double thick = THICK * f.size;
    f.pedestal(f.base.position(), 1.2 * thick);
    Vec3 before = f.base.position();
    Role role = Role.BASE;
    for (int i = 0; i < joints.size(); i++) {
      Vec3 axis = vec(motion.axis(i));
      Vec3 here = vec(motion.frame(i).p);
      double girth = thick * (1 - TAPER * i / joints.size());
      JointLimits limits = joints.get(i).limits();
      if (joints.get(i).kind().turns()) {
        f.add(role, before, here, 0.8 * girth);
        f.housing(here, axis, girth);
      } else {
        Vec3 zero = here.minus(axis.times(f.value(joints.get(i), q[drives[i]])));
        f.add(role, before, zero, 0.8 * girth);
        if (Double.isFinite(limits.upper() - limits.lower())) {
          f.rail(zero.plus(axis.times(limits.lower())), zero.plus(axis.times(limits.upper())));
        }
        f.carriage(here, axis);
      }
      before = here;
      role = Role.LINK;
    }
    return f.done(before, motion.flangePose().position(), 0.8 * thick * (1 - TAPER));
  }

  private double value(Joint joint, double drive) {
    return joint.mimic().map(m -> m.multiplier() * drive + m.offset()).orElse(drive);
  }

  static Optional<RobotFigure> gantry(Gantry robot, double[] q) {
    Vec3 flange = robot.flangeAt(q).orElseThrow().position();
    double[] at = new double[3];
    double[] lower = new double[3];
    double[] upper = new double[3];
    List<Optional<JointLimits>> axes = List.of(robot.x(), robot.y(), robot.z());
    double size = 0;
    int next = 0;
    for (int k = 0; k < 3; k++) {
      if (axes.get(k).isPresent()) {
        at[k] = q[next++];
        JointLimits limits = axes.get(k).get();
        // An axis without an end is shown for half a metre to both sides.
        lower[k] = Double.isFinite(limits.lower()) ? limits.lower() : at[k] - 0.5;
        upper[k] = Double.isFinite(limits.upper()) ? limits.upper() : at[k] + 0.5;
        size = Math.max(size, upper[k] - lower[k]);
      }
    }
    Figures f = new Figures(size > 0 ? size : robot.length(), robot.base());
    double above = upper[2] + 0.12 * f.size;
    if (robot.x().isPresent()) {
      double[] sides =
          robot.y().isPresent() ? new double[] {lower[1], upper[1]} : new double[] {at[1]};
      for (double side : sides) {
        f.rail(f.base(lower[0], side, above), f.base(upper[0], side, above));
        f.carriage(f.base(at[0], side, above), f.axis(1, 0, 0));
      }
    }
    if (robot.y().isPresent()) {
      f.rail(f.base(at[0], lower[1], above), f.base(at[0], upper[1], above));
    }
    Vec3 top = f.base(at[0], at[1], above);
    f.carriage(top, f.axis(0, robot.y().isPresent() ? 1 : 0, robot.y().isPresent() ? 0 : 1));
    Vec3 last = f.base(at[0], at[1], at[2]);
    // Long enough for its lower end, and so above the beams wherever it is.
    Vec3 end = f.base(at[0], at[1], at[2] + upper[2] - lower[2] + 0.12 * f.size);
    f.add(Role.LINK, end, last, 0.4 * THICK * f.size);
    return f.done(last, flange, 0.3 * THICK * f.size);
  }

  static Optional<RobotFigure> scara(Scara robot, double[] q) {
    Figures f = new Figures(robot.length(), robot.base());
    double thick = THICK * f.size;
    double rise = 1.6 * thick;
    Vec3 up = f.axis(0, 0, 1);
    double x = robot.upperArm() * Math.cos(q[0]);
    double y = robot.upperArm() * Math.sin(q[0]);
    double endX = x + robot.foreArm() * Math.cos(q[0] + q[1]);
    double endY = y + robot.foreArm() * Math.sin(q[0] + q[1]);
    if (!f.pedestal(f.base.position(), 1.3 * thick)) {
      f.add(Role.BASE, f.base(0, 0, -0.5 * f.size), f.base.position(), 1.3 * thick);
    }
    f.housing(f.base.position(), up, 1.2 * thick);
    f.add(Role.LINK, f.base.position(), f.base(x, y, 0), 0.8 * thick);
    f.housing(f.base(x, y, rise / 2), up, thick);
    f.add(Role.LINK, f.base(x, y, rise), f.base(endX, endY, rise), 0.7 * thick);
    f.housing(f.base(endX, endY, rise), up, 0.8 * thick);
    double stroke = robot.lift().upper() - robot.lift().lower();
    // The quill moves with the lift and is long enough to reach its lower stop.
    double quill = (Double.isFinite(stroke) ? stroke : robot.upperArm()) + rise;
    Vec3 last = f.base(endX, endY, q[2]);
    f.add(Role.ROD, f.base(endX, endY, q[2] + quill), last, 0.25 * thick);
    return f.done(last, robot.flangeAt(q).orElseThrow().position(), 0.25 * thick);
  }

  static Optional<RobotFigure> delta(Delta robot, double[] q) {
    Optional<Pose> flange = robot.flangeAt(q);
    if (flange.isEmpty()) {
      return Optional.empty();
    }
    double size = robot.upperArm() + robot.rod();
    Figures f = new Figures(size, robot.base());
    Vec3 p = robot.base().inverse().times(flange.get()).times(robot.mount().inverse()).position();
    double plate = THIN * size;
    f.add(Role.PLATE, f.base(0, 0, plate), f.base(0, 0, -plate), robot.baseRadius());
    for (int i = 0; i < 3; i++) {
      double c = Math.cos(i * 2 * Math.PI / 3);
      double s = Math.sin(i * 2 * Math.PI / 3);
      Vec3 aside = f.axis(-s, c, 0);
      double far = robot.baseRadius() + robot.upperArm() * Math.cos(q[i]);
      Vec3 shoulder = f.base(robot.baseRadius() * c, robot.baseRadius() * s, 0);
      Vec3 knee = f.base(far * c, far * s, -robot.upperArm() * Math.sin(q[i]));
      double rim = robot.platformRadius();
      Vec3 joint = f.base(p.x() + rim * c, p.y() + rim * s, p.z());
      f.housing(shoulder, aside, 0.45 * THICK * size);
      f.add(Role.LINK, shoulder, knee, 0.3 * THICK * size);
      Vec3 half = aside.times(0.7 * robot.platformRadius());
      f.add(Role.ROD, knee.minus(half), knee.plus(half), 0.6 * THIN * size);
      for (int side = -1; side <= 1; side += 2) {
        Vec3 off = half.times(side);
        f.add(Role.ROD, knee.plus(off), joint.plus(off), 0.45 * THIN * size);
      }
    }
    Vec3 middle = f.base(p.x(), p.y(), p.z());
    if (robot.turn().isPresent()) {
      // A shaft of two that slide in each other: together as long as the arms reach.
      Vec3 way = middle.minus(f.base.position()).unit().times(0.5 * size);
      f.add(Role.ROD, f.base.position(), f.base.position().plus(way), 0.7 * THIN * size);
      f.add(Role.ROD, middle.minus(way), middle, 0.5 * THIN * size);
    }
    f.add(Role.PLATE, f.base(p.x(), p.y(), p.z() + plate), middle, robot.platformRadius());
    return f.done(middle, flange.get().position(), plate);
  }

  private static Vec3 vec(double[] v) {
    return new Vec3(v[0], v[1], v[2]);
  }

  private Vec3 base(double x, double y, double z) {
    return base.apply(new Vec3(x, y, z));
  }

  private Vec3 axis(double x, double y, double z) {
    return base.rotation().rotate(new Vec3(x, y, z));
  }

  private void add(Role role, Vec3 from, Vec3 to, double radius) {
    if (to.minus(from).norm() > NOTHING * size) {
      bones.add(new Bone(role, from, to, radius));
    }
  }

  private void housing(Vec3 at, Vec3 axis, double radius) {
    Vec3 half = axis.times(HOUSING * radius);
    add(Role.JOINT, at.minus(half), at.plus(half), radius);
  }

  private void rail(Vec3 from, Vec3 to) {
    add(Role.RAIL, from, to, 0.4 * THICK * size);
  }

  private void carriage(Vec3 at, Vec3 axis) {
    Vec3 half = axis.times(THICK * size);
    add(Role.CARRIAGE, at.minus(half), at.plus(half), 0.6 * THICK * size);
  }

  /**
   * What a base stands on that is somewhat above the floor of the world; false if there is none.
   */
  private boolean pedestal(Vec3 at, double radius) {
    boolean stands = at.z() > NOTHING * size && at.z() <= STANDS * size;
    if (stands) {
      add(Role.BASE, new Vec3(at.x(), at.y(), 0), at, radius);
    }
    return stands;
  }

  /** The way to the flange; the last bone ends there also where that way has no length. */
  private Optional<RobotFigure> done(Vec3 last, Vec3 flange, double radius) {
    boolean there =
        !bones.isEmpty() && bones.get(bones.size() - 1).to().minus(flange).norm() <= NOTHING * size;
    if (!there) {
      bones.add(new Bone(Role.LINK, last, flange, radius));
    }
    return Optional.of(new RobotFigure(bones));
  }
}
