package io.github.holdpath.sim.cli;

import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.SceneException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.ServiceLoader;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program {@code holdpath}. */
@Command(
    name = "holdpath",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    description = {
      "Does a robot's grip keep hold of the part, all along its motion, and how much is in hand?"
    },
    footer = {
      "",
      "Example: holdpath check scenes/cartons.json",
      "A picture of a scene: holdpath view --help",
      "",
      "A calculation, not a release to run: the risk assessment and local rules decide."
    })
public final class Main {
  @Option(
      names = "--debug",
      scope = CommandLine.ScopeType.INHERIT,
      description = "Show where in the program a bug arose.")
  private boolean debug;

  private Main() {}

  /** Runs the program and exits with its status. */
  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    boolean colour = System.console() != null && System.getenv("NO_COLOR") == null;
    int status = run(new Console(out, err, colour), args);
    out.flush();
    System.exit(status);
  }

  /** Runs the program on a console of the caller's. */
  static int run(Console console, String... args) {
    Main main = new Main();
    CommandLine line =
        new CommandLine(main)
            .addSubcommand(new CheckCommand(console))
            .addSubcommand(new ExplainCommand(console))
            .addSubcommand(new NewCommand(console));
    for (CommandSource source : ServiceLoader.load(CommandSource.class)) {
      source.commands(console.out()).forEach(line::addSubcommand);
    }
    for (CommandLine command : line.getSubcommands().values()) {
      command.getCommandSpec().mixinStandardHelpOptions(true);
      command.getCommandSpec().versionProvider(new Version());
    }
    line.setOut(console.out())
        .setErr(console.err())
        .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
        .setUsageHelpWidth(80)
        .setParameterExceptionHandler((e, a) -> wrongCall(console, e))
        .setExecutionExceptionHandler((e, c, r) -> failed(console, e, main.debug));
    if (args.length == 0) {
      line.usage(console.out());
      return ExitStatus.OK;
    }
    return line.execute(args);
  }

  /** Version of the program as built. */
  public static String version() {
    String version = Main.class.getPackage().getImplementationVersion();
    return version == null ? "unpackaged" : version;
  }

  private static int wrongCall(Console console, ParameterException e) {
    console.err().println("holdpath: " + message(e));
    console
        .err()
        .println(
            "Help: "
                + e.getCommandLine().getCommandSpec().qualifiedName()
                + " --help. Nothing was written.");
    return ExitStatus.WRONG_INPUT;
  }

  /** The message of the parser; an unknown command is told which there are. */
  private static String message(ParameterException e) {
    CommandLine command = e.getCommandLine();
    boolean unknown = e instanceof UnmatchedArgumentException && command.getParent() == null;
    if (!unknown || ((UnmatchedArgumentException) e).isUnknownOption()) {
      return String.valueOf(e.getMessage());
    }
    return "there is no command \""
        + ((UnmatchedArgumentException) e).getUnmatched().get(0)
        + "\"; give one of "
        + String.join(", ", command.getSubcommands().keySet());
  }

  private static int failed(Console console, Exception e, boolean debug) {
    if (e instanceof SceneException scene) {
      List<Fault> faults = scene.faults();
      for (Fault fault : faults) {
        console.err().println(fault.toLine());
      }
      console
          .err()
          .println(
              String.format(
                  Locale.ROOT,
                  "holdpath: %d %s to mend; nothing was written.",
                  faults.size(),
                  faults.size() == 1 ? "fault" : "faults"));
      return ExitStatus.WRONG_INPUT;
    }
    if (e instanceof CallException) {
      console.err().println("holdpath: " + e.getMessage() + ". Nothing was written.");
      return ExitStatus.WRONG_INPUT;
    }
    console
        .err()
        .println(
            "holdpath: this is a bug of the program ("
                + e.getClass().getSimpleName()
                + ": "
                + e.getMessage()
                + "); please report it with the scene and the command at the project's issue"
                + " tracker. --debug shows where it arose.");
    if (debug) {
      e.printStackTrace(console.err());
    }
    return ExitStatus.BUG;
  }

  /** Name and version of the program. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"holdpath " + version()};
    }
  }
}
