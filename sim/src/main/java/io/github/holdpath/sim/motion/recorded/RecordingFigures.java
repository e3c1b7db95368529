package io.github.holdpath.sim.motion.recorded;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;

/**
 * What the smoothing fit of a recording did to it.
 *
 * @param file recording, as named in the scene
 * @param rows of the recording
 * @param period median time between two rows, s
 * @param longestStep longest time between two rows, s
 * @param cutoff of the fit, Hz
 * @param rawPeakAcceleration largest second difference of the rows as they stand, m/s^2
 * @param peakAcceleration largest acceleration of the fit, m/s^2
 * @param positionResidual root mean square distance between fit and rows, m
 * @param turnResidual root mean square angle between fit and rows, rad
 */
public record RecordingFigures(
    String file,
    int rows,
    double period,
    double longestStep,
    double cutoff,
    double rawPeakAcceleration,
    double peakAcceleration,
    double positionResidual,
    double turnResidual) {
  private static final double EVEN = 1.01;

  /** The figures in sentences for a reader of the result. */
  public List<String> notes() {
    return List.of(fitted(), peaks(), residuals());
  }

  private String fitted() {
    String jitter =
        longestStep > EVEN * period ? text(", longest step %s ms", plain(1e3 * longestStep)) : "";
    return text(
        "Recording %s: %d rows, median period %s ms%s, fitted by a smoothing quintic spline that"
            + " passes half of a sine at the cut-off of %s Hz and %.1f %% at half of it.",
        file, rows, plain(1e3 * period), jitter, plain(cutoff), 100 / (1 + Math.pow(0.5, 8)));
  }

  private String peaks() {
    return text(
        "Peak acceleration of the fit %.2f m/s^2; second differences of the rows as they stand"
            + " would give %.2f m/s^2.",
        peakAcceleration, rawPeakAcceleration);
  }

  private String residuals() {
    return text(
        "Fit and rows differ by %s mm and %s deg (root mean square).",
        plain(1e3 * positionResidual), plain(Math.toDegrees(turnResidual)));
  }

  private static String plain(double value) {
    return new BigDecimal(value).round(new MathContext(4)).stripTrailingZeros().toPlainString();
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
