package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.grip.CentricGrip;
import io.github.holdpath.dynamics.grip.SoftGrip;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.mesh.MeshData;
import io.github.holdpath.viewer.mesh.Shafts;
import io.github.holdpath.viewer.mesh.Solids;
import java.util.ArrayList;
import java.util.List;

/**
 * A simple body of the tool: from the back of every contact a stem or finger to a plate, and from
 * the plate a stem to the flange. A proportion, not the tool's own drawing. In the grip frame.
 */
final class ToolShape {
  /** Cosine from which a contact looks along the tool, so that a straight stem holds it. */
  private static final double ALONG = 0.7;

  /** Room between contacts and plate where no flange is told, per the contacts' spread. */
  private static final double ROOM = 0.35;

  /** Share of the way to the flange at which the plate stands at most. */
  private static final double SHARE = 0.6;

  private final Vec3 up;
  private final double flange;
  private final Vec3 flangeAt;
  private final List<MeshData> bodies = new ArrayList<>();
  private final List<Vec3> ends = new ArrayList<>();
  private double plate;
  private double spread;

  private ToolShape(Scene scene) {
    List<ContactPatch> patches = scene.grip().patches();
    Vec3 told = scene.tool().map(t -> t.flangeToGrip().inverse().position()).orElse(Vec3.ZERO);
    boolean upright = told.norm() == 0 || told.z() < -0.5 * told.norm();
    this.up = upright ? new Vec3(0, 0, -1) : told.unit();
    double highest = Double.NEGATIVE_INFINITY;
    Vec3 first = patches.get(0).pose().position();
    double widest = 0;
    for (ContactPatch p : patches) {
      highest = Math.max(highest, back(p).dot(up));
      widest = Math.max(widest, p.pose().position().minus(first).norm() + width(p));
    }
    // A part that reaches up between fingers must not stick in the plate.
    double part =
        scene
            .part()
            .shape()
            .map(s -> scene.part().shapeCentre().dot(up) + s.reach(up))
            .orElse(highest);
    this.spread = widest;
    double clear = Math.max(highest, patches.stream().allMatch(this::looksAlong) ? highest : part);
    boolean known = told.norm() > 0 && told.dot(up) > clear;
    double far = known ? told.dot(up) : clear + 2 * ROOM * spread;
    this.flange = far;
    this.flangeAt = known ? told : up.times(far);
    this.plate = clear + Math.min(ROOM * spread, SHARE * (far - clear));
    patches.forEach(this::holder);
    frame(!(scene.grip() instanceof CentricGrip || scene.grip() instanceof SoftGrip));
  }

  /** Of a scene, all in one. */
  static MeshData of(Scene scene) {
    return MeshData.joined(new ToolShape(scene).bodies);
  }

  private static double width(ContactPatch p) {
    PatchShape shape = p.shape();
    if (shape instanceof PatchShape.Ring r) {
      return 2 * r.radius();
    }
    if (shape instanceof PatchShape.Disc d) {
      return 2 * d.radius();
    }
    if (shape instanceof PatchShape.Rectangle r) {
      return Math.min(r.a(), r.b());
    }
    return shape instanceof PatchShape.Line l ? 0.3 * l.length() : 0;
  }

  private static Vec3 out(ContactPatch p) {
    return p.pose().rotation().rotate(new Vec3(0, 0, -1));
  }

  /** Where the drawn contact ends. */
  private static Vec3 back(ContactPatch p) {
    return p.pose().position().plus(out(p).times(Actors.BODY * width(p)));
  }

  private boolean looksAlong(ContactPatch p) {
    return out(p).dot(up) > ALONG;
  }

  /** A stem, or a finger, or a finger that comes from below. */
  private void holder(ContactPatch p) {
    double thick = Math.max(0.16 * width(p), 0.012 * spread);
    Vec3 back = back(p);
    Vec3 foot = back;
    if (!looksAlong(p)) {
      thick = Math.max(0.25 * width(p), 0.03 * spread);
      Vec3 away = out(p).minus(up.times(out(p).dot(up)));
      if (away.norm() < ALONG) {
        Vec3 aside = back.minus(up.times(back.dot(up)));
        away = aside.norm() > 0 ? aside.unit() : Shafts.along(back, up).apply(Vec3.ZERO);
      }
      foot = back.plus(away.times(thick));
      link(back, foot, thick);
    }
    Vec3 end = foot.plus(up.times(plate - foot.dot(up)));
    link(foot, end, thick);
    ends.add(end);
  }

  private void link(Vec3 from, Vec3 to, double radius) {
    if (to.minus(from).norm() > 1e-9) {
      bodies.add(Shafts.round(from, to, radius, true, Tones.TOOL_BODY));
    }
  }

  /** The plate over all ends, and the stem to the flange. */
  private void frame(boolean square) {
    Pose axes = Shafts.along(up.times(plate), up);
    double x = 0;
    double y = 0;
    double round = 0;
    for (Vec3 end : ends) {
      Vec3 e = axes.inverse().apply(end);
      x = Math.max(x, Math.abs(e.x()));
      y = Math.max(y, Math.abs(e.y()));
      round = Math.max(round, Math.hypot(e.x(), e.y()));
    }
    double rim = 0.06 * spread;
    double thick = Math.min(0.08 * spread, 0.5 * (flange - plate));
    Pose at = axes.times(Pose.at(0, 0, thick / 2));
    if (square) {
      bodies.add(Solids.box(at, new Vec3(2 * (x + rim), 2 * (y + rim), thick), Tones.TOOL_BODY));
    } else {
      bodies.add(Solids.cylinder(at, round + rim, 0, thick, Tones.TOOL_BODY));
    }
    link(up.times(plate + thick), flangeAt, Math.max(0.05 * spread, 0.3 * rim));
  }
}
