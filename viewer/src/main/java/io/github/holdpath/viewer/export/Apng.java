package io.github.holdpath.viewer.export;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;

/**
 * An animated PNG that plays for ever, after W3C, Portable Network Graphics (PNG) Specification,
 * third edition. A viewer without animation shows the first frame. A later frame holds only the
 * rectangle that differs from the one before.
 */
public final class Apng {
  /** The longest time of one frame that fits its field, ms. */
  public static final int LONGEST_DELAY = 0xFFFF;

  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final int BITS = 8;
  private static final int TRUECOLOUR = 2;

  private final int width;
  private final int height;
  private final List<byte[]> chunks = new ArrayList<>();
  private int[] last = new int[0];
  private int frames;
  private int sequence;

  /**
   * Without any frame.
   *
   * @param width of all frames, pixels
   * @param height of all frames, pixels
   */
  public Apng(int width, int height) {
    if (width < 1 || height < 1) {
      throw new IllegalArgumentException(
          "width and height must be at least 1, but are " + width + " and " + height);
    }
    this.width = width;
    this.height = height;
  }

  /**
   * Adds a frame.
   *
   * @param image of the size of all frames; its opacity is not looked at
   * @param delay how long it is seen, ms
   */
  public void add(BufferedImage image, int delay) {
    if (image.getWidth() != width || image.getHeight() != height) {
      throw new IllegalArgumentException(
          "image must be "
              + width
              + " x "
              + height
              + " pixels, but is "
              + image.getWidth()
              + " x "
              + image.getHeight());
    }
    if (delay < 1 || delay > LONGEST_DELAY) {
      throw new IllegalArgumentException("delay must be from 1 to 65535 ms, but was " + delay);
    }
    int[] pixels = image.getRGB(0, 0, width, height, null, 0, width);
    boolean first = frames == 0;
    Rectangle part = first ? new Rectangle(width, height) : changed(pixels);
    chunks.add(control(part, delay));
    byte[] data = PngRows.packed(pixels, width, part);
    if (first) {
      chunks.add(chunk("IDAT", data));
    } else {
      ByteBuffer numbered = ByteBuffer.allocate(4 + data.length).putInt(sequence++).put(data);
      chunks.add(chunk("fdAT", numbered.array()));
    }
    last = pixels;
    frames++;
  }

  /** The least rectangle with all that changed; one pixel where nothing did. */
  private Rectangle changed(int[] pixels) {
    int left = width;
    int top = height;
    int right = -1;
    int bottom = -1;
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        if (((pixels[y * width + x] ^ last[y * width + x]) & 0xFFFFFF) != 0) {
          left = Math.min(left, x);
          right = Math.max(right, x);
          top = Math.min(top, y);
          bottom = y;
        }
      }
    }
    return right < 0
        ? new Rectangle(1, 1)
        : new Rectangle(left, top, right - left + 1, bottom - top + 1);
  }

  /** Chunk fcTL: place and time of a frame, which replaces what is below it and stays. */
  private byte[] control(Rectangle part, int delay) {
    return chunk(
        "fcTL",
        ByteBuffer.allocate(26)
            .putInt(sequence++)
            .putInt(part.width)
            .putInt(part.height)
            .putInt(part.x)
            .putInt(part.y)
            .putShort((short) delay)
            .putShort((short) 1000)
            .put((byte) 0)
            .put((byte) 0)
            .array());
  }

  /** The file. */
  public byte[] bytes() {
    if (frames == 0) {
      throw new IllegalStateException("an animation has at least one frame");
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(SIGNATURE);
    ByteBuffer header = ByteBuffer.allocate(13).putInt(width).putInt(height);
    out.writeBytes(chunk("IHDR", header.put((byte) BITS).put((byte) TRUECOLOUR).array()));
    // Zero plays stand for no end.
    out.writeBytes(chunk("acTL", ByteBuffer.allocate(8).putInt(frames).putInt(0).array()));
    chunks.forEach(out::writeBytes);
    out.writeBytes(chunk("IEND", new byte[0]));
    return out.toByteArray();
  }

  private static byte[] chunk(String type, byte[] data) {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 check = new CRC32();
    check.update(name);
    check.update(data);
    return ByteBuffer.allocate(12 + data.length)
        .putInt(data.length)
        .put(name)
        .put(data)
        .putInt((int) check.getValue())
        .array();
  }
}
