package io.github.holdpath.viewer.shot;

import java.util.Locale;

/** The kinds of operating system that draw in different ways. */
enum Machine {
  LINUX("install one, on Debian and Ubuntu: apt-get install libegl1 libgl1-mesa-dri"),
  WINDOWS("install the driver of the graphics card; it must have OpenGL 3.3"),
  MAC("make pictures on Linux or Windows; all other commands work here");

  /** The one that this program runs on. */
  static final Machine HERE = of(System.getProperty("os.name", ""));

  /** What to do where nothing can draw. */
  final String advice;

  Machine(String advice) {
    this.advice = advice;
  }

  /**
   * By the name that Java gives a system; Unix systems without a name of their own count as Linux.
   */
  static Machine of(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return lower.startsWith("windows") ? WINDOWS : lower.startsWith("mac") ? MAC : LINUX;
  }
}
