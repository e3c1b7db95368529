package io.github.holdpath.sim.study;

import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.scene.Scene;
import java.util.List;
import java.util.Optional;

/**
 * Everything a check found out. Reports and pictures read this and compute no mechanics.
 *
 * @param scene what was judged
 * @param motion the motion that was judged
 * @param requiredSafety S
 * @param verdict whether the least factor keeps S, swinging too where the grip's stiffness is known
 * @param worst least factor of the continuous motion while the part is held, rigid on its grip
 * @param drop least whole-grip factor: beyond it nothing holds the part
 * @param speedHeadroom largest k at which the whole job keeps S, 0 to 100
 * @param speedHeadroomLimit the same for a safety of 1
 * @param segments the moves in order
 * @param give how the part swings on its grip; empty where that is not known
 * @param helps what would raise the least factor most, the best first
 * @param peaks largest loads
 * @param payload what the flange carries; empty where the scene has no tool
 * @param preload use of the permitted pressure at rest; empty where no pressure limit applies
 * @param guide most loaded guide of a jaw; empty where none is told
 * @param joints what the motion asks of the robot's joints; empty where there is no robot
 * @param assumptions what the numbers rest on, a sentence each
 * @param warnings what looks wrong, a sentence each
 */
public record StudyResult(
    Scene scene,
    Motion motion,
    double requiredSafety,
    Verdict verdict,
    Worst worst,
    DropBound drop,
    double speedHeadroom,
    double speedHeadroomLimit,
    List<SegmentResult> segments,
    Optional<GiveResult> give,
    List<Help> helps,
    Peaks peaks,
    Optional<Payload> payload,
    Optional<PreloadUse> preload,
    Optional<GuideUse> guide,
    Optional<JointUse> joints,
    List<String> assumptions,
    List<String> warnings) {
  /** Copies the lists. */
  public StudyResult {
    segments = List.copyOf(segments);
    helps = List.copyOf(helps);
    assumptions = List.copyOf(assumptions);
    warnings = List.copyOf(warnings);
  }

  /** Least first-slip factor, dimensionless. */
  public double factor() {
    return worst.first().factor();
  }

  /** Least factor per required safety; the job passes from 1. */
  public double margin() {
    return factor() / requiredSafety;
  }

  /** Time of one cycle, s. */
  public double cycleTime() {
    return motion.duration();
  }

  /** Time for which the part is held, s. */
  public double heldTime() {
    return Math.max(0, motion.heldTo() - motion.heldFrom());
  }

  /** Cycles in an hour without a pause between them. */
  public double partsPerHour() {
    return 3600 / cycleTime();
  }
}
