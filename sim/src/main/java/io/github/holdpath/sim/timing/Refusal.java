package io.github.holdpath.sim.timing;

/** Says why the passes found no timing. */
final class Refusal {
  private Refusal() {}

  static NoTiming of(
      PathRows path, TimingGrid grid, TwoPasses passes, double start, double end, boolean rough) {
    if (grid.cells == 0) {
      return new NoTiming(
          0,
          "length",
          "A path of no length cannot start with the rate "
              + start
              + " and end with another, "
              + end
              + ".");
    }
    int node = passes.place;
    double s = grid.s[node];
    if (passes.blocked >= 0) {
      String name = Governing.name(path, grid, passes.row, node);
      if (rough) {
        return new NoTiming(
            s, name, "Near s = " + s + " " + name + " changes too fast to be kept everywhere.");
      }
      return new NoTiming(s, name, why(grid, passes, name, s));
    }
    if (node == grid.cells) {
      String name = Governing.name(path, grid, CellProgram.CAP, node);
      return new NoTiming(
          s,
          name,
          "The end rate "
              + end
              + " is more than "
              + name
              + " permits there, "
              + Math.sqrt(grid.cap(node))
              + ".");
    }
    return atStart(path, grid, passes, start);
  }

  private static String why(TimingGrid grid, TwoPasses passes, String name, double s) {
    int node = passes.place;
    if (passes.row == CellProgram.CAP && grid.boundless(grid.cap(node))) {
      return "Nothing limits the rate at s = " + s + ": give a limit of speed.";
    }
    if (passes.row == CellProgram.CAP && grid.cap(node) == 0) {
      return "The path stands still at s = " + s + ": " + name + " permits no rate there.";
    }
    return "No rate and acceleration at s = "
        + s
        + " keep "
        + name
        + " and all other limits up to the end of the path.";
  }

  private static NoTiming atStart(PathRows path, TimingGrid grid, TwoPasses passes, double start) {
    int node = passes.place;
    double s = grid.s[node];
    boolean fast = start * start > passes.high[0];
    String name = Governing.name(path, grid, passes.row, node);
    return new NoTiming(
        s,
        name,
        "The start rate "
            + start
            + (fast ? " is too high: at most " : " is too low: at least ")
            + Math.sqrt(fast ? passes.high[0] : passes.low[0])
            + " keeps "
            + name
            + " at s = "
            + s
            + ".");
  }
}
