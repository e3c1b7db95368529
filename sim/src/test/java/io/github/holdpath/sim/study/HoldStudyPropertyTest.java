package io.github.holdpath.sim.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.margin.SpeedHeadroom;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.sim.DrawnJobs;
import io.github.holdpath.sim.Jobs;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.motion.route.Route;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.timelaw.LawKind;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The study against brute force, and what its speed headroom means, on drawn jobs. */
class HoldStudyPropertyTest {
  private static final int JOBS = 60;
  private static final int CAM_JOBS = 20;
  private static final int DENSE = 30_000;

  private static final int MOTIONS = 500;
  private static final int DENSER = 20;

  /** What the study promises: the least factor is met within this part of itself. */
  private static final double PROMISED = 1e-4;

  /** The headroom is a root found to 1e-12 at an instant found to a millionth of a step. */
  private static final double HEADROOM = 1e-6;

  private static final double ALGEBRA = 1e-12;

  @Test
  void denseSamplesFindNothingWorseAndNoLessBad() {
    int telling = 0;
    for (int i = 0; i < JOBS; i++) {
      telling += tells(new DrawnJobs(1000 + i).next(i), i);
    }
    assertTrue(telling > JOBS / 4, "jobs that tell something: " + telling);
  }

  @ParameterizedTest
  @EnumSource(names = {"QUINTIC", "MODIFIED_SINE", "CYCLOIDAL"})
  void norUnderACamLaw(LawKind law) {
    int telling = 0;
    for (int i = 0; i < CAM_JOBS; i++) {
      telling += tells(new DrawnJobs(3000 + i).next(i, law), i);
    }
    assertTrue(telling > CAM_JOBS / 4, "jobs that tell something: " + telling);
  }

  /** Compares one job with dense samples; 1 if neither factor nor headroom is at a bound. */
  private static int tells(Scene scene, int i) {
    StudyResult result = HoldStudy.run(scene, scene.requiredSafety());
    Dense dense = new Dense(result);
    double least = Double.POSITIVE_INFINITY;
    double slowest = SpeedHeadroom.LARGEST;
    for (SegmentResult s : result.segments()) {
      int k = s.move().index();
      String where = "job " + i + ", move " + k;
      double factor = s.worst().orElseThrow().first().factor();
      assertNear(dense.factor[k], factor, where);
      assertNear(dense.headroom[k], s.speedHeadroom(), where + ", headroom");
      least = Math.min(least, factor);
      slowest = Math.min(slowest, s.speedHeadroom());
    }
    assertEquals(least, result.factor());
    assertEquals(slowest, result.speedHeadroom());
    return least > 0.1 && slowest > 0 && slowest < SpeedHeadroom.LARGEST ? 1 : 0;
  }

  /** On many more motions, the least factor alone, sampled twenty times as densely as judged. */
  @Test
  void samplesTwentyTimesAsDenseFindNothingWorseOnManyMotions() {
    double step = HoldStudy.STEP / DENSER;
    IntStream.range(0, MOTIONS)
        .parallel()
        .forEach(
            i -> {
              Scene scene = new DrawnJobs(5000 + i).next(i);
              StudyResult result = HoldStudy.run(scene, scene.requiredSafety());
              double dense = leastFactor(result, step);
              assertTrue(
                  dense >= result.factor() * (1 - PROMISED),
                  "motion " + i + ": dense " + dense + " < " + result.factor());
            });
  }

  private static double leastFactor(StudyResult result, double step) {
    Scene scene = result.scene();
    Motion motion = result.motion();
    HoldModel hold = HoldModel.of(scene.grip());
    HoldModel.Workspace ws = hold.workspace();
    LoadModel loads =
        new LoadModel(scene.part().body(), scene.site().gravity(), scene.part().air());
    double[] state = new double[MotionState.SIZE];
    double[] load = new double[LoadModel.SIZE];
    double[] scratch = new double[9];
    double least = HoldModel.NO_LIMIT;
    for (MotionPiece piece : motion.pieces()) {
      double from = Math.max(piece.from(), motion.heldFrom());
      double to = Math.min(piece.to(), motion.heldTo());
      int count = piece.still() ? 1 : (int) Math.ceil((to - from) / step);
      for (int i = 0; from < to && i <= count; i++) {
        piece.state(Math.min(to, from + (to - from) * i / count), state);
        loads.required(state, load, scratch);
        for (int j = 0; j < 6; j++) {
          load[j] += load[6 + j];
        }
        least = Math.min(least, 1 / hold.use(load, 0, ws));
      }
    }
    return least;
  }

  private static void assertNear(double dense, double reported, String where) {
    assertTrue(dense >= reported * (1 - PROMISED), where + ": dense " + dense + " < " + reported);
    assertTrue(reported <= dense * (1 + PROMISED), where + ": " + reported + " > dense " + dense);
  }

  @Test
  void worstInstantHasTheReportedFactor() {
    for (int i = 0; i < JOBS; i++) {
      Scene scene = new DrawnJobs(1000 + i).next(i);
      StudyResult result = HoldStudy.run(scene, scene.requiredSafety());
      HoldModel hold = HoldModel.of(scene.grip());
      LoadModel loads =
          new LoadModel(scene.part().body(), scene.site().gravity(), scene.part().air());
      Worst worst = result.worst();
      var load = loads.required(worst.state());
      assertEquals(load, worst.load());
      assertEquals(worst.first(), hold.firstSlip(load.total()));
      Explanation told = Explanation.at(scene, scene.requiredSafety(), worst.time());
      assertEquals(result.factor(), told.first().factor(), ALGEBRA * result.factor(), "job " + i);
    }
  }

  @Test
  void playedAtItsHeadroomAJobJustHolds() {
    int played = 0;
    for (int i = 0; i < JOBS; i++) {
      Scene scene = new DrawnJobs(1000 + i).next(i);
      double safety = scene.requiredSafety();
      double k = HoldStudy.run(scene, safety).speedHeadroom();
      if (k > 0 && k < SpeedHeadroom.LARGEST) {
        assertEquals(safety, factorAt(scene, k), HEADROOM * safety, "job " + i + ", k " + k);
        for (double slower : new double[] {0.95, 0.6, 0.2}) {
          assertTrue(factorAt(scene, slower * k) >= safety * (1 - PROMISED), "job " + i);
        }
        played++;
      }
    }
    assertTrue(played > JOBS / 4, "jobs played: " + played);
  }

  private static double factorAt(Scene scene, double k) {
    Route quick = Jobs.faster((Route) scene.motion(), k);
    return HoldStudy.run(Jobs.with(scene, scene.part(), quick), scene.requiredSafety()).factor();
  }

  @Test
  void headroomIsNothingOnlyWhereGravityAloneIsTooMuch() {
    int none = 0;
    for (int i = 0; i < JOBS; i++) {
      Scene scene = new DrawnJobs(1000 + i).next(i);
      StudyResult result = HoldStudy.run(scene, scene.requiredSafety());
      boolean fails = new Dense(result).mostUseOfGravity > 1;
      assertEquals(fails, result.speedHeadroom() == 0, "job " + i);
      none += fails ? 1 : 0;
    }
    assertTrue(none > 2 && none < JOBS - 10, "jobs that gravity alone fails: " + none);
  }

  /** The least of many samples, by move; the waits count to the move before them. */
  private static final class Dense {
    final double[] factor;
    final double[] headroom;
    double mostUseOfGravity;

    Dense(StudyResult result) {
      Motion motion = result.motion();
      factor = new double[motion.segments().size() + 1];
      headroom = new double[factor.length];
      for (int k = 0; k < factor.length; k++) {
        factor[k] = HoldModel.NO_LIMIT;
        headroom[k] = SpeedHeadroom.LARGEST;
      }
      Scene scene = result.scene();
      HoldModel hold = HoldModel.of(scene.grip());
      HoldModel.Workspace ws = hold.workspace();
      SpeedHeadroom speed = new SpeedHeadroom(hold, result.requiredSafety(), ws);
      LoadModel loads =
          new LoadModel(scene.part().body(), scene.site().gravity(), scene.part().air());
      double[] state = new double[MotionState.SIZE];
      double[] load = new double[LoadModel.SIZE];
      double[] whole = new double[6];
      double[] scratch = new double[9];
      for (MotionPiece piece : motion.pieces()) {
        double from = Math.max(piece.from(), motion.heldFrom());
        double to = Math.min(piece.to(), motion.heldTo());
        int count = (int) Math.ceil(DENSE * (to - from) / motion.duration());
        int k = Math.max(1, piece.segment());
        for (int i = 0; from < to && i <= count; i++) {
          piece.state(Math.min(to, from + (to - from) * i / count), state);
          loads.required(state, load, scratch);
          for (int j = 0; j < 6; j++) {
            whole[j] = load[j] + load[6 + j];
          }
          factor[k] = Math.min(factor[k], 1 / hold.use(whole, 0, ws));
          double bound = headroom[k] * headroom[k];
          headroom[k] = Math.min(headroom[k], Math.sqrt(speed.squared(load, bound)));
          for (int j = 0; j < 6; j++) {
            whole[j] = result.requiredSafety() * load[j];
          }
          mostUseOfGravity = Math.max(mostUseOfGravity, hold.use(whole, 0, ws));
        }
      }
    }
  }
}
