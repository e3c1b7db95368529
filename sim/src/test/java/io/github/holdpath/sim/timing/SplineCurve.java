package io.github.holdpath.sim.timing;

/**
 * A cubic spline through waypoints, one piece between each two knots. Found from the slopes at the
 * knots: the second derivative agrees from both sides, and the ends are natural (no second
 * derivative) or not-a-knot (no jump of the third at the knot next to the end).
 */
public final class SplineCurve implements JointCurve {
  private final double[] knots;
  private final double[][] waypoints;
  private final double[][] slopes;

  /** Knots rise from 0; a row of joint positions for each. */
  public SplineCurve(double[] knots, double[][] waypoints, boolean natural) {
    this.knots = knots.clone();
    this.waypoints = waypoints.clone();
    int n = knots.length;
    int joints = waypoints[0].length;
    double[][] m = new double[n][n];
    double[][] right = new double[n][joints];
    for (int i = 1; i < n - 1; i++) {
      double h0 = knots[i] - knots[i - 1];
      double h1 = knots[i + 1] - knots[i];
      m[i][i - 1] = 1 / h0;
      m[i][i] = 2 / h0 + 2 / h1;
      m[i][i + 1] = 1 / h1;
      for (int j = 0; j < joints; j++) {
        right[i][j] = 3 * secant(i - 1, j) / h0 + 3 * secant(i, j) / h1;
      }
    }
    end(m, right, natural, 0, 1, 2);
    end(m, right, natural, n - 1, n - 2, n - 3);
    slopes = solve(m, right);
  }

  private double secant(int i, int j) {
    return (waypoints[i + 1][j] - waypoints[i][j]) / (knots[i + 1] - knots[i]);
  }

  private void end(double[][] m, double[][] right, boolean natural, int e, int next, int third) {
    for (int j = 0; j < right[e].length; j++) {
      double first = secant(Math.min(e, next), j);
      if (natural) {
        m[e][e] = 2;
        m[e][next] = 1;
        right[e][j] = 3 * first;
      } else {
        double h0 = knots[next] - knots[e];
        double h1 = knots[third] - knots[next];
        double second = secant(Math.min(next, third), j);
        // Third derivative of a piece: 6 (d0 + d1 - 2 secant) / h^2.
        m[e][e] = 1 / (h0 * h0);
        m[e][next] = 1 / (h0 * h0) - 1 / (h1 * h1);
        m[e][third] = -1 / (h1 * h1);
        right[e][j] = 2 * first / (h0 * h0) - 2 * second / (h1 * h1);
      }
    }
  }

  /** Elimination with pivots: a handful of knots, once. */
  private static double[][] solve(double[][] m, double[][] right) {
    int n = m.length;
    for (int c = 0; c < n; c++) {
      int pivot = c;
      for (int r = c + 1; r < n; r++) {
        if (Math.abs(m[r][c]) > Math.abs(m[pivot][c])) {
          pivot = r;
        }
      }
      double[] row = m[c];
      m[c] = m[pivot];
      m[pivot] = row;
      double[] rhs = right[c];
      right[c] = right[pivot];
      right[pivot] = rhs;
      for (int r = 0; r < n; r++) {
        double f = r == c ? 0 : m[r][c] / m[c][c];
        for (int k = c; k < n && f != 0; k++) {
          m[r][k] -= f * m[c][k];
        }
        for (int j = 0; j < right[r].length && f != 0; j++) {
          right[r][j] -= f * right[c][j];
        }
      }
    }
    for (int r = 0; r < n; r++) {
      for (int j = 0; j < right[r].length; j++) {
        right[r][j] /= m[r][r];
      }
    }
    return right;
  }

  @Override
  public int joints() {
    return waypoints[0].length;
  }

  @Override
  public double length() {
    return knots[knots.length - 1];
  }

  @Override
  public int pieces() {
    return knots.length - 1;
  }

  @Override
  public double start(int piece) {
    return knots[piece];
  }

  @Override
  public void at(int piece, double s, double[] q, double[] dq, double[] ddq) {
    double h = knots[piece + 1] - knots[piece];
    double t = s - knots[piece];
    double inverse = 1 / h;
    double[] p0 = waypoints[piece];
    double[] p1 = waypoints[piece + 1];
    double[] d0 = slopes[piece];
    double[] d1 = slopes[piece + 1];
    for (int j = 0; j < q.length; j++) {
      double secant = (p1[j] - p0[j]) * inverse;
      double cubic = (d0[j] + d1[j] - 2 * secant) * inverse * inverse;
      double square = (3 * secant - 2 * d0[j] - d1[j]) * inverse;
      q[j] = p0[j] + t * (d0[j] + t * (square + t * cubic));
      dq[j] = d0[j] + t * (2 * square + 3 * t * cubic);
      ddq[j] = 2 * square + 6 * t * cubic;
    }
  }

  @Override
  public boolean third(int piece, double s, double[] dddq) {
    double inverse = 1 / (knots[piece + 1] - knots[piece]);
    for (int j = 0; j < dddq.length; j++) {
      double secant = (waypoints[piece + 1][j] - waypoints[piece][j]) * inverse;
      dddq[j] = 6 * (slopes[piece][j] + slopes[piece + 1][j] - 2 * secant) * inverse * inverse;
    }
    return true;
  }
}
