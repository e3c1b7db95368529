package io.github.holdpath.viewer.shot;

/** An OpenGL context without a window. It belongs to the thread that opened it. */
sealed interface Offscreen extends AutoCloseable permits Surfaceless, InMemory {
  /**
   * Opens a context and makes it the thread's own: by EGL, which may use a graphics card, or else
   * by OSMesa, which computes the picture in memory.
   *
   * @throws NoGraphicsException if this machine has neither
   */
  static Offscreen open() throws NoGraphicsException {
    try {
      return Surfaceless.open();
    } catch (NoGraphicsException without) {
      try {
        return InMemory.open();
      } catch (NoGraphicsException neither) {
        without.addSuppressed(neither);
        throw without;
      }
    }
  }

  @Override
  void close();
}
