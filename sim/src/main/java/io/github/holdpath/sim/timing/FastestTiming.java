package io.github.holdpath.sim.timing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds the fastest timing of a path within the limits of its rows (theory, section 5.13). An
 * instance is a workspace that can be used again and then allocates nothing until {@link #result}
 * is asked for: one for each thread.
 *
 * <p>Acceleration along the path jumps; for a drive that cannot follow a jump see {@link JerkPass}.
 *
 * @see "Pham and Pham: A new approach to time-optimal path parameterization based on reachability
 *     analysis, IEEE Transactions on Robotics 34 (2018), for the two passes"
 */
public final class FastestTiming {
  /** Rounds of extra rows after which cells that still break a limit are halved. */
  private static final int ROUNDS = 12;

  /** How often the cells are given new bends before they are halved. */
  private static final int BENDS = 1;

  /** Part of the largest error of a cell above which cells are halved. */
  private static final double SHARE = 0.3;

  /**
   * Share of the tolerance by which a limit may be broken before a cell is halved rather than given
   * an extra row, which costs about so much speed in the whole cell.
   */
  private static final double COARSE = 0.2;

  /** Multiples of the most cells up to which limits between the nodes may ask for more. */
  private static final int ROUGH = 4;

  /** Cells are not made shorter than this part of the path. */
  private static final double SHORTEST = 1e-9;

  private final TimingGrid grid = new TimingGrid();
  private final TwoPasses passes = new TwoPasses();
  private final DurationError error = new DurationError();
  private final BetweenNodes between = new BetweenNodes();
  private @Nullable PathRows asked;
  private double start;
  private double end;
  private double duration;
  private double estimate;
  private boolean found;

  /** Whether the search was given up because a limit is broken between nodes however near. */
  private boolean rough;

  /** A workspace without memory yet. */
  public FastestTiming() {}

  /**
   * The fastest timing from rest to rest, or why there is none.
   *
   * @param path what limits the timing
   * @param goal how finely to look
   */
  public static TimingResult of(PathRows path, TimingGoal goal) {
    FastestTiming fastest = new FastestTiming();
    fastest.solve(path, 0, 0, goal);
    return fastest.result();
  }

  /**
   * Looks for the fastest timing.
   *
   * @param path what limits the timing
   * @param startRate s' at the start, at least 0, 1/s in the unit of the path
   * @param endRate s' at the end, at least 0
   * @param goal how finely to look
   * @return whether there is one
   * @throws IllegalArgumentException if a rate is negative or not finite, or the path gives values
   *     that are none
   */
  public boolean solve(PathRows path, double startRate, double endRate, TimingGoal goal) {
    positive("startRate", startRate);
    positive("endRate", endRate);
    positive("length of path", path.length());
    asked = path;
    start = startRate;
    end = endRate;
    estimate = Double.POSITIVE_INFINITY;
    rough = false;
    if (path.length() == 0) {
      grid.cells = 0;
      duration = 0;
      estimate = 0;
      found = startRate == endRate;
      return found;
    }
    grid.begin(path, goal.firstCells());
    found = refine(path, goal);
    return found;
  }

  private static void positive(String name, double value) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be at least 0 and finite, but was " + value);
    }
  }

  private boolean refine(PathRows path, TimingGoal goal) {
    while (true) {
      if (!run()) {
        if (!markBlocked(goal)) {
          return false;
        }
      } else if (Double.isInfinite(goal.tolerance()) || !markErrors(path, goal)) {
        if (!goal.between() || keepBetween(path, goal)) {
          return true;
        }
        if (!between.marked) {
          return false;
        }
        if (grid.cells > ROUGH * goal.mostCells()) {
          passes.blocked = between.markedCell;
          passes.place = between.markedCell;
          passes.row = between.markedRow;
          rough = true;
          return false;
        }
      }
      grid.halve(path);
    }
  }

  /** Both passes and the duration; false too where the timing would stand still. */
  private boolean run() {
    do {
      if (!passes.run(grid, start * start, end * end)) {
        return false;
      }
    } while (straighten());
    duration = 0;
    for (int i = 0; i < grid.cells; i++) {
      double time = TwoPasses.time(grid.step(i), grid.bend[i], passes.x[i], passes.x[i + 1]);
      if (Double.isInfinite(time) || grid.boundless(passes.x[i])) {
        passes.blocked = i;
        passes.place = i;
        passes.row = CellProgram.CAP;
        return false;
      }
      duration += time;
    }
    return true;
  }

  /** Takes away the bends with which x could touch 0; whether there were any. */
  private boolean straighten() {
    boolean any = false;
    for (int i = 0; i < grid.cells; i++) {
      if (grid.bend[i] > 0
          && grid.bend[i] > TwoPasses.mostBend(grid.step(i), passes.x[i], passes.x[i + 1])) {
        grid.bend[i] = 0;
        any = true;
      }
    }
    if (any) {
      grid.dropExtras();
    }
    return any;
  }

  /** Marks what may be too coarse where a pass failed; false where that cannot be the reason. */
  private boolean markBlocked(TimingGoal goal) {
    boolean any = false;
    for (int i = 0; i < grid.cells; i++) {
      boolean near = passes.blocked < 0 || Math.abs(i - passes.blocked) <= 1;
      grid.split[i] = near && mayHalve(i);
      any |= grid.split[i];
    }
    int most = passes.blocked < 0 ? 16 * goal.firstCells() : goal.mostCells();
    return any && grid.cells < Math.min(most, goal.mostCells());
  }

  private boolean mayHalve(int cell) {
    return grid.step(cell) > SHORTEST * grid.s[grid.cells];
  }

  /** Marks the cells that cost the most; false where the duration is near enough. */
  private boolean markErrors(PathRows path, TimingGoal goal) {
    estimate = error.estimate(path, grid, passes);
    for (int round = 0; round < BENDS && estimate > goal.tolerance() * duration; round++) {
      error.bend(grid);
      if (!run()) {
        Arrays.fill(grid.bend, 0, grid.cells, 0);
        run();
      }
      estimate = error.estimate(path, grid, passes);
    }
    if (estimate <= goal.tolerance() * duration) {
      return false;
    }
    double largest = 0;
    for (int i = 0; i < grid.cells; i++) {
      largest = Math.max(largest, error.cell[i]);
    }
    int room = goal.mostCells() - grid.realCells();
    boolean any = false;
    for (int i = 0; i < grid.cells && room > 0; i++) {
      if (error.cell[i] >= SHARE * largest && mayHalve(i)) {
        grid.split[i] = true;
        room--;
        any = true;
      }
    }
    return any;
  }

  /** Adds extra rows until no limit is broken between nodes; false with cells marked, or failed. */
  private boolean keepBetween(PathRows path, TimingGoal goal) {
    double before = duration;
    between.begin(grid);
    for (int round = 0; ; round++) {
      // Extra rows that chase each other are ended by shorter cells, also beyond the most.
      double halveAbove = round == ROUNDS ? 0 : COARSE * goal.tolerance();
      boolean room = round == ROUNDS || round == 0 && grid.realCells() < goal.mostCells();
      if (between.look(path, grid, passes, room ? halveAbove : Double.POSITIVE_INFINITY)) {
        estimate += Math.max(0, duration - before);
        return true;
      }
      if (between.marked) {
        return false;
      }
      if (!run()) {
        between.marked = markBlocked(goal);
        return false;
      }
    }
  }

  /** Duration of the timing found last, s. */
  public double duration() {
    return duration;
  }

  /** The timing found last, or why there is none. */
  public TimingResult result() {
    PathRows path = asked;
    if (path == null) {
      throw new IllegalStateException("solve must be called before result");
    }
    if (!found) {
      return Refusal.of(path, grid, passes, start, end, rough);
    }
    int nodes = grid.realCells() + 1;
    double[] s = new double[nodes];
    double[] rate = new double[nodes];
    double[] time = new double[nodes];
    double[] bend = new double[nodes - 1];
    List<String> governs = new ArrayList<>(nodes);
    rate[0] = start;
    int n = 0;
    for (int i = 0; i < grid.cells; i++) {
      double h = grid.step(i);
      if (h > 0) {
        n++;
        s[n] = grid.s[i + 1];
        rate[n] = Math.sqrt(passes.x[i + 1]);
        time[n] = time[n - 1] + TwoPasses.time(h, grid.bend[i], passes.x[i], passes.x[i + 1]);
        bend[n - 1] = grid.bend[i];
        governs.add(Governing.of(path, grid, passes, i));
      }
    }
    return new Timing(s, rate, time, bend, governs, estimate);
  }
}
