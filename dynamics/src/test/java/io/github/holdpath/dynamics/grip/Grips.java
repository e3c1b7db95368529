package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sample grips of every kind, with and without form fit. */
final class Grips {
  static final double NO_LIMIT = Double.POSITIVE_INFINITY;
  static final PatchStiffness SOFT = PatchStiffness.ofNormal(20_000);
  static final Ledge SHELF =
      new Ledge("shelf", new Vec3(0, 0, 0.05), new Vec3(0, 0, -2), 0.04, 0.02, 1e6);
  static final JawGuide GUIDE = new JawGuide(0.06, new GuideRating(48, 12, 30, 1000));

  private Grips() {}

  /** A new kind of grip adds its samples here; the contract test names the one forgotten. */
  static List<GripModel> all() {
    List<GripModel> all = new ArrayList<>();
    all.add(fourCups(List.of()));
    all.add(fourCups(List.of(SHELF)));
    for (Mechanism mechanism : Mechanism.values()) {
      all.add(jaws(mechanism, List.of()));
      all.add(jaws(mechanism, List.of(SHELF)));
      all.add(vee(mechanism, Math.toRadians(90), true));
      all.add(centric(mechanism, 3, false, List.of()));
      all.add(centric(mechanism, 5, true, List.of(SHELF)));
      all.add(soft(mechanism, 2, List.of()));
      all.add(soft(mechanism, 4, List.of(SHELF)));
    }
    all.add(magnets(new PatchShape.Disc(0.025), List.of()));
    all.add(magnets(new PatchShape.Rectangle(0.06, 0.04), List.of(SHELF)));
    all.add(patches(Mechanism.SYNCHRONISED));
    all.add(patches(Mechanism.SELF_LOCKING));
    return all;
  }

  static SuctionGrip fourCups(List<Ledge> ledges) {
    List<Cup> cups = new ArrayList<>();
    double pull = Cup.pull(60_000, 0.04, 1);
    for (double x : new double[] {0.1, -0.1}) {
      for (double y : new double[] {0.08, -0.08}) {
        cups.add(new Cup("cup " + (cups.size() + 1), new Vec3(x, y, 0), 0.04, pull, SOFT));
      }
    }
    return new SuctionGrip(cups, ledges, 0.5, 2e5);
  }

  static MagnetGrip magnets(PatchShape shape, List<Ledge> ledges) {
    List<MagnetFace> faces = new ArrayList<>();
    for (double x : new double[] {-0.3, 0.3}) {
      faces.add(new MagnetFace("face " + (faces.size() + 1), new Vec3(x, 0, 0), shape, 240, SOFT));
    }
    return new MagnetGrip(faces, MagnetType.SWITCHED, ledges, 0.15, 2e6);
  }

  /** What a pair of jaws with a shelf yields, written out. */
  static PatchGrip patches(Mechanism mechanism) {
    JawGrip jaws = jaws(mechanism, List.of(SHELF));
    return new PatchGrip(jaws.patches(), jaws.drives(), jaws.closures());
  }

  static JawGrip jaws(Mechanism mechanism, List<Ledge> ledges) {
    return new JawGrip(
        0.04,
        new PatchShape.Rectangle(0.03, 0.015),
        new Vec3(0, 0, 1),
        mechanism,
        200,
        0.3,
        SOFT,
        3e6,
        6e6,
        ledges);
  }

  /** A bar of 40 mm in vee pads, guided 60 mm behind them. */
  static JawGrip vee(Mechanism mechanism, double angle, boolean alongX) {
    return new JawGrip(
        0.04,
        new PatchShape.Line(0.03),
        alongX ? new Vec3(1, 0, 0) : new Vec3(0, 0, 1),
        Optional.of(new Vee(angle)),
        mechanism,
        200,
        0.3,
        SOFT,
        3e6,
        NO_LIMIT,
        List.of(),
        Optional.of(GUIDE));
  }

  /** Pads 30 mm across and 15 mm along z on a circle of 80 mm. */
  static CentricGrip centric(Mechanism mechanism, int count, boolean inside, List<Ledge> ledges) {
    return centric(mechanism, count, inside, Optional.empty(), ledges);
  }

  static CentricGrip centric(
      Mechanism mechanism, int count, boolean inside, Optional<Spin> spin, List<Ledge> ledges) {
    return new CentricGrip(
        count,
        0.08,
        inside,
        new PatchShape.Rectangle(0.03, 0.015),
        false,
        mechanism,
        200,
        spin,
        0.3,
        SOFT,
        3e6,
        6e6,
        ledges,
        Optional.of(GUIDE));
  }

  /** Faces 20 mm across and 30 mm along z on a circle of 60 mm. */
  static SoftGrip soft(Mechanism mechanism, int count, List<Ledge> ledges) {
    return new SoftGrip(
        count, 0.06, 0.02, 0.03, mechanism, 8, 24, 0.6, SOFT, 5e4, NO_LIMIT, ledges);
  }
}
