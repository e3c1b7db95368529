package io.github.holdpath.scenes.plot;

import java.util.List;

/** A chart of curves by a common axis, with labels at the curves in place of a key. */
final class Plot {
  private static final int LEFT = 62;
  private static final int RIGHT = 22;
  private static final int TOP = 36;
  private static final int BOTTOM = 48;

  /** A label ends as far beside its point, px. */
  private static final double BESIDE = 6;

  /** Half of the height of a digit, px: puts words level with a point. */
  private static final double HALF_DIGIT = 4.5;

  private final Svg svg;
  private final Axis x;
  private final Axis y;
  private final int width;
  private final int height;

  /**
   * An empty chart.
   *
   * @param width of the whole picture, px
   * @param height of the whole picture, px
   * @param what it shows, for those who do not see it
   */
  Plot(int width, int height, String what, Axis x, Axis y) {
    svg = new Svg(width, height, what);
    this.x = x;
    this.y = y;
    this.width = width;
    this.height = height;
    svg.put(
        "<clipPath id=\"field\"><rect x=\""
            + LEFT
            + "\" y=\""
            + TOP
            + "\" width=\""
            + (width - LEFT - RIGHT)
            + "\" height=\""
            + (height - TOP - BOTTOM)
            + "\"/></clipPath>");
    grid();
  }

  /** Height of a picture of this width in which both axes have the same scale, px. */
  static int evenHeight(int width, Axis x, Axis y) {
    double scale = (width - LEFT - RIGHT) / (x.to() - x.from());
    return (int) Math.round(scale * (y.to() - y.from())) + TOP + BOTTOM;
  }

  private void grid() {
    String grey = "stroke=\"#E2DED4\"";
    for (double m : x.marks()) {
      svg.line(x(m), TOP, x(m), height - BOTTOM, grey);
      svg.words(x(m), height - BOTTOM + 18, "middle", Svg.WORDS, x.number(m));
    }
    for (double m : y.marks()) {
      svg.line(LEFT, y(m), width - RIGHT, y(m), grey);
      svg.words(LEFT - 8, y(m) + HALF_DIGIT, "end", Svg.WORDS, y.number(m));
    }
    if (!y.logarithmic() && y.from() < 0 && y.to() > 0) {
      svg.line(LEFT, y(0), width - RIGHT, y(0), "stroke=\"#8A8D93\"");
    }
    svg.words(LEFT + (width - LEFT - RIGHT) / 2.0, height - 10, "middle", Svg.WORDS, x.name());
    svg.words(14, 22, "start", Svg.WORDS, y.name());
  }

  private double x(double value) {
    return LEFT + x.share(value) * (width - LEFT - RIGHT);
  }

  private double y(double value) {
    return height - BOTTOM - y.share(value) * (height - TOP - BOTTOM);
  }

  /** A curve through points; what is outside the field is not drawn. */
  Plot curve(Ink ink, double thick, List<double[]> points) {
    StringBuilder d = new StringBuilder();
    String last = "";
    for (double[] p : points) {
      String at = Svg.at(x(p[0]), y(p[1]));
      if (!at.equals(last)) {
        d.append(d.isEmpty() ? "M" : "L").append(at);
      }
      last = at;
    }
    svg.put("<path clip-path=\"url(#field)\" d=\"" + d + "\" " + ink.stroke(thick) + "/>");
    return this;
  }

  /** A level that a quantity may not pass. */
  Plot level(double value, String words) {
    svg.line(LEFT, y(value), width - RIGHT, y(value), Ink.GREY_DASHED.stroke(1));
    svg.words(width - RIGHT - 4, y(value) - 5, "end", Ink.GREY.colour(), words);
    return this;
  }

  /** An arrow along the y axis. */
  Plot arrow(Ink ink, double at, double from, double to) {
    double head = Math.signum(y(from) - y(to)) * 9;
    svg.line(x(at), y(from), x(at), y(to) + head, ink.stroke(2));
    svg.put(
        "<path d=\"M"
            + Svg.at(x(at), y(to))
            + "L"
            + Svg.at(x(at) - 4.5, y(to) + head)
            + "L"
            + Svg.at(x(at) + 4.5, y(to) + head)
            + "Z\" fill=\""
            + ink.colour()
            + "\"/>");
    return this;
  }

  /**
   * Words with a thin line to a dot on a curve.
   *
   * @param anchor start where the words are right of the end of the line, else end
   */
  Plot label(Ink ink, double dotX, double dotY, double toX, double toY, String anchor, String s) {
    String thin = "stroke=\"" + ink.colour() + "\" stroke-width=\"0.8\"";
    svg.line(x(dotX), y(dotY), x(toX), y(toY), thin);
    svg.put(
        "<circle cx=\""
            + Svg.px(x(dotX))
            + "\" cy=\""
            + Svg.px(y(dotY))
            + "\" r=\"2.6\" fill=\""
            + ink.colour()
            + "\"/>");
    return words(ink, toX, toY, anchor, s);
  }

  /** Words beside a place. */
  Plot words(Ink ink, double atX, double atY, String anchor, String s) {
    double beside = "start".equals(anchor) ? BESIDE : "end".equals(anchor) ? -BESIDE : 0;
    svg.words(x(atX) + beside, y(atY) + HALF_DIGIT, anchor, ink.colour(), s);
    return this;
  }

  String svg() {
    return svg.done();
  }
}
