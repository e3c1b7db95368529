package io.github.holdpath.scenes;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.report.CheckReport;
import io.github.holdpath.sim.report.ExplainReport;
import io.github.holdpath.sim.report.Ink;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import io.github.holdpath.sim.study.Explanation;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.sim.study.StudyResult;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every command that a story, the README or the guide shows says what is quoted below it, line by
 * line.
 */
class StoryTest {
  private static final String PROMPT = "$ sim/holdpath ";
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|'([^']*)'|(\\S+)");

  /**
   * One quoted run.
   *
   * @param page that shows it
   * @param command as shown, without the prompt
   * @param lines quoted from what it prints
   */
  record Quote(String page, String command, List<String> lines) {
    @Override
    public String toString() {
      return page + ": " + command;
    }
  }

  static List<Quote> quotes() throws IOException {
    List<Quote> quotes = new ArrayList<>();
    try (Stream<Path> pages = Files.list(Path.of("."))) {
      List<Path> all =
          new ArrayList<>(pages.filter(p -> p.toString().endsWith(".md")).sorted().toList());
      all.add(Path.of("../README.md"));
      all.add(Path.of("../docs/guide/README.md"));
      for (Path page : all) {
        quotes.addAll(quotes(page));
      }
    }
    return quotes;
  }

  private static List<Quote> quotes(Path page) throws IOException {
    List<Quote> quotes = new ArrayList<>();
    boolean open = false;
    for (String line : Files.readAllLines(page)) {
      if (line.startsWith(PROMPT)) {
        quotes.add(
            new Quote(
                page.getFileName().toString(), line.substring(PROMPT.length()), new ArrayList<>()));
        open = true;
      } else if (line.startsWith("```")) {
        open = false;
      } else if (open && !line.isBlank() && !line.equals("...")) {
        quotes.get(quotes.size() - 1).lines().add(line);
      }
    }
    return quotes;
  }

  @Test
  void everyStoryQuotesRuns() throws IOException {
    List<Quote> quotes = quotes();
    List<String> stories =
        List.of(
            "cartons.md",
            "glass-sheet.md",
            "shaft.md",
            "shaft-arm.md",
            "chocolates.md",
            "gear-blank.md",
            "steel-sheet.md",
            "peaches.md",
            "paint-tin-plain.md",
            "paint-tin.md",
            "cover.md",
            "circuit-board.md",
            "arm-log.md");
    for (String story : stories) {
      assertTrue(quotes.stream().anyMatch(q -> q.page().equals(story)), story);
    }
  }

  @ParameterizedTest
  @MethodSource("quotes")
  void theProgramPrintsWhatIsQuoted(Quote quote) throws SceneException {
    List<String> printed = run(quote.command()).lines().toList();
    assertFalse(quote.lines().isEmpty(), "a run without a quoted line");
    for (String line : quote.lines()) {
      assertTrue(
          printed.contains(line), "not printed: " + line + "\n" + String.join("\n", printed));
    }
  }

  private static String run(String command) throws SceneException {
    List<String> words = new ArrayList<>();
    Matcher m = WORD.matcher(command);
    while (m.find()) {
      words.add(m.group(1) != null ? m.group(1) : m.group(2) != null ? m.group(2) : m.group(3));
    }
    Map<String, String> set = new LinkedHashMap<>();
    String at = "worst";
    for (int i = 2; i + 1 < words.size(); i += 2) {
      if (words.get(i).equals("--at")) {
        at = words.get(i + 1);
        continue;
      }
      assertTrue(words.get(i).equals("--set"), "only --set and --at in stories: " + command);
      String[] pair = words.get(i + 1).split("=", 2);
      set.put(pair[0], pair[1]);
    }
    Scene scene = SceneReader.read(Path.of("..").resolve(words.get(1)), set).scene();
    StudyResult result = HoldStudy.run(scene, scene.requiredSafety());
    if (words.get(0).equals("check")) {
      return CheckReport.text(result, Ink.PLAIN);
    }
    assertTrue(words.get(0).equals("explain"), "only check and explain in stories: " + command);
    double time =
        at.equals("worst") ? result.worst().time() : Double.parseDouble(at.replace("s", ""));
    return ExplainReport.text(Explanation.at(scene, scene.requiredSafety(), time));
  }
}
