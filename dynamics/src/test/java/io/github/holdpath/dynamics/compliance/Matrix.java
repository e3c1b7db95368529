package io.github.holdpath.dynamics.compliance;

import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/** A matrix of another linear-algebra library than the tested code's. */
record Matrix(RealMatrix of) {
  /** From rows of {@code columns} numbers. */
  static Matrix of(int columns, double[] rows) {
    RealMatrix m = MatrixUtils.createRealMatrix(rows.length / columns, columns);
    for (int i = 0; i < rows.length; i++) {
      m.setEntry(i / columns, i % columns, rows[i]);
    }
    return new Matrix(m);
  }

  static Matrix column(double[] v) {
    return of(1, v);
  }

  static Matrix zero(int rows, int columns) {
    return of(columns, new double[rows * columns]);
  }

  Matrix plus(Matrix o) {
    return new Matrix(of.add(o.of));
  }

  Matrix minus(Matrix o) {
    return new Matrix(of.subtract(o.of));
  }

  Matrix mult(Matrix o) {
    return new Matrix(of.multiply(o.of));
  }

  Matrix scale(double s) {
    return new Matrix(of.scalarMultiply(s));
  }

  Matrix transpose() {
    return new Matrix(of.transpose());
  }

  Matrix inverse() {
    return new Matrix(new LUDecomposition(of).getSolver().getInverse());
  }

  /** Entry of a column. */
  double get(int row) {
    return of.getEntry(row, 0);
  }

  /** {@code v^T M v}. */
  double quadratic(Matrix v) {
    return v.transpose().mult(this).mult(v).get(0);
  }
}
