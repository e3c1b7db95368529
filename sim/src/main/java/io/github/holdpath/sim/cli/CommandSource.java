package io.github.holdpath.sim.cli;

import java.io.PrintWriter;
import java.util.List;

/**
 * Commands of another module, found where its jar is on the class path (a service in the sense of
 * {@link java.util.ServiceLoader}). So this module need not know those that build on it.
 */
public interface CommandSource {
  /**
   * The commands, as objects that the parser knows by their annotations. A command that throws a
   * {@link CallException} ends with its message and status 2.
   *
   * @param out standard output
   */
  List<Object> commands(PrintWriter out);
}
