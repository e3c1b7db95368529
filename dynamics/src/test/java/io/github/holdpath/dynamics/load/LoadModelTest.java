package io.github.holdpath.dynamics.load;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import io.github.holdpath.dynamics.Draws;
import io.github.holdpath.dynamics.Expect;
import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.lang.management.ManagementFactory;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.junit.jupiter.api.Test;

class LoadModelTest {
  /** Algebra with cancelling terms: some roundings more than a single product. */
  private static final double CHAIN = 1e-11;

  /** What the virtual machine may book on its own, bytes over all calls; one array is 24 a call. */
  private static final long ALLOCATION_NOISE = 4096;

  private static final Vec3 GRAVITY = new Vec3(0, 0, -9.80665);

  private static AirLoad air(Draws draws) {
    return new AirLoad(1.2, draws.number(0, 1), draws.number(0, 1), draws.vector(1));
  }

  @Test
  void partAtRestNeedsItsWeightHeldUpAndNothingElse() {
    MassProperties body = new MassProperties(2, new Vec3(0.1, 0, 0), Inertia.solidSphere(2, 0.05));
    RequiredWrench w =
        new LoadModel(body, GRAVITY, AirLoad.NONE).required(MotionState.atRest(Pose.at(5, 6, 7)));
    assertEquals(Wrench.ZERO, w.motion());
    Expect.near(new Vec3(0, 0, 19.6133), w.gravity().force(), Expect.ALGEBRA * 20);
    Expect.near(new Vec3(0, -1.96133, 0), w.gravity().moment(), Expect.ALGEBRA * 20);
  }

  @Test
  void partInFreeFallNeedsNothing() {
    Draws draws = new Draws();
    MotionState falling =
        new MotionState(draws.pose(), draws.vector(2), Vec3.ZERO, GRAVITY, Vec3.ZERO);
    Wrench w = new LoadModel(draws.body(), GRAVITY, AirLoad.NONE).required(falling).total();
    assertEquals(0, Expect.largest(w.toArray()), CHAIN * 50, "free fall");
  }

  @Test
  void partOnATurntableIsPulledToTheAxis() {
    MassProperties body = new MassProperties(3, new Vec3(0.2, 0, 0), Inertia.POINT);
    MotionState turning =
        new MotionState(Pose.IDENTITY, Vec3.ZERO, new Vec3(0, 0, 4), Vec3.ZERO, Vec3.ZERO);
    Wrench w = new LoadModel(body, Vec3.ZERO, AirLoad.NONE).required(turning).total();
    // m w^2 r towards the axis
    Expect.near(new Vec3(-9.6, 0, 0), w.force(), Expect.ALGEBRA * 10);
    Expect.near(Vec3.ZERO, w.moment(), Expect.ALGEBRA);
  }

  @Test
  void totalIsGravityAndMotionAndGravityDoesNotSeeTheMotion() {
    Draws draws = new Draws();
    for (int n = 0; n < 200; n++) {
      LoadModel model = new LoadModel(draws.body(), GRAVITY, air(draws));
      MotionState state = draws.motion();
      RequiredWrench w = model.required(state);
      assertEquals(w.gravity().plus(w.motion()), w.total());
      assertEquals(model.required(MotionState.atRest(state.pose())).gravity(), w.gravity());
    }
  }

  @Test
  void motionPartDoesNotSeeGravity() {
    Draws draws = new Draws();
    for (int n = 0; n < 50; n++) {
      MassProperties body = draws.body();
      AirLoad air = air(draws);
      MotionState state = draws.motion();
      Wrench here = new LoadModel(body, GRAVITY, air).required(state).motion();
      assertEquals(new LoadModel(body, draws.vector(10), air).required(state).motion(), here);
    }
  }

  @Test
  void playedFasterTheMotionPartGrowsWithTheSquare() {
    Draws draws = new Draws();
    for (int n = 0; n < 200; n++) {
      LoadModel model = new LoadModel(draws.body(), GRAVITY, air(draws));
      MotionState s = draws.motion();
      double k = draws.number(0.1, 3);
      MotionState faster =
          new MotionState(
              s.pose(),
              s.velocity().times(k),
              s.angularVelocity().times(k),
              s.acceleration().times(k * k),
              s.angularAcceleration().times(k * k));
      RequiredWrench once = model.required(s);
      RequiredWrench more = model.required(faster);
      assertEquals(once.gravity(), more.gravity());
      Expect.near(once.motion().times(k * k), more.motion(), CHAIN, "k^2");
    }
  }

  /** The same physics worked out in world axes about the world's origin, with another library. */
  @Test
  void equalsNewtonAndEulerInTheWorldFrame() {
    Draws draws = new Draws();
    for (int n = 0; n < 300; n++) {
      MassProperties body = draws.body();
      AirLoad air = air(draws);
      MotionState state = draws.motion();
      Wrench expected = inWorld(body, air, state);
      Wrench actual = new LoadModel(body, GRAVITY, air).required(state).total();
      Expect.near(expected, actual, CHAIN, "world frame");
    }
  }

  private static Wrench inWorld(MassProperties body, AirLoad air, MotionState s) {
    Quaternion q = s.pose().rotation();
    // Hipparchus writes the inverse rotation in its quaternion constructor.
    Rotation rotation = new Rotation(q.w(), -q.x(), -q.y(), -q.z(), false);
    Vector3D arm = rotation.applyTo(v(body.centreOfMass()));
    Vector3D w = v(s.angularVelocity());
    Vector3D alpha = v(s.angularAcceleration());
    Vector3D speed = v(s.velocity()).add(w.crossProduct(arm));
    Vector3D acceleration =
        v(s.acceleration()).add(alpha.crossProduct(arm)).add(w.crossProduct(w.crossProduct(arm)));
    Vector3D normal = rotation.applyTo(v(air.normal()));
    Vector3D force =
        acceleration
            .subtract(v(GRAVITY))
            .scalarMultiply(body.mass())
            .add(0.5 * air.density() * air.dragArea() * speed.getNorm(), speed)
            .add(air.addedMass() * normal.dotProduct(acceleration), normal);
    Inertia i = body.inertia();
    var r = new Array2DRowRealMatrix(rotation.getMatrix());
    var own =
        new Array2DRowRealMatrix(
            new double[][] {
              {i.xx(), i.xy(), i.xz()}, {i.xy(), i.yy(), i.yz()}, {i.xz(), i.yz(), i.zz()}
            });
    var world = r.multiply(own).multiply(r.transpose());
    Vector3D spin = new Vector3D(world.operate(w.toArray()));
    Vector3D moment =
        new Vector3D(world.operate(alpha.toArray()))
            .add(w.crossProduct(spin))
            .add(arm.crossProduct(force));
    double[] f = rotation.applyInverseTo(force).toArray();
    double[] m = rotation.applyInverseTo(moment).toArray();
    return new Wrench(new Vec3(f[0], f[1], f[2]), new Vec3(m[0], m[1], m[2]));
  }

  private static Vector3D v(Vec3 a) {
    return new Vector3D(a.x(), a.y(), a.z());
  }

  @Test
  void turningTheWholeWorldChangesNothing() {
    Draws draws = new Draws();
    for (int n = 0; n < 100; n++) {
      MassProperties body = draws.body();
      AirLoad air = air(draws);
      MotionState s = draws.motion();
      Quaternion turn = draws.rotation();
      MotionState turned =
          new MotionState(
              new Pose(turn.rotate(s.pose().position()), turn.times(s.pose().rotation())),
              turn.rotate(s.velocity()),
              turn.rotate(s.angularVelocity()),
              turn.rotate(s.acceleration()),
              turn.rotate(s.angularAcceleration()));
      Wrench here = new LoadModel(body, GRAVITY, air).required(s).total();
      Wrench there = new LoadModel(body, turn.rotate(GRAVITY), air).required(turned).total();
      Expect.near(here, there, CHAIN, "turned world");
    }
  }

  @Test
  void anotherFrameOnTheSameGripGivesTheSameWrench() {
    Draws draws = new Draws();
    for (int n = 0; n < 100; n++) {
      MassProperties body = draws.body();
      AirLoad air = air(draws);
      MotionState s = draws.motion();
      Pose other = draws.pose();
      Vec3 arm = s.pose().rotation().rotate(other.position());
      Vec3 w = s.angularVelocity();
      MotionState moved =
          new MotionState(
              s.pose().times(other),
              s.velocity().plus(w.cross(arm)),
              w,
              s.acceleration().plus(s.angularAcceleration().cross(arm)).plus(w.cross(w.cross(arm))),
              s.angularAcceleration());
      AirLoad movedAir =
          new AirLoad(
              air.density(),
              air.dragArea(),
              air.addedMass(),
              other.rotation().rotateBack(air.normal()));
      Wrench here = new LoadModel(body, GRAVITY, air).required(s).total();
      Wrench there =
          new LoadModel(body.seenFrom(other.inverse()), GRAVITY, movedAir).required(moved).total();
      Expect.near(here, there.seenFrom(other), CHAIN, "other frame");
    }
  }

  @Test
  void twoPartsCarriedTogetherNeedTheSumOfBoth() {
    Draws draws = new Draws();
    for (int n = 0; n < 100; n++) {
      MassProperties a = draws.body();
      MassProperties b = draws.body();
      MotionState s = draws.motion();
      Wrench sum =
          new LoadModel(a, GRAVITY, AirLoad.NONE)
              .required(s)
              .total()
              .plus(new LoadModel(b, GRAVITY, AirLoad.NONE).required(s).total());
      Wrench both = new LoadModel(a.plus(b), GRAVITY, AirLoad.NONE).required(s).total();
      Expect.near(sum, both, CHAIN, "sum of parts");
    }
  }

  @Test
  void flatFormGivesTheSameAndLeavesTheRotationBehind() {
    Draws draws = new Draws();
    LoadModel model = new LoadModel(draws.body(), GRAVITY, air(draws));
    MotionState s = draws.motion();
    double[] out = new double[LoadModel.SIZE];
    double[] scratch = new double[9];
    model.required(s.toArray(), out, scratch);
    RequiredWrench w = model.required(s);
    assertEquals(w.gravity(), Wrench.of(out, 0));
    assertEquals(w.motion(), Wrench.of(out, 6));
    assertArrayEquals(s.pose().rotation().toMatrix(), scratch, Expect.ALGEBRA);
  }

  @Test
  void flatFormAllocatesNothing() {
    Draws draws = new Draws();
    LoadModel model = new LoadModel(draws.body(), GRAVITY, air(draws));
    double[] state = draws.motion().toArray();
    double[] out = new double[LoadModel.SIZE];
    double[] scratch = new double[9];
    int calls = 20_000;
    repeat(model, state, out, scratch, calls);
    ThreadMXBean bean = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    bean.getCurrentThreadAllocatedBytes();
    long before = bean.getCurrentThreadAllocatedBytes();
    repeat(model, state, out, scratch, calls);
    long used = bean.getCurrentThreadAllocatedBytes() - before;
    assertTrue(used <= ALLOCATION_NOISE, used + " bytes in " + calls + " calls");
  }

  private static void repeat(
      LoadModel model, double[] state, double[] out, double[] scratch, int calls) {
    for (int i = 0; i < calls; i++) {
      model.required(state, out, scratch);
    }
  }

  @Test
  void airRefusesNegativeNumbersAndANormalOfNoLength() {
    Vec3 z = new Vec3(0, 0, 1);
    Expect.refused("density must not be negative", () -> new AirLoad(-1, 0, 0, z));
    Expect.refused("dragArea must not be negative", () -> new AirLoad(0, Double.NaN, 0, z));
    Expect.refused(
        "addedMass must not be negative", () -> new AirLoad(0, 0, Double.POSITIVE_INFINITY, z));
    Expect.refused("no direction", () -> new AirLoad(0, 0, 0, Vec3.ZERO));
    Expect.near(z, new AirLoad(0, 0, 0, z.times(7)).normal(), Expect.ALGEBRA);
  }
}
