package io.github.holdpath.viewer.convert;

import com.jme3.math.ColorRGBA;
import com.jme3.math.Transform;
import com.jme3.math.Vector3f;
import com.jme3.renderer.Camera;
import com.jme3.scene.Mesh;
import com.jme3.scene.VertexBuffer;
import com.jme3.util.BufferUtils;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.viewer.mesh.LineData;
import io.github.holdpath.viewer.mesh.MeshData;
import io.github.holdpath.viewer.state.View;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.FloatBuffer;
import java.util.Arrays;

/**
 * Hands values to the engine. Ours are doubles with Z up, the engine's floats with Y up: {@code (x,
 * y, z)} becomes {@code (x, z, -y)}, a turn by a quarter about x.
 */
public final class ToEngine {
  private static final int OPAQUE = 0xFF;

  private ToEngine() {}

  /** A point or direction. */
  public static Vector3f vector(Vec3 v) {
    return new Vector3f((float) v.x(), (float) v.z(), 0f - (float) v.y());
  }

  /** A frame: the same turn of axes on both sides. */
  public static Transform transform(Pose pose) {
    Quaternion q = pose.rotation();
    return new Transform(
        vector(pose.position()),
        new com.jme3.math.Quaternion(
            (float) q.x(), (float) q.z(), 0f - (float) q.y(), (float) q.w()));
  }

  /** A colour {@code 0xRRGGBB}; opacity from 0 to 1. */
  public static ColorRGBA colour(int rgb, double opacity) {
    return new ColorRGBA(
        (rgb >> 16 & 0xFF) / 255f, (rgb >> 8 & 0xFF) / 255f, (rgb & 0xFF) / 255f, (float) opacity);
  }

  /** A surface; its colours are bytes, so that a pixel of it is exactly its colour. */
  public static Mesh mesh(MeshData data) {
    Mesh mesh = new Mesh();
    mesh.setBuffer(VertexBuffer.Type.Position, 3, turned(data.positions()));
    mesh.setBuffer(VertexBuffer.Type.Normal, 3, turned(data.normals()));
    setColours(mesh, colours(data.colours()));
    mesh.setBuffer(VertexBuffer.Type.Index, 3, BufferUtils.createIntBuffer(data.triangles()));
    mesh.updateBound();
    return mesh;
  }

  /** Four bytes a vertex: colour {@code 0xRRGGBB} and full opacity. */
  public static ByteBuffer colours(int[] rgbs) {
    int[] all = new int[rgbs.length];
    for (int i = 0; i < all.length; i++) {
      all[i] = rgbs[i] << 8 | OPAQUE;
    }
    // Written at once: byte by byte it takes several times as long.
    ByteBuffer colours = BufferUtils.createByteBuffer(4 * all.length).order(ByteOrder.BIG_ENDIAN);
    colours.asIntBuffer().put(all);
    return colours.order(ByteOrder.nativeOrder());
  }

  /** Lines. */
  public static Mesh lines(LineData data) {
    Mesh mesh = new Mesh();
    mesh.setMode(Mesh.Mode.Lines);
    mesh.setBuffer(VertexBuffer.Type.Position, 3, turned(data.points()));
    int count = data.points().length / 3;
    int[] index = new int[count];
    for (int i = 0; i < count; i++) {
      index[i] = i;
    }
    int[] rgbs = new int[count];
    Arrays.fill(rgbs, data.rgb());
    setColours(mesh, colours(rgbs));
    mesh.setBuffer(VertexBuffer.Type.Index, 2, BufferUtils.createIntBuffer(index));
    mesh.updateBound();
    return mesh;
  }

  private static void setColours(Mesh mesh, ByteBuffer colours) {
    VertexBuffer buffer = new VertexBuffer(VertexBuffer.Type.Color);
    buffer.setupData(VertexBuffer.Usage.Static, 4, VertexBuffer.Format.UnsignedByte, colours);
    buffer.setNormalized(true);
    mesh.setBuffer(buffer);
  }

  private static FloatBuffer turned(double[] xyz) {
    FloatBuffer out = BufferUtils.createFloatBuffer(xyz.length);
    for (int i = 0; i < xyz.length; i += 3) {
      out.put((float) xyz[i]).put((float) xyz[i + 2]).put(0f - (float) xyz[i + 1]);
    }
    out.flip();
    return out;
  }

  /**
   * A camera for a part of an image.
   *
   * @param view what the whole image sees
   * @param part of it; the whole or a tile
   */
  public static Camera camera(View view, View.Area part) {
    Camera camera =
        new Camera(
            (int) Math.round(part.right() - part.left()),
            (int) Math.round(part.bottom() - part.top()));
    camera.setParallelProjection(false);
    double perPixel = 2 * view.near() * Math.tan(view.halfAngle()) / view.height();
    double x = view.width() / 2.0;
    double y = view.height() / 2.0;
    camera.setFrustum(
        (float) view.near(),
        (float) view.far(),
        (float) (perPixel * (part.left() - x)),
        (float) (perPixel * (part.right() - x)),
        (float) (perPixel * (y - part.top())),
        (float) (perPixel * (y - part.bottom())));
    camera.setLocation(vector(view.eye()));
    camera.lookAtDirection(vector(view.forward()), Vector3f.UNIT_Y);
    camera.update();
    return camera;
  }
}
