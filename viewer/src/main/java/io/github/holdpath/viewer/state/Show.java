package io.github.holdpath.viewer.state;

/**
 * What of a stage is shown; the path always is.
 *
 * @param robot the robot, where the scene has one
 * @param tool frame, stem and fingers between flange and contacts
 * @param part the part
 * @param contacts each contact in the colour of its own margin; else in the tool's
 * @param forces what acts on the part, as arrows
 * @param labels names of places and the mark of the worst one
 * @param line time, move, factor and margin of the instant, over the picture
 * @param asItWas the path as it was first, thin beside the path, where that has changed
 * @param drop the part's flight after it has left the grip, an illustration
 */
public record Show(
    boolean robot,
    boolean tool,
    boolean part,
    boolean contacts,
    boolean forces,
    boolean labels,
    boolean line,
    boolean asItWas,
    boolean drop) {
  /** All but the flight and the line of the instant. */
  public static final Show DEFAULT =
      new Show(true, true, true, true, true, true, false, true, false);

  /** The same with or without the robot. */
  public Show withRobot(boolean on) {
    return new Show(on, tool, part, contacts, forces, labels, line, asItWas, drop);
  }

  /** The same with or without the tool. */
  public Show withTool(boolean on) {
    return new Show(robot, on, part, contacts, forces, labels, line, asItWas, drop);
  }

  /** The same with or without the part. */
  public Show withPart(boolean on) {
    return new Show(robot, tool, on, contacts, forces, labels, line, asItWas, drop);
  }

  /** The same with or without the contacts' own colours. */
  public Show withContacts(boolean on) {
    return new Show(robot, tool, part, on, forces, labels, line, asItWas, drop);
  }

  /** The same with or without arrows. */
  public Show withForces(boolean on) {
    return new Show(robot, tool, part, contacts, on, labels, line, asItWas, drop);
  }

  /** The same with or without names and mark. */
  public Show withLabels(boolean on) {
    return new Show(robot, tool, part, contacts, forces, on, line, asItWas, drop);
  }

  /** The same with or without the line of the instant. */
  public Show withLine(boolean on) {
    return new Show(robot, tool, part, contacts, forces, labels, on, asItWas, drop);
  }

  /** The same with or without the path as it was. */
  public Show withAsItWas(boolean on) {
    return new Show(robot, tool, part, contacts, forces, labels, line, on, drop);
  }

  /** The same with or without the flight. */
  public Show withDrop(boolean on) {
    return new Show(robot, tool, part, contacts, forces, labels, line, asItWas, on);
  }
}
