package io.github.holdpath.sim.motion.recorded;

/**
 * Smoothing of samples at uneven times by a penalised quintic spline (theory, eq. 6.3):
 *
 * <pre>{@code
 * sum_i w_i |c(t_i) - y_i|^2 + lambda * integral |c''''|^2 dt  -> least
 * }</pre>
 *
 * <p>The weights w are the stretch of time each sample stands for, so the sum stays close to an
 * integral however uneven the times, and a sine of frequency f passes with the factor {@code 1 / (1
 * + (f / f_c)^8)} without any shift in time: 1/2 at the cut-off (eq. 6.4). Cost grows with the
 * number of samples and cells alone.
 *
 * @see "Reinsch: Smoothing by spline functions, Numerische Mathematik 10, 1967 (from memory)"
 * @see "Eilers, Marx: Flexible smoothing with B-splines and penalties, Statistical Science 11(2),
 *     1996 (from memory)"
 */
final class SmoothingFit {
  /** Cells to a period of the cut-off; with 8 the spline itself takes less than 0.1 %. */
  static final int CELLS_PER_PERIOD = 8;

  private static final int ORDER = QuinticCurve.DEGREE + 1;
  private static final double[] BEFORE = {1, -4, 6, -4, 1, 0};
  private static final double[] AFTER = {0, 1, -4, 6, -4, 1};

  private SmoothingFit() {}

  /**
   * Fits all dimensions with one factorisation.
   *
   * @param times s, strictly rising from 0, at least 4
   * @param y samples side by side, {@code y[i * dimensions + d]}
   * @param dimensions of a sample
   * @param cutoff Hz, positive
   */
  static QuinticCurve fit(double[] times, double[] y, int dimensions, double cutoff) {
    double duration = times[times.length - 1];
    int cells = Math.max(1, (int) Math.ceil(duration * cutoff * CELLS_PER_PERIOD));
    double step = duration / cells;
    BandedCholesky matrix = new BandedCholesky(cells + QuinticCurve.DEGREE, QuinticCurve.DEGREE);
    double[] right = new double[(cells + QuinticCurve.DEGREE) * dimensions];
    addSamples(times, y, dimensions, cells, step, matrix, right);
    addPenalty(cells, step, Math.pow(2 * Math.PI * cutoff, -8), matrix);
    matrix.factor();
    matrix.solve(right, dimensions);
    return new QuinticCurve(right, dimensions, cells, step);
  }

  private static void addSamples(
      double[] times,
      double[] y,
      int dimensions,
      int cells,
      double step,
      BandedCholesky matrix,
      double[] right) {
    double[] b = new double[ORDER];
    for (int i = 0; i < times.length; i++) {
      int k = QuinticCurve.cellOf(times[i], cells, step);
      QuinticCurve.basis(times[i] / step - k, b);
      double w = weight(times, i);
      for (int r = 0; r < ORDER; r++) {
        for (int q = 0; q <= r; q++) {
          matrix.add(k + r, k + q, w * b[r] * b[q]);
        }
        for (int d = 0; d < dimensions; d++) {
          right[(k + r) * dimensions + d] += w * b[r] * y[i * dimensions + d];
        }
      }
    }
  }

  /** Half the way to each neighbour, s. */
  private static double weight(double[] times, int i) {
    return (times[Math.min(i + 1, times.length - 1)] - times[Math.max(i - 1, 0)]) / 2;
  }

  /** The fourth derivative is linear in a cell, from {@code BEFORE . c} to {@code AFTER . c}. */
  private static void addPenalty(int cells, double step, double lambda, BandedCholesky matrix) {
    double scale = lambda / (3 * Math.pow(step, 7));
    for (int r = 0; r < ORDER; r++) {
      for (int q = 0; q <= r; q++) {
        double cross = (BEFORE[r] * AFTER[q] + AFTER[r] * BEFORE[q]) / 2;
        double value = scale * (BEFORE[r] * BEFORE[q] + cross + AFTER[r] * AFTER[q]);
        for (int k = 0; k < cells; k++) {
          matrix.add(k + r, k + q, value);
        }
      }
    }
  }
}
