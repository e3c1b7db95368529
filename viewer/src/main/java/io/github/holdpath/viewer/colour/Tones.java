package io.github.holdpath.viewer.colour;

/** Colours of all that is not a margin, as {@code 0xRRGGBB}: greys and browns that stay behind. */
public final class Tones {
  /** Behind everything. */
  public static final int PAPER = 0xF6F4EE;

  /** Lines of the floor. */
  public static final int GRID = 0xDAD6CA;

  /** Path as seen on the floor, and plumb lines to it. */
  public static final int SHADOW = 0xB9B3A3;

  /** World axes. */
  public static final int AXIS = 0x5C6068;

  /** Path while the part is not held. */
  public static final int NOT_HELD = 0x9A9DA3;

  /** The part. */
  public static final int PART = 0xC9AE84;

  /** Edges of the part. */
  public static final int EDGE = 0x7A6647;

  /** Tool and grip. */
  public static final int TOOL = 0x6B7480;

  /** Arms and plates of the robot. */
  public static final int ROBOT = 0xD6D9DC;

  /** Joints, rails and rods of the robot. */
  public static final int ROBOT_JOINT = 0xBFC4C9;

  /** What the robot stands on. */
  public static final int ROBOT_BASE = 0xCBCFD3;

  /** Frame, stem and fingers of the tool. */
  public static final int TOOL_BODY = 0x9BA3AD;

  /** Flight of a part that has left the grip. */
  public static final int FLIGHT = 0x3A3D42;

  /** Text. */
  public static final int INK = 0x22262B;

  /** Text that is less important. */
  public static final int FAINT_INK = 0x5F6670;

  private Tones() {}
}
