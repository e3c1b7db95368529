package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.grip.GripModel;
import io.github.holdpath.sim.scene.field.ObjectSpec;
import io.github.holdpath.sim.scene.field.Values;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Register of the kinds of grip: the fields of each and what builds it from them. */
public enum GripKinds {
  /** Cups that hold by vacuum. */
  SUCTION(SuctionSpec.SPEC, SuctionBuilder::build),
  /** Two jaws that hold by force. */
  JAWS(JawsSpec.SPEC, JawsBuilder::build, true),
  /** Three or more jaws on a circle that hold by force. */
  CENTRIC(CentricSpec.SPEC, CentricBuilder::build, true),
  /** Compliant fingers on a circle. */
  SOFT(SoftSpec.SPEC, SoftBuilder::build, true),
  /** Magnets that hold ferromagnetic parts. */
  MAGNET(MagnetSpec.SPEC, MagnetBuilder::build),
  /** Contact patches written out one by one. */
  PATCHES(PatchesSpec.SPEC, PatchesBuilder::build);

  private final ObjectSpec spec;
  private final Builder builder;
  private final boolean between;

  GripKinds(ObjectSpec spec, Builder builder) {
    this(spec, builder, false);
  }

  GripKinds(ObjectSpec spec, Builder builder, boolean between) {
    this.spec = spec.with(GripFields.DAMPING, GripFields.SETTLE);
    this.builder = builder;
    this.between = between;
  }

  /** Builds a grip from its checked fields. */
  private interface Builder {
    Optional<? extends GripModel> build(Values grip, GripContext context);
  }

  /** Fields of all kinds. */
  public static List<ObjectSpec> specs() {
    return Stream.of(values()).map(kind -> kind.spec).toList();
  }

  private boolean is(Values grip) {
    return grip.spec() == spec;
  }

  /** Whether a part is held between fingers of the grip, so that its shape is centred on it. */
  public static boolean between(Values grip) {
    return of(grip).between;
  }

  /**
   * Builds the grip.
   *
   * @return empty if faults were noted
   */
  public static Optional<? extends GripModel> build(Values grip, GripContext context) {
    return of(grip).builder.build(grip, context);
  }

  private static GripKinds of(Values grip) {
    return Stream.of(values()).filter(kind -> kind.is(grip)).findFirst().orElseThrow();
  }
}
