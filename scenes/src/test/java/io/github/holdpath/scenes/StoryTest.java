package io.github.holdpath.scenes;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.report.CheckReport;
import io.github.holdpath.sim.report.Ink;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.SceneException;
import io.github.holdpath.sim.scene.read.SceneReader;
import io.github.holdpath.sim.study.HoldStudy;
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

/** Every command that a story or the README shows says what is quoted below it, line by line. */
class StoryTest {
  private static final String PROMPT = "$ sim/holdpath check ";
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

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
    for (String story : List.of("cartons.md", "glass-sheet.md", "shaft.md", "arm-log.md")) {
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
      words.add(m.group(1) != null ? m.group(1) : m.group(2));
    }
    Map<String, String> set = new LinkedHashMap<>();
    for (int i = 1; i + 1 < words.size(); i += 2) {
      assertTrue(words.get(i).equals("--set"), "only --set in stories: " + command);
      String[] pair = words.get(i + 1).split("=", 2);
      set.put(pair[0], pair[1]);
    }
    Scene scene = SceneReader.read(Path.of("..").resolve(words.get(0)), set).scene();
    return CheckReport.text(HoldStudy.run(scene, scene.requiredSafety()), Ink.PLAIN);
  }
}
