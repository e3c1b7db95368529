package io.github.holdpath.dynamics.compliance;

import io.github.holdpath.dynamics.spatial.Vec3;

/**
 * How a part swings on its grip while the load runs, and what the grip then carries (theory, eqs.
 * 7.3 to 7.9). The load is a chain of polynomials of time; between their knots the answer is exact,
 * whatever the length of a stretch. Begins at rest under the load of the start. For one thread.
 *
 * <p>Use: {@link #rest}, then for each stretch {@link #enter}, any number of {@link #at}, {@link
 * #leave}.
 */
public final class GripResponse {
  /** Numbers of a polynomial: degree 5 at most. */
  public static final int COEFFICIENTS = Oscillator.LOAD;

  private final GripModes modes;
  private final double damping;
  private final Oscillator[] oscillators = new Oscillator[6];
  private final double[] modal = new double[COEFFICIENTS];
  private final double[] wrench = new double[6];
  private final double[] shift = new double[6];

  /**
   * A part on its grip.
   *
   * @param modes of the part on the grip
   * @param damping ratio of every mode, dimensionless, 0 to below 1
   */
  public GripResponse(GripModes modes, double damping) {
    if (!(damping >= 0 && damping < 1)) {
      throw new IllegalArgumentException(
          "damping ratio must be from 0 to below 1, but was " + damping);
    }
    this.modes = modes;
    this.damping = damping;
    for (int m = 0; m < 6; m++) {
      oscillators[m] = new Oscillator(modes.omega(m), damping);
    }
  }

  /** Puts the part at rest under a required wrench of six numbers. */
  public void rest(double[] load) {
    for (int m = 0; m < 6; m++) {
      oscillators[m].rest(modalLoad(m, load));
    }
  }

  private double modalLoad(int mode, double[] load) {
    double sum = 0;
    for (int i = 0; i < 6; i++) {
      sum += modes.shapes[6 * mode + i] * load[i];
    }
    return sum;
  }

  /**
   * Begins a stretch where the one before ended.
   *
   * @param length s, positive
   * @param load required wrench as polynomials in t/length, from 0 to 1: for each of the six
   *     components {@link #COEFFICIENTS} numbers, the constant first; read
   */
  public void enter(double length, double[] load) {
    if (!(length > 0)) {
      throw new IllegalArgumentException("a stretch must be longer than 0 s, but was " + length);
    }
    for (int m = 0; m < 6; m++) {
      for (int k = 0; k < COEFFICIENTS; k++) {
        double sum = 0;
        for (int i = 0; i < 6; i++) {
          sum += modes.shapes[6 * m + i] * load[COEFFICIENTS * i + k];
        }
        modal[k] = sum;
      }
      oscillators[m].enter(length, modal);
    }
  }

  /**
   * State at a place of the stretch, for {@link #wrench} and {@link #shift}.
   *
   * @param s time from its start per its length, 0 to 1
   */
  public void at(double s) {
    for (int i = 0; i < 6; i++) {
      wrench[i] = 0;
      shift[i] = 0;
    }
    for (int m = 0; m < 6; m++) {
      double carried = oscillators[m].at(s);
      double way = oscillators[m].lastWay;
      for (int i = 0; i < 6; i++) {
        wrench[i] += modes.wrenches[6 * m + i] * carried;
        shift[i] += modes.shapes[6 * m + i] * way;
      }
    }
  }

  /**
   * What the grip carries: -(K x + D x'), N and N m. The array is lent and changes with the next.
   */
  public double[] wrench() {
    return wrench;
  }

  /** Shift (m) and turn (rad) of the part against the tool, x. The array is lent. */
  public double[] shift() {
    return shift;
  }

  /** Ends the stretch. */
  public void leave() {
    for (Oscillator o : oscillators) {
      o.leave();
    }
  }

  /**
   * Shortest period among the modes that ring in this stretch, s; infinite where none does.
   *
   * @param part of the load's size (the root of twice its elastic energy) above which a mode counts
   * @param load to compare with
   */
  public double shortestRinging(double part, double[] load) {
    double size = 0;
    for (int m = 0; m < 6; m++) {
      double p = modalLoad(m, load);
      size += p * p;
    }
    double period = Double.POSITIVE_INFINITY;
    for (int m = 0; m < 6; m++) {
      double ring = oscillators[m].ringing();
      if (ring * ring > part * part * size) {
        period = Math.min(period, 2 * Math.PI / modes.omega(m));
      }
    }
    return period;
  }

  /**
   * The free swing that follows if from the end of the last stretch on the tool stands still.
   *
   * @param load that is then required, six numbers
   * @param point of the part whose way counts, grip frame
   */
  public FreeSwing freeSwing(double[] load, Vec3 point) {
    FreeSwing swing = new FreeSwing(damping);
    for (int m = 0; m < 6; m++) {
      if (!Double.isInfinite(modes.omega(m))) {
        Oscillator o = oscillators[m];
        swing.add(modes.omega(m), modes.shiftAt(m, point), o.offset(modalLoad(m, load)), o.rate());
      }
    }
    return swing;
  }
}
