package io.github.holdpath.sim.path;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Circular corners between two lines, computed with 30 digits and compared with the rounded path of
 * the library KDL 1.5.1 by those who made the numbers. A corner of this kind is an arc; a {@link
 * BlendPath} is another curve.
 */
class ArcPathValidationTest {
  /** The numbers have 15 digits and are of about 1. */
  private static final double PRINTED = 1e-14;

  /** An arc of 0.3 m radius about a turn of 11 degrees: the radius amplifies rounding. */
  private static final double RADIUS = 1e-13;

  @ParameterizedTest
  @CsvFileSource(resources = "/reference/round-corners.csv", numLinesToSkip = 1)
  void roundedCornersAreArcs(
      String name,
      double ax,
      double ay,
      double az,
      double bx,
      double by,
      double bz,
      double cx,
      double cy,
      double cz,
      double radius,
      double turnAngle,
      double tangentLength,
      double arcLength,
      double pathLength,
      double cut,
      double midX,
      double midY,
      double midZ) {
    Vec3 a = new Vec3(ax, ay, az);
    Vec3 b = new Vec3(bx, by, bz);
    Vec3 c = new Vec3(cx, cy, cz);
    Vec3 back = a.minus(b).unit();
    Vec3 on = c.minus(b).unit();
    Vec3 start = b.plus(back.times(tangentLength));
    Vec3 end = b.plus(on.times(tangentLength));
    Vec3 mid = new Vec3(midX, midY, midZ);
    ArcPath arc = ArcPath.through(Pose.at(start.x(), start.y(), start.z()), mid, pose(end));
    assertEquals(radius, arc.radius(), RADIUS, name);
    assertEquals(turnAngle, arc.angle(), 10 * RADIUS, name);
    assertEquals(arcLength, arc.length(), RADIUS, name);
    double straight = a.minus(b).norm() + c.minus(b).norm() - 2 * tangentLength;
    assertEquals(pathLength, straight + arc.length(), RADIUS, name);

    Vec3 axis = on.cross(back);
    Vec3 centre = b.plus(back.plus(on).unit().times(cut + radius));
    ArcPath about = ArcPath.about(pose(start), centre, axis, turnAngle, pose(end).rotation());
    double[] half = Draws.at(about, arcLength / 2);
    assertEquals(midX, half[0], 10 * PRINTED, name);
    assertEquals(midY, half[1], 10 * PRINTED, name);
    assertEquals(midZ, half[2], 10 * PRINTED, name);
    double[] last = Draws.at(about, arcLength);
    assertEquals(0, on.cross(Flat.vec(last, PathPoint.TANGENT)).norm(), RADIUS, name);
    assertEquals(cut, mid.minus(b).norm(), PRINTED, name);
  }

  private static Pose pose(Vec3 p) {
    return Pose.at(p.x(), p.y(), p.z());
  }
}
