package io.github.holdpath.viewer.shot;

import java.util.List;
import java.util.Objects;

/** An OpenGL context without a window. It belongs to the thread that opened it. */
sealed interface Offscreen extends AutoCloseable permits Surfaceless, InMemory, HiddenWindow {
  /**
   * Opens a context and makes it the thread's own. On Linux by EGL, which may use a graphics card
   * and needs no display, or else by OSMesa, which computes the picture in memory; where there is
   * neither, and on other systems, by a window that is not shown.
   *
   * @throws NoGraphicsException if this machine has none of them
   */
  static Offscreen open() throws NoGraphicsException {
    List<Studio.Opening> ways =
        Machine.HERE == Machine.LINUX
            ? List.of(Surfaceless::open, InMemory::open, HiddenWindow::open)
            : List.of(HiddenWindow::open);
    NoGraphicsException none = null;
    for (Studio.Opening way : ways) {
      try {
        return way.open();
      } catch (NoGraphicsException e) {
        if (none == null) {
          none = e;
        } else {
          none.addSuppressed(e);
        }
      }
    }
    throw Objects.requireNonNull(none);
  }

  @Override
  void close();
}
