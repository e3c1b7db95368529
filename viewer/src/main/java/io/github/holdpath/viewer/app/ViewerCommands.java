package io.github.holdpath.viewer.app;

import io.github.holdpath.sim.cli.CommandSource;
import java.io.PrintWriter;
import java.util.List;

/** Brings the commands of this module to the command line. */
public final class ViewerCommands implements CommandSource {
  /** For the loader of services. */
  public ViewerCommands() {}

  @Override
  public List<Object> commands(PrintWriter out) {
    return List.of(new ViewCommand(out));
  }
}
