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
  JAWS(JawsSpec.SPEC, JawsBuilder::build);

  private final ObjectSpec spec;
  private final Builder builder;

  GripKinds(ObjectSpec spec, Builder builder) {
    this.spec = spec.with(GripFields.DAMPING, GripFields.SETTLE);
    this.builder = builder;
  }

  /** Builds a grip from its checked fields. */
  private interface Builder {
    Optional<? extends GripModel> build(Values grip, GripContext context);
  }

  /** Fields of all kinds. */
  public static List<ObjectSpec> specs() {
    return Stream.of(values()).map(kind -> kind.spec).toList();
  }

  /** Whether a grip's fields are those of this kind. */
  public boolean is(Values grip) {
    return grip.spec() == spec;
  }

  /**
   * Builds the grip.
   *
   * @return empty if faults were noted
   */
  public static Optional<? extends GripModel> build(Values grip, GripContext context) {
    return Stream.of(values())
        .filter(kind -> kind.is(grip))
        .findFirst()
        .orElseThrow()
        .builder
        .build(grip, context);
  }
}
