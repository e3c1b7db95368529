package io.github.holdpath.sim.study;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.grip.Cup;
import io.github.holdpath.dynamics.grip.PatchGrip;
import io.github.holdpath.dynamics.grip.SuctionGrip;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionPiece;
import io.github.holdpath.sim.robot.FlangePattern;
import io.github.holdpath.sim.scene.PartShape;
import io.github.holdpath.sim.scene.Scene;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** What looks wrong in a scene that can be read and judged all the same. */
final class Plausibility {
  /** Below this part of the cups' spacing a sheet bends under them (common practice, no source). */
  private static final double THIN = 1.0 / 100;

  private static final double OUTLINE_TOLERANCE = 1e-6;
  private static final double GAP_TOLERANCE = 1e-3;
  private static final double SAME_PLACE = 1e-3;
  private static final double SAME_TURN = 2e-3;
  private static final int OUTLINE_POINTS = 24;

  private final List<String> warnings = new ArrayList<>();
  private final Scene scene;
  private final List<ContactPatch> patches;

  private Plausibility(Scene scene) {
    this.scene = scene;
    this.patches = scene.grip().patches();
  }

  static List<String> warnings(Scene scene, Motion motion) {
    Plausibility p = new Plausibility(scene);
    scene.part().shape().ifPresent(p::checkAgainst);
    MassLook.warning(scene.part()).ifPresent(p.warnings::add);
    p.checkCells();
    p.checkLines();
    p.checkReturn(motion);
    scene.tool().flatMap(Scene.Tool::flange).ifPresent(p::checkFlange);
    return p.warnings;
  }

  private void warn(String format, Object... values) {
    warnings.add(String.format(Locale.ROOT, format, values));
  }

  private void checkFlange(FlangePattern flange) {
    if (!FlangePattern.COMMON.contains(flange.designation())) {
      warn(
          "tool/flange: %s is not one of the patterns often met; check it against the drawing of"
              + " the robot's flange.",
          flange.designation());
    }
  }

  private void checkAgainst(PartShape shape) {
    Vec3 centre = scene.part().shapeCentre();
    for (ContactPatch patch : patches) {
      if (!patch.ledge()) {
        checkPatch(patch, shape, centre);
      }
    }
    checkThin(shape);
    Vec3 com = scene.part().body().centreOfMass().minus(centre);
    Vec3 half = shape.extent().times(0.5);
    double out =
        Math.max(
            Math.abs(com.x()) - half.x(),
            Math.max(Math.abs(com.y()) - half.y(), Math.abs(com.z()) - half.z()));
    if (out > OUTLINE_TOLERANCE) {
      warn(
          "The centre of mass lies %.1f mm outside the part's %s; check part/centreOfMass and"
              + " part/shapeAt.",
          1000 * out, shape.label());
    }
  }

  private void checkCells() {
    if (scene.grip() instanceof SuctionGrip suction && suction.idleCells() > 0) {
      int all = suction.idleCells() + suction.cups().size();
      warn(
          "%d of %d cells of the pad lie off the part or across its edge and count as not pulling;"
              + " make sure that they close, or the vacuum will be less than stated.",
          suction.idleCells(), all);
    }
  }

  private void checkPatch(ContactPatch patch, PartShape shape, Vec3 centre) {
    Vec3 normal = patch.pose().rotation().rotate(new Vec3(0, 0, 1));
    if (shape.aslantTo(normal)) {
      warn(
          "%s meets the part's %s aslant, where it has no face; check the grip's geometry against"
              + " the part's shape.",
          sentence(patch.name()), shape.label());
      return;
    }
    double out = 0;
    for (Vec3 point : outline(patch)) {
      out = Math.max(out, shape.outside(point.minus(centre), normal));
    }
    if (out > OUTLINE_TOLERANCE) {
      warn(
          "%s reaches %.1f mm off the part; move it, take a smaller one or switch it off.",
          sentence(patch.name()), 1000 * out);
    }
    if (!patch.shape().sealed() && patch.pull() > 0 && !shape.flatAlong(normal)) {
      warn(
          "%s lies flat on the curved side of a %s, where a gap opens beside the line of contact and"
              + " takes most of the pull; shape the face to the part, or measure the pull there.",
          sentence(patch.name()), shape.label());
    }
    if (patch.shape().sealed() && !shape.flatAlong(normal)) {
      warn(
          "%s sits on the curved side of a %s; make sure that its lip follows the curve and seals.",
          sentence(patch.name()), shape.label());
    }
    double middle = patch.pose().position().minus(centre).dot(normal);
    boolean outward = middle > 0 && !patch.shape().sealed();
    OptionalDouble hole = shape.hole(normal);
    if (outward && hole.isEmpty()) {
      warn(
          "%s presses outward, but the part's %s has no hole there: whether it reaches the wall is"
              + " not checked; describe the part as a tube.",
          sentence(patch.name()), shape.label());
      return;
    }
    double gap = outward ? hole.getAsDouble() - middle : -middle - shape.reach(normal);
    if (Math.abs(gap) > GAP_TOLERANCE) {
      warn(
          "%s is %.1f mm %s the part's face; check the grip's geometry against the part's size.",
          sentence(patch.name()), 1000 * Math.abs(gap), gap > 0 ? "away from" : "inside");
    }
  }

  /** Points on the edge of a patch, grip frame. */
  private List<Vec3> outline(ContactPatch patch) {
    Vec3 straight = straight(patch);
    // The edge about x is half the extent along y, and the other way round.
    double x = patch.shape().edgeY();
    double y = Double.isInfinite(patch.shape().edgeX()) ? 0 : patch.shape().edgeX();
    List<Vec3> points = new ArrayList<>();
    if (patch.shape().round()) {
      for (int i = 0; i < OUTLINE_POINTS; i++) {
        double angle = 2 * Math.PI * i / OUTLINE_POINTS;
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        points.add(
            patch
                .pose()
                .apply(
                    new Vec3(
                        x * c + Math.signum(c) * straight.x(),
                        y * s + Math.signum(s) * straight.y(),
                        0)));
      }
      return points;
    }
    for (int i = 0; i < 4; i++) {
      points.add(patch.pose().apply(new Vec3((i & 1) == 0 ? x : -x, (i & 2) == 0 ? y : -y, 0)));
    }
    return points;
  }

  /**
   * Half of the straight sides of an oval cup along x and y, which is judged by the circle in it.
   */
  private Vec3 straight(ContactPatch patch) {
    if (scene.grip() instanceof SuctionGrip suction) {
      for (Cup cup : suction.cups()) {
        if (cup.name().equals(patch.name())) {
          double r = cup.diameter();
          return new Vec3((cup.length() - r) / 2, (cup.width() - r) / 2, 0);
        }
      }
    }
    return Vec3.ZERO;
  }

  private void checkThin(PartShape shape) {
    double span = 0;
    double thickness = 0;
    for (ContactPatch a : patches) {
      if (!a.shape().sealed()) {
        continue;
      }
      Vec3 normal = a.pose().rotation().rotate(new Vec3(0, 0, 1));
      Vec3 extent = shape.extent();
      thickness =
          Math.abs(normal.x()) * extent.x()
              + Math.abs(normal.y()) * extent.y()
              + Math.abs(normal.z()) * extent.z();
      double nearest = Double.POSITIVE_INFINITY;
      for (ContactPatch b : patches) {
        if (b != a && b.shape().sealed()) {
          nearest = Math.min(nearest, a.pose().position().minus(b.pose().position()).norm());
        }
      }
      if (nearest < Double.POSITIVE_INFINITY) {
        span = Math.max(span, nearest);
      }
    }
    if (thickness < THIN * span) {
      warn(
          "The part is %.1f mm thick between cups %.0f mm apart: it bends, but the load is shared as"
              + " if it were rigid; set the cups closer or keep more in hand (thinner than 1/100 of"
              + " the spacing: common practice, no source).",
          1000 * thickness, 1000 * span);
    }
  }

  private void checkLines() {
    if (patches.stream().noneMatch(p -> p.shape().label().equals("line"))) {
      return;
    }
    if (scene.grip() instanceof PatchGrip) {
      warn("The pressure of a line of contact is not checked; give a rectangle where it matters.");
    } else {
      warn(
          "A round part in flat or vee pads is judged by its line of contact, whose pressure is not"
              + " checked;"
              + " shape the pads to the part and say so with \"contact\": \"face\".");
    }
  }

  private void checkReturn(Motion motion) {
    Pose start = poseAt(motion.pieces().get(0), 0);
    MotionPiece last = motion.pieces().get(motion.pieces().size() - 1);
    Pose end = poseAt(last, last.to());
    boolean away =
        start.position().minus(end.position()).norm() > SAME_PLACE
            || start.rotation().angleTo(end.rotation()) > SAME_TURN;
    if (away) {
      warn(
          "The route does not return to its start, so the parts per hour leave out the way back; add"
              + " the return moves.");
    }
  }

  private static Pose poseAt(MotionPiece piece, double time) {
    double[] state = new double[MotionState.SIZE];
    piece.state(time, state);
    return MotionState.of(state).pose();
  }

  private static String sentence(String name) {
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }
}
