package io.github.holdpath.viewer.shot;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.IntBuffer;
import java.util.Locale;
import org.lwjgl.egl.EGL;
import org.lwjgl.egl.EGL10;
import org.lwjgl.egl.EGL12;
import org.lwjgl.egl.EGL14;
import org.lwjgl.egl.EGL15;
import org.lwjgl.egl.EGLCapabilities;
import org.lwjgl.opengl.GL;
import org.lwjgl.system.Configuration;
import org.lwjgl.system.JNI;
import org.lwjgl.system.MemoryStack;

/**
 * An OpenGL context without window, display or surface, by EGL. It belongs to the thread that
 * opened it.
 */
final class Surfaceless implements Offscreen {
  /** EGL_PLATFORM_SURFACELESS_MESA, of the extension EGL_MESA_platform_surfaceless. */
  private static final int PLATFORM = 0x31DD;

  private final long display;
  private final long context;

  private Surfaceless(long display, long context) {
    this.display = display;
    this.context = context;
  }

  /**
   * Opens a context and makes it the thread's own.
   *
   * @throws NoGraphicsException if there is no EGL library, or none that draws without a surface
   */
  static Surfaceless open() throws NoGraphicsException {
    Configuration.OPENGL_CONTEXT_API.set("EGL");
    // A missing library is told in our own words.
    Configuration.DEBUG_STREAM.set(new PrintStream(OutputStream.nullOutputStream()));
    try {
      return make();
    } catch (UnsatisfiedLinkError | ExceptionInInitializerError | NoClassDefFoundError e) {
      throw new NoGraphicsException("EGL is not installed", e);
    } catch (IllegalStateException e) {
      throw new NoGraphicsException(String.valueOf(e.getMessage()), e);
    }
  }

  private static Surfaceless make() {
    EGLCapabilities client = EGL.getCapabilities();
    if (client == null || client.eglGetPlatformDisplayEXT == 0) {
      throw new IllegalStateException("EGL has no platforms");
    }
    long display;
    try (MemoryStack stack = MemoryStack.stackPush()) {
      // The binding's own method refuses the display 0, which this platform asks for.
      display = JNI.callPPP(PLATFORM, EGL10.EGL_NO_DISPLAY, 0L, client.eglGetPlatformDisplayEXT);
      check(display != EGL10.EGL_NO_DISPLAY, "no display without a surface");
      IntBuffer major = stack.mallocInt(1);
      IntBuffer minor = stack.mallocInt(1);
      check(EGL10.eglInitialize(display, major, minor), "EGL found no driver");
      EGL.createDisplayCapabilities(display, major.get(0), minor.get(0));
      check(EGL12.eglBindAPI(EGL14.EGL_OPENGL_API), "the driver has no OpenGL");
      var configs = stack.mallocPointer(1);
      IntBuffer count = stack.mallocInt(1);
      IntBuffer wanted =
          stack.ints(
              EGL10.EGL_SURFACE_TYPE,
              0,
              EGL12.EGL_RENDERABLE_TYPE,
              EGL14.EGL_OPENGL_BIT,
              EGL10.EGL_NONE);
      check(
          EGL10.eglChooseConfig(display, wanted, configs, count) && count.get(0) > 0,
          "no configuration");
      IntBuffer attributes =
          stack.ints(
              EGL15.EGL_CONTEXT_MAJOR_VERSION,
              3,
              EGL15.EGL_CONTEXT_MINOR_VERSION,
              3,
              EGL15.EGL_CONTEXT_OPENGL_PROFILE_MASK,
              EGL15.EGL_CONTEXT_OPENGL_CORE_PROFILE_BIT,
              EGL10.EGL_NONE);
      long context =
          EGL10.eglCreateContext(display, configs.get(0), EGL10.EGL_NO_CONTEXT, attributes);
      check(context != EGL10.EGL_NO_CONTEXT, "the driver has no OpenGL 3.3");
      check(
          EGL10.eglMakeCurrent(display, EGL10.EGL_NO_SURFACE, EGL10.EGL_NO_SURFACE, context),
          "the driver needs a surface");
      if (GL.getFunctionProvider() == null) {
        GL.create();
      }
      GL.createCapabilities(true);
      return new Surfaceless(display, context);
    }
  }

  private static void check(boolean fine, String otherwise) {
    if (!fine) {
      throw new IllegalStateException(
          String.format(Locale.ROOT, "%s, EGL error 0x%x", otherwise, EGL10.eglGetError()));
    }
  }

  @Override
  public void close() {
    GL.setCapabilities(null);
    EGL10.eglMakeCurrent(display, EGL10.EGL_NO_SURFACE, EGL10.EGL_NO_SURFACE, EGL10.EGL_NO_CONTEXT);
    EGL10.eglDestroyContext(display, context);
    EGL10.eglTerminate(display);
  }
}
