package io.github.holdpath.viewer.shot;

import org.lwjgl.glfw.GLFW;
import org.lwjgl.opengl.GL;
import org.lwjgl.system.Configuration;
import org.lwjgl.system.MemoryUtil;

/**
 * The OpenGL context of a window that is never shown: for machines whose driver draws for windows
 * only, as those of Windows do.
 */
final class HiddenWindow implements Offscreen {
  /** Side of the window that nobody looks at: all is drawn into frame buffers. */
  private static final int SIDE = 16;

  private final long window;

  private HiddenWindow(long window) {
    this.window = window;
  }

  /**
   * Opens a context and makes it the thread's own.
   *
   * @throws NoGraphicsException if no window with OpenGL 3.3 can be made
   */
  static HiddenWindow open() throws NoGraphicsException {
    if (Machine.HERE == Machine.MAC) {
      // Its windows belong to the first thread of a process, which is not ours.
      throw new NoGraphicsException("not made for macOS yet", new IllegalStateException());
    }
    try {
      return make();
    } catch (UnsatisfiedLinkError | ExceptionInInitializerError | NoClassDefFoundError e) {
      throw new NoGraphicsException("OpenGL is not installed", e);
    } catch (IllegalStateException e) {
      throw new NoGraphicsException(String.valueOf(e.getMessage()), e);
    }
  }

  private static HiddenWindow make() {
    if (Machine.HERE == Machine.LINUX) {
      GLFW.glfwInitHint(GLFW.GLFW_PLATFORM, GLFW.GLFW_PLATFORM_X11);
    }
    if (!GLFW.glfwInit()) {
      throw new IllegalStateException("there is no display to draw by");
    }
    GLFW.glfwDefaultWindowHints();
    GLFW.glfwWindowHint(GLFW.GLFW_VISIBLE, GLFW.GLFW_FALSE);
    GLFW.glfwWindowHint(GLFW.GLFW_CONTEXT_VERSION_MAJOR, 3);
    GLFW.glfwWindowHint(GLFW.GLFW_CONTEXT_VERSION_MINOR, 3);
    GLFW.glfwWindowHint(GLFW.GLFW_OPENGL_PROFILE, GLFW.GLFW_OPENGL_CORE_PROFILE);
    long window = GLFW.glfwCreateWindow(SIDE, SIDE, "Holdpath", MemoryUtil.NULL, MemoryUtil.NULL);
    if (window == MemoryUtil.NULL) {
      GLFW.glfwTerminate();
      throw new IllegalStateException("the driver has no OpenGL 3.3 for windows");
    }
    GLFW.glfwMakeContextCurrent(window);
    if (GL.getFunctionProvider() != null) {
      GL.destroy();
    }
    // Another kind may have been tried before.
    Configuration.OPENGL_CONTEXT_API.set("native");
    GL.create();
    GL.createCapabilities(true);
    return new HiddenWindow(window);
  }

  @Override
  public void close() {
    GL.setCapabilities(null);
    GL.destroy();
    GLFW.glfwMakeContextCurrent(MemoryUtil.NULL);
    GLFW.glfwDestroyWindow(window);
    GLFW.glfwTerminate();
  }
}
