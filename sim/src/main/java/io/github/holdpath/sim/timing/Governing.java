package io.github.holdpath.sim.timing;

/** Which limit is nearest to being broken at the ends of a cell. */
final class Governing {
  private Governing() {}

  static String of(PathRows path, TimingGrid grid, TwoPasses passes, int cell) {
    RowStore store = grid.rows;
    double h = grid.step(cell);
    double mean = (passes.x[cell + 1] - passes.x[cell]) / (2 * h);
    double least = Double.POSITIVE_INFINITY;
    int row = CellProgram.CAP;
    int at = cell;
    for (int node = cell; node <= cell + 1; node++) {
      double x = passes.x[node];
      double u = mean + grid.bend[cell] * (node - cell - 0.5) * h;
      double cap = grid.cap(node);
      if (!grid.boundless(cap) && (cap - x) / cap < least) {
        least = (cap - x) / cap;
        row = CellProgram.CAP;
        at = node;
      }
      int from = grid.place[node] * store.rows;
      for (int k = 0; k < store.rows; k++) {
        double au = store.a[from + k] * u;
        double bx = store.b[from + k] * x;
        double c = store.c[from + k];
        double room = (c - au - bx) / (Math.abs(c) + Math.abs(au) + Math.abs(bx));
        if (room < least) {
          least = room;
          row = k;
        }
      }
    }
    return name(path, grid, row, at);
  }

  static String name(PathRows path, TimingGrid grid, int row, int node) {
    return row >= 0 ? path.name(row) : path.capName(grid.piece[node], grid.s[node]);
  }
}
