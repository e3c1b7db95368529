package io.github.holdpath.viewer.overlay;

import io.github.holdpath.viewer.colour.MarginStep;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.state.ForceArrows;
import io.github.holdpath.viewer.state.ForceKind;
import io.github.holdpath.viewer.state.View;
import java.awt.Font;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Meaning of the colours of the path, and of the arrows. */
final class Legend {
  private static final double WIDTH = 10.5;
  private static final String AS_IT_WAS = "thin: as it was";

  private final Pen pen;
  private final double em;

  Legend(Pen pen) {
    this.pen = pen;
    this.em = pen.em;
  }

  /** From the best step down to the worst, as high in the image as in the meaning. */
  double margins(double start, boolean twin) {
    double y = start;
    double top = y - 1.2 * em;
    int rows = MarginStep.values().length + (twin ? 2 : 1);
    double wide = Math.max(WIDTH - 0.4, twin ? 4 + wide(AS_IT_WAS, 0.9) : 0) * em;
    pen.ground(0.4 * em, top, wide, (4.1 + 1.4 * rows) * em);
    header("Margin", "factor / required", y);
    y += 2.1 * em;
    MarginStep[] steps = MarginStep.values();
    for (int i = steps.length - 1; i >= 0; i--) {
      y = row(y, steps[i].rgb(), range(steps[i]), steps[i].passes() ? 0.75 : 1.1);
      if (steps[i] == MarginStep.JUST_ABOVE) {
        pen.colour(Tones.INK);
        pen.stroke(em * 0.08);
        pen.g.draw(new Line2D.Double(em, y - 0.02 * em, 10 * em, y - 0.02 * em));
        y += 0.35 * em;
      }
    }
    y = row(y + 0.3 * em, Tones.NOT_HELD, "not held", 0.4);
    if (twin) {
      y = row(y, Tones.FAINT_INK, AS_IT_WAS, 0.2);
    }
    pen.placer.take(new Rectangle2D.Double(0, top, 0.4 * em + wide, y - top));
    return y;
  }

  /** Width of words, em. */
  private double wide(String words, double size) {
    return pen.font(Font.PLAIN, size).stringWidth(words) / em;
  }

  private void header(String title, String what, double y) {
    pen.font(Font.BOLD, 0.95);
    pen.colour(Tones.INK);
    pen.words(title, em, y);
    pen.font(Font.PLAIN, 0.85);
    pen.colour(Tones.FAINT_INK);
    pen.words(what, em, y + 1.2 * em);
  }

  private double row(double y, int rgb, String text, double thick) {
    pen.colour(rgb);
    double middle = y + 0.65 * em;
    if (thick > 1) {
      for (int k = 0; k < 3; k++) {
        double x = em + 0.85 * em * k;
        pen.g.fill(new Rectangle2D.Double(x, middle - 0.3 * em, 0.85 * em, 0.6 * em));
        pen.g.fill(
            new Rectangle2D.Double(x + 0.2 * em, middle - thick * em / 2, 0.45 * em, thick * em));
      }
    } else {
      pen.g.fill(new Rectangle2D.Double(em, middle - thick * em / 2, 2.55 * em, thick * em));
    }
    pen.font(Font.PLAIN, 0.9);
    pen.colour(Tones.INK);
    pen.words(text, 4.2 * em, middle + 0.33 * em);
    return y + 1.4 * em;
  }

  private static String range(MarginStep step) {
    if (step.from() == 0) {
      return "below " + step.to();
    }
    return Double.isInfinite(step.to())
        ? step.from() + " and more"
        : step.from() + " to " + step.to();
  }

  /** Scale of the arrows and the words for them. */
  void forces(double start, ForceArrows scale, List<ForceArrows.Arrow> arrows) {
    if (arrows.isEmpty() || start + (height(arrows) - 1.2) * em > 0.93 * pen.view.height()) {
      return;
    }
    double y = start;
    String measure = number(scale.newtons()) + " N per m of arrow";
    double wide = Math.max(WIDTH, 1 + wide(measure, 0.85));
    for (ForceArrows.Arrow a : arrows) {
      wide = Math.max(wide, 4.2 + wide(a.kind().label(), 0.9));
    }
    pen.ground(0.4 * em, start - 1.2 * em, wide * em, height(arrows) * em);
    header("On the part", measure, y);
    y += 1.9 * em;
    for (ForceArrows.Arrow a : arrows) {
      sample(y + 0.65 * em, a.kind());
      pen.font(Font.PLAIN, 0.9);
      pen.colour(Tones.INK);
      pen.words(a.kind().label(), 4.2 * em, y + 0.98 * em);
      y += 1.3 * em;
      if (a.kind() == ForceKind.MOMENT) {
        pen.font(Font.PLAIN, 0.8);
        pen.colour(Tones.FAINT_INK);
        pen.words(number(scale.newtonMetres()) + " N m per m", 4.2 * em, y + 0.8 * em);
        y += 1.2 * em;
      }
    }
    y = bar(y + 0.2 * em, scale, arrows.get(0));
    pen.placer.take(
        new Rectangle2D.Double(0, start - 1.2 * em, (wide + 0.6) * em, y - start + 1.2 * em));
  }

  /** Of title, a row for each, the scale of the moment's and the bar, em. */
  private static double height(List<ForceArrows.Arrow> arrows) {
    boolean moment = arrows.stream().anyMatch(a -> a.kind() == ForceKind.MOMENT);
    return 4.7 + 1.3 * arrows.size() + (moment ? 1.2 : 0);
  }

  private void sample(double y, ForceKind kind) {
    pen.colour(kind.rgb());
    double end = 3.0 * em;
    if (kind == ForceKind.MOMENT) {
      pen.stroke(0.2 * em);
      pen.g.draw(
          new java.awt.geom.Arc2D.Double(
              1.5 * em, y - 0.55 * em, 1.1 * em, 1.1 * em, 200, 240, java.awt.geom.Arc2D.OPEN));
      end = 2.1 * em;
      head(end - 0.35 * em, y - 0.42 * em, -1);
      return;
    }
    double thick = (kind == ForceKind.FORCE ? 0.3 : 0.2) * em;
    double length = end - em;
    double pattern = kind.dashed() ? length / 3 : length;
    for (double x = em; x < end - 0.05 * em; x += pattern) {
      pen.g.fill(
          new Rectangle2D.Double(x, y - thick / 2, kind.dashed() ? 0.6 * pattern : pattern, thick));
    }
    head(end + 0.55 * em, y, 1);
  }

  private void head(double tip, double y, int sign) {
    Path2D head = new Path2D.Double();
    head.moveTo(tip, y);
    head.lineTo(tip - sign * 0.75 * em, y - 0.42 * em);
    head.lineTo(tip - sign * 0.75 * em, y + 0.42 * em);
    head.closePath();
    pen.g.fill(head);
  }

  /** A bar of the length that a round force has where the part is. */
  private double bar(double y, ForceArrows scale, ForceArrows.Arrow at) {
    View.Spot s = pen.view.project(at.from());
    double perMetre =
        pen.view.height() / 2.0 / Math.tan(pen.view.halfAngle()) / Math.max(1e-9, s.depth());
    double force = scale.newtons() * 4 * em / perMetre;
    double ten = Math.pow(10, Math.floor(Math.log10(force)));
    double round = (force >= 5 * ten ? 5 : force >= 2 * ten ? 2 : 1) * ten;
    double length = round / scale.newtons() * perMetre;
    double middle = y + 0.5 * em;
    pen.colour(Tones.INK);
    pen.stroke(0.1 * em);
    pen.g.draw(new Line2D.Double(em, middle, em + length, middle));
    for (double x : new double[] {em, em + length}) {
      pen.g.draw(new Line2D.Double(x, middle - 0.3 * em, x, middle + 0.3 * em));
    }
    pen.font(Font.PLAIN, 0.85);
    pen.words(number(round) + " N", em + length + 0.5 * em, middle + 0.33 * em);
    return y + 1.2 * em;
  }

  /** A number of the 1, 2, 5 series without needless zeros. */
  static String number(double v) {
    return new java.math.BigDecimal(v)
        .round(new java.math.MathContext(3))
        .stripTrailingZeros()
        .toPlainString();
  }
}
