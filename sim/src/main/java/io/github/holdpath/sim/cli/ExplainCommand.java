package io.github.holdpath.sim.cli;

import io.github.holdpath.sim.report.ExplainReport;
import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.study.Explanation;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.sim.study.StudyResult;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code explain}: how comes the number at one instant. */
@Command(
    name = "explain",
    description = "How comes the factor at one instant? The whole sum, step by step.",
    footer = {"", "Example: holdpath explain scenes/cartons.json --at worst"})
final class ExplainCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private SceneOptions options = new SceneOptions();

  @Option(
      names = "--at",
      paramLabel = "TIME",
      description = "The instant, as 1.23s, or worst (unless given).")
  private String at = "worst";

  ExplainCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws Exception {
    boolean worst = at.equals("worst");
    double wanted = worst ? 0 : Seconds.of("--at", at, "1.23s or worst");
    LoadedScene loaded = options.load();
    double safety = options.requiredSafety(loaded);
    StudyResult result = HoldStudy.run(loaded.scene(), safety);
    if (wanted > result.cycleTime()) {
      throw new CallException(
          "--at "
              + at
              + ": the motion ends at "
              + (Math.floor(result.cycleTime() * 1e4) / 1e4)
              + "s; give a time up to that");
    }
    double time = worst ? result.worst().time() : wanted;
    console.out().print(ExplainReport.text(Explanation.at(loaded.scene(), safety, time)));
    return ExitStatus.OK;
  }
}
