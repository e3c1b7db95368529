package io.github.holdpath.sim.cli;

import io.github.holdpath.sim.scene.read.SceneTemplates;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code new}: a scene file to fill in. */
@Command(
    name = "new",
    description =
        "Where do I begin? Prints a scene file to fill in: suction, jaws, centric, soft, magnet, patches or"
            + " recording.",
    footer = {"", "Example: holdpath new suction --out my-job.json"})
final class NewCommand implements Callable<Integer> {
  /** The table of samples that the scene for a recording names. */
  private static final String TABLE = "motion.csv";

  private final Console console;

  @Parameters(
      index = "0",
      paramLabel = "KIND",
      description = "suction, jaws, centric, soft, magnet, patches or recording.")
  private String kind = "";

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write it there; a file that exists is kept.")
  private String out = "";

  NewCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws Exception {
    List<String> kinds = SceneTemplates.kinds();
    if (!kinds.contains(kind)) {
      throw new CallException(
          "there is no kind \"" + kind + "\"; give one of " + String.join(", ", kinds));
    }
    String text = SceneTemplates.text(kind);
    if (out.isEmpty()) {
      console.out().print(text);
      return ExitStatus.OK;
    }
    Outputs outputs = new Outputs();
    outputs.add(out, text);
    if (Files.exists(Path.of(out))) {
      throw new CallException(out + " exists and is kept; choose another name");
    }
    String also = "";
    if (kind.equals("recording")) {
      Path table = Path.of(out).resolveSibling(TABLE);
      if (Files.exists(table)) {
        throw new CallException(table + " exists and is kept; choose another folder");
      }
      outputs.add(table.toString(), SceneTemplates.recordingTable());
      also = " and " + table + ", a table to replace by your own";
    }
    outputs.write();
    console.out().println("Wrote " + out + also + ".");
    console.out().println("Fill it in, then: holdpath check " + out);
    return ExitStatus.OK;
  }
}
