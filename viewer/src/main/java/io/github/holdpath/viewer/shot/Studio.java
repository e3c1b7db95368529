package io.github.holdpath.viewer.shot;

import com.jme3.asset.DesktopAssetManager;
import com.jme3.asset.plugins.ClasspathLocator;
import com.jme3.material.Material;
import com.jme3.material.RenderState;
import com.jme3.material.plugins.J3MLoader;
import com.jme3.renderer.RenderManager;
import com.jme3.renderer.lwjgl.LwjglGL;
import com.jme3.renderer.lwjgl.LwjglGLExt;
import com.jme3.renderer.lwjgl.LwjglGLFboGL3;
import com.jme3.renderer.opengl.GLRenderer;
import com.jme3.scene.Geometry;
import com.jme3.scene.Mesh;
import com.jme3.shader.plugins.GLSLLoader;
import com.jme3.texture.FrameBuffer;
import com.jme3.texture.Image;
import com.jme3.util.BufferAllocatorFactory;
import com.jme3.util.BufferUtils;
import com.jme3.util.PrimitiveAllocator;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.viewer.colour.Tones;
import io.github.holdpath.viewer.convert.ToEngine;
import io.github.holdpath.viewer.mesh.LineData;
import io.github.holdpath.viewer.mesh.MeshData;
import io.github.holdpath.viewer.state.PictureScene;
import io.github.holdpath.viewer.state.View;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.nio.ByteBuffer;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * The rendering core: draws a scene into an image without a window. Surfaces are unlit and colours
 * are not bent by a gamma curve, so that inside the path each pixel is exactly its colour. To be
 * used and closed by the thread that opened it.
 */
public final class Studio implements AutoCloseable {
  /** Samples of a pixel, for smooth borders. */
  private static final int SMOOTH = 4;

  private static final double PART_OPACITY = 0.55;

  private static final String MATERIAL = "Common/MatDefs/Misc/Unshaded.j3md";

  /** Kept, or the level set on it would be forgotten. */
  private static final Logger ENGINE_LOG = Logger.getLogger("com.jme3");

  private final Surfaceless context;
  private final GLRenderer renderer;
  private final RenderManager manager;
  private final DesktopAssetManager assets;

  private Studio(Surfaceless context) {
    this.context = context;
    this.renderer = new GLRenderer(new LwjglGL(), new LwjglGLExt(), new LwjglGLFboGL3());
    renderer.initialize();
    renderer.setMainFrameBufferSrgb(false);
    renderer.setLinearizeSrgbImages(false);
    this.manager = new RenderManager(renderer);
    this.assets = new DesktopAssetManager();
    assets.registerLocator("/", ClasspathLocator.class);
    assets.registerLoader(J3MLoader.class, "j3m", "j3md");
    assets.registerLoader(GLSLLoader.class, "vert", "frag", "glsl", "glsllib");
  }

  /**
   * Opens the core.
   *
   * @throws NoGraphicsException if nothing on this machine can draw, with what to install
   */
  public static Studio open() throws NoGraphicsException {
    ENGINE_LOG.setLevel(Level.SEVERE);
    // The engine's usual ways to memory are another native library and the insides of the JDK.
    System.setProperty(
        BufferAllocatorFactory.PROPERTY_BUFFER_ALLOCATOR_IMPLEMENTATION,
        PrimitiveAllocator.class.getName());
    return new Studio(Surfaceless.open());
  }

  /**
   * Draws a scene without any words.
   *
   * @param scene what to draw
   * @param view from where, and the size of the image
   */
  public BufferedImage draw(PictureScene scene, View view) {
    int width = view.width();
    int height = view.height();
    FrameBuffer smooth = target(width, height, SMOOTH);
    FrameBuffer plain = target(width, height, 1);
    try {
      // Made by the copy itself, the plain one would be bound behind the renderer's back.
      renderer.setFrameBuffer(plain);
      renderer.setFrameBuffer(smooth);
      // Before the background, which would be clipped to the last picture's size.
      double size = Math.max(1e-3, farthest(scene, view));
      manager.setCamera(ToEngine.camera(view, size * 0.002, size * 20), false);
      renderer.setBackgroundColor(ToEngine.colour(Tones.PAPER, 1));
      renderer.clearBuffers(true, true, true);
      for (LineData lines : scene.ground()) {
        draw(ToEngine.lines(lines), solid());
      }
      for (MeshData body : scene.grip()) {
        draw(ToEngine.mesh(body), solid());
      }
      for (MeshData body : scene.part()) {
        draw(ToEngine.mesh(body), glass());
      }
      for (LineData lines : scene.edges()) {
        draw(ToEngine.lines(lines), solid());
      }
      // Part and grip must not hide the path: it is what the picture is for.
      renderer.clearBuffers(false, true, false);
      if (scene.path().size() > 0) {
        draw(ToEngine.mesh(scene.path()), solid());
      }
      renderer.copyFrameBuffer(smooth, plain, true, false);
      ByteBuffer pixels = BufferUtils.createByteBuffer(4 * width * height);
      renderer.readFrameBuffer(plain, pixels);
      return image(pixels, width, height);
    } finally {
      renderer.setFrameBuffer(null);
      smooth.dispose();
      plain.dispose();
    }
  }

  private static double farthest(PictureScene scene, View view) {
    double most = 0;
    for (Vec3 p : scene.fit()) {
      most = Math.max(most, view.project(p).depth());
    }
    return most;
  }

  private static FrameBuffer target(int width, int height, int samples) {
    FrameBuffer target = new FrameBuffer(width, height, samples);
    target.addColorTarget(FrameBuffer.FrameBufferTarget.newTarget(Image.Format.RGBA8));
    target.setDepthTarget(FrameBuffer.FrameBufferTarget.newTarget(Image.Format.Depth24));
    return target;
  }

  private void draw(Mesh mesh, Material material) {
    if (mesh.getVertexCount() == 0) {
      return;
    }
    Geometry geometry = new Geometry("", mesh);
    geometry.setMaterial(material);
    geometry.updateGeometricState();
    manager.renderGeometry(geometry);
  }

  private Material solid() {
    Material material = new Material(assets, MATERIAL);
    material.setBoolean("VertexColor", true);
    return material;
  }

  private Material glass() {
    Material material = solid();
    material.setColor("Color", ToEngine.colour(0xFFFFFF, PART_OPACITY));
    material.getAdditionalRenderState().setBlendMode(RenderState.BlendMode.Alpha);
    material.getAdditionalRenderState().setDepthWrite(false);
    return material;
  }

  /** The engine's rows begin at the bottom. */
  private static BufferedImage image(ByteBuffer rgba, int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int at = 4 * (x + width * (height - 1 - y));
        pixels[x + width * y] =
            (rgba.get(at) & 0xFF) << 16 | (rgba.get(at + 1) & 0xFF) << 8 | rgba.get(at + 2) & 0xFF;
      }
    }
    return image;
  }

  @Override
  public void close() {
    renderer.cleanup();
    context.close();
  }
}
