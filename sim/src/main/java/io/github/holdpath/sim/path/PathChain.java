package io.github.holdpath.sim.path;

import java.util.ArrayList;
import java.util.List;

/**
 * Moves and the blends between them as one path from stop to stop, by the length s of the way (by
 * the angle turned where all moves only turn). Position and orientation have continuous first and
 * second derivatives all along, where the moves themselves have (theory, section 5.12). Immutable.
 */
public final class PathChain implements PathCurve, ChainOutcome {
  private final List<PathPiece> pieces;
  private final List<BlendPath> blends;
  private final double[] starts;
  private final double[] signs;
  private final double length;

  private PathChain(List<PathPiece> pieces, List<BlendPath> blends, double[] signs) {
    this.pieces = List.copyOf(pieces);
    this.blends = List.copyOf(blends);
    this.signs = signs;
    starts = pieces.stream().mapToDouble(PathPiece::start).toArray();
    length = pieces.get(pieces.size() - 1).end();
  }

  /**
   * Joins moves that each begin where the last one ends.
   *
   * @param moves at least one, each by the length of its way or, if it only turns, by the angle
   * @param zones radius of the zone about each corner, one less than moves; m, or rad where both
   *     moves of the corner only turn
   * @return the chain, or the faults of all its corners
   * @throws IllegalArgumentException if the moves do not meet or the numbers do not match
   */
  public static ChainOutcome build(List<? extends PathCurve> moves, double... zones) {
    if (moves.isEmpty() || zones.length != moves.size() - 1) {
      throw new IllegalArgumentException(
          "zones must be one fewer than moves, but "
              + zones.length
              + " came with "
              + moves.size()
              + " moves");
    }
    return new ChainBuilder(moves, zones).build();
  }

  static PathChain of(List<PathPiece> pieces, List<BlendPath> blends, double[] signs) {
    return new PathChain(pieces, blends, signs);
  }

  @Override
  public double length() {
    return length;
  }

  @Override
  public void at(double s, double[] out) {
    at(pieceAt(s), s, out);
  }

  /**
   * The place on a given piece: at a joint either side can be asked. Allocates nothing.
   *
   * @param piece index of the piece
   * @param s within the piece, in the chain's parameter
   * @param out flat form of {@link PathPoint}, overwritten
   */
  public void at(int piece, double s, double[] out) {
    PathPiece p = pieces.get(piece);
    p.curve().at(Math.min(p.to(), p.from() + (s - p.start())), out);
    if (signs[piece] < 0) {
      for (int k = PathPoint.ROTATION; k < PathPoint.ROTATION + 4; k++) {
        out[k] = -out[k];
      }
    }
  }

  /** Index of the piece at a place; of two that meet there the later one. */
  public int pieceAt(double s) {
    int lo = 0;
    int hi = starts.length;
    while (hi - lo > 1) {
      int mid = (lo + hi) >>> 1;
      if (starts[mid] <= s) {
        lo = mid;
      } else {
        hi = mid;
      }
    }
    return lo;
  }

  /** Pieces in the order of the way: what is left of the moves, and halves of blends. */
  public List<PathPiece> pieces() {
    return pieces;
  }

  /** The blends, one to a corner; corner i joins moves i and i + 1. */
  public List<BlendPath> blends() {
    return blends;
  }

  /** Where on the chain a move begins: at its stop, or in the middle of the blend before it. */
  public double moveStart(int move) {
    return pieces.stream()
        .filter(p -> p.move() == move)
        .mapToDouble(PathPiece::start)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("move must exist, but was " + move));
  }

  /** Collects pieces from the first move on. */
  static final class Pieces {
    private final List<PathPiece> pieces = new ArrayList<>();
    private final List<BlendPath> blends = new ArrayList<>();
    private final List<Double> signs = new ArrayList<>();
    private double start;
    private double sign = 1;

    /** What is left of a move between its blends; nothing if nothing is. */
    void move(PathCurve curve, double from, double to, int move) {
      if (from < to) {
        add(new PathPiece(curve, from, to, start, move, curve.bounds(from, to)));
      }
    }

    /** A blend, half of it for each of its moves. */
    void blend(BlendPath blend, int corner) {
      double half = blend.length() / 2;
      double end = blend.length();
      add(new PathPiece(blend, 0, half, start, corner, blend.bounds(0, half)));
      add(new PathPiece(blend, half, end, start, corner + 1, blend.bounds(half, end)));
      blends.add(blend);
      sign *= blend.signAfter();
    }

    private void add(PathPiece piece) {
      pieces.add(piece);
      signs.add(sign);
      start = piece.end();
    }

    PathChain chain() {
      double[] s = signs.stream().mapToDouble(Double::doubleValue).toArray();
      return PathChain.of(pieces, blends, s);
    }
  }
}
