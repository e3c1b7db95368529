package io.github.holdpath.sim.timing;

import java.util.Arrays;

/**
 * The places between which a path is timed, with their rows, and extra rows within cells. Where two
 * pieces meet there are two nodes with a cell of no length between, so that each cell belongs to
 * one piece.
 */
final class TimingGrid {
  /** How often the path's length within how many seconds counts as no limit at all. */
  private static final double BOUNDLESS_RATE = 1e6;

  final RowStore rows = new RowStore();
  int cells;
  double[] s = new double[0];
  int[] piece = new int[0];
  int[] place = new int[0];
  boolean[] split = new boolean[0];

  /** How much u grows by s within a cell, 1/s^2; given to the passes, not found by them. */
  double[] bend = new double[0];

  /** Place in the middle of a cell, -1 before it is asked for. */
  int[] middle = new int[0];

  private double[] nextS = new double[0];
  private int[] nextPiece = new int[0];
  private int[] nextPlace = new int[0];
  private double[] nextBend = new double[0];
  private double most;

  // Extra rows: a list for each cell.
  private int[] head = new int[0];
  private int[] link = new int[0];
  private int[] extraRow = new int[0];
  private double[] extra = new double[0];
  private int extras;

  /** Cuts a path into about so many even cells. */
  void begin(PathRows path, int about) {
    double length = path.length();
    most = BOUNDLESS_RATE * length * (BOUNDLESS_RATE * length);
    rows.clear(path.rows());
    cells = -1;
    for (int p = 0; p < path.pieces(); p++) {
      double from = path.start(p);
      double to = p + 1 < path.pieces() ? path.start(p + 1) : length;
      if (!(to > from) || p == 0 && from != 0) {
        throw new IllegalArgumentException(
            "pieces of path must begin at 0 and rise, but one goes from " + from + " to " + to);
      }
      int parts = (int) Math.max(1, Math.round(about * ((to - from) / length)));
      reserve(cells + parts + 2);
      for (int i = 0; i <= parts; i++) {
        cells++;
        s[cells] = i == parts ? to : from + (to - from) * i / parts;
        piece[cells] = p;
        place[cells] = rows.add(path, p, s[cells], most);
      }
    }
    Arrays.fill(middle, 0, cells, -1);
    Arrays.fill(bend, 0, cells, 0);
    dropExtras();
  }

  private void reserve(int nodes) {
    if (nodes > s.length) {
      int room = nodes + nodes / 2 + 16;
      s = Arrays.copyOf(s, room);
      piece = Arrays.copyOf(piece, room);
      place = Arrays.copyOf(place, room);
      middle = Arrays.copyOf(middle, room);
      split = Arrays.copyOf(split, room);
      bend = Arrays.copyOf(bend, room);
      head = Arrays.copyOf(head, room);
    }
  }

  /** Length of a cell in the unit of s; 0 where two pieces meet. */
  double step(int cell) {
    return s[cell + 1] - s[cell];
  }

  /** The cap of x at a node. */
  double cap(int node) {
    return rows.cap[place[node]];
  }

  /** Whether a cap stands for no limit. */
  boolean boundless(double cap) {
    return cap >= most;
  }

  /** Place in the middle of a cell. */
  int middle(PathRows path, int cell) {
    if (middle[cell] < 0) {
      middle[cell] = ask(path, cell, 0.5);
    }
    return middle[cell];
  }

  /** Asks for the rows at a part of a cell. */
  int ask(PathRows path, int cell, double part) {
    return rows.add(path, piece[cell], s[cell] + part * step(cell), most);
  }

  /** How many cells have a length. */
  int realCells() {
    int count = 0;
    for (int i = 0; i < cells; i++) {
      count += step(i) > 0 ? 1 : 0;
    }
    return count;
  }

  /** Halves the marked cells, clears the marks and drops all extra rows. */
  void halve(PathRows path) {
    int room = 2 * cells + 1;
    if (nextS.length < room) {
      nextS = new double[room + room / 2];
      nextPiece = new int[nextS.length];
      nextPlace = new int[nextS.length];
      nextBend = new double[nextS.length];
    }
    int n = 0;
    for (int i = 0; i <= cells; i++) {
      nextS[n] = s[i];
      nextBend[n] = bend[i];
      nextPiece[n] = piece[i];
      nextPlace[n++] = place[i];
      if (i < cells && split[i] && step(i) > 0) {
        nextS[n] = s[i] + 0.5 * step(i);
        nextBend[n] = bend[i];
        nextPiece[n] = piece[i];
        nextPlace[n++] = middle(path, i);
      }
    }
    // Middles of cells that stay are kept.
    int from = n - 1;
    reserve(n);
    for (int i = cells - 1; i >= 0; i--) {
      boolean halved = split[i] && step(i) > 0;
      int keep = middle[i];
      split[i] = false;
      if (halved) {
        middle[--from] = -1;
        middle[--from] = -1;
      } else {
        middle[--from] = keep;
      }
    }
    cells = n - 1;
    System.arraycopy(nextS, 0, s, 0, n);
    System.arraycopy(nextPiece, 0, piece, 0, n);
    System.arraycopy(nextPlace, 0, place, 0, n);
    System.arraycopy(nextBend, 0, bend, 0, n);
    Arrays.fill(split, 0, n, false);
    dropExtras();
  }

  /** Drops all extra rows. */
  void dropExtras() {
    extras = 0;
    Arrays.fill(head, 0, cells, -1);
  }

  /** Squared rate at t behind the begin of a cell, from those at its ends (theory, eq. 5.53). */
  double square(int cell, double t, double from, double to) {
    double h = step(cell);
    return from + (to - from) * (t / h) + bend[cell] * t * (t - h);
  }

  /** Adds {@code a u + b x <= c} at t behind the begin of a cell to its rows. */
  void addExtra(int cell, double t, double a, double b, double c, int row) {
    if (extras == link.length) {
      int room = 2 * extras + 64;
      link = Arrays.copyOf(link, room);
      extraRow = Arrays.copyOf(extraRow, room);
      extra = Arrays.copyOf(extra, 3 * room);
    }
    double h = step(cell);
    extra[3 * extras] = a + 2 * t * b;
    extra[3 * extras + 1] = b;
    extra[3 * extras + 2] = c - bend[cell] * (a * (t - 0.5 * h) + b * t * (t - h));
    extraRow[extras] = row;
    link[extras] = head[cell];
    head[cell] = extras++;
  }

  /** Gives all rows of a cell to its program. */
  void load(CellProgram program, int cell) {
    program.begin(step(cell), bend[cell], 2 * rows.rows);
    program.place(rows, place[cell], 0);
    program.place(rows, place[cell + 1], step(cell));
    for (int e = head[cell]; e >= 0; e = link[e]) {
      program.row(extra[3 * e], extra[3 * e + 1], extra[3 * e + 2], extraRow[e]);
    }
  }

  /** Gives the rows of half a cell to its program: without extra rows. */
  void loadHalf(CellProgram program, int cell, int half) {
    double h = 0.5 * step(cell);
    program.begin(h, bend[cell], 2 * rows.rows);
    program.place(rows, half == 0 ? place[cell] : middle[cell], 0);
    program.place(rows, half == 0 ? middle[cell] : place[cell + 1], h);
  }
}
