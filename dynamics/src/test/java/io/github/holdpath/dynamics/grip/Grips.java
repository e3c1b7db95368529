package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.ArrayList;
import java.util.List;

/** Sample grips of every kind, with and without form fit. */
final class Grips {
  static final double NO_LIMIT = Double.POSITIVE_INFINITY;
  static final PatchStiffness SOFT = PatchStiffness.ofNormal(20_000);
  static final Ledge SHELF =
      new Ledge("shelf", new Vec3(0, 0, 0.05), new Vec3(0, 0, -2), 0.04, 0.02, 1e6);

  private Grips() {}

  /** A new kind of grip adds its samples here; the contract test names the one forgotten. */
  static List<GripModel> all() {
    List<GripModel> all = new ArrayList<>();
    all.add(fourCups(List.of()));
    all.add(fourCups(List.of(SHELF)));
    for (Mechanism mechanism : Mechanism.values()) {
      all.add(jaws(mechanism, List.of()));
      all.add(jaws(mechanism, List.of(SHELF)));
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
}
