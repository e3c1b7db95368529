package io.github.holdpath.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.holdpath.sim.report.CheckReport;
import io.github.holdpath.sim.report.Ink;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import io.github.holdpath.sim.study.HoldStudy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The README's picture is what the program prints, drawn as SVG. Remake it with {@code mvn -pl
 * scenes -am test -Dtest=PictureTest -Dsurefire.failIfNoSpecifiedTests=false -DwritePictures=true}.
 */
class PictureTest {
  private static final Path PICTURE = Path.of("../docs/pictures/check-cartons.svg");
  private static final int LINE = 18;
  private static final int MARGIN = 14;
  private static final int WIDTH = 710;
  private static final String COMMAND = "$ sim/holdpath check scenes/cartons.json";

  @Test
  void thePictureShowsWhatTheProgramPrints() throws IOException, SceneException {
    Scene scene = SceneReader.read(Path.of("cartons.json"), Map.of()).scene();
    String text = CheckReport.text(HoldStudy.run(scene, scene.requiredSafety()), Ink.PLAIN);
    String drawn = draw(text.substring(0, text.indexOf("\nSettings of each move")));
    if (Boolean.getBoolean("writePictures")) {
      Files.createDirectories(PICTURE.getParent());
      Files.writeString(PICTURE, drawn);
    }
    assertEquals(drawn, Files.readString(PICTURE), "remake the picture");
  }

  private static String draw(String text) {
    List<String> lines = (COMMAND + "\n" + text).lines().toList();
    int height = 2 * MARGIN + LINE * lines.size();
    StringBuilder svg = new StringBuilder();
    svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
        .append(WIDTH)
        .append("\" height=\"")
        .append(height)
        .append(
            "\" role=\"img\" aria-label=\"What holdpath check prints for the cartons scene\">\n")
        .append("<rect width=\"100%\" height=\"100%\" rx=\"8\" fill=\"#FBFAF7\"")
        .append(" stroke=\"#C9C4B8\"/>\n")
        .append("<g font-family=\"ui-monospace, Menlo, Consolas, 'DejaVu Sans Mono', monospace\"")
        .append(" font-size=\"13.5\" fill=\"#22262B\">\n");
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      svg.append("<text x=\"")
          .append(MARGIN)
          .append("\" y=\"")
          .append(MARGIN + LINE * i + 13)
          .append("\" xml:space=\"preserve\"")
          .append(style(line))
          .append('>')
          .append(line.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;"))
          .append("</text>\n");
    }
    return svg.append("</g>\n</svg>\n").toString();
  }

  private static String style(String line) {
    if (line.startsWith("$")) {
      return " fill=\"#5A6270\"";
    }
    if (line.startsWith("DOES NOT HOLD") || line.contains("!")) {
      return " fill=\"#B33A00\" font-weight=\"bold\"";
    }
    return line.startsWith("HOLDS") ? " fill=\"#00609A\" font-weight=\"bold\"" : "";
  }
}
