package io.github.holdpath.sim.surface;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Table of static friction by pair of materials and state of their surfaces. */
public final class FrictionPairs {
  private final List<FrictionRange> ranges;

  private FrictionPairs(List<FrictionRange> ranges) {
    this.ranges = List.copyOf(ranges);
  }

  /** Reads the table that comes with the program. */
  public static FrictionPairs load() {
    return new FrictionPairs(
        Table.rows("friction.csv", 6).stream().map(FrictionPairs::range).toList());
  }

  private static FrictionRange range(List<String> row) {
    return new FrictionRange(
        row.get(0),
        row.get(1),
        SurfaceState.of(row.get(2)).orElseThrow(),
        Double.parseDouble(row.get(3)),
        Double.parseDouble(row.get(4)),
        row.get(5).replace(" | ", "; "));
  }

  /** All ranges, in the order of the table. */
  public List<FrictionRange> all() {
    return ranges;
  }

  /** The range of two materials in a state; the order of the two and capitals do not matter. */
  public Optional<FrictionRange> find(String one, String other, SurfaceState state) {
    return between(one, other).filter(r -> r.state() == state).findFirst();
  }

  /** States in which two materials are known; empty if they are not known together. */
  public List<SurfaceState> states(String one, String other) {
    return between(one, other).map(FrictionRange::state).toList();
  }

  private Stream<FrictionRange> between(String one, String other) {
    return ranges.stream().filter(r -> r.of(one, other));
  }

  /** Names of all materials, in the order of the table. */
  public List<String> materials() {
    return ranges.stream().flatMap(r -> Stream.of(r.one(), r.other())).distinct().toList();
  }

  /** Materials that are known together with one. */
  public List<String> partners(String material) {
    return ranges.stream()
        .filter(r -> r.one().equalsIgnoreCase(material) || r.other().equalsIgnoreCase(material))
        .map(r -> r.one().equalsIgnoreCase(material) ? r.other() : r.one())
        .distinct()
        .toList();
  }
}
