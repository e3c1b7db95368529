package io.github.holdpath.viewer.export;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tools.jackson.core.JsonGenerator;

/**
 * The numbers of a glTF file: one buffer, with a view and an accessor for each array. Every view
 * begins at a multiple of four bytes.
 */
final class GlbBinary {
  private static final int FLOAT = 5126;
  private static final int UNSIGNED_SHORT = 5123;
  private static final int UNSIGNED_INT = 5125;
  private static final int ARRAY_BUFFER = 34962;
  private static final int ELEMENT_ARRAY_BUFFER = 34963;
  private static final int NO_TARGET = 0;
  private static final int FULL = 0xFFFF;
  private static final float[] NONE = {};

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final List<Part> parts = new ArrayList<>();

  /** One array; bounds are empty where glTF asks for none. */
  private record Part(
      int offset,
      int length,
      int target,
      int component,
      String type,
      int count,
      boolean normalised,
      float[] least,
      float[] most) {}

  /** Places of a mesh, three numbers each, with their bounds; gives the accessor's number. */
  int places(double[] xyz) {
    return floats(xyz, 3, "VEC3", ARRAY_BUFFER, true);
  }

  /** Unit vectors of a mesh. */
  int normals(double[] xyz) {
    return floats(xyz, 3, "VEC3", ARRAY_BUFFER, false);
  }

  /** Times of an animation, s, ascending. */
  int times(double[] times) {
    return floats(times, 1, "SCALAR", NO_TARGET, true);
  }

  /** Positions by time. */
  int translations(double[] xyz) {
    return floats(xyz, 3, "VEC3", NO_TARGET, false);
  }

  /** Rotations by time, x, y, z, w. */
  int rotations(double[] xyzw) {
    return floats(xyzw, 4, "VEC4", NO_TARGET, false);
  }

  /** Triangles. */
  int indices(int[] indices) {
    ByteBuffer data = buffer(4 * indices.length);
    for (int i : indices) {
      data.putInt(i);
    }
    return add(
        data, ELEMENT_ARRAY_BUFFER, UNSIGNED_INT, "SCALAR", indices.length, false, NONE, NONE);
  }

  /** Colours {@code 0xRRGGBB} of a mesh, in linear light as glTF wants them. */
  int colours(int[] rgbs) {
    ByteBuffer data = buffer(8 * rgbs.length);
    for (int rgb : rgbs) {
      for (int shift = 16; shift >= 0; shift -= 8) {
        data.putShort((short) Math.round(linear(rgb >> shift & 0xFF) * FULL));
      }
      data.putShort((short) FULL);
    }
    return add(data, ARRAY_BUFFER, UNSIGNED_SHORT, "VEC4", rgbs.length, true, NONE, NONE);
  }

  /**
   * A component of a colour in linear light, 0 to 1 (IEC 61966-2-1, sRGB).
   *
   * @param component as written, 0 to 255
   */
  static double linear(int component) {
    double c = component / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }

  private int floats(double[] values, int each, String type, int target, boolean bounded) {
    ByteBuffer data = buffer(4 * values.length);
    float[] least = bounded ? filled(each, Float.POSITIVE_INFINITY) : NONE;
    float[] most = bounded ? filled(each, Float.NEGATIVE_INFINITY) : NONE;
    for (int i = 0; i < values.length; i++) {
      // Without the sign of zero, so that the bounds are plain.
      float v = (float) values[i] + 0f;
      data.putFloat(v);
      if (bounded) {
        least[i % each] = Math.min(least[i % each], v);
        most[i % each] = Math.max(most[i % each], v);
      }
    }
    return add(data, target, FLOAT, type, values.length / each, false, least, most);
  }

  private static float[] filled(int size, float value) {
    float[] all = new float[size];
    Arrays.fill(all, value);
    return all;
  }

  private static ByteBuffer buffer(int size) {
    return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
  }

  private int add(
      ByteBuffer data,
      int target,
      int component,
      String type,
      int count,
      boolean normalised,
      float[] least,
      float[] most) {
    // All arrays are whole multiples of four bytes, so the next one is aligned too.
    parts.add(
        new Part(
            bytes.size(),
            data.capacity(),
            target,
            component,
            type,
            count,
            normalised,
            least,
            most));
    bytes.writeBytes(data.array());
    return parts.size() - 1;
  }

  /** All numbers. */
  byte[] bytes() {
    return bytes.toByteArray();
  }

  /** Writes the members buffers, bufferViews and accessors. */
  void write(JsonGenerator json) {
    json.writeArrayPropertyStart("buffers");
    json.writeStartObject();
    json.writeNumberProperty("byteLength", bytes.size());
    json.writeEndObject();
    json.writeEndArray();
    json.writeArrayPropertyStart("bufferViews");
    for (Part part : parts) {
      json.writeStartObject();
      json.writeNumberProperty("buffer", 0);
      json.writeNumberProperty("byteOffset", part.offset);
      json.writeNumberProperty("byteLength", part.length);
      if (part.target != NO_TARGET) {
        json.writeNumberProperty("target", part.target);
      }
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayPropertyStart("accessors");
    for (int i = 0; i < parts.size(); i++) {
      writeAccessor(json, i, parts.get(i));
    }
    json.writeEndArray();
  }

  private static void writeAccessor(JsonGenerator json, int view, Part part) {
    json.writeStartObject();
    json.writeNumberProperty("bufferView", view);
    json.writeNumberProperty("componentType", part.component);
    json.writeNumberProperty("count", part.count);
    json.writeStringProperty("type", part.type);
    if (part.normalised) {
      json.writeBooleanProperty("normalized", true);
    }
    if (part.least.length > 0) {
      bound(json, "min", part.least);
      bound(json, "max", part.most);
    }
    json.writeEndObject();
  }

  private static void bound(JsonGenerator json, String name, float[] values) {
    json.writeArrayPropertyStart(name);
    for (float v : values) {
      // All digits: a reader compares with the numbers in the buffer.
      json.writeNumber((double) v);
    }
    json.writeEndArray();
  }
}
