package io.github.holdpath.sim.report;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.Drive;
import io.github.holdpath.dynamics.grip.GuideLoad;
import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.margin.FailureMode;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.dynamics.margin.LimitUse;
import io.github.holdpath.dynamics.margin.SpeedHeadroom;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.study.Explanation;
import io.github.holdpath.sim.study.SwingAt;
import java.util.List;
import java.util.Locale;

/** The whole sum at one instant, step by step, to be followed with a pocket calculator. */
public final class ExplainReport {
  private static final int DIGITS = 6;

  /** Two factors closer than this are one and the same limit. */
  private static final double ROUNDING = 1e-9;

  private static final int COLUMN = 11;

  private final Explanation e;
  private final Scene scene;
  private final StringBuilder out = new StringBuilder();

  private ExplainReport(Explanation explanation) {
    this.e = explanation;
    this.scene = explanation.scene();
  }

  /** The whole text, lines ended by a line feed. */
  public static String text(Explanation explanation) {
    return new ExplainReport(explanation).write();
  }

  private String write() {
    line(scene.title());
    line(
        "At "
            + Text.fixed(e.time(), 4)
            + " s, "
            + (e.segment() == 0 ? "before the first move" : "move " + e.segment())
            + (e.held() ? ", part held." : ". The part is not held here; if it were:"));
    line("Forces in N, moments in N m, lengths in m. World axes W (z up), grip axes T");
    line("(z out of the tool into the part); vectors as x, y, z; x between vectors is the");
    line("cross product. Step by step as in docs/theory/load-and-hold.md.");
    motion();
    law();
    force();
    moment();
    shares();
    limits();
    factor();
    out.append('\n');
    Text.wrap(out, "Caution: ", "  ", Words.CAUTION);
    return out.toString();
  }

  private void motion() {
    MotionState s = e.state();
    Quaternion q = s.pose().rotation();
    head("1 Motion of the grip frame (world axes)");
    vector("position p", s.pose().position(), "m");
    line(
        "  rotation q (w x y z)      "
            + figure(q.w())
            + "  "
            + figure(q.x())
            + "  "
            + figure(q.y())
            + "  "
            + figure(q.z()));
    vector("velocity v", s.velocity(), "m/s");
    vector("acceleration a", s.acceleration(), "m/s^2");
    vector("angular velocity omega", s.angularVelocity(), "rad/s");
    vector("angular accel. alpha", s.angularAcceleration(), "rad/s^2");
  }

  private void law() {
    head("Law of the move at this instant");
    LawWords.lines(e.law()).forEach(this::line);
  }

  private void force() {
    Vec3 g = scene.site().gravity();
    double m = scene.part().body().mass();
    head("2 Force that the grip puts on the part: F = m (a_c - g)" + (hasAir() ? " + air" : ""));
    vector("centre of mass c in T", scene.part().body().centreOfMass(), "m");
    vector("arm r = R c in W", e.arm(), "m");
    line("  a_c = a + alpha x r + omega x (omega x r), R the rotation of T");
    vector("a_c in W", e.centreAcceleration(), "m/s^2");
    vector("g in W", g, "m/s^2");
    Vec3 rigid = e.centreAcceleration().minus(g).times(m);
    vector("m (a_c - g) in W, m = " + Text.number(m, DIGITS), rigid, "N");
    if (hasAir()) {
      Quaternion q = e.state().pose().rotation();
      Vec3 air = q.rotate(e.load().total().force()).minus(rigid);
      AirLoad a = scene.part().air();
      line("  air: 1/2 rho Cd A |v_c| v_c + m_a (n . a_c) n, v_c velocity of the centre,");
      line(
          "  rho Cd A = "
              + Text.number(a.density() * a.dragArea(), 4)
              + " kg/m, carried air m_a = "
              + Text.number(a.addedMass(), 4)
              + " kg along the normal n");
      vector("air in W", air, "N");
    }
    vector("F in T = R^T F", e.load().total().force(), "N");
    vector("  of it gravity", e.load().gravity().force(), "N");
    vector("  of it motion", e.load().motion().force(), "N");
  }

  private boolean hasAir() {
    return scene.part().air().dragArea() > 0 || scene.part().air().addedMass() > 0;
  }

  private void moment() {
    var i = scene.part().body().inertia();
    Vec3 moment = e.load().total().moment();
    Vec3 arm = scene.part().body().centreOfMass().cross(e.load().total().force());
    head("3 Moment about the grip frame's origin, in T");
    line("  M = c x F + I alpha + omega x I omega");
    vector("c x F", arm, "N m");
    line(
        "  I about c (kg m^2)        xx "
            + figure(i.xx())
            + "  yy "
            + figure(i.yy())
            + "  zz "
            + figure(i.zz()));
    if (i.xy() != 0 || i.xz() != 0 || i.yz() != 0) {
      line(
          "                            xy "
              + figure(i.xy())
              + "  xz "
              + figure(i.xz())
              + "  yz "
              + figure(i.yz()));
    }
    vector("I alpha + omega x I omega", moment.minus(arm), "N m");
    vector("M", moment, "N m");
  }

  private void shares() {
    List<ContactPatch> patches = scene.grip().patches();
    List<Drive> drives = scene.grip().drives();
    double[] give = e.give();
    boolean alike =
        patches.stream().allMatch(p -> p.stiffness().equals(PatchStiffness.ALIKE) || p.ledge());
    head("4 Shares: the part shifts by d and turns by t on its springs");
    if (alike) {
      line("  No stiffness is given: kn = 1 and ks = 2/3 N/m stand for all patches. Only");
      line("  their ratios count for the shares; d and t are then no real movements.");
    }
    vector("d", new Vec3(give[0], give[1], give[2]), "m");
    vector("t", new Vec3(give[3], give[4], give[5]), "rad");
    for (int k = 0; k < drives.size(); k++) {
      line("  drive " + (k + 1) + " moves by " + figure(give[6 + k]) + " m along its closing axes");
    }
    line("  They are such that the shares add up to F and M. A patch at p moves by");
    line(
        "  u = d + t x p"
            + (drives.isEmpty() ? "" : " and with its drive")
            + ". Its share of the load, in its own axes:");
    line("    fx = ks ux, fy = ks uy (along the contact), n = kn uz (pressing),");
    line("    mx = kx tx, my = ky ty (tilting), mz = kz tz (twisting)");
    out.append('\n');
    row("stiffness", "kn", "ks", "kx", "ky", "kz");
    row("", "N/m", "N/m", "N m/rad", "N m/rad", "N m/rad");
    for (ContactPatch p : patches) {
      double kn = p.stiffness().normal();
      double ks = p.ledge() ? 0 : p.stiffness().shear();
      double turn = p.ledge() ? 0 : 1;
      PatchShape shape = p.shape();
      row(
          p.name(),
          kn,
          ks,
          turn * kn * shape.tiltX(),
          turn * kn * shape.tiltY(),
          ks * shape.torsion());
    }
    out.append('\n');
    row("place p", "x", "y", "z");
    for (ContactPatch p : patches) {
      Vec3 at = p.pose().position();
      row(p.name(), at.x(), at.y(), at.z());
    }
    axes(patches);
    out.append('\n');
    row("share", "fx", "fy", "n", "mx", "my", "mz");
    Wrench sum = Wrench.ZERO;
    for (int k = 0; k < patches.size(); k++) {
      Wrench w = e.shares().get(k);
      sum = sum.plus(w.seenFrom(patches.get(k).pose()));
      row(patches.get(k).name(), w.toArray());
    }
    row("sum about T", sum.toArray());
    line("  The sum is F and M of steps 2 and 3.");
  }

  /** Axes of the patches that are turned against the grip frame. */
  private void axes(List<ContactPatch> patches) {
    List<String> names = List.of("x", "y", "z");
    List<Vec3> units = List.of(new Vec3(1, 0, 0), new Vec3(0, 1, 0), new Vec3(0, 0, 1));
    boolean first = true;
    for (ContactPatch p : patches) {
      if (p.pose().rotation().angleTo(Quaternion.IDENTITY) < 1e-9) {
        continue;
      }
      if (first) {
        out.append('\n');
        row("axes in T", "x", "y", "z");
        first = false;
      }
      for (int k = 0; k < 3; k++) {
        Vec3 axis = p.pose().rotation().rotate(units.get(k));
        row(Text.left(p.name(), 10) + " " + names.get(k), axis.x(), axis.y(), axis.z());
      }
    }
  }

  private void limits() {
    List<ContactPatch> patches = scene.grip().patches();
    head("5 Limits: each is met at the factor reserve / demand");
    LimitWords.legend(e.limits()).forEach(this::line);
    line("  N0 is the preload of a patch: its normal force without load.");
    out.append('\n');
    line("  patch        limit              reserve      demand      factor");
    for (int k = 0; k < patches.size(); k++) {
      for (LimitUse l : e.limits().get(k)) {
        double factor = l.factor();
        line(
            "  "
                + Text.left(patches.get(k).name(), 12)
                + " "
                + Text.left(l.label(), 17)
                + Text.right(Text.number(l.reserve(), 5), 9)
                + Text.right(Text.number(l.demand(), 5), 12)
                + Text.right(factor >= 1e4 ? "no limit" : Text.number(factor, 5), 12)
                + (l.failing() ? "" : "  not failing"));
      }
    }
    if (e.first().patch() >= 0) {
      slipFormula(e.first().patch());
    }
  }

  /** The friction limit of the patch that goes first, with its numbers put in. */
  private void slipFormula(int patch) {
    ContactPatch p = scene.grip().patches().get(patch);
    if (p.ledge()) {
      return;
    }
    Wrench w = e.shares().get(patch);
    double fx = w.force().x();
    double fy = w.force().y();
    double n = w.force().z();
    double torsion = Math.abs(w.moment().z()) / p.shape().torsionRadius();
    out.append('\n');
    line(
        "  How "
            + p.name()
            + " comes to it ("
            + p.shape().label()
            + ", mu "
            + Text.number(p.friction(), 4)
            + ", preload N0 "
            + Text.number(p.preload(), DIGITS)
            + " N):");
    line("  torsion radius e = " + figure(p.shape().torsionRadius()) + " m");
    line("  M = |mz| / e = " + figure(torsion) + " N (the twist as a force at the radius e)");
    double g;
    if (p.shape().round()) {
      double f = Math.hypot(fx, fy);
      double c = p.shape().crossX();
      g = Math.sqrt(f * f + 2 * c * f * torsion + torsion * torsion);
      line("  f = sqrt(fx^2 + fy^2) = " + figure(f) + " N");
      line("  G = sqrt(f^2 + 2 c f M + M^2) = " + figure(g) + " N, cross term c = " + figure(c));
    } else {
      double cx = p.shape().crossX();
      double cy = p.shape().crossY();
      double cross = cx * Math.abs(fx) + cy * Math.abs(fy);
      g = Math.sqrt(fx * fx + fy * fy + 2 * cross * torsion + torsion * torsion);
      line("  G = sqrt(fx^2 + fy^2 + 2 (cx |fx| + cy |fy|) M + M^2),");
      line(
          "    cross terms cx = "
              + figure(cx)
              + ", cy = "
              + figure(cy)
              + ": G = "
              + figure(g)
              + " N");
    }
    double demand = g - p.friction() * n;
    double reserve = p.friction() * p.preload();
    line("  slip or twist: mu N0 / (G - mu n) = " + LimitWords.quotient(reserve, demand));
    LimitWords.tilt(p, w).forEach(this::line);
    LimitWords.release(p, w).ifPresent(this::line);
  }

  private void factor() {
    head("6 Factor");
    if (e.first().mode() == FailureMode.FLOATS) {
      line("  The grip carries nothing of this part of the load, so the factor is 0:");
      vector("force not carried", e.uncarried().force(), "N");
      vector("moment not carried", e.uncarried().moment(), "N m");
      return;
    }
    boolean none = e.first().mode() == FailureMode.NONE;
    line(
        "  least over all failing limits: "
            + (none ? "no limit" : figure(e.first().factor()) + ": " + Words.happens(e.first())));
    if (!none) {
      line(
          "  margin = factor / required safety = "
              + figure(e.first().factor())
              + " / "
              + Text.number(e.requiredSafety(), 4)
              + " = "
              + figure(e.first().factor() / e.requiredSafety())
              + (e.first().factor() < e.requiredSafety() ? ": does not pass" : ": passes"));
      if (e.opening() < e.first().factor() * (1 - ROUNDING)) {
        Text.wrap(
            out,
            "  ",
            "  ",
            "A pad begins to lift at an edge at factor "
                + figure(e.opening())
                + ", before that: shares beyond it are approximate.");
      }
    }
    line("  speed headroom at this time: " + headroom(e.speedHeadroom()));
    line("    (played k times as fast, gravity's part stays, motion's part grows as k^2)");
    line("  with nothing in hand (safety 1): " + headroom(e.speedHeadroomLimit()));
    if (!none && e.careful().factor() < e.first().factor() * (1 - ROUNDING)) {
      Text.wrap(
          out,
          "  ",
          "  ",
          "Taken with care, with the pressure off the middle of tilted contacts, "
              + e.careful().patchName()
              + " slips at "
              + figure(e.careful().factor())
              + ".");
    }
    dropBound();
    e.swing().ifPresent(this::swing);
    e.guides().forEach(this::guide);
  }

  private static String headroom(double k) {
    if (k >= SpeedHeadroom.LARGEST) {
      return "any: the motion's part meets no limit";
    }
    return k == 0 ? "none: the weight alone is too much" : "x" + figure(k);
  }

  private void dropBound() {
    if (e.whole().factor() >= HoldModel.NO_LIMIT) {
      line("  drop bound: none; contacts may creep, but any such load is carried");
      return;
    }
    line("  drop bound, beyond which nothing holds: " + figure(e.whole().upper()));
    line("    (contact forces inside all limits were found up to " + figure(e.whole().factor()));
    line("    times the load; contacts creep before, so it is not to design by)");
  }

  private void swing(SwingAt swing) {
    head("7 Swing of the part on its grip (docs/theory/give.md)");
    vector("force carried, in T", swing.carried().force(), "N");
    vector("moment carried, in T", swing.carried().moment(), "N m");
    line("  off its rest under gravity    " + figure(swing.swing()) + " m");
    line(
        "  factor under it: "
            + (swing.first().unlimited()
                ? "no limit"
                : figure(swing.first().factor()) + ": " + Words.happens(swing.first())));
  }

  private void guide(GuideLoad guide) {
    head("Guide of " + guide.guide().name() + ", its axes: across, closing, along z of T");
    vector("force on it", guide.load().force(), "N");
    vector("moment on it", guide.load().moment(), "N m");
    line("  part of its rating: " + figure(guide.use()) + " (moments and force added up)");
  }

  private void head(String title) {
    out.append('\n').append(title).append('\n');
  }

  private void line(String s) {
    out.append(s.stripTrailing()).append('\n');
  }

  private void vector(String name, Vec3 v, String unit) {
    line(
        "  "
            + Text.left(name, 30)
            + apart(figure(v.x()), 13)
            + apart(figure(v.y()), 13)
            + apart(figure(v.z()), 13)
            + " "
            + unit);
  }

  private void row(String name, String... columns) {
    StringBuilder s = new StringBuilder("  " + Text.left(name, 12));
    for (String column : columns) {
      s.append(Text.right(column, COLUMN));
    }
    line(s.toString());
  }

  private void row(String name, double... values) {
    String[] columns = new String[values.length];
    for (int i = 0; i < values.length; i++) {
      columns[i] = column(values[i]);
    }
    row(name, columns);
  }

  /** With six digits, or as many as leave a space between columns. */
  private static String column(double v) {
    if (Math.abs(v) < 1e-9) {
      return "0";
    }
    boolean plain = Math.abs(v) >= 1e-3 && Math.abs(v) < 1e6;
    String s = plain ? figure(v) : String.format(Locale.ROOT, "%.3e", v);
    return s.length() < COLUMN ? s : Text.number(v, DIGITS - 1);
  }

  /** Set to the right with a space in front, however long. */
  private static String apart(String s, int width) {
    return " " + Text.right(s, width - 1);
  }

  static String figure(double v) {
    if (Math.abs(v) < 1e-12) {
      return "0";
    }
    return Math.abs(v) < 1e-4 ? String.format(Locale.ROOT, "%.4e", v) : Text.number(v, DIGITS);
  }
}
