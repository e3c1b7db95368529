package io.github.holdpath.viewer.shot;

import com.jme3.asset.DesktopAssetManager;
import com.jme3.asset.plugins.ClasspathLocator;
import com.jme3.material.plugins.J3MLoader;
import com.jme3.renderer.RenderManager;
import com.jme3.renderer.lwjgl.LwjglGL;
import com.jme3.renderer.lwjgl.LwjglGLExt;
import com.jme3.renderer.lwjgl.LwjglGLFboGL3;
import com.jme3.renderer.opengl.GLRenderer;
import com.jme3.scene.Geometry;
import com.jme3.shader.plugins.GLSLLoader;
import com.jme3.texture.FrameBuffer;
import com.jme3.texture.Image;
import com.jme3.util.BufferAllocatorFactory;
import com.jme3.util.BufferUtils;
import com.jme3.util.PrimitiveAllocator;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.convert.ToEngine;
import io.github.holdpath.viewer.state.Item;
import io.github.holdpath.viewer.state.Layer;
import io.github.holdpath.viewer.state.View;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.IntBuffer;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import org.lwjgl.opengl.GL11;
import org.lwjgl.opengl.GL30;

/**
 * The rendering core: draws items into an image without a window. The path is unlit and colours are
 * not bent by a gamma curve, so that inside the path each pixel is exactly its colour. To be used
 * and closed by the thread that opened it.
 */
public final class Studio implements AutoCloseable {
  /** Samples of a pixel for smooth borders, for pictures that stay. */
  public static final int SMOOTH = 4;

  /** One sample a pixel, for pictures that move. */
  public static final int QUICK = 1;

  /** Side of a tile of a large image, pixels: what one takes of memory stays in bounds. */
  private static final int TILE = 2048;

  /** Kept, or the level set on it would be forgotten. */
  private static final Logger ENGINE_LOG = Logger.getLogger("com.jme3");

  private final Offscreen context;
  private final GLRenderer renderer;
  private final RenderManager manager;
  private final Props props;
  private @Nullable Canvas canvas;

  private Studio(Offscreen context) {
    this.context = context;
    this.renderer = new GLRenderer(new LwjglGL(), new LwjglGLExt(), new LwjglGLFboGL3());
    renderer.initialize();
    renderer.setMainFrameBufferSrgb(false);
    renderer.setLinearizeSrgbImages(false);
    this.manager = new RenderManager(renderer);
    DesktopAssetManager assets = new DesktopAssetManager();
    assets.registerLocator("/", ClasspathLocator.class);
    assets.registerLoader(J3MLoader.class, "j3m", "j3md");
    assets.registerLoader(GLSLLoader.class, "vert", "frag", "glsl", "glsllib");
    this.props = new Props(assets);
  }

  /**
   * Opens the core.
   *
   * @throws NoGraphicsException if nothing on this machine can draw, with what to install
   */
  public static Studio open() throws NoGraphicsException {
    return on(Offscreen::open);
  }

  /** Opens the core on a context of a kind. */
  static Studio on(Opening opening) throws NoGraphicsException {
    ENGINE_LOG.setLevel(Level.SEVERE);
    // The engine's usual ways to memory are another native library and the insides of the JDK.
    System.setProperty(
        BufferAllocatorFactory.PROPERTY_BUFFER_ALLOCATOR_IMPLEMENTATION,
        PrimitiveAllocator.class.getName());
    return new Studio(opening.open());
  }

  /** How a context is opened. */
  @FunctionalInterface
  interface Opening {
    /** Opens it for this thread. */
    Offscreen open() throws NoGraphicsException;
  }

  /**
   * Draws items without any words into a new image.
   *
   * @param items what to draw, layer by layer
   * @param view from where, and the size of the image
   * @param samples of a pixel, {@link #QUICK} or {@link #SMOOTH}
   */
  public BufferedImage draw(List<Item> items, View view, int samples) {
    BufferedImage image =
        new BufferedImage(view.width(), view.height(), BufferedImage.TYPE_INT_RGB);
    draw(items, view, samples, image);
    return image;
  }

  /**
   * Draws items without any words.
   *
   * @param items what to draw
   * @param view from where, and the size of the image
   * @param samples of a pixel, {@link #QUICK} or {@link #SMOOTH}
   * @param into an image of that size with a whole number {@code 0xRRGGBB} a pixel; overwritten
   */
  public void draw(List<Item> items, View view, int samples, BufferedImage into) {
    tile(items, view, new Tile(0, 0, view.width(), view.height()), samples, 1, into);
  }

  /**
   * Draws items without any words into a new image that may be larger than what the driver can draw
   * at once: it is put together from tiles. Borders are smooth.
   *
   * @param items what to draw
   * @param view from where, and the size of the image
   * @param lineWidth of lines, whole pixels, at least 1
   */
  public BufferedImage drawLarge(List<Item> items, View view, int lineWidth) {
    BufferedImage image =
        new BufferedImage(view.width(), view.height(), BufferedImage.TYPE_INT_RGB);
    int side = Math.min(TILE, GL11.glGetInteger(GL30.GL_MAX_RENDERBUFFER_SIZE));
    for (int y = 0; y < view.height(); y += side) {
      for (int x = 0; x < view.width(); x += side) {
        int width = Math.min(side, view.width() - x);
        int height = Math.min(side, view.height() - y);
        tile(items, view, new Tile(x, y, width, height), SMOOTH, lineWidth, image);
      }
    }
    return image;
  }

  /** A part of an image, pixels from its left and upper edge. */
  private record Tile(int left, int top, int width, int height) {
    View.Area moved(double dx, double dy) {
      return new View.Area(left + dx, top + dy, left + width + dx, top + height + dy);
    }
  }

  private void tile(
      List<Item> items, View view, Tile tile, int samples, int lineWidth, BufferedImage into) {
    Canvas on = canvas(tile.width(), tile.height(), samples);
    // Made by the copy itself, the plain one would be bound behind the renderer's back.
    renderer.setFrameBuffer(on.plain);
    renderer.setFrameBuffer(on.drawn);
    // Before the background, which would be clipped to the last picture's size.
    manager.setCamera(ToEngine.camera(view, tile.moved(0, 0)), false);
    renderer.setBackgroundColor(ToEngine.colour(Tones.PAPER, 1));
    renderer.clearBuffers(true, true, true);
    for (Layer layer : Layer.values()) {
      if (layer == Layer.FORCE || layer == Layer.PATH) {
        // Part and grip must not hide the path: it is what the picture is for.
        renderer.clearBuffers(false, true, false);
      }
      for (Item item : items) {
        if (item.layer() == layer) {
          props.of(item).ifPresent(g -> render(g, view, tile, widthOf(item, lineWidth)));
        }
      }
    }
    props.dropUnused();
    if (on.drawn != on.plain) {
      renderer.copyFrameBuffer(on.drawn, on.plain, true, false);
    }
    on.bytes.clear();
    renderer.readFrameBufferWithFormat(on.plain, on.bytes, Image.Format.BGRA8);
    copy(on.bytes.asIntBuffer(), tile, into);
    renderer.setFrameBuffer(null);
    renderer.postFrame();
  }

  private static int widthOf(Item item, int lineWidth) {
    return item instanceof Item.Lines ? lineWidth : 1;
  }

  /** Lines wider than a pixel are drawn several times side by side: a driver may know no width. */
  private void render(Geometry geometry, View view, Tile tile, int width) {
    if (width == 1) {
      manager.renderGeometry(geometry);
      return;
    }
    for (int i = 0; i < width; i++) {
      for (int j = 0; j < width; j++) {
        double dx = i - (width - 1) / 2.0;
        double dy = j - (width - 1) / 2.0;
        manager.setCamera(ToEngine.camera(view, tile.moved(dx, dy)), false);
        manager.renderGeometry(geometry);
      }
    }
    manager.setCamera(ToEngine.camera(view, tile.moved(0, 0)), false);
  }

  /** The engine's rows begin at the bottom. */
  private static void copy(IntBuffer from, Tile tile, BufferedImage into) {
    int[] pixels = ((DataBufferInt) into.getRaster().getDataBuffer()).getData();
    for (int y = 0; y < tile.height(); y++) {
      int at = into.getWidth() * (tile.top() + y) + tile.left();
      from.get(tile.width() * (tile.height() - 1 - y), pixels, at, tile.width());
    }
  }

  private Canvas canvas(int width, int height, int samples) {
    Canvas known = canvas;
    if (known != null && known.fits(width, height, samples)) {
      return known;
    }
    if (known != null) {
      known.dispose();
    }
    Canvas made = new Canvas(width, height, samples);
    canvas = made;
    return made;
  }

  @Override
  public void close() {
    Canvas known = canvas;
    if (known != null) {
      known.dispose();
    }
    props.dropAll();
    renderer.cleanup();
    context.close();
  }

  /** What is drawn on, kept while size and quality stay. */
  private static final class Canvas {
    private final int width;
    private final int height;
    private final int samples;
    private final FrameBuffer plain;
    private final FrameBuffer drawn;
    private final ByteBuffer bytes;

    Canvas(int width, int height, int samples) {
      this.width = width;
      this.height = height;
      this.samples = samples;
      this.plain = target(width, height, 1);
      this.drawn = samples == 1 ? plain : target(width, height, samples);
      this.bytes = BufferUtils.createByteBuffer(4 * width * height).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static FrameBuffer target(int width, int height, int samples) {
      FrameBuffer target = new FrameBuffer(width, height, samples);
      target.addColorTarget(FrameBuffer.FrameBufferTarget.newTarget(Image.Format.RGBA8));
      target.setDepthTarget(FrameBuffer.FrameBufferTarget.newTarget(Image.Format.Depth24));
      return target;
    }

    boolean fits(int w, int h, int n) {
      return width == w && height == h && samples == n;
    }

    void dispose() {
      plain.dispose();
      if (drawn != plain) {
        drawn.dispose();
      }
    }
  }
}
