package io.github.holdpath.sim.report;

import io.github.holdpath.dynamics.margin.FailureMode;
import io.github.holdpath.dynamics.margin.FirstSlip;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionSegment;
import io.github.holdpath.sim.study.StudyResult;

/** Words for results that several texts share. */
final class Words {
  static final String CAUTION =
      "A calculation, not a release to run. It covers the hold of the part on this path alone, no"
          + " collision and no robot strength. A part that comes loose flies on along its path:"
          + " keep people out of its reach. Local rules, the risk assessment and a competent"
          + " person decide; run slowly first, nobody inside.";

  private Words() {}

  /** What holds the part, by the kind of grip as scene files call it. */
  static String grip(String kind) {
    return switch (kind) {
      case "centric" -> "centric jaws";
      case "magnet" -> "magnets";
      case "patches" -> "separate contacts";
      case "soft" -> "soft fingers";
      default -> kind;
    };
  }

  static String move(MotionSegment move) {
    return move.name().isEmpty() ? "move " + move.index() : move.index() + " " + move.name();
  }

  static String segment(StudyResult result, int index) {
    return segment(result.motion(), index);
  }

  /** The same of a motion. */
  static String segment(Motion motion, int index) {
    if (index == 0) {
      return "standing still";
    }
    MotionSegment move = motion.segments().get(index - 1);
    return "move " + index + (move.name().isEmpty() ? "" : " (" + move.name() + ")");
  }

  /** What the first patch does, as a clause. */
  static String happens(FirstSlip first) {
    String patch = first.patchName();
    return switch (first.mode()) {
      case SLIP -> patch + " slips first";
      case TWIST -> patch + " twists first";
      case PEEL -> "the lip of " + patch + " peels first";
      case TIP -> "the part tips over " + patch + " first";
      case RELEASE -> patch + " lets go first";
      case CRUSH -> patch + " crushes the part first";
      case FLOATS -> "nothing in the grip carries this load";
      case NONE -> "no limit is met";
    };
  }

  static String factor(FirstSlip first) {
    return first.mode() == FailureMode.NONE ? "no limit" : Text.number(first.factor(), 3);
  }
}
