package io.github.holdpath.sim.path;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.path.ChainFault.Kind;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PathChainTest {
  /** Algebra in doubles on numbers of about 1. */
  private static final double ALGEBRA = 1e-12;

  /** Joints, made dimensionless, with rounding of small zones far from the origin. */
  private static final double JOINT = 1e-11;

  /** Largest zones are searched to rounding of their square. */
  private static final double SEARCHED = 1e-7;

  private static final Vec3 UP = new Vec3(0, 0, 1);

  @Test
  void oneMoveIsItself() {
    PathCurve line = line(0, 0, 2, 0);
    PathChain chain = chain(List.of(line));
    assertEquals(2, chain.length());
    assertEquals(1, chain.pieces().size());
    assertEquals(0.5, Draws.at(chain, 0.5)[0], ALGEBRA);
  }

  @Test
  void splitsBlendsInTheirMiddle() {
    PathChain chain = chain(List.of(line(0, 0, 1, 0), line(1, 0, 1, 1)), 0.25);
    BlendPath blend = chain.blends().get(0);
    assertEquals(1.5 + blend.length(), chain.length(), ALGEBRA);
    assertEquals(4, chain.pieces().size());
    assertEquals(0.75 + blend.length() / 2, chain.moveStart(1), ALGEBRA);
    assertEquals(0, chain.moveStart(0));
    assertEquals(
        List.of(false, true, true, false), chain.pieces().stream().map(PathPiece::blend).toList());
    assertEquals(List.of(0, 0, 1, 1), chain.pieces().stream().map(PathPiece::move).toList());
    assertEquals(1, Draws.at(chain, chain.length())[1], ALGEBRA);
    assertThrows(IllegalArgumentException.class, () -> chain.moveStart(2));
  }

  @Test
  void zonesMayUseUpAMove() {
    PathChain chain =
        chain(List.of(line(0, 0, 1, 0), line(1, 0, 1, 1), line(1, 1, 0, 1)), 0.4, 0.6);
    assertEquals(6, chain.pieces().size());
    PathChain whole = chain(List.of(line(0, 0, 1, 0), line(1, 0, 1, 1)), 1);
    assertEquals(2, whole.pieces().size());
  }

  @Test
  void continuesOverAllJoints() {
    SplittableRandom random = new SplittableRandom(51);
    for (int i = 0; i < 60; i++) {
      PathChain chain = drawn(Draws.moves(6, random));
      List<PathPiece> pieces = chain.pieces();
      assertEquals(5, chain.blends().size());
      for (int k = 1; k < pieces.size(); k++) {
        double s = pieces.get(k).start();
        double[] left = new double[PathPoint.SIZE];
        double[] right = new double[PathPoint.SIZE];
        chain.at(k - 1, s, left);
        chain.at(k, s, right);
        double scale =
            Math.min(
                Draws.scale(pieces.get(k - 1).curve(), pieces.get(k - 1).bounds()),
                Draws.scale(pieces.get(k).curve(), pieces.get(k).bounds()));
        assertEquals(0, Draws.jump(left, right, scale), JOINT);
      }
    }
  }

  @Test
  void chainsOfTurnsGoByTheAngle() {
    SplittableRandom random = new SplittableRandom(52);
    PathCurve first = Draws.turn(Draws.pose(random), random);
    PathCurve second = Draws.turn(Draws.end(first), random);
    PathChain chain = drawn(List.of(first, second));
    for (int i = 0; i <= 20; i++) {
      double[] p = Draws.at(chain, chain.length() * i / 20);
      assertEquals(1, Draws.size(p, PathPoint.TURN), ALGEBRA);
      assertEquals(0, Draws.size(p, PathPoint.TANGENT));
    }
  }

  @Test
  void movesWithTheWorld() {
    SplittableRandom random = new SplittableRandom(53);
    for (int i = 0; i < 20; i++) {
      List<PathCurve> moves = Draws.moves(4, random);
      Pose by = Draws.pose(random);
      PathChain here = drawn(moves);
      double[] zones = here.blends().stream().mapToDouble(BlendPath::zone).toArray();
      PathChain there = chain(moves.stream().map(m -> Draws.moved(m, by)).toList(), zones);
      assertEquals(here.length(), there.length(), 1e-9 * here.length());
      double s = random.nextDouble() * here.length();
      double[] a = Draws.at(here, s);
      double[] b = Draws.at(there, s);
      Vec3 p = by.apply(Flat.vec(a, PathPoint.POSITION));
      assertEquals(0, p.minus(Flat.vec(b, PathPoint.POSITION)).norm(), 1e-9);
      for (int at : new int[] {PathPoint.TANGENT, PathPoint.TURN}) {
        Vec3 v = by.rotation().rotate(Flat.vec(a, at));
        assertEquals(0, v.minus(Flat.vec(b, at)).norm(), 1e-6 * (1 + v.norm()));
      }
      Quaternion q = by.rotation().times(new Quaternion(a[3], a[4], a[5], a[6]));
      assertEquals(0, q.angleTo(new Quaternion(b[3], b[4], b[5], b[6])), 1e-8);
    }
  }

  @Test
  void largestZonesOfTheFaultsFitTogether() {
    SplittableRandom random = new SplittableRandom(54);
    int mended = 0;
    for (int i = 0; i < 60; i++) {
      List<PathCurve> moves = Draws.moves(5, random);
      double[] zones = new double[4];
      for (int k = 0; k < 4; k++) {
        zones[k] = random.nextDouble(0.01, 1);
      }
      ChainOutcome outcome = PathChain.build(moves, zones);
      if (outcome instanceof ChainFaults faults) {
        boolean fits = true;
        for (ChainFault fault : faults.faults()) {
          zones[fault.corner()] = fault.largestZone();
          fits &= fault.largestZone() > 0;
        }
        if (fits) {
          chain(moves, zones);
          mended++;
        }
      }
    }
    assertTrue(mended > 10, "only " + mended + " chains were mended");
  }

  @Test
  void tellsZonesThatOverlap() {
    ChainFault fault =
        fault(List.of(line(0, 0, 1, 0), line(1, 0, 1, 1), line(1, 1, 0, 1)), 0.6, 0.5);
    assertEquals(Kind.ZONES_OVERLAP, fault.kind());
    assertEquals(1, fault.corner());
    assertEquals(new Vec3(1, 1, 0), fault.place());
    assertEquals(0.4, fault.largestZone(), ALGEBRA);
    assertTrue(
        fault
            .message()
            .contains(
                "leaves 400.0 mm; both alike may have 500.0 mm; the largest that fits is 400.0 mm"),
        fault.message());
  }

  @Test
  void tellsAZoneBeyondItsMove() {
    ChainFault fault = fault(List.of(line(0, 0, 1, 0), line(1, 0, 1, 0.3)), 0.31);
    assertEquals(Kind.ZONE_BEYOND_MOVE, fault.kind());
    assertEquals(0.3, fault.largestZone(), ALGEBRA);
    assertTrue(fault.message().contains("the move after it"), fault.message());
    // A circle goes no farther from a point of it than its diameter.
    PathCurve arc = ArcPath.about(Pose.at(1, 0, 0), new Vec3(1, 1, 0), UP, 6, Quaternion.IDENTITY);
    ChainFault round = fault(List.of(line(-9, 0, 1, 0), arc), 2.1);
    assertEquals(Kind.ZONE_BEYOND_MOVE, round.kind());
    assertEquals(2, round.largestZone(), SEARCHED);
  }

  @Test
  void tellsAReversal() {
    ChainFault fault = fault(List.of(line(0, 0, 1, 0), line(1, 0, 0.5, 0)), 0.1);
    assertEquals(Kind.REVERSAL, fault.kind());
    assertEquals(0, fault.largestZone());
    assertTrue(fault.message().contains("180.0 degrees"), fault.message());
  }

  @Test
  void tellsAMissingZone() {
    ChainFault fault = fault(List.of(line(0, 0, 1, 0), line(1, 0, 1, 1)), 0);
    assertEquals(Kind.NO_ZONE, fault.kind());
    assertEquals(1, fault.largestZone(), ALGEBRA);
    assertEquals(
        Kind.NO_ZONE, fault(List.of(line(0, 0, 1, 0), line(1, 0, 1, 1)), Double.NaN).kind());
  }

  @Test
  void tellsATurnInPlaceBesideAMove() {
    Pose end = new Pose(new Vec3(1, 0, 0), Quaternion.ofAxisAngle(UP, 1));
    PathCurve turn = LineCurve.between(Pose.at(1, 0, 0), end);
    ChainFault fault = fault(List.of(line(0, 0, 1, 0), turn), 0.1);
    assertEquals(Kind.MOVES_AND_TURNS, fault.kind());
    assertTrue(fault.message().contains("only turns in place"), fault.message());
  }

  @Test
  void tellsArcsThatLeadBackOnEachOther() {
    // Mirror images about the y axis that leave the corner 20 degrees beside it and bend across it:
    // where they are as far on one side as they head to the other, their mean stands still.
    double e = Math.toRadians(20);
    Vec3 right = new Vec3(Math.cos(e), Math.sin(e), 0);
    Vec3 left = new Vec3(-Math.cos(e), Math.sin(e), 0);
    Vec3 start = right.minus(Quaternion.ofAxisAngle(UP, -1.5).rotate(right));
    PathCurve in =
        ArcPath.about(Pose.at(start.x(), start.y(), 0), right, UP, 1.5, Quaternion.IDENTITY);
    PathCurve out = ArcPath.about(Pose.IDENTITY, left, UP, 1.5, Quaternion.IDENTITY);
    int found = 0;
    for (double zone = 0.85; zone < 1; zone += 0.005) {
      if (PathChain.build(List.of(in, out), zone) instanceof ChainFaults faults) {
        ChainFault fault = faults.faults().get(0);
        assertEquals(Kind.FOLDS, fault.kind());
        assertTrue(fault.largestZone() > 0.8 && fault.largestZone() < zone);
        chain(List.of(in, out), fault.largestZone());
        found++;
      }
    }
    assertTrue(found > 0 && found < 10, "folds at " + found + " zones of 30");
  }

  @Test
  void twoThreadsGetTheSame() {
    SplittableRandom random = new SplittableRandom(55);
    PathChain chain = drawn(Draws.moves(4, random));
    double[] alone = sums(chain).toArray();
    double[] together = sums(chain).parallel().toArray();
    assertArrayEquals(alone, together);
  }

  private static DoubleStream sums(PathChain chain) {
    return IntStream.range(0, 20_000)
        .mapToDouble(i -> Arrays.stream(Draws.at(chain, chain.length() * i / 20_000)).sum());
  }

  @Test
  void refusesListsThatDoNotMatch() {
    List<PathCurve> moves = List.of(line(0, 0, 1, 0), line(1, 0, 1, 1));
    String message =
        assertThrows(IllegalArgumentException.class, () -> PathChain.build(moves)).getMessage();
    assertTrue(message != null && message.contains("one fewer"), message);
  }

  private static ChainFault fault(List<PathCurve> moves, double... zones) {
    List<ChainFault> faults =
        assertInstanceOf(ChainFaults.class, PathChain.build(moves, zones)).faults();
    assertEquals(1, faults.size());
    return faults.get(0);
  }

  private static PathChain chain(List<? extends PathCurve> moves, double... zones) {
    return assertInstanceOf(PathChain.class, PathChain.build(moves, zones));
  }

  /** Zones of 45 % of what the middle of each move allows. */
  private static PathChain drawn(List<PathCurve> moves) {
    double[] zones = new double[moves.size() - 1];
    for (int i = 0; i < zones.length; i++) {
      PathCurve before = moves.get(i);
      PathCurve after = moves.get(i + 1);
      Corner corner = new Corner(before, after);
      BlendCheck check = new BlendCheck(i, corner, 0);
      zones[i] = 0.9 * check.largest(before.length() / 2, after.length() / 2);
    }
    return chain(moves, zones);
  }

  private static PathCurve line(double x, double y, double toX, double toY) {
    return LineCurve.between(Pose.at(x, y, 0), Pose.at(toX, toY, 0));
  }
}
