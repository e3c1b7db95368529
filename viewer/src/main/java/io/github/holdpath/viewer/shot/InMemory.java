package io.github.holdpath.viewer.shot;

import java.nio.ByteBuffer;
import org.lwjgl.opengl.GL;
import org.lwjgl.opengl.GL11C;
import org.lwjgl.system.Configuration;
import org.lwjgl.system.FunctionProvider;
import org.lwjgl.system.JNI;
import org.lwjgl.system.Library;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;
import org.lwjgl.system.SharedLibrary;

/**
 * An OpenGL context that draws in memory, by OSMesa. The binding has no class for it, so its few
 * functions are called by their addresses.
 *
 * @see "Mesa, include/GL/osmesa.h: signatures and constants"
 */
final class InMemory implements Offscreen {
  private static final int OSMESA_FORMAT = 0x22;
  private static final int OSMESA_DEPTH_BITS = 0x30;
  private static final int OSMESA_PROFILE = 0x33;
  private static final int OSMESA_CORE_PROFILE = 0x34;
  private static final int OSMESA_CONTEXT_MAJOR_VERSION = 0x36;
  private static final int OSMESA_CONTEXT_MINOR_VERSION = 0x37;

  private static final String[] NAMES = {"libOSMesa.so.8", "OSMesa"};

  /** Side of the picture that nobody looks at: all is drawn into frame buffers. */
  private static final int SIDE = 16;

  private final Functions functions;
  private final long context;
  private final ByteBuffer unseen;

  private InMemory(Functions functions, long context, ByteBuffer unseen) {
    this.functions = functions;
    this.context = context;
    this.unseen = unseen;
  }

  /**
   * Opens a context and makes it the thread's own.
   *
   * @throws NoGraphicsException if there is no OSMesa library, or none with OpenGL 3.3
   */
  static InMemory open() throws NoGraphicsException {
    // The functions of OpenGL are asked of OSMesa, not looked for in a library of their own.
    Configuration.OPENGL_EXPLICIT_INIT.set(true);
    try {
      return make(new Functions(library()));
    } catch (UnsatisfiedLinkError | ExceptionInInitializerError | NoClassDefFoundError e) {
      throw new NoGraphicsException("OSMesa is not installed", e);
    } catch (IllegalStateException e) {
      throw new NoGraphicsException(String.valueOf(e.getMessage()), e);
    }
  }

  /** The one that the binding's own setting names, or else any that is installed. */
  private static SharedLibrary library() {
    String told = Configuration.OPENGL_LIBRARY_NAME.get();
    UnsatisfiedLinkError last = new UnsatisfiedLinkError("no name to look for");
    for (String name : told == null ? NAMES : new String[] {told}) {
      try {
        return Library.loadNative(InMemory.class, "org.lwjgl.opengl", name);
      } catch (UnsatisfiedLinkError e) {
        last = e;
      }
    }
    throw last;
  }

  private static InMemory make(Functions functions) {
    try (MemoryStack stack = MemoryStack.stackPush()) {
      long wanted =
          MemoryUtil.memAddress(
              stack.ints(
                  OSMESA_FORMAT,
                  GL11C.GL_RGBA,
                  OSMESA_DEPTH_BITS,
                  24,
                  OSMESA_PROFILE,
                  OSMESA_CORE_PROFILE,
                  OSMESA_CONTEXT_MAJOR_VERSION,
                  3,
                  OSMESA_CONTEXT_MINOR_VERSION,
                  3,
                  0));
      long context = JNI.callPPP(wanted, 0L, functions.create);
      if (context == 0) {
        throw new IllegalStateException("OSMesa has no OpenGL 3.3");
      }
      ByteBuffer unseen = MemoryUtil.memAlloc(4 * SIDE * SIDE);
      InMemory made = new InMemory(functions, context, unseen);
      long pixels = MemoryUtil.memAddress(unseen);
      int current =
          JNI.callPPI(context, pixels, GL11C.GL_UNSIGNED_BYTE, SIDE, SIDE, functions.makeCurrent);
      // The function's answer is one byte.
      if ((current & 0xFF) == 0) {
        made.free();
        throw new IllegalStateException("OSMesa's context cannot be used");
      }
      if (GL.getFunctionProvider() != null) {
        GL.destroy();
      }
      GL.create(functions);
      GL.createCapabilities(true);
      return made;
    }
  }

  private void free() {
    JNI.callPV(context, functions.destroy);
    MemoryUtil.memFree(unseen);
  }

  @Override
  public void close() {
    GL.setCapabilities(null);
    // Another context, of either kind, can be opened after this one.
    GL.destroy();
    free();
    functions.library.free();
  }

  /** Addresses of the library's functions, and of OpenGL's by way of it. */
  private static final class Functions implements FunctionProvider {
    private final SharedLibrary library;
    private final long create;
    private final long makeCurrent;
    private final long destroy;
    private final long address;

    Functions(SharedLibrary library) {
      this.library = library;
      create = of("OSMesaCreateContextAttribs");
      makeCurrent = of("OSMesaMakeCurrent");
      destroy = of("OSMesaDestroyContext");
      address = of("OSMesaGetProcAddress");
    }

    private long of(String name) {
      long found = library.getFunctionAddress(name);
      if (found == 0) {
        throw new IllegalStateException("OSMesa has no " + name);
      }
      return found;
    }

    @Override
    public long getFunctionAddress(ByteBuffer name) {
      return JNI.callPP(MemoryUtil.memAddress(name), address);
    }
  }
}
