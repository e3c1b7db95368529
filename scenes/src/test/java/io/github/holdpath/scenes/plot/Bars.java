package io.github.holdpath.scenes.plot;

import java.util.List;

/** Level bars that all begin at 0, each with its name before it and its number behind it. */
final class Bars {
  private static final int WIDTH = 720;
  private static final int NAMES = 200;
  private static final int NUMBERS = 90;
  private static final int ROW = 30;
  private static final int TOP = 40;
  private static final int BOTTOM = 14;

  /** A bar. */
  record Bar(Ink ink, String name, double value, String number) {}

  private Bars() {}

  static String draw(String title, List<Bar> bars) {
    int height = TOP + ROW * bars.size() + BOTTOM;
    Svg svg = new Svg(WIDTH, height, title);
    svg.words(14, 24, "start", Svg.WORDS, title);
    double most = bars.stream().mapToDouble(Bar::value).max().orElseThrow();
    double scale = (WIDTH - NAMES - NUMBERS) / most;
    for (int i = 0; i < bars.size(); i++) {
      Bar bar = bars.get(i);
      double y = TOP + ROW * i;
      double end = NAMES + scale * bar.value();
      svg.words(NAMES - 10, y + 19, "end", Svg.WORDS, bar.name());
      svg.put(
          "<rect x=\""
              + NAMES
              + "\" y=\""
              + Svg.px(y + 5)
              + "\" width=\""
              + Svg.px(end - NAMES)
              + "\" height=\""
              + (ROW - 10)
              + "\" fill=\""
              + bar.ink().colour()
              + "\"/>");
      svg.words(end + 8, y + 19, "start", Svg.WORDS, bar.number());
    }
    svg.line(NAMES, TOP, NAMES, height - BOTTOM, "stroke=\"#8A8D93\"");
    return svg.done();
  }
}
