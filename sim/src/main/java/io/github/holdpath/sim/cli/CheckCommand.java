package io.github.holdpath.sim.cli;

import io.github.holdpath.sim.report.CheckReport;
import io.github.holdpath.sim.report.Ink;
import io.github.holdpath.sim.report.ResultJson;
import io.github.holdpath.sim.report.SampleCsv;
import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.sim.study.Verdict;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code check}: does the grip hold along the route, how much is in hand, where is it tight. */
@Command(
    name = "check",
    description = "Does the grip hold along the route, how much is in hand, where is it tight?",
    footer = {
      "",
      "Example: holdpath check scenes/cartons.json --set grip/friction=0.4 --json result.json",
      "",
      "Exit status: 0 it holds, 1 it does not hold, 2 the call or a file is wrong, 70 a bug."
    })
final class CheckCommand implements Callable<Integer> {
  private static final double LEAST_STEP = 1e-5;
  private static final double MOST_ROWS = 500_000;

  private final Console console;

  @Mixin private SceneOptions options = new SceneOptions();

  @Option(
      names = "--json",
      paramLabel = "FILE",
      description = "Write the result file (- is standard output, then in place of the table).")
  private String json = "";

  @Option(
      names = "--csv",
      paramLabel = "FILE",
      description = "Write every sample as CSV (- is standard output, then in place of the table).")
  private String csv = "";

  @Option(
      names = "--samples",
      paramLabel = "TIME",
      description = "Spacing of the rows of --csv, 1ms unless given.")
  private String samples = "1ms";

  @Option(names = "--quiet", description = "Print no table.")
  private boolean quiet;

  @Option(names = "--no-colour", description = "No colour, even on a terminal.")
  private boolean noColour;

  CheckCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws Exception {
    if (json.equals("-") && csv.equals("-")) {
      throw new CallException(
          "--json - and --csv - cannot both go to standard output; name a file");
    }
    double step = step();
    LoadedScene loaded = options.load();
    StudyResult result = HoldStudy.run(loaded.scene(), options.requiredSafety(loaded));
    if (!csv.isEmpty() && result.cycleTime() / step > MOST_ROWS) {
      throw new CallException(
          "--samples "
              + samples
              + " would write more than half a million rows; choose a larger step");
    }
    Outputs outputs = new Outputs();
    String onOut = quiet ? "" : CheckReport.text(result, ink());
    if (!json.isEmpty()) {
      onOut = deliver(outputs, json, ResultJson.text(result, loaded, Main.version()), onOut);
    }
    if (!csv.isEmpty()) {
      onOut = deliver(outputs, csv, SampleCsv.text(result, step), onOut);
    }
    outputs.write();
    console.out().print(onOut);
    return result.verdict() == Verdict.HOLDS ? ExitStatus.OK : ExitStatus.DOES_NOT_HOLD;
  }

  private static String deliver(Outputs outputs, String target, String text, String onOut) {
    if (target.equals("-")) {
      return text;
    }
    outputs.add(Path.of(target), text);
    return onOut;
  }

  private double step() throws CallException {
    double step = Seconds.of("--samples", samples, "5ms");
    if (step < LEAST_STEP) {
      throw new CallException("--samples " + samples + ": give at least 0.01ms, as 5ms");
    }
    return step;
  }

  private Ink ink() {
    return console.colour() && !noColour ? Ink.ANSI : Ink.PLAIN;
  }
}
