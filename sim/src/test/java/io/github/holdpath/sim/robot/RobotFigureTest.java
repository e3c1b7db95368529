package io.github.holdpath.sim.robot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.robot.RobotFigure.Bone;
import io.github.holdpath.sim.robot.RobotFigure.Role;
import java.io.IOException;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RobotFigureTest {
  /** Places that are computed in two ways, m. */
  private static final double SAME = 1e-9;

  private static List<Robot> all() throws IOException {
    return List.of(
        Robots.gantry(Robots.BASE, Robots.MOUNT),
        Robots.gantry(Robots.BASE, Robot.HANGING),
        Robots.scara(Robots.BASE, Robots.MOUNT),
        Robots.scara(Robots.BASE, Robot.HANGING),
        Robots.delta(Robots.BASE, Robots.MOUNT, true),
        Robots.delta(Robots.BASE, Robot.HANGING, false),
        Robots.logged(Robots.BASE),
        Robots.published(),
        Robots.oblique(),
        Robots.offsetWrist(),
        Robots.seven());
  }

  @Test
  void endsAtTheFlangeWhateverTheJoints() throws IOException {
    SplittableRandom random = new SplittableRandom(41);
    for (Robot robot : all()) {
      for (int i = 0; i < 20; i++) {
        double[] q = Robots.draw(robot, random, 0.1);
        Vec3 flange = robot.flangeAt(q).orElseThrow().position();
        RobotFigure figure = robot.figure(q).orElseThrow();
        assertEquals(0, figure.flange().minus(flange).norm(), SAME, robot.toString());
      }
    }
  }

  @Test
  void bonesKeepTheirLengthsWhateverTheJoints() throws IOException {
    SplittableRandom random = new SplittableRandom(53);
    for (Robot robot : all()) {
      List<Bone> first = robot.figure(Robots.draw(robot, random, 0.1)).orElseThrow().bones();
      for (int i = 0; i < 20; i++) {
        List<Bone> bones = robot.figure(Robots.draw(robot, random, 0.1)).orElseThrow().bones();
        assertEquals(first.size(), bones.size(), robot.toString());
        for (int k = 0; k < bones.size(); k++) {
          assertEquals(first.get(k).role(), bones.get(k).role());
          assertEquals(first.get(k).radius(), bones.get(k).radius());
          assertEquals(first.get(k).length(), bones.get(k).length(), SAME, robot + " bone " + k);
        }
      }
    }
  }

  @Test
  void kneesOfADeltaAreARodAwayFromThePlatform() {
    SplittableRandom random = new SplittableRandom(43);
    Delta robot = Robots.delta(Robots.BASE, Robots.MOUNT, true);
    for (int i = 0; i < 20; i++) {
      List<Bone> bones = robot.figure(Robots.draw(robot, random, 0.2)).orElseThrow().bones();
      List<Bone> arms =
          bones.stream()
              .filter(b -> b.role() == Role.LINK && Math.abs(b.length() - robot.upperArm()) < SAME)
              .toList();
      List<Bone> rods =
          bones.stream()
              .filter(b -> b.role() == Role.ROD && Math.abs(b.length() - robot.rod()) < SAME)
              .toList();
      assertEquals(3, arms.size());
      assertEquals(6, rods.size());
      for (int arm = 0; arm < 3; arm++) {
        Vec3 middle = rods.get(2 * arm).from().plus(rods.get(2 * arm + 1).from()).times(0.5);
        assertEquals(0, middle.minus(arms.get(arm).to()).norm(), SAME);
      }
    }
  }

  @Test
  void linksOfAnArmJoinTheOriginsOfItsJoints() throws IOException {
    SplittableRandom random = new SplittableRandom(47);
    SerialArm robot = Robots.oblique();
    double[] q = Robots.draw(robot, random, 0.1);
    ChainMotion motion = robot.motion();
    motion.moveTo(q);
    List<Bone> links =
        robot.figure(q).orElseThrow().bones().stream().filter(b -> b.role() == Role.LINK).toList();
    // The last two joints share their origin, so that one link has no length.
    for (int i = 0; i < 4; i++) {
      double[] from = motion.frame(i).p;
      double[] to = motion.frame(i + 1).p;
      assertEquals(0, links.get(i).from().minus(new Vec3(from[0], from[1], from[2])).norm(), SAME);
      assertEquals(0, links.get(i).to().minus(new Vec3(to[0], to[1], to[2])).norm(), SAME);
    }
  }

  @Test
  void railsOfAGantryAreAsLongAsItsAxes() {
    Gantry robot = Robots.gantry(Pose.IDENTITY, Robot.HANGING);
    List<Bone> rails =
        robot.figure(0.5, 0.1, 0.3, 0).orElseThrow().bones().stream()
            .filter(b -> b.role() == Role.RAIL)
            .toList();
    assertEquals(3, rails.size());
    assertEquals(3, rails.get(0).length(), SAME);
    assertEquals(3, rails.get(1).length(), SAME);
    assertEquals(1, rails.get(2).length(), SAME);
    assertEquals(0.5, rails.get(2).from().x(), SAME);
    rails.forEach(r -> assertTrue(r.from().z() > 0.8, "above the axis along z"));
  }

  @Test
  void armsOfAScaraAreAsLongAsTold() {
    Scara robot = Robots.scara(Pose.at(0, 0, 0.4), Robot.HANGING);
    List<Bone> bones = robot.figure(0.4, -1.1, -0.1, 0).orElseThrow().bones();
    List<Bone> links = bones.stream().filter(b -> b.role() == Role.LINK).toList();
    assertEquals(robot.upperArm(), links.get(0).length(), SAME);
    assertEquals(robot.foreArm(), links.get(1).length(), SAME);
    assertEquals(0, bones.get(0).from().z(), SAME);
    assertEquals(Role.BASE, bones.get(0).role());
  }

  @Test
  void hasNoFigureWhereTheRodsDoNotMeet() {
    Delta wide =
        new Delta(
            1.2,
            0.05,
            0.5,
            0.8,
            Robots.range(-3, 3),
            java.util.Optional.empty(),
            Robot.HANGING,
            Pose.IDENTITY,
            java.util.OptionalDouble.empty());
    assertTrue(wide.figure(0, 0, 0).isEmpty());
  }

  @Test
  void refusesABoneWithoutThickness() {
    assertThrows(
        IllegalArgumentException.class, () -> new Bone(Role.LINK, Vec3.ZERO, new Vec3(1, 0, 0), 0));
  }
}
